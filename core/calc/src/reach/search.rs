//! The search: a shortest path over the places where a path may bend, and a string drawn taut over the best of them.

use std::cmp::{Ordering, Reverse};
use std::collections::BinaryHeap;

use super::Surroundings;
use super::legs::{
    Place, Side, Wall, along, beside, blocked, plan, rim, share_nearest, slant, square, walls,
};
use super::taut;
use crate::geometry::{Bounds, NEAR, Point};

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
    rim: Vec<Side>,
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
    /// Whether `least` is the distance to the water, not only to the rectangle round it.
    measured: bool,
    /// The way on to the item is no shorter.
    ahead: f64,
    done: bool,
}

impl Reached {
    /// A place that nothing leads to yet.
    fn new(water: &Bounds, place: Point, to: Point) -> Self {
        let [across, along] =
            [0, 1].map(|i| (water.low[i] - place[i]).max(place[i] - water.high[i]).max(0.0));
        let least = (across * across + along * along).sqrt();
        Reached {
            length: f64::INFINITY,
            from: None,
            least,
            measured: false,
            ahead: plan(place, to),
            done: false,
        }
    }

    /// No path through the place is shorter.
    fn key(&self) -> f64 {
        self.length.min(self.least) + self.ahead
    }
}

/// An open place, the one whose paths may be shortest first; of equal ones the first.
#[derive(PartialEq)]
struct Open(f64, usize);

impl Eq for Open {}

impl Ord for Open {
    fn cmp(&self, other: &Self) -> Ordering {
        self.0.total_cmp(&other.0).then(self.1.cmp(&other.1))
    }
}

impl PartialOrd for Open {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl<'a> Search<'a> {
    pub(super) fn new(around: &'a Surroundings, to: Point, level: f64) -> Self {
        Search { around, walls: walls(around), rim: rim(around), to, level, places: Vec::new() }
    }

    /// Length of the shortest path; infinite where there is none.
    pub(super) fn shortest(mut self) -> f64 {
        let level = self.around.water.distance_to(self.to);
        let straight = self.start_length(self.to, None);
        // Nothing is shorter than the straight level path, where it is free.
        if straight <= level + 1e-5 {
            return level;
        }
        self.places = self.bends();
        let (reached, found) = self.reach(straight);
        let mut ends = self.ends(&reached);
        ends.retain(|(length, _)| *length <= found + SLACK);
        ends.into_iter().map(|(length, chain)| taut::drawn(&self, chain, length)).fold(straight, f64::min)
    }

    /// Where a path may bend: beside the ends of walls and on their tops.
    fn bends(&self) -> Vec<Place> {
        let mut places = beside(&self.walls);
        for (at, wall) in self.walls.iter().enumerate().filter(|(_, w)| w.top.is_finite()) {
            let shares = shares(self.around, wall, self.to);
            places.extend(shares.into_iter().map(|s| Place { at: along(wall, s), on: Some(at) }));
        }
        places
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
        let free = |start: Point| !blocked(&self.walls, start, rim, stop(start), to);
        let near = |side: &Side| square(side.nearest(at), at) <= NEAR * NEAR;
        if self.around.water.winds_round(at) || self.rim.iter().any(near) {
            return if free(at) { (to - rim).abs() } else { f64::INFINITY };
        }
        let mut best = f64::INFINITY;
        for side in &self.rim {
            let start = side.start(side.nearest(at));
            let length = slant(start, at, to - rim);
            // What is no shorter need not be free.
            if length < best && free(start) {
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
    /// the level distance to the item is never more than the way), and the length of the shortest path over them, or the one that was
    /// `found` before.
    fn reach(&self, mut found: f64) -> (Vec<Reached>, f64) {
        let water = self.around.water.bounds();
        let mut reached: Vec<Reached> =
            self.places.iter().map(|place| Reached::new(&water, place.at, self.to)).collect();
        let mut open: BinaryHeap<Reverse<Open>> =
            reached.iter().enumerate().map(|(at, known)| Reverse(Open(known.key(), at))).collect();
        while let Some(Reverse(Open(key, next))) = open.pop() {
            let known = &mut reached[next];
            // A place comes up again for every shorter way to it.
            if known.done || key != known.key() {
                continue;
            }
            if key > found + SLACK {
                break;
            }
            if known.least >= known.length {
                known.done = true;
                found = found.min(known.length + self.end(self.places[next]));
                self.lead_on(next, &mut reached, &mut open, found);
                continue;
            }
            // Its way straight from the water is looked at only now: most places never come to that.
            let place = self.places[next];
            if known.measured {
                let straight = self.start_length(place.at, self.top(place));
                if straight < known.length {
                    (known.length, known.from) = (straight, None);
                }
                known.least = f64::INFINITY;
            } else {
                (known.least, known.measured) = (self.around.water.distance_to(place.at), true);
            }
            if known.key().is_finite() {
                open.push(Reverse(Open(known.key(), next)));
            }
        }
        (reached, found)
    }

    /// What is reached through a place, as far as it may lie on a path that is not much longer than the one found.
    fn lead_on(
        &self,
        next: usize,
        reached: &mut [Reached],
        open: &mut BinaryHeap<Reverse<Open>>,
        found: f64,
    ) {
        let so_far = reached[next].length;
        for (other, place) in self.places.iter().enumerate() {
            let known = &mut reached[other];
            // The level distance is never more than the piece: most walls need not be asked.
            let least = so_far + plan(self.places[next].at, place.at);
            if known.done || least >= known.length || least + known.ahead > found + SLACK {
                continue;
            }
            let length = so_far + self.leg(self.places[next], *place);
            if length < known.length {
                let before = known.key();
                (known.length, known.from) = (length, Some(next));
                if known.key() < before {
                    open.push(Reverse(Open(known.key(), other)));
                }
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

/// A wall is cut into no more pieces than this, so that one drawn out of this world takes no more memory than the room.
const MOST_PIECES: f64 = 2000.0;

/// Evenly along the top, and where it is nearest to the item and to the corners of the rim.
fn shares(around: &Surroundings, wall: &Wall, to: Point) -> Vec<f64> {
    let pieces = (plan(wall.a, wall.b) / SPACING).ceil().clamp(1.0, MOST_PIECES);
    let even = (0..=pieces as u32).map(|i| f64::from(i) / pieces);
    let corners = around.water.rings().flatten().copied().chain([to]);
    even.chain(corners.map(|c| share_nearest(wall.a, wall.b, c))).collect()
}
