//! Twelve rules written twice, compiled and as scripts: the two say the same of every example and of generated designs,
//! in outcome, numbers and places.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::{BTreeMap, BTreeSet};

use haulout_annex::join;
use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Manual, Rule, Ruleset, words};
use haulout_figures::barrier::guard::{OVER_THE_STEP, STEP};
use haulout_figures::group::BODY_LENGTH;
use haulout_figures::pool::depth::GREATEST_DEPTH;
use haulout_figures::water::trap::share_of;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Limit, Tighter};
use haulout_tests::generate::{Size, design};
use haulout_tests::{Loaded, Said, bundled, examples, load, repository, said};
use rayon::prelude::*;

/// The built-in rules that have a twin among the scripts.
const BUILT_IN: [&str; 10] = [
    "turnover-by-delivered-flow",
    "velocity-at-the-grille",
    "water-over-the-intake",
    "refuge-deep-enough",
    "bed-within-the-window",
    "freeboard-with-pumps-off",
    "exit-reached-at-every-level",
    "exit-wide-enough",
    "drawn-down-in-time",
    "sill-below-the-water",
];

/// Compiled for this test: a rule that applies only where another comparison holds, and one of two branches.
static COMPILED: [CompiledRule; 2] = [
    CompiledRule {
        card: card("long-animals-have-deep-water", About::PoolGroup),
        limits: &[&LONG, &LENGTHS],
        examples: &[],
        judge: |sheet, at| {
            let length = BODY_LENGTH.of(sheet, at);
            let long = length.clone().map(|l| Check::at_least(l, sheet.limit(&LONG)));
            let asked = length.and_then(|l| share_of(sheet, sheet.limit(&LENGTHS), l));
            let deep =
                (GREATEST_DEPTH.of(sheet, at), asked).all().map(|(have, asked)| Check::at_least(have, asked));
            Ok(Check::only_if(long, deep))
        },
    },
    CompiledRule {
        card: card("compiled-no-ledge-to-climb-from", About::Guard),
        limits: &[&FOOTHOLD, &OVER],
        examples: &[],
        judge: |sheet, at| {
            let low = STEP.of(sheet, at).map(|step| Check::at_most(step, sheet.limit(&FOOTHOLD)));
            let high = OVER_THE_STEP.of(sheet, at).map(|over| Check::at_least(over, sheet.limit(&OVER)));
            Ok(Check::AnyOf(vec![low, high]))
        },
    },
];

const fn card(id: &'static str, about: About) -> Card {
    Card {
        id: words(id),
        title: words("one of a pair"),
        chapter: words("twins"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about,
        caution: None,
        manual: Manual { asks: words("a"), why: words("b"), judged: words("c"), cure: words("d") },
    }
}

const fn limit(rule: &'static str, name: &'static str, value: f64, tighter: Tighter) -> Limit {
    Limit {
        rule,
        name,
        row: "",
        what: "a limit of one of a pair",
        value,
        unit: "",
        dimension: Dimension::LENGTH,
        tighter,
        basis: Basis::CommonPractice,
        source: "the script of the same pair",
    }
}

static LONG: Limit = limit("long-animals-have-deep-water", "long", 0.2, Tighter::Lower);
static LENGTHS: Limit = Limit {
    dimension: Dimension::NUMBER,
    ..limit("long-animals-have-deep-water", "lengths", 2.0, Tighter::Higher)
};
static FOOTHOLD: Limit = limit("compiled-no-ledge-to-climb-from", "foothold", 0.06, Tighter::Lower);
static OVER: Limit = limit("compiled-no-ledge-to-climb-from", "over", 1.1, Tighter::Higher);

/// Compiled and script, by their ids.
fn pairs() -> Vec<(String, String)> {
    let twin = |id: &str| (id.to_owned(), format!("twin-of-{id}"));
    let named = BUILT_IN.iter().copied().chain(["long-animals-have-deep-water"]).map(twin);
    let bundled = ("compiled-no-ledge-to-climb-from".to_owned(), "no-ledge-to-climb-from".to_owned());
    named.chain([bundled]).collect()
}

/// All twins, both ways, and nothing else.
fn twins() -> Ruleset {
    let compiled = haulout_rules::built_in().into_iter().filter(|rule| BUILT_IN.contains(&&*rule.card.id));
    let compiled: Vec<Rule> = compiled.chain(COMPILED.iter().map(Rule::compiled)).collect();
    let folders = [
        bundled::folder(&repository().join("tests/annexes/twins")),
        bundled::folder(&repository().join("rules/annexes/childrens-visits")),
    ];
    join(compiled, &folders, haulout_figures::CATALOGUE).unwrap_or_else(|troubles| panic!("{troubles:#?}"))
}

/// What one rule says, by subject and authority, numbers to the last bit.
type Sayings = BTreeMap<String, (&'static str, Vec<u64>, BTreeSet<String>)>;

fn of_rule(all: &BTreeMap<String, Said>, id: &str) -> Sayings {
    let own = all.iter().filter_map(|(key, one)| Some((key.strip_prefix(id)?.strip_prefix(' ')?, one)));
    let bits = |one: &Said| one.numbers.iter().map(|n| n.to_bits()).collect();
    own.map(|(key, one)| (key.to_owned(), (one.outcome, bits(one), one.places.clone()))).collect()
}

/// How often each pair said what, after the two were found to say the same.
type Tally = BTreeMap<(String, &'static str), usize>;

fn compared(name: &str, loaded: &Loaded, ruleset: &Ruleset) -> Tally {
    let all = said(loaded, ruleset, &[]);
    let mut tally = Tally::new();
    for (compiled, script) in pairs() {
        let (one, other) = (of_rule(&all, &compiled), of_rule(&all, &script));
        assert!(
            !one.is_empty() && one.keys().eq(other.keys()),
            "{name}: {compiled} has other subjects than {script}"
        );
        for (subject, said) in &one {
            let scripted = &other[subject];
            assert!(said == scripted, "{name}: {compiled}, {subject}: {said:?}\n{script}: {scripted:?}");
        }
        for (outcome, ..) in one.values() {
            *tally.entry((compiled.clone(), *outcome)).or_default() += 1;
        }
    }
    tally
}

fn added(mut all: Tally, one: Tally) -> Tally {
    for (key, count) in one {
        *all.entry(key).or_default() += count;
    }
    all
}

/// The example designs, the marked examples of both of every pair, and so many generated designs.
fn everywhere(generated: u64) -> Tally {
    let ruleset = twins();
    let marked = ruleset.rules.iter().flat_map(|rule| {
        rule.examples.iter().map(|e| (format!("{}, {}", rule.card.id, e.shows), e.design.to_string()))
    });
    let typed: Vec<(String, String)> = examples().into_iter().chain(marked).collect();
    let made = (0..generated).map(|seed| (format!("seed {seed}"), design(seed, Size::BUDGET)));
    let all: Vec<(String, String)> = typed.into_iter().chain(made).collect();
    let one = |(name, text): &(String, String)| {
        // A variance names one rule of a pair; it is the judgement that is compared.
        let text = text.replace("\"variances\"", "\"x-variances\"");
        let loaded = load(&text).unwrap_or_else(|problems| panic!("{name}: {problems:#?}"));
        compared(name, &loaded, &ruleset)
    };
    all.par_iter().map(one).reduce(Tally::new, added)
}

/// A pair that was never judged would agree about nothing.
fn seen(tally: &Tally) {
    for (compiled, _) in pairs() {
        for outcome in ["met", "short", "not-assessed"] {
            let count = tally.get(&(compiled.clone(), outcome)).copied().unwrap_or_default();
            assert!(count > 0, "{compiled} never said {outcome}");
        }
    }
}

#[test]
fn twins_say_the_same_of_every_example_and_of_generated_designs() {
    seen(&everywhere(40));
}

/// The full number; run it by hand with `-- --ignored`.
#[test]
#[ignore = "five hundred designs are for the day a rule or the script room is changed"]
fn twins_say_the_same_of_five_hundred_generated_designs() {
    let tally = everywhere(500);
    seen(&tally);
    assert!(tally.values().sum::<usize>() > 5_000, "only {} answers", tally.values().sum::<usize>());
}

/// What the scripts use, compiled rules use too; the figures of houses are used by the compiled twin in this file.
#[test]
fn twins_use_nothing_of_their_own() {
    let ruleset = twins();
    for (compiled, script) in pairs() {
        let about = |id: &str| {
            let at = ruleset.position(id).unwrap_or_else(|| panic!("there is no rule {id}"));
            (ruleset.rules[at].card.about, ruleset.rules[at].card.case)
        };
        assert_eq!(about(&compiled), about(&script), "{script} is about the same in the same state");
    }
    for folder in ["core/calc/src", "core/figures/src"] {
        assert!(!mentions(&repository().join(folder), "twin"), "{folder} knows of twins");
    }
}

#[allow(clippy::disallowed_methods, reason = "this test looks into the sources of the repository")]
fn mentions(folder: &std::path::Path, word: &str) -> bool {
    let entries =
        std::fs::read_dir(folder).expect("the folder is there").filter_map(|e| e.ok().map(|e| e.path()));
    let mut paths: Vec<_> = entries.collect();
    paths.sort();
    paths.iter().any(|path| match path.is_dir() {
        true => mentions(path, word),
        false => std::fs::read_to_string(path).is_ok_and(|text| text.contains(word)),
    })
}
