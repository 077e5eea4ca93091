//! Water: density, viscosity and vapour pressure against the reference equations of another program.

use haulout_quantity::Basis::{self, Published};

use super::{Row, sheet};

const DENSITY: (&str, Basis) = ("CoolProp 8.0.0, PropsSI('D', 'T', T, 'P', 101325, 'Water')", Published);
const VISCOSITY: (&str, Basis) = ("CoolProp 8.0.0, PropsSI('V', 'T', T, 'P', 101325, 'Water')", Published);
const BOTH: (&str, Basis) = ("CoolProp 8.0.0, V / D at 298.15 K and 101325 Pa", Published);

const fn density(what: &'static str, given: &'static [f64], expected: f64) -> Row {
    sheet("density of water", what, DENSITY, given, (expected, "kg/m3", 1e-6))
}

const fn viscosity(what: &'static str, given: &'static [f64], expected: f64) -> Row {
    sheet("dynamic viscosity of water", what, VISCOSITY, given, (expected, "Pa s", 1e-4))
}

pub(super) const ROWS: &[Row] = &[
    density("5 °C", &[278.15], 999.9666335452431),
    density("10 °C", &[283.15], 999.7024701877261),
    density("18 °C", &[291.15], 998.5986331523337),
    density("25 °C", &[298.15], 997.047636760347),
    density("28 °C", &[301.15], 996.2359516306046),
    density("32 °C", &[305.15], 995.0281229151054),
    density("38 °C", &[311.15], 992.9662639411428),
    viscosity("5 °C", &[278.15], 0.001518172849561915),
    viscosity("10 °C", &[283.15], 0.0013058996603511062),
    viscosity("18 °C", &[291.15], 0.0010526742272341729),
    viscosity("25 °C", &[298.15], 0.0008900224890776964),
    viscosity("28 °C", &[301.15], 0.0008323778161752508),
    viscosity("32 °C", &[305.15], 0.000764406834596085),
    viscosity("38 °C", &[311.15], 0.0006780421144946759),
    sheet(
        "kinematic viscosity",
        "25 °C",
        BOTH,
        &[0.0008900224890776964, 997.047636760347],
        (8.926579395640497e-7, "m2/s", 1e-12),
    ),
];
