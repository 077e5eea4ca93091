//! What an eye sees of the bed of a pool: rays through the surface and through panels, bent by the law of refraction.
//!
//! Lengths and levels are plain metres. The surface is flat and at rest. A panel is plane and upright: it only shifts a ray
//! sideways by less than its own thickness, which is neglected, so that air meets water at its wet face. What stands in
//! the way is drawn as lines with a level up to which nobody sees through: guards, barriers, the rim. What lies in the
//! pool (rocks, logs) hides nothing here.

mod clear;
mod grid;
mod snell;

#[cfg(test)]
mod tests;

pub use clear::plan as apart;
pub use grid::{SAMPLES, places};
pub use snell::{WATER, apparent_depth, below, deepest_within, passes};

use crate::geometry::{Bed, NEAR, Point};

/// Something one does not see through up to a level.
#[derive(Debug, Clone, PartialEq)]
pub struct Front {
    /// Its line in plan.
    pub line: Vec<Point>,
    /// Up to here nothing is seen through it.
    pub opaque_to: f64,
}

/// A panel, by its wet face.
#[derive(Debug, Clone, PartialEq)]
pub struct Panel {
    /// Its wet face in plan, from end to end of the clear opening.
    pub line: Vec<Point>,
    /// Lower edge of the clear opening.
    pub sill: f64,
    /// Upper edge.
    pub head: f64,
    /// Which of the fronts it is let into, by their positions.
    pub let_into: Vec<usize>,
}

/// An eye, the water, and what stands between.
#[derive(Debug, Clone)]
pub struct View<'a> {
    /// The eye in plan.
    pub eye: Point,
    /// Its level.
    pub eye_level: f64,
    /// The bed.
    pub bed: &'a Bed,
    /// Level of the water.
    pub water: f64,
    /// Level of the rim.
    pub rim: f64,
    /// What one does not see through.
    pub fronts: &'a [Front],
    /// The panels of the pool.
    pub panels: &'a [Panel],
}

/// Lengths of the ways in water along which a point is seen, metres.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Ways {
    /// Through the surface.
    pub surface: Option<f64>,
    /// Through each panel below the water, or through the panel and then the surface.
    pub panels: Vec<Option<f64>>,
}

impl Ways {
    /// The shortest of them.
    pub fn shortest(&self) -> Option<f64> {
        let panels = self.panels.iter().flatten();
        self.surface.iter().chain(panels).copied().min_by(f64::total_cmp)
    }
}

impl View<'_> {
    /// The ways in water along which a point at a level under the surface is seen.
    pub fn ways(&self, at: Point, level: f64) -> Ways {
        let (surface, above) = self.through_surface(at, level).map_or((None, None), |(s, by)| (Some(s), by));
        let panel = |i: usize| {
            let below = self.through_panel(&self.panels[i], at, level);
            let over = if above == Some(i) { surface } else { None };
            [below, over].into_iter().flatten().min_by(f64::total_cmp)
        };
        Ways { surface, panels: (0..self.panels.len()).map(panel).collect() }
    }

    /// Way in water through the surface, with the panel it passed above the water.
    fn through_surface(&self, at: Point, level: f64) -> Option<(f64, Option<usize>)> {
        let (height, depth) = (self.eye_level - self.water, self.water - level);
        if height <= 0.0 {
            return None;
        }
        let across = clear::plan(self.eye, at);
        let pass = passes(height, depth, across, WATER);
        let share = if across > 0.0 { pass / across } else { 0.0 };
        let enters = clear::between(self.eye, at, share);
        let by = clear::air(self, enters)?;
        clear::wet(self.bed, (enters, self.water), (at, level)).then(|| {
            let rest = across - pass;
            ((rest * rest + depth * depth).sqrt(), by)
        })
    }

    /// Way in water through one panel, below the surface.
    fn through_panel(&self, panel: &Panel, at: Point, level: f64) -> Option<f64> {
        let ways = panel.line.windows(2).filter_map(|s| self.through_piece(panel, (s[0], s[1]), at, level));
        ways.min_by(f64::total_cmp)
    }

    fn through_piece(&self, panel: &Panel, (a, b): (Point, Point), at: Point, level: f64) -> Option<f64> {
        let (eye, point) = (clear::off(a, b, self.eye), clear::off(a, b, at));
        // Eye and point must lie on the two sides of the face.
        if eye.before * point.before >= 0.0 {
            return None;
        }
        let (near, far) = (eye.before.abs(), point.before.abs());
        let (along, rise) = (point.along - eye.along, level - self.eye_level);
        // Bent towards the upright in the water, the ray passes the face between where a straight one would and the foot of the point.
        let straight = near / (near + far);
        let meets = |from: f64, to: f64, low: f64, high: f64| from.max(to) >= low && from.min(to) <= high;
        let [left, right] = [eye.along + along * straight, point.along];
        let [upper, lower] = [self.eye_level + rise * straight, level];
        if !meets(left, right, -NEAR, clear::plan(a, b) + NEAR)
            || !meets(upper, lower, panel.sill - NEAR, panel.head.min(self.water) + NEAR)
        {
            return None;
        }
        let across = (along * along + rise * rise).sqrt();
        let share = if across > 0.0 { passes(near, far, across, WATER) / across } else { 0.0 };
        let (on, z) = (eye.along + along * share, self.eye_level + rise * share);
        let open = (0.0..=clear::plan(a, b)).contains(&on) && z >= panel.sill && z <= panel.head;
        if !open || z > self.water {
            return None;
        }
        let enters = clear::between(a, b, on / clear::plan(a, b));
        let seen = clear::air_to_panel(self, panel, (a, b), (enters, z))
            && clear::wet(self.bed, (enters, z), (at, level));
        let rest = across * (1.0 - share);
        seen.then(|| (rest * rest + far * far).sqrt())
    }
}
