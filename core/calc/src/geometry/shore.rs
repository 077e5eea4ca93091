//! The bank of an outline: how far along it one has to go, at worst, to the nearest of some places.

use super::Outline;
use super::point::{Point, distance, dot, sides, step, sub};

/// The farthest that any point of the bank lies from the nearest place, along the bank, metres; each place counts at the
/// point of the bank nearest to it. A ring of the bank without a place of its own, a hole, is left out unless no ring has
/// one. Nothing without places.
pub fn farthest_along(outline: &Outline, places: &[Point]) -> Option<f64> {
    let rings: Vec<&[Point]> = outline.rings().collect();
    let mut marks: Vec<Vec<f64>> = vec![Vec::new(); rings.len()];
    for place in places {
        let at = rings.iter().map(|ring| nearest(ring, *place)).enumerate();
        let found = at.min_by(|a, b| a.1.0.total_cmp(&b.1.0));
        if let Some((ring, (_, along))) = found {
            marks[ring].push(along);
        }
    }
    let farthest = rings.iter().zip(&mut marks).filter(|(_, marks)| !marks.is_empty());
    farthest.map(|(ring, marks)| half_longest(around(ring), marks)).reduce(f64::max)
}

/// Half the longest stretch between neighbouring marks on a ring.
fn half_longest(around: f64, marks: &mut [f64]) -> f64 {
    marks.sort_by(f64::total_cmp);
    let back = around - marks[marks.len() - 1] + marks[0];
    let longest = marks.windows(2).map(|w| w[1] - w[0]).fold(back, f64::max);
    0.5 * longest
}

fn around(ring: &[Point]) -> f64 {
    sides(ring).map(|(a, b)| distance(a, b)).sum()
}

/// Distance of a place from a ring, and how far along the ring its nearest point lies.
fn nearest(ring: &[Point], place: Point) -> (f64, f64) {
    let (mut best, mut passed) = ((f64::INFINITY, 0.0), 0.0);
    for (a, b) in sides(ring) {
        let along = sub(b, a);
        let size = dot(along, along);
        let share = if size > 0.0 { (dot(sub(place, a), along) / size).clamp(0.0, 1.0) } else { 0.0 };
        let off = distance(place, step(a, along, share));
        if off < best.0 {
            best = (off, passed + share * distance(a, b));
        }
        passed += distance(a, b);
    }
    best
}

#[cfg(test)]
mod tests {
    use super::farthest_along;
    use crate::geometry::rectangle;

    /// A bank of 12 m round 4 m by 2 m: one place leaves 6 m either way, two opposite ones 3 m, by hand.
    #[test]
    fn half_the_longest_stretch_is_found() {
        let pool = rectangle([0.0, 0.0], [4.0, 2.0], 0.0, 0.0).expect("a rectangle");
        let farthest = |places: &[[f64; 2]]| farthest_along(&pool, places).expect("there are places");
        assert!((farthest(&[[1.0, -0.2]]) - 6.0).abs() < 1e-12);
        assert!((farthest(&[[1.0, 0.1], [3.0, 2.3]]) - 3.0).abs() < 1e-12);
        // Two on one side, 1 m apart: 11 m are left, half of it 5.5 m.
        assert!((farthest(&[[1.0, 0.0], [2.0, 0.0]]) - 5.5).abs() < 1e-12);
        assert!(farthest_along(&pool, &[]).is_none());
    }
}
