//! The commissioning list: every trial that the design calls for, its numbers, every declared value once, in three forms.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::process::{Command, Stdio};

const EXAMPLES: [&str; 5] =
    ["small-pool", "reedwater-sound", "reedwater-first-draft", "bayou-porch-us", "orangery-concept"];

fn example(name: &str) -> String {
    format!("{}/../../example-designs/{name}.json", env!("CARGO_MANIFEST_DIR"))
}

fn run(arguments: &[&str]) -> (String, String, Option<i32>) {
    let done = Command::new(env!("CARGO_BIN_EXE_haulout"))
        .args(arguments)
        .stdin(Stdio::null())
        .output()
        .expect("the binary was built");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    (text(&done.stdout), text(&done.stderr), done.status.code())
}

fn listed(name: &str) -> serde_json::Value {
    let (text, remarks, status) = run(&["commissioning", &example(name), "--as", "json"]);
    assert_eq!((remarks.as_str(), status), ("", Some(0)), "{name}");
    let schema: serde_json::Value =
        serde_json::from_str(haulout_schemas::COMMISSIONING).expect("a schema is JSON");
    let value: serde_json::Value = serde_json::from_str(&text).expect("the output is JSON");
    let validator = jsonschema::validator_for(&schema).expect("a published schema is one");
    let wrong: Vec<String> = validator.iter_errors(&value).map(|error| error.to_string()).collect();
    assert!(wrong.is_empty(), "{name}: {wrong:#?}");
    value
}

fn expected(list: &serde_json::Value, trial: &str, subject: &str, figure: &str) -> f64 {
    let trials = list["trials"].as_array().expect("a list of trials");
    let trial = trials.iter().find(|t| t["id"] == trial).expect("the trial is made");
    let sites = trial["sites"].as_array().expect("a trial has sites");
    let site = sites.iter().find(|s| s["subject"] == subject).expect("it is made there");
    let expects = site["expects"].as_array().expect("a site expects something");
    let found = expects.iter().find(|e| e["figure"] == figure).expect("it expects the figure");
    found["value"].as_f64().expect("nothing is missing for it")
}

#[test]
fn every_example_has_a_list_in_every_form() {
    for name in EXAMPLES {
        let list = listed(name);
        let trials = list["trials"].as_array().expect("a list of trials");
        assert!(trials.iter().any(|trial| trial["id"] == "stand-for-leaks"), "{name}");
        let (page, _, status) = run(&["commissioning", &example(name)]);
        assert_eq!(status, Some(0));
        // What a file calls a place may be longer than a line.
        assert!(page.lines().all(|line| line.chars().count() <= 90), "{page}");
        let declared = list["declared"].as_array().expect("a list of values");
        let lines = page.lines().filter(|line| line.starts_with("line ")).count();
        assert_eq!(lines, declared.len(), "{name}");
        let boxes = run(&["commissioning", &example(name), "--as", "markdown"]).0.matches("- [ ] ").count();
        let sites: usize = trials.iter().filter_map(|trial| trial["sites"].as_array()).map(Vec::len).sum();
        assert_eq!(boxes, sites + declared.len(), "{name}");
        assert_eq!(page.matches("found ___").count(), boxes, "{name}");
    }
}

/// By hand: 3 mm a day beside the evaporation; 100 L at the delivered flow; the fall and the flow are held to their sources elsewhere.
#[test]
fn numbers_of_the_trials_follow_from_the_figures() {
    let list = listed("reedwater-sound");
    let at = |trial, subject, figure| expected(&list, trial, subject, figure);
    let fall = at("stand-for-leaks", "pool:main", "evaporation-fall-high");
    assert!((at("stand-for-leaks", "pool:main", "leak-fall") - fall - 3.0).abs() < 1e-6);
    let flow = at("flow-by-volume", "circuit:filter-loop", "delivered-flow");
    let seconds = 100.0 / (flow * 1000.0 / 3600.0);
    assert!((at("flow-by-volume", "circuit:filter-loop", "vessel-time") / seconds - 1.0).abs() < 1e-8);
    // 12.1 kg is what the ten turtles of the sound room weigh; its log and its rock do not float.
    assert!((at("float-under-load", "basking:float", "site-load") - 12.1).abs() < 1e-9);
    let trials = list["trials"].as_array().expect("a list of trials");
    let of =
        |id: &str| trials.iter().find(|trial| trial["id"] == id).map(|t| t["sites"].as_array().map(Vec::len));
    assert_eq!(of("float-under-load"), Some(Some(1)));
    assert_eq!((of("alarm-call-out"), of("alarm-in-time")), (Some(Some(2)), Some(Some(1))));
    assert_eq!(of("readings-before-a-step"), Some(Some(4)));
}

#[test]
fn what_cannot_be_listed_is_said() {
    let missing = run(&["commissioning", "no-such-design.json"]);
    assert_eq!((missing.0.as_str(), missing.2), ("", Some(2)));
    assert!(missing.1.contains("there is no such file"), "{}", missing.1);
    let readme = format!("{}/../../README.md", env!("CARGO_MANIFEST_DIR"));
    let no_design = run(&["commissioning", &readme]);
    assert_eq!((no_design.0.as_str(), no_design.2), ("", Some(2)));
    assert!(!no_design.1.is_empty() && !no_design.1.contains("panicked"));
}
