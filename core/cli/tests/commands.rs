//! Commands beside the review: register, begin, markdown, help, completions and manual pages.
#![allow(
    clippy::disallowed_methods,
    reason = "these tests read and write the files that the binary is run on"
)]

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

fn run(arguments: &[&str]) -> (String, String, Option<i32>) {
    let done = Command::new(env!("CARGO_BIN_EXE_haulout"))
        .args(arguments)
        .stdin(Stdio::null())
        .output()
        .expect("the binary was built");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    (text(&done.stdout), text(&done.stderr), done.status.code())
}

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    // It may be left over from an earlier run.
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("the folder for tests can be written to");
    folder
}

fn held_to(schema: &str, text: &str) -> serde_json::Value {
    let schema: serde_json::Value = serde_json::from_str(schema).expect("a published schema is JSON");
    let value = serde_json::from_str(text).expect("the output is JSON");
    let validator = jsonschema::validator_for(&schema).expect("a published schema is one");
    let wrong: Vec<String> = validator.iter_errors(&value).map(|e| e.to_string()).collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
    value
}

/// 20 cm and its source stand in the register of the program (R package geiger, after Jaffe et al. 2011).
#[test]
fn the_register_is_printed_whole_or_species_by_species() {
    let all = held_to(haulout_schemas::REGISTER, &run(&["register", "--as", "json"]).0);
    assert!(all["species"].as_array().is_some_and(|s| s.len() >= 14));
    assert!(all["authorities"].as_array().is_some_and(|a| a.len() >= 6));
    let one = held_to(haulout_schemas::REGISTER, &run(&["register", "emys orbicularis", "--as", "json"]).0);
    assert_eq!(one["species"][0]["key"], "emys-orbicularis");
    assert_eq!(one["authorities"], serde_json::json!([]));
    let (page, _, status) = run(&["register", "Emys-Orbicularis"]);
    assert_eq!(status, Some(0));
    assert!(page.contains("body-length   20.0 cm") && page.contains("Jaffe, Slater & Alfaro 2011"), "{page}");
}

#[test]
fn a_design_that_is_begun_has_no_problems_and_is_never_written_over() {
    let folder = folder("begun");
    let file = folder.join("pond.json");
    let name = file.to_str().expect("the folder for tests has a plain name");
    let arguments = [
        "begin",
        "design",
        name,
        "--title",
        "Pond \"room\"",
        "--hall",
        "20 ft x 10 ft",
        "--species",
        "Emys orbicularis",
        "--sexes",
        "1.3.0",
        "--species",
        "trachemys-scripta",
        "--depth",
        "2 ft",
        "--stage",
        "concept",
        "--held-to",
        "eu-2010-63",
        "--held-to",
        "ibc-2021",
    ];
    let (output, remarks, status) = run(&arguments);
    assert_eq!(status, Some(0), "{remarks}");
    assert!(output.contains("haulout-design.schema.json beside it"), "{output}");
    let text = std::fs::read_to_string(&file).expect("it was written");
    assert!(text.contains("\"outline\": [[0, 0], [20, 0], [20, 10], [0, 10]]"), "{text}");
    held_to(haulout_schemas::DESIGN, &text);
    let (page, remarks, status) = run(&["review", name]);
    assert_eq!(status, Some(1), "{remarks}");
    assert!(page.contains("to be decided"), "{page}");
    let (_, remarks, status) = run(&arguments);
    assert_eq!(status, Some(2));
    assert!(remarks.contains("is there already"), "{remarks}");
    assert_eq!(std::fs::read_to_string(&file).ok(), Some(text));
    let replaced = run(&["begin", "design", name, "--title", "Other", "--replace"]);
    assert_eq!(replaced.2, Some(0));
    let (_, remarks, status) = run(&["begin", "design", "/nowhere/at/all.json", "--title", "x"]);
    assert_eq!(status, Some(2));
    assert!(remarks.contains("cannot be written"), "{remarks}");
}

#[test]
fn nobody_to_answer_writes_nothing() {
    let file = folder("silent").join("design.json");
    let (_, remarks, status) = run(&["begin", "design", file.to_str().expect("a plain name")]);
    assert_eq!(status, Some(2));
    assert!(remarks.contains("nobody is there to answer"), "{remarks}");
    assert!(!file.exists());
}

#[test]
fn markdown_holds_the_tables_of_a_ticket() {
    let small = concat!(env!("CARGO_MANIFEST_DIR"), "/../../example-designs/small-pool.json");
    let (text, _, status) = run(&["review", small, "--as", "markdown", "--on", "2026-11-25"]);
    assert_eq!(status, Some(0));
    for words in [
        "# Pond turtle pool, winter garden",
        "## Schedule",
        "## Waiting for",
        "## To be proved",
        "## Caution",
    ] {
        assert!(text.contains(words), "{words}:\n{text}");
    }
    // Every row of a table has as many cells as the row above it.
    let cells = |line: &str| line.replace("\\|", "").matches('|').count();
    let rows: Vec<&str> = text.lines().collect();
    for pair in rows.windows(2).filter(|pair| pair.iter().all(|line| line.starts_with('|'))) {
        assert_eq!(cells(pair[0]), cells(pair[1]), "{pair:#?}");
    }
}

#[test]
fn every_command_teaches_by_examples_and_names_its_exit_statuses() {
    for command in ["review", "sheet", "rulebook", "schema", "register", "completions", "manual-pages"] {
        let (help, ..) = run(&[command, "--help"]);
        let examples = help.matches(&format!("  haulout {command}")).count();
        assert!(examples >= 1 && help.contains("Examples:") && help.contains("Exit status: 0"), "{help}");
    }
    assert!(run(&["begin", "design", "--help"]).0.contains("haulout begin design pond.json"));
}

#[test]
fn completions_and_manual_pages_are_made() {
    for shell in ["bash", "zsh", "fish"] {
        let (script, _, status) = run(&["completions", shell]);
        assert_eq!(status, Some(0));
        assert!(script.contains("haulout") && script.contains("annex"), "{shell}");
    }
    let folder = folder("pages").join("man1");
    assert_eq!(run(&["manual-pages", folder.to_str().expect("a plain name")]).2, Some(0));
    for page in ["haulout.1", "haulout-review.1", "haulout-register.1"] {
        let text = std::fs::read_to_string(folder.join(page)).expect("the page was written");
        assert!(text.contains(".SH NAME"), "{page}");
    }
}

#[test]
fn house_rules_stand_in_the_rulebook_and_a_sheet_takes_their_folder() {
    let annex = concat!(env!("CARGO_MANIFEST_DIR"), "/../../rules/annexes/house-model");
    let small = concat!(env!("CARGO_MANIFEST_DIR"), "/../../example-designs/small-pool.json");
    assert!(!run(&["rulebook"]).0.contains("resting-shallows"));
    assert!(run(&["rulebook", "--annex", annex]).0.contains("resting-shallows"));
    assert_eq!(run(&["sheet", small, "--annex", annex]).2, Some(0));
    let (output, remarks, status) = run(&["sheet", small, "--annex", "nowhere"]);
    assert_eq!((output.as_str(), status), ("", Some(2)));
    assert!(remarks.contains("cannot be opened as a folder"), "{remarks}");
}
