//! When the heating fails, somebody comes before the water is too cold for any of the animals.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::heat::alarm::{TIME_AFTER_ALARM, alarms_of, calls_out, watches_temperature};
use haulout_figures::heat::cool::TIME_TO_FLOOR;
use haulout_figures::heat::{bear::is_lived_in, is_heated};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("cold-noticed-in-time"),
        title: words("The heating fails and nobody comes in time"),
        chapter: words("heat"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "With all heaters off, the water stays over the floor of all the animals over the longest time unattended, or an alarm of its temperature calls somebody who is there before it is reached.",
            ),
            why: words(
                "A tripped breaker at closing time is found at opening time. How long the water lasts follows from what it loses and how much of it there is. A shall by practice, since the life of animals is at stake.",
            ),
            judged: words(
                "Winter losses of all pools the circuits join, at their working temperature and with the winter air as stated, over the heat the water holds. From the coolest water stated against the time unattended; or from the low alarm against the response time, where the alarm watches the temperature and calls somebody out. Where the power of the building fails, its air cools too and the time is shorter.",
            ),
            cure: words(
                "an alarm that goes off a degree under the working temperature and calls out; insulation and a cover; a second heater on another circuit",
            ),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

/// An alarm of the temperature that calls somebody who is there in time.
fn called(sheet: Sheet<'_>, alarm: Subject) -> Known<Check> {
    let time = (TIME_AFTER_ALARM.of(sheet, alarm), sheet.design().keepers.response.on(sheet)).all();
    Ok(Check::AllOf(vec![
        watches_temperature(sheet, alarm).map(Check::holds),
        calls_out(sheet, alarm).map(Check::holds),
        time.map(|(left, response)| Check::at_least(left, response)),
    ]))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !is_heated(sheet, at)? || !is_lived_in(sheet, at)? {
        return Ok(Check::AllOf(Vec::new()));
    }
    let lasts = (TIME_TO_FLOOR.of(sheet, at), sheet.design().keepers.unattended.on(sheet)).all();
    let mut ways = vec![lasts.map(|(left, unattended)| Check::at_least(left, unattended))];
    match alarms_of(sheet, at) {
        Ok(alarms) => ways.extend(alarms.into_iter().map(|alarm| called(sheet, alarm))),
        Err(gaps) => ways.push(Err(gaps)),
    }
    Ok(Check::AnyOf(ways))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("five hours from the alarm at 23 °C to 22 °C, two until somebody is there"),
        design: words(include_str!("examples/cold_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/keepers/alarms/0/low"),
    },
    Example {
        shows: words("ten hours unattended, and the water stays warm enough longer"),
        design: words(include_str!("examples/cold_slow.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/keepers/unattended"),
    },
    Example {
        shows: words("no alarm over fourteen hours"),
        design: words(include_str!("examples/cold_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/keepers/unattended"),
    },
    Example {
        shows: words("an alarm at 22.2 °C"),
        design: words(include_str!("examples/cold_late.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/keepers/alarms/0/low"),
    },
    Example {
        shows: words("an alarm that rings in the empty building"),
        design: words(include_str!("examples/cold_unheard.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/keepers/alarms/0/calls-out"),
    },
    Example {
        shows: words("an alarm of the level"),
        design: words(include_str!("examples/cold_level.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/keepers/alarms/0/watches"),
    },
    Example {
        shows: words("alarms are not stated"),
        design: words(include_str!("examples/cold_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/keepers/alarms"),
    },
    Example {
        shows: words("no heater"),
        design: words(include_str!("examples/cold_unheated.json")),
        subject: words("pool:main"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
];
