//! A smooth closed curve through given points.

use super::Outline;
use super::point::{NEAR, Point, distance, distance_to_side, step, sub};
use super::shapes::SAGITTA;
use super::sound::{Unsound, finite_corners};

/// Halvings of a stretch between two given points at most.
const HALVINGS: usize = 12;

/// A closed curve through at least three points, in metres: bean shapes.
///
/// A centripetal Catmull-Rom curve (knots spaced by the root of the distance), made straight to within
/// [`SAGITTA`]. It passes through every point, keeps one tangent at each, a moved point bends only the
/// four stretches beside it, and within a stretch it has neither cusp nor loop however unevenly
/// the points are spaced (recalled: Yuksel, Schaefer and Keyser, "Parameterization and applications of
/// Catmull-Rom curves", 2011), which the uniform and the chordal ones do not promise.
///
/// # Errors
/// [`Unsound`] where a coordinate is not finite, fewer than three points differ, or the curve crosses itself.
pub fn smooth(through: &[Point]) -> Result<Outline, Unsound> {
    finite_corners(through)?;
    let mut points: Vec<Point> = through.to_vec();
    points.dedup_by(|a, b| distance(*a, *b) <= NEAR);
    while points.len() > 1 && distance(points[0], points[points.len() - 1]) <= NEAR {
        points.pop();
    }
    let count = points.len();
    if count < 3 {
        return Err(Unsound::new(format!(
            "a smooth outline needs at least 3 different points, and {count} of these differ; add the points that are missing"
        )));
    }
    let mut corners = Vec::new();
    for i in 0..count {
        let near =
            [points[(i + count - 1) % count], points[i], points[(i + 1) % count], points[(i + 2) % count]];
        corners.push(near[1]);
        flatten(&near, [0.0, 1.0], [near[1], near[2]], HALVINGS, &mut corners);
    }
    Outline::from_corners(corners).map_err(|unsound| {
        Unsound::new(format!(
            "the smooth curve through these {count} points crosses itself or encloses nothing ({unsound}, counted on the curve); list the points in order round the outline, or add some where it turns sharply"
        ))
    })
}

/// Corners strictly between the ends of a stretch, halved until no quarter stands off the chord.
fn flatten(near: &[Point; 4], range: [f64; 2], ends: [Point; 2], left: usize, corners: &mut Vec<Point>) {
    let at = |share: f64| on_stretch(near, range[0] + share * (range[1] - range[0]));
    let off = |share: f64| distance_to_side(at(share), ends[0], ends[1]);
    if left == 0 || [0.25, 0.5, 0.75].into_iter().all(|share| off(share) <= SAGITTA) {
        return;
    }
    let (half, middle) = (0.5 * (range[0] + range[1]), at(0.5));
    flatten(near, [range[0], half], [ends[0], middle], left - 1, corners);
    corners.push(middle);
    flatten(near, [half, range[1]], [middle, ends[1]], left - 1, corners);
}

/// The curve between the second and the third of four points, by Barry and Goldman's pyramid.
fn on_stretch(near: &[Point; 4], share: f64) -> Point {
    let knot = |i: usize| libm::sqrt(distance(near[i], near[i + 1]));
    let t0 = 0.0;
    let t1 = t0 + knot(0);
    let t2 = t1 + knot(1);
    let t3 = t2 + knot(2);
    let t = t1 + share * (t2 - t1);
    let mix = |p: Point, q: Point, from: f64, to: f64| step(p, sub(q, p), (t - from) / (to - from));
    let a = [mix(near[0], near[1], t0, t1), mix(near[1], near[2], t1, t2), mix(near[2], near[3], t2, t3)];
    let b = [mix(a[0], a[1], t0, t2), mix(a[1], a[2], t1, t3)];
    mix(b[0], b[1], t1, t2)
}
