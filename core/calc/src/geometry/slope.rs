//! The area of a sloped piece of bed by distance from its outline where parts of the contour meet from afar, summed once.

use super::sight::Sight;

/// Parts of the way that is not known in closed form; they are halved further until their sums settle.
const START: usize = 2;
/// Halvings at most.
const HALVINGS: usize = 15;
/// A part's sum has settled when halving moves it by less than this share of area × reach.
const SETTLED: f64 = 2e-6;
/// A share of the area too small to be told from rounding.
pub(super) const NOTHING: f64 = 1e-12;

/// One part of the way, with a parabola through three areas.
#[derive(Debug, Clone)]
struct Part {
    start: f64,
    wide: f64,
    areas: [f64; 3],
    before: f64,
}

impl Part {
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

/// The integral of an area over the distance from the outline, from where it is no longer known in closed form, as parts
/// with running sums.
#[derive(Debug, Clone)]
pub(super) struct Sums {
    parts: Vec<Part>,
}

impl Sums {
    /// Sums the area in sight, `full` at the outline, from a distance to `far` metres: good to about 5e-6 of area × reach,
    /// since only parts that do not settle are divided.
    pub(super) fn of(area: &Sight, full: f64, from: f64, far: f64) -> Self {
        let mut work = Work { area, full, settled: SETTLED * full * far, parts: Vec::new() };
        if full > 0.0 && from < far {
            work.sum(from, far);
        }
        let mut before = 0.0;
        for part in &mut work.parts {
            part.before = before;
            before += part.parabola();
        }
        Self { parts: work.parts }
    }

    /// Integral of the area to a distance, cubic metres; it stays what it is beyond the last part.
    pub(super) fn to(&self, distance: f64) -> f64 {
        let next = self.parts.partition_point(|part| part.start <= distance);
        let Some(part) = next.checked_sub(1).and_then(|i| self.parts.get(i)) else {
            return 0.0;
        };
        part.before + part.parabola_to(((distance - part.start) / part.wide).min(1.0))
    }
}

struct Work<'a> {
    area: &'a Sight,
    full: f64,
    settled: f64,
    parts: Vec<Part>,
}

impl Work<'_> {
    fn sum(&mut self, from: f64, far: f64) {
        let wide = (far - from) / START as f64;
        for i in 0..START {
            let start = from + wide * i as f64;
            let areas = [0.0, 0.5, 1.0].map(|share| self.area.sight(start + share * wide));
            if areas[0] <= NOTHING * self.full {
                return;
            }
            self.refine(Part { start, wide, areas, before: 0.0 }, HALVINGS);
        }
    }

    fn refine(&mut self, part: Part, left: usize) {
        let half = 0.5 * part.wide;
        let [a, m, b] = part.areas;
        let at = |share: f64| self.area.sight(part.start + share * part.wide);
        let first = Part { wide: half, areas: [a, at(0.25), m], ..part.clone() };
        let second = Part { start: part.start + half, wide: half, areas: [m, at(0.75), b], ..part.clone() };
        let moved = (first.parabola() + second.parabola() - part.parabola()).abs();
        // What is no number does not settle by halving.
        if left > 0 && moved > self.settled {
            self.refine(first, left - 1);
            self.refine(second, left - 1);
        } else {
            self.parts.extend([first, second]);
        }
    }
}

/// How far in anything is in sight, within a millionth of the way.
pub(super) fn reach(area: &Sight, full: f64, far: f64) -> f64 {
    let at = |distance: f64| area.sight(distance);
    let left = |size: f64| size > NOTHING * full;
    if full <= 0.0 {
        return 0.0;
    }
    if left(at(far)) {
        return far;
    }
    // Where a zone hides the rest at once, the contour passes a corner of it there.
    let passes: Vec<f64> = area.passes().into_iter().filter(|by| *by > 0.0 && *by < far).collect();
    let covered = passes.partition_point(|by| left(at(*by)));
    let low = covered.checked_sub(1).map_or(0.0, |at| passes[at]);
    let high = passes.get(covered).copied().unwrap_or(far);
    if left(at(high * (1.0 - 0.9 * CLOSE))) {
        return high;
    }
    let least = (NOTHING * full).sqrt();
    let root = |size: f64| size.sqrt() - least;
    let mut end = End { low, high, roots: [None, Some((low, root(at(low))))] };
    for step in 0..80 {
        if end.high - end.low <= CLOSE * end.high {
            break;
        }
        let by = if step % 3 == 2 { f64::midpoint(end.low, end.high) } else { end.guess() };
        let size = at(by);
        if left(size) { end.is_left(by, root(size)) } else { end.high = by }
    }
    end.high
}

/// How near the end of what is in sight is found, as a share of the way.
const CLOSE: f64 = 1e-6;

/// Where what is left ends: something is left at `low` and nothing at `high`.
struct End {
    low: f64,
    high: f64,
    /// The last two distances at which something was left, with how far the roots of the areas stand over that of nothing.
    roots: [Option<(f64, f64)>; 2],
}

impl End {
    fn is_left(&mut self, by: f64, root: f64) {
        self.low = by;
        self.roots = [self.roots[1], Some((by, root))];
    }

    /// What is left shrinks towards a point, so the root of its area falls evenly in the end: a little to either side of
    /// where that line ends, since one of the two is met and the other not.
    fn guess(&self) -> f64 {
        let middle = f64::midpoint(self.low, self.high);
        let [Some((x, a)), Some((y, b))] = self.roots else { return middle };
        let end = y + b * (y - x) / (a - b);
        let beside = 0.4 * CLOSE * self.high;
        let by = if end - beside > self.low { end - beside } else { end + beside };
        if by > self.low && by < self.high { by } else { middle }
    }
}
