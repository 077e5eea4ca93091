//! Open lines in plan: how near they come to outlines, and the corners they make with each other.

use super::Outline;
use super::point::{NEAR, Point, cross, distance, dot, length, step, sub, unit};

/// Two lines nearer than this are taken to be joined, metres.
pub const JOINED: f64 = 0.01;

/// Corners flatter than this are no corners (170°), sharper than [`LAID_TWICE`] the same line laid twice.
const FLAT: f64 = 170.0 * std::f64::consts::PI / 180.0;
const LAID_TWICE: f64 = std::f64::consts::PI / 180.0;

/// The pieces of a line.
pub(super) fn pieces(track: &[Point]) -> impl Iterator<Item = (Point, Point)> + '_ {
    track.windows(2).map(|w| (w[0], w[1]))
}

/// The point of a straight piece nearest to `p`.
fn foot(p: Point, (a, b): (Point, Point)) -> Point {
    let along = sub(b, a);
    let size = dot(along, along);
    if size <= 0.0 {
        return a;
    }
    step(a, along, (dot(sub(p, a), along) / size).clamp(0.0, 1.0))
}

/// Where two straight pieces cross.
fn crossing((a, b): (Point, Point), (c, d): (Point, Point)) -> Option<Point> {
    let (r, s) = (sub(b, a), sub(d, c));
    let turn = cross(r, s);
    if turn == 0.0 {
        return None;
    }
    let (t, u) = (cross(sub(c, a), s) / turn, cross(sub(c, a), r) / turn);
    ((0.0..=1.0).contains(&t) && (0.0..=1.0).contains(&u)).then(|| step(a, r, t))
}

/// The straight ways from one piece to another that cannot be made shorter on their own side: each end with the nearest
/// point of the other piece, or the point where they cross.
pub(super) fn ways(i: (Point, Point), j: (Point, Point)) -> impl Iterator<Item = (Point, Point)> {
    let from_ends = [(i.0, foot(i.0, j)), (i.1, foot(i.1, j)), (foot(j.0, i), j.0), (foot(j.1, i), j.1)];
    from_ends.into_iter().chain(crossing(i, j).map(|p| (p, p)))
}

/// The shortest way from one piece to another.
fn shortest(i: (Point, Point), j: (Point, Point)) -> (Point, Point) {
    let shorter = |a: (Point, Point), b: (Point, Point)| {
        if distance(b.0, b.1) < distance(a.0, a.1) { b } else { a }
    };
    ways(i, j).fold((i.0, j.0), shorter)
}

/// Distance from a line to a region, metres; nothing where the line runs through it. A line without pieces is
/// infinitely far.
pub fn track_to_outline(track: &[Point], outline: &Outline) -> f64 {
    if track.iter().any(|p| outline.contains(*p)) {
        return 0.0;
    }
    let gap = |i, j| {
        let (p, q) = shortest(i, j);
        distance(p, q)
    };
    pieces(track).flat_map(|i| outline.sides().map(move |j| gap(i, j))).fold(f64::INFINITY, f64::min)
}

/// The sharpest corner, radians, that a line makes in itself or with the others on the side of one of the regions; half
/// a turn where it makes none.
pub fn sharpest_corner(own: &[Point], others: &[&[Point]], regions: &[&Outline]) -> f64 {
    let all: Vec<(Point, Point)> = pieces(own).chain(others.iter().flat_map(|t| pieces(t))).collect();
    let count = own.len().saturating_sub(1);
    let pairs = (0..count).flat_map(|i| (i + 1..all.len()).map(move |j| (i, j)));
    pairs.flat_map(|(i, j)| corners(all[i], all[j], regions)).fold(std::f64::consts::PI, f64::min)
}

/// The angles two pieces make where they meet, on the side of the regions.
fn corners(i: (Point, Point), j: (Point, Point), regions: &[&Outline]) -> Vec<f64> {
    let (at, there) = shortest(i, j);
    if distance(at, there) > JOINED + NEAR {
        return Vec::new();
    }
    let arms = |(a, b): (Point, Point)| {
        [a, b]
            .into_iter()
            .filter(move |end| distance(*end, at) > 2.0 * JOINED)
            .map(move |end| unit(sub(end, at)))
    };
    let angle = |u: Point, v: Point| libm::atan2(cross(u, v).abs(), dot(u, v));
    let faces = |u: Point, v: Point| {
        let middle = [u[0] + v[0], u[1] + v[1]];
        let probe = step(at, unit(middle), 0.3);
        length(middle) > 0.0 && regions.iter().any(|r| r.contains(probe))
    };
    arms(i)
        .flat_map(|u| arms(j).map(move |v| (u, v)))
        .filter(|(u, v)| faces(*u, *v))
        .map(|(u, v)| angle(u, v))
        .filter(|a| (LAID_TWICE..FLAT).contains(a))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::{sharpest_corner, track_to_outline};
    use crate::geometry::rectangle;

    fn near(a: f64, b: f64) {
        assert!((a - b).abs() < 1e-12, "{a} and {b}");
    }

    /// shapely 2: `LineString([(0,0),(4,0)]).distance(box(1,0.3,2,1))` = 0.3,
    /// `LineString([(0,0),(4,0),(4,3)]).distance(Polygon([(4.5,4),(5.5,4),(5,5)]))` = 1.118033988749895,
    /// `LineString([(0,0.5),(4,0.5)]).distance(box(1,0,2,1))` = 0.0.
    #[test]
    fn distances_are_those_of_shapely() {
        let box_ = rectangle([1.0, 0.3], [1.0, 0.7], 0.0, 0.0).expect("a rectangle");
        near(track_to_outline(&[[0.0, 0.0], [4.0, 0.0]], &box_), 0.3);
        let triangle = crate::geometry::Outline::from_corners(vec![[4.5, 4.0], [5.5, 4.0], [5.0, 5.0]])
            .expect("a triangle");
        near(track_to_outline(&[[0.0, 0.0], [4.0, 0.0], [4.0, 3.0]], &triangle), 1.118_033_988_749_895);
        let through = rectangle([1.0, 0.0], [1.0, 1.0], 0.0, 0.0).expect("a rectangle");
        near(track_to_outline(&[[0.0, 0.5], [4.0, 0.5]], &through), 0.0);
    }

    /// ```text
    ///  (0,3)       (4,3)      inside is the rectangle 4 x 3: its corners measure 90°;
    ///    +-----------+        the corner at (2,0) of the line (0,0) (2,0) (3,-1) turns outward,
    ///    |  inside   |        135° on the far side, 225° on the inside: no corner to brace in.
    ///    +-----------+
    /// ```
    #[test]
    fn only_corners_on_the_animals_side_count() {
        let room = rectangle([0.0, 0.0], [4.0, 3.0], 0.0, 0.0).expect("a rectangle");
        let right = std::f64::consts::FRAC_PI_2;
        near(sharpest_corner(&[[0.0, 0.0], [4.0, 0.0]], &[&[[4.0, 0.0], [4.0, 3.0]]], &[&room]), right);
        near(sharpest_corner(&[[0.0, 0.0], [2.0, 0.0], [3.0, -1.0]], &[], &[&room]), std::f64::consts::PI);
        // A wall 20 mm away is not joined.
        near(
            sharpest_corner(&[[0.0, 0.0], [3.98, 0.0]], &[&[[4.0, 0.0], [4.0, 3.0]]], &[&room]),
            std::f64::consts::PI,
        );
        // An end that meets the middle of another wall makes a corner on either side.
        let slanting = sharpest_corner(&[[2.0, 0.0], [3.0, 1.0]], &[&[[0.0, 0.0], [4.0, 0.0]]], &[&room]);
        near(slanting, std::f64::consts::FRAC_PI_4);
    }
}
