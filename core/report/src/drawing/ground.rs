//! The ground a plan stands on, in cells of paper: what is taken by letters and what by lines, so that letters find room.

use super::frame::PLAN;
use super::svg::Mm;

/// Side of a cell, millimetres.
const CELL: f64 = 1.0;
const WIDE: usize = ((PLAN.to[0] - PLAN.from[0]) / CELL) as usize;
const HIGH: usize = ((PLAN.to[1] - PLAN.from[1]) / CELL) as usize;
/// A cell that holds letters.
const TAKEN: u32 = 1_000;
/// What a cell under a leader costs a label, and what letters under a leader cost the leader.
const LEADER: u32 = 6;
const STRUCK: f64 = 40.0;
/// How far letters look for room, millimetres, nearest first.
const RINGS: [f64; 11] = [3.0, 5.0, 7.0, 10.0, 13.0, 17.0, 22.0, 28.0, 36.0, 46.0, 58.0];
const DIRECTIONS: usize = 16;

/// An upright box: its middle and its size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Spread {
    pub(super) middle: Mm,
    pub(super) size: Mm,
}

impl Spread {
    /// Its upper left corner.
    pub(super) fn corner(&self) -> Mm {
        [self.middle[0] - 0.5 * self.size[0], self.middle[1] - 0.5 * self.size[1]]
    }

    /// Its place nearest to another.
    pub(super) fn nearest(&self, to: Mm) -> Mm {
        [0, 1].map(|i| to[i].clamp(self.middle[i] - 0.5 * self.size[i], self.middle[i] + 0.5 * self.size[i]))
    }
}

/// The cells.
pub(super) struct Ground {
    cells: Vec<u32>,
}

impl Ground {
    pub(super) fn new() -> Self {
        Ground { cells: vec![0; WIDE * HIGH] }
    }

    /// Adds a weight along a line.
    pub(super) fn line(&mut self, a: Mm, b: Mm, weight: u32) {
        for at in steps(a, b) {
            if let Some(cell) = cell(at) {
                self.cells[cell] = self.cells[cell].saturating_add(weight).min(TAKEN.max(self.cells[cell]));
            }
        }
    }

    /// Takes a box for letters.
    pub(super) fn take(&mut self, spread: Spread) {
        for cell in cells(spread) {
            self.cells[cell] = TAKEN;
        }
    }

    /// What a box would cost; none where letters are or the sheet ends.
    fn cost(&self, spread: Spread) -> Option<f64> {
        let (corner, size) = (spread.corner(), spread.size);
        let fits = (0..2).all(|i| corner[i] >= PLAN.from[i] + 1.5 && corner[i] + size[i] <= PLAN.to[i] - 1.5);
        let mut sum = 0;
        for cell in cells(spread) {
            if self.cells[cell] >= TAKEN {
                return None;
            }
            sum += self.cells[cell];
        }
        fits.then_some(f64::from(sum))
    }

    /// What a leader would cost.
    fn leader_cost(&self, a: Mm, b: Mm) -> f64 {
        let one = |at| cell(at).map_or(0.0, |c| if self.cells[c] >= TAKEN { STRUCK } else { 0.0 });
        steps(a, b).map(one).sum()
    }

    /// Room for a box of a size near a place, and whether a leader has to say what it belongs to; it is taken. `within`
    /// are places where it needs none.
    pub(super) fn room(&mut self, at: Mm, size: Mm, within: &[Mm], least: f64) -> Option<(Spread, Led)> {
        let inside = within.iter().map(|p| (Spread { middle: *p, size }, Led::No));
        let beside = RINGS.iter().filter(|r| **r >= least).flat_map(|r| around(at, size, *r));
        let cost = |(spread, led): &(Spread, Led)| {
            let near = spread.nearest(at);
            let far = length(near, at);
            let leader = if *led == Led::Yes { 2.0 + self.leader_cost(near, at) } else { 0.0 };
            let own = if *led == Led::Yes { far } else { 0.08 * length(spread.middle, at) };
            Some(self.cost(*spread)? * 0.5 + own + leader)
        };
        let priced = inside.chain(beside).filter_map(|option| Some((cost(&option)?, option)));
        let (_, (spread, led)) = priced.min_by(|a, b| a.0.total_cmp(&b.0))?;
        self.take(spread);
        if led == Led::Yes {
            self.line(spread.nearest(at), at, LEADER);
        }
        Some((spread, led))
    }
}

/// Whether a leader leads from letters to what they belong to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Led {
    /// They stand in it or on it.
    No,
    /// They stand beside it.
    Yes,
}

/// Boxes in all directions, the nearest side of each so far from the place.
fn around(at: Mm, size: Mm, far: f64) -> impl Iterator<Item = (Spread, Led)> {
    (0..DIRECTIONS).map(move |k| {
        let angle = std::f64::consts::TAU * (k as f64 + 0.5) / DIRECTIONS as f64;
        let (sin, cos) = (libm::sin(angle), libm::cos(angle));
        let middle = [at[0] + cos * (far + 0.5 * size[0]), at[1] - sin * (far + 0.5 * size[1])];
        (Spread { middle, size }, Led::Yes)
    })
}

pub(super) fn length(a: Mm, b: Mm) -> f64 {
    ((a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1])).sqrt()
}

/// Places along a line, half a cell apart; none of a line that is longer than any sheet.
fn steps(a: Mm, b: Mm) -> impl Iterator<Item = Mm> {
    let far = length(a, b);
    let count = if far.is_finite() && far < 2_000.0 { (far / CELL * 2.0) as usize + 1 } else { 0 };
    (0..count).map(move |k| [0, 1].map(|i| a[i] + (b[i] - a[i]) * k as f64 / count as f64))
}

fn cell(at: Mm) -> Option<usize> {
    let [x, y] = [0, 1].map(|i| (at[i] - PLAN.from[i]) / CELL);
    let within = x >= 0.0 && y >= 0.0 && x < WIDE as f64 && y < HIGH as f64;
    within.then(|| y as usize * WIDE + x as usize)
}

fn cells(spread: Spread) -> impl Iterator<Item = usize> {
    let (corner, size) = (spread.corner(), spread.size);
    let end =
        |i: usize, by: f64, most: usize| ((corner[i] + by - PLAN.from[i]) / CELL).clamp(0.0, most as f64);
    let (x0, x1) = (end(0, 0.0, WIDE) as usize, libm::ceil(end(0, size[0], WIDE)) as usize);
    let (y0, y1) = (end(1, 0.0, HIGH) as usize, libm::ceil(end(1, size[1], HIGH)) as usize);
    (y0..y1).flat_map(move |y| (x0..x1).map(move |x| y * WIDE + x))
}

#[cfg(test)]
mod tests {
    use super::{Ground, Led, Spread};

    #[test]
    fn letters_never_stand_on_letters() {
        let mut ground = Ground::new();
        let mut placed: Vec<Spread> = Vec::new();
        for _ in 0..40 {
            let Some((spread, _)) = ground.room([160.0, 120.0], [20.0, 3.0], &[[160.0, 120.0]], 0.0) else {
                continue;
            };
            for other in &placed {
                let apart =
                    (0..2).any(|i| (spread.middle[i] - other.middle[i]).abs() >= spread.size[i] - 1e-9);
                assert!(apart, "{spread:?} lies on {other:?}");
            }
            placed.push(spread);
        }
        assert!(placed.len() > 25, "{}", placed.len());
    }

    #[test]
    fn the_middle_is_taken_first_and_needs_no_leader() {
        let mut ground = Ground::new();
        let first = ground.room([160.0, 120.0], [20.0, 3.0], &[[160.0, 120.0]], 0.0).expect("room");
        assert_eq!(first, (Spread { middle: [160.0, 120.0], size: [20.0, 3.0] }, Led::No));
        assert!(ground.room([1e9, 120.0], [20.0, 3.0], &[], 0.0).is_none());
    }
}
