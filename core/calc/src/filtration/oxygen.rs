//! Oxygen and alkalinity that nitrification uses, and how much oxygen water holds.

use haulout_quantity::si::{Area, MassDensity, MassRate, ThermodynamicTemperature, VolumeRate};
use haulout_quantity::{Basis, Measure};

use super::closed;
use crate::formula::{Formula, Refusal};
use crate::hydraulics::{above_zero, finite};

/// Oxygen that fresh water holds in contact with air at 101 325 Pa.
pub static OXYGEN_SATURATION: Formula<(ThermodynamicTemperature,), MassDensity> = Formula {
    card: &closed(
        "oxygen at saturation",
        "c_s",
        "0.001 kg/m3 × exp(-139.34411 + 157570.1 K / T - 66423080 × (1 K / T)^2 + 12438000000 × (1 K / T)^3 - 862194900000 × (1 K / T)^4)",
        &["T"],
        (
            Basis::Recalled,
            "Benson and Krause (1984), as in Standard Methods for the Examination of Water and Wastewater, 4500-O",
        ),
        "fresh water of 0 to 40 °C at sea level",
    ),
    run: |(temperature,)| {
        let t = temperature.value;
        if !(273.15 - 1e-6..=313.15 + 1e-6).contains(&t) {
            let celsius = t - 273.15;
            return Err(Refusal::new(format!(
                "oxygen at saturation is known from 0 to 40 °C, and the water has {celsius:.1} °C"
            )));
        }
        let x = 1.0 / t;
        let ln = -139.344_11 + 157_570.1 * x - 66_423_080.0 * x * x + 12_438_000_000.0 * x * x * x
            - 862_194_900_000.0 * x * x * x * x;
        Ok(MassDensity::from_si(0.001 * libm::exp(ln)))
    },
};

/// Oxygen that a flow can leave in a bed: flow, oxygen in it, oxygen at saturation, least oxygen that bacteria work at.
pub static OXYGEN_PASSED: Formula<(VolumeRate, MassDensity, MassDensity, MassDensity), MassRate> = Formula {
    card: &closed(
        "oxygen that the flow can leave in the bed",
        "O",
        "Q × (min(c, c_s) - c_min)",
        &["Q", "c", "c_s", "c_min"],
        super::BALANCE,
        "beds under water; what is stated over saturation is not believed",
    ),
    run: |(flow, stated, saturation, least)| {
        let inside = stated.value.min(saturation.value) - least.value;
        Ok(MassRate::from_si(finite(flow.value * inside, "the oxygen")?))
    },
};

/// Oxygen that a bed's part of the nitrogen asks for: nitrogen, surface of the bed that works, the same of all beds.
pub static OXYGEN_WANTED: Formula<(MassRate, Area, Area), MassRate> = Formula {
    card: &closed(
        "oxygen that nitrification asks for",
        "O_want",
        "4.57 × N × S_w / S_all",
        &["N", "S_w", "S_all"],
        (Basis::Published, "stoichiometry: 64 g of oxygen for 14.007 g of nitrogen, no growth"),
        "beds of one water share its nitrogen by the surface that works",
    ),
    run: |(nitrogen, own, all)| {
        let all = above_zero(all.value, "the working surface of all beds")?;
        Ok(MassRate::from_si(4.57 * nitrogen.value * own.value / all))
    },
};

/// Alkalinity that nitrification uses up, as calcium carbonate.
pub static ALKALINITY_USED: Formula<(MassRate,), MassRate> = Formula {
    card: &closed(
        "alkalinity used up",
        "B",
        "7.14 × N",
        &["N"],
        (
            Basis::Published,
            "stoichiometry: two equivalents for each nitrogen, 2 × 50.04 g of calcium carbonate for 14.007 g",
        ),
        "all nitrogen nitrified; 6.3 to 7.4 was measured on attached growth (EPA 1975)",
    ),
    run: |(nitrogen,)| Ok(7.14 * nitrogen),
};
