//! The rules on depth and on seeing give what their examples say, and two slips of the sound example are found.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::BTreeMap;

use haulout_tests::{Said, examples, load, ruleset, said};

const MINE: [&str; 11] = [
    "window-of-depths-open",
    "bed-within-the-window",
    "shallows-to-rest-in",
    "righting-band-kept-small",
    "refuge-deep-enough",
    "retreat-out-of-sight",
    "freeboard-over-the-overflow",
    "exit-reached-at-every-level",
    "bed-seen-from-the-position",
    "deep-water-seen-through-the-panel",
    "sill-below-the-water",
];

fn reviewed(text: &str) -> BTreeMap<String, Said> {
    let loaded = load(text).unwrap_or_else(|p| panic!("{p:#?}\n{text}"));
    said(&loaded, &ruleset(), &[])
}

fn sound() -> String {
    let (_, text) = examples()
        .into_iter()
        .find(|(name, _)| name == "reedwater-sound.json")
        .expect("the sound example is there");
    text
}

#[test]
fn the_sound_example_shows_its_animals_and_rests_them() {
    let said = reviewed(&sound());
    let of_mine = said.iter().filter(|(key, _)| MINE.iter().any(|id| key.starts_with(&format!("{id} "))));
    let mut met = 0;
    for (key, answer) in of_mine {
        assert_eq!(answer.outcome, "met", "{key}: {answer:#?}");
        met += 1;
    }
    assert!(met >= 20, "{met}");
}

/// The shelf at 0.30 m: no bed is as shallow as 0.20 m any more.
#[test]
fn a_shelf_too_deep_is_found() {
    let slip = sound().replacen("\"depth\": \"0.12 m\"", "\"depth\": \"0.30 m\"", 1);
    let said = reviewed(&slip);
    let answer = &said["shallows-to-rest-in pool:main+group:reeves None"];
    assert_eq!(answer.outcome, "short");
    assert_eq!(answer.numbers[0].to_bits(), 0.0_f64.to_bits());
    assert!(answer.places.contains("/pools/0/depth"), "{:#?}", answer.places);
}

/// The sill of the first panel typed as 950 for 250 mm: no ray of a child's eye through it meets the deep bed.
#[test]
fn a_sill_over_the_water_is_found() {
    let slip = sound().replacen("\"sill\": \"+0.25 m\"", "\"sill\": \"+0.95 m\"", 1);
    let said = reviewed(&slip);
    for rule in ["deep-water-seen-through-the-panel", "sill-below-the-water"] {
        let answer = &said[&format!("{rule} panel:w1 None")];
        assert_eq!(answer.outcome, "short", "{rule}");
        assert!(answer.places.contains("/panels/0/sill"), "{:#?}", answer.places);
        assert_eq!(said[&format!("{rule} panel:w2 None")].outcome, "met", "{rule}");
    }
    let through = &said["deep-water-seen-through-the-panel panel:w1 None"];
    assert_eq!(through.numbers[0].to_bits(), 0.0_f64.to_bits());
}
