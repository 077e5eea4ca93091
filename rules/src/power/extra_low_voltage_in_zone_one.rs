//! Extra-low voltage in zones 0 and 1 is really low: 12 V AC or 30 V DC.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::supply::{extra_low, voltage, voltage_allowed};
use haulout_figures::item::water::basin;
use haulout_figures::item::zone::in_zone_one;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

use super::zones::{CAUTION, Family, ZONES, family, silent, where_yes};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("extra-low-voltage-in-zone-one"),
        title: words("The extra-low voltage in zone 0 or 1 is too high"),
        chapter: words("power"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: Some(Matter::Electrical),
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL,
        about: About::ItemPool,
        caution: Some(words(CAUTION)),
        manual: Manual {
            asks: words(
                "Under IEC 60364-7-702, extra-low voltage in zones 0 and 1 is at most 12 V AC or 30 V DC.",
            ),
            why: words("Under water skin has no resistance to speak of; 24 V AC can hold a hand fast there."),
            judged: words(
                "The stated voltage against the limit of its kind. Texts differ for zone 1 of pools: some give 25 V AC and 60 V DC there; the lower pair, found for both zones, is held to.",
            ),
            cure: words("12 V lamps and heaters; DC where more power is wanted"),
        },
    },
    limits: &[&AC, &DC],
    examples: EXAMPLES,
    judge,
};

static AC: Limit = Limit {
    rule: "extra-low-voltage-in-zone-one",
    name: "ac",
    row: "",
    what: "highest extra-low voltage, AC",
    value: 12.0,
    unit: "V",
    dimension: Dimension::VOLTAGE,
    tighter: Tighter::Lower,
    basis: Basis::Reported,
    source: "IEC 60364-7-702:2010 702.410.3.4.1, as quoted in guides to its national editions; 25 V AC for zone 1 in one training text",
};

static DC: Limit = Limit {
    rule: "extra-low-voltage-in-zone-one",
    name: "dc",
    row: "",
    what: "highest extra-low voltage, DC",
    value: 30.0,
    unit: "V",
    dimension: Dimension::VOLTAGE,
    tighter: Tighter::Lower,
    basis: Basis::Reported,
    source: "IEC 60364-7-702:2010 702.410.3.4.1, as quoted in guides to its national editions; 60 V DC for zone 1 in one training text",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if family(sheet) != Some(Family::Iec) {
        return Ok(silent());
    }
    let low = (voltage(sheet, at), voltage_allowed(sheet, at, &AC, &DC)).all();
    let low = low.map(|(have, limit)| Check::at_most(have, limit));
    let near = where_yes(in_zone_one(sheet, at, ZONES), low);
    where_yes(basin(sheet), where_yes(extra_low(sheet, at), near))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a 12 V AC lamp over the bank"),
        design: words(include_str!("examples/extra_low_met.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("a 24 V AC lamp over the bank"),
        design: words(include_str!("examples/extra_low_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("30 V DC"),
        design: words(include_str!("examples/extra_low_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/supply"),
    },
    Example {
        shows: words("no voltage stated"),
        design: words(include_str!("examples/extra_low_gap.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("12.5 V AC"),
        design: words(include_str!("examples/extra_low_ac_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("31 V DC"),
        design: words(include_str!("examples/extra_low_dc_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/voltage"),
    },
];
