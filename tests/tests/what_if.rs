//! A *what if* is the same review of the same design with another value at one place: bisecting one decision until a
//! shortfall is met, for a compiled rule and for a scripted one, through the same door, without reading again.

use haulout_engine::{Outcome, Ruleset, review};
use haulout_place::Pointer;
use haulout_sheet::Substitution;
use haulout_tests::{Loaded, load, options, ruleset};

/// The outcome of a rule with one value replaced (SI).
fn outcome(loaded: &Loaded, ruleset: &Ruleset, rule: &str, pointer: &str, part: u8, value: f64) -> Outcome {
    let pointer = Pointer::parse(pointer).expect("the pointers of this test are pointers");
    let node = loaded.tree.find(&pointer).expect("the pointers of this test lead somewhere");
    let substitutions = [Substitution { node: node.0, part, value }];
    let review = review(&loaded.design, ruleset, &substitutions, &options());
    let position = ruleset.position(rule).expect("the rule is in the ruleset");
    review.answers.iter().find(|a| a.rule == position).expect("a rule always answers").outcome
}

/// The least value between `low` (short) and `high` (met) that is met, to a micrometre or a thousandth of a kelvin.
fn bisect(mut low: f64, mut high: f64, met: impl Fn(f64) -> bool) -> f64 {
    assert!(!met(low) && met(high), "the search needs one end that is short and one that is met");
    while high - low > 1e-6 {
        let middle = 0.5 * (low + high);
        if met(middle) { high = middle } else { low = middle }
    }
    high
}

#[test]
fn a_wider_bore_is_found_for_the_compiled_rule() {
    let text = include_str!("../../rules/src/plumbing/examples/turnover_short.json");
    let loaded = load(text).expect("the example is read without a problem");
    let ruleset = ruleset();
    let met = |bore: f64| {
        outcome(&loaded, &ruleset, "turnover-by-delivered-flow", "/circuits/0/runs/0/bore", 0, bore)
            == Outcome::Met
    };
    let found = bisect(0.019, 0.060, met);
    // With the found bore written into the file the rule is met, and a tenth of a millimetre less is short.
    let again = |bore: f64| {
        load(&text.replace("\"19 mm\"", &format!("\"{:.4} mm\"", bore * 1000.0))).expect("still a design")
    };
    let answer = |loaded: &Loaded| {
        haulout_tests::said(loaded, &ruleset, &[])
            .into_iter()
            .find(|(key, _)| key.starts_with("turnover"))
            .map(|(_, said)| said.outcome)
    };
    assert_eq!(answer(&again(found + 1e-5)), Some("met"));
    assert_eq!(answer(&again(found - 1e-4)), Some("short"));
}

#[test]
fn a_coordinate_inside_a_drawing_can_be_asked_about() {
    // The pool of this example is a rectangle 4 m by 2 m; a wider one holds more water, until the flow no longer turns it over.
    let text = include_str!("../../rules/src/plumbing/examples/turnover_met.json");
    let loaded = load(text).expect("the example is read without a problem");
    let ruleset = ruleset();
    let short = |width: f64| {
        let at = "/pools/0/outline/rect/size/0";
        outcome(&loaded, &ruleset, "turnover-by-delivered-flow", at, 0, width) == Outcome::Short
    };
    let found = bisect(4.0, 40.0, short);
    // Volume is width × 2 m × 0.6 m; at the found width it is what two hours of the delivered flow move.
    let flow = {
        let review = review(&loaded.design, &ruleset, &[], &options());
        let sheet = review.book.sheet(haulout_sheet::Case::NORMAL.dirty());
        let subject = haulout_model::Subject::nth(haulout_model::About::Circuit, 0);
        let line = haulout_figures::circuit::duty::DELIVERED_FLOW
            .of(sheet, subject)
            .expect("the example is complete");
        haulout_tests::number(&review.book, line.id())
    };
    assert!((found * 2.0 * 0.6 - flow * 7200.0).abs() < 1e-4, "{found} m");
}

#[test]
fn a_temperature_is_found_for_the_scripted_rule_through_the_same_door() {
    let script = include_str!("../../rules/annexes/house-model/water-within-species-band.rhai");
    let catalogue = haulout_figures::CATALOGUE;
    let rule =
        haulout_script::compile("water-within-species-band.rhai", script, catalogue).expect("it compiles");
    let ruleset = Ruleset::new(vec![rule]);
    let text = include_str!("../../rules/src/water/examples/depth_met.json");
    let loaded = load(text).expect("the example is read without a problem");
    let met = |kelvin: f64| {
        let at = "/pools/0/water/temperature";
        outcome(&loaded, &ruleset, "water-within-species-band", at, 0, kelvin) == Outcome::Met
    };
    // Sliders from 22 °C (Austria, 2. Tierhaltungsverordnung, BGBl. II 486/2004, Annex 3): 295.15 K is the edge.
    let found = bisect(288.15, 298.15, met);
    assert!((found - 295.15).abs() < 2e-6, "{found} K");
}

/// The limits of the house: a lobby of 1.50 m; a way out of 0.60 m, of which there must be two, so that the door that
/// counts is asked for by a number it is not held against.
#[test]
fn a_lobby_and_a_way_out_are_found_for_bundled_scripts() {
    let ruleset = haulout_tests::bundled::scripts();
    let (_, text) = haulout_tests::bundled::designs()
        .into_iter()
        .find(|(name, _)| name == "one-door.json")
        .expect("the annex of hazardous animals is rehearsed on it");
    let second = ", { \"id\": \"hatch\", \"spaces\": [\"west-pen\"], \"lobby-length\": \"2 m\", \"width\": \"0.30 m\" }\n  ],\n  \"keepers\"";
    let text = text.replace("\n  ],\n  \"keepers\"", second);
    let loaded = load(&text).expect("the design is read without a problem");
    let found = |rule: &str, at: &str| {
        bisect(0.3, 3.0, |length| outcome(&loaded, &ruleset, rule, at, 0, length) == Outcome::Met)
    };
    assert!((found("lobby-takes-keeper-and-box", "/doors/0/lobby-length") - 1.5).abs() < 2e-6);
    assert!((found("second-way-out", "/doors/2/width") - 0.6).abs() < 2e-6);
}
