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
    water: Vec<bool>,
}

impl Ground {
    pub(super) fn new() -> Self {
        Ground { cells: vec![0; WIDE * HIGH], water: vec![false; WIDE * HIGH] }
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

    /// Notes where there is water: letters of what stands at its edge keep off it.
    pub(super) fn flood(&mut self, from: Mm, to: Mm, wet: impl Fn(Mm) -> bool) {
        let spread = Spread {
            middle: [0, 1].map(|i| 0.5 * (from[i] + to[i])),
            size: [0, 1].map(|i| (to[i] - from[i]).abs()),
        };
        for cell in cells(spread) {
            let place = [(cell % WIDE) as f64, (cell / WIDE) as f64];
            let place = [0, 1].map(|i| PLAN.from[i] + CELL * (place[i] + 0.5));
            self.water[cell] |= wet(place);
        }
    }

    /// What a box would cost; none where letters are or the sheet ends.
    fn cost(&self, spread: Spread, shore: Shore) -> Option<f64> {
        let (corner, size) = (spread.corner(), spread.size);
        let fits = (0..2).all(|i| corner[i] >= PLAN.from[i] + 1.5 && corner[i] + size[i] <= PLAN.to[i] - 1.5);
        let mut sum = 0;
        for cell in cells(spread) {
            if self.cells[cell] >= TAKEN {
                return None;
            }
            sum += self.cells[cell] + u32::from(shore == Shore::Dry && self.water[cell]);
        }
        fits.then_some(f64::from(sum))
    }

    /// What a leader would cost.
    fn leader_cost(&self, a: Mm, b: Mm) -> f64 {
        let one = |at| cell(at).map_or(0.0, |c| if self.cells[c] >= TAKEN { STRUCK } else { 0.0 });
        steps(a, b).map(one).sum()
    }

    /// Room for a box, and whether a leader has to say what it belongs to; it is taken.
    pub(super) fn room(&mut self, wish: &Wish<'_>) -> Option<(Spread, Led)> {
        let (at, size) = (wish.at, wish.size);
        let inside = wish.within.iter().map(|p| (Spread { middle: *p, size }, Led::No));
        let beside = RINGS.iter().filter(|r| **r >= wish.least).flat_map(|r| around(at, size, *r));
        let cost = |(spread, led): &(Spread, Led)| {
            let near = spread.nearest(at);
            let own = match led {
                Led::No => 0.08 * length(spread.middle, at),
                Led::Yes => length(near, at) + 2.0 + self.leader_cost(near, short_of(near, at, wish.clear)),
            };
            Some(self.cost(*spread, wish.shore)? * 0.5 + own)
        };
        let priced = inside.chain(beside).filter_map(|option| Some((cost(&option)?, option)));
        let (_, (spread, led)) = priced.min_by(|a, b| a.0.total_cmp(&b.0))?;
        self.take(spread);
        if led == Led::Yes {
            self.line(spread.nearest(at), short_of(spread.nearest(at), at, wish.clear), LEADER);
        }
        Some((spread, led))
    }
}

/// What letters or balloons ask for.
pub(super) struct Wish<'w> {
    /// The place they are about.
    pub(super) at: Mm,
    /// The box they fill.
    pub(super) size: Mm,
    /// Middles where they need no leader.
    pub(super) within: &'w [Mm],
    /// Nearer than this they may not stand beside the place.
    pub(super) least: f64,
    /// Whether they may stand on water.
    pub(super) shore: Shore,
    /// A leader ends so far from the place: at the edge of a symbol.
    pub(super) clear: f64,
}

/// The end of a leader that stops so far before a place.
pub(super) fn short_of(from: Mm, to: Mm, clear: f64) -> Mm {
    let share = (1.0 - clear / length(from, to).max(clear.max(1e-9))).max(0.0);
    [0, 1].map(|i| from[i] + (to[i] - from[i]) * share)
}

/// Whether letters may stand on water.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Shore {
    /// They had better not.
    Dry,
    /// They may.
    Wet,
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
    use super::{Ground, Led, Shore, Spread, Wish};

    fn wish(at: [f64; 2], within: &[[f64; 2]]) -> Wish<'_> {
        Wish { at, size: [20.0, 3.0], within, least: 0.0, shore: Shore::Wet, clear: 0.0 }
    }

    #[test]
    fn letters_never_stand_on_letters() {
        let mut ground = Ground::new();
        let mut placed: Vec<Spread> = Vec::new();
        for _ in 0..40 {
            let Some((spread, _)) = ground.room(&wish([160.0, 120.0], &[[160.0, 120.0]])) else {
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
        let first = ground.room(&wish([160.0, 120.0], &[[160.0, 120.0]])).expect("room");
        assert_eq!(first, (Spread { middle: [160.0, 120.0], size: [20.0, 3.0] }, Led::No));
        assert!(ground.room(&wish([1e9, 120.0], &[])).is_none());
    }

    #[test]
    fn what_stands_at_the_edge_keeps_off_the_water() {
        let mut ground = Ground::new();
        ground.flood([100.0, 60.0], [220.0, 120.0], |_| true);
        let dry = Wish { shore: Shore::Dry, ..wish([160.0, 119.0], &[]) };
        let (spread, _) = ground.room(&dry).expect("room");
        assert!(spread.middle[1] - 1.5 >= 119.9, "{spread:?}");
    }
}
