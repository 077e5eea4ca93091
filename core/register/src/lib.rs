//! Values that do not come from the design: species, and the table of authorities. Static tables, a source per value.

mod authority;
mod basking;
mod gait;
mod given;
mod habit;
mod house;
mod nearest;
mod species;
mod value;

pub use authority::{AUTHORITIES, Authority, Matter};
pub use basking::{BASKERS, Bask};
pub use gait::{GAITS, Gait};
pub use given::Own;
pub use habit::{Build, HABITS, Habit};
pub use house::Register;
pub use nearest::nearest;
pub use species::{SPECIES, Species, TRAITS, Trait, find};
pub use value::Value;
