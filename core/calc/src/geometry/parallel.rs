//! The line at a distance from an outline, round at the corners it goes round: zones beside water, contours of a slope.

use std::f64::consts::PI;

use super::Outline;
use super::combine::{join, less};
use super::point::{Point, cross, dot, left, step, sub, turned, unit};
use super::shapes::sides_a_quarter;
use super::sound::{Unsound, finite};

/// Every place within a distance in metres of the outline, or, where it is negative, every place of the outline farther
/// than that from its sides. Round corners become straight sides with their corners on the arc, nowhere farther from it
/// than [`SAGITTA`](super::SAGITTA).
///
/// # Errors
/// [`Unsound`] where the distance is not a number, or nothing is left.
pub fn parallel(outline: &Outline, by: f64) -> Result<Outline, Unsound> {
    let by = finite("the distance from the outline", by)?;
    if by == 0.0 {
        return Ok(outline.clone());
    }
    let mut bands: Vec<Outline> = outline.rings().flat_map(|ring| bands(ring, by)).collect();
    if by > 0.0 {
        bands.push(outline.clone());
        return join(&bands);
    }
    less(outline, &bands)
}

/// What each side sweeps as it moves, with the sector at its far corner where the line goes round that corner.
fn bands(ring: &[Point], by: f64) -> impl Iterator<Item = Outline> + '_ {
    let count = ring.len();
    let along = move |i: usize| unit(sub(ring[(i + 1) % count], ring[i % count]));
    (0..count).filter_map(move |i| {
        let (a, b) = (ring[i], ring[(i + 1) % count]);
        let (own, next) = (outward(along(i), by), outward(along(i + 1), by));
        let mut corners = vec![step(a, own, 1.0), a, b];
        corners.extend(sector(b, own, next, by).into_iter().rev());
        corners.push(step(b, own, 1.0));
        Outline::from_corners(corners).ok()
    })
}

/// From a side that runs counter-clockwise, to the right by the distance: out of the region where it is positive.
fn outward(along: Point, by: f64) -> Point {
    step([0.0; 2], left(along), -by)
}

/// The arc round a corner from the end of one band to the beginning of the next, without its first point; empty where
/// the bands overlap.
fn sector(corner: Point, own: Point, next: Point, by: f64) -> Vec<Point> {
    let angle = libm::atan2(cross(own, next), dot(own, next));
    // Outward the line goes round corners that turn left, inward round those that turn right.
    if angle * by <= 0.0 || angle.abs() < 1e-9 || angle.abs() > PI - 1e-9 {
        return Vec::new();
    }
    let quarter = sides_a_quarter(by.abs()) as f64;
    let count = libm::ceil(angle.abs() / (0.5 * PI) * quarter).max(1.0);
    (1..=count as usize).map(|k| step(corner, turned(own, angle * k as f64 / count), 1.0)).collect()
}

#[cfg(test)]
mod tests {
    use super::parallel;
    use crate::geometry::{Outline, less, rectangle};

    fn hook() -> Outline {
        Outline::from_corners(vec![[0.0, 0.0], [4.0, 0.0], [4.0, 1.0], [1.0, 1.0], [1.0, 3.0], [0.0, 3.0]])
            .expect("a hook")
    }

    fn near(found: f64, expected: f64, within: f64) {
        assert!((found - expected).abs() <= within, "{found} and {expected}");
    }

    /// shapely 2: `Polygon(hook).buffer(2, quad_segs=256).area`, `.buffer(-0.3, quad_segs=256).area`.
    #[test]
    fn areas_are_those_of_shapely() {
        near(parallel(&hook(), 2.0).expect("around").area(), 45.707_864_70, 0.05);
        near(parallel(&hook(), -0.3).expect("within").area(), 2.179_314_61, 0.002);
    }

    /// A rectangle a by b: a b + 2 (a + b) d + pi d^2 outward; what chords cut off is less than two thirds of the sagitta
    /// times the arc.
    #[test]
    fn a_rectangle_gains_a_frame_and_a_circle() {
        let [a, b, d] = [3.0, 2.0, 1.5];
        let whole = a * b + 2.0 * (a + b) * d + std::f64::consts::PI * d * d;
        let found =
            parallel(&rectangle([1.0, 1.0], [a, b], 0.3, 0.0).expect("a rectangle"), d).expect("around");
        assert!(found.area() < whole);
        near(found.area(), whole, 2.0 / 3.0 * 0.005 * 2.0 * std::f64::consts::PI * d);
        for corner in found.rings().flatten() {
            near(rectangle([1.0, 1.0], [a, b], 0.3, 0.0).expect("it").distance_to(*corner), d, 1e-6);
        }
    }

    /// 2 x 2 with a hole of 1 x 1 in its middle: outward by 0.2 the hole keeps 0.6 x 0.6 with sharp corners.
    #[test]
    fn a_hole_is_filled_from_its_sides() {
        let hole = rectangle([0.5, 0.5], [1.0, 1.0], 0.0, 0.0).expect("a hole");
        let frame =
            less(&rectangle([0.0, 0.0], [2.0, 2.0], 0.0, 0.0).expect("a square"), &[hole]).expect("a frame");
        let grown = parallel(&frame, 0.2).expect("around");
        let whole = 4.0 + 8.0 * 0.2 + std::f64::consts::PI * 0.04 - 0.36;
        near(grown.area(), whole, 0.005);
    }

    #[test]
    fn what_has_no_inside_left_says_so() {
        assert!(parallel(&hook(), -0.6).is_err());
        assert!(parallel(&hook(), f64::NAN).is_err());
        assert_eq!(parallel(&hook(), 0.0), Ok(hook()));
    }
}
