//! The delivered flow with the pump curve read as a smooth line: how much hangs on the way points are joined.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::hydraulics::pump::PumpCurve;
use haulout_calc::hydraulics::smooth::smoothed;
use haulout_model::{About, CurvePoints};
use haulout_quantity::si::{Length, VolumeRate};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Gap, GapKind, Line};

use super::duty::meeting;
use super::{circuit, system::SYSTEM};

static SMOOTHED: Formula<(Arc<CurvePoints>,), Arc<PumpCurve>> = Formula {
    card: &FormulaCard {
        name: "pump curve, smooth",
        result: "curve",
        text: "monotone cubic between the points",
        symbols: &["points"],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "Fritsch and Butland 1984, SIAM J. Sci. Stat. Comput. 5, 300, as reference libraries code it",
        range: "four points or more, nothing beyond the last",
    },
    run: |(points,)| {
        let points: Vec<(VolumeRate, Length)> =
            points.0.iter().map(|[q, h]| (VolumeRate::from_si(*q), Length::from_si(*h))).collect();
        smoothed(&points).map(Arc::new).map_err(|unsound| Refusal::new(unsound.to_string()))
    },
};

/// Flow the pump delivers when its curve runs smoothly through its points instead of straight between them. Where it is far from the
/// delivered flow, the curve has too few points where it matters.
pub static DELIVERED_SMOOTH: Figure<Line<VolumeRate>> = Figure {
    card: &FigureCard {
        id: "delivered-by-smooth-curve",
        title: "delivered flow, the pump curve read smoothly",
        about: About::Circuit,
        axes: &[Axis::Filter],
        unit: "m3/h",
        us_unit: "gal(US)/min",
        resolution: Some("every meeting of the curves, 32 straight pieces between two points"),
    },
    work: |sheet, at| {
        let own = circuit(sheet, at);
        if own.second_pump.arrangement.on(sheet).is_ok() {
            let what = "two pumps are read by straight lines alone";
            return Err(Gap::of(GapKind::OutOfRange, what, Vec::new()).into());
        }
        let curve = own.pump.curve.on(sheet).and_then(|points| sheet.construct(&SMOOTHED, (points,)));
        let (curve, system) = (curve, SYSTEM.of(sheet, at)).all()?;
        meeting(sheet, curve, system)
    },
};
