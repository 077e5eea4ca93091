//! The way out between barriers: how wide the openings are that lines leave round a place.
//!
//! Each straight piece of the lines is a stepping stone, each straight way between two pieces a jump. A chain of stones
//! and jumps that goes round the place closes it in; the question is which chain has the narrowest jumps. Whether
//! a chain goes round is counted by how often it crosses a ray from the place: an odd number is round it, so the search
//! runs on two copies of the stones, one for even and one for odd.

use super::Outline;
use super::point::{Point, distance};
use super::track::{pieces, ways};

/// What is left open round a place, metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Passage {
    /// The widest single opening of the chain whose widest opening is narrowest.
    pub widest: f64,
    /// All openings together, of the chain where they are least together.
    pub total: f64,
}

/// What the lines leave open round a place; none where no chain of them can go round it.
///
/// Both are 0 where the lines close in themselves. The place must not lie on a line.
pub fn passage(tracks: &[&[Point]], place: Point) -> Option<Passage> {
    let stones: Vec<(Point, Point)> = tracks.iter().flat_map(|t| pieces(t)).collect();
    let jumps = jumps(&stones, place);
    let least = |join: fn(f64, f64) -> f64| {
        (0..stones.len()).map(|start| round(&jumps, start, join)).fold(f64::INFINITY, f64::min)
    };
    let widest = least(f64::max);
    widest.is_finite().then(|| Passage { widest, total: least(|a, b| a + b) })
}

/// A jump to another stone: which, how far, and whether the way crosses the ray.
type Jump = (usize, f64, bool);

fn jumps(stones: &[(Point, Point)], place: Point) -> Vec<Vec<Jump>> {
    let mut found = vec![Vec::new(); stones.len()];
    for i in 0..stones.len() {
        for j in i + 1..stones.len() {
            for (p, q) in ways(stones[i], stones[j]) {
                let line = [stones[i].0, p, q, stones[j].0];
                let odd = line.windows(2).filter(|w| crosses(place, w[0], w[1])).count() % 2 == 1;
                let far = distance(p, q);
                found[i].push((j, far, odd));
                found[j].push((i, far, odd));
            }
        }
    }
    found
}

/// Whether a straight way crosses the ray that runs from the place along x.
fn crosses(p: Point, a: Point, b: Point) -> bool {
    (a[1] > p[1]) != (b[1] > p[1]) && p[0] < a[0] + (p[1] - a[1]) / (b[1] - a[1]) * (b[0] - a[0])
}

/// The least cost of a chain from a stone back to itself that crosses the ray an odd number of times.
fn round(jumps: &[Vec<Jump>], start: usize, join: fn(f64, f64) -> f64) -> f64 {
    // Dijkstra; dense, since a room has some dozens of pieces.
    let mut cost = vec![f64::INFINITY; 2 * jumps.len()];
    let mut done = vec![false; cost.len()];
    cost[2 * start] = 0.0;
    loop {
        let open = (0..cost.len()).filter(|s| !done[*s] && cost[*s].is_finite());
        let Some(at) = open.min_by(|a, b| cost[*a].total_cmp(&cost[*b])) else {
            return cost[2 * start + 1];
        };
        done[at] = true;
        for (to, far, odd) in &jumps[at / 2] {
            let next = 2 * to + ((at % 2) ^ usize::from(*odd));
            cost[next] = cost[next].min(join(cost[at], *far));
        }
    }
}

/// How finely the middle of a hooked outline is looked for: so many steps along either side.
const STEPS: usize = 24;

/// A place well inside an outline: its centroid where that lies inside, else the place of a coarse grid farthest from
/// the sides.
pub fn middle(outline: &Outline) -> Point {
    let centre = outline.centroid();
    let bounds = outline.bounds();
    let size = distance(bounds.low, bounds.high);
    if outline.contains(centre) && outline.distance_to_side(centre) > 0.05 * size {
        return centre;
    }
    let on_grid = |k: usize, axis: usize| {
        bounds.low[axis] + (bounds.high[axis] - bounds.low[axis]) * (k as f64 + 0.5) / STEPS as f64
    };
    let grid = (0..STEPS * STEPS).map(|k| [on_grid(k % STEPS, 0), on_grid(k / STEPS, 1)]);
    let clear = |p: &Point| {
        if outline.contains(*p) { outline.distance_to_side(*p) } else { -1.0 }
    };
    grid.max_by(|a, b| clear(a).total_cmp(&clear(b))).unwrap_or(centre)
}

#[cfg(test)]
mod tests {
    use super::{Passage, middle, passage};
    use crate::geometry::{Outline, Point};

    fn near(passage: Option<Passage>, widest: f64, total: f64) {
        let found = passage.expect("the lines go round the place");
        assert!(
            (found.widest - widest).abs() < 1e-12 && (found.total - total).abs() < 1e-12,
            "{found:?}, expected {widest} and {total}"
        );
    }

    const SOUTH: &[Point] = &[[0.0, 0.0], [4.0, 0.0]];
    const EAST: &[Point] = &[[4.0, 0.0], [4.0, 3.0]];
    const NORTH: &[Point] = &[[4.0, 3.0], [0.0, 3.0]];
    const WEST: &[Point] = &[[0.0, 3.0], [0.0, 0.0]];

    /// ```text
    ///   +----NORTH----+        four walls that meet: nothing open; a wall that goes on beyond
    ///   W      x      E        the corner changes nothing.
    ///   +----SOUTH----+----
    /// ```
    #[test]
    fn walls_that_meet_leave_nothing_open() {
        near(passage(&[SOUTH, EAST, NORTH, WEST], [2.0, 1.5]), 0.0, 0.0);
        let longer: &[Point] = &[[0.0, 0.0], [9.0, 0.0]];
        near(passage(&[longer, EAST, NORTH, WEST], [2.0, 1.5]), 0.0, 0.0);
        let ring: &[Point] = &[[0.0, 0.0], [4.0, 0.0], [4.0, 3.0], [0.0, 3.0], [0.0, 0.0]];
        near(passage(&[ring], [2.0, 1.5]), 0.0, 0.0);
    }

    /// ```text
    ///   +-NORTH-+             the north wall stops 50 mm short of the east one, and the west one 20 mm short of
    ///   |       50 mm         the south one: 50 mm is the widest opening, 70 mm all of them.
    ///   W           E
    ///   20 mm       |         Without the east wall the way is from (4,0) to (4,3), 3 m.
    ///   +---SOUTH---+
    /// ```
    #[test]
    fn the_widest_opening_and_all_of_them() {
        let north: &[Point] = &[[3.95, 3.0], [0.0, 3.0]];
        let west: &[Point] = &[[0.0, 3.0], [0.0, 0.02]];
        near(passage(&[SOUTH, EAST, north, west], [2.0, 1.5]), 0.05, 0.07);
        near(passage(&[SOUTH, NORTH, WEST], [2.0, 1.5]), 3.0, 3.0);
        // Two walls alone: 3 m at either end.
        near(passage(&[SOUTH, NORTH], [2.0, 1.5]), 3.0, 6.0);
    }

    #[test]
    fn a_place_outside_is_not_closed_in_and_one_wall_closes_nothing() {
        assert_eq!(passage(&[SOUTH], [2.0, 1.5]), None);
        let outside = passage(&[SOUTH, EAST, NORTH, WEST], [2.0, 7.0]);
        assert!(outside.is_none_or(|p| p.widest > 1.0), "{outside:?}");
    }

    #[test]
    fn the_middle_of_a_hook_lies_inside() {
        let hook = Outline::from_corners(vec![
            [0.0, 0.0],
            [5.0, 0.0],
            [5.0, 1.0],
            [1.0, 1.0],
            [1.0, 5.0],
            [0.0, 5.0],
        ])
        .expect("a hook is an outline");
        let place = middle(&hook);
        assert!(hook.contains(place) && hook.distance_to_side(place) > 0.3, "{place:?}");
    }
}
