//! Text to a tree with places: strict reading of JSON, and the schema step on the tree itself.
//!
//! Nothing here knows what the text describes. [`read`] turns bytes into a [`Tree`] and a list of
//! [`Problem`]s; [`Schema::check`] holds the tree to a JSON Schema and speaks in the same [`Problem`]s.

mod escape;
mod problem;
mod read;
mod schema;
mod tree;
mod walk;

pub use problem::Problem;
pub use read::{Limits, Reading, read};
pub use schema::{Schema, SchemaFault};
pub use tree::{Kind, Node, Tree};
pub use walk::Children;
