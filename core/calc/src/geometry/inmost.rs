//! Whether an outline holds a circle: a place within it that lies far enough from its sides.

use std::cmp::Ordering;
use std::collections::BinaryHeap;

use super::Outline;
use super::point::Point;

/// Squares that are quartered at most.
const SQUARES: usize = 24;

/// A square by its middle, half its side, and how far from the sides any place in it may lie.
struct Square {
    middle: Point,
    half: f64,
    far: f64,
    most: f64,
}

impl PartialEq for Square {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Square {}

impl PartialOrd for Square {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Square {
    fn cmp(&self, other: &Self) -> Ordering {
        self.most.total_cmp(&other.most)
    }
}

impl Square {
    fn of(outline: &Outline, middle: Point, half: f64) -> Self {
        let side = outline.distance_to_side(middle);
        let far = if outline.winds_round(middle) { side } else { -side };
        Square { middle, half, far, most: far + half * std::f64::consts::SQRT_2 }
    }
}

/// Whether some place within an outline is found that lies at least so far from its sides, metres. That none is found in
/// the squares looked into does not say that there is none.
///
/// The distance changes by no more than the way between two places, so a square whose middle lies too near cannot hold
/// such a place; the others are quartered, the most promising first.
pub(super) fn holds_a_circle(outline: &Outline, radius: f64) -> bool {
    let bounds = outline.bounds();
    let [wide, high] = [0, 1].map(|i| bounds.high[i] - bounds.low[i]);
    let middle = [0, 1].map(|i| 0.5 * (bounds.low[i] + bounds.high[i]));
    let mut open = BinaryHeap::from([
        Square::of(outline, middle, 0.5 * wide.max(high)),
        Square::of(outline, outline.centroid(), 0.0),
    ]);
    for _ in 0..SQUARES {
        match open.pop() {
            Some(square) if square.far >= radius => return true,
            Some(square) if square.most >= radius => {
                let half = 0.5 * square.half;
                let quarters = [[-half, -half], [half, -half], [-half, half], [half, half]];
                let [x, y] = square.middle;
                open.extend(quarters.map(|[dx, dy]| Square::of(outline, [x + dx, y + dy], half)));
            }
            _ => return false,
        }
    }
    false
}

#[cfg(test)]
mod tests {
    use super::holds_a_circle;
    use crate::geometry::{Outline, rectangle};

    /// By hand: half the short side of a rectangle. The largest circle in an L of arms 1 m wide and 4 m and 3 m long stands
    /// against the two outer sides and the inner corner: r + r / sqrt 2 = sqrt 2, so r = 2 - sqrt 2 = 0.585786 m.
    #[test]
    fn the_largest_circle_within() {
        let turned = rectangle([1.0, 1.0], [4.0, 3.0], 0.3, 0.0).expect("a rectangle");
        assert!(holds_a_circle(&turned, 1.4) && !holds_a_circle(&turned, 1.51));
        let hook = [[0.0, 0.0], [4.0, 0.0], [4.0, 1.0], [1.0, 1.0], [1.0, 3.0], [0.0, 3.0]];
        let hook = Outline::from_corners(hook.to_vec()).expect("a hook");
        assert!(holds_a_circle(&hook, 0.5) && !holds_a_circle(&hook, 0.59));
    }
}
