//! Suction head: what presses the water into a pump, and what the pump needs of it.

use haulout_quantity::Basis;
use haulout_quantity::Measure;
use haulout_quantity::si::{Length, MassDensity, Pressure};

use crate::formula::{Formula, FormulaCard, Kind};
use crate::hydraulics::above_zero;

const GRAVITY: f64 = 9.806_65;

/// What is listed: pressure of the air, pressure of vapour, density, level of the water, level of the eye, loss before the pump.
type Suction = (Pressure, Pressure, MassDensity, Length, Length, Length);

/// Net positive suction head available.
pub static NPSH_AVAILABLE: Formula<Suction, Length> = Formula {
    card: &FormulaCard {
        name: "net positive suction head available",
        result: "NPSH_A",
        text: "(p_air - p_v) / (ρ × 9.80665 m/s2) + z_water - z_eye - h",
        symbols: &["p_air", "p_v", "ρ", "z_water", "z_eye", "h"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "definition (ISO 17769-1); energy balance from the open surface to the inlet",
        range: "an open water surface; velocity head counted with the losses",
    },
    run: |(air, vapour, density, water, eye, loss)| {
        let weight = above_zero(density.value * GRAVITY, "the density of the water")?;
        Ok(Length::from_si((air.value - vapour.value) / weight + water.value - eye.value - loss.value))
    },
};

/// What is left when the pump has what it needs: available, required.
pub static NPSH_SPARE: Formula<(Length, Length), Length> = Formula {
    card: &FormulaCard {
        name: "suction head to spare",
        result: "ΔNPSH",
        text: "NPSH_A - NPSH_R",
        symbols: &["NPSH_A", "NPSH_R"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "definition",
        range: "both at one flow",
    },
    run: |(available, required)| Ok(available - required),
};
