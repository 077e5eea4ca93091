//! The water can be drawn down in time for an animal that is caught under it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::water::times::DRAW_DOWN_TIME;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("drawn-down-in-time"),
        title: words("An animal caught under water cannot be freed in time"),
        chapter: words("water"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::PoolGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "The drain brings the water down to the back of a full-grown animal on the lowest bed within an hour.",
            ),
            why: words(
                "A limb in a gap or a body under a stone is freed only when the water is out; turtles at 25 degrees bear an hour, hardly more.",
            ),
            judged: words(
                "Gross volume between the water and the height of the animal over the lowest bed, over what the drain takes, or what may be let away where that is less.",
            ),
            cure: words(
                "a larger drain or a pump kept ready for it, somewhere to let the water go, gaps closed in the first place",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "drawn-down-in-time",
    name: "longest",
    row: "",
    what: "longest time to draw the water down",
    value: 3600.0,
    unit: "min",
    dimension: Dimension::TIME,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' practice: 30 to 60 minutes; the upper end",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::at_most(DRAW_DOWN_TIME.of(sheet, at)?, sheet.limit(&LIMITS[0])))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("4.08 m3 at 6 m3/h: 41 minutes"),
        design: words(include_str!("examples/drawn_down_in_time_met.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/drain/flow"),
    },
    Example {
        shows: words("at 2 m3/h"),
        design: words(include_str!("examples/drawn_down_in_time_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/drain/flow"),
    },
    Example {
        shows: words("the edge: 4.08 m3 at 4.08 m3/h"),
        design: words(include_str!("examples/drawn_down_in_time_edge.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/drain/flow"),
    },
    Example {
        shows: words("no more than 4 m3/h may be let away"),
        design: words(include_str!("examples/drawn_down_in_time_just_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/drain/allowed"),
    },
    Example {
        shows: words("what the drain takes is not stated"),
        design: words(include_str!("examples/drawn_down_in_time_gap.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/drain/flow"),
    },
];
