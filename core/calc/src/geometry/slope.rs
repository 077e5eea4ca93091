//! The area of a sloped piece of bed by distance from its outline, summed once.

use super::sight::Sight;

/// Parts of the way that is not known in closed form; they are halved further until their sums settle.
const START: usize = 4;
/// Halvings at most.
const HALVINGS: usize = 14;
/// A part's sum has settled when halving moves it by less than this share of area × reach.
const SETTLED: f64 = 2e-6;
/// A share of the area too small to be told from rounding.
pub(super) const NOTHING: f64 = 1e-12;
/// What is hidden at both ends of a part has not changed when it differs by less than this share of the area.
const SAME: f64 = 1e-11;

/// One part of the way: the area of the shrunk outline, if that counts, and a parabola through three areas added to it.
#[derive(Debug, Clone)]
struct Part {
    start: f64,
    wide: f64,
    own: bool,
    areas: [f64; 3],
    before: f64,
}

impl Part {
    fn end(&self) -> f64 {
        self.start + self.wide
    }

    /// Simpson's rule.
    fn parabola(&self) -> f64 {
        self.wide / 6.0 * (self.areas[0] + 4.0 * self.areas[1] + self.areas[2])
    }

    /// Sum of the parabola over the first share of the width.
    fn parabola_to(&self, share: f64) -> f64 {
        let [a, m, b] = self.areas;
        let (bend, rise) = (2.0 * (a - 2.0 * m + b), 4.0 * m - 3.0 * a - b);
        self.wide * share * (a + share * (rise / 2.0 + share * bend / 3.0))
    }
}

/// The integral of an area over the distance from the outline, as parts with running sums.
#[derive(Debug, Clone)]
pub(super) struct Sums {
    parts: Vec<Part>,
}

impl Sums {
    /// Sums the area in sight, `full` at the outline, from nothing to `far` metres.
    ///
    /// What the shrunk outline gives in closed form is exact; so is what is hidden of it as long as that stays the same.
    /// Where what is hidden changes it is a smooth function of the distance between the distances at which the contour
    /// passes a corner, and Simpson's rule is good on those stretches: only parts that do not settle are divided. The
    /// whole is good to about 5e-6 of area × reach.
    pub(super) fn of(area: &Sight, full: f64, far: f64) -> Self {
        let mut work =
            Work { area, full, settled: SETTLED * full * far, passes: area.passes(), parts: Vec::new() };
        let known = area.known().min(far);
        if full <= 0.0 {
            return Self { parts: Vec::new() };
        }
        if !area.is_hidden() {
            work.parts.push(Part { start: 0.0, wide: known, own: true, areas: [0.0; 3], before: 0.0 });
        } else if known > 0.0 {
            work.known(known);
        }
        if known < far && work.parts.last().is_none_or(|part| part.own) {
            work.unknown(known, far);
        }
        let mut before = 0.0;
        for part in &mut work.parts {
            part.before = before;
            before += part.parabola();
            if part.own {
                before += area.own_sum(part.end()) - area.own_sum(part.start);
            }
        }
        Self { parts: work.parts }
    }

    /// Integral of the area from nothing to a distance, cubic metres; it stays what it is beyond the last part.
    pub(super) fn to(&self, area: &Sight, distance: f64) -> f64 {
        let next = self.parts.partition_point(|part| part.start <= distance);
        let Some(part) = next.checked_sub(1).and_then(|i| self.parts.get(i)) else {
            return 0.0;
        };
        if part.wide <= 0.0 {
            return part.before;
        }
        let share = ((distance - part.start) / part.wide).min(1.0);
        let own = match part.own {
            true => area.own_sum(distance.min(part.end())) - area.own_sum(part.start),
            false => 0.0,
        };
        part.before + part.parabola_to(share) + own
    }
}

struct Work<'a> {
    area: &'a Sight,
    full: f64,
    settled: f64,
    passes: Vec<f64>,
    parts: Vec<Part>,
}

impl Work<'_> {
    /// The way up to where the shrunk outline is known: divided first where the contour begins and ends to pass corners.
    fn known(&mut self, known: f64) {
        let inside = |by: &&f64| **by > 0.0 && **by < known;
        let first = self.passes.iter().find(inside).copied();
        let last = self.passes.iter().rev().find(inside).copied();
        let mut cuts: Vec<f64> = vec![0.0];
        cuts.extend(first);
        cuts.extend(last.filter(|by| first.is_some_and(|first| *by - first > 1e-9)));
        cuts.push(known);
        let mut start = -self.hidden(0.0);
        for pair in cuts.windows(2) {
            if self.is_gone(pair[0], start) {
                return self.parts.push(Part {
                    start: pair[0],
                    wide: 0.0,
                    own: false,
                    areas: [0.0; 3],
                    before: 0.0,
                });
            }
            let end = -self.hidden(pair[1]);
            self.hides([pair[0], pair[1]], [start, end], HALVINGS);
            start = end;
        }
        if self.is_gone(known, start) {
            self.parts.push(Part { start: known, wide: 0.0, own: false, areas: [0.0; 3], before: 0.0 });
        }
    }

    fn hidden(&self, by: f64) -> f64 {
        self.area.own(by) - self.area.sight(by)
    }

    fn is_gone(&self, by: f64, hidden: f64) -> bool {
        self.area.own(by) + hidden <= SAME * self.full
    }

    /// One stretch on which less and less is hidden.
    fn hides(&mut self, ends: [f64; 2], areas: [f64; 2], left: usize) {
        let wide = ends[1] - ends[0];
        let part = |start: f64, wide: f64, areas| Part { start, wide, own: true, areas, before: 0.0 };
        if (areas[0] - areas[1]).abs() <= SAME * self.full {
            return self.parts.push(part(ends[0], wide, [areas[0]; 3]));
        }
        let at = |share: f64| -self.hidden(ends[0] + share * wide);
        let [a, m, b] = [at(0.25), at(0.5), at(0.75)];
        let whole = part(ends[0], wide, [areas[0], m, areas[1]]);
        let halves = [
            part(ends[0], 0.5 * wide, [areas[0], a, m]),
            part(ends[0] + 0.5 * wide, 0.5 * wide, [m, b, areas[1]]),
        ];
        let moved = (halves[0].parabola() + halves[1].parabola() - whole.parabola()).abs();
        if left == 0 || moved <= self.settled {
            return self.parts.extend(halves);
        }
        let middle = ends[0] + 0.5 * wide;
        let inside = |by: &&f64| **by > ends[0] + 0.05 * wide && **by < ends[1] - 0.05 * wide;
        let nearest = self
            .passes
            .iter()
            .filter(inside)
            .min_by(|a, b| (*a - middle).abs().total_cmp(&(*b - middle).abs()));
        let (cut, value) = match nearest.copied() {
            Some(cut) => (cut, -self.hidden(cut)),
            None => (middle, m),
        };
        self.hides([ends[0], cut], [areas[0], value], left - 1);
        self.hides([cut, ends[1]], [value, areas[1]], left - 1);
    }

    /// The way beyond: the area in sight itself is summed.
    fn unknown(&mut self, from: f64, far: f64) {
        let wide = (far - from) / START as f64;
        for i in 0..START {
            let start = from + wide * i as f64;
            let areas = [0.0, 0.5, 1.0].map(|share| self.area.sight(start + share * wide));
            if areas[0] <= NOTHING * self.full {
                return;
            }
            self.refine(Part { start, wide, own: false, areas, before: 0.0 }, HALVINGS);
        }
    }

    fn refine(&mut self, part: Part, left: usize) {
        let half = 0.5 * part.wide;
        let [a, m, b] = part.areas;
        let at = |share: f64| self.area.sight(part.start + share * part.wide);
        let first = Part { wide: half, areas: [a, at(0.25), m], ..part.clone() };
        let second = Part { start: part.start + half, wide: half, areas: [m, at(0.75), b], ..part.clone() };
        let moved = (first.parabola() + second.parabola() - part.parabola()).abs();
        if left == 0 || moved <= self.settled {
            self.parts.extend([first, second]);
        } else {
            self.refine(first, left - 1);
            self.refine(second, left - 1);
        }
    }
}

/// How far in anything is in sight, within a millionth of the way.
pub(super) fn reach(area: &Sight, full: f64, far: f64) -> f64 {
    let left = |distance: f64| area.sight(distance) > NOTHING * full;
    if full <= 0.0 {
        return 0.0;
    }
    if left(far) {
        return far;
    }
    // Where a zone hides the rest at once, the contour passes a corner of it there.
    let passes: Vec<f64> = area.passes().into_iter().filter(|by| *by > 0.0 && *by < far).collect();
    let covered = passes.partition_point(|by| left(*by));
    let mut low = covered.checked_sub(1).map_or(0.0, |at| passes[at]);
    let mut high = passes.get(covered).copied().unwrap_or(far);
    if left(high * (1.0 - 0.9e-6)) {
        return high;
    }
    for _ in 0..40 {
        if high - low <= 1e-6 * high {
            break;
        }
        let middle = 0.5 * (low + high);
        if left(middle) { low = middle } else { high = middle }
    }
    high
}
