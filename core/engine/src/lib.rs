//! The rule contract, the walk over subjects, the one comparison of the program, and what an answer is.
//!
//! A rule never compares: it hands in a [`Check`] made of lines, and the engine decides. A rule answers for every
//! subject it is about, also when all is well.

mod annexed;
mod answer;
mod card;
mod check;
mod review;
mod rule;
mod ruleset;
mod specification;
mod trial;
mod variance;

pub use annexed::{Annex, Given, Loosened, Raised};
pub use answer::{Answer, Deciding, Outcome, Side};
pub use card::{Card, Consequence, Demand, Example, Expected, Manual, Words, words};
pub use check::{Check, Verdict, compare};
pub use review::{Options, Review, Status, again, review, review_part};
pub use rule::{CompiledRule, Judge, Rule};
pub use ruleset::Ruleset;
pub use specification::{Overridden, Specification};
pub use trial::{Asked, ExpectedAt, Expects, Trial, always};
