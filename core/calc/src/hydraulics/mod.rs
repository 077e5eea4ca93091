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
    Err(Refusal::new(format!("{what} is {value} in SI units, but the formula needs a number above zero")))
}

/// The value, if it is a finite number not below zero.
pub(crate) fn not_below_zero(value: f64, what: &str) -> Result<f64, Refusal> {
    if value >= 0.0 && value.is_finite() {
        return Ok(value);
    }
    Err(Refusal::new(format!("{what} is {value} in SI units, but the formula needs zero or more")))
}

/// The value, if it is a finite number.
pub(crate) fn finite(value: f64, what: &str) -> Result<f64, Refusal> {
    if value.is_finite() {
        return Ok(value);
    }
    Err(Refusal::new(format!("{what} is {value}, which is not a number to work with")))
}
