//! Heaters: what is installed against what is lost, and how warm the water gets when one sticks on.

use haulout_calc::formula::{Formula, Refusal};
use haulout_calc::heat::change::{CHANGE, WARMED};
use haulout_model::{About, Subject};
use haulout_quantity::si::{
    MassDensity, Power, Ratio, TemperatureInterval, ThermodynamicTemperature, Volume,
};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Value;
use haulout_sheet::{All, Figure, Known, Line, Sheet};

use super::bear::CEILING;
use super::loss::JOINED_LOSS;
use super::{JOINED_WATER, body, card, heater, heaters, pick};
use crate::pool::volume::NET_VOLUME;
use crate::pool::water::WARMEST;
use crate::terms::arithmetic;
use crate::water::times::POWERS;

/// Positions of the places on their card.
const IN_LINE: u16 = 0;
const IN_THE_POOL: u16 = 1;

pub(super) static HOUR: Value = Value {
    what: "an hour",
    value: 3600.0,
    unit: "h",
    dimension: Dimension::TIME,
    basis: Basis::Published,
    source: "definition",
};

static OF_PLACE: Formula<(Volume, u16), Volume> = Formula {
    card: &pick("water a heater in its place warms", "V", "V", &["V", "place"]),
    run: |(volume, _place)| Ok(volume),
};

static IS_IN_LINE: Formula<(u16,), bool> = Formula {
    card: &pick("heater in line", "yes", "place is in line", &["place"]),
    run: |(place,)| Ok(place == IN_LINE),
};

static IS_IN_THE_POOL: Formula<(u16,), bool> = Formula {
    card: &pick("heater in the pool", "yes", "place is in the pool", &["place"]),
    run: |(place,)| Ok(place == IN_THE_POOL),
};

static RESERVE_OF: Formula<(Power, Power), Ratio> = Formula {
    card: &arithmetic("installed over lost", "n", "P / P_loss", &["P", "P_loss"]),
    run: |(installed, lost)| {
        if lost.value > 0.0 {
            Ok(installed / lost)
        } else {
            Err(Refusal::new("this water loses no heat, so that no heater is wanted"))
        }
    },
};

/// Whether a heater stands in line.
///
/// # Errors
/// A gap where its place is not stated.
pub fn is_in_line(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&IS_IN_LINE, (heater(sheet, at).place.on(sheet)?.option(),))
}

/// Whether a heater lies in the pool itself.
///
/// # Errors
/// A gap where its place is not stated.
pub fn is_in_the_pool(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&IS_IN_THE_POOL, (heater(sheet, at).place.on(sheet)?.option(),))
}

/// Whether it goes off when the water stops.
///
/// # Errors
/// A gap where it is not stated.
pub fn goes_off_without_flow(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    heater(sheet, at).flow_switch.on(sheet)
}

/// Whether animals cannot touch it.
///
/// # Errors
/// A gap where it is not stated.
pub fn is_guarded(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    heater(sheet, at).guarded.on(sheet)
}

/// The cut-out that shares nothing with the thermostat.
///
/// # Errors
/// A gap where there is none, or where it is not stated.
pub fn limit_of(sheet: Sheet<'_>, at: Subject) -> Known<Line<ThermodynamicTemperature>> {
    heater(sheet, at.part(About::Heater).unwrap_or(at)).limit.on(sheet)
}

static THERE: Formula<(ThermodynamicTemperature,), bool> =
    Formula { card: &pick("a cut-out of its own", "yes", "it is stated", &["T"]), run: |(_,)| Ok(true) };

/// Whether a heater has a cut-out of its own at all.
///
/// # Errors
/// A gap when the file does not say; of kind *said none* when it says that there is none.
pub fn has_limit(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&THERE, (limit_of(sheet, at)?,))
}

static OVER: Formula<(ThermodynamicTemperature, TemperatureInterval), ThermodynamicTemperature> = Formula {
    card: &arithmetic("so much over the ceiling", "T_most", "T + over", &["T", "over"]),
    run: |(ceiling, over)| Ok(ceiling + over),
};

/// Where a cut-out may lie at the highest.
///
/// # Errors
/// A gap where the ceiling of an animal over the water is not known.
pub fn highest_limit(
    sheet: Sheet<'_>,
    at: Subject,
    over: Line<TemperatureInterval>,
) -> Known<Line<ThermodynamicTemperature>> {
    sheet.work(&OVER, (CEILING.of(sheet, at)?, over))
}

/// A heater in the pool warms that pool even while the pumps stand; others warm what their pump carries round.
fn warmed(sheet: Sheet<'_>, at: Subject, of: Subject) -> Known<Line<Volume>> {
    let place = heater(sheet, of).place.on(sheet)?;
    let volume = if sheet.option_of(place) == IN_THE_POOL {
        NET_VOLUME.of(sheet, at)
    } else {
        JOINED_WATER.of(sheet, at)
    };
    sheet.work(&OF_PLACE, (volume.map_err(|gaps| gaps.because(place.id()))?, place.option()))
}

/// Power of a heater, density, water it warms, specific heat.
type Warming = (Line<Power>, Line<MassDensity>, Line<Volume>, Line<Ratio>);

fn warming(sheet: Sheet<'_>, at: Subject) -> Known<Warming> {
    let of = at.part(About::Heater).expect("a heater-pool has a heater");
    let own = at.part(About::Pool).expect("a heater-pool has a pool");
    let power = heater(sheet, of).power.on(sheet);
    let (power, volume, (density, heat)) = (power, warmed(sheet, own, of), body(sheet, own)).all()?;
    Ok((power, density, volume, heat))
}

/// Rise in an hour while a heater sticks on.
pub static STUCK_RISE: Figure<Line<TemperatureInterval>> = Figure {
    card: &card("stuck-rise", "rise in an hour with the heater stuck on", About::HeaterPool, ("K", "K")),
    work: |sheet, at| {
        let (power, density, volume, heat) = warming(sheet, at)?;
        sheet.work(&CHANGE, (power, sheet.register(&HOUR, None), density, volume, heat))
    },
};

/// The water after the longest time unattended with a heater stuck on, from its warmest.
pub static STUCK_END: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &card(
        "stuck-end",
        "water after a heater stuck on over the time unattended",
        About::HeaterPool,
        ("°C", "°F"),
    ),
    work: |sheet, at| {
        let unattended = sheet.design().keepers.unattended.on(sheet);
        let own = at.part(About::Pool).expect("a heater-pool has a pool");
        let (from, time, (power, density, volume, heat)) =
            (WARMEST.of(sheet, own), unattended, warming(sheet, at)).all()?;
        sheet.work(&WARMED, (from, power, time, density, volume, heat))
    },
};

/// The heaters of the joined pools together.
pub static INSTALLED: Figure<Line<Power>> = Figure {
    card: &card("heaters-installed", "heaters of the joined pools", About::Pool, ("kW", "Btu(IT)/h")),
    work: |sheet, at| {
        let each: Vec<Known<Line<Power>>> =
            heaters(sheet, at)?.into_iter().map(|at| heater(sheet, at).power.on(sheet)).collect();
        sheet.fold(&POWERS, &each.all()?)
    },
};

/// How many times the loss they are.
pub static RESERVE: Figure<Line<Ratio>> = Figure {
    card: &card("heater-reserve", "heaters installed over heat lost", About::Pool, ("", "")),
    work: |sheet, at| sheet.work(&RESERVE_OF, (INSTALLED.of(sheet, at), JOINED_LOSS.of(sheet, at)).all()?),
};
