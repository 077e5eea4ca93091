//! Heat of the water: humid air, evaporation, what is lost through shell and surface, how fast water warms and cools.

pub mod air;
pub mod change;
pub mod evaporation;
pub mod loss;

#[cfg(test)]
mod tests;

use haulout_quantity::Basis;

use crate::formula::{FormulaCard, Kind};

/// The card of an expression that can be worked again from its text.
const fn closed(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    (basis, source): (Basis, &'static str),
    range: &'static str,
) -> FormulaCard {
    FormulaCard { name, result, text, symbols, kind: Kind::Closed, basis, source, range }
}

/// Stands by plain bookkeeping of heat.
const BALANCE: (Basis, &str) = (Basis::Published, "heat balance of a mixed water");

/// Pressure of the air, Pa: at sea level.
const AIR: f64 = 101_325.0;

/// The difference, or nothing where it is below zero.
fn over(a: f64, b: f64) -> f64 {
    (a - b).max(0.0)
}
