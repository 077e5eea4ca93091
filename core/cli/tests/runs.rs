//! Runs of the binary: bad inputs each with their own words and status 2, good files reviewed beside them.
#![allow(clippy::disallowed_methods, reason = "these tests write the files that the binary is run on")]

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

const SMALL: &str = include_str!("../../../example-designs/small-pool.json");

struct Ran {
    output: String,
    remarks: String,
    status: Option<i32>,
}

fn run(arguments: &[&str]) -> Ran {
    let done =
        Command::new(env!("CARGO_BIN_EXE_haulout")).args(arguments).output().expect("the binary was built");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    Ran { output: text(&done.stdout), remarks: text(&done.stderr), status: done.status.code() }
}

/// A folder of its own for one test, with files in it.
fn folder(name: &str, files: &[(&str, &[u8])]) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    // It may be left over from an earlier run.
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("the folder for tests can be written to");
    for (file, bytes) in files {
        std::fs::write(folder.join(file), bytes).expect("the folder for tests can be written to");
    }
    folder
}

fn name(path: &Path) -> &str {
    path.to_str().expect("the folder for tests has a plain name")
}

#[test]
fn every_bad_input_has_its_own_words_and_good_files_are_reviewed_beside_it() {
    let mixed = folder(
        "mixed",
        &[
            ("good.json", SMALL.as_bytes()),
            ("latin.json", b"{ \"edition\": 0, \"project\": { \"title\": \"\xfcber\" } }"),
            ("note.json", b"{ \"note\": 1 }"),
        ],
    );
    let empty = folder("empty", &[]);
    let ran = run(&["review", name(&mixed), name(&empty), "nowhere.json", "--on", "2026-11-25"]);
    assert_eq!(ran.status, Some(2));
    assert!(ran.output.contains("Pond turtle pool"), "{}", ran.output);
    assert!(ran.output.contains("does not belong to any character in UTF-8"), "{}", ran.output);
    for words in [
        "1 other .json file is no design",
        "the folder holds no design",
        "nowhere.json: there is no such file",
    ] {
        assert!(ran.remarks.contains(words), "{words}: {}", ran.remarks);
    }
}

#[test]
fn the_order_of_the_paths_changes_nothing() {
    let two = folder("two", &[("a.json", SMALL.as_bytes()), ("b.json", SMALL.as_bytes())]);
    let (a, b) = (two.join("a.json"), two.join("b.json"));
    let review =
        |paths: [&str; 2]| run(&["review", paths[0], paths[1], "--as", "json", "--on", "2026-11-25"]).output;
    let once = review([name(&a), name(&b)]);
    assert!(once.contains("\"answers\""));
    assert_eq!(once, review([name(&b), name(&a)]));
    assert_eq!(once, run(&["review", name(&two), "--as", "json", "--on", "2026-11-25"]).output);
}

/// Alone a design is reviewed by two threads, half the chapters each, in two books; among others by one.
#[test]
fn a_design_alone_is_told_as_it_is_among_others() {
    let folder_of_examples = concat!(env!("CARGO_MANIFEST_DIR"), "/../../example-designs");
    let read = |paths: &[&str]| {
        let ran = run(&[&["review", "--as", "json", "--on", "2026-11-25"], paths].concat());
        let told: serde_json::Value = serde_json::from_str(&ran.output).expect("the output is JSON");
        told["designs"].as_array().expect("a list").clone()
    };
    let together = read(&[folder_of_examples]);
    assert!(together.len() >= 4);
    for design in together {
        let file = design["file"].as_str().expect("its name");
        assert!(read(&[file]) == [design.clone()], "{file}");
    }
}

#[test]
fn an_output_that_is_closed_early_ends_the_run_quietly_and_is_not_taken_for_a_whole_one() {
    let many = folder("closed", &[("a.json", SMALL.as_bytes())]);
    let mut child = Command::new(env!("CARGO_BIN_EXE_haulout"))
        .args(["review", name(&many), "--as", "json"])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the binary was built");
    drop(child.stdout.take());
    let done = child.wait_with_output().expect("it ends by itself");
    assert_eq!(done.status.code(), Some(2));
    assert_eq!(String::from_utf8_lossy(&done.stderr), "");
}

#[test]
fn names_that_are_not_known_are_answered_with_those_that_are() {
    for (arguments, words) in [
        (vec!["schema", "nothing"], "there are design, review, sheet, rulebook, register"),
        (vec!["rulebook", "nothing"], "there is no rule \"nothing\""),
        (vec!["sheet", "nowhere.json", "nothing"], "there is no figure \"nothing\""),
        (vec!["sheet", "nowhere.json"], "there is no such file"),
        (vec!["review", "nowhere.json", "--on", "25.11.2026"], "a day is written as 2026-11-25"),
        (vec!["review", "nowhere.json", "--on", "2026-02-29"], "2026-02 has days 01 to 28"),
        (vec!["review", "nowhere.json", "--stge", "concept"], "--stage"),
        (vec!["register", "Emys orbiculars"], "the nearest is \"emys-orbicularis\""),
    ] {
        let ran = run(&arguments);
        assert_eq!(ran.status, Some(2), "{arguments:?}");
        assert!(ran.remarks.contains(words), "{arguments:?}: {}", ran.remarks);
        assert!(ran.output.is_empty());
    }
}

/// A review without a rule of the house would look better than it is.
#[test]
fn an_annex_that_cannot_be_used_stops_the_run() {
    let good = folder("annexed", &[("a.json", SMALL.as_bytes())]);
    let annex = folder("annex", &[("rule.rhai", b"let x = 1;")]);
    let ran = run(&["review", name(&good), "--annex", name(&annex)]);
    assert_eq!(ran.status, Some(2));
    assert!(ran.output.is_empty());
    for words in [
        "annex.json: the annex has no card; write a file",
        "rule.rhai: not used",
        "a script begins with its card",
        "line 1",
        "let x = 1;",
    ] {
        assert!(ran.remarks.contains(words), "{words}: {}", ran.remarks);
    }
}

#[test]
fn every_published_schema_is_printed_as_it_is() {
    for (name, text) in [("design", haulout_schemas::DESIGN), ("review", haulout_schemas::REVIEW)] {
        let ran = run(&["schema", name]);
        assert_eq!((ran.status, ran.output.as_str()), (Some(0), text));
    }
}
