//! The intake stays under water at the lowest running level.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::intake::COVER;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, LevelState, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("water-over-the-intake"),
        title: words("The intake sucks air at low level"),
        chapter: words("plumbing"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL.level(LevelState::Low),
        about: About::Intake,
        caution: None,
        manual: Manual {
            asks: words("At the lowest running level there are still 100 mm of water over the grille."),
            why: words(
                "A pump that draws air stops pumping and may be damaged; life support stops with it, usually at night.",
            ),
            judged: words(
                "Lowest running level less the top of the grille. How deep a swirl draws air depends on the velocity; this is a floor.",
            ),
            cure: words("a lower intake, or an earlier low-level cut-out and top-up"),
        },
    },
    limits: &[&LEAST],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_least(COVER.of(sheet, at)?, sheet.limit(&LEAST))),
};

static LEAST: Limit = Limit {
    rule: "water-over-the-intake",
    name: "least",
    row: "",
    what: "water over the intake",
    value: 0.10,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "pond and pool building: a hand's breadth of water over every intake",
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.27 m over the grille"),
        design: words(include_str!("examples/cover_met.json")),
        subject: words("intake:in-1"),
        expected: Expected::Met,
        place: words("/pools/0/levels/low/by"),
    },
    Example {
        shows: words("10 mm over the grille"),
        design: words(include_str!("examples/cover_short.json")),
        subject: words("intake:in-1"),
        expected: Expected::Short,
        place: words("/circuits/0/intakes/0/level"),
    },
    Example {
        shows: words("lowest level not stated"),
        design: words(include_str!("examples/cover_gap.json")),
        subject: words("intake:in-1"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/levels/low"),
    },
    Example {
        shows: words("just 0.10 m over the grille"),
        design: words(include_str!("examples/cover_edge.json")),
        subject: words("intake:in-1"),
        expected: Expected::Met,
        place: words("/circuits/0/intakes/0/level"),
    },
    Example {
        shows: words("98 mm over the grille"),
        design: words(include_str!("examples/cover_just_short.json")),
        subject: words("intake:in-1"),
        expected: Expected::Short,
        place: words("/circuits/0/intakes/0/level"),
    },
];
