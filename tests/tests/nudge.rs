//! Every stated value of every example is changed a little in the text; each answer and figure that moves must list
//! that place, and the same change as a substitution must give the same numbers without reading again.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::{BTreeMap, BTreeSet};

use haulout_document::{Kind, Node, Tree};
use haulout_engine::Ruleset;
use haulout_model::ChoiceCard;
use haulout_sheet::{Book, Case};
use haulout_tests::{
    Loaded, Said, bundled, described_at, examples, gap_places, line_places, load, number, ruleset, said,
};
use rayon::prelude::*;

#[test]
fn what_moves_lists_what_moved_it() {
    let ruleset = ruleset();
    let moved = moves(examples(), &|loaded| everything(loaded, &ruleset));
    assert!(moved > 100, "only {moved} changes moved anything: the test has lost its grip");
}

/// The scripts of the bundled annexes are held to the same.
#[test]
fn what_moves_a_script_is_listed_by_it() {
    let ruleset = bundled::scripts();
    let moved = moves(bundled::trials(), &|loaded| said(loaded, &ruleset, &[]));
    assert!(moved > 100, "only {moved} changes moved anything: the test has lost its grip");
}

/// All that is said of a design, by what says it.
type Saying<'s> = dyn Fn(&Loaded) -> BTreeMap<String, Said> + Sync + 's;

/// How many changes moved anything; every move is checked.
fn moves(designs: Vec<(String, String)>, everything: &Saying<'_>) -> usize {
    let mut moved_something = 0;
    for (name, text) in designs {
        let base = load(&text).expect("the examples are read without a problem");
        let before = everything(&base);
        let moved = |node: u32| -> usize {
            let one = |changed: &String| {
                let Ok(after) = load(changed) else { return false };
                check(&name, &base, &before, &everything(&after), Node(node), changed)
            };
            nudged(&base.tree, Node(node)).iter().filter(|changed| one(changed)).count()
        };
        moved_something += (0..base.tree.size() as u32).into_par_iter().map(moved).sum::<usize>();
    }
    moved_something
}

/// Whether anything moved; every move is checked.
fn check(
    name: &str,
    base: &Loaded,
    before: &BTreeMap<String, Said>,
    after: &BTreeMap<String, Said>,
    node: Node,
    changed: &str,
) -> bool {
    let pointer = base.tree.pointer(node).to_string();
    let mut moved = false;
    for (key, was) in before {
        let Some(is) = after.get(key) else {
            panic!("{name}: {pointer} changed the set of answers: {key} is gone")
        };
        if was.outcome == is.outcome && was.numbers == is.numbers {
            continue;
        }
        moved = true;
        let listed = |said: &Said| said.places.iter().any(|p| contains(p, &pointer));
        assert!(
            listed(is),
            "{name}: {key} moved with {pointer} and does not list it\n{was:?}\n{is:?}\n{changed}"
        );
        assert!(
            listed(was) || was.outcome == "not-assessed",
            "{name}: {key} did not list {pointer} before it moved"
        );
    }
    moved
}

fn contains(place: &str, pointer: &str) -> bool {
    pointer == place || pointer.strip_prefix(place).is_some_and(|rest| rest.starts_with('/'))
}

/// All answers, and all figures in all their cases.
fn everything(loaded: &Loaded, ruleset: &Ruleset) -> BTreeMap<String, Said> {
    let mut all = said(loaded, ruleset, &[]);
    let book = Book::new(&loaded.design, &ruleset.limits, &[]);
    for figure in haulout_figures::CATALOGUE {
        let card = figure.card();
        for subject in card.about.walk(&loaded.design).subjects {
            for case in Case::each(card.axes) {
                let key = format!("figure {} {} {:?}", card.id, subject.key(&loaded.design), case.words());
                let one = match figure.line(book.sheet(case), subject) {
                    Ok(line) => Said {
                        outcome: "worked",
                        numbers: vec![number(&book, line)],
                        places: line_places(&book, &loaded.tree, &[line]),
                    },
                    Err(gaps) => Said {
                        outcome: "not-assessed",
                        numbers: Vec::new(),
                        places: gap_places(&book, &loaded.tree, &gaps.0),
                    },
                };
                all.insert(key, one);
            }
        }
    }
    all
}

/// The text with the value of a node changed, in both directions.
fn nudged(tree: &Tree, node: Node) -> Vec<String> {
    let Some(described) = described_at(tree, node) else { return Vec::new() };
    let typed = tree.typed(node);
    let values: Vec<String> = match (described.form, tree.kind(node)) {
        // Names decide which subjects there are; words are only read aloud.
        ("id" | "text" | "reference" | "references" | "kind", _) => Vec::new(),
        // How many copies there are decides which subjects there are.
        ("repeat", _) if tree.key(node).as_deref() == Some("count") => Vec::new(),
        // The unit of the drawing is part of how a coordinate is written, as "m" is of a string.
        ("choice", _) if tree.key(node).as_deref() == Some("unit") => Vec::new(),
        ("choice", Kind::String) => other_words(typed, described.choice),
        (_, Kind::Number) => changed_number(typed),
        (_, Kind::True) => vec!["false".to_owned()],
        (_, Kind::False) => vec!["true".to_owned()],
        (_, Kind::String) if !is_a_name(tree, node) => changed_string(typed),
        _ => Vec::new(),
    };
    let span = tree.span(node);
    let text = tree.text();
    let (head, tail) = (&text[..span.start as usize], &text[span.end as usize..]);
    values.into_iter().map(|value| format!("{head}{value}{tail}")).collect()
}

/// Strings inside levels, outlines and curves that name something or say a unit.
fn is_a_name(tree: &Tree, node: Node) -> bool {
    const NAMES: &[&str] =
        &["of", "above", "below", "flow", "head", "mirror", "face", "status", "by", "on", "note"];
    let key = tree.key(node).unwrap_or_default();
    let hung =
        tree.parent(node).is_some_and(|p| tree.member(p, "above").or(tree.member(p, "below")).is_some());
    let inset = tree.parent(node).is_some_and(|p| tree.key(p).as_deref() == Some("inset"));
    NAMES.contains(&&*key) && !((hung || inset) && key == "by")
}

fn other_words(typed: &str, card: Option<&'static ChoiceCard>) -> Vec<String> {
    let words = card.map(|c| c.options).unwrap_or_default();
    words.iter().map(|w| format!("\"{w}\"")).filter(|w| w != typed).collect()
}

fn changed_number(typed: &str) -> Vec<String> {
    let value: f64 = typed.parse().expect("the reader has read it as a number");
    let whole = !typed.contains('.') && !typed.contains('e');
    let by = if whole { 1.0 } else { (value.abs() * 0.02).max(0.01) };
    // Coordinates typed as whole numbers are moved by a centimetre too: a metre would tear outlines apart.
    [by, -by, 0.01, -0.01]
        .into_iter()
        .map(|d| format!("{:.6}", value + d))
        .map(|s| s.trim_end_matches('0').trim_end_matches('.').to_owned())
        .collect()
}

fn changed_string(typed: &str) -> Vec<String> {
    let word = typed.trim_matches('"');
    if word.split('.').count() == 3 && word.split('.').all(|n| n.parse::<u16>().is_ok()) {
        return changed_counts(word);
    }
    let Some(start) = word.find(|c: char| c.is_ascii_digit()) else {
        return Vec::new();
    };
    let rest = &word[start..];
    let end = rest.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(rest.len());
    let Ok(value) = rest[..end].parse::<f64>() else {
        return Vec::new();
    };
    let by = (value.abs() * 0.02).max(0.001);
    [by, -by].into_iter().map(|d| format!("\"{}{:.6}{}\"", &word[..start], value + d, &rest[end..])).collect()
}

fn changed_counts(word: &str) -> Vec<String> {
    let counts: Vec<u16> = word.split('.').filter_map(|n| n.parse().ok()).collect();
    let print = |c: &[u16]| format!("\"{}.{}.{}\"", c[0], c[1], c[2]);
    (0..3)
        .map(|i| {
            let mut more = counts.clone();
            more[i] += 1;
            print(&more)
        })
        .collect()
}

/// The roots of the numbers themselves: a substitution at each stated number gives what the changed text gives.
#[test]
fn a_substitution_gives_what_the_changed_text_gives() {
    let tried = substituted(examples(), &ruleset());
    assert!(tried.len() > 80, "only {} places were tried", tried.len());
}

#[test]
fn a_substitution_gives_a_script_what_the_changed_text_gives() {
    let tried = substituted(bundled::trials(), &bundled::scripts());
    assert!(tried.len() > 80, "only {} places were tried", tried.len());
}

/// The places where a substitution was held against the changed text.
fn substituted(designs: Vec<(String, String)>, ruleset: &Ruleset) -> BTreeSet<String> {
    let mut tried = BTreeSet::new();
    for (name, text) in designs {
        let base = load(&text).expect("the examples are read without a problem");
        for node in (0..base.tree.size() as u32).map(Node) {
            let Some((changed, value)) = one_percent_up(&base.tree, node) else {
                continue;
            };
            let Ok(after) = load(&changed) else { continue };
            let substitution = haulout_sheet::Substitution { node: node.0, part: 0, value };
            let (by_text, by_substitution) =
                (said(&after, ruleset, &[]), said(&base, ruleset, &[substitution]));
            for (key, text_says) in &by_text {
                let sheet_says = &by_substitution[key];
                assert_eq!(
                    text_says.outcome,
                    sheet_says.outcome,
                    "{name}: {key} at {}",
                    base.tree.pointer(node)
                );
                for (a, b) in text_says.numbers.iter().zip(&sheet_says.numbers) {
                    assert!(
                        (a - b).abs() <= 1e-12 * a.abs(),
                        "{name}: {key} at {}: {a} and {b}",
                        base.tree.pointer(node)
                    );
                }
            }
            tried.insert(format!("{name}{}", base.tree.pointer(node)));
        }
    }
    tried
}

/// A single quantity one per cent up: the changed text, and the value in SI for the substitution.
fn one_percent_up(tree: &Tree, node: Node) -> Option<(String, f64)> {
    let word = tree.string(node)?.into_owned();
    let number =
        described_at(tree, node).is_some_and(|d| matches!(d.form, "number" | "level" | "shape" | "point"));
    if !number || is_a_name(tree, node) {
        return None;
    }
    let start = word.find(|c: char| c.is_ascii_digit())?;
    let rest = &word[start..];
    let end = rest.find(|c: char| !c.is_ascii_digit() && c != '.')?;
    let value: f64 = rest[..end].parse().ok()?;
    let changed = format!("{}{}{}", &word[..start], value * 1.01, &rest[end..]);
    let unit = rest[end..].trim();
    let unit = haulout_quantity::unit(unit)?;
    let read = if tree.key(node).as_deref() == Some("swing") {
        haulout_quantity::read_difference(&changed).ok()?
    } else {
        haulout_quantity::read(&changed, unit.dimension).ok()?
    };
    let haulout_quantity::Parts::One(si) = read.parts else {
        return None;
    };
    let span = tree.span(node);
    let text = tree.text();
    Some((format!("{}\"{changed}\"{}", &text[..span.start as usize], &text[span.end as usize..]), si))
}
