//! Every space lies within the walls of the hall.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::plan::SPACE_OUTSIDE;
use haulout_model::{About, Stage};
use haulout_sheet::{Case, Limit};

use super::sliver;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("space-inside-the-hall"),
        title: words("A space reaches out of the hall"),
        chapter: words("setting-out"),
        demand: Demand::Shall,
        stage: Stage::Concept,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Space,
        caution: None,
        manual: Manual {
            asks: words("Every space lies within the outline of the hall."),
            why: words("The hall is there already: what is drawn through its wall cannot be built."),
            judged: words(
                "The area of the space outside the hall; a sliver is let pass. A shall although no standard stands behind it: what cannot be set out can be neither built nor judged.",
            ),
            cure: words("redraw the space, or measure the hall again"),
        },
    },
    limits: &[&SLIVER],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_most(SPACE_OUTSIDE.of(sheet, at)?, sheet.limit(&SLIVER))),
};

static SLIVER: Limit = sliver("space-inside-the-hall");

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("two spaces that fill the hall"),
        design: words(include_str!("examples/space_inside_the_hall_met.json")),
        subject: words("space:turtle-side"),
        expected: Expected::Met,
        place: words("/hall/outline"),
    },
    Example {
        shows: words("a space drawn 0.50 m through the wall"),
        design: words(include_str!("examples/space_inside_the_hall_short.json")),
        subject: words("space:turtle-side"),
        expected: Expected::Short,
        place: words("/hall/spaces/1/outline"),
    },
    Example {
        shows: words("2 mm over a side of 4 m"),
        design: words(include_str!("examples/space_inside_the_hall_edge.json")),
        subject: words("space:turtle-side"),
        expected: Expected::Met,
        place: words("/hall/spaces/1/outline"),
    },
    Example {
        shows: words("the hall is not drawn"),
        design: words(include_str!("examples/space_inside_the_hall_gap.json")),
        subject: words("space:turtle-side"),
        expected: Expected::NotAssessed,
        place: words("/hall/outline"),
    },
    Example {
        shows: words("2.49 mm over a side of 4 m: just under 0.01 m2"),
        design: words(include_str!("examples/space_inside_the_hall_just_met.json")),
        subject: words("space:turtle-side"),
        expected: Expected::Met,
        place: words(""),
    },
    Example {
        shows: words("2.55 mm over a side of 4 m"),
        design: words(include_str!("examples/space_inside_the_hall_just_short.json")),
        subject: words("space:turtle-side"),
        expected: Expected::Short,
        place: words(""),
    },
];
