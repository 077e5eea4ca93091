//! The openings of an intake are too small for a limb or a head.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::intake::APERTURE;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("aperture-of-intakes"),
        title: words("A limb or a head fits into the intake"),
        chapter: words("plumbing"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Intake,
        caution: None,
        manual: Manual {
            asks: words("No opening of an intake is wider than 10 mm."),
            why: words(
                "Whatever fits in is drawn in: feet, tails, the heads of small turtles, hatchlings whole.",
            ),
            judged: words(
                "The aperture as stated. Where animals under about 5 cm are kept, half the width of their head is the better bound and is tighter than this. No clause was found that gives the figure; a shall because life is at stake.",
            ),
            cure: words("a finer grille with more area, fixed so that only a tool takes it off"),
        },
    },
    limits: &[&WIDEST],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_most(APERTURE.of(sheet, at)?, sheet.limit(&WIDEST))),
};

static WIDEST: Limit = Limit {
    rule: "aperture-of-intakes",
    name: "widest",
    row: "",
    what: "widest opening of an intake",
    value: 0.010,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "6 to 10 mm, or half the width of the head, whichever is less; that intakes be guarded at all: Czech decree 451/2021 section 8 (crocodilians)",
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("8 mm"),
        design: words(include_str!("examples/aperture_met.json")),
        subject: words("intake:in-1"),
        expected: Expected::Met,
        place: words("/circuits/0/intakes/0/aperture"),
    },
    Example {
        shows: words("the edge: 10 mm"),
        design: words(include_str!("examples/aperture_edge.json")),
        subject: words("intake:in-1"),
        expected: Expected::Met,
        place: words("/circuits/0/intakes/0/aperture"),
    },
    Example {
        shows: words("25 mm"),
        design: words(include_str!("examples/aperture_short.json")),
        subject: words("intake:in-1"),
        expected: Expected::Short,
        place: words("/circuits/0/intakes/0/aperture"),
    },
    Example {
        shows: words("not stated"),
        design: words(include_str!("examples/aperture_gap.json")),
        subject: words("intake:in-1"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/intakes/0/aperture"),
    },
    Example {
        shows: words("openings of 10.3 mm"),
        design: words(include_str!("examples/aperture_just_short.json")),
        subject: words("intake:in-1"),
        expected: Expected::Short,
        place: words("/circuits/0/intakes/0/aperture"),
    },
];
