//! Evaporation of a pool by two methods, as a band, and how far the level falls by it.

use haulout_calc::heat::air::{DRY_AIR_DENSITY, HUMIDITY_RATIO, PARTIAL_PRESSURE};
use haulout_calc::heat::evaporation as formulas;
use haulout_calc::water::{DENSITY, VAPOUR_PRESSURE};
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{MassRate, Pressure, ThermodynamicTemperature, Velocity};
use haulout_register::Value;
use haulout_sheet::{All, Figure, Known, Line, Many, Sheet};

use super::{air, card, warm};
use crate::pool::pool;
use crate::pool::surface_area::SURFACE_AREA;
use crate::terms::arithmetic;

/// Nobody swims for sport in an exhibit.
static STILL: Value = Value::number(
    "activity factor of a pool nobody swims in",
    0.5,
    Basis::Reported,
    "ASHRAE Handbook of HVAC Applications, residential or unoccupied pool, as a reference on energy in buildings gives it; still pools were measured at 0.74 of the full rate (Smith, Löf and Jones 1998)",
);

static LEAST: Many<MassRate, MassRate> = Many {
    card: &arithmetic("least of rates", "E", "min", &[]),
    run: |e| Ok(e.iter().copied().fold(MassRate { value: f64::INFINITY, ..e[0] }, least)),
};

static MOST: Many<MassRate, MassRate> = Many {
    card: &arithmetic("largest of rates", "E", "max", &[]),
    run: |e| Ok(e.iter().copied().fold(e[0], most)),
};

fn least(a: MassRate, b: MassRate) -> MassRate {
    if b < a { b } else { a }
}

fn most(a: MassRate, b: MassRate) -> MassRate {
    if b > a { b } else { a }
}

const A_DAY: (&str, &str) = ("kg/h", "lb/h");

/// Temperature and vapour of the water's surface, then of the air over it.
type Ends = (Line<ThermodynamicTemperature>, Line<Pressure>, Line<ThermodynamicTemperature>, Line<Pressure>);

fn ends(sheet: Sheet<'_>, at: Subject) -> Known<Ends> {
    let over = air(sheet, at)?;
    let (water, cool, humidity) =
        (warm(sheet, at), over.temperature.low(sheet), over.humidity.on(sheet)).all()?;
    let at_water = sheet.work(&VAPOUR_PRESSURE, (water,));
    let saturated = sheet.work(&VAPOUR_PRESSURE, (cool,));
    let (at_water, saturated) = (at_water, saturated).all()?;
    let in_air = sheet.work(&PARTIAL_PRESSURE, (humidity, saturated))?;
    Ok((water, at_water, cool, in_air))
}

/// Of the surface that leaves and lids leave open, with the factor for falls and spray where one is stated.
fn as_built(sheet: Sheet<'_>, at: Subject, still: Line<MassRate>) -> Known<Line<MassRate>> {
    let water = &pool(sheet, at).water;
    let open = if water.cover.is_given() {
        sheet.work(&formulas::UNDER_COVER, (still, water.cover.on(sheet)?))?
    } else {
        still
    };
    if water.spray.is_given() {
        return sheet.work(&formulas::WITH_FALLS, (open, water.spray.on(sheet)?));
    }
    Ok(open)
}

/// By the activity factor.
pub static BY_ACTIVITY: Figure<Line<MassRate>> = Figure {
    card: &card("evaporation-by-activity", "evaporation by activity factor", About::Pool, A_DAY),
    work: |sheet, at| {
        let ((_, at_water, _, in_air), area) = (ends(sheet, at), SURFACE_AREA.of(sheet, at)).all()?;
        let still = (area, sheet.register(&STILL, None), at_water, in_air);
        as_built(sheet, at, sheet.work(&formulas::BY_ACTIVITY, still)?)
    },
};

/// By the density of the air.
pub static BY_DENSITY: Figure<Line<MassRate>> = Figure {
    card: &card("evaporation-by-density", "evaporation by density of the air", About::Pool, A_DAY),
    work: |sheet, at| {
        let ((water, at_water, cool, in_air), area) = (ends(sheet, at), SURFACE_AREA.of(sheet, at)).all()?;
        let (wet, room) =
            (sheet.work(&DRY_AIR_DENSITY, (at_water, water)), sheet.work(&DRY_AIR_DENSITY, (in_air, cool)))
                .all()?;
        let (full, part) =
            (sheet.work(&HUMIDITY_RATIO, (at_water,)), sheet.work(&HUMIDITY_RATIO, (in_air,))).all()?;
        let still = sheet.work(&formulas::BY_DENSITY, (area, wet, room, full, part, at_water, in_air))?;
        as_built(sheet, at, still)
    },
};

fn both(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Line<MassRate>>> {
    vec![BY_ACTIVITY.of(sheet, at), BY_DENSITY.of(sheet, at)].all()
}

/// The low end of the band of both.
pub static EVAPORATION_LOW: Figure<Line<MassRate>> = Figure {
    card: &card("evaporation-low", "evaporation, low end", About::Pool, A_DAY),
    work: |sheet, at| sheet.fold(&LEAST, &both(sheet, at)?),
};

/// The high end.
pub static EVAPORATION_HIGH: Figure<Line<MassRate>> = Figure {
    card: &card("evaporation-high", "evaporation, high end", About::Pool, A_DAY),
    work: |sheet, at| sheet.fold(&MOST, &both(sheet, at)?),
};

fn fall(sheet: Sheet<'_>, at: Subject, rate: Known<Line<MassRate>>) -> Known<Line<Velocity>> {
    let (rate, water, area) = (rate, warm(sheet, at), SURFACE_AREA.of(sheet, at)).all()?;
    sheet.work(&formulas::FALL_BY_EVAPORATION, (rate, sheet.work(&DENSITY, (water,))?, area))
}

const FALLING: (&str, &str) = ("mm/d", "in/h");

/// How fast the level falls by the low end.
pub static FALL_LOW: Figure<Line<Velocity>> = Figure {
    card: &card("evaporation-fall-low", "fall by evaporation, low end", About::Pool, FALLING),
    work: |sheet, at| fall(sheet, at, EVAPORATION_LOW.of(sheet, at)),
};

/// How fast the level falls by the high end.
pub static FALL_HIGH: Figure<Line<Velocity>> = Figure {
    card: &card("evaporation-fall-high", "fall by evaporation, high end", About::Pool, FALLING),
    work: |sheet, at| fall(sheet, at, EVAPORATION_HIGH.of(sheet, at)),
};
