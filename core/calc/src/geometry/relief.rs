//! The distance from the sides of an outline as a surface over the plan: plane over plane, exactly.
//!
//! As the contour of an outline moves inward, each side sweeps a cell in which the distance rises evenly from it, and an
//! arc round a reflex corner sweeps a fan of triangles. Where the contour stops, what is left lies level. A sweep that
//! knows by how much the surface changes its plane at each edge sums it over any region that other sides bound.

use super::erosion::{Run, arc};
use super::point::{Point, dot, left, step, sub};
use super::shrink::{Shrink, Start};

/// A plane over the plan: its height at the origin of the drawing at hand, and how it rises along x and y.
pub(super) type Plane = [f64; 3];

/// An edge between two planes: from, to, and by how much the plane on its left is above the one on its right.
pub(super) type Edge = (Point, Point, Plane);

const NOTHING: Plane = [0.0; 3];

fn less(one: Plane, other: Plane) -> Plane {
    [one[0] - other[0], one[1] - other[1], one[2] - other[2]]
}

/// The distance from the line of a side.
fn from_side(run: &Run, origin: Point) -> Plane {
    let inward = left(run.along);
    [dot(inward, sub(origin, run.start)), inward[0], inward[1]]
}

/// The plane of a triangle of a fan: nothing at its corner, `by` along its chord.
fn of_fan(corner: Point, chord: (Point, Point), by: f64, origin: Point) -> Plane {
    let across = left(sub(chord.1, chord.0));
    let reach = dot(across, sub(chord.0, corner));
    if reach == 0.0 {
        return NOTHING;
    }
    let rise = step([0.0; 2], across, by / reach);
    [dot(rise, sub(origin, corner)), rise[0], rise[1]]
}

/// The edges of the surface that rises from the sides of an outline and is level from a distance on, which may be up to
/// [`Shrink::until`].
pub(super) fn edges(shrink: &Shrink, by: f64, origin: Point) -> Vec<Edge> {
    let by = by.min(shrink.gone);
    let all: Vec<&Run> = shrink.rings().iter().flatten().collect();
    let planes: Vec<Plane> = all.iter().map(|run| from_side(run, origin)).collect();
    let mut found = Vec::with_capacity(4 * all.len());
    let starts: Vec<&[Start]> = shrink.starts().chunk_by(|a, b| a.side == b.side).collect();
    let mut first = 0;
    for ring in shrink.rings() {
        let own = first..first + ring.len();
        first += ring.len();
        for side in own.clone() {
            let next = if side + 1 == own.end { own.start } else { side + 1 };
            found.push((all[side].start, all[next].start, planes[side]));
            paths(shrink, starts[side], by, &planes, &mut found);
        }
        level(shrink, own, (&starts, &all), by, (&planes, origin), &mut found);
    }
    found
}

/// The way of the start of a side, between its cell and that of the side before.
fn paths(shrink: &Shrink, own: &[Start], by: f64, planes: &[Plane], found: &mut Vec<Edge>) {
    for (i, start) in own.iter().enumerate() {
        let until = own.get(i + 1).map_or(shrink.gone_at(start.side), |next| next.from).min(by);
        if let (Some(pace), true) = (start.pace, start.from < until) {
            let end = step(start.at, pace, until - start.from);
            found.push((start.at, end, less(planes[start.before], planes[start.side])));
        }
    }
}

/// The contour at which the surface becomes level, with the fans that end on it.
fn level(
    shrink: &Shrink,
    ring: std::ops::Range<usize>,
    (starts, all): (&[&[Start]], &[&Run]),
    by: f64,
    (planes, origin): (&[Plane], Point),
    found: &mut Vec<Edge>,
) {
    let top = [by, 0.0, 0.0];
    // Corners of the contour, each with the plane outside the piece that leaves it.
    let mut contour: Vec<(Point, Plane)> = Vec::with_capacity(ring.len() + 8);
    for side in ring.filter(|side| shrink.gone_at(*side) > by) {
        let Some(start) = starts[side].iter().rev().find(|start| start.from <= by) else { continue };
        if let Some(pace) = start.pace {
            contour.push((step(start.at, pace, by - start.from), planes[side]));
            continue;
        }
        let run = all[side];
        let mut fan = Vec::new();
        arc(run, step([0.0; 2], left(all[start.before].along), by), &mut fan, by);
        fan.push(step(run.start, left(run.along), by));
        let mut before = planes[start.before];
        for (i, place) in fan.iter().enumerate() {
            let next = fan.get(i + 1).map(|next| of_fan(run.start, (*place, *next), by, origin));
            let plane = next.unwrap_or(planes[side]);
            found.push((run.start, *place, less(before, plane)));
            contour.push((*place, plane));
            before = plane;
        }
    }
    for (i, (place, plane)) in contour.iter().enumerate() {
        let next = contour[(i + 1) % contour.len()].0;
        found.push((*place, next, less(top, *plane)));
    }
}
