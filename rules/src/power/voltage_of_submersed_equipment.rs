//! What works under water has a voltage that is allowed there.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::kind::{submersed, voltage_under_water};
use haulout_figures::item::supply::voltage;
use haulout_figures::item::water::basin;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

use super::zones::{CAUTION, Family, family, silent, where_yes};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("voltage-of-submersed-equipment"),
        title: words("The voltage under water is too high"),
        chapter: words("power"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: Some(Matter::Electrical),
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL,
        about: About::Item,
        caution: Some(words(CAUTION)),
        manual: Manual {
            asks: words(
                "Under NEC article 680, luminaires under water run at 150 V or less, submersible pumps at 300 V or less.",
            ),
            why: words("The higher the voltage, the further a fault reaches through the water."),
            judged: words(
                "The stated voltage of items that are under water on purpose. Other equipment is held to the lower figure. Low-water cut-off and length of cord are left to the electrician. The IEC family judges this by zone 0.",
            ),
            cure: words("a dry pump in the corridor, or luminaires at the contact limit"),
        },
    },
    limits: &[&LUMINAIRES, &PUMPS],
    examples: EXAMPLES,
    judge,
};

static LUMINAIRES: Limit = Limit {
    rule: "voltage-of-submersed-equipment",
    name: "luminaires",
    row: "",
    what: "highest voltage of luminaires under water",
    value: 150.0,
    unit: "V",
    dimension: Dimension::VOLTAGE,
    tighter: Tighter::Lower,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.23(A) and 680.51, as in the 2022 California Electrical Code",
};

static PUMPS: Limit = Limit {
    rule: "voltage-of-submersed-equipment",
    name: "pumps",
    row: "",
    what: "highest voltage of submersible pumps",
    value: 300.0,
    unit: "V",
    dimension: Dimension::VOLTAGE,
    tighter: Tighter::Lower,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.51, as in the 2022 California Electrical Code",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if family(sheet) != Some(Family::Nec) {
        return Ok(silent());
    }
    let allowed = voltage_under_water(sheet, at, &LUMINAIRES, &PUMPS);
    let low = (voltage(sheet, at), allowed).all().map(|(have, limit)| Check::at_most(have, limit));
    where_yes(basin(sheet), where_yes(submersed(sheet, at), low))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a pump at 230 V"),
        design: words(include_str!("examples/submersed_met.json")),
        subject: words("item:it"),
        expected: Expected::Met,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("a luminaire at 230 V"),
        design: words(include_str!("examples/submersed_short.json")),
        subject: words("item:it"),
        expected: Expected::Short,
        place: words("/electrical/items/0/kind"),
    },
    Example {
        shows: words("a luminaire at 150 V"),
        design: words(include_str!("examples/submersed_edge.json")),
        subject: words("item:it"),
        expected: Expected::Met,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("no voltage stated"),
        design: words(include_str!("examples/submersed_gap.json")),
        subject: words("item:it"),
        expected: Expected::NotAssessed,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("a luminaire at 155 V"),
        design: words(include_str!("examples/submersed_luminaire_short.json")),
        subject: words("item:it"),
        expected: Expected::Short,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("a pump at 300 V"),
        design: words(include_str!("examples/submersed_pump_edge.json")),
        subject: words("item:it"),
        expected: Expected::Met,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("a pump at 310 V"),
        design: words(include_str!("examples/submersed_pump_short.json")),
        subject: words("item:it"),
        expected: Expected::Short,
        place: words("/electrical/items/0/voltage"),
    },
];
