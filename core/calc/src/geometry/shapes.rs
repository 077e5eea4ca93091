//! Rectangles, circles and ellipses as outlines.

use std::f64::consts::{FRAC_PI_2, PI};

use super::Outline;
use super::point::{Point, step, turned};
use super::sound::{Unsound, finite, finite_corners, positive};

/// Curves become straight sides with their corners on the curve and nowhere farther than this from it,
/// metres.
///
/// The corners never leave the curve, so a round pool drawn to touch a wall does not pass through it;
/// the price is an area too small by at most two thirds of this times the length of the curve.
pub const SAGITTA: f64 = 0.005;

/// Sides for an arc: at least two a quarter turn, and a whole number a quarter.
pub(super) fn sides_a_quarter(radius: f64) -> usize {
    let half = libm::acos(1.0 - (SAGITTA / radius).min(1.0));
    libm::ceil(FRAC_PI_2 / (2.0 * half)).clamp(2.0, 20_000.0) as usize
}

/// A rectangle from one corner, `size` = length and width, turned about that corner by `turn` radians,
/// with corners rounded to the radius `round` (0 for sharp ones). All metres.
///
/// # Errors
/// [`Unsound`] where a number is not finite, a size is not above nothing, or the rounding is negative
/// or more than half the smaller size.
pub fn rectangle(corner: Point, size: Point, turn: f64, round: f64) -> Result<Outline, Unsound> {
    finite_corners(&[corner])?;
    finite("the turn of the rectangle", turn)?;
    let [long, wide] = [positive("the length of the rectangle", size[0])?, positive("its width", size[1])?];
    finite("the rounding of its corners", round)?;
    if round < 0.0 || 2.0 * round > long.min(wide) {
        return Err(Unsound::new(format!(
            "corners rounded to {round} m do not fit a rectangle of {long} m by {wide} m; take a radius from 0 to half the smaller size"
        )));
    }
    let inner = [[long - round, round], [long - round, wide - round], [round, wide - round], [round, round]];
    let local: Vec<Point> = if round > 0.0 {
        (0..4).flat_map(|i| quarter(inner[i], round, i)).collect()
    } else {
        vec![[0.0, 0.0], [long, 0.0], [long, wide], [0.0, wide]]
    };
    let laid = |p: Point| step(corner, turned(p, turn), 1.0);
    Outline::from_corners(local.into_iter().map(laid).collect())
}

/// Corners of a quarter circle; `i` = 0 for the one at the south-east.
fn quarter(centre: Point, radius: f64, i: usize) -> Vec<Point> {
    let count = sides_a_quarter(radius);
    let angle = |k: usize| FRAC_PI_2 * (i as f64 - 1.0 + k as f64 / count as f64);
    (0..=count).map(|k| step(centre, turned([radius, 0.0], angle(k)), 1.0)).collect()
}

/// A circle of a radius in metres.
///
/// # Errors
/// [`Unsound`] where a number is not finite or the radius is not above nothing.
pub fn circle(centre: Point, radius: f64) -> Result<Outline, Unsound> {
    let radius = positive("the radius of the circle", radius)?;
    ellipse(centre, [radius, radius], 0.0)
}

/// An ellipse from its two half-axes in metres, the first turned by `turn` radians from the x axis.
///
/// # Errors
/// [`Unsound`] where a number is not finite or a half-axis is not above nothing.
pub fn ellipse(centre: Point, half_axes: Point, turn: f64) -> Result<Outline, Unsound> {
    finite_corners(&[centre])?;
    finite("the turn of the ellipse", turn)?;
    let [a, b] = [positive("a half-axis", half_axes[0])?, positive("a half-axis", half_axes[1])?];
    // Stretching a circle of the greater half-axis to the ellipse lessens every sagitta.
    let count = 4 * sides_a_quarter(a.max(b));
    let angle = |k: usize| 2.0 * PI * k as f64 / count as f64;
    let corner = |k: usize| {
        let local = [a * libm::cos(angle(k)), b * libm::sin(angle(k))];
        step(centre, turned(local, turn), 1.0)
    };
    Outline::from_corners((0..count).map(corner).collect())
}
