//! Heat that leaves a pool through layers, through its surface, and with the water that is renewed.

use haulout_quantity::Measure;
use haulout_quantity::si::{
    Area, HeatTransfer, Length, MassDensity, Power, Ratio, ThermalConductivity, ThermodynamicTemperature,
    VolumeRate,
};

use super::{BALANCE, closed, over};
use crate::formula::Formula;
use crate::hydraulics::{above_zero, finite};

/// What a layer lets through.
pub static LAYER: Formula<(ThermalConductivity, Length), HeatTransfer> = Formula {
    card: &closed("heat through a layer", "U", "λ / t", &["λ", "t"], BALANCE, "a layer that is evenly thick"),
    run: |(conductivity, thickness)| {
        let t = above_zero(thickness.value, "the thickness of the layer")?;
        Ok(HeatTransfer::from_si(conductivity.value / t))
    },
};

/// Layers one behind the other: one over the sum of their resistances.
///
/// # Errors
/// A refusal where one of them lets nothing through, or where there is none.
pub fn in_series(layers: &[HeatTransfer]) -> Result<HeatTransfer, crate::formula::Refusal> {
    let mut resistance = 0.0;
    for layer in layers {
        resistance += 1.0 / above_zero(layer.value, "what a layer lets through")?;
    }
    Ok(HeatTransfer::from_si(1.0 / above_zero(resistance, "the resistance of the layers")?))
}

/// Heat through a surface to what is colder; nothing is counted on where it is warmer.
pub static THROUGH: Formula<(HeatTransfer, Area, ThermodynamicTemperature, ThermodynamicTemperature), Power> =
    Formula {
        card: &closed(
            "heat through a surface",
            "P",
            "U × A × max(0 K, T - T_out)",
            &["U", "A", "T", "T_out"],
            BALANCE,
            "steady; heat that comes in is not counted on",
        ),
        run: |(through, area, inside, outside)| {
            let power = through.value * area.value * over(inside.value, outside.value);
            Ok(Power::from_si(finite(power, "the heat through the surface")?))
        },
    };

/// Heat that the renewed water takes: density, flow, specific heat in J/(kg K), pool and fill temperature.
pub static MAKE_UP: Formula<
    (MassDensity, VolumeRate, Ratio, ThermodynamicTemperature, ThermodynamicTemperature),
    Power,
> = Formula {
    card: &closed(
        "heat of the renewed water",
        "P_fill",
        "ρ × Q × c × max(0 K, T - T_fill) × 1 J / 1 kg / 1 K",
        &["ρ", "Q", "c", "T", "T_fill"],
        BALANCE,
        "renewal as an average over the day",
    ),
    run: |(density, flow, heat, warm, cold)| {
        let power = density.value * flow.value * heat.value * over(warm.value, cold.value);
        Ok(Power::from_si(finite(power, "the heat of the renewed water")?))
    },
};

/// Area of the walls of a pool: length of its bank, mean depth.
pub static WALLS: Formula<(Length, Length), Area> = Formula {
    card: &closed(
        "area of the walls",
        "A_w",
        "L × d",
        &["L", "d"],
        BALANCE,
        "as if the walls went down to the mean depth",
    ),
    run: |(around, depth)| Ok(around * depth),
};
