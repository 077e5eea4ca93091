//! The top of the liner stands well over the invert of the overflow, and so does the rim.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::ladder::{liner_over_overflow, rim_over_overflow};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::si::Length;
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Line, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("freeboard-over-the-overflow"),
        title: words("The liner or the rim ends too little above the overflow"),
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
                "The top of the liner stands well over the invert of the overflow, and so does the rim.",
            ),
            why: words(
                "Water stands over the invert while the overflow runs, waves run up, and wet folds of a liner lead water over its edge.",
            ),
            judged: words(
                "Top of the liner less invert, unless the file says that there is no liner (\"none\"), and rim less invert. What the overflow itself needs to run is not taken off: give it more where it is narrow.",
            ),
            cure: words("raise the liner and the rim, or lower the overflow and the water with it"),
        },
    },
    limits: &[&LIMITS[0], &LIMITS[1]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 2] = [
    Limit {
        rule: "freeboard-over-the-overflow",
        name: "liner",
        row: "",
        what: "least height of the liner over the overflow",
        value: 0.10,
        unit: "mm",
        dimension: Dimension::LENGTH,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "pond builders' practice: 100 mm over the overflow",
    },
    Limit {
        rule: "freeboard-over-the-overflow",
        name: "rim",
        row: "",
        what: "least height of the rim over the overflow",
        value: 0.05,
        unit: "mm",
        dimension: Dimension::LENGTH,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "pond builders' practice: 50 mm where no liner can lead water over the edge",
    },
];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let over = |height: Known<Line<Length>>, limit| height.map(|h| Check::at_least(h, sheet.limit(limit)));
    let liner = liner_over_overflow(sheet, at).map(|height| over(height, &LIMITS[0]));
    let rim = std::iter::once(over(rim_over_overflow(sheet, at), &LIMITS[1]));
    Ok(Check::AllOf(rim.chain(liner).collect()))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("liner and rim 120 mm over the overflow"),
        design: words(include_str!("examples/freeboard_over_the_overflow_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/levels/overflow"),
    },
    Example {
        shows: words("the liner ends 70 mm over the overflow"),
        design: words(include_str!("examples/freeboard_over_the_overflow_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/levels/liner-top"),
    },
    Example {
        shows: words("the edge: 100 mm"),
        design: words(include_str!("examples/freeboard_over_the_overflow_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/levels/liner-top"),
    },
    Example {
        shows: words("the overflow is not stated"),
        design: words(include_str!("examples/freeboard_over_the_overflow_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/levels/overflow"),
    },
    Example {
        shows: words("the liner 97 mm over the overflow"),
        design: words(include_str!("examples/freeboard_over_the_overflow_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/levels/liner-top"),
    },
    Example {
        shows: words("no liner, the rim 50 mm over the overflow"),
        design: words(include_str!("examples/freeboard_over_the_overflow_rim.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/levels/rim"),
    },
    Example {
        shows: words("no liner, the rim 48 mm over the overflow"),
        design: words(include_str!("examples/freeboard_over_the_overflow_rim_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/levels/rim"),
    },
    Example {
        shows: words("the top of the liner is not stated: it may end lower than the rim"),
        design: words(include_str!("examples/freeboard_over_the_overflow_untold.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/levels/liner-top"),
    },
];
