//! Reading a text into a design and reviewing it never panics, whatever problems there are.

#![no_main]

use haulout_document::{Limits, read};
use haulout_engine::{Options, Ruleset, review};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let Some(tree) = read(bytes, &Limits::default()).tree else { return };
    let (design, _) = haulout_model::read(&tree);
    let ruleset = Ruleset::new(haulout_rules::built_in());
    let options = Options { stage: None, on: "2026-11-25".to_owned() };
    let review = review(&design, &ruleset, &[], &options);
    assert!(review.answers.len() >= ruleset.rules.len());
});
