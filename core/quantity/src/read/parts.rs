//! What was stated: one value, a range or a spread, with the unit it was typed in.

use std::ops::Range;

use crate::Unit;

/// The value or values of a stated quantity, in SI.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Parts {
    /// One value.
    One(f64),
    /// From `low` to `high`, `low` ≤ `high`.
    Range {
        /// The lower end.
        low: f64,
        /// The upper end.
        high: f64,
    },
    /// A value give or take a tolerance ≥ 0, which for a temperature is a difference.
    Spread {
        /// The nominal value.
        value: f64,
        /// What it may differ by, either way.
        tolerance: f64,
    },
}

impl Parts {
    /// The one value, the nominal value, or the middle of the range.
    pub fn value(self) -> f64 {
        match self {
            Parts::One(value) | Parts::Spread { value, .. } => value,
            Parts::Range { low, high } => low + (high - low) / 2.0,
        }
    }

    /// The least that was stated.
    pub fn low(self) -> f64 {
        match self {
            Parts::One(value) => value,
            Parts::Range { low, .. } => low,
            Parts::Spread { value, tolerance } => value - tolerance,
        }
    }

    /// The most that was stated.
    pub fn high(self) -> f64 {
        match self {
            Parts::One(value) => value,
            Parts::Range { high, .. } => high,
            Parts::Spread { value, tolerance } => value + tolerance,
        }
    }

    pub(super) fn map(self, change: impl Fn(f64) -> f64) -> Self {
        match self {
            Parts::One(value) => Parts::One(change(value)),
            Parts::Range { low, high } => Parts::Range { low: change(low), high: change(high) },
            Parts::Spread { value, tolerance } => {
                Parts::Spread { value: change(value), tolerance: change(tolerance) }
            }
        }
    }

    pub(super) fn is_finite(self) -> bool {
        self.low().is_finite() && self.high().is_finite()
    }
}

/// A quantity as stated.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stated {
    /// The values, in SI.
    pub parts: Parts,
    /// The unit as typed; of several ("2 ft 6 in", "0.60 m ± 20 mm") the first.
    pub unit: &'static Unit,
    /// The measure word in front, if any: "SCL" in "SCL 18 to 24 cm".
    pub prefix: Option<&'static str>,
}

/// Why a text is not a quantity.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Slip {
    /// What was typed, what was expected, and a way out, in a sentence without the final stop.
    pub message: String,
    /// The bytes of the text it is about.
    pub at: Range<usize>,
}

impl Slip {
    pub(super) fn new(at: Range<usize>, message: impl Into<String>) -> Self {
        Slip { message: message.into(), at }
    }
}

impl std::fmt::Display for Slip {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.message)
    }
}

impl std::error::Error for Slip {}
