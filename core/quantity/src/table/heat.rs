//! Temperatures, their differences, and the passage of heat.

use super::{BTU_E8, FT2_E8, metric, us};
use crate::{Dimension as D, Kind, Unit};

pub(super) const UNITS: &[Unit] = &[
    metric("°C", &["C", "degC", "deg C", "Celsius"], D::TEMPERATURE, (1.0, 1.0)).shifted(273.15),
    metric("K", &["kelvin"], D::TEMPERATURE, (1.0, 1.0)),
    us("°F", &["F", "degF", "deg F", "Fahrenheit"], D::TEMPERATURE, (5.0, 9.0)).shifted(459.67),
    // A kelvin is at once a temperature and a difference and never misleads; a difference in °F needs a word,
    // or "5 °F" on a page would be taken for a frost.
    us("°F difference", &["F difference", "°F diff"], D::TEMPERATURE, (5.0, 9.0)).of_kind(Kind::Difference),
    metric("W/(m K)", &["W/m/K", "W/mK"], D::THERMAL_CONDUCTIVITY, (1.0, 1.0)),
    us("Btu(IT)/(h ft °F)", &[], D::THERMAL_CONDUCTIVITY, (BTU_E8 * 9.0, 30_480_000.0 * 3600.0 * 5.0)),
    metric("W/(m2 K)", &["W/m2/K", "W/m2K"], D::HEAT_TRANSFER, (1.0, 1.0)),
    us("Btu(IT)/(h ft2 °F)", &[], D::HEAT_TRANSFER, (BTU_E8 * 9.0, FT2_E8 * 3600.0 * 5.0)),
    metric("J/(kg K)", &[], D::SPECIFIC_HEAT, (1.0, 1.0)),
    metric("kJ/(kg K)", &[], D::SPECIFIC_HEAT, (1e3, 1.0)),
    us("Btu(IT)/(lb °F)", &[], D::SPECIFIC_HEAT, (BTU_E8 * 9.0, 45_359_237.0 * 5.0)),
];
