//! A fair part of the bed lies within the window of depths: deep enough for a full-grown animal to go under and right itself, shallow enough to be seen.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::window::shares::IN_THE_WINDOW;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("bed-within-the-window"),
        title: words("Little of the bed lies at a depth that suits animals and visitors"),
        chapter: words("water"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::PoolGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "A fair part of the bed lies within the window of depths: deep enough for a full-grown animal to go under and right itself, shallow enough to be seen.",
            ),
            why: words(
                "A mean depth says nothing: one deep corner and one shelf have a mean in the window and no bed there.",
            ),
            judged: words(
                "Plan area of the bed whose depth at the normal level lies between the two ends of the window, over the water surface; band by band.",
            ),
            cure: words(
                "move a zone into the window, widen the window by clarity, or raise a deep bed on void-formers (the figure void-formers-wanted gives their bulk); at the same water level they do not lighten the pool, for what they hold is water",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_least(IN_THE_WINDOW.of(sheet, at)?, sheet.limit(&LIMITS[0]))),
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "bed-within-the-window",
    name: "share",
    row: "",
    what: "least share of the bed within the window",
    value: 0.30,
    unit: "%",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "exhibit practice: no source; the greater part of what is left rests, or gets away",
}];

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.70 m of clear water over seven tenths of the bed"),
        design: words(include_str!("examples/bed_within_the_window_met.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/zones/0/depth"),
    },
    Example {
        shows: words("clarity 0.50 m: the deep zone is out of sight, the shelf too shallow"),
        design: words(include_str!("examples/bed_within_the_window_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("the edge: three tenths"),
        design: words(include_str!("examples/bed_within_the_window_edge.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Met,
        place: words("/pools/0/zones/0/outline"),
    },
    Example {
        shows: words("clarity not stated"),
        design: words(include_str!("examples/bed_within_the_window_gap.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("29.5 %, just short"),
        design: words(include_str!("examples/bed_within_the_window_just_short.json")),
        subject: words("pool:main+group:sliders"),
        expected: Expected::Short,
        place: words("/pools/0/zones/0/outline"),
    },
];
