//! The grille before an overflow keeps the smallest animal out.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::opening::allowed_opening;
use haulout_figures::water::trap::OVERFLOW_APERTURE;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("overflow-keeps-animals-out"),
        title: words("An animal goes down the overflow"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::OverflowGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "The grille before an overflow has no opening wider than half the least body measure of the smallest animal.",
            ),
            why: words("Small animals ride over weirs and into pipes, and drown in the sump or the drain."),
            judged: words(
                "Aperture as stated against a share of the least body measure of the smallest animal ever kept.",
            ),
            cure: words("a grille with finer openings and more area, fixed so that only a tool takes it off"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "overflow-keeps-animals-out",
    name: "share",
    row: "",
    what: "widest opening as a share of the least body",
    value: 0.5,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' practice: half the body, so that no head gets through",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let allowed = allowed_opening(sheet, at, &LIMITS[0]);
    let (have, most) = (OVERFLOW_APERTURE.of(sheet, at), allowed).all()?;
    Ok(Check::at_most(have, most))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("8 mm for a body of 45 mm"),
        design: words(include_str!("examples/overflow_keeps_animals_out_met.json")),
        subject: words("overflow:main-overflow+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/overflows/0/aperture"),
    },
    Example {
        shows: words("40 mm"),
        design: words(include_str!("examples/overflow_keeps_animals_out_short.json")),
        subject: words("overflow:main-overflow+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/overflows/0/aperture"),
    },
    Example {
        shows: words("the edge: 22.5 mm"),
        design: words(include_str!("examples/overflow_keeps_animals_out_edge.json")),
        subject: words("overflow:main-overflow+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/overflows/0/aperture"),
    },
    Example {
        shows: words("23 mm"),
        design: words(include_str!("examples/overflow_keeps_animals_out_just_short.json")),
        subject: words("overflow:main-overflow+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/overflows/0/aperture"),
    },
    Example {
        shows: words("its aperture is not stated"),
        design: words(include_str!("examples/overflow_keeps_animals_out_gap.json")),
        subject: words("overflow:main-overflow+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/overflows/0/aperture"),
    },
];
