//! Which rules and figures cost most, for whoever makes them faster; `cargo bench -p haulout-tests --bench profile`,
//! with a number of pools at its end for one larger design.
//!
//! A rule is timed in the order of the ruleset in one book, so that it pays for what it is the first to ask; a figure
//! alone, in a book of its own, with all that it hangs on.

#![allow(clippy::print_stdout, reason = "a bench prints its table")]
#![allow(clippy::disallowed_methods, reason = "a bench reads the clock")]

use std::collections::BTreeMap;
use std::hint::black_box;
use std::time::Instant;

use haulout_engine::{Ruleset, Verdict, review};
use haulout_model::Design;
use haulout_sheet::{Book, Case};
use haulout_tests::generate::{Size, design};
use haulout_tests::{load, options, ruleset};

/// Designs of the budget's size that the times are means over.
const TIMED: u64 = 200;
/// Rows of either table.
const ROWS: usize = 20;

fn main() {
    let ruleset = ruleset();
    let pools = std::env::args().find_map(|word| word.parse().ok());
    let size = pools.map_or(Size::BUDGET, Size::Pools);
    let count = if size == Size::BUDGET { TIMED } else { 1 };
    let designs: Vec<Design> = (0..count)
        .map(|seed| load(&design(seed, size)).expect("the generator writes designs").design)
        .collect();
    whole(&designs, &ruleset);
    table("rule, with what it is the first to ask", &designs, |design, times| rules(design, &ruleset, times));
    table("figure, alone", &designs, |design, times| figures(design, &ruleset, times));
}

/// The least of many runs of each design, which a busy machine lengthens least.
const ROUNDS: usize = 9;

fn whole(designs: &[Design], ruleset: &Ruleset) {
    let light = ruleset.clone().without_heavy();
    for (title, ruleset) in [("review without heavy rules", &light), ("review", ruleset)] {
        let once = |design: &Design| {
            let from = Instant::now();
            black_box(review(design, ruleset, &[], &options()).answers.len());
            from.elapsed().as_secs_f64() * 1e6
        };
        let least = |design| (0..ROUNDS).map(|_| once(design)).fold(f64::INFINITY, f64::min);
        let took = designs.iter().map(least).sum::<f64>() / designs.len() as f64;
        println!("{title:44} {took:10.1} µs a design");
    }
}

type Times = BTreeMap<String, f64>;

fn table(title: &str, designs: &[Design], work: impl Fn(&Design, &mut Times)) {
    let mut times = Times::new();
    for design in designs {
        let mut least = Times::new();
        for _ in 0..ROUNDS / 3 {
            let mut took = Times::new();
            work(design, &mut took);
            for (name, took) in took {
                let known = least.entry(name).or_insert(took);
                *known = known.min(took);
            }
        }
        for (name, took) in least {
            *times.entry(name).or_default() += took;
        }
    }
    let mut rows: Vec<(String, f64)> = times.into_iter().collect();
    rows.sort_by(|a, b| b.1.total_cmp(&a.1));
    let all: f64 = rows.iter().map(|row| row.1).sum();
    println!("\n{title:44} {:>10}", "µs a design");
    println!("{:44} {:10.1}", "all", all / designs.len() as f64);
    for (name, took) in rows.iter().take(ROWS) {
        println!("{name:44} {:10.1}", took / designs.len() as f64);
    }
}

fn timed<T>(times: &mut Times, name: &str, work: impl FnOnce() -> T) {
    let from = Instant::now();
    black_box(work());
    *times.entry(name.to_owned()).or_default() += from.elapsed().as_secs_f64() * 1e6;
}

fn rules(design: &Design, ruleset: &Ruleset, times: &mut Times) {
    let book = Book::new(design, &ruleset.limits, &[]);
    for rule in &ruleset.rules {
        timed(times, &rule.card.id, || {
            let subjects = rule.card.about.walk(design).subjects;
            let case = Case { authority: Some(0), ..rule.card.case };
            let sheet = book.sheet(case);
            subjects
                .iter()
                .map(|at| Verdict::of(&book, rule.judge.judge(sheet, *at)).lines.len())
                .sum::<usize>()
        });
    }
}

fn figures(design: &Design, ruleset: &Ruleset, times: &mut Times) {
    for figure in haulout_figures::CATALOGUE {
        let book = Book::new(design, &ruleset.limits, &[]);
        timed(times, figure.card().id, || {
            let subjects = figure.card().about.walk(design).subjects;
            let sheet = book.sheet(Case::NORMAL);
            subjects.iter().filter(|at| figure.line(sheet, **at).is_ok()).count()
        });
    }
}
