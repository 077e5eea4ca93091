//! Lengths, areas, volumes, and what is counted by them.

use super::{FT2_E8, FT3_E12, GAL_UK_E8, GAL_US_E12, metric, us};
use crate::{Dimension as D, Unit};

pub(super) const UNITS: &[Unit] = &[
    metric("m", &[], D::LENGTH, (1.0, 1.0)),
    metric("mm", &[], D::LENGTH, (1.0, 1e3)),
    metric("cm", &[], D::LENGTH, (1.0, 1e2)),
    metric("km", &[], D::LENGTH, (1e3, 1.0)),
    metric("um", &["micron"], D::LENGTH, (1.0, 1e6)),
    metric("nm", &[], D::LENGTH, (1.0, 1e9)),
    us("ft", &["'"], D::LENGTH, (3048.0, 1e4)),
    us("in", &["\""], D::LENGTH, (254.0, 1e4)),
    us("yd", &[], D::LENGTH, (9144.0, 1e4)),
    us("mil", &[], D::LENGTH, (254.0, 1e7)),
    metric("m2", &["sq m"], D::AREA, (1.0, 1.0)),
    metric("mm2", &[], D::AREA, (1.0, 1e6)),
    metric("cm2", &[], D::AREA, (1.0, 1e4)),
    us("ft2", &["sq ft", "sqft"], D::AREA, (FT2_E8, 1e8)),
    us("in2", &["sq in"], D::AREA, (64516.0, 1e8)),
    us("yd2", &["sq yd"], D::AREA, (83_612_736.0, 1e8)),
    metric("m3", &["cu m"], D::VOLUME, (1.0, 1.0)),
    metric("L", &["dm3"], D::VOLUME, (1.0, 1e3)),
    metric("mL", &["ml", "cm3"], D::VOLUME, (1.0, 1e6)),
    us("ft3", &["cu ft", "cuft"], D::VOLUME, (FT3_E12, 1e12)),
    us("in3", &["cu in"], D::VOLUME, (16_387_064.0, 1e12)),
    us("yd3", &["cu yd"], D::VOLUME, (764_554_857_984.0, 1e12)),
    us("gal(US)", &[], D::VOLUME, (GAL_US_E12, 1e12)),
    us("gal(UK)", &[], D::VOLUME, (GAL_UK_E8, 1e8)),
    // A quart is a quarter, a fluid ounce a 128th of the US gallon.
    us("qt(US)", &[], D::VOLUME, (GAL_US_E12, 4e12)),
    us("fl oz(US)", &["floz(US)"], D::VOLUME, (GAL_US_E12, 128e12)),
    metric("m2/m3", &["/m", "1/m"], D::AREA_PER_VOLUME, (1.0, 1.0)),
    us("ft2/ft3", &["/ft"], D::AREA_PER_VOLUME, (1e4, 3048.0)),
    metric("/m2", &[], D::PER_AREA, (1.0, 1.0)),
    us("/ft2", &[], D::PER_AREA, (1e8, FT2_E8)),
    metric("/m3", &[], D::PER_VOLUME, (1.0, 1.0)),
    metric("/L", &[], D::PER_VOLUME, (1e3, 1.0)),
    metric("m3/kg", &[], D::VOLUME_PER_MASS, (1.0, 1.0)),
    metric("L/kg", &[], D::VOLUME_PER_MASS, (1.0, 1e3)),
    us("gal(US)/lb", &[], D::VOLUME_PER_MASS, (GAL_US_E12, 453_592_370_000.0)),
];
