//! Masses, and masses by time, length, area and volume.

use super::{FT2_E8, metric, us};
use crate::{Dimension as D, Unit};

const DAY: f64 = 86_400.0;
/// Pound in 1e-8 kg, exactly.
const LB_E8: f64 = 45_359_237.0;

pub(super) const UNITS: &[Unit] = &[
    metric("kg", &[], D::MASS, (1.0, 1.0)),
    metric("g", &[], D::MASS, (1.0, 1e3)),
    metric("mg", &[], D::MASS, (1.0, 1e6)),
    metric("t", &[], D::MASS, (1e3, 1.0)),
    us("lb", &[], D::MASS, (LB_E8, 1e8)),
    us("oz", &[], D::MASS, (LB_E8, 16e8)),
    us("ton(US)", &[], D::MASS, (2000.0 * LB_E8, 1e8)),
    us("ton(UK)", &[], D::MASS, (2240.0 * LB_E8, 1e8)),
    metric("g/d", &[], D::MASS_FLOW, (1.0, DAY * 1e3)),
    metric("mg/d", &[], D::MASS_FLOW, (1.0, DAY * 1e6)),
    metric("kg/d", &[], D::MASS_FLOW, (1.0, DAY)),
    metric("g/wk", &[], D::MASS_FLOW, (1.0, 7.0 * DAY * 1e3)),
    metric("kg/wk", &[], D::MASS_FLOW, (1.0, 7.0 * DAY)),
    metric("g/h", &[], D::MASS_FLOW, (1.0, 3600e3)),
    metric("mg/h", &[], D::MASS_FLOW, (1.0, 3600e6)),
    metric("kg/h", &[], D::MASS_FLOW, (1.0, 3600.0)),
    metric("kg/s", &[], D::MASS_FLOW, (1.0, 1.0)),
    us("lb/d", &[], D::MASS_FLOW, (LB_E8, DAY * 1e8)),
    us("lb/h", &[], D::MASS_FLOW, (LB_E8, 3600e8)),
    us("oz/d", &[], D::MASS_FLOW, (LB_E8, DAY * 16e8)),
    metric("kg/m3", &["g/L"], D::DENSITY, (1.0, 1.0)),
    metric("g/cm3", &["kg/L", "t/m3"], D::DENSITY, (1e3, 1.0)),
    metric("g/m3", &[], D::DENSITY, (1.0, 1e3)),
    metric("mg/L", &["mg/l"], D::DENSITY, (1.0, 1e3)),
    metric("ug/L", &[], D::DENSITY, (1.0, 1e6)),
    us("lb/ft3", &[], D::DENSITY, (LB_E8 * 1e4, 28_316_846_592.0)),
    metric("kg/m2", &[], D::MASS_PER_AREA, (1.0, 1.0)),
    metric("g/m2", &["gsm"], D::MASS_PER_AREA, (1.0, 1e3)),
    us("lb/ft2", &[], D::MASS_PER_AREA, (LB_E8, FT2_E8)),
    us("oz/yd2", &[], D::MASS_PER_AREA, (LB_E8, 16.0 * 83_612_736.0)),
    metric("kg/m", &[], D::MASS_PER_LENGTH, (1.0, 1.0)),
    us("lb/ft", &[], D::MASS_PER_LENGTH, (LB_E8, 30_480_000.0)),
    metric("g/m2/d", &["g/(m2 d)"], D::MASS_FLUX, (1.0, DAY * 1e3)),
    metric("kg/m2/h", &["kg/(m2 h)"], D::MASS_FLUX, (1.0, 3600.0)),
    metric("g/m2/h", &["g/(m2 h)"], D::MASS_FLUX, (1.0, 3600e3)),
    metric("g/m3/d", &["g/(m3 d)"], D::MASS_FLOW_PER_VOLUME, (1.0, DAY * 1e3)),
    metric("mg/L/h", &["mg/(L h)", "g/m3/h"], D::MASS_FLOW_PER_VOLUME, (1.0, 3600e3)),
    metric("mg/L/d", &["mg/(L d)"], D::MASS_FLOW_PER_VOLUME, (1.0, DAY * 1e3)),
    metric("mol", &[], D::AMOUNT_OF_SUBSTANCE, (1.0, 1.0)),
    metric("mol/m3", &["mmol/L"], D::MOLAR_CONCENTRATION, (1.0, 1.0)),
    metric("mol/L", &[], D::MOLAR_CONCENTRATION, (1e3, 1.0)),
];
