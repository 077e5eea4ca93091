//! A child cannot readily climb a guard.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::barrier::guard::NOT_CLIMBED;
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("guard-not-climbed"),
        title: words("A child can climb the guard"),
        chapter: words("visitors"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL,
        about: About::Guard,
        caution: Some(words(
            "Guards are a matter of life safety: building control or the authority having jurisdiction decides, and strength is for a structural engineer.",
        )),
        manual: Manual {
            asks: words("A guard has no horizontal rails, ledges or footholds a child climbs by."),
            why: words(
                "The guard that is high enough on paper is a ladder when its rails are horizontal; beyond it is water.",
            ),
            judged: words(
                "As the design says of the guard. England's Approved Document K, 2013 edition, paragraph 3.3, asks to avoid horizontal rails where children under five may be; it is held to at any water, whatever the code.",
            ),
            cure: words("vertical bars or a flush infill, and no step, planter or flat ledge within 1.2 m"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    NOT_CLIMBED.of(sheet, at).map(Check::holds)
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("vertical bars"),
        design: words(include_str!("examples/guard_not_climbed_met.json")),
        subject: words("guard:deck"),
        expected: Expected::Met,
        place: words("/visitors/guards/0/climbable"),
    },
    Example {
        shows: words("horizontal rails"),
        design: words(include_str!("examples/guard_not_climbed_short.json")),
        subject: words("guard:deck"),
        expected: Expected::Short,
        place: words("/visitors/guards/0/climbable"),
    },
    Example {
        shows: words("the edge: no guards at all"),
        design: words(include_str!("examples/guard_not_climbed_edge.json")),
        subject: words(""),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("not stated"),
        design: words(include_str!("examples/guard_not_climbed_gap.json")),
        subject: words("guard:deck"),
        expected: Expected::NotAssessed,
        place: words("/visitors/guards/0/climbable"),
    },
];
