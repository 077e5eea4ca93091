//! Draws a path taut: its places on top edges slide along them until the string is shortest.

use super::legs::{Place, along, share_nearest};
use super::search::Search;

const ROUNDS: u32 = 60;
const STEPS: u32 = 40;
/// Share of a stretch kept by a step of the golden section.
const GOLDEN: f64 = 0.618_033_988_749_894_9;

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
    let mut length = |share| {
        chain[at].at = along(&wall, share);
        (share, around(search, chain, at))
    };
    let (mut low, mut high) = (0.0, 1.0);
    let (mut left, mut right) = (length(1.0 - GOLDEN), length(GOLDEN));
    for _ in 0..STEPS {
        // Beyond what stands in the way both are infinite: the half with the old place is kept.
        let keep_left = if left.1 == right.1 { old < (left.0 + right.0) / 2.0 } else { left.1 < right.1 };
        if keep_left {
            high = right.0;
            (left, right) = (length(high - GOLDEN * (high - low)), left);
        } else {
            low = left.0;
            (left, right) = (right, length(low + GOLDEN * (high - low)));
        }
    }
    chain[at].at = along(&wall, (low + high) / 2.0);
    if around(search, chain, at) > before {
        chain[at] = place;
    }
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
