//! Intakes: the velocity at the grille, and the force that holds an animal on a blocked one.

use haulout_quantity::Basis;
use haulout_quantity::si::{Area, Force, Length, MassDensity, Ratio, Velocity, VolumeRate};
use uom::si::acceleration::meter_per_second_squared;
use uom::si::f64::Acceleration;

use super::{G, above_zero};
use crate::formula::{Formula, FormulaCard, Kind};

/// Mean velocity at the face of a grille of which a share is still open.
pub static APPROACH_VELOCITY: Formula<(VolumeRate, Area, Ratio), Velocity> = Formula {
    card: &FormulaCard {
        name: "velocity at the grille",
        result: "v",
        text: "Q / (A × s)",
        symbols: &["Q", "A", "s"],
        kind: Kind::Closed,
        basis: Basis::Reported,
        source: "continuity, with the net area that leaves framing out: NMFS pump intake screen criteria (addendum), as reproduced by a university page",
        range: "flow normal to the face, spread evenly over it",
    },
    run: |(flow, area, open)| {
        above_zero(area.value * open.value, "the open area of the grille")?;
        Ok(flow / (area * open))
    },
};

/// Force on something that seals a grille: the head behind it acts on the whole net area.
pub static HOLDING_FORCE: Formula<(MassDensity, Length, Area), Force> = Formula {
    card: &FormulaCard {
        name: "holding force of a blocked grille",
        result: "F",
        text: "ρ × 9.80665 m/s2 × h × A",
        symbols: &["ρ", "h", "A"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "hydrostatic pressure on an area",
        range: "a grille sealed over its whole face",
    },
    run: |(density, head, area)| {
        let g: Acceleration = Acceleration::new::<meter_per_second_squared>(G);
        Ok(density * g * head * area)
    },
};

#[cfg(test)]
mod tests {
    use haulout_quantity::Measure;
    use haulout_quantity::si::{Area, Length, MassDensity, Ratio, VolumeRate};

    use super::{APPROACH_VELOCITY, HOLDING_FORCE};

    /// 10 m³/h through 0.0455672 m² is the 0.2 ft/s (0.06096 m/s) of the passive screen criterion of NMFS.
    #[test]
    fn the_passive_screen_criterion_comes_out() {
        let flow = VolumeRate::from_si(10.0 / 3600.0);
        let v = APPROACH_VELOCITY
            .work((flow, Area::from_si(0.045_567_2), Ratio::from_si(1.0)))
            .expect("in range");
        assert!((v.si() - 0.060_96).abs() < 1e-7, "{}", v.si());
    }

    /// California Fish and Game screen criteria 2000: 1 ft³/s at 0.33 ft/s wants 3.0 ft² (3.03 exactly).
    #[test]
    fn the_example_of_the_screening_criteria_comes_out() {
        let (flow, area) = (VolumeRate::from_si(0.028_316_846_592), Area::from_si(3.030_303 * 0.092_903_04));
        let v = APPROACH_VELOCITY.work((flow, area, Ratio::from_si(1.0))).expect("in range");
        assert!((v.si() - 0.33 * 0.3048).abs() < 1e-7);
    }

    /// By hand: 1000 kg/m³ × 9.80665 m/s² × 3 m × (0.25 m)² = 1838.7 N.
    #[test]
    fn a_quarter_metre_grille_at_three_metres_holds_with_1_84_kilonewtons() {
        let area = Area::from_si(0.0625);
        let force =
            HOLDING_FORCE.work((MassDensity::from_si(1000.0), Length::from_si(3.0), area)).expect("in range");
        assert!((force.si() - 1_838.746_875).abs() < 1e-6);
    }

    #[test]
    fn a_grille_without_area_is_refused() {
        assert!(
            APPROACH_VELOCITY
                .work((VolumeRate::from_si(1.0), Area::from_si(0.0), Ratio::from_si(1.0)))
                .is_err()
        );
    }
}
