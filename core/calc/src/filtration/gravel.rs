//! Water through and over beds that are fed from below: rise, loss of head, lips and notches.

use haulout_quantity::si::{Area, DynamicViscosity, Length, MassDensity, Ratio, Velocity, VolumeRate};
use haulout_quantity::{Basis, Measure};

use super::closed;
use crate::formula::Formula;
use crate::hydraulics::{G, above_zero, finite};

/// Rise of the water through a bed that is fed from below, over its whole plan.
pub static UP_FLOW: Formula<(VolumeRate, Area), Velocity> = Formula {
    card: &closed(
        "up-flow through the bed",
        "u",
        "Q / A",
        &["Q", "A"],
        (Basis::Published, "continuity"),
        "flow spread over the whole plan by a plenum",
    ),
    run: |(flow, area)| {
        Ok(Velocity::from_si(finite(flow.value / above_zero(area.value, "the plan area")?, "the up-flow")?))
    },
};

/// Loss of head in a clean layer: up-flow, thickness, voids, grain, viscosity, density.
pub static CLEAN_LOSS: Formula<(Velocity, Length, Ratio, Length, DynamicViscosity, MassDensity), Length> =
    Formula {
        card: &closed(
            "head lost in a clean layer",
            "h",
            "t × (150 × μ × (1 - n)^2 × u / (n^3 × d^2) + 1.75 × ρ × (1 - n) × u^2 / (n^3 × d)) / (ρ × 9.80665 m/s2)",
            &["u", "t", "n", "d", "μ", "ρ"],
            (Basis::Published, "Ergun (1952), Chem. Eng. Prog. 48, 89"),
            "clean grains of one size; of a range the smaller grain, which loses more",
        ),
        run: |(rise, thickness, voids, grain, viscosity, density)| {
            let n = above_zero(voids.value, "the share of voids")?;
            let d = above_zero(grain.value, "the grain")?;
            let (u, rho) = (rise.value, above_zero(density.value, "the density")?);
            let (solid, open) = (1.0 - n, n * n * n);
            let slow = 150.0 * viscosity.value * solid * solid * u / (open * d * d);
            let quick = 1.75 * rho * solid * u * u / (open * d);
            Ok(Length::from_si(finite(thickness.value * (slow + quick) / (rho * G), "the loss")?))
        },
    };
