//! House rules written in Rhai: the text of one file becomes a rule that nothing can tell from a compiled one.
//!
//! A script cannot see a number. It asks for figures, register values and limits by name, computes with opaque
//! values and hands back an answer made of them; comparing is refused. What it does therefore never depends on the
//! design, and so it is run once, when it is compiled: every error of it comes out there, at its place, and what is
//! kept is the list of its steps. A review works these steps on the sheet and runs no script at all.

mod answer;
mod card;
mod compile;
mod engine;
mod factor;
mod fault;
mod formula;
mod gather;
mod head;
mod limit;
mod list;
mod named;
mod plan;
mod reference;
mod roots;
mod run;
mod slip;
mod subject;
mod tape;
mod value;

pub use compile::{Catalogue, compile};
pub use fault::{ScriptFault, nearest};
pub use formula::{DIFFERENCE, MAX, MIN, Operation, PRODUCT, QUOTIENT, SUM};
pub use named::FORMULAS;
pub use reference::{REFERENCE, Word};
