//! The overflows take what a fill that sticks open runs with.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::water::overflow::{all_take, below_the_top, fill_flow};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("fill-stuck-open"),
        title: words("A fill that sticks open fills the hall"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Flood,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "With half of their grilles blocked the overflows take the whole flow of the fill before the water comes within 50 mm of the top of what holds it.",
            ),
            why: words(
                "A float that hangs or a valve with grit in it runs all night. A timer helps only where it shuts another valve than the one that sticks.",
            ),
            judged: words(
                "What all overflows take at the head from their invert to 50 mm under the top of the liner or the rim, against the flow of the fill. A pool without a fill, as the file says, is not asked.",
            ),
            cure: words("a larger overflow, a smaller fill, or a higher rim"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "fill-stuck-open",
    name: "freeboard",
    row: "",
    what: "freeboard that is left while the overflow runs",
    value: 0.05,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "pond builders' practice: 100 mm over the head of the overflow, 50 mm at the least",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let fill = match fill_flow(sheet, at) {
        Ok(fill) => fill,
        Err(none) => return Ok(Check::only_if(Ok(Check::holds(none)), Ok(Check::holds(none)))),
    };
    let level = below_the_top(sheet, at, sheet.limit(&LIMITS[0]));
    let takes = level.and_then(|level| all_take(sheet, at, level));
    let (takes, fill) = (takes, fill).all()?;
    Ok(Check::at_least(takes, fill))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.6 m3/h into one pipe of 70 mm"),
        design: words(include_str!("examples/fill_stuck_open_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/flow"),
    },
    Example {
        shows: words("6 m3/h"),
        design: words(include_str!("examples/fill_stuck_open_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/flow"),
    },
    Example {
        shows: words("the edge: a crest of 200 mm with 70 mm over it takes 24.5 m3/h"),
        design: words(include_str!("examples/fill_stuck_open_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/flow"),
    },
    Example {
        shows: words("25 m3/h over the same crest"),
        design: words(include_str!("examples/fill_stuck_open_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/flow"),
    },
    Example {
        shows: words("no fill"),
        design: words(include_str!("examples/fill_stuck_open_none.json")),
        subject: words("pool:basin"),
        expected: Expected::DoesNotApply,
        place: words("/pools/1/fill/flow"),
    },
    Example {
        shows: words("the flow of the fill is not stated"),
        design: words(include_str!("examples/fill_stuck_open_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/fill/flow"),
    },
];
