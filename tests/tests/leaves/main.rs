//! Every leaf of the document is read by a figure or a rule, or it stands on the list of those that wait for theirs.
//!
//! Read is what the calculation sheet has taken in, or noted as missing, over the example designs, the marked
//! examples of the rules, and a design that states every leaf. The list may only shrink.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

mod fixture;

use std::collections::BTreeSet;

use haulout_document::{Node, Tree};
use haulout_engine::{Ruleset, review};
use haulout_model::{About, Described, Origin};
use haulout_sheet::{Book, Case, Gap, Made};
use haulout_tests::{Loaded, examples, load, options, pointer, ruleset};

/// The leaves that wait, by the chapter that will read them.
const LIST: &str = include_str!("../../evidence/unread-leaves.md");

/// Read by the reports and the engine as words, not off the sheet.
const WORDS: &[&str] = &["project/", "drawing/", "variances/"];

#[test]
fn every_leaf_is_read_or_waits_on_the_list() {
    let (all, read) = (leaves(), read_leaves());
    let unread: BTreeSet<String> = all.difference(&read).cloned().collect();
    let listed: BTreeSet<String> =
        LIST.split('`').skip(1).step_by(2).filter(|word| word.contains('/')).map(str::to_owned).collect();
    let new: Vec<&String> = unread.difference(&listed).collect();
    let done: Vec<&String> = listed.difference(&unread).collect();
    assert!(new.is_empty(), "nothing reads these leaves, and they are not on the list: {new:#?}");
    assert!(done.is_empty(), "these are read by now, or gone: strike them off the list: {done:#?}");
}

#[test]
fn the_fixture_states_every_leaf() {
    let loaded = load(&fixture::full()).unwrap_or_else(|problems| panic!("{problems:#?}"));
    let schema = serde_json::from_str(haulout_schemas::DESIGN).expect("the published schema is JSON");
    let validator = jsonschema::validator_for(&schema).expect("the published schema is one");
    let design = serde_json::from_str(&fixture::full()).expect("the fixture is JSON");
    let faults: Vec<String> =
        validator.iter_errors(&design).map(|e| format!("{}: {e}", e.instance_path())).collect();
    assert!(faults.is_empty(), "{faults:#?}");
    let nodes = (0..loaded.tree.size() as u32).map(Node);
    let stated: BTreeSet<String> = nodes.filter_map(|n| leaf(&loaded.tree.pointer(n).to_string())).collect();
    let missing: Vec<String> = leaves().difference(&stated).cloned().collect();
    assert!(missing.is_empty(), "{missing:#?}");
}

/// The paths of all leaves, keys joined by a stroke, positions left out.
fn leaves() -> BTreeSet<String> {
    let mut all = BTreeSet::new();
    collect(&haulout_model::describe(), "", &mut all);
    all.retain(|path| !WORDS.iter().any(|w| path.starts_with(w)));
    all
}

fn collect(described: &[Described], above: &str, all: &mut BTreeSet<String>) {
    for one in described {
        let path = format!("{above}{}", one.key);
        match one.form {
            "object" | "list" => collect(&one.members, &format!("{path}/"), all),
            "id" | "kind" | "repeat" => {}
            _ => {
                all.insert(path);
            }
        }
    }
}

/// The leaf a pointer leads to or into; none for what is no leaf.
fn leaf(pointer: &str) -> Option<String> {
    let mut tokens: Vec<&str> = pointer.split('/').skip(1).collect();
    match (tokens.first(), tokens.get(1)) {
        (Some(&"kinds"), Some(&"pumps")) => drop(tokens.splice(..3.min(tokens.len()), ["circuits", "pump"])),
        (Some(&"kinds"), Some(&"pipes")) => drop(tokens.splice(..3.min(tokens.len()), ["circuits", "runs"])),
        _ => {}
    }
    let (mut members, mut path, mut form) = (haulout_model::describe(), Vec::new(), "object");
    for token in tokens {
        if !matches!(form, "object" | "list") {
            break;
        }
        let Some(at) = members.iter().position(|m| m.key == token) else { continue };
        let next = members.swap_remove(at);
        (members, form) = (next.members, next.form);
        path.push(next.key);
    }
    (!matches!(form, "object" | "list" | "id" | "kind" | "repeat")).then(|| path.join("/"))
}

fn read_leaves() -> BTreeSet<String> {
    // What is asked of all numbers alike, whether they are plausible, is no use that is made of them.
    let rules = ruleset().rules.into_iter().filter(|rule| rule.card.about != About::Part);
    let ruleset = Ruleset::new(rules.collect());
    let marked = ruleset.rules.iter().flat_map(|rule| rule.examples.iter().map(|e| e.design.to_string()));
    let mut texts: BTreeSet<String> = examples().into_iter().map(|(_, text)| text).chain(marked).collect();
    texts.insert(fixture::full());
    let mut pointers = BTreeSet::new();
    for text in texts {
        let loaded = load(&text).unwrap_or_else(|problems| panic!("{problems:#?}"));
        by_rules(&loaded, &ruleset, &mut pointers);
        by_figures(&loaded, &ruleset, &mut pointers);
    }
    pointers.iter().filter_map(|p| leaf(p)).collect()
}

fn by_rules(loaded: &Loaded, ruleset: &Ruleset, pointers: &mut BTreeSet<String>) {
    let review = review(&loaded.design, ruleset, &[], &options());
    taken_in(&review.book, &loaded.tree, pointers);
    for answer in &review.answers {
        noted(&answer.gaps, &loaded.tree, pointers);
    }
}

fn by_figures(loaded: &Loaded, ruleset: &Ruleset, pointers: &mut BTreeSet<String>) {
    let book = Book::new(&loaded.design, &ruleset.limits, &[]);
    for figure in haulout_figures::CATALOGUE.iter().filter(|f| f.card().about != About::Part) {
        for subject in figure.card().about.walk(&loaded.design).subjects {
            for case in Case::each(figure.card().axes) {
                if let Err(gaps) = figure.line(book.sheet(case), subject) {
                    noted(&gaps.0, &loaded.tree, pointers);
                }
            }
        }
    }
    taken_in(&book, &loaded.tree, pointers);
}

fn taken_in(book: &Book<'_>, tree: &Tree, pointers: &mut BTreeSet<String>) {
    let origin = |id: u32| match book.record(id).made {
        Made::Stated { origin, .. } | Made::Default(origin, ..) => Some(origin),
        _ => None,
    };
    let origins: Vec<Origin> = (0..book.len() as u32).filter_map(origin).collect();
    pointers.extend(origins.into_iter().map(|o| pointer(tree, o)));
}

fn noted(gaps: &[Gap], tree: &Tree, pointers: &mut BTreeSet<String>) {
    pointers.extend(gaps.iter().filter_map(|g| g.origin).map(|o| pointer(tree, o)));
}
