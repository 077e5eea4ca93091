//! How far a fill that runs in cools the water, and how long until a pool is warm again.

use haulout_calc::heat::change::AFTER_FILL;
use haulout_model::{About, Subject};
use haulout_quantity::si::{ThermodynamicTemperature, Time};
use haulout_sheet::{All, Figure, Known, Line, Many, Sheet};

use super::card;
use crate::pool::volume::NET_VOLUME;
use crate::pool::{pool, water::COOLEST};
use crate::terms::arithmetic;
use crate::water::times::{DRAIN_TIME, REFILL_TIME, REHEAT_TIME};

/// How long it runs: until its timer shuts it, or until somebody comes.
fn running(sheet: Sheet<'_>, at: Subject) -> Known<Line<Time>> {
    let longest = &pool(sheet, at).fill.longest;
    if longest.is_given() { longest.on(sheet) } else { sheet.design().keepers.unattended.on(sheet) }
}

/// The water after a fill that sticks open has run as long as it can, with the heater off.
pub static WATER_AFTER_FILL: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &card("water-after-fill", "water after a fill that sticks open", About::Pool, ("°C", "°F")),
    work: |sheet, at| {
        let fill = &pool(sheet, at).fill;
        let (cold, flow) = (fill.temperature.on(sheet), fill.flow.on(sheet)).all()?;
        let (coolest, time, volume) =
            (COOLEST.of(sheet, at), running(sheet, at), NET_VOLUME.of(sheet, at)).all()?;
        sheet.work(&AFTER_FILL, (coolest, cold, flow, time, volume))
    },
};

static TIMES: Many<Time, Time> =
    Many { card: &arithmetic("sum of times", "t", "+", &[]), run: |t| Ok(t.iter().copied().sum()) };

/// Time to empty the pool, fill it and warm the new water.
pub static WARM_AGAIN: Figure<Line<Time>> = Figure {
    card: &card("warm-again", "time until the pool is warm again", About::Pool, ("h", "h")),
    work: |sheet, at| {
        let times = vec![DRAIN_TIME.of(sheet, at), REFILL_TIME.of(sheet, at), REHEAT_TIME.of(sheet, at)];
        sheet.fold(&TIMES, &times.all()?)
    },
};
