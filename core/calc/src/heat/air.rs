//! Humid air at sea level as a mixture of ideal gases: vapour pressure, humidity ratio, density of its dry part.

use haulout_quantity::si::{MassDensity, Pressure, Ratio, ThermodynamicTemperature};
use haulout_quantity::{Basis, Measure};

use super::{AIR, closed};
use crate::formula::{Formula, Refusal};
use crate::hydraulics::above_zero;

const IDEAL: (Basis, &str) = (
    Basis::Reported,
    "ASHRAE Handbook of Fundamentals, psychrometrics, as PsychroLib 2.5.0 carries it: ideal gases, constants 0.621945 and 287.042 J/(kg K)",
);
const RANGE: &str =
    "air at 101 325 Pa, 0 to 45 °C; within 0.6 % of real air, whose vapour pressure is a little higher";

/// Pressure of the vapour in air of a relative humidity, of the pressure at saturation.
pub static PARTIAL_PRESSURE: Formula<(Ratio, Pressure), Pressure> = Formula {
    card: &closed(
        "vapour pressure of air",
        "p_a",
        "φ × p_s",
        &["φ", "p_s"],
        (Basis::Published, "definition of relative humidity"),
        RANGE,
    ),
    run: |(humidity, saturation)| Ok(humidity * saturation),
};

/// Water in a kilogram of dry air.
pub static HUMIDITY_RATIO: Formula<(Pressure,), Ratio> = Formula {
    card: &closed("humidity ratio", "W", "0.621945 × p_v / (101325 Pa - p_v)", &["p_v"], IDEAL, RANGE),
    run: |(vapour,)| {
        let dry = above_zero(AIR - vapour.value, "the pressure of the dry air")?;
        Ok(Ratio::from_si(0.621_945 * vapour.value / dry))
    },
};

/// Dry air in a volume of humid air: one over the specific volume of the trade.
pub static DRY_AIR_DENSITY: Formula<(Pressure, ThermodynamicTemperature), MassDensity> = Formula {
    card: &closed(
        "dry air in humid air",
        "ρ_a",
        "(101325 Pa - p_v) / T × 1 K / 287.042 J × 1 kg",
        &["p_v", "T"],
        IDEAL,
        RANGE,
    ),
    run: |(vapour, temperature)| {
        let t = temperature.value;
        if !(273.15 - 1e-6..=318.15 + 1e-6).contains(&t) {
            let celsius = t - 273.15;
            return Err(Refusal::new(format!(
                "humid air is worked out here from 0 to 45 °C, and this has {celsius:.1} °C"
            )));
        }
        Ok(MassDensity::from_si((AIR - vapour.value) / (287.042 * t)))
    },
};
