//! Filters and what animals load them with: nitrogen of feed, ammonia, oxygen, water change, beds, lips, lamps.

pub mod ammonia;
pub mod bed;
pub mod feed;
pub mod gravel;
pub mod oxygen;
pub mod renewal;
pub mod solids;

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

/// Stands by definition or by plain bookkeeping.
const BALANCE: (Basis, &str) = (Basis::Published, "mass balance of a mixed water");
