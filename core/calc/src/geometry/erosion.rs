//! Where within an outline the distance to its sides is greater than a given one.
//!
//! Every side sweeps a rectangle inward and every reflex corner a sector; a place is farther than the
//! distance exactly where it is in the outline and in none of them. Added up as winding numbers, the
//! outline's rings less all these pieces make one raw contour a ring, and the winding number is
//! positive exactly at those places. The contour may cross itself at will: [`Sweep`] does not mind.

use super::point::{Point, cross, dot, left, length, sides, step, sub, turned, unit};
use super::sweep::Sweep;

/// The greatest distance between an arc round a reflex corner and its chords, metres.
const ARC_SAGITTA: f64 = 0.000_5;

/// The sine of a turn that is rounding.
pub(super) const STRAIGHT: f64 = 1e-12;

/// One side: direction and length, and the tangent of half the turn at its first corner.
#[derive(Debug, Clone, Copy)]
pub(super) struct Run {
    pub(super) start: Point,
    pub(super) along: Point,
    pub(super) long: f64,
    /// Cosine and sine of the turn.
    pub(super) turn: Point,
    pub(super) trim: f64,
}

impl Run {
    /// Whether the outline turns right here; a straight corner that rounding turns right does not.
    pub(super) fn is_reflex(&self) -> bool {
        self.turn[1] < -STRAIGHT || (self.turn[1] < 0.0 && self.turn[0] < 0.0)
    }

    /// The turn at its first corner, radians, negative at a reflex one.
    pub(super) fn angle(&self) -> f64 {
        libm::atan2(self.turn[1], self.turn[0])
    }
}

/// Adds the places farther than `by` metres from the sides to a layer; they wind above zero.
pub(super) fn lay_eroded(rings: &[Vec<Run>], by: f64, sweep: &mut Sweep, layer: usize) {
    for runs in rings {
        let whole: Vec<bool> = (0..runs.len()).map(|i| survives(runs, i, by)).collect();
        sweep.add_raw(&raw(runs, &whole, by), layer);
    }
}

pub(super) fn runs(ring: &[Point]) -> Vec<Run> {
    let ends: Vec<(Point, Point)> = sides(ring).collect();
    let along: Vec<Point> = ends.iter().map(|&(a, b)| unit(sub(b, a))).collect();
    let run = |i: usize| {
        let before = along[(i + along.len() - 1) % along.len()];
        let turn = [dot(before, along[i]), cross(before, along[i])];
        let trim = turn[1] / (1.0 + turn[0]).max(f64::MIN_POSITIVE);
        let (start, end) = ends[i];
        Run { start, along: along[i], long: length(sub(end, start)), turn, trim: trim.max(0.0) }
    };
    (0..ends.len()).map(run).collect()
}

/// Whether the moved side keeps a length between the moved sides beside it.
fn survives(runs: &[Run], i: usize, by: f64) -> bool {
    let next = &runs[(i + 1) % runs.len()];
    runs[i].long >= by * (runs[i].trim + next.trim)
}

/// The raw contour. Where both sides at a convex corner survive, it turns where they meet; where one
/// does not, it passes through the corner itself, which bounds both rectangles and nothing else.
fn raw(runs: &[Run], whole: &[bool], by: f64) -> Vec<Point> {
    let mut contour = Vec::with_capacity(3 * runs.len());
    for (i, run) in runs.iter().enumerate() {
        let before = (i + runs.len() - 1) % runs.len();
        let (n, m) = (left(runs[before].along), left(run.along));
        if run.is_reflex() {
            arc(run, step([0.0; 2], n, by), &mut contour, by);
            contour.push(step(run.start, m, by));
        } else if whole[before] && whole[i] {
            let both = [n[0] + m[0], n[1] + m[1]];
            contour.push(step(run.start, both, by / (1.0 + run.turn[0])));
        } else {
            contour.extend([step(run.start, n, by), run.start, step(run.start, m, by)]);
        }
    }
    contour
}

/// Points of the arc round a reflex corner save the last. The inner ones stand slightly outside the
/// arc, so that the chords enclose the area of the sector exactly.
pub(super) fn arc(run: &Run, from: Point, contour: &mut Vec<Point>, by: f64) {
    let angle = run.angle();
    let chord = libm::sqrt(8.0 * ARC_SAGITTA / by.max(ARC_SAGITTA)).min(0.5);
    let count = libm::ceil(-angle / chord).max(2.0);
    let part = angle / count;
    let rest = count - 2.0;
    let ratio = count * part / libm::sin(part);
    let stretch = if rest > 0.0 { (libm::sqrt(1.0 + rest * ratio) - 1.0) / rest } else { 0.5 * ratio };
    contour.push(step(run.start, from, 1.0));
    for k in 1..count as usize {
        let spoke = turned(from, part * k as f64);
        contour.push(step(run.start, spoke, stretch));
    }
}
