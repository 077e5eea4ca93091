//! Limits and demands of several annexes resolved in the order given.

use haulout_engine::{Demand, Ruleset};

use super::common::{annex, file, folder, joined, told};

/// The built-in turning point: `depth` of the scheme, row "to 20 cm", asks 30 cm (Directive 2010/63/EU, table 10.1).
fn depth(value: &str, more: &str) -> String {
    format!(
        "\"limits\": [{{ \"rule\": \"depth-of-the-scheme\", \"limit\": \"depth\", \"row\": \"to 20 cm\", \"value\": \"{value}\"{more} }}]"
    )
}

fn asked(ruleset: &Ruleset) -> f64 {
    let rule = &ruleset.rules[ruleset.position("depth-of-the-scheme").expect("it is built in")];
    let limit =
        rule.limits.iter().find(|l| l.name == "depth" && l.row == "to 20 cm").expect("it has the row");
    ruleset.limits.value(limit).value
}

#[test]
fn of_two_tightenings_the_harder_stands_in_either_order() {
    let (softer, harder) = (annex("softer", &depth("35 cm", "")), annex("harder", &depth("1 ft 4 in", "")));
    for order in [[softer.clone(), harder.clone()], [harder, softer]] {
        let ruleset = joined(&order).expect("both ask more than the card");
        // 16 in of 25.4 mm.
        assert!((asked(&ruleset) - 0.4064).abs() < 1e-12);
        assert!(ruleset.loosened.is_empty());
    }
}

#[test]
fn a_limit_is_loosened_only_with_a_reason_and_the_reason_is_kept() {
    let troubles = joined(&[annex("house", &depth("25 cm", ""))]).err().expect("it asks less");
    let said = told(&troubles);
    assert_eq!(said.len(), 1);
    assert!(said[0].0.contains("at least 30.00 cm") && said[0].0.contains("\"reason\""), "{}", said[0].0);
    assert_eq!(said[0].1, "\"25 cm\"");

    let reason = ", \"reason\": \"hatchlings under quarantine only\"";
    let ruleset = joined(&[annex("house", &depth("25 cm", reason))]).expect("it says why");
    assert_eq!((asked(&ruleset), ruleset.loosened.len()), (0.25, 1));
    let loosened = &ruleset.loosened[0];
    assert_eq!((loosened.from, loosened.to, loosened.unit), (0.30, 0.25, "cm"));
    assert_eq!(
        (loosened.annex.as_str(), loosened.reason.as_str()),
        ("house", "hatchlings under quarantine only")
    );
}

#[test]
fn a_recommendation_becomes_a_requirement_and_says_by_whom() {
    let rule = "kind-is-used";
    let built_in = Ruleset::new(haulout_rules::built_in());
    let before = |ruleset: &Ruleset| ruleset.rules[ruleset.position(rule).expect("built in")].card.demand;
    assert_eq!(before(&built_in), Demand::Should);
    let members = format!("\"demands\": [{{ \"rule\": \"{rule}\", \"demand\": \"shall\" }}]");
    let ruleset = joined(&[annex("house", &members)]).expect("a house may ask for more");
    assert_eq!((before(&ruleset), ruleset.raised[0].annex.as_str()), (Demand::Shall, "house"));
    assert_eq!(before(&Ruleset::new(haulout_rules::built_in())), Demand::Should, "another run is as it was");
}

#[test]
fn the_order_of_files_on_the_disk_changes_nothing() {
    let rule = |id: &str| {
        let text = include_str!("../../../../rules/annexes/house-model/resting-shallows.rhai");
        file(&format!("{id}.rhai"), &text.replace("\"resting-shallows\"", &format!("\"{id}\"")))
    };
    let card = file("annex.json", &super::common::card("house", ""));
    let files = vec![rule("a-rule"), card, rule("b-rule")];
    let turned: Vec<_> = files.iter().rev().cloned().collect();
    let (one, other) = (
        joined(&[folder("house", files)]).expect("sound"),
        joined(&[folder("house", turned)]).expect("sound"),
    );
    assert_eq!(one.substance(), other.substance());
    assert_eq!(one.annexes, other.annexes);
    assert_eq!(one.annexes[0].digest.len(), 64);
}
