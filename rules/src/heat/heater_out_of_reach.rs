//! A heater in the pool is guarded from the animals.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::heat::heater::{is_guarded, is_in_the_pool};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("heater-out-of-reach"),
        title: words("An animal lies on the bare heater"),
        chapter: words("heat"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Heater,
        caution: Some(words("Electrical work; leave it to a licensed electrician.")),
        manual: Manual {
            asks: words("A heater that lies in the pool is guarded so that no animal touches it."),
            why: words(
                "Turtles and crocodilians rest against what is warm and are burnt before they feel it; they also break glass, and the water is live then. A shall by practice, since the life of animals is at stake.",
            ),
            judged: words(
                "Whether a heater in the pool is stated to be guarded. Heaters elsewhere are not asked.",
            ),
            cure: words("a guard of mesh or tube that lets water through, or a heater in line"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let guarded = is_guarded(sheet, at).map(Check::holds);
    Ok(Check::only_if(is_in_the_pool(sheet, at).map(Check::holds), guarded))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("in the pool behind a guard"),
        design: words(include_str!("examples/guard_met.json")),
        subject: words("heater:warmer"),
        expected: Expected::Met,
        place: words("/heaters/0/guarded"),
    },
    Example {
        shows: words("in the pool, bare"),
        design: words(include_str!("examples/guard_short.json")),
        subject: words("heater:warmer"),
        expected: Expected::Short,
        place: words("/heaters/0/guarded"),
    },
    Example {
        shows: words("not stated"),
        design: words(include_str!("examples/guard_gap.json")),
        subject: words("heater:warmer"),
        expected: Expected::NotAssessed,
        place: words("/heaters/0/guarded"),
    },
    Example {
        shows: words("in line"),
        design: words(include_str!("examples/guard_in_line.json")),
        subject: words("heater:warmer"),
        expected: Expected::DoesNotApply,
        place: words("/heaters/0/place"),
    },
];
