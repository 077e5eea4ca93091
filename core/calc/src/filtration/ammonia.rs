//! Ammonia in the water: its un-ionised share by pH and temperature.

use haulout_quantity::si::{MassDensity, Ratio, ThermodynamicTemperature};
use haulout_quantity::{Basis, Measure};

use super::closed;
use crate::formula::{Formula, Refusal};

/// Share of total ammonia that is un-ionised in fresh water.
pub static FREE_AMMONIA_SHARE: Formula<(Ratio, ThermodynamicTemperature), Ratio> = Formula {
    card: &closed(
        "un-ionised share of ammonia",
        "f",
        "1 / (1 + 10^(0.09018 + 2729.92 K / T - pH))",
        &["pH", "T"],
        (Basis::Recalled, "Emerson, Russo, Lund and Thurston (1975), J. Fish. Res. Board Can. 32, 2379"),
        "fresh water of 0 to 30 °C and a little over, pH 6 to 10",
    ),
    run: |(ph, temperature)| {
        let t = temperature.value;
        if !(273.0..=313.15).contains(&t) {
            let celsius = t - 273.15;
            return Err(Refusal::new(format!(
                "the un-ionised share of ammonia is known from 0 to 40 °C, and the water has {celsius:.1} °C"
            )));
        }
        let exponent = 0.090_18 + 2_729.92 / t - ph.value;
        Ok(Ratio::from_si(1.0 / (1.0 + libm::pow(10.0, exponent))))
    },
};

/// Un-ionised ammonia, as nitrogen, of a total as nitrogen.
pub static FREE_AMMONIA: Formula<(Ratio, MassDensity), MassDensity> = Formula {
    card: &closed(
        "un-ionised ammonia",
        "c_NH3",
        "f × c_TAN",
        &["f", "c_TAN"],
        (Basis::Published, "definition; both as nitrogen"),
        "total ammonia as nitrogen, not as NH3",
    ),
    run: |(share, total)| Ok(share * total),
};
