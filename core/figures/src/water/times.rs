//! How long a pool takes to be emptied, filled and warmed again, and drawn down for an animal that is caught.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::Bed;
use haulout_calc::water::DENSITY;
use haulout_model::{About, Subject};
use haulout_quantity::si::{
    Length, MassDensity, Power, Ratio, ThermodynamicTemperature, Time, Volume, VolumeRate,
};
use haulout_quantity::{Basis, Measure};
use haulout_register::Value;
use haulout_sheet::{All, Case, Figure, FigureCard, Gap, Known, Line, Many, Sheet};

use super::ladder::leads_to;
use super::spill::BETWEEN;
use crate::group::BODY_HEIGHT;
use crate::pool::bed::BED;
use crate::pool::pool;
use crate::pool::volume::{GROSS_VOLUME, NET_VOLUME, VOLUME_BELOW};
use crate::pool::water::TEMPERATURE;

const fn law(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    kind: Kind,
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind,
        basis: Basis::Published,
        source: "arithmetic",
        range: "an even flow, or all heat into the water and none lost on the way",
    }
}

static TIME_AT: Formula<(Volume, VolumeRate), Time> = Formula {
    card: &law("time to move a volume", "t", "V / Q", &["V", "Q"], Kind::Closed),
    run: |(volume, flow)| {
        if flow.value <= 0.0 {
            return Err(Refusal::new("nothing flows, so it never ends"));
        }
        Ok(volume / flow)
    },
};

static LESS_OF: Many<VolumeRate, VolumeRate> = Many {
    card: &law("less of flows", "Q_min", "min", &[], Kind::Closed),
    run: |flows| {
        let less = |a: VolumeRate, b: VolumeRate| if b < a { b } else { a };
        flows.iter().copied().reduce(less).ok_or_else(|| Refusal::new("there is no flow"))
    },
};

pub(crate) static POWERS: Many<Power, Power> =
    Many { card: &law("sum of powers", "P", "+", &[], Kind::Closed), run: |p| Ok(p.iter().copied().sum()) };

/// Specific heat of water at 25 °C, joules for a kilogram and a kelvin, as a number: it varies by 0.1 % between 10 and 30 °C.
static WARMING: Formula<
    (MassDensity, Volume, Ratio, ThermodynamicTemperature, ThermodynamicTemperature, Power),
    Time,
> = Formula {
    card: &law(
        "time to warm water",
        "t",
        "ρ × V × c × 1 J/(kg·K) × max(0, T - T_fill) / P",
        &["ρ", "V", "c", "T", "T_fill", "P"],
        Kind::Construction,
    ),
    run: |(density, volume, heat, warm, cold, power)| {
        if power.value <= 0.0 {
            return Err(Refusal::new("no heater warms this pool"));
        }
        let rise = (warm.value - cold.value).max(0.0);
        Ok(Time::from_si(density.value * volume.value * heat.value * rise / power.value))
    },
};

pub(crate) static SPECIFIC_HEAT: Value = Value::number(
    "specific heat of water, J/(kg K)",
    4181.3,
    Basis::Published,
    "CoolProp 8.0.0, PropsSI('C', 'T', 298.15, 'P', 101325, 'Water')",
);

static OVER_LOWEST: Formula<(Arc<Bed>, Length), Length> = Formula {
    card: &law("level over the lowest bed", "z", "lowest bed and h", &["bed", "h"], Kind::Construction),
    run: |(bed, height)| Ok(Length::from_si(bed.lowest()) + height),
};

const fn card(id: &'static str, title: &'static str, about: About, unit: &'static str) -> FigureCard {
    FigureCard { id, title, about, axes: &[], unit, us_unit: unit, resolution: None }
}

/// What the drain takes: what it can, or what may be let away where that is less.
fn drained(sheet: Sheet<'_>, at: Subject) -> Known<Line<VolumeRate>> {
    let drain = &pool(sheet, at).drain;
    if drain.allowed.is_none() {
        return drain.flow.on(sheet);
    }
    let (flow, allowed) = (drain.flow.on(sheet), drain.allowed.on(sheet)).all()?;
    sheet.fold(&LESS_OF, &[flow, allowed])
}

/// Time to empty the pool.
pub static DRAIN_TIME: Figure<Line<Time>> = Figure {
    card: &card("drain-time", "time to empty the pool", About::Pool, "h"),
    work: |sheet, at| {
        let lines = (NET_VOLUME.of(sheet, at), drained(sheet, at)).all()?;
        sheet.work(&TIME_AT, lines)
    },
};

/// Time to fill it again.
pub static REFILL_TIME: Figure<Line<Time>> = Figure {
    card: &card("refill-time", "time to fill the pool", About::Pool, "h"),
    work: |sheet, at| {
        let lines = (NET_VOLUME.of(sheet, at), pool(sheet, at).fill.flow.on(sheet)).all()?;
        sheet.work(&TIME_AT, lines)
    },
};

/// Time for its heaters to warm a new filling; what is lost on the way comes on top.
pub static REHEAT_TIME: Figure<Line<Time>> = Figure {
    card: &card("reheat-time", "time to warm a new filling", About::Pool, "h"),
    work: |sheet, at| {
        let heaters = &sheet.design().heaters;
        let missing = heaters.missing().map(|m| Err(Gap::from(m).into()));
        let own = heaters.items().iter().filter(|h| leads_to(sheet, &h.pool, at));
        let powers: Vec<Known<Line<Power>>> =
            missing.into_iter().chain(own.map(|h| h.power.on(sheet))).collect();
        let power = powers.all().and_then(|powers| sheet.fold(&POWERS, &powers));
        let water = (TEMPERATURE.of(sheet, at), pool(sheet, at).fill.temperature.on(sheet)).all();
        let (volume, (warm, cold), power) = (NET_VOLUME.of(sheet, at), water, power).all()?;
        let density = sheet.work(&DENSITY, (warm,))?;
        let heat = sheet.register(&SPECIFIC_HEAT, None);
        sheet.construct(&WARMING, (density, volume, heat, warm, cold, power))
    },
};

/// Time until the water over the lowest bed is no deeper than the back of a full-grown animal.
pub static DRAW_DOWN_TIME: Figure<Line<Time>> = Figure {
    card: &card(
        "draw-down-time",
        "time to draw the water down to the back of an animal",
        About::PoolGroup,
        "min",
    ),
    work: |sheet, at| {
        let own = at.part(About::Pool).expect("a pool-group has a pool");
        let height = BODY_HEIGHT.of(sheet.in_case(Case::NORMAL), at);
        let (bed, full, height, flow) = (
            BED.of(sheet, own),
            GROSS_VOLUME.of(sheet.in_case(Case::NORMAL), own),
            height,
            drained(sheet, own),
        )
            .all()?;
        let level = sheet.construct(&OVER_LOWEST, (bed, height))?;
        let left = sheet.construct(&VOLUME_BELOW, (bed, level))?;
        sheet.work(&TIME_AT, (sheet.work(&BETWEEN, (full, left))?, flow))
    },
};
