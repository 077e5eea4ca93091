//! No two pools lie over one another on plan.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::plan::POOLS_OVERLAP;
use haulout_model::{About, Stage};
use haulout_sheet::{Case, Limit};

use super::sliver;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("pools-do-not-overlap"),
        title: words("Two pools lie over one another"),
        chapter: words("setting-out"),
        demand: Demand::Shall,
        stage: Stage::Concept,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::PoolPair,
        caution: None,
        manual: Manual {
            asks: words("No two pools have an area in common on plan."),
            why: words(
                "Two basins in one place are a slip of the drawing, or one hangs over the other and nothing here has looked at what carries it.",
            ),
            judged: words(
                "The area that both cover; a sliver is let pass, and walls between them are not asked for. Levels are not looked at: a bowl over a pool is accepted as a variance by whoever has looked at what carries it. A shall although no standard stands behind it: what cannot be set out can be neither built nor judged.",
            ),
            cure: words("move one of them, or draw the lower one around the upper"),
        },
    },
    limits: &[&SLIVER],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_most(POOLS_OVERLAP.of(sheet, at)?, sheet.limit(&SLIVER))),
};

static SLIVER: Limit = sliver("pools-do-not-overlap");

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("two pools apart"),
        design: words(include_str!("examples/pools_do_not_overlap_met.json")),
        subject: words("pool:main+pool:basin"),
        expected: Expected::Met,
        place: words("/pools/1/outline"),
    },
    Example {
        shows: words("the basin reaches 0.20 m over the pool"),
        design: words(include_str!("examples/pools_do_not_overlap_short.json")),
        subject: words("pool:main+pool:basin"),
        expected: Expected::Short,
        place: words("/pools/1/outline"),
    },
    Example {
        shows: words("two pools with one side in common"),
        design: words(include_str!("examples/pools_do_not_overlap_edge.json")),
        subject: words("pool:main+pool:basin"),
        expected: Expected::Met,
        place: words("/pools/0/outline"),
    },
    Example {
        shows: words("the basin is not drawn"),
        design: words(include_str!("examples/pools_do_not_overlap_gap.json")),
        subject: words("pool:main+pool:basin"),
        expected: Expected::NotAssessed,
        place: words("/pools/1/outline"),
    },
    Example {
        shows: words("9.96 mm over a side of 1 m: just under 0.01 m2"),
        design: words(include_str!("examples/pools_do_not_overlap_just_met.json")),
        subject: words("pool:main+pool:basin"),
        expected: Expected::Met,
        place: words(""),
    },
    Example {
        shows: words("10.2 mm over a side of 1 m"),
        design: words(include_str!("examples/pools_do_not_overlap_just_short.json")),
        subject: words("pool:main+pool:basin"),
        expected: Expected::Short,
        place: words(""),
    },
];
