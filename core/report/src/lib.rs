//! Answers and documents made into what people and programs read. Plain data in, text out.

mod annexed;
mod brief;
mod commissioning;
pub mod course;
pub mod drawing;
mod entry;
mod figured;
mod handler;
pub mod json;
mod lever;
mod manual;
mod markdown;
mod numbers;
pub mod page;
mod place;
mod promise;
mod register;
mod rehearsal;
mod schedule;
mod snag;
mod source;
mod spoken;
mod subject;
mod told;
mod units;
mod working;
mod wrap;

pub use annexed::{annexed_json, annexed_page};
pub use brief::{tell_for_page, tell_for_table};
pub use commissioning::{
    Commissioning, commissioning, commissioning_json, commissioning_markdown, commissioning_page,
};
pub use figured::{Figured, figured};
pub use lever::Lever;
pub use manual::{manual_page, rule_list, sheet_page};
pub use markdown::{markdown, markdown_of_problems};
pub use place::{Place, place, places_of, places_of_gap};
pub use promise::Promise;
pub use register::{register_json, register_list, species_page};
pub use rehearsal::{Practised, Rehearsal, SEEN, Trial, rehearsal_json, rehearsal_page};
pub use source::Written;
pub use told::{Numbers, Printed, Root, Told, ToldGap, answer_in_numbers, tell};
