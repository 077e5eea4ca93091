//! How fast a mixed water warms and cools.

use haulout_quantity::Measure;
use haulout_quantity::si::{
    MassDensity, Power, Ratio, TemperatureInterval, ThermodynamicTemperature, Time, Volume, VolumeRate,
};

use super::{BALANCE, closed};
use crate::formula::{Formula, Refusal};
use crate::hydraulics::{above_zero, finite};

const NO_MORE: &str = "the heat goes into the water alone, evenly, and nothing else changes";

fn capacity(density: MassDensity, volume: Volume, heat: Ratio) -> Result<f64, Refusal> {
    above_zero(density.value * volume.value * heat.value, "the heat that warms the water by a kelvin")
}

/// Change of temperature by a power over a time: density, volume, specific heat in J/(kg K).
pub static CHANGE: Formula<(Power, Time, MassDensity, Volume, Ratio), TemperatureInterval> = Formula {
    card: &closed(
        "change of temperature",
        "dT",
        "P × t / (ρ × V × c × 1 J / 1 kg / 1 K)",
        &["P", "t", "ρ", "V", "c"],
        BALANCE,
        NO_MORE,
    ),
    run: |(power, time, density, volume, heat)| {
        let change = power.value * time.value / capacity(density, volume, heat)?;
        Ok(TemperatureInterval::from_si(finite(change, "the change of temperature")?))
    },
};

/// Temperature after a power has warmed the water over a time.
pub static WARMED: Formula<
    (ThermodynamicTemperature, Power, Time, MassDensity, Volume, Ratio),
    ThermodynamicTemperature,
> = Formula {
    card: &closed(
        "warmed water",
        "T_end",
        "T + P × t / (ρ × V × c × 1 J / 1 kg / 1 K)",
        &["T", "P", "t", "ρ", "V", "c"],
        BALANCE,
        NO_MORE,
    ),
    run: |(from, power, time, density, volume, heat)| {
        let change = power.value * time.value / capacity(density, volume, heat)?;
        Ok(ThermodynamicTemperature::from_si(from.value + finite(change, "the change of temperature")?))
    },
};

/// Time to cool from one temperature to another at a steady loss.
pub static COOLING_TIME: Formula<
    (ThermodynamicTemperature, ThermodynamicTemperature, Power, MassDensity, Volume, Ratio),
    Time,
> = Formula {
    card: &closed(
        "time to cool",
        "t",
        "max(0 K, T - T_end) × ρ × V × c / max(1 W, P) × 1 J / 1 kg / 1 K",
        &["T", "T_end", "P", "ρ", "V", "c"],
        BALANCE,
        "the loss stays as large as at the start, so that the time is rather too short; under 1 W it counts as 1 W",
    ),
    run: |(from, to, loss, density, volume, heat)| {
        let stored = (from.value - to.value).max(0.0) * capacity(density, volume, heat)?;
        Ok(Time::from_si(finite(stored / loss.value.max(1.0), "the time to cool")?))
    },
};

/// Temperature after a fill has run into a full pool for a time and as much has left it mixed.
pub static AFTER_FILL: Formula<
    (ThermodynamicTemperature, ThermodynamicTemperature, VolumeRate, Time, Volume),
    ThermodynamicTemperature,
> = Formula {
    card: &closed(
        "temperature after a fill",
        "T_after",
        "T_fill + (T - T_fill) × exp(-Q × t / V)",
        &["T", "T_fill", "Q", "t", "V"],
        BALANCE,
        "mixed water, level held by the overflow, heater off",
    ),
    run: |(before, fill, flow, time, volume)| {
        let share = libm::exp(-flow.value * time.value / above_zero(volume.value, "the volume")?);
        Ok(ThermodynamicTemperature::from_si(fill.value + (before.value - fill.value) * share))
    },
};
