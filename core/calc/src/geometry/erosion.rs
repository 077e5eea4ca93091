//! Where within an outline the distance to its sides is greater than a given one.
//!
//! Every side sweeps a rectangle inward and every reflex corner a sector; a place is farther than the
//! distance exactly where it is in the outline and in none of them. Added up as winding numbers, the
//! outline's rings less all these pieces make one raw contour a ring, and the winding number is
//! positive exactly at those places. The contour may cross itself at will: [`Sweep`] does not mind.

use super::Outline;
use super::point::{Point, cross, dot, left, length, sides, step, sub, turned};
use super::sweep::Sweep;

/// The greatest distance between an arc round a reflex corner and its chords, metres.
const ARC_SAGITTA: f64 = 0.000_5;

/// One side: direction and length, and the tangent of half the turn at its first corner.
struct Run {
    start: Point,
    along: Point,
    long: f64,
    turn: Point,
    trim: f64,
}

/// Adds the places farther than `by` metres from the sides to a layer; they wind above zero.
pub(super) fn lay_eroded(outline: &Outline, by: f64, sweep: &mut Sweep, layer: usize) {
    for ring in outline.rings() {
        let runs = runs(ring);
        let whole: Vec<bool> = (0..runs.len()).map(|i| survives(&runs, i, by)).collect();
        if outline.corners().is_some() && !whole.iter().all(|&w| w) && convex(&runs) {
            sweep.add(clipped(ring, &runs, by), layer);
        } else {
            sweep.add(raw(&runs, &whole, by), layer);
        }
    }
}

fn runs(ring: &[Point]) -> Vec<Run> {
    let ends: Vec<(Point, Point)> = sides(ring).collect();
    let along: Vec<Point> = ends.iter().map(|&(a, b)| super::point::unit(sub(b, a))).collect();
    let run = |i: usize| {
        let before = along[(i + along.len() - 1) % along.len()];
        let turn = [dot(before, along[i]), cross(before, along[i])];
        let trim = turn[1] / (1.0 + turn[0]).max(f64::MIN_POSITIVE);
        let (start, end) = ends[i];
        Run { start, along: along[i], long: length(sub(end, start)), turn, trim: trim.max(0.0) }
    };
    (0..ends.len()).map(run).collect()
}

fn convex(runs: &[Run]) -> bool {
    runs.iter().all(|run| run.turn[1] >= 0.0)
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
        if run.turn[1] < 0.0 {
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
fn arc(run: &Run, from: Point, contour: &mut Vec<Point>, by: f64) {
    let angle = libm::atan2(run.turn[1], run.turn[0]);
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

/// A convex ring cut by every moved side in turn; empty where nothing is left.
fn clipped(ring: &[Point], runs: &[Run], by: f64) -> Vec<Point> {
    let mut rest = ring.to_vec();
    for run in runs {
        let depth = |p: Point| cross(run.along, sub(p, run.start)) - by;
        let mut kept = Vec::with_capacity(rest.len() + 1);
        for (a, b) in sides(&rest) {
            let (da, db) = (depth(a), depth(b));
            if da >= 0.0 {
                kept.push(a);
            }
            if (da >= 0.0) != (db >= 0.0) {
                kept.push(step(a, sub(b, a), da / (da - db)));
            }
        }
        rest = kept;
    }
    rest
}
