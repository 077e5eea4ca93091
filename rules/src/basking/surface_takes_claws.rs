//! The surface is of wood, cork, stone or sand, not of resin or plastic.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::site::TAKES_CLAWS;
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("surface-takes-claws"),
        title: words("The basking surface takes no claws"),
        chapter: words("basking"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Basking,
        caution: None,
        manual: Manual {
            asks: words("The surface is of wood, cork, stone or sand, not of resin or plastic."),
            why: words("Claws find no hold on what is hard and smooth, and wear or break on it."),
            judged: words("Material as stated. Resin and plastic fall short however they are textured."),
            cure: words("lay wood or cork over it"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::holds(TAKES_CLAWS.of(sheet, at)?))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("wood"),
        design: words(include_str!("examples/surface_takes_claws_met.json")),
        subject: words("basking:a"),
        expected: Expected::Met,
        place: words("/basking/0/material"),
    },
    Example {
        shows: words("resin"),
        design: words(include_str!("examples/surface_takes_claws_short.json")),
        subject: words("basking:a"),
        expected: Expected::Short,
        place: words("/basking/0/material"),
    },
    Example {
        shows: words("the edge: concrete is rough enough"),
        design: words(include_str!("examples/surface_takes_claws_edge.json")),
        subject: words("basking:a"),
        expected: Expected::Met,
        place: words("/basking/0/material"),
    },
    Example {
        shows: words("not stated"),
        design: words(include_str!("examples/surface_takes_claws_gap.json")),
        subject: words("basking:a"),
        expected: Expected::NotAssessed,
        place: words("/basking/0/material"),
    },
];
