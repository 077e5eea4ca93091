//! Every space for visitors or animals is named by something.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::names::{is_peopled, space_is_named};
use haulout_model::{About, Stage};
use haulout_sheet::Case;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("space-is-used"),
        title: words("Nothing lies or lives in a space"),
        chapter: words("setting-out"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Embarrassment,
        case: Case::NORMAL,
        about: About::Space,
        caution: None,
        manual: Manual {
            asks: words(
                "Every space for visitors or for animals is named by something in the file: a group that lives there, a pool, a viewing position, a door.",
            ),
            why: words("A space that nothing names is left over, or what belongs in it is forgotten."),
            judged: words(
                "By names alone; an outline or a level taken from the space counts. Spaces for keepers may stand empty. While something that may yet name the space is to be decided, not assessed.",
            ),
            cure: words("say what is in the space, or take it out"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge: |sheet, at| {
        let peopled = is_peopled(sheet, at).map(Check::holds);
        Ok(Check::only_if(peopled, space_is_named(sheet, at).map(Check::holds)))
    },
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a pool and a group are in the space"),
        design: words(include_str!("examples/space_is_used_met.json")),
        subject: words("space:turtle-side"),
        expected: Expected::Met,
        place: words("/pools/0/space"),
    },
    Example {
        shows: words("nothing names the gallery"),
        design: words(include_str!("examples/space_is_used_short.json")),
        subject: words("space:gallery"),
        expected: Expected::Short,
        place: words("/hall/spaces/0/id"),
    },
    Example {
        shows: words("a space for keepers may stand empty"),
        design: words(include_str!("examples/space_is_used_edge.json")),
        subject: words("space:gallery"),
        expected: Expected::DoesNotApply,
        place: words("/hall/spaces/0/for"),
    },
    Example {
        shows: words("nobody says for whom the space is"),
        design: words(include_str!("examples/space_is_used_gap.json")),
        subject: words("space:gallery"),
        expected: Expected::NotAssessed,
        place: words("/hall/spaces/0/for"),
    },
];
