//! Answers and documents made into what people and programs read. Plain data in, text out.

pub mod drawing;
mod figured;
mod handler;
pub mod json;
mod manual;
mod numbers;
pub mod page;
mod place;
mod schedule;
mod snag;
mod source;
mod told;
mod units;
mod working;
mod wrap;

pub use figured::{Figured, figured};
pub use manual::{manual_page, rule_list, sheet_page};
pub use place::{Place, place, places_of, places_of_gap};
pub use source::Written;
pub use told::{Numbers, Printed, Root, Told, ToldGap, tell};
