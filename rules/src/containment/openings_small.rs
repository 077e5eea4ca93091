//! Joints and meshes of a barrier are too small for the smallest animal ever kept.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::opening::{WIDEST_OPENING, allowed_opening};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("openings-too-small-to-pass"),
        title: words("The smallest animal gets through or is caught in an opening"),
        chapter: words("containment"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::BarrierGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "No joint, penetration or mesh of the barrier is wider than half the least body measure of the smallest animal.",
            ),
            why: words(
                "Animals are drawn full-grown and delivered young; where the head goes the body follows, or the animal hangs.",
            ),
            judged: words(
                "The widest joint, and the aperture where the barrier or its face is mesh or an aperture is stated, against a share of the lesser of body height and breadth of the smallest animal ever kept, hatchlings included where eggs are not removed.",
            ),
            cure: words("close the joint, sleeve the pipe, take a finer mesh or a solid foot"),
        },
    },
    limits: &[&SHARE],
    examples: EXAMPLES,
    judge,
};

static SHARE: Limit = Limit {
    rule: "openings-too-small-to-pass",
    name: "share",
    row: "",
    what: "share of the least body measure of the smallest animal",
    value: 0.5,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' practice: half the width of the head; where heads are not measured, half the least measure of the body",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (have, allowed) = (WIDEST_OPENING.of(sheet, at), allowed_opening(sheet, at, &SHARE)).all()?;
    Ok(Check::at_most(have, allowed))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("joints of 5 mm, smallest turtle 40 mm high"),
        design: words(include_str!("examples/openings_small_met.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Met,
        place: words("/barriers/0/joints"),
    },
    Example {
        shows: words("mesh of 25 mm"),
        design: words(include_str!("examples/openings_small_short.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Short,
        place: words("/barriers/0/aperture"),
    },
    Example {
        shows: words("the edge: mesh of 20 mm"),
        design: words(include_str!("examples/openings_small_edge.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Met,
        place: words("/animals/0/body-height/smallest"),
    },
    Example {
        shows: words("mesh without an aperture"),
        design: words(include_str!("examples/openings_small_gap.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/barriers/0/aperture"),
    },
    Example {
        shows: words("mesh of 20.5 mm"),
        design: words(include_str!("examples/openings_small_just_short.json")),
        subject: words("barrier:wall+group:sliders"),
        expected: Expected::Short,
        place: words("/barriers/0/aperture"),
    },
];
