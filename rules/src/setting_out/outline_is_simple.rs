//! The sides of an outline neither cross nor touch, and enclose something.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::names::{is_simple, outline_of, what_it_is_drawn_from};
use haulout_model::{About, Stage};
use haulout_sheet::{Case, GapKind};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("outline-is-simple"),
        title: words("An outline crosses itself or encloses nothing"),
        chapter: words("setting-out"),
        demand: Demand::Shall,
        stage: Stage::Concept,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Outline,
        caution: None,
        manual: Manual {
            asks: words(
                "Every outline that is drawn runs once round what it stands for: no side crosses, touches or doubles back on another, and an area is enclosed.",
            ),
            why: words(
                "An outline that crosses itself has no inside: nobody can dig it, and no area, depth or volume can be had from it.",
            ),
            judged: words(
                "Exactly, on the sides as drawn, curves flattened to 5 mm. An outline made from another that cannot be drawn is not assessed: the fault is the other's. A shall although no standard stands behind it: what cannot be set out can be neither built nor judged.",
            ),
            cure: words("list the corners in the order met on a walk round the outline"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge: |sheet, at| {
        let field = outline_of(sheet, at);
        what_it_is_drawn_from(sheet, field)?;
        Ok(Check::stands(is_simple(sheet, field), GapKind::Unsound))
    },
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a rectangle"),
        design: words(include_str!("examples/outline_is_simple_met.json")),
        subject: words("outline:main"),
        expected: Expected::Met,
        place: words("/pools/0/outline"),
    },
    Example {
        shows: words("two corners of the pool are listed in the wrong order"),
        design: words(include_str!("examples/outline_is_simple_short.json")),
        subject: words("outline:main"),
        expected: Expected::Short,
        place: words("/pools/0/outline"),
    },
    Example {
        shows: words("corners that go clockwise and end where they began"),
        design: words(include_str!("examples/outline_is_simple_edge.json")),
        subject: words("outline:main"),
        expected: Expected::Met,
        place: words("/pools/0/outline"),
    },
    Example {
        shows: words("a zone follows a pool whose outline crosses itself"),
        design: words(include_str!("examples/outline_is_simple_gap.json")),
        subject: words("outline:deep"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/outline"),
    },
];
