//! Points, directions between them, and the moving of a whole drawing.

use super::Outline;

/// A place on plan, `[x, y]` in metres.
pub type Point = [f64; 2];

/// Two corners nearer than this are the same corner, and a point this near a side lies on it, metres.
///
/// A millionth of a millimetre: far under any tolerance of setting-out, far over the rounding of
/// coordinates within a kilometre of the origin.
pub(crate) const NEAR: f64 = 1e-9;

pub(super) fn sub(a: Point, b: Point) -> Point {
    [a[0] - b[0], a[1] - b[1]]
}

/// The point `start + by × along`.
pub(super) fn step(start: Point, along: Point, by: f64) -> Point {
    [start[0] + along[0] * by, start[1] + along[1] * by]
}

pub(super) fn dot(a: Point, b: Point) -> f64 {
    a[0] * b[0] + a[1] * b[1]
}

/// Positive where `b` lies to the left of `a`.
pub(super) fn cross(a: Point, b: Point) -> f64 {
    a[0] * b[1] - a[1] * b[0]
}

pub(super) fn length(a: Point) -> f64 {
    dot(a, a).sqrt()
}

pub(super) fn distance(a: Point, b: Point) -> f64 {
    length(sub(a, b))
}

/// Direction of length one; the zero vector stays zero.
pub(super) fn unit(a: Point) -> Point {
    let size = length(a);
    if size > 0.0 { [a[0] / size, a[1] / size] } else { a }
}

/// The direction a quarter turn to the left.
pub(super) fn left(a: Point) -> Point {
    [-a[1], a[0]]
}

/// Turned about the origin by an angle in radians, counter-clockwise.
pub(super) fn turned(a: Point, angle: f64) -> Point {
    let (sin, cos) = (libm::sin(angle), libm::cos(angle));
    [a[0] * cos - a[1] * sin, a[0] * sin + a[1] * cos]
}

/// Distance from a point to the straight side between `a` and `b`, metres.
pub(super) fn distance_to_side(p: Point, a: Point, b: Point) -> f64 {
    square_to_side(p, a, b).sqrt()
}

/// The square of that distance: of many sides the nearest is found without a root each.
pub(super) fn square_to_side(p: Point, a: Point, b: Point) -> f64 {
    let (side, from) = (sub(b, a), sub(p, a));
    let size = dot(side, side);
    let share = if size > 0.0 { (dot(from, side) / size).clamp(0.0, 1.0) } else { 0.0 };
    let off = step(from, side, -share);
    dot(off, off)
}

/// Sides of a closed ring of corners, each as its two ends; side `i` runs from corner `i` to the next.
pub(super) fn sides(ring: &[Point]) -> impl Iterator<Item = (Point, Point)> + '_ {
    let next = ring.iter().skip(1).chain(ring.first());
    ring.iter().copied().zip(next.copied())
}

/// Area of a closed ring, square metres: positive counter-clockwise.
///
/// The shoelace sum, taken from the first corner so that a drawing far from the origin loses nothing.
pub(super) fn signed_area(ring: &[Point]) -> f64 {
    let Some(&origin) = ring.first() else {
        return 0.0;
    };
    let doubled: f64 = sides(ring).map(|(a, b)| cross(sub(a, origin), sub(b, origin))).sum();
    0.5 * doubled
}

/// The axis in which a drawing is mirrored.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mirror {
    /// Across the x axis: y changes its sign.
    AcrossX,
    /// Across the y axis: x changes its sign.
    AcrossY,
}

/// How a copy is laid: mirrored first, then turned, both about `about`, then moved.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Motion {
    /// The point that mirroring and turning leave where it is, metres.
    pub about: Point,
    /// Mirrored or not.
    pub mirror: Option<Mirror>,
    /// Turn in radians, counter-clockwise.
    pub turn: f64,
    /// Move in metres.
    pub by: Point,
}

impl Motion {
    /// Where this motion takes a point.
    pub fn of(&self, point: Point) -> Point {
        let [x, y] = sub(point, self.about);
        let laid = match self.mirror {
            None => [x, y],
            Some(Mirror::AcrossX) => [x, -y],
            Some(Mirror::AcrossY) => [-x, y],
        };
        let [x, y] = turned(laid, self.turn);
        [x + self.about[0] + self.by[0], y + self.about[1] + self.by[1]]
    }
}

/// The outline laid elsewhere.
///
/// # Errors
/// [`Unsound`](super::Unsound) where a number of the motion is not finite.
pub fn moved(outline: &Outline, motion: &Motion) -> Result<Outline, super::Unsound> {
    let parts =
        outline.parts().iter().map(|part| part.iter().map(|ring| laid(ring, motion)).collect()).collect();
    Outline::from_parts(parts)
}

fn laid(ring: &[Point], motion: &Motion) -> Vec<Point> {
    let mut corners: Vec<Point> = ring.iter().map(|&corner| motion.of(corner)).collect();
    if motion.mirror.is_some() {
        corners.reverse();
    }
    corners
}
