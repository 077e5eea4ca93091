//! The sound example meets what is asked of its levels, overflows, returns, headers, fills and pumps.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_tests::{examples, load, ruleset, said};

const MINE: &[&str] = &[
    "freeboard-with-pumps-off",
    "pumps-off-under-the-overflow",
    "lowest-level-reckoned-with",
    "overflow-takes-the-pump",
    "fill-stuck-open",
    "parted-joint-kept-in",
    "drawn-down-in-time",
    "exit-not-too-steep",
    "exit-wide-enough",
    "bank-within-reach-of-an-exit",
    "opening-is-no-trap",
    "overflow-keeps-animals-out",
    "stream-not-too-fast",
    "delivered-near-the-label",
    "siphon-broken-at-the-return",
    "fill-parted-by-air",
    "header-spreads-evenly",
    "jet-clear-of-the-intake",
    "basin-cleared-by-its-flow",
];

#[test]
fn the_sound_example_holds_and_moves_its_water() {
    let rules = ruleset();
    assert!(
        MINE.iter().all(|id| rules.rules.iter().any(|rule| rule.card.id == *id)),
        "a rule has another name"
    );
    let (_, text) = examples()
        .into_iter()
        .find(|(name, _)| name == "reedwater-sound.json")
        .expect("the sound example is there");
    let loaded = load(&text).unwrap_or_else(|p| panic!("{p:#?}"));
    let said = said(&loaded, &rules, &[]);
    let of_mine = said.iter().filter(|(key, _)| MINE.iter().any(|id| key.starts_with(&format!("{id} "))));
    let wrong: Vec<_> = of_mine.filter(|(_, a)| !matches!(a.outcome, "met" | "does-not-apply")).collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
}
