//! What is in sight of a piece of bed: within the pool, under no later zone, farther than a distance from its own outline.

use std::f64::consts::PI;
use std::sync::OnceLock;

use super::erosion::lay_eroded;
use super::shrink::Shrink;
use super::slope;
use super::sweep::Sweep;
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
}

/// The pool, where the piece may stand out of it, and the zones that may lie over it.
#[derive(Debug, Clone)]
struct Bounded {
    rest: Sweep,
    in_pool: bool,
    by: Vec<Outline>,
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
        for over in pieces[i + 1..].iter().map(|piece| &piece.outline).filter(|o| o.bounds().meets(&bounds)) {
            over.lay(&mut rest, OVER);
            by.push(over.clone());
        }
        let bounded = (!by.is_empty()).then_some(Bounded { rest, in_pool, by });
        // No circle within is larger than the area.
        let far = far.min((area / PI).sqrt());
        Self { outline, area, far, shrink: OnceLock::new(), seen: OnceLock::new(), bounded }
    }

    /// Area in sight at all.
    pub(super) fn seen(&self) -> f64 {
        match &self.bounded {
            None => self.area,
            Some(_) => *self.seen.get_or_init(|| self.swept(0.0)),
        }
    }

    /// The greatest distance from the outline at which anything is in sight, up to the one asked for.
    pub(super) fn reach(&self) -> f64 {
        let shrink = self.shrink();
        if self.bounded.is_none() && (shrink.until >= self.far || shrink.gone.is_finite()) {
            return shrink.gone.min(self.far);
        }
        slope::reach(self, self.seen(), self.far)
    }

    fn shrink(&self) -> &Shrink {
        self.shrink.get_or_init(|| Shrink::of(&self.outline, self.far))
    }

    fn swept(&self, by: f64) -> f64 {
        let (mut sweep, in_pool) = match &self.bounded {
            Some(bounded) => (bounded.rest.clone(), bounded.in_pool),
            None => (Sweep::new(self.outline.bounds()), true),
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
        sweep.area(|winding| winding[OWN] > 0 && (in_pool || winding[POOL] > 0) && winding[OVER] <= 0)
    }

    /// Area in sight at a distance, square metres.
    pub(super) fn sight(&self, by: f64) -> f64 {
        if by <= 0.0 {
            self.seen()
        } else if self.bounded.is_none() && by <= self.shrink().until {
            self.shrink().area(by)
        } else {
            self.swept(by)
        }
    }

    /// Area of the shrunk outline at a distance up to [`Sight::known`], hidden or not.
    pub(super) fn own(&self, by: f64) -> f64 {
        self.shrink().area(by)
    }

    /// That area summed from nothing to a distance.
    pub(super) fn own_sum(&self, by: f64) -> f64 {
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

    /// Whether anything may hide the outline at all.
    pub(super) fn is_hidden(&self) -> bool {
        self.bounded.is_some()
    }
}
