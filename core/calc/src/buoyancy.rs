//! What floats: how deep a raft sits, and how far an edge goes down when everything on it crowds there.
//!
//! A raft is taken as wall-sided with its deck as the waterplane and turns about an axis through the middle of the
//! waterplane, along the loaded edge. Its small heave of stability by weight is left out: a raft's metacentre stands
//! metres above its deck.

use haulout_quantity::Basis;
use haulout_quantity::si::{Area, Length, Mass, MassDensity};

use crate::formula::{Formula, FormulaCard, Kind, Refusal};
use crate::geometry::{Outline, Point};
use crate::zero::crossing;

/// How deep a load sinks a raft that stays level.
pub static SINKAGE: Formula<(Mass, MassDensity, Area), Length> = Formula {
    card: &FormulaCard {
        name: "sinkage of a level raft",
        result: "s",
        text: "m / (rho × A)",
        symbols: &["m", "rho", "A"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "Archimedes' principle",
        range: "wall-sided rafts that stay level",
    },
    run: |(mass, density, area)| {
        if area.value > 0.0 {
            Ok(mass / (density * area))
        } else {
            Err(Refusal::new("a float without a waterplane carries nothing; draw its outline"))
        }
    },
};

/// A raft and what stands on it, in SI.
#[derive(Debug, Clone, Copy)]
pub struct Laden<'o> {
    /// The waterplane.
    pub outline: &'o Outline,
    /// Mass of the raft.
    pub own: f64,
    /// Mass of all that stands on it.
    pub load: f64,
    /// How far in from the edge the middle of the load lies at least.
    pub inset: f64,
    /// Density of the water.
    pub density: f64,
}

/// Depth of the raft's bottom below the water at the worst edge with the whole load there, metres.
///
/// While no part of the bottom leaves the water this is the waterplane formula
/// `W / rho × (1 / A + e × t / I)`; beyond that the bottom that is still wet carries all, as soil carries a footing
/// that lifts on one side.
///
/// # Errors
/// A [`Refusal`] where there is no waterplane or nothing to float.
pub fn edge_draught(raft: &Laden<'_>) -> Result<f64, Refusal> {
    let sides = raft.outline.sides().filter_map(|(a, b)| {
        let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
        let size = (dx * dx + dy * dy).sqrt();
        (size > 0.0).then(|| [dy / size, -dx / size])
    });
    let draughts = sides.map(|normal| towards(raft, normal));
    let deepest = draughts.reduce(|a, b| if b > a || b.is_nan() { b } else { a });
    deepest.filter(|d| d.is_finite()).ok_or_else(|| {
        Refusal::new(
            "the float has no waterplane to right itself by; draw its outline and state its own mass",
        )
    })
}

/// Area, first and second moment about a line of the part of the waterplane beyond it.
struct Part {
    area: f64,
    first: f64,
    second: f64,
}

/// Depth at the edge that lies farthest along `normal`.
fn towards(raft: &Laden<'_>, normal: Point) -> f64 {
    let centre = raft.outline.centroid();
    // Along the normal and across it, from the middle.
    let turned = |p: &Point| {
        let d = [p[0] - centre[0], p[1] - centre[1]];
        [d[0] * normal[0] + d[1] * normal[1], d[1] * normal[0] - d[0] * normal[1]]
    };
    let rings: Vec<Vec<Point>> = raft.outline.rings().map(|r| r.iter().map(turned).collect()).collect();
    let along = || rings.iter().flatten().map(|p| p[0]);
    let (far, near) = (along().fold(f64::NEG_INFINITY, f64::max), along().fold(f64::INFINITY, f64::min));
    let volume = (raft.own + raft.load) / raft.density;
    let arm = (far - raft.inset).max(0.0);
    let lever = raft.load * arm / (raft.own + raft.load);
    let whole = beyond(&rings, near);
    let about_the_middle = whole.second + near * (2.0 * whole.first + near * whole.area);
    let at = |t: f64| volume * (1.0 / whole.area + lever * t / about_the_middle);
    if at(near) >= 0.0 { at(far) } else { partly_dry(&rings, [near, far], lever, volume) }
}

/// Depth at the far edge when the near one hangs over the water: the line where the bottom leaves the water is where the
/// wet part's push stands under the weight.
fn partly_dry(rings: &[Vec<Point>], [near, far]: [f64; 2], lever: f64, volume: f64) -> f64 {
    let push = |line: f64| {
        let part = beyond(rings, line);
        (part.first, part.second + line * part.first)
    };
    // How far the push stands beyond the weight; as the line nears the edge, the push does too.
    let off = |line: f64| {
        let (size, moment) = push(line);
        if size > 0.0 { moment / size - lever } else { far - lever }
    };
    let line = crossing(off, (near, off(near)), (far, far - lever));
    let (size, _) = push(line);
    volume / size * (far - line)
}

/// The part of the rings beyond the line across at `line`, with its moments about that line: what closes the cut lies on
/// it and adds nothing. Holes count against it by their winding.
fn beyond(rings: &[Vec<Point>], line: f64) -> Part {
    let mut part = Part { area: 0.0, first: 0.0, second: 0.0 };
    for ring in rings {
        let mut from = ring[ring.len() - 1];
        for to in ring {
            let (wet, still_wet) = (from[0] >= line, to[0] >= line);
            let passes = [line, from[1] + (line - from[0]) / (to[0] - from[0]) * (to[1] - from[1])];
            if wet || still_wet {
                part.add(if wet { from } else { passes }, if still_wet { *to } else { passes }, line);
            }
            from = *to;
        }
    }
    part
}

impl Part {
    /// Adds what lies between a side and the line.
    fn add(&mut self, a: Point, b: Point, line: f64) {
        let (from, to) = (a[0] - line, b[0] - line);
        let cross = from * b[1] - to * a[1];
        self.area += cross / 2.0;
        self.first += cross * (from + to) / 6.0;
        self.second += cross * (from * from + from * to + to * to) / 12.0;
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::geometry::{circle, rectangle};
    use haulout_quantity::Measure;

    const WATER: f64 = 1000.0;

    fn draught(outline: &Outline, own: f64, load: f64, inset: f64) -> f64 {
        edge_draught(&Laden { outline, own, load, inset, density: WATER }).expect("it floats")
    }

    fn raft() -> Outline {
        rectangle([3.5, 3.3], [0.9, 0.6], 0.0, 0.0).expect("a rectangle")
    }

    fn near(found: f64, wanted: f64) {
        assert!((found - wanted).abs() < 1e-9, "{found} and {wanted}");
    }

    /// By hand: 12 kg on 0.9 × 0.6 m of water, 12 / (1000 × 0.54) = 0.0222 m.
    #[test]
    fn twelve_kilograms_sink_it_by_22_millimetres() {
        let found = SINKAGE.work((Mass::from_si(12.0), MassDensity::from_si(WATER), Area::from_si(0.54)));
        near(found.expect("it floats").value, 12.0 / 540.0);
        assert!(
            SINKAGE.work((Mass::from_si(12.0), MassDensity::from_si(WATER), Area::from_si(0.0))).is_err()
        );
    }

    /// The waterplane stiffness of a rectangle, I = L B³ / 12: a mass m on a raft of mass M, its middle e from the axis,
    /// puts the edge at (M + m) / (rho L B) + m e (B / 2) / (rho L B³ / 12). Here M = 30, m = 6, e = 0.30 across and 0.45
    /// along: both terms of the edge are 36 / 540 + 6 × 0.3 × 0.3 / (1000 × 0.9 × 0.6³ / 12) = 0.066667 + 0.033333.
    #[test]
    fn a_heavy_raft_heels_by_its_waterplane() {
        near(draught(&raft(), 30.0, 6.0, 0.0), 0.1);
        // Its middle a tenth in from the edge: across 6 × 0.2 × 0.3 / 16.2 = 0.022222, along 6 × 0.35 × 0.45 / 36.45 =
        // 0.025926, which is deeper.
        near(draught(&raft(), 30.0, 6.0, 0.1), 36.0 / 540.0 + 6.0 * 0.35 * 0.45 / 36.45);
    }

    /// At the edge of the kern, e = B / 6, the far side just touches the water and the edge stands twice as deep: a mass
    /// of 9 kg on a raft of 18 has e = 9 × 0.3 / 27 = 0.1 across; 2 × 27 / 540 = 0.1.
    #[test]
    fn at_the_edge_of_the_kern_it_is_twice_as_deep() {
        near(draught(&raft(), 18.0, 9.0, 0.0), 0.1);
    }

    /// Beyond it the printed footing that lifts on one side, q_max = 2 P / (3 L (B / 2 - e)): 12.1 kg at the edge of a
    /// raft of 6 kg, e = 12.1 × 0.3 / 18.1 across, 2 × 18.1 / (3 × 900 × (0.3 - e)) = 0.134819; along, the same with
    /// 600 and 0.45, gives 0.134819 too: both levers are the same share of their side.
    #[test]
    fn a_light_raft_lifts_its_far_side() {
        let e = 12.1 * 0.3 / 18.1;
        near(draught(&raft(), 6.0, 12.1, 0.0), 2.0 * 18.1 / (3.0 * 900.0 * (0.3 - e)));
        assert!((draught(&raft(), 6.0, 12.1, 0.0) - 0.134_819).abs() < 1e-6);
    }

    /// A round raft, I = pi r⁴ / 4: W / (rho pi r²) × (1 + 4 e / r), flattened to 5 mm.
    #[test]
    fn a_round_raft() {
        let round = circle([0.0, 0.0], 0.5).expect("a circle");
        let level = 22.0 / (WATER * std::f64::consts::PI * 0.25);
        let edge = level * (1.0 + 4.0 * (2.0 * 0.5 / 22.0) / 0.5);
        assert!((draught(&round, 20.0, 2.0, 0.0) / edge - 1.0).abs() < 0.02);
    }
}
