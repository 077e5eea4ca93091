//! Every example of the chapter filtration gives the outcome it is marked with, and names its place.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_engine::{Expected, Outcome};
use haulout_rules::RULES;
use haulout_tests::{load, ruleset, said};

const fn outcome(expected: Expected) -> Outcome {
    match expected {
        Expected::Met => Outcome::Met,
        Expected::Short => Outcome::Short,
        Expected::NotAssessed => Outcome::NotAssessed,
        Expected::DoesNotApply => Outcome::DoesNotApply,
    }
}

#[test]
fn every_example_of_the_chapter_says_what_it_must() {
    let ruleset = ruleset();
    let mut rehearsed = 0;
    let mut wrong = Vec::new();
    for rule in RULES.iter().filter(|r| r.card.chapter == "filtration") {
        for example in rule.examples {
            let (id, shows) = (&rule.card.id, &example.shows);
            let loaded = load(&example.design).unwrap_or_else(|p| panic!("{id}, {shows}: {p:#?}"));
            let start = format!("{id} {} ", example.subject);
            let answers = said(&loaded, &ruleset, &[]);
            let mut own = answers.iter().filter(|(key, _)| key.starts_with(&start));
            let (_, answer) = own.next().unwrap_or_else(|| panic!("{id}, {shows}: no answer"));
            let named = example.place.is_empty() || answer.places.iter().any(|p| *p == *example.place);
            if answer.outcome != outcome(example.expected).name() || !named {
                wrong.push(format!("{id}, {shows}: {answer:#?}"));
            }
            rehearsed += 1;
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(rehearsed >= 15, "only {rehearsed} examples were rehearsed");
}
