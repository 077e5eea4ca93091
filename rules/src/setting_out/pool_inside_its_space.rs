//! Every pool lies within its space, or within the hall where it names none.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::plan::POOL_OUTSIDE;
use haulout_model::{About, Stage};
use haulout_sheet::{Case, Limit};

use super::sliver;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("pool-inside-its-space"),
        title: words("A pool reaches out of its space"),
        chapter: words("setting-out"),
        demand: Demand::Shall,
        stage: Stage::Concept,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "Every pool lies within the outline of the space it names; one that names none lies within the hall.",
            ),
            why: words(
                "A pool that reaches into the visitors' side or through a wall is drawn wrong, or nobody has thought of what parts them.",
            ),
            judged: words(
                "The area of the pool outside; a sliver is let pass. Whether the space lies in the hall is asked of the space. A shall although no standard stands behind it: what cannot be set out can be neither built nor judged.",
            ),
            cure: words(
                "move or redraw the pool, or the space; where a pool belongs to two spaces, draw one for both",
            ),
        },
    },
    limits: &[&SLIVER],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_most(POOL_OUTSIDE.of(sheet, at)?, sheet.limit(&SLIVER))),
};

static SLIVER: Limit = sliver("pool-inside-its-space");

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a pool well within its space"),
        design: words(include_str!("examples/pool_inside_its_space_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/outline"),
    },
    Example {
        shows: words("a pool that reaches 0.20 m into the gallery"),
        design: words(include_str!("examples/pool_inside_its_space_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/outline"),
    },
    Example {
        shows: words("a pool whose side is the side of its space"),
        design: words(include_str!("examples/pool_inside_its_space_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/hall/spaces/1/outline"),
    },
    Example {
        shows: words("the space is not drawn"),
        design: words(include_str!("examples/pool_inside_its_space_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/hall/spaces/1/outline"),
    },
    Example {
        shows: words("2.49 mm into the gallery along 4 m: just under 0.01 m2"),
        design: words(include_str!("examples/pool_inside_its_space_just_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words(""),
    },
    Example {
        shows: words("2.55 mm into the gallery along 4 m"),
        design: words(include_str!("examples/pool_inside_its_space_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words(""),
    },
];
