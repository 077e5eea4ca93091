//! Numbers: shares, angles and the turbidity, which the dimension alone does not tell apart.

use super::neutral;
use crate::{Dimension as D, Kind, Unit};

pub(super) const UNITS: &[Unit] = &[
    // What a bare number is in; it has no symbol.
    neutral("", &[], D::NUMBER, (1.0, 1.0)),
    neutral("%", &["percent", "per cent", "% RH"], D::NUMBER, (1.0, 1e2)),
    // π/180 is irrational: the factor is the nearest f64.
    neutral("deg", &["°"], D::NUMBER, (std::f64::consts::PI, 180.0)).of_kind(Kind::Angle),
    neutral("rad", &[], D::NUMBER, (1.0, 1.0)).of_kind(Kind::Angle),
    neutral("NTU", &["FNU"], D::NUMBER, (1.0, 1.0)).of_kind(Kind::Turbidity),
];
