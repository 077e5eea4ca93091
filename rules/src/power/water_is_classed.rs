//! The water is classed, and somebody stands for it: without that no electrical rule can be answered.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::water::classed_by_somebody;
use haulout_model::{About, Stage, Subject};
use haulout_register::Matter;
use haulout_sheet::{Case, Known, Sheet};

use super::zones::{CAUTION, family, silent};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("water-is-classed"),
        title: words("The water is classed by nobody"),
        chapter: words("power"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: Some(Matter::Electrical),
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL,
        about: About::Whole,
        caution: Some(words(CAUTION)),
        manual: Manual {
            asks: words("The file says what the water counts as for electrical rules, and who decided that."),
            why: words(
                "Pool, fountain or other water: the distances follow from that word. As pool water a small room has no place left for a basking lamp; as other water nearly everything is allowed. The one who classes it has to answer for it, and whether keepers wade in it while it is energised decides.",
            ),
            judged: words(
                "A class and the name of who chose it are both stated. Whether the class is right is not judged, and no class is ever taken silently.",
            ),
            cure: words("ask the electrical designer; write down the class and the name"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, _at: Subject) -> Known<Check> {
    match family(sheet) {
        Some(_) => classed_by_somebody(sheet).map(Check::holds),
        None => Ok(silent()),
    }
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a class with a name to it"),
        design: words(include_str!("examples/classed_met.json")),
        subject: words("whole"),
        expected: Expected::Met,
        place: words("/electrical/classed-by"),
    },
    Example {
        shows: words("a class that nobody stands for"),
        design: words(include_str!("examples/classed_short.json")),
        subject: words("whole"),
        expected: Expected::Short,
        place: words("/electrical/classed-by"),
    },
    Example {
        shows: words("the same under the other family"),
        design: words(include_str!("examples/classed_edge.json")),
        subject: words("whole"),
        expected: Expected::Met,
        place: words("/electrical/classed"),
    },
    Example {
        shows: words("no class at all"),
        design: words(include_str!("examples/classed_gap.json")),
        subject: words("whole"),
        expected: Expected::NotAssessed,
        place: words("/electrical/classed"),
    },
];
