//! One value with its unit, its basis and its source.

use haulout_quantity::{Basis, Dimension};

/// A value of the register.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Value {
    /// What it is, as in "shell height".
    pub what: &'static str,
    /// In SI.
    pub value: f64,
    /// The unit it is printed in.
    pub unit: &'static str,
    /// Its dimension.
    pub dimension: Dimension,
    /// How well it is known.
    pub basis: Basis,
    /// Where it stands.
    pub source: &'static str,
}

impl Value {
    /// A length in metres, printed in centimetres.
    pub const fn length(what: &'static str, value: f64, basis: Basis, source: &'static str) -> Self {
        Value { what, value, unit: "cm", dimension: Dimension::LENGTH, basis, source }
    }

    /// A temperature given in °C.
    pub const fn celsius(what: &'static str, value: f64, basis: Basis, source: &'static str) -> Self {
        Value { what, value: value + 273.15, unit: "°C", dimension: Dimension::TEMPERATURE, basis, source }
    }

    /// A mass in kilograms.
    pub const fn kilograms(what: &'static str, value: f64, basis: Basis, source: &'static str) -> Self {
        Value { what, value, unit: "kg", dimension: Dimension::MASS, basis, source }
    }

    /// A number without dimension.
    pub const fn number(what: &'static str, value: f64, basis: Basis, source: &'static str) -> Self {
        Value { what, value, unit: "", dimension: Dimension::NUMBER, basis, source }
    }
}
