//! Every rule gives on its marked examples what the marks say, and names the marked place.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_engine::Expected;
use haulout_tests::{load, ruleset, said};

#[test]
fn rules_say_what_their_examples_are_marked_with() {
    let ruleset = ruleset();
    for rule in &ruleset.rules {
        let mut seen = Vec::new();
        for example in &rule.examples {
            let at = format!("{}, {}", rule.card.id, example.shows);
            let loaded = load(&example.design).unwrap_or_else(|problems| panic!("{at}: {problems:#?}"));
            let said = said(&loaded, &ruleset, &[]);
            let prefix = format!("{} {} ", rule.card.id, example.subject);
            let (_, answer) = said.iter().find(|(key, _)| key.starts_with(&prefix)).unwrap_or_else(|| {
                panic!(
                    "{at}: no answer about {}; there are {:?}",
                    example.subject,
                    said.keys().collect::<Vec<_>>()
                )
            });
            let wanted = match example.expected {
                Expected::Met => "met",
                Expected::Short => "short",
                Expected::NotAssessed => "not-assessed",
                Expected::DoesNotApply => "does-not-apply",
            };
            assert_eq!(answer.outcome, wanted, "{at}: {answer:?}");
            let place = &*example.place;
            let named = answer.places.iter().any(|p| p == place || place.starts_with(&format!("{p}/")));
            assert!(place.is_empty() || named, "{at}: {place} is not among {:?}", answer.places);
            seen.push(wanted);
        }
        for wanted in ["met", "short", "not-assessed"] {
            assert!(seen.contains(&wanted), "{} has no example that is {wanted}", rule.card.id);
        }
    }
}
