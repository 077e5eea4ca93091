//! What a still pool evaporates, by two published methods, and the heat that goes with it.

use haulout_quantity::si::{
    Area, MassDensity, MassRate, Power, Pressure, Ratio, ThermodynamicTemperature, Velocity,
};
use haulout_quantity::{Basis, Measure};

use super::{BALANCE, closed, over};
use crate::formula::Formula;
use crate::hydraulics::{above_zero, finite};

/// Evaporation of an indoor pool by area, activity factor, vapour pressure at the water and in the air.
pub static BY_ACTIVITY: Formula<(Area, Ratio, Pressure, Pressure), MassRate> = Formula {
    card: &closed(
        "evaporation by activity factor",
        "E_1",
        "A × F × max(0 Pa, p_w - p_a) × 0.00000004 kg/s / 1 m2 / 1 Pa",
        &["A", "F", "p_w", "p_a"],
        (
            Basis::Reported,
            "ASHRAE Handbook of HVAC Applications, natatoriums: 0.1 lb/h for a square foot and an inch of mercury, as a reference on energy in buildings gives it; 4e-5 kg/s for a square metre and a kilopascal from memory",
        ),
        "still air of 0.05 to 0.15 m/s over the water",
    ),
    run: |(area, factor, water, air)| {
        let rate = 4e-8 * area.value * factor.value * over(water.value, air.value);
        Ok(MassRate::from_si(finite(rate, "the evaporation")?))
    },
};

/// Area, dry air at the water and in the room, humidity ratios there, vapour pressures there.
type TwoAirs = (Area, MassDensity, MassDensity, Ratio, Ratio, Pressure, Pressure);

/// The same by the densities of the dry air at the water and in the room: area, ρ at the water and in the room, humidity ratios
/// there, vapour pressures there. The larger of free convection and of the faint draught of a room.
pub static BY_DENSITY: Formula<TwoAirs, MassRate> = Formula {
    card: &closed(
        "evaporation by density of the air",
        "E_2",
        "A × max(35 m/h × ρ_w × (max(0, ρ_r - ρ_w) / 1 kg/m3)^(1 / 3) × max(0, W_w - W_r), 0.00005 kg/h × max(0 Pa, p_w - p_a) / 1 m2 / 1 Pa)",
        &["A", "ρ_w", "ρ_r", "W_w", "W_r", "p_w", "p_a"],
        (
            Basis::Reported,
            "M. M. Shah, unoccupied pools (ASHRAE Transactions 120(2), 2014; HPAC October 2011): 35 fits every row of the tables that others print of it",
        ),
        "still, unoccupied indoor pools",
    ),
    run: |(area, at_water, in_room, wet, room, water, air)| {
        let lift = libm::cbrt(over(in_room.value, at_water.value));
        let free = 35.0 * at_water.value * lift * over(wet.value, room.value);
        let draught = 5e-5 * over(water.value, air.value);
        let rate = area.value * free.max(draught) / 3600.0;
        Ok(MassRate::from_si(finite(rate, "the evaporation")?))
    },
};

/// What is left of it where leaves or lids cover a share of the surface.
pub static UNDER_COVER: Formula<(MassRate, Ratio), MassRate> = Formula {
    card: &closed(
        "evaporation of the open surface",
        "E_open",
        "E × (1 - c)",
        &["E", "c"],
        (Basis::Published, "arithmetic"),
        "what is covered evaporates nothing",
    ),
    run: |(rate, cover)| Ok((Ratio::from_si(1.0) - cover) * rate),
};

/// With the factor that the file states for falls and spray.
pub static WITH_FALLS: Formula<(MassRate, Ratio), MassRate> = Formula {
    card: &closed(
        "evaporation with falls and spray",
        "E_all",
        "k × E",
        &["E", "k"],
        (Basis::CommonPractice, "falls, sprays and mist commonly double what a still surface loses"),
        "a factor that somebody stands for",
    ),
    run: |(rate, factor)| Ok(factor * rate),
};

/// Heat that leaves with it.
pub static HEAT_OF_EVAPORATION: Formula<(MassRate, ThermodynamicTemperature), Power> = Formula {
    card: &closed(
        "heat of evaporation",
        "P_e",
        "E × (2500900 J / 1 kg - 2368 J × (T - 273.15 K) / 1 K / 1 kg)",
        &["E", "T"],
        (Basis::CommonPractice, "straight line through the latent heat of water, 10 to 40 °C"),
        "within 1e-4 of CoolProp 8.0.0 from 10 to 40 °C",
    ),
    run: |(rate, temperature)| {
        let latent = 2_500_900.0 - 2_368.0 * (temperature.value - 273.15);
        Ok(Power::from_si(finite(rate.value * latent, "the heat of evaporation")?))
    },
};

/// How fast the level falls by it.
pub static FALL_BY_EVAPORATION: Formula<(MassRate, MassDensity, Area), Velocity> = Formula {
    card: &closed("fall by evaporation", "e", "E / (ρ × A)", &["E", "ρ", "A"], BALANCE, "sheer sides"),
    run: |(rate, density, area)| {
        let under = above_zero(density.value * area.value, "the water surface")?;
        Ok(Velocity::from_si(rate.value / under))
    },
};

/// Fall of a standing pool beyond which it leaks: the evaporation at its most, and what liners and reading are allowed.
pub static FALL_OF_A_LEAK: Formula<(Velocity, Velocity), Velocity> = Formula {
    card: &closed(
        "fall beyond which a pool leaks",
        "e_max",
        "e + a",
        &["e", "a"],
        (
            Basis::CommonPractice,
            "a pool that falls by more than evaporation and a margin leaks; no single source",
        ),
        "everything stopped",
    ),
    run: |(evaporated, allowed)| Ok(evaporated + allowed),
};
