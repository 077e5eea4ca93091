//! Arrivals: how long closed bags float until their water is as warm as the pool's, and how long waters are mixed.

use haulout_quantity::si::{Ratio, TemperatureInterval, ThermodynamicTemperature, Time, Volume};
use haulout_quantity::{Basis, Measure};

use crate::formula::{Formula, FormulaCard, Kind, Refusal};

const SOURCE: &str =
    "keepers' practice: bags float until the temperatures have met, then waters are mixed little by little";

/// Time for which a closed bag floats until all but 1 K of the difference is gone: volume of its water, its temperature, that
/// of the pool.
///
/// Newton's law of cooling: the bag floats half under water as a cube would, which gives 3 V^(2/3) of wetted film, and passes
/// 250 W/(m² K) between moving waters; with 3 L and 5 K it floats 22 minutes, where keepers wait 15 to 30. The factors 4186
/// J/(kg K) × 1000 kg/m³ / (250 W/(m² K) × 3) are drawn together as 5581 s/m.
pub static FLOAT: Formula<(Volume, ThermodynamicTemperature, ThermodynamicTemperature), Time> = Formula {
    card: &FormulaCard {
        name: "time for which a bag floats",
        result: "t",
        text: "5581 s/m × V^(1/3) × ln(max(1, max(T_bag - T_pool, T_pool - T_bag) / 1 K))",
        symbols: &["V", "T_bag", "T_pool"],
        kind: Kind::Construction,
        basis: Basis::CommonPractice,
        source: SOURCE,
        range: "closed bags of up to 50 L in moving water; the thermometer decides, not the clock",
    },
    run: |(volume, bag, pool)| {
        let litres = volume.value * 1000.0;
        if !(0.0..=50.0).contains(&litres) {
            return Err(Refusal::new(format!(
                "the time a bag floats is known up to 50 L, and it holds {litres:.0} L; measure its temperature instead"
            )));
        }
        let apart = (bag.value - pool.value).abs();
        Ok(Time::from_si(5581.0 * libm::cbrt(volume.value) * libm::log(apart.max(1.0))))
    },
};

/// Time in which waters are mixed: pH of the bag, pH of the pool.
pub static MIX: Formula<(Ratio, Ratio), Time> = Formula {
    card: &FormulaCard {
        name: "time in which waters are mixed",
        result: "t",
        text: "2 h × max(pH_bag - pH_pool, pH_pool - pH_bag)",
        symbols: &["pH_bag", "pH_pool"],
        kind: Kind::Construction,
        basis: Basis::CommonPractice,
        source: "keepers' practice: pH moves by no more than half a unit an hour",
        range: "fresh water between pH 5 and 9",
    },
    run: |(bag, pool)| Ok(Time::from_si(7200.0 * (bag.value - pool.value).abs())),
};

/// How far two waters are apart: temperature of the bag, of the pool.
pub static APART: Formula<(ThermodynamicTemperature, ThermodynamicTemperature), TemperatureInterval> =
    Formula {
        card: &FormulaCard {
            name: "difference of temperature of two waters",
            result: "ΔT",
            text: "max(T_bag - T_pool, T_pool - T_bag)",
            symbols: &["T_bag", "T_pool"],
            kind: Kind::Closed,
            basis: Basis::Published,
            source: "arithmetic",
            range: "any temperatures",
        },
        run: |(bag, pool)| Ok(TemperatureInterval::from_si((bag.value - pool.value).abs())),
    };
