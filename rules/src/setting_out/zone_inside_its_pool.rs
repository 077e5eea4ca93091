//! Every zone lies within its pool.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::plan::ZONE_OUTSIDE;
use haulout_model::{About, Stage};
use haulout_sheet::{Case, Limit};

use super::sliver;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("zone-inside-its-pool"),
        title: words("A zone reaches out of its pool"),
        chapter: words("setting-out"),
        demand: Demand::Shall,
        stage: Stage::Concept,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Zone,
        caution: None,
        manual: Manual {
            asks: words("Every zone lies within the outline of its pool."),
            why: words(
                "A zone beyond the rim has no wall to hold its water; volumes and areas leave that part out without a word.",
            ),
            judged: words(
                "The area of the zone outside its pool; a sliver is let pass. A shall although no standard stands behind it: what cannot be set out can be neither built nor judged.",
            ),
            cure: words("pull the zone in, or draw it as an inset of the pool"),
        },
    },
    limits: &[&SLIVER],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_most(ZONE_OUTSIDE.of(sheet, at)?, sheet.limit(&SLIVER))),
};

static SLIVER: Limit = sliver("zone-inside-its-pool");

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a zone drawn as an inset"),
        design: words(include_str!("examples/zone_inside_its_pool_met.json")),
        subject: words("zone:deep"),
        expected: Expected::Met,
        place: words("/pools/0/zones/0/outline/inset/by"),
    },
    Example {
        shows: words("a zone 0.10 m wider than its pool"),
        design: words(include_str!("examples/zone_inside_its_pool_short.json")),
        subject: words("zone:deep"),
        expected: Expected::Short,
        place: words("/pools/0/zones/0/outline"),
    },
    Example {
        shows: words("a zone that shares three sides with its pool"),
        design: words(include_str!("examples/zone_inside_its_pool_edge.json")),
        subject: words("zone:deep"),
        expected: Expected::Met,
        place: words("/pools/0/outline"),
    },
    Example {
        shows: words("the pool's outline crosses itself"),
        design: words(include_str!("examples/zone_inside_its_pool_gap.json")),
        subject: words("zone:deep"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/outline"),
    },
    Example {
        shows: words("4.98 mm over a side of 2 m: just under 0.01 m2"),
        design: words(include_str!("examples/zone_inside_its_pool_just_met.json")),
        subject: words("zone:deep"),
        expected: Expected::Met,
        place: words(""),
    },
    Example {
        shows: words("5.1 mm over a side of 2 m"),
        design: words(include_str!("examples/zone_inside_its_pool_just_short.json")),
        subject: words("zone:deep"),
        expected: Expected::Short,
        place: words(""),
    },
];
