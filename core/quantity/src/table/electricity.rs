//! Currents, voltages, conductivities and light.

use super::{FT2_E8, metric, neutral, us};
use crate::{Dimension as D, Unit};

pub(super) const UNITS: &[Unit] = &[
    neutral("A", &[], D::CURRENT, (1.0, 1.0)),
    neutral("mA", &[], D::CURRENT, (1.0, 1e3)),
    neutral("kA", &[], D::CURRENT, (1e3, 1.0)),
    neutral("V", &[], D::VOLTAGE, (1.0, 1.0)),
    neutral("mV", &[], D::VOLTAGE, (1.0, 1e3)),
    neutral("kV", &[], D::VOLTAGE, (1e3, 1.0)),
    neutral("ohm", &["Ω", "Ω"], D::RESISTANCE, (1.0, 1.0)),
    neutral("kohm", &["kΩ"], D::RESISTANCE, (1e3, 1.0)),
    neutral("Mohm", &["MΩ"], D::RESISTANCE, (1e6, 1.0)),
    metric("µS/cm", &[], D::CONDUCTIVITY, (1.0, 1e4)),
    metric("mS/cm", &[], D::CONDUCTIVITY, (1.0, 10.0)),
    metric("S/m", &[], D::CONDUCTIVITY, (1.0, 1.0)),
    neutral("lux", &["lx"], D::ILLUMINANCE, (1.0, 1.0)),
    neutral("klux", &["klx"], D::ILLUMINANCE, (1e3, 1.0)),
    // One lumen on a square foot.
    us("fc", &["footcandle"], D::ILLUMINANCE, (1e8, FT2_E8)),
    neutral("lm", &["lumen"], D::LUMINOUS_INTENSITY, (1.0, 1.0)),
    neutral("cd", &[], D::LUMINOUS_INTENSITY, (1.0, 1.0)),
    neutral("umol/m2/s", &["umol/(m2 s)"], D::PHOTON_FLUX, (1.0, 1e6)),
    neutral("mol/m2/d", &["mol/(m2 d)"], D::PHOTON_FLUX, (1.0, 86_400.0)),
    neutral("mol/m2/s", &["mol/(m2 s)"], D::PHOTON_FLUX, (1.0, 1.0)),
];
