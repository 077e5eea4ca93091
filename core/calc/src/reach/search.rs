//! The search: a shortest path over the places where a path may bend, and a string drawn taut over the best of them.

use super::Surroundings;
use super::legs::{Place, Wall, along, beside, blocked, plan, share_nearest, slant, starts, walls};
use super::taut;
use crate::geometry::Point;

/// Places on a top edge stand no farther apart than this, metres, before the string is drawn taut.
const SPACING: f64 = 0.5;
/// A path that is longer than another by more than this, metres, is not the shorter one once both are drawn taut: a place slides by no
/// more than half the spacing, which is worth that much at each of two bends.
const SLACK: f64 = 2.0 * SPACING;
/// A piece that leads to an item is looked at up to this far before it, metres.
const SHORT: f64 = 5e-7;

/// A search from the water to one point.
pub(super) struct Search<'a> {
    pub(super) around: &'a Surroundings,
    pub(super) walls: Vec<Wall>,
    pub(super) to: Point,
    pub(super) level: f64,
    places: Vec<Place>,
}

/// How a place is best reached so far.
#[derive(Clone, Copy)]
struct Reached {
    length: f64,
    from: Option<usize>,
    /// The way straight from the water is no shorter; infinite once it is known.
    least: f64,
    /// The way on to the item is no shorter.
    ahead: f64,
    done: bool,
}

impl Reached {
    const UNKNOWN: Self = Reached { length: f64::INFINITY, from: None, least: 0.0, ahead: 0.0, done: false };

    /// No path through the place is shorter.
    fn key(&self) -> f64 {
        self.length.min(self.least) + self.ahead
    }
}

impl<'a> Search<'a> {
    pub(super) fn new(around: &'a Surroundings, to: Point, level: f64) -> Self {
        let walls = walls(around);
        let mut places = beside(&walls);
        for (at, wall) in walls.iter().enumerate().filter(|(_, w)| w.top.is_finite()) {
            let shares = shares(around, wall, to);
            places.extend(shares.into_iter().map(|s| Place { at: along(wall, s), on: Some(at) }));
        }
        Search { around, walls, to, level, places }
    }

    /// Length of the shortest path; infinite where there is none.
    pub(super) fn shortest(&self) -> f64 {
        let straight = self.start_length(self.to, None);
        // Nothing is shorter than the straight level path, where it is free.
        if straight <= self.around.water.distance_to(self.to) + 1e-5 {
            return self.around.water.distance_to(self.to);
        }
        let reached = self.reach();
        self.ends(&reached)
            .into_iter()
            .map(|(length, chain)| taut::drawn(self, chain, length))
            .fold(straight, f64::min)
    }

    /// The level of a place, as a path passes it.
    pub(super) fn top(&self, place: Place) -> Option<f64> {
        place.on.map(|wall| self.walls[wall].top)
    }

    /// Length of the first piece, from the water; infinite where a wall stands between.
    pub(super) fn start_length(&self, at: Point, top: Option<f64>) -> f64 {
        let rim = self.around.rim;
        let to = top.unwrap_or(rim);
        // On a top's edge a place is on its level; elsewhere the piece stops short, so that what hangs on a partition
        // is reached from either side.
        let stop = |s: Point| if top.is_some() { at } else { short_of(s, at) };
        let mut best = f64::INFINITY;
        for start in starts(self.around, at) {
            let length = slant(start, at, to - rim);
            // What is no shorter need not be free.
            if length < best && !blocked(&self.walls, start, rim, stop(start), to) {
                best = length;
            }
        }
        best
    }

    /// Length of a piece between two places; infinite where a wall stands between. Between a top and a wall's end a
    /// path stays on the level of the top: the climb is counted once.
    pub(super) fn leg(&self, a: Place, b: Place) -> f64 {
        let rim = self.around.rim;
        let (from, to) = match (self.top(a), self.top(b)) {
            (Some(from), Some(to)) => (from, to),
            (Some(top), None) => (top, top),
            (None, Some(to)) => (rim, to),
            (None, None) => (rim, rim),
        };
        let stops = blocked(&self.walls, a.at, from, b.at, to);
        if stops { f64::INFINITY } else { slant(a.at, b.at, to - from) }
    }

    /// Length of the last piece, to the item; above a top it is reached on the level of the top.
    pub(super) fn end(&self, last: Place) -> f64 {
        let (from, to) = match self.top(last) {
            Some(top) => (top, self.level.min(top)),
            None => (self.around.rim, self.around.rim),
        };
        let stops = blocked(&self.walls, last.at, from, short_of(last.at, self.to), to);
        if stops { f64::INFINITY } else { slant(last.at, self.to, to - from) }
    }

    /// Every place that may lie on a shortest path, nearest to water and item together first (A*, Hart, Nilsson and Raphael 1968:
    /// the level distance to the item is never more than the way).
    fn reach(&self) -> Vec<Reached> {
        let water = |place: &Place| self.around.water.distance_to(place.at);
        let mut reached: Vec<Reached> = self
            .places
            .iter()
            .map(|place| Reached { least: water(place), ahead: plan(place.at, self.to), ..Reached::UNKNOWN })
            .collect();
        let mut found = f64::INFINITY;
        while let Some(next) = nearest_open(&reached) {
            if reached[next].key() > found + SLACK {
                break;
            }
            if reached[next].least < reached[next].length {
                // Its way straight from the water is looked at only now: most places never come to that.
                let place = self.places[next];
                let straight = self.start_length(place.at, self.top(place));
                let known = &mut reached[next];
                if straight < known.length {
                    (known.length, known.from) = (straight, None);
                }
                known.least = f64::INFINITY;
                continue;
            }
            reached[next].done = true;
            found = found.min(reached[next].length + self.end(self.places[next]));
            self.lead_on(next, &mut reached);
        }
        reached
    }

    /// What is reached through a place.
    fn lead_on(&self, next: usize, reached: &mut [Reached]) {
        let so_far = reached[next].length;
        for (other, place) in self.places.iter().enumerate() {
            // The level distance is never more than the piece: most walls need not be asked.
            let least = so_far + plan(self.places[next].at, place.at);
            if reached[other].done || least >= reached[other].length {
                continue;
            }
            let length = so_far + self.leg(self.places[next], *place);
            if length < reached[other].length {
                (reached[other].length, reached[other].from) = (length, Some(next));
            }
        }
    }

    /// The best path by each wall that it goes over last, and the best round an end: whole length and its places.
    fn ends(&self, reached: &[Reached]) -> Vec<(f64, Vec<Place>)> {
        let mut best: Vec<(f64, usize)> = vec![(f64::INFINITY, 0); self.walls.len() + 1];
        for (at, place) in self.places.iter().enumerate().filter(|(at, _)| reached[*at].done) {
            let group = place.on.map_or(0, |wall| wall + 1);
            let length = reached[at].length + self.end(*place);
            if length < best[group].0 {
                best[group] = (length, at);
            }
        }
        let found = best.into_iter().filter(|(length, _)| length.is_finite());
        found.map(|(length, at)| (length, self.chain(reached, at))).collect()
    }

    fn chain(&self, reached: &[Reached], last: usize) -> Vec<Place> {
        let mut chain: Vec<Place> =
            std::iter::successors(Some(last), |at| reached[*at].from).map(|at| self.places[at]).collect();
        chain.reverse();
        chain
    }
}

/// The end of a piece, a little before what it leads to.
fn short_of(from: Point, to: Point) -> Point {
    let long = plan(from, to);
    let share = if long > 0.0 { (1.0 - SHORT / long).max(0.0) } else { 0.0 };
    [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share]
}

fn nearest_open(reached: &[Reached]) -> Option<usize> {
    let open = (0..reached.len()).filter(|at| !reached[*at].done && reached[*at].key().is_finite());
    open.min_by(|a, b| reached[*a].key().total_cmp(&reached[*b].key()))
}

/// A wall is cut into no more pieces than this, so that one drawn out of this world takes no more memory than the room.
const MOST_PIECES: f64 = 2000.0;

/// Evenly along the top, and where it is nearest to the item and to the corners of the rim.
fn shares(around: &Surroundings, wall: &Wall, to: Point) -> Vec<f64> {
    let pieces = (plan(wall.a, wall.b) / SPACING).ceil().clamp(1.0, MOST_PIECES);
    let even = (0..=pieces as u32).map(|i| f64::from(i) / pieces);
    let corners = around.water.rings().flatten().copied().chain([to]);
    even.chain(corners.map(|c| share_nearest(wall.a, wall.b, c))).collect()
}
