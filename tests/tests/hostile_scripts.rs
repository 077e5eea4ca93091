//! Hostile scripts beside sound ones: what is wrong is told of the one file, and no other rule says anything else.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

#[path = "../../core/script/tests/scripts/common.rs"]
#[allow(dead_code, reason = "shared with the tests of the script room, which use all of it")]
mod common;
#[path = "../../core/script/tests/scripts/trials.rs"]
#[allow(dead_code, reason = "shared with the tests of the script room, which use all of it")]
mod trials;

use haulout_annex::{Folder, Source, join};
use haulout_engine::Ruleset;
use haulout_tests::{Said, bundled, examples, load, said};
use std::collections::BTreeMap;

use common::{CATALOGUE, LISTS, script};
use trials::{ANSWER, body, trials};

/// An annex of one script.
fn annex(name: &str, id: &str, text: &str) -> Folder {
    let card = format!(
        "{{ \"name\": \"{name}\", \"version\": \"1\", \"licence\": \"CC0-1.0\", \"authors\": [\"us\"] }}"
    );
    let file = |name: String, text: &str| Source { name, bytes: Ok(text.as_bytes().to_vec()) };
    Folder {
        path: name.to_owned(),
        files: vec![file("annex.json".into(), &card), file(format!("{id}.rhai"), text)],
    }
}

fn sound() -> Folder {
    let text = script(LISTS, &body("ANSWER")).replace("\"trial\"", "\"sound\"");
    annex("plain", "sound", &text)
}

#[test]
fn what_is_hostile_is_told_of_its_own_file_only() {
    for trial in trials() {
        let both = [sound(), annex("odd", "trial", &trial.text)];
        for folders in [both.clone(), [both[1].clone(), both[0].clone()]] {
            let Err(troubles) = join(Vec::new(), &folders, CATALOGUE) else {
                panic!("{}: {} is taken", trial.class, trial.what);
            };
            let files: Vec<&str> = troubles.iter().map(|t| t.file.as_str()).collect();
            assert_eq!(files, ["odd/trial.rhai"], "{}: {}", trial.class, trial.what);
        }
    }
    assert!(join(Vec::new(), &[sound()], CATALOGUE).is_ok(), "what is sound is taken after all of them");
}

/// What the rules of a ruleset say of every example, by example, rule and subject.
fn all_said(ruleset: &Ruleset) -> BTreeMap<String, Said> {
    let mut all = BTreeMap::new();
    for (name, text) in examples() {
        let loaded = load(&text).unwrap_or_else(|problems| panic!("{problems:#?}"));
        all.extend(said(&loaded, ruleset, &[]).into_iter().map(|(key, one)| (format!("{name}: {key}"), one)));
    }
    all
}

/// The largest answer that is taken, all bundled annexes, hostile scripts before and after: the built-in rules say the same.
#[test]
fn no_annex_changes_what_other_rules_say() {
    let alone = all_said(&Ruleset::new(haulout_rules::built_in()));
    let large = format!("let a = {ANSWER}; for n in 0..9 {{ a = all_of([a, a]); }} a");
    let large = script(LISTS, &body(&large)).replace("\"depth\"", "\"greatest-depth\"");
    let mut folders = bundled::annexes();
    folders.push(annex("large", "trial", &large));
    let refused = trials()
        .iter()
        .filter(|t| haulout_script::compile("trial.rhai", &t.text, CATALOGUE).is_err())
        .count();
    let joined = join(haulout_rules::built_in(), &folders, haulout_figures::CATALOGUE);
    let together = all_said(&joined.unwrap_or_else(|troubles| panic!("{troubles:#?}")));
    assert!(refused > 60 && together.len() > alone.len(), "both take part");
    for (key, one) in &alone {
        let other = &together[key];
        assert!(same(one, other), "{key}: {one:?} alone, {other:?} with annexes");
    }
}

/// Bit for bit; what is no number is the same as what is none.
fn same(one: &Said, other: &Said) -> bool {
    let bits = |said: &Said| said.numbers.iter().map(|n| n.to_bits()).collect::<Vec<_>>();
    one.outcome == other.outcome && bits(one) == bits(other) && one.places == other.places
}
