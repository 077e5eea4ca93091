//! A return does not blow into an intake.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::circuit::returns::{INTAKE_DISTANCE, has_intake_beside};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("jet-clear-of-the-intake"),
        title: words("Clean water goes straight back into the intake"),
        chapter: words("plumbing"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Return,
        caution: None,
        manual: Manual {
            asks: words("In plan a return is at least one metre from every intake in the same pool."),
            why: words(
                "Water that goes from the return to the intake in a straight line turns the pump over, not the pool: the turnover on paper is perfect and the far corner stays dirty.",
            ),
            judged: words(
                "Distance in plan from the return to the nearest intake that stands in the pool it ends in. Which way its jet points is not known here; pointed away it may be nearer.",
            ),
            cure: words("put the return at the other end, or turn its jet along the wall"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "jet-clear-of-the-intake",
    name: "distance",
    row: "",
    what: "least distance from a return to an intake",
    value: 1.0,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "pool builders' practice: no source; a jet is spent after some twenty of its bores",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !has_intake_beside(sheet, at) {
        return Ok(Check::AllOf(Vec::new()));
    }
    Ok(Check::at_least(INTAKE_DISTANCE.of(sheet, at)?, sheet.limit(&LIMITS[0])))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("1.5 m"),
        design: words(include_str!("examples/jet_clear_of_the_intake_met.json")),
        subject: words("return:over-basin"),
        expected: Expected::Met,
        place: words("/circuits/0/returns/0/at/0"),
    },
    Example {
        shows: words("0.3 m"),
        design: words(include_str!("examples/jet_clear_of_the_intake_short.json")),
        subject: words("return:over-basin"),
        expected: Expected::Short,
        place: words("/circuits/0/returns/0/at/0"),
    },
    Example {
        shows: words("the edge: 1 m"),
        design: words(include_str!("examples/jet_clear_of_the_intake_edge.json")),
        subject: words("return:over-basin"),
        expected: Expected::Met,
        place: words("/circuits/0/returns/0/at/0"),
    },
    Example {
        shows: words("0.98 m"),
        design: words(include_str!("examples/jet_clear_of_the_intake_just_short.json")),
        subject: words("return:over-basin"),
        expected: Expected::Short,
        place: words("/circuits/0/returns/0/at/0"),
    },
    Example {
        shows: words("no intake in the basin"),
        design: words(include_str!("examples/jet_clear_of_the_intake_none.json")),
        subject: words("return:over-basin"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("where it is is not stated"),
        design: words(include_str!("examples/jet_clear_of_the_intake_gap.json")),
        subject: words("return:over-basin"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/returns/0/at"),
    },
];
