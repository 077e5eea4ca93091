//! How an outline shrinks when every side moves inward at one pace: what is left, exactly, distance by distance.
//!
//! Until two parts of the moving contour meet that were not neighbours, nothing happens but that a side between two
//! convex corners is used up and its neighbours meet instead. Between two such distances the length of the contour is
//! a linear function of the distance and the area left a quadratic one, arcs round reflex corners included. The
//! distance up to which this is sure ([`Shrink::until`]) is found from below: no arc round a reflex corner can meet a
//! side or another corner before the distance at which it would meet that side's whole line.

use std::cmp::Ordering;
use std::collections::BinaryHeap;

use super::Outline;
use super::erosion::{Run, STRAIGHT, arc, runs};
use super::point::{NEAR, Point, cross, distance, distance_to_side, dot, left, step, sub, unit};

/// Stages hold a little short of the distance found, for rounding.
const SHORT: f64 = 1.0 - 1e-9;

/// Corners round which meetings are looked for, times sides: beyond this nothing is promised.
const MOST_PAIRS: usize = 4_000_000;

/// What is left from a distance on, until the next stage.
#[derive(Debug, Clone, Copy)]
struct Stage {
    from: f64,
    area: f64,
    /// Length of the contour.
    long: f64,
    /// How fast the length falls.
    rate: f64,
    /// Area summed over the distance so far.
    before: f64,
}

impl Stage {
    fn long_at(&self, by: f64) -> f64 {
        self.long - (by - self.from) * self.rate
    }

    fn area_at(&self, by: f64) -> f64 {
        let on = by - self.from;
        self.area - on * (self.long - 0.5 * on * self.rate)
    }

    fn sum_to(&self, by: f64) -> f64 {
        let on = by - self.from;
        self.before + on * (self.area - on * (0.5 * self.long - on * self.rate / 6.0))
    }
}

/// Where a side starts from a distance on, until the next start of the same side.
#[derive(Debug, Clone, Copy)]
pub(super) struct Start {
    pub(super) side: usize,
    /// The side that it meets there.
    pub(super) before: usize,
    pub(super) from: f64,
    pub(super) at: Point,
    /// Metres moved for each metre of distance; none round a reflex corner.
    pub(super) pace: Option<Point>,
}

/// An outline with what is left of it by distance from its sides.
#[derive(Debug, Clone)]
pub(super) struct Shrink {
    stages: Vec<Stage>,
    rings: Vec<Vec<Run>>,
    starts: Vec<Start>,
    gone_at: Vec<f64>,
    /// The stages hold up to this distance, metres.
    pub(super) until: f64,
    /// Nothing is left from this distance on, where the stages know it.
    pub(super) gone: f64,
}

/// A side on its way, between the sides that are left beside it.
struct Side {
    before: usize,
    next: usize,
    /// How fast either end eats into it: tangents of half the turns there.
    trims: [f64; 2],
    long: f64,
    since: f64,
}

impl Side {
    fn rate(&self) -> f64 {
        self.trims[0] + self.trims[1]
    }

    fn used_up(&self) -> f64 {
        let rate = self.rate();
        if rate > 0.0 { self.since + self.long.max(0.0) / rate } else { f64::INFINITY }
    }

    /// Another trim at one end from a distance on.
    fn retrim(&mut self, by: f64, end: usize, trim: f64) {
        self.long = (self.long - (by - self.since) * self.rate()).max(0.0);
        self.since = by;
        self.trims[end] = trim;
    }
}

/// A distance at which a side is used up, nearest first in a heap.
struct Event {
    by: f64,
    side: usize,
}

impl PartialEq for Event {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Event {}

impl PartialOrd for Event {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Event {
    fn cmp(&self, other: &Self) -> Ordering {
        other.by.total_cmp(&self.by).then(other.side.cmp(&self.side))
    }
}

impl Shrink {
    /// The outline shrunk by up to `far` metres.
    pub(super) fn of(outline: &Outline, far: f64) -> Self {
        let rings: Vec<Vec<Run>> = outline.rings().map(runs).collect();
        let convex = rings.len() == 1 && rings[0].iter().all(|run| !run.is_reflex());
        let free = if convex { far } else { free_of_meetings(&rings, far) };
        let until = if free < far { free * SHORT } else { far };
        let count = rings.iter().map(Vec::len).sum();
        let gone_at = vec![f64::INFINITY; count];
        let (stages, starts) = (Vec::new(), Vec::with_capacity(2 * count));
        let mut shrink = Shrink { stages, starts, gone_at, rings, until, gone: f64::INFINITY };
        shrink.run(outline.area(), convex);
        // They were found in the order of the distances, and of two at the same distance the later one holds.
        shrink.starts.sort_by_key(|start| start.side);
        shrink
    }

    /// Area left at a distance up to [`Shrink::until`], square metres.
    pub(super) fn area(&self, by: f64) -> f64 {
        if by >= self.gone {
            return 0.0;
        }
        self.stage(by).map_or(0.0, |stage| stage.area_at(by)).max(0.0)
    }

    /// Areas summed from nothing to a distance up to [`Shrink::until`], cubic metres.
    pub(super) fn sum_to(&self, by: f64) -> f64 {
        let by = by.min(self.gone);
        self.stage(by).map_or(0.0, |stage| stage.sum_to(by))
    }

    fn stage(&self, by: f64) -> Option<&Stage> {
        let after = self.stages.partition_point(|stage| stage.from <= by);
        self.stages.get(after.saturating_sub(1))
    }

    /// The contours left at a distance up to [`Shrink::until`], as rings that do not cross.
    pub(super) fn contours(&self, by: f64) -> Vec<Vec<Point>> {
        let mut starts = self.starts.chunk_by(|a, b| a.side == b.side);
        let mut side = 0;
        let mut found = Vec::with_capacity(self.rings.len());
        for ring in &self.rings {
            let mut contour = Vec::with_capacity(ring.len() + 8);
            for (i, run) in ring.iter().enumerate() {
                let own = starts.next().unwrap_or_default();
                let start =
                    own.iter().rev().find(|start| start.from <= by).filter(|_| self.gone_at[side] > by);
                side += 1;
                match start.map(|start| (start, start.pace)) {
                    Some((start, Some(pace))) => contour.push(step(start.at, pace, by - start.from)),
                    Some((_, None)) => {
                        let before = &ring[(i + ring.len() - 1) % ring.len()];
                        arc(run, step([0.0; 2], left(before.along), by), &mut contour, by);
                        contour.push(step(run.start, left(run.along), by));
                    }
                    None => {}
                }
            }
            found.push(contour);
        }
        found
    }

    /// Where every side starts, side by side, in the order of the distances.
    pub(super) fn starts(&self) -> &[Start] {
        &self.starts
    }

    /// The distance at which a side is used up; infinite where it never is.
    pub(super) fn gone_at(&self, side: usize) -> f64 {
        self.gone_at[side]
    }

    /// The sides of the outline, ring by ring.
    pub(super) fn rings(&self) -> &[Vec<Run>] {
        &self.rings
    }

    fn run(&mut self, area: f64, convex: bool) {
        let all: Vec<Run> = self.rings.iter().flatten().copied().collect();
        let mut sides = sides(&self.rings);
        let long = all.iter().map(|run| run.long).sum();
        let arcs: f64 = all.iter().filter(|run| run.is_reflex()).map(Run::angle).sum();
        let rate = sides.iter().map(Side::rate).sum::<f64>() + arcs;
        self.stages.push(Stage { from: 0.0, area, long, rate, before: 0.0 });
        self.starts.extend((0..all.len()).map(|i| first(i, &all, sides[i].before)));
        let mut latest: Vec<usize> = (0..all.len()).collect();
        let until = self.until;
        let event = |sides: &[Side], side: usize| {
            Some(sides[side].used_up()).filter(|by| *by <= until).map(|by| Event { by, side })
        };
        let mut heap: BinaryHeap<Event> = (0..all.len()).filter_map(|side| event(&sides, side)).collect();
        while let Some(Event { by, side }) = heap.pop() {
            if self.gone_at[side].is_finite() || by.to_bits() != sides[side].used_up().to_bits() {
                continue;
            }
            let (before, next) = (sides[side].before, sides[side].next);
            let turn = [dot(all[before].along, all[next].along), cross(all[before].along, all[next].along)];
            let (own, beside) = (self.starts[latest[side]], self.starts[latest[next]]);
            let (Some(moves), true) =
                (own.pace, beside.pace.is_some() && still_apart(turn) && before != next)
            else {
                // An arc that meets a side bends what is left; sides that face each other have met.
                return self.end(by, convex);
            };
            self.gone_at[side] = by;
            latest[next] = self.starts.len();
            let (at, pace) = (step(own.at, moves, by - own.from), pace(&all[before], &all[next], turn[0]));
            self.starts.push(Start { side: next, before, from: by, at, pace: Some(pace) });
            let trim = turn[1].max(0.0) / (1.0 + turn[0]);
            let lost = [side, before, next].iter().map(|i| sides[*i].rate()).sum::<f64>();
            sides[before].next = next;
            sides[next].before = before;
            sides[before].retrim(by, 1, trim);
            sides[next].retrim(by, 0, trim);
            self.next_stage(by, sides[before].rate() + sides[next].rate() - lost);
            heap.extend([before, next].into_iter().filter_map(|side| event(&sides, side)));
        }
    }

    fn end(&mut self, by: f64, convex: bool) {
        if convex {
            self.gone = by;
        } else {
            self.until = self.until.min(by * SHORT);
        }
    }

    fn next_stage(&mut self, by: f64, more: f64) {
        let Some(last) = self.stages.last().copied() else { return };
        self.stages.push(Stage {
            from: by,
            area: last.area_at(by),
            long: last.long_at(by),
            rate: last.rate + more,
            before: last.sum_to(by),
        });
    }
}

fn sides(rings: &[Vec<Run>]) -> Vec<Side> {
    let mut found = Vec::with_capacity(rings.iter().map(Vec::len).sum());
    for ring in rings {
        let (first, count) = (found.len(), ring.len());
        found.extend(ring.iter().enumerate().map(|(i, run)| Side {
            before: first + (i + count - 1) % count,
            next: first + (i + 1) % count,
            trims: [run.trim, ring[(i + 1) % count].trim],
            long: run.long,
            since: 0.0,
        }));
    }
    found
}

fn first(side: usize, all: &[Run], before: usize) -> Start {
    let run = &all[side];
    let pace = (!run.is_reflex()).then(|| pace(&all[before], run, run.turn[0]));
    Start { side, before, from: 0.0, at: run.start, pace }
}

/// Whether two sides that come to meet turn by less than half a circle; `turn` is cosine and sine.
fn still_apart(turn: Point) -> bool {
    turn[1] > STRAIGHT || (turn[0] > 0.0 && turn[1] > -STRAIGHT)
}

/// How a corner moves where two moving sides meet.
fn pace(before: &Run, after: &Run, level: f64) -> Point {
    let (n, m) = (left(before.along), left(after.along));
    step([0.0; 2], [n[0] + m[0], n[1] + m[1]], 1.0 / (1.0 + level))
}

/// A distance up to which no arc round a reflex corner meets a side, or an arc, that it does not start beside.
fn free_of_meetings(rings: &[Vec<Run>], far: f64) -> f64 {
    let all: Vec<(&Run, &Run)> = rings
        .iter()
        .flat_map(|ring| (0..ring.len()).map(|i| (&ring[(i + ring.len() - 1) % ring.len()], &ring[i])))
        .collect();
    let reflex: Vec<&(&Run, &Run)> = all.iter().filter(|(_, run)| run.is_reflex()).collect();
    if reflex.len() * all.len() > MOST_PAIRS {
        return 0.0;
    }
    let mut least = far;
    for (before, run) in reflex.iter().copied() {
        let fan = Fan { first: left(before.along), last: left(run.along) };
        for (_, side) in &all {
            let over = cross(side.along, sub(run.start, side.start));
            if over <= 0.0 || 0.5 * over >= least || std::ptr::eq(*side, *run) || std::ptr::eq(*side, *before)
            {
                continue;
            }
            let met = over / (1.0 + fan.most(step([0.0; 2], left(side.along), -1.0)));
            if met < least {
                let end = step(side.start, side.along, side.long);
                least = least.min(met.max(0.5 * distance_to_side(run.start, side.start, end)));
            }
        }
        for (_, other) in &reflex {
            let apart = distance(run.start, other.start);
            if apart > NEAR && 0.5 * apart < least {
                let towards = fan.most(unit(sub(other.start, run.start)));
                least = if towards > 0.0 { least.min(0.5 * apart / towards) } else { least };
            }
        }
    }
    least
}

/// The directions of an arc round a reflex corner, turning right from the first to the last.
struct Fan {
    first: Point,
    last: Point,
}

impl Fan {
    /// The greatest part of a direction that any of them has.
    fn most(&self, along: Point) -> f64 {
        if cross(self.last, along) >= 0.0 && cross(along, self.first) >= 0.0 {
            return 1.0;
        }
        dot(self.first, along).max(dot(self.last, along))
    }
}

#[cfg(test)]
mod tests;
