//! Lengths that follow from an animal's body.

use haulout_quantity::Basis;
use haulout_quantity::si::Length;

use crate::formula::{Formula, FormulaCard, Kind};

/// Depth at which water covers a standing animal by so much.
pub static COVERED: Formula<(Length, Length), Length> = Formula {
    card: &FormulaCard {
        name: "depth that covers the animal",
        result: "d_cover",
        text: "h + c",
        symbols: &["h", "c"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "keepers' practice: standing height and some water over the back",
        range: "animals that stand on the bed",
    },
    run: |(height, cover)| Ok(height + cover),
};
