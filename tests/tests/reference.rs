//! The reference page of scripts: it says what is registered, says all of it, and every example on it runs.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]
#![allow(clippy::disallowed_methods, reason = "this test reads the sources and the page of the repository")]

use std::collections::BTreeSet;

use haulout_engine::{Options, Rule, Ruleset, review};
use haulout_figures::CATALOGUE;
use haulout_script::{FORMULAS, REFERENCE, compile};
use haulout_tests::evidence::held;
use haulout_tests::reference::{Shown, of_figure, of_formula, of_register, of_word, page};
use haulout_tests::{load, repository};

const POOL: &str = r#"{
  "hall": { "spaces": [{ "id": "east", "for": "animals" }] },
  "animals": [
    { "id": "sliders", "species": "trachemys-scripta", "spaces": ["east"], "body-length": { "grown": "20 cm" } },
    { "id": "cooters", "species": "pseudemys-concinna", "spaces": ["east"], "body-length": { "grown": "30 cm" } } ],
  "pools": [{ "id": "main", "space": "east", "outline": [[0, 0], [2, 0], [2, 3], [0, 3]], "levels": { "water": "+1.2 m" },
    "depth": "1.2 m", "water": { "temperature": "25 °C" } }] }"#;

fn compiled(shown: &Shown) -> Rule {
    compile(&format!("{}.rhai", shown.id), &shown.script, CATALOGUE)
        .unwrap_or_else(|faults| panic!("{}: {faults:#?}\n{}", shown.name, shown.script))
}

#[test]
fn the_page_says_what_is_registered() {
    held("../../rules/annexes/REFERENCE.md", &page()).unwrap_or_else(|differs| panic!("{differs}"));
}

/// The words in the sources of the script room are those of the page, and no others.
#[test]
fn every_word_that_is_registered_stands_on_the_page() {
    let mut registered = BTreeSet::new();
    for file in std::fs::read_dir(repository().join("core/script/src")).expect("the room has sources") {
        let text =
            std::fs::read_to_string(file.expect("it can be listed").path()).expect("a source is a text");
        let calls = text.split("register_fn(").skip(1).filter_map(|rest| rest.trim_start().strip_prefix('"'));
        registered.extend(calls.filter_map(|rest| rest.split('"').next()).map(str::to_owned));
    }
    // Registered from a list.
    registered.extend(["+", "-", "*", "min", "max"].map(str::to_owned));
    let shown: BTreeSet<String> = REFERENCE.iter().map(|w| w.name.to_owned()).collect();
    assert_eq!(shown, registered);
    assert_eq!(shown.len(), REFERENCE.len(), "a word stands on the page once");
}

#[test]
fn the_example_of_every_word_gives_the_number_it_promises() {
    let loaded = load(POOL).unwrap_or_else(|problems| panic!("{problems:#?}"));
    for word in REFERENCE {
        let ruleset = Ruleset::new(vec![compiled(&of_word(word))]);
        let options = Options { stage: None, on: "2026-11-25".to_owned() };
        let review = review(&loaded.design, &ruleset, &[], &options);
        let answer = &review.answers[0];
        let deciding = answer.deciding.unwrap_or_else(|| panic!("{}: {:#?}", word.name, answer.gaps));
        let has = review.book.record(deciding.have).datum.number().unwrap_or(f64::NAN);
        assert!((has - word.has).abs() < 1e-9, "{}: {has} instead of {}", word.name, word.has);
    }
}

/// Everything else that can be asked for is asked for, of a whole room.
#[test]
fn the_example_of_every_figure_value_and_formula_runs() {
    let figures = CATALOGUE.iter().map(|f| of_figure(*f));
    let formulas = FORMULAS.iter().map(|f| {
        of_formula(*f).unwrap_or_else(|| panic!("{}: no unit of what it takes is known", f.card().name))
    });
    let rules: Vec<Rule> = figures.chain(of_register()).chain(formulas).map(|s| compiled(&s)).collect();
    let text = std::fs::read_to_string(repository().join("example-designs/small-pool.json"))
        .expect("there is a small pool");
    let loaded = load(&text).unwrap_or_else(|problems| panic!("{problems:#?}"));
    let ruleset = Ruleset::new(rules);
    let review = review(&loaded.design, &ruleset, &[], &Options { stage: None, on: "2026-11-25".to_owned() });
    let answered: BTreeSet<usize> = review.answers.iter().map(|a| a.rule).collect();
    assert_eq!(answered.len(), ruleset.rules.len(), "every rule has an answer");
}
