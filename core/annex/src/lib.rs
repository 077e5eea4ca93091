//! House annexes and specifications: texts of a folder made into a ruleset, or everything that is wrong with them.
//!
//! An annex is a folder with its card, `annex.json`, and one script a rule. What it adds and changes goes through the
//! doors of the ruleset; nothing is kept beside it, so two runs do not see each other's annexes.

mod authority;
mod card;
mod digest;
mod expected;
mod join;
mod keys;
mod limit;
mod page;
mod species;
mod specification;

pub use digest::{digest, digest_of_files};
pub use expected::{Marked, expected};
pub use join::{Folder, Source, Trouble, join};
pub use keys::{ANNEX, EXPECTED, Key, SPECIFICATION, Shape};
pub use specification::{Specified, specification};

/// The file name of the card of an annex.
pub const CARD: &str = "annex.json";

/// The folder of an annex that holds designs to rehearse it on.
pub const REHEARSAL: &str = "rehearsal";
/// How the file ends that says what a rehearsal design must give; before it stands the name of the design without `.json`.
pub const EXPECTED_ENDING: &str = ".expected.json";
