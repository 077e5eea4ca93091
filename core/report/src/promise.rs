//! Promises: values that somebody has declared and nobody has shown yet. The list to prove before anything is signed.

use haulout_document::Tree;
use haulout_model::Standing;
use haulout_sheet::{Book, LineId, Made, Roots};

use crate::place::{Place, place};

/// A value somebody has declared and nobody has shown yet.
#[derive(Debug, Clone, PartialEq)]
pub struct Promise {
    /// What it is.
    pub what: &'static str,
    /// Where it stands.
    pub place: Place,
}

/// The promises below some lines, in the order of the file, each place once.
pub(crate) fn promises(book: &Book<'_>, tree: &Tree, lines: &[LineId]) -> Vec<Promise> {
    let mut found: Vec<Promise> =
        Roots::of(book, lines).0.into_iter().filter_map(|line| one(book, tree, line)).collect();
    let key = |promise: &Promise| {
        (promise.place.start, promise.place.pointer.clone(), promise.place.through.clone())
    };
    found.sort_by_key(key);
    found.dedup_by(|a, b| a.place.pointer == b.place.pointer);
    found
}

fn one(book: &Book<'_>, tree: &Tree, line: LineId) -> Option<Promise> {
    let Made::Stated { origin, standing: Standing::Declared, card } = book.record(line).made else {
        return None;
    };
    Some(Promise { what: card.map_or("", |card| card.what), place: place(tree, origin) })
}
