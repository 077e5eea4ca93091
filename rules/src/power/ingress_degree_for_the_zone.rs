//! The case keeps out the water of its zone: IPX8 in the basin, IPX5 in zone 1, IPX2 in zone 2 indoors.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::ingress::numeral_proved;
use haulout_figures::item::water::basin;
use haulout_figures::item::zone::{in_a_zone, numeral_asked};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

use super::zones::{CAUTION, Family, ZONES, family, silent, where_yes};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("ingress-degree-for-the-zone"),
        title: words("The case does not keep out the water of its zone"),
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
                "Under IEC 60364-7-702, items are marked at least IPX8 in zone 0, IPX5 in zone 1 and IPX2 in zone 2 indoors.",
            ),
            why: words(
                "Keepers hose. A case that stands under water a while is not thereby proof against a jet.",
            ),
            judged: words(
                "The numeral the marking proves on the scale asked for: up to 6 each numeral includes the lower ones, while IPX7 and IPX8 alone do not include 5 and 6; cases for both carry both marks. Texts differ for zone 1: IPX4, and IPX5 where water jets clean; animals are cleaned out with jets. Outdoors zone 2 asks IPX4.",
            ),
            cure: words(
                "a case with the right marking, both marks where it is hosed and flooded, or another place",
            ),
        },
    },
    limits: &[&BASIN, &FIRST_ZONE, &SECOND_ZONE],
    examples: EXAMPLES,
    judge,
};

static BASIN: Limit = Limit {
    rule: "ingress-degree-for-the-zone",
    name: "zone-0",
    row: "",
    what: "numeral in the basin",
    value: 8.0,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::Reported,
    source: "IEC 60364-7-702:2010 702.512.2, as described in guides to its national editions",
};

static FIRST_ZONE: Limit = Limit {
    rule: "ingress-degree-for-the-zone",
    name: "zone-1",
    row: "",
    what: "numeral in zone 1",
    value: 5.0,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::Reported,
    source: "CEI 64-8/7 section 702, as described in a guide to fountains; BS 7671 702.512.2 asks 4, and 5 where jets clean (recalled)",
};

static SECOND_ZONE: Limit = Limit {
    rule: "ingress-degree-for-the-zone",
    name: "zone-2",
    row: "",
    what: "numeral in zone 2, indoors",
    value: 2.0,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::Reported,
    source: "Chinese code text with the same zones; likewise a guide to BS 7671 section 702",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if family(sheet) != Some(Family::Iec) {
        return Ok(silent());
    }
    let asked = || numeral_asked(sheet, at, ZONES, [&BASIN, &FIRST_ZONE, &SECOND_ZONE]);
    let keeps = (numeral_proved(sheet, at, asked()), asked()).all();
    let keeps = keeps.map(|(have, asked)| Check::at_least(have, asked));
    where_yes(basin(sheet), where_yes(in_a_zone(sheet, at, ZONES), keeps))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("IPX5/IPX7 in zone 1"),
        design: words(include_str!("examples/ingress_met.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/ingress"),
    },
    Example {
        shows: words("IPX7 alone in zone 1 proves no jets"),
        design: words(include_str!("examples/ingress_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/ingress"),
    },
    Example {
        shows: words("IPX2 in zone 2"),
        design: words(include_str!("examples/ingress_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/ingress"),
    },
    Example {
        shows: words("IPX8 in the basin"),
        design: words(include_str!("examples/ingress_basin.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/2"),
    },
    Example {
        shows: words("no marking stated"),
        design: words(include_str!("examples/ingress_gap.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/electrical/items/0/ingress"),
    },
    Example {
        shows: words("IPX7 in the basin"),
        design: words(include_str!("examples/ingress_basin_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/ingress"),
    },
];
