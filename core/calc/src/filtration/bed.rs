//! Beds that bacteria live on: surface of grains, the part of it that works, what it takes out at a temperature.

use haulout_quantity::si::{
    Area, Length, MassFlux, MassRate, Ratio, ReciprocalLength, ThermodynamicTemperature, Volume,
};
use haulout_quantity::{Basis, Measure};

use super::closed;
use crate::formula::{Formula, Refusal};
use crate::hydraulics::above_zero;

/// Surface of grains in a bulk volume: voids, grain.
pub static GRAIN_AREA: Formula<(Ratio, Length), ReciprocalLength> = Formula {
    card: &closed(
        "surface of grains in a bulk volume",
        "a",
        "6 × (1 - n) / d",
        &["n", "d"],
        (Basis::Published, "geometry of equal balls"),
        "clean grains of one size; of a range the larger grain, which has less surface",
    ),
    run: |(voids, grain)| {
        let d = above_zero(grain.value, "the grain")?;
        Ok(ReciprocalLength::from_si(6.0 * (1.0 - voids.value) / d))
    },
};

/// Surface of a layer: surface in a bulk volume, plan, thickness.
pub static LAYER_SURFACE: Formula<(ReciprocalLength, Area, Length), Area> = Formula {
    card: &closed(
        "surface of a layer",
        "S",
        "a × A × t",
        &["a", "A", "t"],
        (Basis::Published, "definition"),
        "a layer over the whole plan",
    ),
    run: |(specific, plan, thickness)| Ok(specific * plan * thickness),
};

/// Surface of media: surface in a bulk volume, bulk volume.
pub static MEDIA_SURFACE: Formula<(ReciprocalLength, Volume), Area> = Formula {
    card: &closed(
        "surface of media",
        "S",
        "a × V",
        &["a", "V"],
        (Basis::Published, "definition"),
        "clean media as their maker states them",
    ),
    run: |(specific, volume)| Ok(specific * volume),
};

/// The part of a surface that is wetted, fed with oxygen and not clogged.
pub static WORKING_SURFACE: Formula<(Area, Ratio), Area> = Formula {
    card: &closed(
        "surface that works",
        "S_w",
        "S × w",
        &["S", "w"],
        (Basis::CommonPractice, "builders of biological filters derate clean surfaces"),
        "beds in service; clean surface alone never fails and says nothing",
    ),
    run: |(surface, share)| Ok(surface * share),
};

/// What a square metre takes out at a temperature, from what it takes out at 20 °C.
///
/// Activation energy of ammonia oxidisers of 68 kJ/mol.
pub static REMOVAL: Formula<(MassFlux, ThermodynamicTemperature), MassFlux> = Formula {
    card: &closed(
        "removal of nitrogen at a temperature",
        "r",
        "r_20 × exp(68000 K / 8.31 × (T - 293.15 K) / (T × 293.15 K))",
        &["r_20", "T"],
        (
            Basis::Published,
            "Vannecke and Volcke, appendix: activation energy of 68 kJ/mol for ammonia oxidisers, gas constant 8.31 J/(mol K)",
        ),
        "10 to 30 °C; growth of the bacteria, which a thick film follows less",
    ),
    run: |(at_20, temperature)| {
        let t = temperature.value;
        if !(283.15 - 1e-6..=306.15).contains(&t) {
            let celsius = t - 273.15;
            return Err(Refusal::new(format!(
                "what bacteria take out is known from 10 to 33 °C, and the water has {celsius:.1} °C"
            )));
        }
        let rise = 68_000.0 / 8.31 * (t - 293.15) / (t * 293.15);
        Ok(at_20 * libm::exp(rise))
    },
};

/// Surface that a load needs.
pub static SURFACE_NEEDED: Formula<(MassRate, MassFlux), Area> = Formula {
    card: &closed(
        "surface needed",
        "S_need",
        "N / r",
        &["N", "r"],
        (Basis::Published, "definition of the removal by area"),
        "the largest day's nitrogen",
    ),
    run: |(load, removal)| Ok(Area::from_si(load.value / above_zero(removal.value, "the removal by area")?)),
};
