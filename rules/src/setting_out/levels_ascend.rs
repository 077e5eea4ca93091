//! The levels of a pool rise in their order: low, water, overflow, top of the liner, rim.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::ladder::{rim_and_liner, rises};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("levels-ascend"),
        title: words("The levels of a pool are out of order"),
        chapter: words("setting-out"),
        demand: Demand::Shall,
        stage: Stage::Concept,
        matter: None,
        consequence: Consequence::Flood,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "The lowest running level, the water level, the overflow, the top of the liner and the rim rise in this order, as far as they are stated; the liner may end level with the rim.",
            ),
            why: words(
                "An overflow over the top of the liner never runs: the water leaves behind the liner first, and floods the hall.",
            ),
            judged: words(
                "The rise between each two levels that are stated next to one another; by how much each has to rise is asked by the rules on freeboard.",
            ),
            cure: words(
                "correct the level that is out of order; hang levels on the water level, so that they move with it",
            ),
        },
    },
    limits: &[&STEP],
    examples: EXAMPLES,
    judge,
};

static STEP: Limit = Limit {
    rule: "levels-ascend",
    name: "step",
    row: "",
    what: "least rise from one level to the next",
    value: 0.005,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "two levels nearer than 5 mm cannot be set out apart",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let rises = rises(sheet, at).into_iter().map(|rise| Ok(Check::at_least(rise?, sheet.limit(&STEP))));
    let rim = rim_and_liner(sheet, at).map(|both| both.map(|(rim, liner)| Check::at_least(rim, liner)));
    Ok(Check::AllOf(rises.chain(rim).collect()))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("each level over the one before, the liner level with the rim"),
        design: words(include_str!("examples/levels_ascend_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/levels/overflow"),
    },
    Example {
        shows: words("the overflow stands over the top of the liner"),
        design: words(include_str!("examples/levels_ascend_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/levels/liner-top"),
    },
    Example {
        shows: words("the overflow 5 mm over the water"),
        design: words(include_str!("examples/levels_ascend_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/levels/overflow"),
    },
    Example {
        shows: words("the overflow hangs on a level that is not there"),
        design: words(include_str!("examples/levels_ascend_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/levels/overflow/above"),
    },
    Example {
        shows: words("only the water level is stated"),
        design: words(include_str!("examples/levels_ascend_na.json")),
        subject: words("pool:main"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("the overflow 4.8 mm over the water"),
        design: words(include_str!("examples/levels_ascend_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words(""),
    },
];
