//! Headers: how evenly a pipe with holes spreads its water, and the gap that parts a fill from a pool.

use haulout_quantity::si::{Length, Ratio, VolumeRate};
use haulout_quantity::{Basis, Measure};

use super::pipe::{friction_factor, relative_roughness};
use super::{G, above_zero};
use crate::formula::{Formula, FormulaCard, Kind};

/// Coefficient of a sharp-edged hole.
const CONTRACTION: f64 = 0.6;

/// Head lost in the holes of a header.
pub static HOLE_LOSS: Formula<(VolumeRate, Ratio, Length), Length> = Formula {
    card: &FormulaCard {
        name: "head lost in the holes of a header",
        result: "h_hole",
        text: "(Q / (0.6 × n × pi / 4 × d^2))^2 / (2 × 9.80665 m/s2)",
        symbols: &["Q", "n", "d"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "sharp-edged opening of coefficient 0.6",
        range: "holes alike, their water leaving freely or into still water",
    },
    run: |(flow, holes, bore)| {
        let d = above_zero(bore.value, "the bore of a hole")?;
        let n = above_zero(holes.value, "the number of holes")?;
        let v = flow.value / (CONTRACTION * n * std::f64::consts::FRAC_PI_4 * d * d);
        Ok(Length::from_si(v * v / (2.0 * G)))
    },
};

/// Head lost along a header that gives its water away evenly: a third of what it would lose with all of it.
pub static HEADER_LOSS: Formula<
    (VolumeRate, Length, Length, haulout_quantity::si::KinematicViscosity),
    Length,
> = Formula {
    card: &FormulaCard {
        name: "head lost along a header",
        result: "h_header",
        text: "a third of the friction head of the whole flow in its bore and length",
        symbols: &["Q", "D", "L", "ν"],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "the square of a flow that falls evenly to nothing, taken along the pipe, is a third; smooth pipe, Colebrook",
        range: "even outflow; what the slowing water regains is not counted",
    },
    run: |(flow, bore, length, viscosity)| {
        let d = above_zero(bore.value, "the bore of the header")?;
        let nu = above_zero(viscosity.value, "the kinematic viscosity")?;
        let v = flow.value / (std::f64::consts::FRAC_PI_4 * d * d);
        let wall = relative_roughness(Length::from_si(SMOOTH), bore)?;
        let re = above_zero(v * d / nu, "the Reynolds number of the header")?;
        let head = friction_factor(re, wall) * length.value / d * v * v / (2.0 * G);
        Ok(Length::from_si(head / 3.0))
    },
};

/// Roughness of smooth plastic pipe, metres.
const SMOOTH: f64 = 1.5e-6;

#[cfg(test)]
mod tests {
    use haulout_quantity::Measure;
    use haulout_quantity::si::{Length, Ratio, VolumeRate};

    use super::HOLE_LOSS;

    /// 40 holes of 8 mm: 2.01062e-3 m², so 1.8 L/s go at 1.4921 m/s: 1.4921² / 19.6133 = 0.11351 m.
    #[test]
    fn forty_holes() {
        let given = (VolumeRate::from_si(0.0018), Ratio::from_si(40.0), Length::from_si(0.008));
        assert!((HOLE_LOSS.work(given).expect("in range").si() - 0.113_51).abs() < 2e-5);
    }
}
