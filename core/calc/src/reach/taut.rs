//! Draws a path taut: its places on top edges slide along them until the string is shortest.

use super::legs::{Place, along, share_nearest};
use super::search::Search;

const ROUNDS: u32 = 60;
const STEPS: u32 = 60;
/// Share of a stretch that a step of the golden section goes.
const GOLDEN: f64 = 0.381_966_011_250_105_1;
/// Places nearer to one another than this share of a wall are one: the length of a path differs there by less than rounding.
const CLOSE: f64 = 1e-8;

/// The length of the path through these places once it is taut; `length` is what it has before.
pub(super) fn drawn(search: &Search<'_>, mut chain: Vec<Place>, length: f64) -> f64 {
    let mut best = length;
    for _ in 0..ROUNDS {
        for at in 0..chain.len() {
            slide(search, &mut chain, at);
        }
        let now = whole(search, &chain);
        // A single place is where it should be once it has slid.
        if best - now < 1e-11 || chain.len() == 1 {
            return best.min(now);
        }
        best = now;
    }
    best
}

/// Moves one place along its top to where the pieces on both sides are shortest together, if that is free.
fn slide(search: &Search<'_>, chain: &mut [Place], at: usize) {
    let place = chain[at];
    let Some(wall) = place.on.map(|w| search.walls[w]) else { return };
    let before = around(search, chain, at);
    let old = share_nearest(wall.a, wall.b, place.at);
    let length = |share: f64| {
        chain[at].at = along(&wall, share);
        around(search, chain, at)
    };
    let share = least(length, old);
    chain[at].at = along(&wall, share);
    if around(search, chain, at) > before {
        chain[at] = place;
    }
}

/// Where a length is least between 0 and 1, looked for from a share that has a free path (Brent 1973, chapter 5: parabolas, and golden
/// sections where they lead nowhere, as they do next to what stands in the way).
pub(super) fn least(mut length: impl FnMut(f64) -> f64, from: f64) -> f64 {
    let (mut low, mut high) = (0.0, 1.0);
    // The best share, the second best, the one that was second best before; each with its length.
    let mut best = (from, length(from));
    let (mut second, mut third) = (best, best);
    let (mut step, mut before): (f64, f64) = (0.0, 0.0);
    for _ in 0..STEPS {
        let middle = 0.5 * (low + high);
        if (best.0 - middle).abs() + 0.5 * (high - low) <= 2.0 * CLOSE {
            break;
        }
        let parabola = vertex(best, second, third);
        let useful =
            |step: f64| step.abs() < 0.5 * before.abs() && low < best.0 + step && best.0 + step < high;
        match parabola.filter(|step| useful(*step)) {
            Some(next) => (before, step) = (step, next),
            None => {
                before = if best.0 < middle { high - best.0 } else { low - best.0 };
                step = GOLDEN * before;
            }
        }
        let share = best.0 + if step.abs() < CLOSE { CLOSE.copysign(step) } else { step };
        let tried = (share, length(share));
        if tried.1 <= best.1 {
            if share < best.0 {
                high = best.0
            } else {
                low = best.0
            }
            (third, second, best) = (second, best, tried);
        } else {
            if share < best.0 {
                low = share
            } else {
                high = share
            }
            if tried.1 <= second.1 || second.0 == best.0 {
                (third, second) = (second, tried);
            } else if tried.1 <= third.1 || third.0 == best.0 || third.0 == second.0 {
                third = tried;
            }
        }
    }
    best.0
}

/// The step from the first of three places to the lowest point of the parabola through all of them; none where there is no such point.
fn vertex(one: (f64, f64), two: (f64, f64), three: (f64, f64)) -> Option<f64> {
    let (r, q) = ((one.0 - two.0) * (one.1 - three.1), (one.0 - three.0) * (one.1 - two.1));
    let step = ((one.0 - three.0) * q - (one.0 - two.0) * r) / (2.0 * (r - q));
    step.is_finite().then_some(step)
}

/// The two pieces that meet at a place.
fn around(search: &Search<'_>, chain: &[Place], at: usize) -> f64 {
    let before = match at.checked_sub(1) {
        Some(previous) => search.leg(chain[previous], chain[at]),
        None => search.start_length(chain[at].at, search.top(chain[at])),
    };
    let after = match chain.get(at + 1) {
        Some(next) => search.leg(chain[at], *next),
        None => search.end(chain[at]),
    };
    before + after
}

fn whole(search: &Search<'_>, chain: &[Place]) -> f64 {
    let (Some(first), Some(last)) = (chain.first(), chain.last()) else { return f64::INFINITY };
    let middle: f64 = chain.windows(2).map(|pair| search.leg(pair[0], pair[1])).sum();
    search.start_length(first.at, search.top(*first)) + middle + search.end(*last)
}
