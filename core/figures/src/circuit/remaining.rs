//! What still runs when the strongest pump of a water fails.

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_calc::hydraulics::turnover::TURNOVER;
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{Time, VolumeRate};
use haulout_sheet::{All, Axis, Figure, FigureCard, Known, Line, Many};

use super::duty::DELIVERED_FLOW;
use crate::filtration::joined::joined_circuits;
use crate::heat::JOINED_WATER;

static REST: Many<VolumeRate, VolumeRate> = Many {
    card: &FormulaCard {
        name: "flow without the strongest pump",
        result: "Q_rest",
        text: "sum of the flows less the greatest",
        symbols: &[],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "arithmetic",
        range: "each circuit as one: a second pump beside or behind fails with the first",
    },
    run: |flows| {
        if flows.len() < 2 {
            return Err(Refusal::new("no other pump moves this water"));
        }
        let most = flows.iter().copied().fold(flows[0] * 0.0, VolumeRate::max);
        let sum = flows.iter().copied().fold(flows[0] * 0.0, |sum, flow| sum + flow);
        Ok(sum - most)
    },
};

/// Flow that the other circuits of a water deliver together when the strongest one stands still.
pub static REMAINING_FLOW: Figure<Line<VolumeRate>> = Figure {
    card: &FigureCard {
        id: "flow-without-the-strongest-pump",
        title: "flow when the strongest pump of the water fails",
        about: About::Pool,
        axes: &[Axis::Filter],
        unit: "m3/h",
        us_unit: "gal(US)/min",
        resolution: Some("every meeting of the curves, to 1e-12 of the flow"),
    },
    work: |sheet, at| {
        let each = joined_circuits(sheet, at)?.into_iter().map(|circuit| DELIVERED_FLOW.of(sheet, circuit));
        let each: Vec<Known<Line<VolumeRate>>> = each.collect();
        sheet.fold(&REST, &each.all()?)
    },
};

/// Time in which they move as much water as there is; out of range where nothing is left.
pub static REMAINING_TURNOVER: Figure<Line<Time>> = Figure {
    card: &FigureCard {
        id: "turnover-without-the-strongest-pump",
        title: "turnover when the strongest pump of the water fails",
        about: About::Pool,
        axes: &[Axis::Filter],
        unit: "h",
        us_unit: "h",
        resolution: None,
    },
    work: |sheet, at: Subject| {
        let lines = (JOINED_WATER.of(sheet, at), REMAINING_FLOW.of(sheet, at)).all()?;
        sheet.work(&TURNOVER, lines)
    },
};
