//! Whether a list of corners can be an outline at all.

use std::error::Error;
use std::fmt;

use geo::Coord;
use geo::kernels::{Kernel, Orientation, RobustKernel};

use super::point::{NEAR, Point, distance, dot, sides, signed_area, sub};
use super::sweep::near_pairs;

/// A drawing that cannot be built, with the sentence that says why and what to do.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unsound {
    /// A plain sentence: what was drawn, what was expected, a way out.
    pub why: String,
}

impl Unsound {
    pub(super) fn new(why: impl Into<String>) -> Self {
        Self { why: why.into() }
    }
}

impl fmt::Display for Unsound {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.why)
    }
}

impl Error for Unsound {}

/// Below this an outline encloses nothing, square metres.
pub(super) const NO_AREA: f64 = 1e-9;

/// Coordinates beyond this are a slip, metres: a hundred times round the earth, and squares of it
/// still leave room for sums.
const FAR: f64 = 4e9;

/// A finite number, named for the message.
pub(super) fn finite(what: &str, value: f64) -> Result<f64, Unsound> {
    if value.is_finite() && value.abs() <= FAR {
        Ok(value)
    } else {
        Err(Unsound::new(format!(
            "{what} is {value}; a number of metres or radians that can be drawn is expected"
        )))
    }
}

/// A finite number above zero, named for the message.
pub(super) fn positive(what: &str, value: f64) -> Result<f64, Unsound> {
    finite(what, value)?;
    if value > 0.0 {
        Ok(value)
    } else {
        Err(Unsound::new(format!("{what} is {value} m; give a length above nothing")))
    }
}

/// Every coordinate a number that can be drawn.
pub(super) fn finite_corners(corners: &[Point]) -> Result<(), Unsound> {
    let odd = corners.iter().position(|c| c.iter().any(|v| !v.is_finite() || v.abs() > FAR));
    match odd {
        None => Ok(()),
        Some(i) => Err(Unsound::new(format!(
            "corner {} is [{}, {}]; both coordinates must be numbers a drawing can hold",
            i + 1,
            corners[i][0],
            corners[i][1]
        ))),
    }
}

/// The ring without corners that repeat the one before, counter-clockwise, or why it is none.
pub(super) fn sound_ring(corners: Vec<Point>) -> Result<Vec<Point>, Unsound> {
    finite_corners(&corners)?;
    let typed = distinct(&corners);
    let mut ring: Vec<Point> = typed.iter().map(|&i| corners[i]).collect();
    if ring.len() < 3 {
        return Err(Unsound::new(format!(
            "an outline needs at least 3 different corners, and {} of these {} differ; add the corners that are missing",
            ring.len(),
            corners.len()
        )));
    }
    let area = signed_area(&ring);
    if area.abs() > NO_AREA || !doubled_flat(&ring) {
        uncrossed(&ring, &typed)?;
    }
    if area.abs() <= NO_AREA {
        return Err(Unsound::new(
            "all the corners lie on one line, so the outline encloses no area; move one of them off the line",
        ));
    }
    if area < 0.0 {
        ring.reverse();
    }
    Ok(ring)
}

/// All corners on the line through the first and the farthest from it.
fn doubled_flat(ring: &[Point]) -> bool {
    let far = ring
        .iter()
        .copied()
        .max_by(|a, b| distance(*a, ring[0]).total_cmp(&distance(*b, ring[0])))
        .unwrap_or(ring[0]);
    ring.iter().all(|&p| side_of(ring[0], far, p) == 0)
}

/// Places of the corners that differ from the one before; a closing corner that repeats the first goes.
fn distinct(corners: &[Point]) -> Vec<usize> {
    let mut kept: Vec<usize> = Vec::with_capacity(corners.len());
    for (i, &corner) in corners.iter().enumerate() {
        if kept.last().is_none_or(|&k| distance(corners[k], corner) > NEAR) {
            kept.push(i);
        }
    }
    while kept.len() > 1 && distance(corners[kept[kept.len() - 1]], corners[kept[0]]) <= NEAR {
        kept.pop();
    }
    kept
}

/// No two sides of the ring cross, touch or double back; `typed` gives each corner's place in the list.
fn uncrossed(ring: &[Point], typed: &[usize]) -> Result<(), Unsound> {
    let all: Vec<(Point, Point)> = sides(ring).collect();
    let mut first: Option<(usize, usize)> = None;
    near_pairs(&all, |i, j| {
        let pair = (i.min(j), i.max(j));
        if first.is_none_or(|known| pair < known) && clash(&all, pair.0, pair.1) {
            first = Some(pair);
        }
    });
    match first {
        None => Ok(()),
        Some((i, j)) => Err(Unsound::new(format!(
            "{} crosses, touches or doubles back on {}; list the corners in the order met on a walk round the outline",
            named(typed, i),
            named(typed, j)
        ))),
    }
}

fn named(typed: &[usize], side: usize) -> String {
    let (from, to) = (typed[side] + 1, typed[(side + 1) % typed.len()] + 1);
    format!("side {from} (corner {from} to corner {to})")
}

/// Neighbours may share their corner only; all others nothing.
fn clash(all: &[(Point, Point)], i: usize, j: usize) -> bool {
    let ((a, b), (c, d)) = (all[i], all[j]);
    if j == i + 1 {
        doubles_back(a, b, d)
    } else if i == 0 && j + 1 == all.len() {
        doubles_back(c, d, b)
    } else {
        meet(a, b, c, d)
    }
}

fn doubles_back(before: Point, corner: Point, after: Point) -> bool {
    side_of(before, corner, after) == 0 && dot(sub(before, corner), sub(after, corner)) > 0.0
}

fn meet(a: Point, b: Point, c: Point, d: Point) -> bool {
    let (ca, cb) = (side_of(c, d, a), side_of(c, d, b));
    let (ac, ad) = (side_of(a, b, c), side_of(a, b, d));
    if ca * cb < 0 && ac * ad < 0 {
        return true;
    }
    let on = |side: i32, p: Point, s: Point, t: Point| side == 0 && dot(sub(s, p), sub(t, p)) <= 0.0;
    on(ca, a, c, d) || on(cb, b, c, d) || on(ac, c, a, b) || on(ad, d, a, b)
}

/// 1 left of the line from `a` to `b`, −1 right of it, 0 on it; exact, by adaptive arithmetic.
fn side_of(a: Point, b: Point, p: Point) -> i32 {
    let coord = |q: Point| Coord { x: q[0], y: q[1] };
    match RobustKernel::orient2d(coord(a), coord(b), coord(p)) {
        Orientation::CounterClockwise => 1,
        Orientation::Clockwise => -1,
        Orientation::Collinear => 0,
    }
}
