//! Delivered flow: the duty point of the pump's curve against the system.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::hydraulics::duty::DUTY_FLOW;
use haulout_calc::hydraulics::pump::PumpCurve;
use haulout_calc::hydraulics::system::{SYSTEM_HEAD, SystemCurve};
use haulout_model::{About, CurvePoints, Subject};
use haulout_quantity::si::{Length, VolumeRate};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Known, Line, Sheet};

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
        let own = circuit(sheet, at);
        let first = first_pump(sheet, at);
        let second = &own.second_pump;
        let Ok(arrangement) = second.arrangement.on(sheet) else {
            // A second pump that does not say how it stands to the first leaves the flow open.
            if second.pump.curve.on(sheet).is_ok() {
                return (first, second.arrangement.on(sheet).map(|_| ())).all().map(|(line, ())| line);
            }
            return first;
        };
        let together = match sheet.option_of(arrangement) {
            PARALLEL => &BESIDE,
            SERIES => &BEHIND,
            _ => return sheet.construct(&STANDS_BY, (first?, arrangement.option())),
        };
        let curve = second.pump.curve.on(sheet).map_err(|gaps| gaps.because(arrangement.id()));
        let curve = curve.and_then(|points| sheet.construct(&CURVE, (points,)));
        let (first, curve) = (first, curve).all()?;
        sheet.construct(together, (first, curve, arrangement.option()))
    },
};

/// Options of the arrangement of two pumps.
const PARALLEL: u16 = 1;
const SERIES: u16 = 2;

const fn of_two(name: &'static str, text: &'static str, symbols: &'static [&'static str]) -> FormulaCard {
    FormulaCard {
        name,
        result: "curve",
        text,
        symbols,
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "pumps in parallel: flows add at a head; in series: heads add at a flow",
        range: "as far as both curves go; nothing is extended",
    }
}

/// Two curves and the choice that puts them together.
type Two = (Arc<PumpCurve>, Arc<PumpCurve>, u16);

static BESIDE: Formula<Two, Arc<PumpCurve>> = Formula {
    card: &of_two(
        "two pumps side by side",
        "flows added at each head",
        &["curve_1", "curve_2", "arrangement"],
    ),
    run: |(first, second, _arrangement)| first.beside(&second).map(Arc::new),
};

static BEHIND: Formula<Two, Arc<PumpCurve>> = Formula {
    card: &of_two("two pumps in a row", "heads added at each flow", &["curve_1", "curve_2", "arrangement"]),
    run: |(first, second, _arrangement)| first.behind(&second).map(Arc::new),
};

static STANDS_BY: Formula<(Arc<PumpCurve>, u16), Arc<PumpCurve>> = Formula {
    card: &of_two("a pump and one that stands by", "the curve of the first", &["curve", "arrangement"]),
    run: |(first, _arrangement)| Ok(first),
};

fn first_pump(sheet: Sheet<'_>, at: Subject) -> Known<Line<Arc<PumpCurve>>> {
    let points = circuit(sheet, at).pump.curve.on(sheet)?;
    sheet.construct(&CURVE, (points,))
}

/// What the first pump delivers alone, the other one failed.
pub static DELIVERED_BY_ONE: Figure<Line<VolumeRate>> = Figure {
    card: &FigureCard {
        id: "delivered-by-one-pump",
        title: "flow delivered by the first pump alone",
        about: About::Circuit,
        axes: &[Axis::Filter],
        unit: "m3/h",
        us_unit: "gal(US)/min",
        resolution: Some("every meeting of the curves, to 1e-12 of the flow"),
    },
    work: |sheet, at| {
        let (curve, system) = (first_pump(sheet, at), SYSTEM.of(sheet, at)).all()?;
        meeting(sheet, curve, system)
    },
};

pub(super) fn meeting(
    sheet: Sheet<'_>,
    curve: Line<Arc<PumpCurve>>,
    system: Line<Arc<SystemCurve>>,
) -> Known<Line<VolumeRate>> {
    let flow = sheet.work(&DUTY_FLOW, (curve, system))?;
    let pump = sheet.work(&PUMP_HEAD_AT, (curve, flow))?;
    let asked = sheet.work(&SYSTEM_HEAD, (system, flow))?;
    sheet.check(flow, pump, asked);
    Ok(flow)
}

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
        meeting(sheet, curve, system)
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
