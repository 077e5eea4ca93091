//! Pool water is given to the transport water over long enough that its pH moves by no more than half a unit an hour.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::startup::arrival::{MIXING_TIME, mixed, pools};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("waters-mixed-slowly"),
        title: words("Waters mixed too fast for their difference of pH"),
        chapter: words("start-up"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Arrival,
        caution: None,
        manual: Manual {
            asks: words(
                "Pool water is given to the transport water over long enough that its pH moves by no more than half a unit an hour.",
            ),
            why: words(
                "After hours of transport the water is sour and its ammonia harmless; in hard, alkaline pool water the same ammonia turns poisonous at once.",
            ),
            judged: words(
                "Difference of the two pH at half a unit an hour against the time stated for mixing.",
            ),
            cure: words("mix longer, in small cups, and throw the transport water away afterwards"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if pools(sheet, at)?.is_empty() {
        return Ok(Check::AllOf(Vec::new()));
    }
    let times = (mixed(sheet, at), MIXING_TIME.of(sheet, at)).all();
    times.map(|(stated, needed)| Check::at_least(stated, needed))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("an hour and a half for half a unit"),
        design: words(include_str!("examples/mixed_met.json")),
        subject: words("arrival:bags"),
        expected: Expected::Met,
        place: words("/start-up/arrivals/0/mixed"),
    },
    Example {
        shows: words("an hour for half a unit"),
        design: words(include_str!("examples/mixed_edge.json")),
        subject: words("arrival:bags"),
        expected: Expected::Met,
        place: words("/start-up/arrivals/0/mixed"),
    },
    Example {
        shows: words("half an hour"),
        design: words(include_str!("examples/mixed_short.json")),
        subject: words("arrival:bags"),
        expected: Expected::Short,
        place: words("/start-up/arrivals/0/mixed"),
    },
    Example {
        shows: words("the pH of the transport water is not stated"),
        design: words(include_str!("examples/mixed_gap.json")),
        subject: words("arrival:bags"),
        expected: Expected::NotAssessed,
        place: words("/start-up/arrivals/0/ph"),
    },
    Example {
        shows: words("the animals live where there is no water"),
        design: words(include_str!("examples/mixed_dry.json")),
        subject: words("arrival:bags"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
];
