//! Every rule gives on its marked examples what the marks say, and names the marked place.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::BTreeMap;

use haulout_engine::{Example, Expected, Rule, Ruleset};
use haulout_tests::{load, ruleset, said};

/// Chapters with so many examples at the least; none may lose any unseen.
const AT_LEAST: &[(&str, usize)] = &[
    ("setting-out", 12),
    ("water", 100),
    ("basking", 50),
    ("plumbing", 50),
    ("filtration", 80),
    ("heat", 55),
    ("start-up", 50),
    ("power", 50),
    ("containment", 50),
    ("visitors", 30),
];

const fn word(expected: Expected) -> &'static str {
    match expected {
        Expected::Met => "met",
        Expected::Short => "short",
        Expected::NotAssessed => "not-assessed",
        Expected::DoesNotApply => "does-not-apply",
    }
}

/// What is wrong with an example, if anything.
fn wrong(ruleset: &Ruleset, rule: &Rule, example: &Example) -> Option<String> {
    let at = format!("{}, {}", rule.card.id, example.shows);
    let loaded = load(&example.design).unwrap_or_else(|problems| panic!("{at}: {problems:#?}"));
    let said = said(&loaded, ruleset, &[]);
    let prefix = format!("{} {} ", rule.card.id, example.subject);
    let Some((_, answer)) = said.iter().find(|(key, _)| key.starts_with(&prefix)) else {
        return Some(format!("{at}: no answer about {}", example.subject));
    };
    let place = &*example.place;
    let named = place.is_empty() || answer.places.iter().any(|p| p == place);
    let right = answer.outcome == word(example.expected) && named;
    (!right).then(|| format!("{at}, {place}: {answer:?}"))
}

#[test]
fn rules_say_what_their_examples_are_marked_with() {
    let ruleset = ruleset();
    let each = ruleset.rules.iter().flat_map(|rule| rule.examples.iter().map(move |e| (rule, e)));
    let found: Vec<String> = each.filter_map(|(rule, example)| wrong(&ruleset, rule, example)).collect();
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn every_rule_is_seen_met_short_and_not_assessed() {
    let mut counts: BTreeMap<String, usize> = BTreeMap::new();
    for rule in &ruleset().rules {
        *counts.entry(rule.card.chapter.to_string()).or_default() += rule.examples.len();
        for wanted in ["met", "short", "not-assessed"] {
            let seen = rule.examples.iter().any(|example| word(example.expected) == wanted);
            assert!(seen, "{} has no example that is {wanted}", rule.card.id);
        }
        let four = rule.examples.len() >= 4 || rule.card.chapter == "setting-out";
        assert!(four, "{} has {} examples", rule.card.id, rule.examples.len());
    }
    for (chapter, least) in AT_LEAST {
        let count = counts.remove(*chapter).unwrap_or(0);
        assert!(count >= *least, "{chapter}: {count}");
    }
    assert!(counts.is_empty(), "chapters without a least number: {counts:?}");
}
