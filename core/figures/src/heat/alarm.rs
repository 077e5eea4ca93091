//! Alarms that watch the temperature of the water.

use haulout_calc::formula::Formula;
use haulout_model::keeper::Alarm;
use haulout_model::{About, State, Subject};
use haulout_quantity::si::{ThermodynamicTemperature, Time};
use haulout_sheet::{Figure, Gap, Known, Line, Sheet};

use super::cool::to_the_floor;
use super::{card, pick, pools};

/// The option of an alarm that watches the temperature.
const TEMPERATURE: u16 = 1;

static WATCHES: Formula<(u16,), bool> = Formula {
    card: &pick("alarm of the temperature", "yes", "it watches the temperature", &["watches"]),
    run: |(watches,)| Ok(watches == TEMPERATURE),
};

fn alarm(sheet: Sheet<'_>, at: Subject) -> &Alarm {
    &sheet.design().keepers.alarms.items()[at.index()]
}

/// The pool an alarm watches, where it names one that is there.
///
/// # Errors
/// A gap where it names none.
pub fn pool_of(sheet: Sheet<'_>, at: Subject) -> Known<Subject> {
    let link = &alarm(sheet, at).pool;
    let found = link.name().and_then(|name| sheet.design().pool_named(name));
    found.map(|pool| Subject::nth(About::Pool, pool)).ok_or_else(|| Gap::from(link.missing()).into())
}

/// The alarms that watch the joined water of a pool, whatever they watch of it.
///
/// # Errors
/// A gap where alarms are not stated.
pub fn alarms_of(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Subject>> {
    let alarms = &sheet.design().keepers.alarms;
    if !matches!(alarms.state(), State::None)
        && let Some(missing) = alarms.missing()
    {
        return Err(Gap::from(missing).into());
    }
    let pools = pools(sheet, at)?;
    let all = (0..alarms.items().len()).map(|i| Subject::nth(About::Alarm, i));
    Ok(all.filter(|alarm| pool_of(sheet, *alarm).is_ok_and(|pool| pools.contains(&pool))).collect())
}

/// Whether an alarm watches the temperature.
///
/// # Errors
/// A gap where it is not stated what it watches.
pub fn watches_temperature(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&WATCHES, (alarm(sheet, at).watches.on(sheet)?.option(),))
}

/// Whether it reaches somebody who is not in the building.
///
/// # Errors
/// A gap where it is not stated.
pub fn calls_out(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    alarm(sheet, at).calls_out.on(sheet)
}

const DEGREES: (&str, &str) = ("°C", "°F");

/// Where an alarm goes off, falling.
pub static ALARM_LOW: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &card("alarm-low", "low alarm temperature", About::Alarm, DEGREES),
    work: |sheet, at| alarm(sheet, at).low.on(sheet),
};

/// Where an alarm goes off, rising.
pub static ALARM_HIGH: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &card("alarm-high", "high alarm temperature", About::Alarm, DEGREES),
    work: |sheet, at| alarm(sheet, at).high.on(sheet),
};

/// Time from the low alarm until the water is too cold for some of the animals.
pub static TIME_AFTER_ALARM: Figure<Line<Time>> = Figure {
    card: &card(
        "time-after-the-alarm",
        "time from the low alarm until the water is too cold",
        About::Alarm,
        ("h", "h"),
    ),
    work: |sheet, at| to_the_floor(sheet, pool_of(sheet, at)?, ALARM_LOW.of(sheet, at)),
};
