//! A unit: how it is written, what it measures, and how it leads to SI.

use crate::Dimension;

/// Who uses a unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum System {
    /// SI and what is used with it.
    Metric,
    /// US customary; the UK gallon stands here too, being no metric unit.
    Us,
    /// Both: hours, volts, percent.
    Neutral,
}

/// What units of one dimension cannot tell apart by the dimension alone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Kind {
    /// Nothing to tell apart.
    Plain,
    /// An angle; its SI value is in radians.
    Angle,
    /// A turbidity; its SI value is in NTU, which leads to no other unit.
    Turbidity,
    /// A difference of temperatures that must not be taken for a temperature.
    Difference,
}

/// A unit: `si = (value + shift) · times / over`.
///
/// `times` and `over` are kept apart, and are whole numbers wherever f64 holds them, so that `"24 in"` and `"0.6096 m"`,
/// `"600 mm"` and `"0.6 m"` are the same number to the last bit: one product and one quotient, each rounded once.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unit {
    /// How it is printed.
    pub symbol: &'static str,
    /// Other spellings that are read. Superscripts, `^`, `per`, plurals and middle dots need no spelling of their own.
    pub spellings: &'static [&'static str],
    /// What it measures.
    pub dimension: Dimension,
    /// What the dimension alone does not say.
    pub kind: Kind,
    /// Who uses it.
    pub system: System,
    /// `times / over`: SI units in one of this unit.
    pub factor: f64,
    /// Numerator of the factor.
    pub times: f64,
    /// Denominator of the factor.
    pub over: f64,
    /// What is added to a value before it is multiplied: 273.15 for °C, 459.67 for °F, otherwise 0.
    pub shift: f64,
}

impl Unit {
    /// A value in this unit, in SI.
    pub fn to_si(&self, value: f64) -> f64 {
        (value + self.shift) * self.times / self.over
    }

    /// A value in SI, in this unit.
    pub fn of_si(&self, si: f64) -> f64 {
        si * self.over / self.times - self.shift
    }

    /// A difference in this unit, in SI: without the shift of °C and °F.
    pub fn difference_to_si(&self, value: f64) -> f64 {
        value * self.times / self.over
    }

    /// A difference in SI, in this unit.
    pub fn difference_of_si(&self, si: f64) -> f64 {
        si * self.over / self.times
    }

    /// A unit of `times / over` SI units.
    pub(crate) const fn new(
        symbol: &'static str,
        spellings: &'static [&'static str],
        dimension: Dimension,
        system: System,
        ratio: (f64, f64),
    ) -> Self {
        let (times, over) = ratio;
        Unit {
            symbol,
            spellings,
            dimension,
            kind: Kind::Plain,
            system,
            factor: times / over,
            times,
            over,
            shift: 0.0,
        }
    }

    pub(crate) const fn shifted(mut self, shift: f64) -> Self {
        self.shift = shift;
        self
    }

    pub(crate) const fn of_kind(mut self, kind: Kind) -> Self {
        self.kind = kind;
        self
    }
}
