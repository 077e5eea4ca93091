//! Times, rates, flows, velocities and accelerations.

use super::{FT2_E8, FT3_E12, GAL_UK_E8, GAL_US_E12, metric, neutral, us};
use crate::{Dimension as D, Unit};

const HOUR: f64 = 3600.0;
const DAY: f64 = 86_400.0;

pub(super) const UNITS: &[Unit] = &[
    neutral("s", &[], D::TIME, (1.0, 1.0)),
    neutral("ms", &[], D::TIME, (1.0, 1e3)),
    neutral("min", &[], D::TIME, (60.0, 1.0)),
    neutral("h", &[], D::TIME, (HOUR, 1.0)),
    neutral("d", &[], D::TIME, (DAY, 1.0)),
    neutral("wk", &[], D::TIME, (7.0 * DAY, 1.0)),
    // "a" for the year is left out: its length is a convention, and nobody in the trade writes it.
    neutral("/s", &[], D::FREQUENCY, (1.0, 1.0)),
    neutral("Hz", &[], D::FREQUENCY, (1.0, 1.0)),
    neutral("kHz", &[], D::FREQUENCY, (1e3, 1.0)),
    neutral("/min", &["rpm"], D::FREQUENCY, (1.0, 60.0)),
    neutral("/h", &["ACH"], D::FREQUENCY, (1.0, HOUR)),
    neutral("/d", &[], D::FREQUENCY, (1.0, DAY)),
    neutral("/wk", &[], D::FREQUENCY, (1.0, 7.0 * DAY)),
    metric("m3/h", &[], D::FLOW, (1.0, HOUR)),
    metric("m3/s", &[], D::FLOW, (1.0, 1.0)),
    metric("m3/min", &[], D::FLOW, (1.0, 60.0)),
    metric("m3/d", &[], D::FLOW, (1.0, DAY)),
    metric("L/s", &[], D::FLOW, (1.0, 1e3)),
    metric("L/min", &["LPM", "lpm"], D::FLOW, (1.0, 60e3)),
    metric("L/h", &[], D::FLOW, (1.0, HOUR * 1e3)),
    metric("L/d", &[], D::FLOW, (1.0, DAY * 1e3)),
    metric("mL/min", &["ml/min"], D::FLOW, (1.0, 60e6)),
    metric("mL/h", &["ml/h"], D::FLOW, (1.0, HOUR * 1e6)),
    us("gal(US)/min", &["gpm(US)"], D::FLOW, (GAL_US_E12, 60e12)),
    us("gal(US)/h", &["gph(US)"], D::FLOW, (GAL_US_E12, HOUR * 1e12)),
    us("gal(US)/d", &["gpd(US)"], D::FLOW, (GAL_US_E12, DAY * 1e12)),
    us("gal(UK)/min", &["gpm(UK)"], D::FLOW, (GAL_UK_E8, 60e8)),
    us("gal(UK)/h", &["gph(UK)"], D::FLOW, (GAL_UK_E8, HOUR * 1e8)),
    us("ft3/s", &["cfs"], D::FLOW, (FT3_E12, 1e12)),
    us("ft3/min", &["cfm", "CFM"], D::FLOW, (FT3_E12, 60e12)),
    us("ft3/h", &[], D::FLOW, (FT3_E12, HOUR * 1e12)),
    metric("m/s", &[], D::VELOCITY, (1.0, 1.0)),
    metric("mm/s", &[], D::VELOCITY, (1.0, 1e3)),
    metric("cm/s", &[], D::VELOCITY, (1.0, 1e2)),
    metric("m/min", &[], D::VELOCITY, (1.0, 60.0)),
    // A loading of a filter: the flow over its area is a velocity.
    metric("m/h", &["m3/(m2 h)", "m3/m2/h", "m3/h/m2"], D::VELOCITY, (1.0, HOUR)),
    metric("mm/h", &[], D::VELOCITY, (1.0, HOUR * 1e3)),
    metric("mm/d", &[], D::VELOCITY, (1.0, DAY * 1e3)),
    metric("km/h", &[], D::VELOCITY, (1e3, HOUR)),
    us("ft/s", &["fps"], D::VELOCITY, (3048.0, 1e4)),
    us("ft/min", &["fpm"], D::VELOCITY, (3048.0, 60e4)),
    us("ft/h", &[], D::VELOCITY, (3048.0, HOUR * 1e4)),
    us("in/h", &[], D::VELOCITY, (254.0, HOUR * 1e4)),
    us("gal(US)/(min ft2)", &["gal(US)/min/ft2", "gpm(US)/ft2"], D::VELOCITY, (GAL_US_E12, 60e4 * FT2_E8)),
    metric("m/s2", &[], D::ACCELERATION, (1.0, 1.0)),
    us("ft/s2", &[], D::ACCELERATION, (3048.0, 1e4)),
    metric("m2/s", &["m3/s/m", "m3/(s m)"], D::KINEMATIC_VISCOSITY, (1.0, 1.0)),
    metric("mm2/s", &["cSt"], D::KINEMATIC_VISCOSITY, (1.0, 1e6)),
    // The flow over a metre of weir has the dimension of a kinematic viscosity.
    metric("m3/h/m", &["m3/(h m)", "m2/h"], D::KINEMATIC_VISCOSITY, (1.0, HOUR)),
    metric("L/s/m", &["L/(s m)"], D::KINEMATIC_VISCOSITY, (1.0, 1e3)),
    metric("L/min/m", &["L/(min m)"], D::KINEMATIC_VISCOSITY, (1.0, 60e3)),
    us("ft2/s", &[], D::KINEMATIC_VISCOSITY, (FT2_E8, 1e8)),
    us("gal(US)/min/ft", &["gpm(US)/ft"], D::KINEMATIC_VISCOSITY, (GAL_US_E12, 60e8 * 3048.0)),
];
