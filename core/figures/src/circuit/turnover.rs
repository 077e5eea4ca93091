//! Turnover by delivered flow, and by the label for comparison.

use haulout_calc::hydraulics::{pump, turnover};
use haulout_model::About;
use haulout_quantity::si::{Time, Volume, VolumeRate};
use haulout_sheet::{All, Axis, Figure, FigureCard, Known, Line};

use super::{
    duty::{DELIVERED_FLOW, PUMP_CURVE},
    served,
};
use crate::pool::volume::NET_VOLUME;
use crate::terms::VOLUMES;

/// Water of every basin the circuit joins: mechanical and biological turnover are judged on it.
pub static SYSTEM_WATER: Figure<Line<Volume>> = Figure {
    card: &FigureCard {
        id: "system-water",
        title: "water the circuit turns over",
        about: About::Circuit,
        axes: &[],
        unit: "m3",
        us_unit: "gal(US)",
        resolution: None,
    },
    work: |sheet, at| {
        let each = served(sheet, at)?.into_iter().map(|pool| NET_VOLUME.of(sheet, pool?));
        let each: Vec<Known<Line<Volume>>> = each.collect();
        sheet.fold(&VOLUMES, &each.all()?)
    },
};

/// Flow the pump's label promises.
pub static LABEL_FLOW: Figure<Line<VolumeRate>> = Figure {
    card: &FigureCard {
        id: "label-flow",
        title: "flow by the pump's label",
        about: About::Circuit,
        axes: &[],
        unit: "m3/h",
        us_unit: "gal(US)/min",
        resolution: None,
    },
    work: |sheet, at| sheet.work(&pump::LABEL_FLOW, (PUMP_CURVE.of(sheet, at)?,)),
};

const fn time(id: &'static str, title: &'static str, axes: &'static [Axis]) -> FigureCard {
    FigureCard { id, title, about: About::Circuit, axes, unit: "h", us_unit: "h", resolution: None }
}

/// Time in which the delivered flow moves as much water as there is.
pub static TURNOVER: Figure<Line<Time>> = Figure {
    card: &time("turnover", "turnover by delivered flow", &[Axis::Filter]),
    work: |sheet, at| {
        let lines = (SYSTEM_WATER.of(sheet, at), DELIVERED_FLOW.of(sheet, at)).all()?;
        sheet.work(&turnover::TURNOVER, lines)
    },
};

/// The same by the label: what the box promises.
pub static LABEL_TURNOVER: Figure<Line<Time>> = Figure {
    card: &time("label-turnover", "turnover by the pump's label", &[]),
    work: |sheet, at| {
        let lines = (SYSTEM_WATER.of(sheet, at), LABEL_FLOW.of(sheet, at)).all()?;
        sheet.work(&turnover::LABEL_TURNOVER, lines)
    },
};
