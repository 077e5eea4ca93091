//! Delivered flow: the duty point of the pump's curve against the system.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::hydraulics::duty::DUTY_FLOW;
use haulout_calc::hydraulics::pump::PumpCurve;
use haulout_calc::hydraulics::system::SYSTEM_HEAD;
use haulout_model::{About, CurvePoints};
use haulout_quantity::si::{Length, VolumeRate};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Line};

use super::{circuit, system::SYSTEM};

static CURVE: Formula<(Arc<CurvePoints>,), Arc<PumpCurve>> = Formula {
    card: &FormulaCard {
        name: "pump curve",
        result: "curve",
        text: "straight lines between the points",
        symbols: &["points"],
        kind: Kind::Construction,
        basis: Basis::CommonPractice,
        source: "interpolation between read-off points",
        range: "four points or more, nothing beyond the last",
    },
    run: |(points,)| {
        let points: Vec<(VolumeRate, Length)> =
            points.0.iter().map(|[q, h]| (VolumeRate::from_si(*q), Length::from_si(*h))).collect();
        PumpCurve::new(&points).map(Arc::new).map_err(|unsound| Refusal::new(unsound.to_string()))
    },
};

static PUMP_HEAD_AT: Formula<(Arc<PumpCurve>, VolumeRate), Length> = Formula {
    card: &FormulaCard {
        name: "head of the pump at a flow",
        result: "H_pump",
        text: "curve read at Q",
        symbols: &["curve", "Q"],
        kind: Kind::Construction,
        basis: Basis::CommonPractice,
        source: "straight lines between the points of the curve",
        range: "up to the last point of the curve",
    },
    run: |(curve, flow)| curve.head_at(flow),
};

/// The pump's curve. Not a number, so not in the catalogue.
pub static PUMP_CURVE: Figure<Line<Arc<PumpCurve>>> = Figure {
    card: &FigureCard {
        id: "pump-curve",
        title: "pump curve",
        about: About::Circuit,
        axes: &[],
        unit: "",
        us_unit: "",
        resolution: None,
    },
    work: |sheet, at| {
        let points = circuit(sheet, at).pump.curve.on(sheet)?;
        sheet.construct(&CURVE, (points,))
    },
};

/// Flow the pump really delivers.
pub static DELIVERED_FLOW: Figure<Line<VolumeRate>> = Figure {
    card: &FigureCard {
        id: "delivered-flow",
        title: "delivered flow",
        about: About::Circuit,
        axes: &[Axis::Filter],
        unit: "m3/h",
        us_unit: "gal(US)/min",
        resolution: Some("every meeting of the curves, to 1e-12 of the flow"),
    },
    work: |sheet, at| {
        let (curve, system) = (PUMP_CURVE.of(sheet, at), SYSTEM.of(sheet, at)).all()?;
        let flow = sheet.work(&DUTY_FLOW, (curve, system))?;
        let pump = sheet.work(&PUMP_HEAD_AT, (curve, flow))?;
        let asked = sheet.work(&SYSTEM_HEAD, (system, flow))?;
        sheet.check(flow, pump, asked);
        Ok(flow)
    },
};

/// Head at that flow.
pub static DUTY_HEAD: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        id: "duty-head",
        title: "head at the duty point",
        about: About::Circuit,
        axes: &[Axis::Filter],
        unit: "m",
        us_unit: "ft",
        resolution: None,
    },
    work: |sheet, at| {
        let (system, flow) = (SYSTEM.of(sheet, at), DELIVERED_FLOW.of(sheet, at)).all()?;
        sheet.work(&SYSTEM_HEAD, (system, flow))
    },
};
