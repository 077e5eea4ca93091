//! The area of a sloped piece of bed by distance from its outline, summed once.

/// Parts of the way across a slope that are halved further until their sums settle.
const START: usize = 4;
/// Halvings at most.
const HALVINGS: usize = 14;
/// A part's sum has settled when halving moves it by less than this share of area × reach.
const SETTLED: f64 = 2e-6;
/// A share of the area too small to be told from rounding.
const NOTHING: f64 = 1e-12;

/// One part: distances from `start` over `wide`, and the areas at its start, middle and end.
#[derive(Debug, Clone)]
struct Part {
    start: f64,
    wide: f64,
    areas: [f64; 3],
    before: f64,
}

impl Part {
    /// Simpson's rule.
    fn sum(&self) -> f64 {
        self.wide / 6.0 * (self.areas[0] + 4.0 * self.areas[1] + self.areas[2])
    }

    /// Sum over the first share of the width, by the parabola through the three areas.
    fn sum_to(&self, share: f64) -> f64 {
        let [a, m, b] = self.areas;
        let (bend, rise) = (2.0 * (a - 2.0 * m + b), 4.0 * m - 3.0 * a - b);
        self.wide * share * (a + share * (rise / 2.0 + share * bend / 3.0))
    }

    fn halves(&self, area: &impl Fn(f64) -> f64) -> [Part; 2] {
        let half = 0.5 * self.wide;
        let [a, m, b] = self.areas;
        let at = |share: f64| area(self.start + share * self.wide);
        [
            Part { start: self.start, wide: half, areas: [a, at(0.25), m], before: 0.0 },
            Part { start: self.start + half, wide: half, areas: [m, at(0.75), b], before: 0.0 },
        ]
    }
}

/// The integral of an area over the distance from the outline, as parts with running sums.
#[derive(Debug, Clone)]
pub(super) struct Sums {
    parts: Vec<Part>,
    /// The greatest distance at which anything is left, or that was asked for, metres.
    pub(super) reach: f64,
}

impl Sums {
    /// Sums `area`, which falls with the distance, from nothing to `far` metres.
    ///
    /// The area is a parabola of the distance between the distances at which a side vanishes or the
    /// rest parts in two, and Simpson's rule is exact on a parabola: only the parts that hold such
    /// a distance are halved. The whole is good to about 5e-6 of area × reach.
    pub(super) fn of(area: impl Fn(f64) -> f64, far: f64) -> Self {
        let full = area(0.0);
        let reach = reach(&area, full, far);
        let mut parts = Vec::new();
        let wide = reach / START as f64;
        for i in 0..START {
            let start = wide * i as f64;
            let areas = [area(start), area(start + 0.5 * wide), area(start + wide)];
            let part = Part { start, wide, areas, before: 0.0 };
            refine(&area, part, SETTLED * full * reach, HALVINGS, &mut parts);
        }
        let mut before = 0.0;
        for part in &mut parts {
            part.before = before;
            before += part.sum();
        }
        Self { parts, reach }
    }

    /// Integral of the area from nothing to a distance, cubic metres; it stays what it is beyond the reach.
    pub(super) fn to(&self, distance: f64) -> f64 {
        let next = self.parts.partition_point(|part| part.start <= distance);
        let Some(part) = next.checked_sub(1).and_then(|i| self.parts.get(i)) else {
            return 0.0;
        };
        if part.wide <= 0.0 {
            return part.before;
        }
        part.before + part.sum_to(((distance - part.start) / part.wide).min(1.0))
    }
}

fn refine(area: &impl Fn(f64) -> f64, part: Part, settled: f64, left: usize, out: &mut Vec<Part>) {
    let [first, second] = part.halves(area);
    let moved = (first.sum() + second.sum() - part.sum()).abs();
    if left == 0 || moved <= settled {
        out.extend([first, second]);
    } else {
        refine(area, first, settled, left - 1, out);
        refine(area, second, settled, left - 1, out);
    }
}

/// How far in anything is left, within a millionth of the way; no inscribed circle is larger than the area.
fn reach(area: &impl Fn(f64) -> f64, full: f64, far: f64) -> f64 {
    let left = |distance: f64| area(distance) > NOTHING * full;
    if full <= 0.0 {
        return 0.0;
    }
    if left(far) {
        return far;
    }
    let (mut low, mut high) = (0.0, far);
    for _ in 0..40 {
        if high - low <= 1e-6 * high {
            break;
        }
        let middle = 0.5 * (low + high);
        if left(middle) { low = middle } else { high = middle }
    }
    high
}
