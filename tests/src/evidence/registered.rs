//! Which values of a register the examples draw on, found by walking the lines of every review and every figure.

use std::collections::BTreeMap;

use haulout_engine::{Ruleset, review};
use haulout_register::Value;
use haulout_sheet::Made;

use crate::evidence::moved::Played;
use crate::options;

/// A value of a register with the positions of the played designs that draw on it.
pub struct Drawn {
    /// The value.
    pub value: &'static Value,
    /// Positions in the list of played designs.
    pub by: Vec<usize>,
}

/// Every value of a register that a review of one of the designs draws on, in the order of what they are.
pub fn drawn(played: &[Played], ruleset: &Ruleset) -> Vec<Drawn> {
    let mut found: BTreeMap<usize, Drawn> = BTreeMap::new();
    for (at, one) in played.iter().enumerate() {
        let review = review(&one.loaded.design, ruleset, &[], &options());
        for line in 0..review.book.len() {
            let Made::Register(value, _) = review.book.record(line as u32).made else { continue };
            let entry = found.entry(std::ptr::from_ref(value) as usize);
            let drawn = entry.or_insert(Drawn { value, by: Vec::new() });
            if drawn.by.last() != Some(&at) {
                drawn.by.push(at);
            }
        }
    }
    let mut all: Vec<Drawn> = found.into_values().collect();
    all.sort_by(|a, b| key(a.value).cmp(&key(b.value)).then(a.value.value.total_cmp(&b.value.value)));
    all
}

fn key(value: &Value) -> (&str, &str) {
    (value.what, value.source)
}
