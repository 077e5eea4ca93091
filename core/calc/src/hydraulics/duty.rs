//! The duty point: where the curve of the pump meets that of the system.

use std::sync::Arc;

use haulout_quantity::Basis;
use haulout_quantity::si::{Length, VolumeRate};
use uom::si::{length::meter, volume_rate::cubic_meter_per_second};

use super::pump::PumpCurve;
use super::system::SystemCurve;
use crate::formula::{Formula, FormulaCard, Kind, Refusal};
use crate::zero::crossing;

/// A flow and the head there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DutyPoint {
    /// Flow.
    pub flow: VolumeRate,
    /// Head.
    pub head: Length,
}

/// How a pump and a system meet.
#[derive(Debug, Clone, PartialEq)]
pub enum Duty {
    /// At one flow.
    One(DutyPoint),
    /// Nowhere: the pump is below the system all along its curve.
    None,
    /// At the last point of the curve the pump is still above the system: the flow lies beyond what is known of it.
    BeyondCurve,
    /// At several flows, rising: which one the pump settles at depends on how it was started.
    Several(Vec<DutyPoint>),
}

/// Every meeting of a pump curve and a system curve.
///
/// Between two neighbouring flows out of the points of the curve and the changes of regime, the pump's head is a
/// straight line and the system's is bent upwards (laminar: a straight line; blend: a square and a cube; turbulent: a
/// power between 1.7 and 2), so their difference is bent downwards and has two zeros at most, one on each side of its peak.
/// Hence nothing is missed, however close two meetings lie.
pub fn duty_points(pump: &PumpCurve, system: &SystemCurve) -> Duty {
    let (last, head) = pump.points()[pump.points().len() - 1];
    if head > system.head(last) * (1.0 + ROUNDING) {
        return Duty::BeyondCurve;
    }
    let mut flows = Vec::new();
    for stretch in stretches(pump, system) {
        stretch.meetings(system, &mut flows);
    }
    flows.dedup_by(|b, a| (*b - *a).abs() <= 1e-11 * *b);
    let mut points: Vec<DutyPoint> = flows.iter().map(|&q| point(system, q)).collect();
    match points.len() {
        0 => Duty::None,
        1 => Duty::One(points.remove(0)),
        _ => Duty::Several(points),
    }
}

/// Heads nearer than this share count as equal: rounding of the sums, no more.
const ROUNDING: f64 = 1e-13;

fn point(system: &SystemCurve, q: f64) -> DutyPoint {
    DutyPoint {
        flow: VolumeRate::new::<cubic_meter_per_second>(q),
        head: Length::new::<meter>(system.head(q)),
    }
}

/// A piece of the pump curve on which no run of the system changes its regime.
struct Stretch {
    from: f64,
    to: f64,
    head_from: f64,
    head_to: f64,
}

fn stretches(pump: &PumpCurve, system: &SystemCurve) -> Vec<Stretch> {
    let mut kinks: Vec<f64> = system.kinks().collect();
    kinks.sort_by(f64::total_cmp);
    kinks.dedup();
    let mut found = Vec::with_capacity(pump.points().len() + kinks.len());
    for pair in pump.points().windows(2) {
        let ((q1, h1), (q2, h2)) = (pair[0], pair[1]);
        let inside = &kinks[kinks.partition_point(|&k| k <= q1)..kinks.partition_point(|&k| k < q2)];
        let mut from = (q1, h1);
        for to in inside.iter().map(|&k| (k, h1 + (h2 - h1) * (k - q1) / (q2 - q1))).chain([(q2, h2)]) {
            found.push(Stretch { from: from.0, to: to.0, head_from: from.1, head_to: to.1 });
            from = to;
        }
    }
    found
}

impl Stretch {
    /// Pump less system at a flow within the stretch.
    fn surplus(&self, system: &SystemCurve, q: f64) -> f64 {
        let share = (q - self.from) / (self.to - self.from);
        self.head_from + (self.head_to - self.head_from) * share - system.head(q)
    }

    /// Adds the flows of all meetings, rising.
    fn meetings(&self, system: &SystemCurve, flows: &mut Vec<f64>) {
        let surplus = |q: f64| self.surplus(system, q);
        let (a, b) = (surplus(self.from), surplus(self.to));
        let tolerance = ROUNDING * self.head_from.max(self.head_to);
        match (a > 0.0, b > 0.0) {
            (true, true) => {}
            (true, false) | (false, true) => flows.push(crossing(surplus, (self.from, a), (self.to, b))),
            // The system rises: if even its lowest head tops the pump's highest here, they cannot meet.
            (false, false) if self.head_from.max(self.head_to) < system.head(self.from) => {}
            (false, false) => {
                let (q, peak) = summit(surplus, self.from, self.to);
                if peak > tolerance {
                    flows.push(crossing(surplus, (self.from, a), (q, peak)));
                    flows.push(crossing(surplus, (q, peak), (self.to, b)));
                } else if peak >= -tolerance {
                    flows.push(q);
                }
            }
        }
    }
}

/// Highest point of a function that is bent downwards, by golden section.
fn summit(surplus: impl Fn(f64) -> f64, from: f64, to: f64) -> (f64, f64) {
    const GOLDEN: f64 = 0.618_033_988_749_894_9;
    let (mut low, mut high) = (from, to);
    let (mut left, mut right) = (high - GOLDEN * (high - low), low + GOLDEN * (high - low));
    let (mut at_left, mut at_right) = (surplus(left), surplus(right));
    for _ in 0..80 {
        if at_left >= at_right {
            (high, right, at_right) = (right, left, at_left);
            left = high - GOLDEN * (high - low);
            at_left = surplus(left);
        } else {
            (low, left, at_left) = (left, right, at_right);
            right = low + GOLDEN * (high - low);
            at_right = surplus(right);
        }
    }
    let ends = [(from, surplus(from)), (to, surplus(to)), (left, at_left)];
    ends.into_iter().fold((right, at_right), |best, end| if end.1 > best.1 { end } else { best })
}

/// Flow at the one duty point.
pub static DUTY_FLOW: Formula<(Arc<PumpCurve>, Arc<SystemCurve>), VolumeRate> = Formula {
    card: &FormulaCard {
        name: "flow at the duty point",
        result: "Q",
        text: "head of the pump at Q = head of the system at Q",
        symbols: &["curve", "system"],
        kind: Kind::Search,
        basis: Basis::Recalled,
        source: "intersection of pump and system curve, as in every textbook of pumps",
        range: "one meeting within the points of the pump curve",
    },
    run: |(pump, system)| match duty_points(&pump, &system) {
        Duty::One(point) => Ok(point.flow),
        Duty::None => {
            let q = nearest(&pump, &system);
            Err(Refusal::new(format!(
                "the pump is too weak: its head stays below that of the system all along its curve; nearest {}",
                both_heads(&pump, &system, q)
            )))
        }
        Duty::BeyondCurve => {
            let (last, _) = pump.points()[pump.points().len() - 1];
            Err(Refusal::new(format!(
                "the flow lies beyond the last point of the pump curve, where the pump is still stronger than the system ({}): give more points of the curve",
                both_heads(&pump, &system, last)
            )))
        }
        Duty::Several(points) => {
            let words: Vec<String> = points.iter().map(in_words).collect();
            Err(Refusal::new(format!(
                "pump and system meet at several flows ({}), and which of them the pump settles at depends on how it was started",
                words.join(" and ")
            )))
        }
    },
};

/// The flow at which a pump that is too weak comes nearest to its system.
fn nearest(pump: &PumpCurve, system: &SystemCurve) -> f64 {
    let of_stretch = |stretch: &Stretch| summit(|q| stretch.surplus(system, q), stretch.from, stretch.to);
    let summits = stretches(pump, system).iter().map(of_stretch).collect::<Vec<_>>();
    summits.into_iter().max_by(|a, b| a.1.total_cmp(&b.1)).map_or(0.0, |(q, _)| q)
}

fn in_words(met: &DutyPoint) -> String {
    format!("{:.2} m3/h at {:.2} m", met.flow.value * 3600.0, met.head.value)
}

fn both_heads(pump: &PumpCurve, system: &SystemCurve, q: f64) -> String {
    let flow = VolumeRate::new::<cubic_meter_per_second>(q);
    let gives = pump.head_at(flow).map_or_else(|refusal| refusal.why, |head| format!("{:.2} m", head.value));
    format!("at {:.2} m3/h the pump gives {gives} and the system asks {:.2} m", q * 3600.0, system.head(q))
}
