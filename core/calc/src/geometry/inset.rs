//! An outline moved inward or outward by its sides: depth rings, margins, upstands.

use super::Outline;
use super::combine::{join, less};
use super::point::{NEAR, Point, cross, distance, dot, left, length, step, sub, unit};
use super::shrink::Shrink;
use super::sound::{Unsound, finite};

/// A mitre longer than this many times the inset is cut off square.
const LONGEST_MITRE: f64 = 8.0;

/// The outline with its sides moved inward by a distance in metres (outward where it is negative), corners mitred.
///
/// `sides` names those that move, counted from 0 over [`Outline::sides`]: side 0 leaves corner 0
/// of [`Outline::corners`]; without it all move.
///
/// # Errors
/// [`Unsound`] where the distance is not finite, a side does not exist, or nothing is left.
pub fn inset(outline: &Outline, by: f64, sides: Option<&[usize]>) -> Result<Outline, Unsound> {
    let by = finite("the inset", by)?;
    let count = outline.sides().count();
    if let Some(odd) = sides.and_then(|chosen| chosen.iter().find(|&&side| side >= count)) {
        return Err(Unsound::new(format!(
            "side {} does not exist; the outline has sides 1 to {count}",
            odd + 1
        )));
    }
    if by == 0.0 {
        return Ok(outline.clone());
    }
    if let Some(left) = at_one_pace(outline, by, sides) {
        return left;
    }
    let mut first = 0;
    let mut bands = Vec::new();
    for ring in outline.rings() {
        let moves = |i: usize| sides.is_none_or(|chosen| chosen.contains(&(first + i)));
        let by: Vec<f64> = (0..ring.len()).map(|i| if moves(i) { by } else { 0.0 }).collect();
        bands.extend((0..ring.len()).filter_map(|i| band(ring, &by, i)));
        first += ring.len();
    }
    if by < 0.0 {
        bands.push(outline.clone());
        return join(&bands);
    }
    less(outline, &bands).map_err(|_| nothing_left(by))
}

/// What is left of a convex outline all whose sides move inward: no two that were not neighbours can meet before all is
/// gone, so nothing need be cut away.
fn at_one_pace(outline: &Outline, by: f64, sides: Option<&[usize]>) -> Option<Result<Outline, Unsound>> {
    if by < 0.0 || sides.is_some() || !outline.is_convex() {
        return None;
    }
    let shrink = Shrink::of(outline, by);
    let mut ring = if by < shrink.gone { shrink.contours(by).pop()? } else { Vec::new() };
    let count = ring.len();
    let kept = |i: &usize| distance(ring[*i], ring[(i + count - 1) % count]) > NEAR;
    ring = (0..count).filter(kept).map(|i| ring[i]).collect();
    // The corner farthest west comes first, as where something is cut away.
    let first = (0..ring.len())
        .min_by(|a, b| ring[*a][0].total_cmp(&ring[*b][0]).then(ring[*a][1].total_cmp(&ring[*b][1])));
    ring.rotate_left(first.unwrap_or(0));
    Some(Outline::from_parts(vec![vec![ring]]).map_err(|_| nothing_left(by)))
}

fn nothing_left(by: f64) -> Unsound {
    Unsound::new(format!("an inset of {by:.4} m leaves nothing of the outline; make it smaller"))
}

/// What one side sweeps as it moves: the side, the moved side, and the mitres at both ends.
fn band(ring: &[Point], by: &[f64], i: usize) -> Option<Outline> {
    if by[i] == 0.0 {
        return None;
    }
    let count = ring.len();
    let (a, b) = (ring[i], ring[(i + 1) % count]);
    let start = mitre(ring, by, i, End::Start);
    let end = mitre(ring, by, i, End::Far);
    let along = sub(b, a);
    // Where the mitres have crossed, the side is used up before it gets there: a triangle remains.
    let corners = if dot(sub(end, start), along) > 0.0 {
        vec![a, b, end, start]
    } else {
        let (p, q) = (sub(start, a), sub(end, b));
        vec![a, b, step(a, p, cross(along, q) / cross(p, q))]
    };
    Outline::from_corners(corners).ok()
}

#[derive(Clone, Copy, PartialEq)]
enum End {
    Start,
    Far,
}

/// Where the moved side meets its moved neighbour, or square off its own end where that is too far.
fn mitre(ring: &[Point], by: &[f64], i: usize, end: End) -> Point {
    let count = ring.len();
    let beside = if end == End::Start { (i + count - 1) % count } else { (i + 1) % count };
    let corner = if end == End::Start { ring[i] } else { ring[beside] };
    let direction = |k: usize| unit(sub(ring[(k + 1) % count], ring[k]));
    let (own, other) = (direction(i), direction(beside));
    let square = step(corner, left(own), by[i]);
    // Along the moved side from the square end: it meets the line of the other side moved by its own distance.
    let turn = cross(own, other);
    let ahead = (by[i] * dot(own, other) - by[beside]) / turn;
    let found = step(square, own, ahead);
    let within = length(sub(found, corner)) <= LONGEST_MITRE * by[i].abs();
    if ahead.is_finite() && within { found } else { square }
}

#[cfg(test)]
mod tests {
    use super::{Point, at_one_pace, band, distance};
    use crate::geometry::{Outline, circle, ellipse, less, rectangle};

    #[test]
    fn a_convex_outline_moves_inward_as_if_its_bands_were_cut_away() {
        let drawn = [
            rectangle([1.0, 2.0], [3.0, 2.0], 0.0, 0.0),
            rectangle([1.0, 2.0], [3.0, 2.0], 0.7, 0.3),
            circle([3.0, 1.0], 1.2),
            ellipse([0.0, 0.0], [2.0, 1.2], 0.4),
            Outline::from_corners(vec![
                [0.0, 0.0],
                [4.0, 0.0],
                [5.0, 1.5],
                [4.4, 3.4],
                [2.0, 4.0],
                [-0.5, 2.2],
            ]),
        ];
        for outline in drawn.map(|o| o.expect("sound")) {
            for by in [0.05, 0.3, 0.6] {
                let ring = outline.corners().expect("one ring");
                let all = vec![by; ring.len()];
                let bands: Vec<_> = (0..ring.len()).filter_map(|i| band(ring, &all, i)).collect();
                let cut = less(&outline, &bands).expect("something is left");
                let moved = at_one_pace(&outline, by, None).expect("convex").expect("something is left");
                let (cut, moved) = (cut.corners().expect("one ring"), moved.corners().expect("one ring"));
                let near = |(p, q): (&Point, &Point)| distance(*p, *q) < 1e-9;
                assert!(cut.len() == moved.len() && cut.iter().zip(moved).all(near), "{cut:?} {moved:?}");
            }
        }
        assert!(
            at_one_pace(&rectangle([0.0, 0.0], [3.0, 2.0], 0.0, 0.0).expect("sound"), 1.0, None)
                .is_some_and(|o| o.is_err())
        );
    }
}
