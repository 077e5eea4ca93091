//! What stands in the way of a ray: fronts, panels and the rim in the air, steps of the bed in the water.

use super::{Panel, View};
use crate::geometry::{Bed, Point};

/// A ray that touches an edge passes it, metres; rounding of a drawing in feet is far less.
const TOUCH: f64 = 1e-9;

/// Where a point lies against a line: along it from its start, and before it (left is positive), metres.
pub(super) struct Off {
    pub(super) along: f64,
    pub(super) before: f64,
}

pub(super) fn off(a: Point, b: Point, p: Point) -> Off {
    let long = plan(a, b);
    let (dx, dy) = ((b[0] - a[0]) / long, (b[1] - a[1]) / long);
    let (px, py) = (p[0] - a[0], p[1] - a[1]);
    Off { along: px * dx + py * dy, before: dx * py - dy * px }
}

/// Distance of two points in plan, metres.
pub fn plan(a: Point, b: Point) -> f64 {
    let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
    (dx * dx + dy * dy).sqrt()
}

/// The point at a share of the way.
pub(super) fn between(a: Point, b: Point, share: f64) -> Point {
    [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]
}

/// The shares of the way from `from` to `to`, and of the side, at which they cross in plan.
fn crossing(from: Point, to: Point, (a, b): (Point, Point)) -> Option<(f64, f64)> {
    let (d, s) = ([to[0] - from[0], to[1] - from[1]], [b[0] - a[0], b[1] - a[1]]);
    let turn = d[0] * s[1] - d[1] * s[0];
    // Along a line nothing is crossed.
    if turn.abs() <= 1e-12 * plan(from, to) * plan(a, b) {
        return None;
    }
    let o = [a[0] - from[0], a[1] - from[1]];
    let (on_way, on_side) = ((o[0] * s[1] - o[1] * s[0]) / turn, (o[0] * d[1] - o[1] * d[0]) / turn);
    let unit = 0.0..=1.0;
    (unit.contains(&on_way) && unit.contains(&on_side)).then_some((on_way, on_side))
}

/// Whether a ray in air from the eye to a place on the surface is free, and which panel it passes above the water.
pub(super) fn air(view: &View<'_>, enters: Point) -> Option<Option<usize>> {
    let level = |share: f64| view.eye_level + (view.water - view.eye_level) * share;
    let mut by = None;
    for (i, panel) in view.panels.iter().enumerate() {
        for side in panel.line.windows(2) {
            let Some((share, _)) = crossing(view.eye, enters, (side[0], side[1])) else { continue };
            let z = level(share);
            // Under a panel's sill stands what carries it.
            if z < panel.sill - TOUCH {
                return None;
            }
            if z <= panel.head + TOUCH {
                by = Some((i, side));
            }
        }
    }
    let free = match by {
        Some((i, side)) => {
            let panel = &view.panels[i];
            fronts_free(view, enters, view.water, Some((panel, (side[0], side[1]))))
        }
        None => fronts_free(view, enters, view.water, None) && over_the_rim(view, enters),
    };
    free.then_some(by.map(|(i, _)| i))
}

/// Whether a ray in air from the eye to a place on a panel is free.
pub(super) fn air_to_panel(
    view: &View<'_>,
    panel: &Panel,
    side: (Point, Point),
    (enters, z): (Point, f64),
) -> bool {
    fronts_free(view, enters, z, Some((panel, side)))
}

/// Whether no front hides the ray. A front the panel is let into is open where the ray keeps within the opening.
fn fronts_free(view: &View<'_>, to: Point, to_level: f64, by: Option<(&Panel, (Point, Point))>) -> bool {
    let level = |share: f64| view.eye_level + (to_level - view.eye_level) * share;
    view.fronts.iter().enumerate().all(|(i, front)| {
        front.line.windows(2).all(|side| {
            let Some((share, _)) = crossing(view.eye, to, (side[0], side[1])) else { return true };
            let z = level(share);
            let open = by.is_some_and(|(panel, (a, b))| {
                let along = off(a, b, between(view.eye, to, share)).along;
                panel.let_into.contains(&i)
                    && (panel.sill - TOUCH..=panel.head + TOUCH).contains(&z)
                    && (-TOUCH..=plan(a, b) + TOUCH).contains(&along)
            });
            open || z >= front.opaque_to - TOUCH
        })
    })
}

/// Whether the ray comes over the rim of the pool.
fn over_the_rim(view: &View<'_>, enters: Point) -> bool {
    let level = |share: f64| view.eye_level + (view.water - view.eye_level) * share;
    let sides = view.bed.pool().sides();
    sides
        .filter_map(|side| crossing(view.eye, enters, side))
        .all(|(share, _)| level(share) >= view.rim - TOUCH)
}

/// Whether a ray in water runs clear of the bed: between two sides of its pieces a stepped bed is level, so the lower end
/// of each stretch decides; on slopes its middle does, which is exact where the stretch ends on the bed.
pub(super) fn wet(bed: &Bed, (from, from_level): (Point, f64), (to, to_level): (Point, f64)) -> bool {
    let mut shares: Vec<f64> = bed.sides().filter_map(|side| crossing(from, to, side)).map(|c| c.0).collect();
    shares.push(0.0);
    shares.push(1.0);
    shares.sort_unstable_by(f64::total_cmp);
    let level = |share: f64| from_level + (to_level - from_level) * share;
    shares.windows(2).filter(|s| (s[1] - s[0]) * plan(from, to) > 1e-6).all(|s| {
        let middle = 0.5 * (s[0] + s[1]);
        let Some(bed_level) = bed.level_at(between(from, to, middle)) else { return false };
        let lower = if bed.is_stepped() { level(s[0]).min(level(s[1])) } else { level(middle) };
        lower >= bed_level - TOUCH
    })
}
