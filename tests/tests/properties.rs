//! What must hold for every design, tried on many made by chance.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::BTreeMap;

use haulout_document::Schema;
use haulout_engine::{Ruleset, review};
use haulout_tests::generate::{Manner, Outlines, Placing, Size, Units, design, design_as};
use haulout_tests::worked::{Worked, answers, worked};
use haulout_tests::{Loaded, Said, load, number, options, ruleset};
use rayon::prelude::*;

/// Designs that are read, held to the schema and reviewed: 2,000, without optimisation 400, to stay under forty seconds.
const READ: u64 = if cfg!(debug_assertions) { 400 } else { 2_000 };
/// Designs that are reviewed in two forms and compared: fewer, since each costs two reviews with all figures.
const COMPARED: u64 = if cfg!(debug_assertions) { 150 } else { 2_000 };

/// Most are small, a few of every hundred have up to twelve pools, one in a thousand has fifty.
fn size(seed: u64) -> Size {
    match (seed % 1000, seed % 100) {
        (500, _) => Size::Pools(50),
        (_, 7) => Size::Pools(12),
        (_, 1..=4) => Size::Pools(4),
        (_, 5..=19) => Size::Pools(2),
        _ => Size::Tiny,
    }
}

fn read(seed: u64, text: &str) -> Loaded {
    load(text).unwrap_or_else(|problems| panic!("seed {seed}: {problems:#?}\n{text}"))
}

fn each(count: u64, check: impl Fn(u64) + Sync + Send) {
    (0..count).into_par_iter().for_each(check);
}

#[test]
fn every_design_is_read_reviewed_and_fits_the_schema() {
    let schema = Schema::compile(haulout_schemas::DESIGN).expect("the published schema is one");
    let ruleset = ruleset();
    each(READ, |seed| {
        let text = design(seed, size(seed));
        let loaded = read(seed, &text);
        let problems = schema.check(&loaded.tree);
        assert!(problems.is_empty(), "seed {seed}: {problems:#?}");
        let review = review(&loaded.design, &ruleset, &[], &options());
        assert!(review.answers.len() >= ruleset.rules.len(), "seed {seed}: a rule gave no answer");
        let lost = review.answers.iter().flat_map(|a| &a.gaps).find(|gap| gap.what.contains("to no number"));
        assert!(lost.is_none(), "seed {seed}: plausible numbers are worked into none: {lost:?}");
    });
}

#[test]
fn designs_differ_and_a_seed_is_one_design() {
    let texts: std::collections::BTreeSet<String> = (0..READ).map(|s| design(s, Size::Tiny)).collect();
    assert_eq!(texts.len() as u64, READ);
    assert_eq!(design(7, Size::BUDGET), design(7, Size::BUDGET));
}

#[test]
fn the_designs_reach_every_outcome() {
    let ruleset = ruleset();
    let outcomes =
        |seed| answers(&read(seed, &design(seed, Size::Pools(3))), &ruleset).into_values().map(|a| a.outcome);
    let mut seen = std::collections::BTreeSet::new();
    // As soon as all five have been met the rest would show no more.
    for seed in 0..200 {
        seen.extend(outcomes(seed));
        if seen.len() == 5 {
            break;
        }
    }
    assert_eq!(
        seen.into_iter().collect::<Vec<_>>(),
        ["does-not-apply", "met", "not-assessed", "short", "variance"]
    );
}

#[test]
fn two_runs_give_the_same_bytes_in_the_same_order() {
    let ruleset = ruleset();
    each(COMPARED, |seed| {
        let loaded = read(seed, &design(seed, size(seed)));
        let again = read(seed, &design(seed, size(seed)));
        assert_eq!(listed(&loaded, &ruleset), listed(&again, &ruleset), "seed {seed}");
    });
}

/// Every answer in its place, every number bit by bit.
fn listed(loaded: &Loaded, ruleset: &Ruleset) -> Vec<(usize, String, &'static str, Vec<u64>)> {
    let review = review(&loaded.design, ruleset, &[], &options());
    let one = |a: &haulout_engine::Answer| {
        let key = a.subject.map(|s| s.key(&loaded.design)).unwrap_or_default();
        let bits = a.lines.iter().map(|l| number(&review.book, *l).to_bits()).collect();
        (a.rule, key, a.outcome.name(), bits)
    };
    review.answers.iter().map(one).collect()
}

#[test]
fn the_order_of_independent_lists_changes_nothing() {
    let ruleset = ruleset();
    each(COMPARED, |seed| {
        let text = design(seed, size(seed));
        let mut json: serde_json::Value = serde_json::from_str(&text).expect("the generator writes JSON");
        for list in ["pools", "animals", "circuits", "basking", "barriers", "doors", "panels"] {
            if let Some(items) = json.get_mut(list).and_then(|l| l.as_array_mut()) {
                items.reverse();
            }
        }
        let (one, other) = (read(seed, &text), read(seed, &json.to_string()));
        same(seed, (&one, &other), &ruleset, Within::EXACT);
    });
}

#[test]
fn metric_and_us_customary_say_the_same() {
    let ruleset = ruleset();
    each(COMPARED, |seed| {
        let written = |units| design_as(seed, size(seed), Manner { units, ..Manner::PLAIN });
        let (metric, us) = (read(seed, &written(Units::Metric)), read(seed, &written(Units::Us)));
        same(seed, (&metric, &us), &ruleset, Within::EXACT);
    });
}

#[test]
fn where_the_drawing_stands_changes_nothing() {
    let ruleset = ruleset();
    each(COMPARED, |seed| {
        let placed =
            |placing| design_as(seed, size(seed), Manner { units: Units::Metric, placing, ..Manner::PLAIN });
        let here = read(seed, &placed(Placing::default()));
        let there = read(seed, &placed(Placing { turn: 0.0, by: [8.0, -16.0] }));
        same(seed, (&here, &there), &ruleset, Within::EXACT);
    });
}

/// Only of designs whose corners turn with them: curves are flattened to the same corners however they are turned.
#[test]
fn how_the_drawing_is_turned_changes_nothing() {
    let ruleset = ruleset();
    each(COMPARED, |seed| {
        let outlines = Outlines::Straight;
        let turned = |turn| {
            let placing = Placing { turn, by: [3.0, 5.0] };
            design_as(seed, size(seed), Manner { units: Units::Metric, placing, outlines })
        };
        let (here, there) = (read(seed, &turned(0.0)), read(seed, &turned(31.0)));
        same(seed, (&here, &there), &ruleset, Within::EXACT);
    });
}

/// How near two numbers must be: as shares of the greater, or in SI where a share of nothing is asked.
#[derive(Clone, Copy)]
struct Within {
    closed: f64,
    sampled: f64,
}

impl Within {
    /// Closed figures to a milliardth. Sampled ones to a hundredth of the five millimetres they are flattened to.
    const EXACT: Within = Within { closed: 1e-9, sampled: 5e-5 };

    fn near(self, a: f64, b: f64, sampled: bool) -> bool {
        let by = if sampled { self.sampled } else { self.closed };
        (a.is_nan() && b.is_nan()) || (a - b).abs() <= by * a.abs().max(b.abs()).max(1.0)
    }
}

fn same(seed: u64, (one, other): (&Loaded, &Loaded), ruleset: &Ruleset, within: Within) {
    let (said, again) = (answers(one, ruleset), answers(other, ruleset));
    same_keys(seed, &said, &again);
    for (key, is) in &said {
        let twin: &Said = &again[key];
        assert_eq!(is.outcome, twin.outcome, "seed {seed}: {key}: {is:?} {twin:?}");
    }
    let (figures, again) = (worked(one, ruleset), worked(other, ruleset));
    same_keys(seed, &figures, &again);
    for (key, is) in &figures {
        let twin: &Worked = &again[key];
        let near = match (is.number, twin.number) {
            (Ok(a), Ok(b)) => within.near(a, b, is.sampled),
            (a, b) => a == b,
        };
        assert!(near, "seed {seed}: {key}: {is:?} {twin:?}");
    }
}

fn same_keys<T>(seed: u64, one: &BTreeMap<String, T>, other: &BTreeMap<String, T>) {
    assert!(one.keys().eq(other.keys()), "seed {seed}: not about the same subjects");
}
