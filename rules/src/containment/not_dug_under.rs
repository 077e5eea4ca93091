//! Barriers of digging animals go deep enough into the ground.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::habit::DIGS;
use haulout_figures::barrier::opening::BELOW_GROUND;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("not-dug-under"),
        title: words("A digging animal gets under the barrier"),
        chapter: words("containment"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::BarrierGroup,
        caution: None,
        manual: Manual {
            asks: words("Where animals dig, the barrier goes on below the ground as deep as they dig."),
            why: words(
                "Sand beside a wall is a tunnel in the making; what is dug at night is open in the morning.",
            ),
            judged: words(
                "The stated depth below the ground on the animals' side against the least depth, for species the register lists as digging. A wall that stands on the slab goes as deep as the fill in front of it.",
            ),
            cure: words("carry the wall down, or lay an apron of mesh under the substrate"),
        },
    },
    limits: &[&DEPTH],
    examples: EXAMPLES,
    judge,
};

static DEPTH: Limit = Limit {
    rule: "not-dug-under",
    name: "depth",
    row: "",
    what: "least depth below ground",
    value: 0.30,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice: 300 to 600 mm, the lower end is asked for; USFWS 2005, as quoted in a review of fence guidelines, buries mesh for tortoises 30 cm",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let applies = DIGS.of(sheet, at).map(Check::holds);
    let deep = BELOW_GROUND.of(sheet, at).map(|depth| Check::at_least(depth, sheet.limit(&DEPTH)));
    Ok(Check::only_if(applies, deep))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.40 m below ground for pond turtles"),
        design: words(include_str!("examples/not_dug_under_met.json")),
        subject: words("barrier:wall+group:pond"),
        expected: Expected::Met,
        place: words("/barriers/0/below-ground"),
    },
    Example {
        shows: words("0.10 m"),
        design: words(include_str!("examples/not_dug_under_short.json")),
        subject: words("barrier:wall+group:pond"),
        expected: Expected::Short,
        place: words("/barriers/0/below-ground"),
    },
    Example {
        shows: words("the edge: 30 cm"),
        design: words(include_str!("examples/not_dug_under_edge.json")),
        subject: words("barrier:wall+group:pond"),
        expected: Expected::Met,
        place: words("/barriers/0/below-ground"),
    },
    Example {
        shows: words("depth not stated"),
        design: words(include_str!("examples/not_dug_under_gap.json")),
        subject: words("barrier:wall+group:pond"),
        expected: Expected::NotAssessed,
        place: words("/barriers/0/below-ground"),
    },
    Example {
        shows: words("sliders do not dig under walls"),
        design: words(include_str!("examples/not_dug_under_sliders.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::DoesNotApply,
        place: words("/animals/0/species"),
    },
    Example {
        shows: words("29 cm"),
        design: words(include_str!("examples/not_dug_under_just_short.json")),
        subject: words("barrier:wall+group:pond"),
        expected: Expected::Short,
        place: words("/barriers/0/below-ground"),
    },
];
