//! Water in pipes: friction, fittings, devices, pump and system curves, and the duty point where they meet.

pub mod branches;
pub mod channel;
pub mod device;
pub mod duty;
pub mod fittings;
pub mod header;
pub mod intake;
pub mod mouth;
pub mod pipe;
pub mod pump;
pub mod smooth;
pub mod suction;
pub mod system;
pub mod turnover;
pub mod weir;

#[cfg(test)]
mod tests;

use crate::formula::Refusal;

/// Standard acceleration of free fall, m/s² (ISO 80000-3; CGPM 1901).
pub(crate) const G: f64 = 9.806_65;

/// The value, if it is a finite number above zero.
pub(crate) fn above_zero(value: f64, what: &str) -> Result<f64, Refusal> {
    if value > 0.0 && value.is_finite() {
        return Ok(value);
    }
    Err(Refusal::new(format!("{what}: {}; a number above zero is needed", said(value))))
}

/// The value, if it is a finite number not below zero.
pub(crate) fn not_below_zero(value: f64, what: &str) -> Result<f64, Refusal> {
    if value >= 0.0 && value.is_finite() {
        return Ok(value);
    }
    Err(Refusal::new(format!("{what}: {}; zero or more is needed", said(value))))
}

/// The value, if it is a finite number.
pub(crate) fn finite(value: f64, what: &str) -> Result<f64, Refusal> {
    if value.is_finite() {
        return Ok(value);
    }
    Err(Refusal::new(format!("{what}: {}", said(value))))
}

/// A number that cannot be worked with, without a unit: here it is SI, and whoever wrote the value used a unit of their own.
const fn said(value: f64) -> &'static str {
    match value {
        0.0 => "zero",
        _ if value < 0.0 => "below zero",
        _ => "too large, or no number",
    }
}
