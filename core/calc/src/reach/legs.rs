//! Legs of a path: where a path may bend, what stands in the way of a straight piece, and how long the piece counts.

use super::{LEAST_RISE, Surroundings};
use crate::geometry::Point;

/// Walls are taken this much longer at either end, metres, so that two that meet leave no slit.
const OVERLAP: f64 = 1e-7;
/// A path bends this far off the corner it goes round, metres.
const OFF_CORNER: f64 = 1e-6;
/// A path that touches a top lies on it, metres.
const ON_TOP: f64 = 1e-9;
/// A start on the rim lies this far inside it, metres, so that a wall that stands on the rim stands between.
const INSIDE: f64 = 1e-6;

/// Eight directions round a corner.
const ROUND: [Point; 8] =
    [[1.0, 0.0], [1.0, 1.0], [0.0, 1.0], [-1.0, 1.0], [-1.0, 0.0], [-1.0, -1.0], [0.0, -1.0], [1.0, -1.0]];

/// One straight piece of a partition.
#[derive(Debug, Clone, Copy)]
pub(super) struct Wall {
    pub(super) a: Point,
    pub(super) b: Point,
    pub(super) top: f64,
    /// Its length.
    size: f64,
}

/// A place where a path may bend.
#[derive(Debug, Clone, Copy)]
pub(super) struct Place {
    pub(super) at: Point,
    /// On the top edge of this wall; none beside a wall's end, where a path runs level.
    pub(super) on: Option<usize>,
}

/// The counted partitions as single walls: those that stand high enough over the rim.
pub(super) fn walls(around: &Surroundings) -> Vec<Wall> {
    let counted = around.partitions.iter().filter(|p| p.top >= around.rim + LEAST_RISE);
    counted.flat_map(|p| p.line.windows(2).map(|w| wall(w[0], w[1], p.top))).collect()
}

fn wall(a: Point, b: Point, top: f64) -> Wall {
    Wall { a, b, top, size: plan(a, b) }
}

/// Places beside the ends of every wall; walls that follow one another share an end.
pub(super) fn beside(walls: &[Wall]) -> Vec<Place> {
    let mut ends: Vec<Point> = walls.iter().flat_map(|w| [w.a, w.b]).collect();
    ends.sort_by(|a, b| a[0].total_cmp(&b[0]).then(a[1].total_cmp(&b[1])));
    ends.dedup();
    let off = |end: Point, d: Point| [end[0] + d[0] * OFF_CORNER, end[1] + d[1] * OFF_CORNER];
    ends.into_iter().flat_map(|end| ROUND.iter().map(move |d| Place { at: off(end, *d), on: None })).collect()
}

/// The point of a wall's line at a share of its length.
pub(super) fn along(wall: &Wall, share: f64) -> Point {
    [wall.a[0] + (wall.b[0] - wall.a[0]) * share, wall.a[1] + (wall.b[1] - wall.a[1]) * share]
}

/// The share of a side at which a point is nearest to it.
pub(super) fn share_nearest(a: Point, b: Point, p: Point) -> f64 {
    let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
    let size = dx * dx + dy * dy;
    if size <= 0.0 { 0.0 } else { (((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / size).clamp(0.0, 1.0) }
}

pub(super) fn plan(a: Point, b: Point) -> f64 {
    square(a, b).sqrt()
}

/// The square of the distance in plan.
pub(super) fn square(a: Point, b: Point) -> f64 {
    let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
    dx * dx + dy * dy
}

/// Length of a straight piece that rises or falls by so much.
pub(super) fn slant(a: Point, b: Point, rise: f64) -> f64 {
    let level = plan(a, b);
    (level * level + rise * rise).sqrt()
}

/// Whether a straight piece from `a` at level `from` to `b` at level `to` runs into a wall.
pub(super) fn blocked(walls: &[Wall], a: Point, from: f64, b: Point, to: f64) -> bool {
    let (d, long) = ([b[0] - a[0], b[1] - a[1]], plan(a, b));
    let under = |w: &Wall, share: f64| from + (to - from) * share < w.top - ON_TOP;
    walls.iter().any(|w| crossing(w, a, d, long).is_some_and(|share| under(w, share)))
}

/// The share of the piece `d` from `a`, so long, at which it crosses a wall in plan.
fn crossing(wall: &Wall, a: Point, d: Point, long: f64) -> Option<f64> {
    let w = [wall.b[0] - wall.a[0], wall.b[1] - wall.a[1]];
    let turn = d[0] * w[1] - d[1] * w[0];
    // Along a wall nothing is crossed; its ends are crossed with its neighbours.
    if turn.abs() <= 1e-12 * long * wall.size {
        return None;
    }
    let off = [wall.a[0] - a[0], wall.a[1] - a[1]];
    let before = off[0] * w[1] - off[1] * w[0];
    // Most walls lie before or behind the piece, which is seen without dividing.
    if before * turn < 0.0 || before.abs() > turn.abs() {
        return None;
    }
    let on_piece = before / turn;
    let on_wall = (off[0] * d[1] - off[1] * d[0]) / turn;
    let slack = OVERLAP / wall.size;
    let meets = (0.0..=1.0).contains(&on_piece) && (-slack..=1.0 + slack).contains(&on_wall);
    meets.then_some(on_piece)
}

/// A side of the rim, ready to be asked for its nearest point many times.
pub(super) struct Side {
    a: Point,
    along: Point,
    /// One by the square of its length.
    by_square: f64,
    /// A little way from it to the water.
    inward: Point,
}

/// The sides of the rim.
pub(super) fn rim(around: &Surroundings) -> Vec<Side> {
    let side = |(a, b): (Point, Point)| {
        let (along, size) = ([b[0] - a[0], b[1] - a[1]], plan(a, b));
        let (by_square, inward) = if size > 0.0 { (1.0 / (size * size), INSIDE / size) } else { (0.0, 0.0) };
        // Outer rings run counter-clockwise: the water is on the left.
        Side { a, along, by_square, inward: [-along[1] * inward, along[0] * inward] }
    };
    around.water.sides().map(side).collect()
}

impl Side {
    /// Its point nearest to a place.
    pub(super) fn nearest(&self, place: Point) -> Point {
        let off = [place[0] - self.a[0], place[1] - self.a[1]];
        let share = ((off[0] * self.along[0] + off[1] * self.along[1]) * self.by_square).clamp(0.0, 1.0);
        [self.a[0] + self.along[0] * share, self.a[1] + self.along[1] * share]
    }

    /// Where a path to a place starts whose nearest point of the side is this.
    pub(super) fn start(&self, nearest: Point) -> Point {
        [nearest[0] + self.inward[0], nearest[1] + self.inward[1]]
    }
}
