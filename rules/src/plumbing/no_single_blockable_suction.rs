//! No animal or limb can be held on a suction: there are two far apart, or hardly any head behind one.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::intake::{HEAD, PARTNER_DISTANCE};
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("no-single-blockable-suction"),
        title: words("One blocked intake holds whatever blocks it"),
        chapter: words("plumbing"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Intake,
        caution: Some(words(
            "Entrapment on suctions has killed people as well as animals. Covers and suctions belong to the local pool code and to licensed people.",
        )),
        manual: Manual {
            asks: words(
                "An intake has a partner at least 0.91 m (3 ft) away that passes the whole flow alone, or no more than 0.30 m of head can act on it (a gravity sump).",
            ),
            why: words(
                "A body that seals a grille is held by the whole head of the pump on the whole net area: 0.25 m by 0.25 m at 3 m is 1.8 kN. A slow approach velocity does not help once the grille is sealed.",
            ),
            judged: words(
                "Distance between the two intakes in plan, or the head that can act on a wholly blocked grille; one of the two is enough.",
            ),
            cure: words(
                "a second intake far enough away on the same suction pipe, or a gravity sump with the pump behind it",
            ),
        },
    },
    limits: &[&APART, &SUMP],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::AnyOf(vec![apart(sheet, at), sump(sheet, at)])),
};

fn apart(sheet: Sheet<'_>, at: haulout_model::Subject) -> Known<Check> {
    Ok(Check::at_least(PARTNER_DISTANCE.of(sheet, at)?, sheet.limit(&APART)))
}

fn sump(sheet: Sheet<'_>, at: haulout_model::Subject) -> Known<Check> {
    Ok(Check::at_most(HEAD.of(sheet, at)?, sheet.limit(&SUMP)))
}

static APART: Limit = Limit {
    rule: "no-single-blockable-suction",
    name: "apart",
    row: "",
    what: "distance to the partner intake",
    value: 0.9144,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Reported,
    source: "2013 California Building Code chapter 31B (public pools): two outlets or more, at least 3 ft apart, read in a copy",
};

static SUMP: Limit = Limit {
    rule: "no-single-blockable-suction",
    name: "sump-head",
    row: "",
    what: "head on a blocked gravity intake",
    value: 0.30,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "gravity sumps: a drop of 0.3 m holds with about a tenth of what a pump does",
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("two intakes 5 m apart"),
        design: words(include_str!("examples/suction_met.json")),
        subject: words("intake:in-1"),
        expected: Expected::Met,
        place: words("/circuits/0/intakes/1/at/0"),
    },
    Example {
        shows: words("one intake in a gravity sump: the edge"),
        design: words(include_str!("examples/suction_gravity.json")),
        subject: words("intake:in-1"),
        expected: Expected::Met,
        place: words("/circuits/0/intakes/0/head-available"),
    },
    Example {
        shows: words("two intakes 0.6 m apart"),
        design: words(include_str!("examples/suction_short.json")),
        subject: words("intake:in-1"),
        expected: Expected::Short,
        place: words("/circuits/0/intakes/0/at/0"),
    },
    Example {
        shows: words("one intake, head not stated"),
        design: words(include_str!("examples/suction_gap.json")),
        subject: words("intake:in-1"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/intakes/0/partner"),
    },
    Example {
        shows: words("two intakes just 3 ft apart"),
        design: words(include_str!("examples/suction_edge.json")),
        subject: words("intake:in-1"),
        expected: Expected::Met,
        place: words("/circuits/0/intakes/1/at/0"),
    },
    Example {
        shows: words("two intakes 0.90 m apart"),
        design: words(include_str!("examples/suction_just_short.json")),
        subject: words("intake:in-1"),
        expected: Expected::Short,
        place: words("/circuits/0/intakes/1/at/0"),
    },
    Example {
        shows: words("two intakes 0.6 m apart under a head of 0.31 m"),
        design: words(include_str!("examples/suction_gravity_short.json")),
        subject: words("intake:in-1"),
        expected: Expected::Short,
        place: words("/circuits/0/intakes/0/head-available"),
    },
];
