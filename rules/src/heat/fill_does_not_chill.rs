//! A fill that sticks open does not chill the water under what the animals bear.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::heat::bear::{FLOOR, is_lived_in};
use haulout_figures::heat::fill::WATER_AFTER_FILL;
use haulout_figures::water::overflow::fill_flow;
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("fill-does-not-chill"),
        title: words("A fill that sticks open chills the water"),
        chapter: words("heat"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "After the fill has run as long as it can, the water is still over the floor of all the animals.",
            ),
            why: words(
                "Cold mains run in while the overflow carries warm water away; by the morning the pool is as cold as the mains.",
            ),
            judged: words(
                "From the coolest water stated, mixed, over the longest time a timer lets it run, or over the longest time unattended where no timer is stated; the heater is not counted on.",
            ),
            cure: words("a timer that shuts a second valve, a smaller fill, a tempered fill"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if let Err(none) = fill_flow(sheet, at) {
        return Ok(Check::only_if(Ok(Check::holds(none)), Ok(Check::holds(none))));
    }
    if !is_lived_in(sheet, at)? {
        return Ok(Check::AllOf(Vec::new()));
    }
    let (after, floor) = (WATER_AFTER_FILL.of(sheet, at), FLOOR.of(sheet, at)).all()?;
    Ok(Check::at_least(after, floor))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("half an hour of 0.6 m3/h into 3 m3: 22.5 °C"),
        design: words(include_str!("examples/chill_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/longest"),
    },
    Example {
        shows: words("no timer: ten hours, 10.2 °C"),
        design: words(include_str!("examples/chill_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/flow"),
    },
    Example {
        shows: words("the temperature of the fill is not stated"),
        design: words(include_str!("examples/chill_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/fill/temperature"),
    },
    Example {
        shows: words("no fill"),
        design: words(include_str!("examples/chill_none.json")),
        subject: words("pool:main"),
        expected: Expected::DoesNotApply,
        place: words("/pools/0/fill/flow"),
    },
];
