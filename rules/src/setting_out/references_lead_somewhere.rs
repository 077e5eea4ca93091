//! Every name that points to something else in the file finds it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::names::leads_somewhere;
use haulout_model::{About, Stage};
use haulout_sheet::{Case, GapKind};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("references-lead-somewhere"),
        title: words("A name leads nowhere"),
        chapter: words("setting-out"),
        demand: Demand::Shall,
        stage: Stage::Concept,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Reference,
        caution: None,
        manual: Manual {
            asks: words(
                "Every name in the file leads to something of the sort that is wanted there: a space, a pool, a zone, an outline, a level, a kind.",
            ),
            why: words(
                "What hangs on a name that leads nowhere is not assessed, so one mistyped letter can hide a check on which life depends.",
            ),
            judged: words(
                "By names alone; each name is a subject of its own, and its answer names the nearest there is. A name of something in a list that is to be decided is not assessed. A shall although no standard stands behind it: what cannot be set out can be neither built nor judged. What a design is held to is not a name in the file and is not asked about here.",
            ),
            cure: words("correct the name, or draw what it stands for"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::stands(leads_somewhere(sheet, at), GapKind::LeadsNowhere)),
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("the pool lies in a space that is there"),
        design: words(include_str!("examples/references_lead_somewhere_met.json")),
        subject: words("reference:main.space:turtle-side"),
        expected: Expected::Met,
        place: words("/pools/0/space"),
    },
    Example {
        shows: words("a letter is missing in the name of the space"),
        design: words(include_str!("examples/references_lead_somewhere_short.json")),
        subject: words("reference:main.space:turtle-sid"),
        expected: Expected::Short,
        place: words("/pools/0/space"),
    },
    Example {
        shows: words("a level hangs on a level that no pool has"),
        design: words(include_str!("examples/references_lead_somewhere_short_level.json")),
        subject: words("reference:main.low:main.watter"),
        expected: Expected::Short,
        place: words("/pools/0/levels/low/below"),
    },
    Example {
        shows: words("a run is of a kind that is not there"),
        design: words(include_str!("examples/references_lead_somewhere_short_kind.json")),
        subject: words("reference:out.kind:pe-36"),
        expected: Expected::Short,
        place: words("/circuits/0/runs/0/kind"),
    },
    Example {
        shows: words("a level that the pool could have but does not state is a name that leads somewhere"),
        design: words(include_str!("examples/references_lead_somewhere_edge.json")),
        subject: words("reference:main.liner-top:main.overflow"),
        expected: Expected::Met,
        place: words("/pools/0/levels/liner-top/above"),
    },
    Example {
        shows: words("which spaces there are is to be decided"),
        design: words(include_str!("examples/references_lead_somewhere_gap.json")),
        subject: words("reference:main.space:turtle-side"),
        expected: Expected::NotAssessed,
        place: words("/hall/spaces"),
    },
];
