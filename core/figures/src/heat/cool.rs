//! How fast the water cools with the heater off, and how long until the animals feel it.

use haulout_calc::heat::change::{CHANGE, COOLING_TIME};
use haulout_model::{About, Subject};
use haulout_quantity::si::{TemperatureInterval, ThermodynamicTemperature, Time};
use haulout_sheet::{All, Figure, Known, Line, Sheet};

use super::bear::FLOOR;
use super::heater::HOUR;
use super::loss::JOINED_LOSS;
use super::{JOINED_WATER, body, card};
use crate::pool::water::COOLEST;

/// Fall in an hour with the heater off.
pub static FALL_RATE: Figure<Line<TemperatureInterval>> = Figure {
    card: &card("cooling-rate", "fall in an hour with the heater off", About::Pool, ("K", "K")),
    work: |sheet, at| {
        let (loss, (density, heat), volume) =
            (JOINED_LOSS.of(sheet, at), body(sheet, at), JOINED_WATER.of(sheet, at)).all()?;
        sheet.work(&CHANGE, (loss, sheet.register(&HOUR, None), density, volume, heat))
    },
};

/// Time from a temperature to the coolest that all animals are kept in.
pub(super) fn to_the_floor(
    sheet: Sheet<'_>,
    at: Subject,
    from: Known<Line<ThermodynamicTemperature>>,
) -> Known<Line<Time>> {
    let (from, floor, loss) = (from, FLOOR.of(sheet, at), JOINED_LOSS.of(sheet, at)).all()?;
    let ((density, heat), volume) = (body(sheet, at), JOINED_WATER.of(sheet, at)).all()?;
    sheet.work(&COOLING_TIME, (from, floor, loss, density, volume, heat))
}

/// Time from the coolest the water gets to the coolest the animals are kept in.
pub static TIME_TO_FLOOR: Figure<Line<Time>> = Figure {
    card: &card(
        "time-to-the-cold",
        "time until the water is too cold with the heater off",
        About::Pool,
        ("h", "h"),
    ),
    work: |sheet, at| to_the_floor(sheet, at, COOLEST.of(sheet, at)),
};
