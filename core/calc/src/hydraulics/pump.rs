//! A pump by its curve: points of flow and head, straight lines between them.

use std::fmt;
use std::sync::Arc;

use haulout_quantity::Basis;
use haulout_quantity::si::{Length, MassDensity, Power, VolumeRate};
use uom::si::{length::meter, power::watt, volume_rate::cubic_meter_per_second};

use super::{G, above_zero, finite, not_below_zero};
use crate::formula::{Formula, FormulaCard, Kind, Refusal};

/// Fewest points of a curve. Two points make a straight line, which overstates the head of every real pump.
pub const FEWEST_POINTS: usize = 4;

/// A pump curve that was found sound.
#[derive(Debug, Clone, PartialEq)]
pub struct PumpCurve {
    /// Flow (m³/s, strictly ascending, ≥ 0) and head (m, ≥ 0).
    points: Vec<(f64, f64)>,
}

/// Why a list of points is no pump curve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Unsound {
    /// Fewer points than [`FEWEST_POINTS`].
    TooFewPoints {
        /// How many there are.
        given: usize,
    },
    /// A flow or head is not a number, infinite or below zero.
    BadNumber {
        /// Which point, counted from 0.
        point: usize,
    },
    /// A flow is not above the one before it.
    FlowsNotAscending {
        /// Which point, counted from 0.
        point: usize,
    },
}

impl fmt::Display for Unsound {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Unsound::TooFewPoints { given } => write!(
                f,
                "the pump curve has {given} points, but {FEWEST_POINTS} or more are needed: read more from the maker's curve"
            ),
            Unsound::BadNumber { point } => {
                write!(f, "point {} of the pump curve needs a flow and a head of zero or more", point + 1)
            }
            Unsound::FlowsNotAscending { point } => write!(
                f,
                "the flow of point {} of the pump curve is not above that of the point before: list the points by rising flow",
                point + 1
            ),
        }
    }
}

impl std::error::Error for Unsound {}

impl PumpCurve {
    /// A curve from points of flow and head.
    ///
    /// # Errors
    /// [`Unsound`] for fewer than four points, for bad numbers, for flows that do not rise.
    pub fn new(points: &[(VolumeRate, Length)]) -> Result<Self, Unsound> {
        if points.len() < FEWEST_POINTS {
            return Err(Unsound::TooFewPoints { given: points.len() });
        }
        let points: Vec<(f64, f64)> = points.iter().map(|(flow, head)| (flow.value, head.value)).collect();
        let good = |x: f64| x.is_finite() && x >= 0.0;
        if let Some(point) = points.iter().position(|&(q, h)| !(good(q) && good(h))) {
            return Err(Unsound::BadNumber { point });
        }
        if let Some(before) = points.windows(2).position(|pair| pair[1].0 <= pair[0].0) {
            return Err(Unsound::FlowsNotAscending { point: before + 1 });
        }
        Ok(PumpCurve { points })
    }

    /// Head at a flow.
    ///
    /// # Errors
    /// Outside the flows of the curve: a curve is never extended.
    pub fn head_at(&self, flow: VolumeRate) -> Result<Length, Refusal> {
        let [(q1, h1), (q2, h2)] = self.segment(flow)?;
        PUMP_HEAD.work((flow, q1, h1, q2, h2))
    }

    /// The two points a flow lies between.
    ///
    /// # Errors
    /// Outside the flows of the curve.
    pub fn segment(&self, flow: VolumeRate) -> Result<[(VolumeRate, Length); 2], Refusal> {
        let q = flow.value;
        let (first, last) = (self.points[0].0, self.last().0);
        if !(first..=last).contains(&q) {
            return Err(Refusal::new(format!(
                "the pump curve runs from {:.4} to {:.4} m3/h and says nothing of {:.4} m3/h: give more points of it",
                first * 3600.0,
                last * 3600.0,
                q * 3600.0
            )));
        }
        let after = self.points.partition_point(|&(flow, _)| flow < q).max(1);
        let typed = |(q, h)| (VolumeRate::new::<cubic_meter_per_second>(q), Length::new::<meter>(h));
        Ok([typed(self.points[after - 1]), typed(self.points[after])])
    }

    /// What the label promises: the flow at no head, or of the last point where the curve ends above that.
    pub fn label_flow(&self) -> VolumeRate {
        let no_head = self.points.iter().find(|&&(_, head)| head == 0.0);
        VolumeRate::new::<cubic_meter_per_second>(no_head.unwrap_or(&self.last()).0)
    }

    /// As many equal pumps side by side into one pipe: flows add at the same head.
    #[must_use]
    pub fn side_by_side(&self, pumps: u16) -> Self {
        let n = f64::from(pumps.max(1));
        PumpCurve { points: self.points.iter().map(|&(q, h)| (n * q, h)).collect() }
    }

    /// As many equal pumps one after the other: heads add at the same flow.
    #[must_use]
    pub fn one_after_the_other(&self, pumps: u16) -> Self {
        let n = f64::from(pumps.max(1));
        PumpCurve { points: self.points.iter().map(|&(q, h)| (q, n * h)).collect() }
    }

    /// Two pumps side by side into one pipe, each behind its own check valve: flows add at the same head. Where the head is more
    /// than one of them makes, the other works alone; the curve ends where one of them is no longer known.
    ///
    /// # Errors
    /// For a pump whose head does not fall with its flow, or when the two have no head in common.
    pub fn beside(&self, other: &PumpCurve) -> Result<Self, Refusal> {
        let falls = |curve: &PumpCurve| curve.points.windows(2).all(|pair| pair[1].1 < pair[0].1);
        if !falls(self) || !falls(other) {
            return Err(Refusal::new(
                "pumps side by side need curves whose head falls with the flow: near its top a humped one is not stable",
            ));
        }
        let lowest = self.last().1.max(other.last().1);
        let mut heads: Vec<f64> = self.points.iter().chain(&other.points).map(|point| point.1).collect();
        heads.retain(|head| *head >= lowest);
        heads.sort_by(|a, b| b.total_cmp(a));
        heads.dedup();
        let mut points: Vec<(f64, f64)> =
            heads.iter().map(|head| (self.flow_at(*head) + other.flow_at(*head), *head)).collect();
        points.dedup_by(|b, a| b.0 <= a.0);
        if points.len() < 2 {
            return Err(Refusal::new(
                "the two pumps have no head in common; the weaker one would be run backwards",
            ));
        }
        Ok(PumpCurve { points })
    }

    /// Two pumps one after the other: heads add at the same flow, as far as both curves go.
    ///
    /// # Errors
    /// When the two have no flow in common.
    pub fn behind(&self, other: &PumpCurve) -> Result<Self, Refusal> {
        let (first, last) = (self.points[0].0.max(other.points[0].0), self.last().0.min(other.last().0));
        let mut flows: Vec<f64> = self.points.iter().chain(&other.points).map(|point| point.0).collect();
        flows.retain(|flow| (first..=last).contains(flow));
        flows.sort_by(f64::total_cmp);
        flows.dedup();
        if flows.len() < 2 {
            return Err(Refusal::new(
                "the curves of the two pumps have no flow in common: give more points of them",
            ));
        }
        let typed = |q: f64| VolumeRate::new::<cubic_meter_per_second>(q);
        let head = |curve: &PumpCurve, q: f64| curve.head_at(typed(q)).map(|head| head.value);
        let both = |q: &f64| Ok((*q, head(self, *q)? + head(other, *q)?));
        Ok(PumpCurve { points: flows.iter().map(both).collect::<Result<_, Refusal>>()? })
    }

    /// Flow (m³/s) at a head of a curve that falls; nothing above its top.
    fn flow_at(&self, head: f64) -> f64 {
        let Some(pair) = self.points.windows(2).find(|pair| (pair[1].1..=pair[0].1).contains(&head)) else {
            return 0.0;
        };
        let ((q1, h1), (q2, h2)) = (pair[0], pair[1]);
        q1 + (q2 - q1) * (h1 - head) / (h1 - h2)
    }

    /// Flow (m³/s) and head (m) of every point, by rising flow.
    pub fn points(&self) -> &[(f64, f64)] {
        &self.points
    }

    fn last(&self) -> (f64, f64) {
        self.points[self.points.len() - 1]
    }
}

/// Head of a pump between two points of its curve.
pub static PUMP_HEAD: Formula<(VolumeRate, VolumeRate, Length, VolumeRate, Length), Length> = Formula {
    card: &FormulaCard {
        name: "head of a pump between two points of its curve",
        result: "H",
        text: "H_1 + (H_2 - H_1) × (Q - Q_1) / (Q_2 - Q_1)",
        symbols: &["Q", "Q_1", "H_1", "Q_2", "H_2"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "straight line between points read from the maker's curve",
        range: "flows between the two points; a curve is never extended",
    },
    run: |(flow, q1, h1, q2, h2)| {
        let [q, q1, q2] = [flow.value, q1.value, q2.value];
        if !(q2 > q1 && (q1..=q2).contains(&q)) {
            return Err(Refusal::new(format!(
                "a flow of {q} m3/s does not lie between the points at {q1} and {q2} m3/s of the pump curve"
            )));
        }
        let h = h1.value + (h2.value - h1.value) * (q - q1) / (q2 - q1);
        Ok(Length::new::<meter>(finite(h, "the head of the pump")?))
    },
};

/// Flow a label promises, see [`PumpCurve::label_flow`].
pub static LABEL_FLOW: Formula<(Arc<PumpCurve>,), VolumeRate> = Formula {
    card: &FormulaCard {
        name: "flow on the label of a pump",
        result: "Q_label",
        text: "flow at no head, or of the last point of the curve",
        symbols: &["curve"],
        kind: Kind::Pick,
        basis: Basis::CommonPractice,
        source: "custom of the trade",
        range: "any curve",
    },
    run: |(curve,)| Ok(curve.label_flow()),
};

/// Power a pump puts into the water.
pub static HYDRAULIC_POWER: Formula<(MassDensity, VolumeRate, Length), Power> = Formula {
    card: &FormulaCard {
        name: "hydraulic power",
        result: "P",
        text: "ρ × 9.80665 m/s2 × Q × H",
        symbols: &["ρ", "Q", "H"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "work done on the water; the power drawn is this over the efficiency",
        range: "any pump",
    },
    run: |(density, flow, head)| {
        let rho = above_zero(density.value, "the density of the water")?;
        let q = not_below_zero(flow.value, "the flow")?;
        let h = not_below_zero(head.value, "the head of the pump")?;
        Ok(Power::new::<watt>(finite(rho * G * q * h, "the hydraulic power")?))
    },
};
