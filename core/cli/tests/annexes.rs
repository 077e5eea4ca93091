//! Runs of the binary with annexes and specifications: every output names them and repeats what they loosened.
#![allow(clippy::disallowed_methods, reason = "these tests write the files that the binary is run on")]

use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

const SMALL: &str = include_str!("../../../example-designs/small-pool.json");
const RULE: &str = include_str!("../../../rules/annexes/house-model/resting-shallows.rhai");

fn run(arguments: &[&str]) -> (String, String, Option<i32>) {
    let done =
        Command::new(env!("CARGO_BIN_EXE_haulout")).args(arguments).output().expect("the binary was built");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    (text(&done.stdout), text(&done.stderr), done.status.code())
}

/// A folder of its own for one test, with files in it.
fn folder(name: &str, files: &[(&str, &str)]) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("annexes").join(name);
    // It may be left over from an earlier run.
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("the folder for tests can be written to");
    for (file, text) in files {
        std::fs::write(folder.join(file), text).expect("the folder for tests can be written to");
    }
    folder
}

fn name(path: &Path) -> &str {
    path.to_str().expect("the folder for tests has a plain name")
}

const CARD: &str = r#"{
  "name": "reedwater", "version": "1.2.0", "licence": "CC0-1.0", "authors": ["the keepers"],
  "limits": [
    { "rule": "guard-height", "limit": "height", "row": "uk-ad-k", "value": "0.9 m", "reason": "a low wall stands before it" },
    { "rule": "depth-of-the-scheme", "limit": "depth", "row": "to 20 cm", "value": "40 cm" }
  ],
  "demands": [{ "rule": "kind-is-used", "demand": "shall" }],
  "register": [{ "species": "emys-orbicularis", "values": {
    "body-length": { "value": "19 cm", "basis": "reported", "source": "studbook of the house, 2025" } } }]
}"#;

fn annexed(test: &str) -> PathBuf {
    folder(&format!("{test}-annex"), &[("annex.json", CARD), ("resting-shallows.rhai", RULE)])
}

#[test]
fn every_output_names_the_annex_its_digest_and_what_it_loosened() {
    let design = folder("every-design", &[("small.json", SMALL)]).join("small.json");
    let annex = annexed("every");
    let (design, annex) = (name(&design), name(&annex));
    let json = run(&["review", design, "--annex", annex, "--as", "json", "--on", "2026-11-25"]).0;
    let json: Value = serde_json::from_str(&json).expect("a program reads it");
    let digest = json["ruleset"]["annexes"][0]["digest"].as_str().expect("it has a digest").to_owned();
    assert_eq!(json["ruleset"]["loosened"][0]["reason"], "a low wall stands before it");
    // The built-in limit is written in millimetres: 0.9 m are 900 of them.
    assert_eq!(json["ruleset"]["loosened"][0]["to"], 900.0);
    assert_eq!(json["ruleset"]["loosened"][0]["unit"], "mm");
    let schema: Value = serde_json::from_str(haulout_schemas::REVIEW).expect("a schema is JSON");
    let validator = jsonschema::validator_for(&schema).expect("a published schema is one");
    assert!(validator.is_valid(&json), "{:#?}", validator.iter_errors(&json).next());

    let outputs: [&[&str]; 6] = [
        &["review", design, "--annex", annex, "--on", "2026-11-25"],
        &["review", design, "--annex", annex, "--as", "markdown"],
        &["sheet", design, "--annex", annex],
        &["rulebook", "--annex", annex],
        &["rulebook", "guard-height", "--annex", annex],
        &["drawing", design, "--annex", annex],
    ];
    for arguments in outputs {
        let (output, remarks, _) = run(arguments);
        let plain: String = output.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(
            plain.contains("reedwater") && plain.contains(&digest[..20]),
            "{arguments:?}: {remarks}{plain}"
        );
        assert!(plain.contains("a low wall stands before it"), "{arguments:?}: {plain}");
    }
    for arguments in [
        ["sheet", design, "--as", "json", "--annex", annex].as_slice(),
        &["rulebook", "--as", "json", "--annex", annex],
    ] {
        let value: Value = serde_json::from_str(&run(arguments).0).expect("a program reads it");
        assert_eq!(value["annexed"]["annexes"][0]["digest"], digest.as_str(), "{arguments:?}");
        assert_eq!(value["annexed"]["loosened"][0]["reason"], "a low wall stands before it");
    }
}

#[test]
fn what_is_wrong_is_shown_with_its_line_and_ends_with_status_two() {
    let design = folder("wrong-design", &[("small.json", SMALL)]);
    let wrong = RULE.replace("at_least(it.figure(\"resting-share\")", "at_lest(it.figure(\"resting-share\")");
    let broken = folder(
        "wrong-annex",
        &[("annex.json", "{ \"name\": \"x\",\n  \"limit\": [] }"), ("resting-shallows.rhai", &wrong)],
    );
    let (output, remarks, status) = run(&["review", name(&design), "--annex", name(&broken)]);
    assert_eq!((output.as_str(), status), ("", Some(2)));
    for words in [
        "annex.json: not used",
        "\"limit\": [] }",
        "lacks the key \"licence\"",
        "resting-shallows.rhai: not used",
        "at_lest",
        "\"at_least\"",
    ] {
        assert!(remarks.contains(words), "{words}: {remarks}");
    }
    let bare = folder("bare-annex", &[("resting-shallows.rhai", RULE)]);
    let (_, remarks, status) = run(&["review", name(&design), "--annex", name(&bare)]);
    assert!(status == Some(2) && remarks.contains("has no card; write a file annex.json"), "{remarks}");
}

#[test]
fn a_specification_names_designs_stage_authorities_and_annexes_from_where_it_lies() {
    let top = folder("specified", &[]);
    let rooms = top.join("rooms");
    let house = top.join("house");
    for (folder, file, text) in [(&rooms, "small.json", SMALL), (&house, "resting-shallows.rhai", RULE)] {
        std::fs::create_dir_all(folder).expect("the folder for tests can be written to");
        std::fs::write(folder.join(file), text).expect("the folder for tests can be written to");
    }
    let card = "{ \"name\": \"house\", \"version\": \"1\", \"licence\": \"CC0-1.0\", \"authors\": [\"us\"] }";
    std::fs::write(house.join("annex.json"), card).expect("the folder for tests can be written to");
    let text = "{ \"designs\": [\"rooms\"], \"stage\": \"as-built\", \"annexes\": [\"house\"],\n  \"held-to\": { \"welfare\": [\"de-1997\"] }, \"plus-minus\": { \"length\": \"5 mm\" } }";
    let file = top.join("reedwater.json");
    std::fs::write(&file, text).expect("the folder for tests can be written to");
    let (output, remarks, status) = run(&["review", "--specification", name(&file), "--on", "2026-11-25"]);
    assert_ne!(status, Some(2), "{remarks}");
    let plain: String = output.split_whitespace().collect::<Vec<_>>().join(" ");
    for words in
        ["as-built stage", "stage: as-built instead of", "by the specification", "house 1, CC0-1.0", "± 5 mm"]
    {
        assert!(plain.contains(words), "{words}: {plain}");
    }
    let (output, ..) = run(&["review", "--specification", name(&file), "--as", "json"]);
    assert!(output.contains("\"resting-shallows\""), "the rule of the annex answers");
    let (output, ..) =
        run(&["review", "--specification", name(&file), "--stage", "concept", "--on", "2026-11-25"]);
    let plain: String = output.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(plain.contains("concept stage") && !plain.contains("as-built instead"), "{plain}");
    std::fs::write(&file, "{ \"stage\": \"soon\" }").expect("the folder for tests can be written to");
    let (_, remarks, status) = run(&["review", "--specification", name(&file)]);
    assert!(status == Some(2) && remarks.contains("{ \"stage\": \"soon\" }"), "{remarks}");
}

#[test]
fn a_folder_that_is_not_there_and_a_repeated_rule_end_with_status_two() {
    let design = folder("absent-design", &[("small.json", SMALL)]);
    let (small, absent) = (design.join("small.json"), design.join("no-such-annex"));
    for job in [
        ["review", name(&small)].as_slice(),
        &["sheet", name(&small)],
        &["drawing", name(&small)],
        &["rulebook"],
    ] {
        let (output, remarks, status) = run(&[job, &["--annex", name(&absent)]].concat());
        assert_eq!((output.as_str(), status), ("", Some(2)), "{job:?}");
        assert!(
            remarks.contains("no-such-annex: the annex cannot be opened as a folder"),
            "{job:?}: {remarks}"
        );
    }
    let first = folder("absent-first", &[("annex.json", CARD), ("resting-shallows.rhai", RULE)]);
    let other = CARD.replace("\"reedwater\"", "\"other\"");
    let second = folder("absent-second", &[("annex.json", &other), ("resting-shallows.rhai", RULE)]);
    let (output, remarks, status) =
        run(&["review", name(&design), "--annex", name(&first), "--annex", name(&second)]);
    assert_eq!((output.as_str(), status), ("", Some(2)));
    assert!(remarks.contains("already, in the annex reedwater"), "{remarks}");
    let (_, remarks, status) = run(&["review", "--specification", name(&absent)]);
    assert!(status == Some(2) && remarks.contains("no-such-annex"), "{remarks}");
}

#[test]
fn the_schemas_of_both_cards_are_printed_and_hold_what_these_tests_use() {
    for (schema, card) in [
        ("annex", CARD),
        ("annex", include_str!("../../../rules/annexes/house-model/annex.json")),
        ("specification", "{ \"designs\": [\"rooms\"], \"stage\": \"as-built\" }"),
    ] {
        let (output, _, status) = run(&["schema", schema]);
        assert_eq!(status, Some(0), "{schema}");
        let printed: Value = serde_json::from_str(&output).expect("a schema is JSON");
        let validator = jsonschema::validator_for(&printed).expect("a published schema is one");
        assert!(validator.is_valid(&serde_json::from_str(card).expect("a card is JSON")), "{schema}");
        assert!(!validator.is_valid(&serde_json::json!({ "colour": 1 })), "{schema}");
    }
}
