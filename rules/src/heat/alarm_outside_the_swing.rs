//! An alarm of the temperature goes off outside the swing of the water, and only there.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::heat::alarm::{ALARM_HIGH, ALARM_LOW, pool_of, watches_temperature};
use haulout_figures::pool::water::{COOLEST, WARMEST};
use haulout_model::{About, Stage, Subject};
use haulout_sheet::{All, Case, Known, Sheet};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("alarm-outside-the-swing"),
        title: words("The alarm of the temperature cries wolf"),
        chapter: words("heat"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Alarm,
        caution: None,
        manual: Manual {
            asks: words(
                "The low alarm lies at or under the coolest water stated and the high alarm at or over the warmest.",
            ),
            why: words("An alarm that goes off every morning is switched off by the third."),
            judged: words(
                "Both ends of an alarm that watches the temperature, against temperature less and plus the swing of the pool it watches.",
            ),
            cure: words("alarms a degree outside the swing, or a thermostat with a smaller one"),
        },
    },
    limits: &[],
    examples: EXAMPLES,
    judge,
};

fn outside(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let pool = pool_of(sheet, at)?;
    let low = (ALARM_LOW.of(sheet, at), COOLEST.of(sheet, pool)).all();
    let high = (ALARM_HIGH.of(sheet, at), WARMEST.of(sheet, pool)).all();
    Ok(Check::AllOf(vec![
        low.map(|(low, coolest)| Check::at_most(low, coolest)),
        high.map(|(high, warmest)| Check::at_least(high, warmest)),
    ]))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let watches = watches_temperature(sheet, at).map(Check::holds);
    Ok(Check::only_if(watches, outside(sheet, at)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("23 and 27 °C for water of 24 to 26 °C"),
        design: words(include_str!("examples/swing_met.json")),
        subject: words("alarm:thermo"),
        expected: Expected::Met,
        place: words("/keepers/alarms/0/low"),
    },
    Example {
        shows: words("goes off at 24.5 °C"),
        design: words(include_str!("examples/swing_low.json")),
        subject: words("alarm:thermo"),
        expected: Expected::Short,
        place: words("/keepers/alarms/0/low"),
    },
    Example {
        shows: words("goes off at 25.5 °C"),
        design: words(include_str!("examples/swing_high.json")),
        subject: words("alarm:thermo"),
        expected: Expected::Short,
        place: words("/keepers/alarms/0/high"),
    },
    Example {
        shows: words("the high alarm is not stated"),
        design: words(include_str!("examples/swing_gap.json")),
        subject: words("alarm:thermo"),
        expected: Expected::NotAssessed,
        place: words("/keepers/alarms/0/high"),
    },
    Example {
        shows: words("an alarm of the level"),
        design: words(include_str!("examples/swing_level.json")),
        subject: words("alarm:thermo"),
        expected: Expected::DoesNotApply,
        place: words("/keepers/alarms/0/watches"),
    },
];
