//! What is in sight of a piece of bed: within the pool, under no later zone, farther than a distance from its own outline.

use std::f64::consts::PI;
use std::sync::{Mutex, OnceLock};

use super::erosion::lay_eroded;
use super::inmost::holds_a_circle;
use super::point::Point;
use super::relief;
use super::shrink::Shrink;
use super::slope::{self, NOTHING};
use super::sweep::{LAYERS, Sweep, crossing};
use super::{BedPiece, Outline};

/// A piece with what bounds the sight of it.
#[derive(Debug, Clone)]
pub(super) struct Sight {
    pub(super) outline: Outline,
    area: f64,
    /// Greatest distance that is asked for, metres.
    pub(super) far: f64,
    shrink: OnceLock<Shrink>,
    seen: OnceLock<f64>,
    bounded: Option<Bounded>,
    swept: Kept<f64>,
    summed: Kept<(f64, f64)>,
}

/// What was worked out for a distance before; a bed is asked for few.
#[derive(Debug)]
struct Kept<T>(Mutex<Vec<(f64, T)>>);

impl<T> Clone for Kept<T> {
    fn clone(&self) -> Self {
        Self::default()
    }
}

impl<T> Default for Kept<T> {
    fn default() -> Self {
        Kept(Mutex::default())
    }
}

impl<T: Copy> Kept<T> {
    fn of(&self, by: f64, work: impl FnOnce() -> T) -> T {
        // Nothing panics while it is locked; if it did, what is kept there would still be right.
        let known = |kept: &Vec<(f64, T)>| kept.iter().find(|(at, _)| *at == by).map(|(_, value)| *value);
        let found = self.0.lock().ok().and_then(|kept| known(&kept));
        found.unwrap_or_else(|| {
            let value = work();
            if let Ok(mut kept) = self.0.lock() {
                kept.push((by, value));
            }
            value
        })
    }
}

/// The pool, where the piece may stand out of it, and the zones that may lie over it.
#[derive(Debug, Clone)]
struct Bounded {
    rest: Sweep,
    in_pool: bool,
    by: Vec<Outline>,
    /// What bounds it lies at least this far from the outline, within it.
    clear: OnceLock<f64>,
}

impl Bounded {
    fn counts(&self, winding: &[i32; LAYERS]) -> bool {
        (self.in_pool || winding[POOL] > 0) && winding[OVER] <= 0
    }
}

const OWN: usize = 0;
const POOL: usize = 1;
const OVER: usize = 2;

impl Sight {
    /// The piece at a place of the list: the pool's own first, then zones in the order drawn. `far` is how far from its
    /// outline it slopes.
    pub(super) fn of(pieces: &[BedPiece], i: usize, far: f64) -> Self {
        let outline = pieces[i].outline.clone();
        let area = outline.area();
        let bounds = outline.bounds();
        let mut by: Vec<Outline> = Vec::new();
        let pool = &pieces[0].outline;
        let in_pool = i == 0 || pool.plainly_covers(&outline);
        let mut rest = Sweep::new(bounds);
        if !in_pool {
            pool.lay(&mut rest, POOL);
            by.push(pool.clone());
        }
        let later = &pieces[i + 1..];
        let over = later.iter().map(|piece| &piece.outline).filter(|o| o.bounds().meets(&bounds));
        let over: Vec<&Outline> = over.collect();
        for (k, own) in over.iter().enumerate() {
            // What another zone covers hides nothing more; of two that cover each other the first counts.
            let within = |(l, other): (usize, &&Outline)| {
                l != k && other.plainly_covers(own) && (l < k || !own.plainly_covers(other))
            };
            if !over.iter().enumerate().any(within) {
                own.lay(&mut rest, OVER);
                by.push((*own).clone());
            }
        }
        let bounded = (!by.is_empty()).then(|| Bounded { rest, in_pool, by, clear: OnceLock::new() });
        // No circle within is larger than the area.
        let far = far.min((area / PI).sqrt());
        let (shrink, seen) = (OnceLock::new(), OnceLock::new());
        Self { outline, area, far, shrink, seen, bounded, swept: Kept::default(), summed: Kept::default() }
    }

    /// Area in sight at all.
    pub(super) fn seen(&self) -> f64 {
        match &self.bounded {
            None => self.area,
            Some(bounded) => *self.seen.get_or_init(|| match bounded.by.as_slice() {
                [over] if bounded.in_pool && self.outline.plainly_covers(over) => self.area - over.area(),
                _ => self.swept(0.0),
            }),
        }
    }

    /// The greatest distance from the outline at which anything is in sight, up to the one asked for.
    pub(super) fn reach(&self) -> f64 {
        let shrink = self.shrink();
        if self.bounded.is_none() && (shrink.until >= self.far || shrink.gone.is_finite()) {
            return shrink.gone.min(self.far);
        }
        if self.bounded.is_none() && holds_a_circle(&self.outline, self.far) {
            return self.far;
        }
        if self.far <= shrink.until {
            return self.summed(self.far).1.clamp(0.0, self.far);
        }
        slope::reach(self, self.seen(), self.far)
    }

    /// Area in sight summed from nothing to a distance, as far as that is known in closed form.
    pub(super) fn sum_known(&self, by: f64) -> f64 {
        let by = by.min(self.far).min(self.known());
        let Some(bounded) = &self.bounded else { return self.own_sum(by) };
        if by <= self.clear(bounded) {
            return self.own_sum(by) - (self.area - self.seen()) * by;
        }
        self.summed(by).0
    }

    /// The distance from the outline up to `by`, summed over what is in sight, and the greatest of it there.
    fn summed(&self, by: f64) -> (f64, f64) {
        self.summed.of(by, || {
            let bounded = self.bounded.as_ref();
            let mut sweep = bounded.map_or_else(|| Sweep::new(self.outline.bounds()), |b| b.rest.clone());
            let edges = relief::edges(self.shrink(), by, sweep.origin());
            edges.into_iter().for_each(|edge| sweep.fold(edge));
            sweep.relief(NOTHING * self.area, |winding| bounded.is_none_or(|b| b.counts(winding)))
        })
    }

    /// How far from the outline nothing begins to hide more or less of it; nothing where something crosses it.
    fn clear(&self, bounded: &Bounded) -> f64 {
        *bounded.clear.get_or_init(|| {
            let corners = || bounded.by.iter().flat_map(Outline::rings).flatten();
            if !bounded.in_pool || !corners().all(|corner| self.outline.winds_round(*corner)) {
                return 0.0;
            }
            let own = self.outline.rings().flatten();
            let to_others = |corner: &Point| {
                bounded.by.iter().map(|o| o.distance_to_side(*corner)).fold(f64::INFINITY, f64::min)
            };
            // Nothing reaches nearer to a convex outline than with a corner.
            let from_own = match self.outline.is_convex() {
                true => f64::INFINITY,
                false if self.is_met(bounded) => return 0.0,
                false => own.map(to_others).fold(f64::INFINITY, f64::min),
            };
            let inward = corners().map(|corner| self.outline.distance_to_side(*corner));
            inward.fold(from_own, f64::min)
        })
    }

    /// Whether a side of the outline crosses what bounds it, or lies in it: a hole may lie wholly under a zone.
    fn is_met(&self, bounded: &Bounded) -> bool {
        let under = |ring: &[Point]| bounded.by.iter().any(|over| ring.iter().any(|c| over.winds_round(*c)));
        if self.outline.rings().any(under) {
            return true;
        }
        let crosses =
            |own| bounded.by.iter().flat_map(Outline::sides).any(|side| crossing(own, side).is_some());
        self.outline.sides().any(crosses)
    }

    fn shrink(&self) -> &Shrink {
        self.shrink.get_or_init(|| Shrink::of(&self.outline, self.far))
    }

    fn swept(&self, by: f64) -> f64 {
        let mut sweep = match &self.bounded {
            Some(bounded) => bounded.rest.clone(),
            None => Sweep::new(self.outline.bounds()),
        };
        if by <= 0.0 {
            self.outline.lay(&mut sweep, OWN);
        } else if by <= self.shrink().until {
            if by >= self.shrink().gone {
                return 0.0;
            }
            self.shrink().contours(by).iter().for_each(|ring| sweep.add(ring, OWN));
        } else {
            lay_eroded(self.shrink().rings(), by, &mut sweep, OWN);
        }
        let bounded = self.bounded.as_ref();
        sweep.area(|winding| winding[OWN] > 0 && bounded.is_none_or(|b| b.counts(winding)))
    }

    /// Area in sight at a distance, square metres.
    pub(super) fn sight(&self, by: f64) -> f64 {
        if by <= 0.0 {
            return self.seen();
        }
        if by <= self.shrink().until {
            match &self.bounded {
                None => return self.own(by),
                Some(bounded) if by <= self.clear(bounded) => {
                    return self.own(by) - (self.area - self.seen());
                }
                // Beyond what is in sight at all nothing is.
                Some(_) if self.far <= self.shrink().until && by >= self.summed(self.far).1 => return 0.0,
                Some(_) => {}
            }
        }
        self.swept.of(by, || self.swept(by))
    }

    /// Area of the shrunk outline at a distance up to [`Sight::known`], hidden or not.
    fn own(&self, by: f64) -> f64 {
        self.shrink().area(by)
    }

    /// That area summed from nothing to a distance.
    fn own_sum(&self, by: f64) -> f64 {
        self.shrink().sum_to(by)
    }

    /// The distance up to which [`Sight::own`] holds.
    pub(super) fn known(&self) -> f64 {
        self.shrink().until
    }

    /// Distances at which the contour passes corners of what hides it, rising.
    pub(super) fn passes(&self) -> Vec<f64> {
        let corners = self.bounded.iter().flat_map(|bounded| &bounded.by).flat_map(Outline::rings).flatten();
        let inside = corners.filter(|corner| self.outline.contains(**corner));
        let mut found: Vec<f64> = inside.map(|corner| self.outline.distance_to_side(*corner)).collect();
        found.sort_unstable_by(f64::total_cmp);
        found
    }
}
