//! Switches and other dry equipment keep five feet from water that people enter.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::kind::is_equipment;
use haulout_figures::item::path::WATER_DISTANCE;
use haulout_figures::item::water::bathed;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

use super::zones::{CAUTION, Family, above_contact, family, silent, where_yes};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("equipment-five-feet-from-water"),
        title: words("A switch or other equipment is nearer than five feet to the water"),
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
                "Under NEC article 680, switching devices, and other dry equipment above the contact limit, are at least 5 ft from the inside wall of a pool or a fountain that people use.",
            ),
            why: words("Five feet is out of reach of somebody standing in the water."),
            judged: words(
                "The shortest path round fixed partitions, less case and cord. Sockets and luminaires have rules of their own. Devices listed for less are not known here: accept them by a variance.",
            ),
            cure: words("move it behind a fixed partition or further off"),
        },
    },
    limits: &[&LEAST],
    examples: EXAMPLES,
    judge,
};

static LEAST: Limit = Limit {
    rule: "equipment-five-feet-from-water",
    name: "least",
    row: "",
    what: "least distance of switches and equipment",
    value: 1.524,
    unit: "ft",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.22(C) and (E), as in the 2022 California Electrical Code",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if family(sheet) != Some(Family::Nec) {
        return Ok(silent());
    }
    let far = WATER_DISTANCE.of(sheet, at).map(|have| Check::at_least(have, sheet.limit(&LEAST)));
    where_yes(bathed(sheet), where_yes(is_equipment(sheet, at, above_contact(sheet, at)), far))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a heater 2.4 m off"),
        design: words(include_str!("examples/equipment_met.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("a heater 1.4 m off"),
        design: words(include_str!("examples/equipment_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/extent"),
    },
    Example {
        shows: words("a switch just 5 ft off"),
        design: words(include_str!("examples/equipment_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("no voltage stated"),
        design: words(include_str!("examples/equipment_gap.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/electrical/items/0/voltage"),
    },
    Example {
        shows: words("a switch 1.50 m off"),
        design: words(include_str!("examples/equipment_near.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/1"),
    },
];
