//! Before the first animals come, media of an established filter are moved in or ammonia is dosed to feed the bacteria.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::startup::start::{is_fed_first, is_seeded};
use haulout_figures::startup::step::is_stocked;
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{Case, GapKind, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("filter-begins-alive"),
        title: words("The filter begins bare"),
        chapter: words("start-up"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Whole,
        caution: None,
        manual: Manual {
            asks: words(
                "Before the first animals come, media of an established filter are moved in or ammonia is dosed to feed the bacteria.",
            ),
            why: words(
                "Bacteria that come by themselves and are fed by the animals alone take weeks, and the animals live in what is not yet turned over. How long, the course of the start-up tells.",
            ),
            judged: words(
                "Whether media are listed or a dose is stated. Media bring what lived in the other pool along: let its animals be known to be healthy.",
            ),
            cure: words(
                "gravel or foam from a filter in full work, or ammonia and a test kit for some weeks",
            ),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, _: Subject) -> Known<Check> {
    if !is_stocked(sheet)? {
        return Ok(Check::AllOf(Vec::new()));
    }
    let seeded = Check::stands(is_seeded(sheet), GapKind::SaidNone);
    let fed = Check::stands(is_fed_first(sheet), GapKind::SaidNone);
    Ok(Check::AnyOf(vec![Ok(seeded), Ok(fed)]))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("media are moved in"),
        design: words(include_str!("examples/alive_met.json")),
        subject: words("whole"),
        expected: Expected::Met,
        place: words("/start-up/media/0/volume"),
    },
    Example {
        shows: words("none are, but ammonia is dosed"),
        design: words(include_str!("examples/alive_fed.json")),
        subject: words("whole"),
        expected: Expected::Met,
        place: words("/start-up/dosed"),
    },
    Example {
        shows: words("neither"),
        design: words(include_str!("examples/alive_short.json")),
        subject: words("whole"),
        expected: Expected::Short,
        place: words("/start-up/media"),
    },
    Example {
        shows: words("neither is stated"),
        design: words(include_str!("examples/alive_gap.json")),
        subject: words("whole"),
        expected: Expected::NotAssessed,
        place: words("/start-up/media"),
    },
    Example {
        shows: words("nothing is brought in by steps"),
        design: words(include_str!("examples/alive_none.json")),
        subject: words("whole"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
];
