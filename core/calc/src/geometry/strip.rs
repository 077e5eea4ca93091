//! A strip of constant width along a line: streams, ledges, ramps and walls.

use super::Outline;
use super::point::{NEAR, Point, cross, distance, dot, left, step, sub, unit};
use super::sound::{Unsound, finite_corners, positive};

/// Where the line drawn stands in the strip, seen along the line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// The line is the middle of the strip.
    Centre,
    /// The strip lies to the left of the line.
    Left,
    /// The strip lies to the right of the line.
    Right,
}

/// Turns sharper than this have no sound mitre: cosine of 150 degrees.
const HAIRPIN: f64 = -0.866;

/// A strip along an open line of two or more points, with mitred corners and square ends; metres.
///
/// # Errors
/// [`Unsound`] where a number is not finite, the width is not above nothing, fewer than two points
/// differ, the line turns back by more than 150 degrees, or the strip crosses itself.
pub fn strip(line: &[Point], width: f64, side: Side) -> Result<Outline, Unsound> {
    finite_corners(line)?;
    let width = positive("the width of the strip", width)?;
    let mut points = line.to_vec();
    points.dedup_by(|a, b| distance(*a, *b) <= NEAR);
    if points.len() < 2 {
        return Err(Unsound::new(
            "the line of the strip needs at least 2 different points; add where it ends",
        ));
    }
    let (to_left, to_right) = match side {
        Side::Centre => (0.5 * width, -0.5 * width),
        Side::Left => (width, 0.0),
        Side::Right => (0.0, -width),
    };
    unfolded(&points, width)?;
    let mut corners = beside(&points, to_right);
    corners.extend(beside(&points, to_left).into_iter().rev());
    Outline::from_corners(corners).map_err(|unsound| crosses(width, &unsound.why))
}

fn crosses(width: f64, why: &str) -> Unsound {
    Unsound::new(format!(
        "the strip of {width} m crosses itself ({why}); make it narrower or its line straighter"
    ))
}

/// No corner turns back, and each stretch is long enough to hold the mitres at both its ends.
fn unfolded(points: &[Point], width: f64) -> Result<(), Unsound> {
    for (i, three) in points.windows(3).enumerate() {
        let (before, after) = (unit(sub(three[1], three[0])), unit(sub(three[2], three[1])));
        if dot(before, after) < HAIRPIN {
            return Err(crosses(
                width,
                &format!("its line turns back by more than 150 degrees at point {}", i + 2),
            ));
        }
        if cross(before, after).abs() > 0.0 && distance(three[1], three[2]) <= NEAR {
            return Err(crosses(width, "two points of its line coincide"));
        }
    }
    Ok(())
}

/// The line moved to its left by an offset, mitred.
fn beside(points: &[Point], offset: f64) -> Vec<Point> {
    let normals: Vec<Point> = points.windows(2).map(|w| left(unit(sub(w[1], w[0])))).collect();
    let at = |i: usize| {
        let (n, m) = (normals[i.saturating_sub(1)], normals[i.min(normals.len() - 1)]);
        let both = [n[0] + m[0], n[1] + m[1]];
        step(points[i], both, offset / (1.0 + dot(n, m)))
    };
    (0..points.len()).map(at).collect()
}
