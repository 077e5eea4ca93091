//! Runs of `begin annex` and `rehearse`: what is begun is green at once, and what is not as marked is shown at its place.
#![allow(clippy::disallowed_methods, reason = "these tests write the files that the binary is run on")]

use std::path::{Path, PathBuf};
use std::process::Command;

use serde_json::Value;

fn run(arguments: &[&str]) -> (String, String, Option<i32>) {
    let done =
        Command::new(env!("CARGO_BIN_EXE_haulout")).args(arguments).output().expect("the binary was built");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    (text(&done.stdout), text(&done.stderr), done.status.code())
}

/// The path of a folder that is not there yet.
fn fresh(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("rehearsals").join(name);
    // It may be left over from an earlier run.
    let _ = std::fs::remove_dir_all(&folder);
    folder
}

/// An annex as it is begun.
fn begun(name: &str) -> (PathBuf, String) {
    let folder = fresh(name);
    let path = folder.to_str().expect("the folder for tests has a plain name").to_owned();
    let (page, _, status) = run(&["begin", "annex", &path]);
    assert!(status == Some(0) && page.contains("water-to-wade-in.rhai"), "{page}");
    (folder, path)
}

fn write(file: &Path, text: &str) {
    std::fs::create_dir_all(file.parent().expect("it lies in a folder")).expect("it can be written to");
    std::fs::write(file, text).expect("the folder for tests can be written to");
}

fn change(file: &Path, from: &str, to: &str) {
    let text = std::fs::read_to_string(file).expect("it was written");
    assert!(text.contains(from), "{from} stands in {}", file.display());
    write(file, &text.replacen(from, to, 1));
}

#[test]
fn an_annex_that_is_begun_rehearses_green_and_is_never_written_over() {
    let (_, path) = begun("begun");
    let (page, _, status) = run(&["rehearse", &path]);
    assert_eq!(status, Some(0), "{page}");
    assert!(page.contains("4 of 4") && page.contains("everything as marked"), "{page}");
    assert!(!page.contains("never seen"), "{page}");
    let (_, remarks, status) = run(&["begin", "annex", &path]);
    assert!(status == Some(2) && remarks.contains("there already and not empty"), "{remarks}");
}

/// The limit of 0.80 m made 0.50 m: the example of 0.60 m, marked as met, has 0.10 m too much.
#[test]
fn what_is_not_as_marked_is_shown_with_what_came() {
    let (folder, path) = begun("changed");
    change(&folder.join("water-to-wade-in.rhai"), "\"0.80 m\"", "\"0.50 m\"");
    let (page, _, status) = run(&["rehearse", &path]);
    assert_eq!(status, Some(1), "{page}");
    for told in ["expected is met, the rule says short", "a basin of 0.60 m", "line 22", "it has 0.600 m,"] {
        assert!(page.contains(told), "{told}: {page}");
    }
    let json: Value =
        serde_json::from_str(&run(&["rehearse", &path, "--as", "json"]).0).expect("a program reads it");
    let schema: Value = serde_json::from_str(haulout_schemas::REHEARSAL).expect("a published schema is JSON");
    let validator = jsonschema::validator_for(&schema).expect("a published schema is one");
    let wrong: Vec<String> = validator.iter_errors(&json).map(|e| e.to_string()).collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert_eq!((&json["holds"], &json["answers"][0]["got"]), (&Value::from(false), &Value::from("short")));
}

/// A gap that no example shows is told, without a fault.
#[test]
fn rules_never_seen_with_an_outcome_are_listed() {
    let (folder, path) = begun("never-seen");
    change(
        &folder.join("water-to-wade-in.rhai"),
        "\"+1.10 m\" } }]",
        "\"+1.10 m\" }, \"depth\": \"0.7 m\" }]",
    );
    change(&folder.join("water-to-wade-in.rhai"), "\"not-assessed\"", "\"met\"");
    let (page, _, status) = run(&["rehearse", &path]);
    assert_eq!(status, Some(0), "{page}");
    assert!(page.contains("never seen not-assessed") && !page.contains("never seen short"), "{page}");
}

const SMALL: &str = include_str!("../../../example-designs/small-pool.json");

#[test]
fn a_rehearsal_design_must_give_what_stands_beside_it() {
    let (folder, path) = begun("designs");
    let design = folder.join("rehearsal/pond.json");
    let list = folder.join("rehearsal/pond.expected.json");
    write(&design, SMALL);
    let without = run(&["rehearse", &path]);
    assert!(without.2 == Some(2) && without.1.contains("nothing says what it must give"), "{}", without.1);
    let marked = |rule: &str, expected: &str| {
        let entry = format!(
            "{{ \"rule\": \"{rule}\", \"subject\": \"pool:main\", \"expected\": \"{expected}\", \"place\": \"/pools/0/depth\" }}"
        );
        write(&list, &format!("{{\n  \"answers\": [\n    {entry}\n  ]\n}}\n"));
        run(&["rehearse", &path])
    };
    let sound = marked("water-to-wade-in", "met");
    assert!(sound.2 == Some(0) && sound.0.contains("1 rehearsal design: everything"), "{sound:?}");
    let wrong = marked("water-to-wade-in", "short");
    assert!(wrong.2 == Some(1) && wrong.0.contains("line 3"), "{wrong:?}");
    let unknown = marked("water-to-wade-on", "met");
    assert!(
        unknown.2 == Some(2) && unknown.1.contains("there is no rule \"water-to-wade-on\"; the nearest"),
        "{unknown:?}"
    );
    // A limit that makes the pool fall short, while the list speaks of another rule only.
    change(&folder.join("water-to-wade-in.rhai"), "\"0.80 m\"", "\"0.05 m\"");
    let unlisted = marked("depth-of-the-scheme", "does-not-apply");
    assert!(unlisted.0.contains("it falls short, and the list does not say so"), "{unlisted:?}");
    assert_eq!(unlisted.2, Some(1));
    write(&list, "{ \"answers\": [{ \"rule\": 7 }] }");
    let broken = run(&["rehearse", &path]);
    assert!(broken.2 == Some(2) && broken.1.contains("pond.expected.json"), "{broken:?}");
    write(
        &list,
        "{ \"answers\": [{ \"rule\": \"water-to-wade-in\", \"subject\": \"pool:main\", \"expected\": \"met\" }] }",
    );
    write(&design, "{ \"edition\": 0 }");
    let unsound = run(&["rehearse", &path]);
    assert!(unsound.2 == Some(2) && unsound.1.contains("pond.json"), "{unsound:?}");
}

#[test]
fn what_is_no_annex_cannot_be_rehearsed() {
    let folder = fresh("nothing");
    let (_, remarks, status) = run(&["rehearse", folder.to_str().expect("a plain name")]);
    assert!(status == Some(2) && remarks.contains("cannot be opened as a folder"), "{remarks}");
}
