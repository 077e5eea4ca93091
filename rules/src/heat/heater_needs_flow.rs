//! A heater in line goes off when the water stops.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::heat::heater::{goes_off_without_flow, is_in_line};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("heater-needs-flow"),
        title: words("A heater in line runs dry"),
        chapter: words("heat"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL,
        about: About::Heater,
        caution: Some(words("Electrical work; leave it to a licensed electrician.")),
        manual: Manual {
            asks: words("A heater in line goes off when the water stops."),
            why: words(
                "A pump that stops, a valve that is shut or a filter that is clogged leaves the heater with a litre of water. It boils, melts the union, lets the pool out and may burn. A shall by practice, since life is at stake.",
            ),
            judged: words(
                "Whether a heater that stands in line is stated to have a flow switch. Heaters in the pool, in a sump or under the bed are not asked.",
            ),
            cure: words("a flow switch that opens the heater, or a flow-proved relay of the pump"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let stops = goes_off_without_flow(sheet, at).map(Check::holds);
    Ok(Check::only_if(is_in_line(sheet, at).map(Check::holds), stops))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("in line with a flow switch"),
        design: words(include_str!("examples/flow_met.json")),
        subject: words("heater:warmer"),
        expected: Expected::Met,
        place: words("/heaters/0/flow-switch"),
    },
    Example {
        shows: words("in line without one"),
        design: words(include_str!("examples/flow_short.json")),
        subject: words("heater:warmer"),
        expected: Expected::Short,
        place: words("/heaters/0/flow-switch"),
    },
    Example {
        shows: words("not stated"),
        design: words(include_str!("examples/flow_gap.json")),
        subject: words("heater:warmer"),
        expected: Expected::NotAssessed,
        place: words("/heaters/0/flow-switch"),
    },
    Example {
        shows: words("in the pool"),
        design: words(include_str!("examples/flow_in_pool.json")),
        subject: words("heater:warmer"),
        expected: Expected::DoesNotApply,
        place: words("/heaters/0/place"),
    },
];
