//! No two rules are one: over many designs each pair gives different outcomes somewhere, and each rule is judged somewhere.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::fmt::Write;

use haulout_engine::{Outcome, Ruleset, review};
use haulout_tests::evidence::{held, table};
use haulout_tests::generate::{Size, design};
use haulout_tests::vary::varied;
use haulout_tests::{examples, load, options, ruleset};
use rayon::prelude::*;

/// What a rule answers about one design: which outcomes occur among its subjects, a bit each. Two rules that differ here differ, whatever
/// their subjects are.
type Answered = u8;

const JUDGED: Answered = 0b11;

fn bit(outcome: Outcome) -> Answered {
    match outcome {
        Outcome::Met => 1,
        Outcome::Short | Outcome::Variance => 2,
        Outcome::NotAssessed => 4,
        Outcome::DoesNotApply => 8,
    }
}

/// A third of the designs comes from the generator, a third from rooms that say nearly everything, a third from the marked examples of
/// the rules, each once as it is; the latter two are varied by chance.
fn design_of(seed: u64, rooms: &[String], marked: &[String]) -> String {
    let (third, at) = (seed % 3, (seed / 3) as usize);
    match third {
        0 => design(seed, Size::Pools(1 + at % 2)),
        1 => varied(seed, &rooms[at % rooms.len()]),
        _ if at < marked.len() => marked[at].clone(),
        _ => varied(seed, &marked[at % marked.len()]),
    }
}

/// What every rule answers about every design, a row a design.
fn run(count: u64, ruleset: &Ruleset) -> Vec<Vec<Answered>> {
    let rooms: Vec<String> = examples().into_iter().map(|(_, text)| text).collect();
    let marked =
        ruleset.rules.iter().flat_map(|rule| &rule.examples).map(|example| example.design.to_string());
    // Examples of problems of the document are no designs.
    let marked: Vec<String> = marked.filter(|text| load(text).is_ok()).collect();
    let one = |seed: u64| {
        let text = design_of(seed, &rooms, &marked);
        let loaded = load(&text).unwrap_or_else(|problems| panic!("seed {seed}: {problems:#?}"));
        let mut row = vec![0; ruleset.rules.len()];
        for answer in review(&loaded.design, ruleset, &[], &options()).answers {
            row[answer.rule] |= bit(answer.outcome);
        }
        row
    };
    (0..count).into_par_iter().map(one).collect()
}

/// In how many designs two rules answer differently, fewest first.
fn apart(rows: &[Vec<Answered>], rules: usize) -> Vec<(usize, usize, usize)> {
    let pairs: Vec<(usize, usize)> = (0..rules).flat_map(|a| (a + 1..rules).map(move |b| (a, b))).collect();
    let differ = |(a, b): (usize, usize)| (rows.iter().filter(|row| row[a] != row[b]).count(), a, b);
    let mut found: Vec<(usize, usize, usize)> = pairs.into_par_iter().map(differ).collect();
    found.sort_unstable();
    found
}

/// The page of a run; the faults it found.
fn page(count: u64) -> (String, Vec<String>) {
    let ruleset = ruleset();
    let rows = run(count, &ruleset);
    let id = |at: usize| ruleset.rules[at].card.id.to_string();
    let pairs = apart(&rows, ruleset.rules.len());
    let judged = |at: usize, wanted: Answered| rows.iter().filter(|row| row[at] & wanted == wanted).count();
    let mut faults: Vec<String> = pairs
        .iter()
        .filter(|(differ, ..)| *differ == 0)
        .map(|(_, a, b)| format!("{} and {} answer alike throughout", id(*a), id(*b)))
        .collect();
    let mut seldom: Vec<(usize, usize, usize)> = Vec::new();
    for at in 0..ruleset.rules.len() {
        let (met, short) = (judged(at, 1), judged(at, 2));
        if met == 0 || short == 0 {
            faults.push(format!("{} is met {met} times and short {short} times", id(at)));
        }
        seldom.push((met.min(short), met, at));
    }
    seldom.sort_unstable();
    let mut text = format!(
        "# Rules that differ\n\n{count} designs, a third of them generated, a third varied from the example designs, a third from the marked examples of the rules; of {} rules no two answer alike \
         throughout. `HAULOUT_WRITE=1 cargo test -p haulout-tests --test rules_differ` runs it again.\n\n\
         ## The pairs that differ in the fewest designs\n\n",
        ruleset.rules.len()
    );
    let row = |(differ, a, b): &(usize, usize, usize)| vec![id(*a), id(*b), differ.to_string()];
    text.push_str(&table(&["rule", "rule", "designs they differ in"], pairs.iter().take(12).map(row)));
    // Writing to a String cannot fail.
    let _ = write!(text, "\n## The rules that are seldom met or seldom short\n\n");
    let row = |(_, met, at): &(usize, usize, usize)| {
        vec![
            id(*at),
            met.to_string(),
            judged(*at, 2).to_string(),
            rows.iter().filter(|r| r[*at] & JUDGED == 0).count().to_string(),
        ]
    };
    let heads = ["rule", "designs where it is met", "where it is short", "where it is not judged"];
    text.push_str(&table(&heads, seldom.iter().take(12).map(row)));
    (text, faults)
}

#[test]
fn no_two_rules_are_one_over_five_thousand_designs() {
    let (page, faults) = page(5_000);
    assert!(faults.is_empty(), "{faults:#?}");
    held("rules-differ.md", &page).unwrap_or_else(|differs| panic!("{differs}"));
}
