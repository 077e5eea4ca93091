//! Every script of the bundled annexes becomes a rule and gives on its marked examples what the marks say.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_annex::{Folder, join};
use haulout_engine::{Demand, Outcome, Rule};
use haulout_quantity::Basis;
use haulout_tests::bundled;

fn rules() -> Vec<Rule> {
    bundled::scripts().rules
}

#[test]
fn bundled_scripts_keep_what_their_examples_promise() {
    let mut rehearsed = 0;
    for rule in rules() {
        let results = haulout_rehearsal::rehearse(&rule, &haulout_sheet::Limits::default());
        let seen = |outcome| results.iter().any(|r| r.got == Some(outcome));
        for result in &results {
            assert!(result.holds(), "{}: {result:#?}", rule.card.id);
            rehearsed += 1;
        }
        for outcome in [Outcome::Met, Outcome::Short] {
            assert!(seen(outcome), "{} shows no example that is {}", rule.card.id, outcome.name());
        }
    }
    assert!(rehearsed >= 70, "only {rehearsed} examples were rehearsed");
}

/// A house rule is no published clause, and where life is at stake it defers to those who decide.
#[test]
fn bundled_rules_are_honest_about_their_basis() {
    let (mut rules, mut count) = (rules(), 0);
    rules.retain(|rule| rule.card.chapter != "water");
    for rule in &rules {
        let id = &rule.card.id;
        for limit in &rule.limits {
            let whose =
                limit.basis == Basis::Published || limit.source.contains("house") || limit.value == 1.0;
            assert!(whose, "{id}: {} does not say whose it is", limit.name);
        }
        let life = rule.card.consequence.name() == "life of people";
        assert!(!life || rule.card.caution.is_some(), "{id} has no caution");
        assert!(rule.card.demand == Demand::Should || life, "{id} demands more than a house may");
        count += 1;
    }
    assert!(count >= 10, "only {count} rules beside the models");
}

/// The card of every bundled annex is sound, alone and with all the others.
#[test]
fn bundled_annexes_have_cards_and_go_together() {
    let annexes = bundled::annexes();
    let sound = |some: &[Folder]| {
        let joined = join(haulout_rules::built_in(), some, haulout_figures::CATALOGUE);
        joined.unwrap_or_else(|troubles| panic!("{troubles:#?}"))
    };
    for annex in &annexes {
        assert!(sound(std::slice::from_ref(annex)).annexes[0].name.len() > 1);
    }
    assert_eq!(sound(&annexes).annexes.len(), annexes.len());
}
