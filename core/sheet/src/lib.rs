//! The calculation sheet: every number of a review is a line on it, worked from other lines down to its roots.
//!
//! Lines hold no text. A handle ([`Line`]) does not give its number away: the only thing to do with it is to work
//! another line from it by a formula, to fold it into a figure, or to hand it to the engine in a check.

mod book;
mod case;
mod figure;
mod formula;
mod gap;
mod ledger;
mod limit;
mod line;
mod substitution;
mod walk;
mod worked;

pub use book::{Book, Sheet};
pub use case::{Axis, Case, Filter, LevelState, Pumps, Size};
pub use figure::{Catalogued, Figure, FigureCard};
pub use formula::{AnyFormula, Assembly, Lines, Many};
pub use gap::{All, Gap, GapKind, Gaps, Known};
pub use limit::{Limit, LimitValue, Limits, Tighter};
pub use line::{Datum, Entry, Line, LineId, Made, Record};
pub use substitution::Substitution;
pub use walk::Roots;
