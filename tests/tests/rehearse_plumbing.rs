//! The rules on returns, headers, fills and what a pump delivers give what their examples say, and the sound example
//! meets them.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::BTreeMap;

use haulout_engine::{CompiledRule, Expected};
use haulout_tests::{Said, examples, load, ruleset, said};

const MINE: &[&str] = &[
    "delivered-near-the-label",
    "siphon-broken-at-the-return",
    "fill-parted-by-air",
    "header-spreads-evenly",
    "jet-clear-of-the-intake",
    "basin-cleared-by-its-flow",
];

fn mine() -> Vec<&'static CompiledRule> {
    haulout_rules::RULES.iter().copied().filter(|r| MINE.contains(&&*r.card.id)).collect()
}

fn word(expected: Expected) -> &'static str {
    match expected {
        Expected::Met => "met",
        Expected::Short => "short",
        Expected::NotAssessed => "not-assessed",
        Expected::DoesNotApply => "does-not-apply",
    }
}

fn reviewed(text: &str) -> BTreeMap<String, Said> {
    let loaded = load(text).unwrap_or_else(|p| panic!("{p:#?}\n{text}"));
    said(&loaded, &ruleset(), &[])
}

#[test]
fn every_example_says_what_its_card_says() {
    assert_eq!(mine().len(), MINE.len());
    let mut wrong = Vec::new();
    for rule in mine() {
        assert!(rule.examples.len() >= 4, "{}", rule.card.id);
        for example in rule.examples {
            let at = format!("{}: {}", rule.card.id, example.shows);
            let said = reviewed(&example.design);
            let key = format!("{} {} None", rule.card.id, example.subject);
            let Some(answer) = said.get(&key) else {
                wrong.push(format!("{at}: no answer about {key}"));
                continue;
            };
            let named =
                example.place.is_empty() || answer.places.iter().any(|p| p.starts_with(&*example.place));
            if answer.outcome.replace(' ', "-") != word(example.expected) || !named {
                wrong.push(format!("{at}: {answer:#?}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn the_sound_example_meets_them() {
    let (_, text) = examples()
        .into_iter()
        .find(|(name, _)| name == "reedwater-sound.json")
        .expect("the sound example is there");
    let said = reviewed(&text);
    let of_mine = said.iter().filter(|(key, _)| MINE.iter().any(|id| key.starts_with(&format!("{id} "))));
    let wrong: Vec<_> = of_mine.filter(|(_, a)| !matches!(a.outcome, "met" | "does-not-apply")).collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
}
