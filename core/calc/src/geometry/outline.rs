//! An outline: one closed ring of corners, or what joining and cutting made of several.

use super::point::{NEAR, Point, cross, distance, sides, signed_area, square_to_side, sub};
use super::sound::{NO_AREA, Unsound, finite_corners, sound_ring};
use super::sweep::Sweep;

/// What a sum of areas may lose to rounding, as a share.
const ROUNDING: f64 = 1e-12;

/// The least upright rectangle round an outline, metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bounds {
    /// Least x and least y.
    pub low: Point,
    /// Greatest x and greatest y.
    pub high: Point,
}

impl Bounds {
    /// Whether the other rectangle stands out nowhere by more than rounding.
    fn holds(&self, other: &Bounds) -> bool {
        (0..2).all(|i| self.low[i] <= other.low[i] + NEAR && other.high[i] <= self.high[i] + NEAR)
    }

    pub(super) fn meets(&self, other: &Bounds) -> bool {
        (0..2).all(|i| self.low[i] <= other.high[i] && other.low[i] <= self.high[i])
    }
}

/// A region on plan, bounded by straight sides.
///
/// Outer rings stand counter-clockwise and holes clockwise, whichever way they were drawn; no ring
/// repeats its first corner.
#[derive(Debug, Clone, PartialEq)]
pub struct Outline {
    parts: Vec<Vec<Vec<Point>>>,
}

impl Outline {
    /// An outline from its corners in metres, in either winding, closed or not.
    ///
    /// A corner that repeats the one before it is dropped, as is a last corner that repeats the first.
    ///
    /// # Errors
    /// [`Unsound`] where a coordinate is not finite, fewer than three corners differ, two sides cross,
    /// touch or double back (they are named, counted from 1), or no area is enclosed.
    pub fn from_corners(corners: Vec<Point>) -> Result<Self, Unsound> {
        let ring = sound_ring(corners)?;
        Ok(Self { parts: vec![vec![ring]] })
    }

    /// An outline from rings known not to cross: per part the outer one first, then its holes.
    pub(super) fn from_parts(parts: Vec<Vec<Vec<Point>>>) -> Result<Self, Unsound> {
        for ring in parts.iter().flatten() {
            finite_corners(ring)?;
        }
        let outline = Self { parts };
        if outline.area() > NO_AREA {
            Ok(outline)
        } else {
            Err(Unsound::new("nothing is left of the outline; make it larger or take less away"))
        }
    }

    pub(super) fn parts(&self) -> &[Vec<Vec<Point>>] {
        &self.parts
    }

    /// Every ring: outer ones counter-clockwise, holes clockwise.
    pub fn rings(&self) -> impl Iterator<Item = &[Point]> {
        self.parts.iter().flatten().map(Vec::as_slice)
    }

    /// The corners, counter-clockwise, of an outline of one ring; `None` for one with parts or holes.
    pub fn corners(&self) -> Option<&[Point]> {
        let mut rings = self.rings();
        let only = rings.next();
        if rings.next().is_none() { only } else { None }
    }

    /// All sides, each as its two ends in metres.
    pub fn sides(&self) -> impl Iterator<Item = (Point, Point)> + '_ {
        self.rings().flat_map(sides)
    }

    /// Area, square metres.
    pub fn area(&self) -> f64 {
        self.rings().map(signed_area).sum()
    }

    /// Length of all sides, holes included, metres.
    pub fn perimeter(&self) -> f64 {
        self.sides().map(|(a, b)| distance(a, b)).sum()
    }

    /// Centre of the area, metres. It may lie outside a hooked outline.
    pub fn centroid(&self) -> Point {
        let origin = self.bounds().low;
        let mut sum = [0.0, 0.0, 0.0];
        for (a, b) in self.sides() {
            let ([ax, ay], [bx, by]) = (sub(a, origin), sub(b, origin));
            let doubled = ax * by - ay * bx;
            sum[0] += doubled;
            sum[1] += doubled * (ax + bx);
            sum[2] += doubled * (ay + by);
        }
        [origin[0] + sum[1] / (3.0 * sum[0]), origin[1] + sum[2] / (3.0 * sum[0])]
    }

    /// The least upright rectangle round it.
    pub fn bounds(&self) -> Bounds {
        let mut bounds = Bounds { low: [f64::MAX; 2], high: [f64::MIN; 2] };
        for &[x, y] in self.rings().flatten() {
            bounds.low = [bounds.low[0].min(x), bounds.low[1].min(y)];
            bounds.high = [bounds.high[0].max(x), bounds.high[1].max(y)];
        }
        bounds
    }

    /// The distance of the two corners that lie farthest apart, metres; it stays the same however the outline is turned.
    pub fn greatest_width(&self) -> f64 {
        let corners: Vec<Point> = self.rings().flatten().copied().collect();
        let from = |i: usize| corners[i..].iter().map(|c| distance(corners[i], *c)).fold(0.0, f64::max);
        (0..corners.len()).map(from).fold(0.0, f64::max)
    }

    /// Distance from a point to the nearest side, from within or without, metres.
    pub fn distance_to_side(&self, point: Point) -> f64 {
        self.sides().map(|(a, b)| square_to_side(point, a, b)).fold(f64::INFINITY, f64::min).sqrt()
    }

    /// Distance from a point to the region, metres; nothing for a point within it or on a side.
    pub fn distance_to(&self, point: Point) -> f64 {
        if self.winds_round(point) { 0.0 } else { self.distance_to_side(point) }
    }

    /// Whether a point lies in the region or within a millionth of a millimetre of it.
    pub fn contains(&self, point: Point) -> bool {
        self.distance_to(point) <= NEAR
    }

    /// Whether no corner turns right and there are neither parts nor holes.
    pub(super) fn is_convex(&self) -> bool {
        let turns_left = |ring: &[Point]| {
            let next = sides(ring).skip(1).chain(sides(ring).take(1));
            sides(ring).zip(next).all(|((a, b), (_, c))| cross(sub(b, a), sub(c, b)) >= 0.0)
        };
        self.corners().is_some_and(turns_left)
    }

    /// Whether this outline is convex and all corners of the other lie in it, so that all of the other does.
    pub(super) fn plainly_covers(&self, other: &Outline) -> bool {
        let left_of = |(a, b): (Point, Point), p: Point| cross(sub(b, a), sub(p, a)) >= 0.0;
        self.bounds().holds(&other.bounds())
            && self.is_convex()
            && self.sides().all(|side| other.rings().flatten().all(|&corner| left_of(side, corner)))
    }

    /// Whether the sides run round a point.
    pub(crate) fn winds_round(&self, p: Point) -> bool {
        let east_of = |&(a, b): &(Point, Point)| {
            (a[1] > p[1]) != (b[1] > p[1]) && p[0] < a[0] + (p[1] - a[1]) / (b[1] - a[1]) * (b[0] - a[0])
        };
        self.sides().filter(east_of).count() % 2 == 1
    }

    /// Whether the other outline lies wholly in this one; corners may stand out by 1e-9 m.
    pub fn covers(&self, other: &Outline) -> bool {
        if !self.bounds().holds(&other.bounds()) {
            return false;
        }
        self.plainly_covers(other)
            || other.rings().flatten().all(|&corner| self.contains(corner))
                && other.area() - self.overlap_area(other)
                    <= NEAR * (1.0 + other.perimeter()) + ROUNDING * other.area()
    }

    /// Area common to both outlines, square metres.
    pub fn overlap_area(&self, other: &Outline) -> f64 {
        if !self.bounds().meets(&other.bounds()) {
            return 0.0;
        }
        if self.plainly_covers(other) {
            return other.area();
        }
        if other.plainly_covers(self) {
            return self.area();
        }
        let mut sweep = Sweep::new(self.bounds());
        self.lay(&mut sweep, 0);
        other.lay(&mut sweep, 1);
        sweep.area(|winding| winding[0] > 0 && winding[1] > 0)
    }

    /// Area that lies under none of the others, square metres.
    pub fn area_beside<'o>(&self, others: impl Iterator<Item = &'o Outline>) -> f64 {
        let bounds = self.bounds();
        let mut met = others.filter(|other| other.bounds().meets(&bounds)).peekable();
        if met.peek().is_none() {
            return self.area();
        }
        let mut sweep = Sweep::new(bounds);
        self.lay(&mut sweep, 0);
        met.for_each(|other| other.lay(&mut sweep, 1));
        sweep.area(|winding| winding[0] > 0 && winding[1] <= 0)
    }

    /// Adds all rings to a layer of a sweep.
    pub(super) fn lay(&self, sweep: &mut Sweep, layer: usize) {
        for ring in self.rings() {
            sweep.add(ring, layer);
        }
    }
}
