//! The example designs are read without a problem and give the answers they must give.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::BTreeSet;

use haulout_tests::{examples, load, ruleset, said};

/// What each example must fall short of; everything else it is asked is met, open or does not apply.
const SHORT: &[(&str, &[&str])] = &[
    ("bayou-porch-us.json", &[]),
    ("orangery-concept.json", &[]),
    (
        "reedwater-first-draft.json",
        &[
            "barrier-height barrier:front+group:pond None",
            "barrier-height barrier:front+group:reeves None",
            "bed-seen-from-the-position position:child-west+pool:main None",
            "deep-water-seen-through-the-panel panel:w1 None",
            "delivered-near-the-label circuit:filter-loop None",
            "filter-begins-alive whole None",
            "float-carries-all basking:float None",
            "ingress-degree-for-the-zone item:cleaners-socket+pool:main Some(4)",
            "nitrate-held-by-water-change pool:main None",
            "notch-over-the-water filter:wetland None",
            "protein-as-fed feed:pond-mixed None",
            "references-lead-somewhere reference:log-west.lamps:haet-1 None",
            "shallows-to-rest-in pool:main+group:pond None",
            "shallows-to-rest-in pool:main+group:reeves None",
            "sill-below-the-water panel:w1 None",
            "sockets-and-switches-outside-zone-one item:cleaners-socket+pool:main Some(4)",
            "step-within-the-filter stocking:first-pond None",
            "step-within-the-filter stocking:first-reeves None",
            "step-within-the-filter stocking:last-reeves None",
            "step-within-the-filter stocking:other-reeves None",
            "turnover-by-delivered-flow circuit:filter-loop None",
            "wall-over-the-notch filter:wetland None",
        ],
    ),
    ("reedwater-sound.json", &[]),
    (
        "small-pool.json",
        &["delivered-near-the-label circuit:loop None", "turnover-by-delivered-flow circuit:loop None"],
    ),
];

#[test]
fn every_example_falls_short_of_what_it_must_and_of_nothing_else() {
    let ruleset = ruleset();
    let schema =
        haulout_document::Schema::compile(haulout_schemas::DESIGN).expect("the published schema is one");
    let mut named = BTreeSet::new();
    for (name, text) in examples() {
        let loaded = load(&text).unwrap_or_else(|problems| panic!("{name}: {problems:#?}"));
        let problems: Vec<String> = schema.check(&loaded.tree).into_iter().map(|p| p.message).collect();
        assert!(problems.is_empty(), "{name} does not fit the published schema: {problems:#?}");
        let said = said(&loaded, &ruleset, &[]);
        let short: Vec<&String> =
            said.iter().filter(|(_, s)| s.outcome == "short").map(|(key, _)| key).collect();
        let wanted = SHORT.iter().find(|(file, _)| *file == name).map(|(_, keys)| *keys);
        assert_eq!(short, wanted.unwrap_or_else(|| panic!("{name} has no line in the table")), "{name}");
        named.insert(name);
    }
    assert_eq!(named.len(), SHORT.len(), "the table names files that are not there");
}
