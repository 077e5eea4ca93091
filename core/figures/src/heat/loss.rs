//! Heat that a pool loses in winter, by part, and what the joined pools lose together.

use haulout_calc::formula::Formula;
use haulout_calc::heat::evaporation::HEAT_OF_EVAPORATION;
use haulout_calc::heat::loss as formulas;
use haulout_model::{About, State, Subject};
use haulout_quantity::si::{HeatTransfer, Power};
use haulout_quantity::{Basis, Dimension, Measure};
use haulout_register::Value;
use haulout_sheet::{All, Figure, Gap, Known, Line, Many, Sheet};

use super::evaporation::EVAPORATION_HIGH;
use super::{air, body, card, pick, pools, warm};
use crate::pool::depth::MEAN_DEPTH;
use crate::pool::pool;
use crate::pool::surface_area::SURFACE_AREA;
use crate::terms::arithmetic;
use crate::water::bank::SHORELINE;
use crate::water::times::POWERS;

const fn lets_through(what: &'static str, value: f64, basis: Basis, source: &'static str) -> Value {
    Value { what, value, unit: "W/(m2 K)", dimension: Dimension::HEAT_TRANSFER, basis, source }
}

static SURFACE: Value = lets_through(
    "heat from a water surface to the air of a room, evaporation aside",
    10.0,
    Basis::CommonPractice,
    "indoors: 5 to 6 by radiation, 3 to 5 by still air",
);
static UNDER: Value = lets_through(
    "what slab and ground under the insulation let through",
    3.0,
    Basis::CommonPractice,
    "0.15 m of concrete and a few decimetres of ground, 0.33 m2K/W together",
);
static BEHIND: Value = lets_through(
    "what the air behind a wall lets through",
    1.0 / 0.13,
    Basis::Reported,
    "ISO 6946, 0.13 m2K/W at an inside surface, as a trade page on BS EN ISO 13788 quotes it",
);

/// Positions of the sides on their card.
const UNDER_SIDE: u16 = 0;
const WALL_SIDE: u16 = 1;

/// A layer on another side stops nothing on this one.
const OPEN: f64 = 1e9;

static LAYER_UNDER: Formula<(HeatTransfer, u16), HeatTransfer> = Formula {
    card: &pick("layer under the pool", "U", "U of a layer under it, 1e9 W/(m2 K) of others", &["U", "side"]),
    run: |(layer, side)| Ok(if side == UNDER_SIDE { layer } else { HeatTransfer::from_si(OPEN) }),
};

static LAYER_BEHIND: Formula<(HeatTransfer, u16), HeatTransfer> = Formula {
    card: &pick(
        "layer behind the walls",
        "U",
        "U of a layer behind them, 1e9 W/(m2 K) of others",
        &["U", "side"],
    ),
    run: |(layer, side)| Ok(if side == WALL_SIDE { layer } else { HeatTransfer::from_si(OPEN) }),
};

static SERIES: Many<HeatTransfer, HeatTransfer> = Many {
    card: &{
        let mut card = arithmetic("layers one behind the other", "U", "one over the sum of 1 / U", &[]);
        card.kind = haulout_calc::formula::Kind::Construction;
        card
    },
    run: formulas::in_series,
};

/// Insulation of one side with what stands outside it.
fn shell(
    sheet: Sheet<'_>,
    at: Subject,
    of_side: &'static Formula<(HeatTransfer, u16), HeatTransfer>,
    outside: &'static Value,
) -> Known<Line<HeatTransfer>> {
    let insulation = &pool(sheet, at).insulation;
    if !matches!(insulation.state(), State::None)
        && let Some(missing) = insulation.missing()
    {
        return Err(Gap::from(missing).into());
    }
    let layers = insulation.items().iter().map(|layer| {
        let lines = (layer.conductivity.on(sheet), layer.thickness.on(sheet), layer.side.on(sheet));
        let (conductivity, thickness, side) = lines.all()?;
        let through = sheet.work(&formulas::LAYER, (conductivity, thickness))?;
        sheet.work(of_side, (through, side.option()))
    });
    let layers: Vec<Known<Line<HeatTransfer>>> = layers.collect();
    let mut layers = layers.all()?;
    layers.push(sheet.register(outside, None));
    sheet.fold(&SERIES, &layers)
}

const KW: (&str, &str) = ("kW", "Btu(IT)/h");

/// By evaporation, the high end of its band.
pub static BY_EVAPORATION: Figure<Line<Power>> = Figure {
    card: &card("loss-by-evaporation", "heat lost by evaporation", About::Pool, KW),
    work: |sheet, at| {
        let lines = (EVAPORATION_HIGH.of(sheet, at), warm(sheet, at)).all()?;
        sheet.work(&HEAT_OF_EVAPORATION, lines)
    },
};

/// From the surface to the air.
pub static TO_AIR: Figure<Line<Power>> = Figure {
    card: &card("loss-to-air", "heat lost from the surface to the air", About::Pool, KW),
    work: |sheet, at| {
        let cool = air(sheet, at).and_then(|air| air.temperature.low(sheet));
        let (area, water, cool) = (SURFACE_AREA.of(sheet, at), warm(sheet, at), cool).all()?;
        sheet.work(&formulas::THROUGH, (sheet.register(&SURFACE, None), area, water, cool))
    },
};

/// Through the bed, to the ground or the room below.
pub static THROUGH_BED: Figure<Line<Power>> = Figure {
    card: &card("loss-through-bed", "heat lost through the bed", About::Pool, KW),
    work: |sheet, at| {
        let ground = sheet.design().hall.ground_temperature.on(sheet);
        let through = shell(sheet, at, &LAYER_UNDER, &UNDER);
        let lines = (through, SURFACE_AREA.of(sheet, at), warm(sheet, at), ground).all()?;
        sheet.work(&formulas::THROUGH, lines)
    },
};

/// Through the walls, to the air of the space.
pub static THROUGH_WALLS: Figure<Line<Power>> = Figure {
    card: &card("loss-through-walls", "heat lost through the walls", About::Pool, KW),
    work: |sheet, at| {
        let cool = air(sheet, at).and_then(|air| air.temperature.low(sheet));
        let area = (SHORELINE.of(sheet, at), MEAN_DEPTH.of(sheet, at)).all();
        let area = area.and_then(|lines| sheet.work(&formulas::WALLS, lines));
        let through = shell(sheet, at, &LAYER_BEHIND, &BEHIND);
        let lines = (through, area, warm(sheet, at), cool).all()?;
        sheet.work(&formulas::THROUGH, lines)
    },
};

/// With the water that is renewed, where the pool has a fill.
pub static TO_FILL: Figure<Line<Power>> = Figure {
    card: &card("loss-to-fill", "heat for the renewed water", About::Pool, KW),
    work: |sheet, at| {
        let fill = &pool(sheet, at).fill;
        let (flow, cold) = (fill.renewal.on(sheet), fill.temperature.on(sheet)).all()?;
        let ((density, heat), water) = (body(sheet, at), warm(sheet, at)).all()?;
        sheet.work(&formulas::MAKE_UP, (density, flow, heat, water, cold))
    },
};

/// All of it; a pool that is said to have no fill has no water to warm.
pub static LOSS: Figure<Line<Power>> = Figure {
    card: &card("heat-loss", "heat lost by the pool", About::Pool, KW),
    work: |sheet, at| {
        let mut parts = vec![
            BY_EVAPORATION.of(sheet, at),
            TO_AIR.of(sheet, at),
            THROUGH_BED.of(sheet, at),
            THROUGH_WALLS.of(sheet, at),
        ];
        if !pool(sheet, at).fill.renewal.is_none() {
            parts.push(TO_FILL.of(sheet, at));
        }
        sheet.fold(&POWERS, &parts.all()?)
    },
};

/// What the pools lose together that circuits join to a pool.
pub static JOINED_LOSS: Figure<Line<Power>> = Figure {
    card: &card("joined-heat-loss", "heat lost by the joined pools", About::Pool, KW),
    work: |sheet, at| {
        let each: Vec<Known<Line<Power>>> =
            pools(sheet, at)?.into_iter().map(|pool| LOSS.of(sheet, pool)).collect();
        sheet.fold(&POWERS, &each.all()?)
    },
};
