//! The chapter on its own examples, and what its answers say in words.

use haulout_document::Limits as Reading;
use haulout_engine::{Answer, Options, Outcome, Rule, Ruleset, review};
use haulout_sheet::Limits;

use crate::RULES;

fn chapter() -> Vec<Rule> {
    RULES.iter().filter(|r| r.card.chapter == "setting-out").map(|r| Rule::compiled(r)).collect()
}

#[test]
fn every_rule_says_what_its_examples_ask() {
    let mut played = 0;
    for rule in chapter() {
        for rehearsed in haulout_rehearsal::rehearse(&rule, &Limits::default()) {
            assert!(rehearsed.holds(), "{}: {rehearsed:#?}", rule.card.id);
            played += 1;
        }
    }
    assert!(played > 50, "only {played} examples were played");
}

/// The answers of one rule on a design: subject, outcome, reasons.
fn answers(id: &str, text: &str) -> Vec<(String, Outcome, Vec<String>)> {
    let tree = haulout_document::read(text.as_bytes(), &Reading::default()).accepted().expect("it is read");
    let (design, problems) = haulout_model::read(&tree);
    assert!(problems.is_empty(), "{problems:?}");
    let ruleset = Ruleset::new(chapter().into_iter().filter(|r| r.card.id == id).collect());
    let review = review(&design, &ruleset, &[], &Options { stage: None, on: "2026-11-25".to_owned() });
    let key = |a: &Answer| a.subject.map_or_else(String::new, |s| s.key(&design));
    let reasons = |a: &Answer| a.gaps.iter().map(|g| g.what.to_string()).collect();
    review.answers.iter().map(|a| (key(a), a.outcome, reasons(a))).collect()
}

fn about<'a>(all: &'a [(String, Outcome, Vec<String>)], subject: &str) -> &'a (String, Outcome, Vec<String>) {
    all.iter().find(|(key, ..)| key == subject).expect("there is an answer about it")
}

#[test]
fn a_dangling_name_is_answered_with_the_nearest() {
    let text = include_str!("examples/references_lead_somewhere_short.json");
    let all = answers("references-lead-somewhere", text);
    let (_, outcome, reasons) = about(&all, "reference:main.space:turtle-sid");
    assert_eq!(*outcome, Outcome::Short);
    assert_eq!(reasons, &["there is no space \"turtle-sid\"; the nearest there is is \"turtle-side\""]);
    let text = include_str!("examples/references_lead_somewhere_short_level.json");
    let all = answers("references-lead-somewhere", text);
    let (_, _, reasons) = about(&all, "reference:main.low:main.watter");
    assert_eq!(reasons, &["there is no level \"main.watter\"; the nearest there is is \"main.water\""]);
}

#[test]
fn every_name_is_a_subject_of_its_own() {
    let text = include_str!("examples/references_lead_somewhere_met.json");
    let keys: Vec<String> = answers("references-lead-somewhere", text).into_iter().map(|a| a.0).collect();
    assert_eq!(
        keys,
        [
            "reference:sliders.spaces:turtle-side",
            "reference:main.space:turtle-side",
            "reference:main.low:main.water"
        ]
    );
}

#[test]
fn crossing_sides_are_named() {
    let text = include_str!("examples/outline_is_simple_short.json");
    let all = answers("outline-is-simple", text);
    let (_, outcome, reasons) = about(&all, "outline:main");
    assert_eq!(*outcome, Outcome::Short);
    // The corners run (1,3) (5,5) (5,3) (1,5): the first side crosses the third.
    assert!(reasons[0].contains("side 1") && reasons[0].contains("side 3"), "{reasons:?}");
    let (_, outcome, _) = about(&all, "outline:hall");
    assert_eq!(*outcome, Outcome::Met);
}

#[test]
fn every_odd_number_of_a_part_is_listed() {
    let text = include_str!("examples/value_is_plausible_met.json");
    let odd = text.replace("\"0.40 m\"", "\"4.0 m\"").replace("\"+0.84 m\"", "\"+84 m\"");
    let all = answers("value-is-plausible", &odd);
    let (_, outcome, reasons) = about(&all, "part:main");
    assert_eq!(*outcome, Outcome::Short);
    assert_eq!(reasons.len(), 2, "{reasons:?}");
    let said = |words: &str| reasons.iter().any(|r| r.contains(words));
    assert!(
        said("depth: 4 m where 0 m to 3 m is met with; perhaps 0.4 m (the decimal point)"),
        "{reasons:?}"
    );
    assert!(said("overflow level: 84 m") && said("84 cm (the unit)"), "{reasons:?}");
    let (_, outcome, _) = about(&all, "part:hall");
    assert_eq!(*outcome, Outcome::Met);
}

#[test]
fn a_design_without_names_or_kinds_is_no_fault() {
    let text = "{\"edition\": 0, \"pools\": []}";
    for id in ["references-lead-somewhere", "outline-is-simple", "value-is-plausible", "kind-is-used"] {
        let all = answers(id, text);
        assert_eq!(all.len(), 1, "{id}");
        assert_eq!(all[0].1, Outcome::DoesNotApply, "{id}");
    }
    assert_eq!(answers("pools-do-not-overlap", text)[0].1, Outcome::DoesNotApply);
}

#[test]
fn an_odd_number_is_short_beside_one_that_is_to_be_decided() {
    let text = include_str!("examples/value_is_plausible_gap.json").replace("\"+0.84 m\"", "\"+84 m\"");
    let all = answers("value-is-plausible", &text);
    let (_, outcome, reasons) = about(&all, "part:main");
    assert_eq!(*outcome, Outcome::Short);
    assert!(reasons.len() == 1 && reasons[0].starts_with("overflow level: 84 m"), "{reasons:?}");
}
