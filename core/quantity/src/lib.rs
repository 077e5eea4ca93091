//! Quantities of the trade: reading and printing them with their units, their dimensions, and how well a value is founded.
//!
//! Everything is kept in SI without prefixes (m, kg, s, A, K, mol, cd). Reading and printing are our own because
//! the factors must be exact and the refusals must say what to write instead; arithmetic between typed quantities
//! is `uom`'s, seen through [`Measure`].

mod amount;
mod basis;
mod dimension;
mod lookup;
mod measure;
mod print;
mod read;
mod spelling;
mod table;
mod unit;

pub use amount::{Amount, DimensionClash};
pub use basis::{Basis, Source};
pub use dimension::Dimension;
pub use lookup::{difference_unit, unit, unit_for};
pub use measure::{Measure, si};
pub use print::{print, print_feet_and_inches, print_fixed};
pub use read::{
    Parts, Slip, Stated, read, read_angle, read_difference, read_share, read_slope, read_turbidity,
};
pub use table::UNITS;
pub use unit::{Kind, System, Unit};
