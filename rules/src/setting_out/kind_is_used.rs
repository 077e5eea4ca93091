//! Every kind has something that is of it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::names::kind_is_named;
use haulout_model::{About, Stage};
use haulout_sheet::Case;

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("kind-is-used"),
        title: words("Nothing is of a kind"),
        chapter: words("setting-out"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Embarrassment,
        case: Case::NORMAL,
        about: About::Kind,
        caution: None,
        manual: Manual {
            asks: words("Every kind under \"kinds\" is named by something in the file."),
            why: words("A kind that nothing names is left over, or what should have named it is forgotten."),
            judged: words(
                "By names alone; while something that may yet name it is to be decided, not assessed.",
            ),
            cure: words("name the kind where it belongs, or take it out"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::holds(kind_is_named(sheet, at)?)),
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a pipe that a run is of"),
        design: words(include_str!("examples/kind_is_used_met.json")),
        subject: words("kind:pipes.pe-63"),
        expected: Expected::Met,
        place: words("/circuits/0/runs/0/kind"),
    },
    Example {
        shows: words("a pipe that no run is of"),
        design: words(include_str!("examples/kind_is_used_short.json")),
        subject: words("kind:pipes.pe-63"),
        expected: Expected::Short,
        place: words("/kinds/pipes/pe-63"),
    },
    Example {
        shows: words("a pump of the name of a pipe is no use of the pipe"),
        design: words(include_str!("examples/kind_is_used_edge.json")),
        subject: words("kind:pipes.large"),
        expected: Expected::Short,
        place: words("/kinds/pipes/large"),
    },
    Example {
        shows: words("the circuits that may use the pipe are to be decided"),
        design: words(include_str!("examples/kind_is_used_gap.json")),
        subject: words("kind:pipes.pe-63"),
        expected: Expected::NotAssessed,
        place: words("/circuits"),
    },
];
