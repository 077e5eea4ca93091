//! A rehearsal of an annex as a page and for programs: rule by rule what came of its examples, then what is not as marked.

use std::fmt::Write;

use serde_json::{Value, json};

use crate::wrap::row;

/// One answer that was wanted, and what came.
#[derive(Debug, Clone, PartialEq)]
pub struct Trial {
    /// Id of the rule.
    pub rule: String,
    /// The file it is marked in.
    pub file: String,
    /// What it shows; of an answer of a whole design, what it is about.
    pub shows: String,
    /// What the rule must say.
    pub expected: &'static str,
    /// What it says; none when there is no answer.
    pub got: Option<&'static str>,
    /// What is not as marked, in sentences; empty when all is.
    pub problems: Vec<String>,
}

/// A rule of the annex.
#[derive(Debug, Clone, PartialEq)]
pub struct Practised {
    /// Its id.
    pub rule: String,
    /// The outcomes it was never seen with, of short, met and not-assessed.
    pub never_seen: Vec<&'static str>,
    /// The longest judgement of an example, microseconds.
    pub microseconds: f64,
}

/// A rehearsal of some annexes.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Rehearsal {
    /// Names and versions of the annexes.
    pub annexes: Vec<String>,
    /// Their rules.
    pub rules: Vec<Practised>,
    /// Every answer wanted, and every shortfall that nobody listed.
    pub trials: Vec<Trial>,
    /// The rehearsal designs.
    pub designs: Vec<String>,
}

impl Rehearsal {
    /// Whether everything came as marked.
    pub fn holds(&self) -> bool {
        self.trials.iter().all(|trial| trial.problems.is_empty())
    }
}

/// The table of the rules, what they were never seen with, and the sum.
pub fn rehearsal_page(rehearsal: &Rehearsal, width: usize) -> String {
    let mut out = format!("{}\n\n", rehearsal.annexes.join(", "));
    let longest = rehearsal.rules.iter().map(|r| r.rule.chars().count()).max().unwrap_or(0).max(4);
    // Writing to a String cannot fail.
    let _ = writeln!(out, "  {:longest$}  {:>12}  {:>8}", "rule", "as marked", "longest");
    for rule in &rehearsal.rules {
        let of = rehearsal.trials.iter().filter(|t| t.rule == rule.rule);
        let (all, sound) =
            of.fold((0, 0), |(all, sound), t| (all + 1, sound + usize::from(t.problems.is_empty())));
        let count = format!("{sound} of {all}");
        let _ = writeln!(out, "  {:longest$}  {count:>12}  {:>5.0} µs", rule.rule, rule.microseconds);
    }
    out.push('\n');
    for outcome in SEEN {
        let rules: Vec<&str> =
            rehearsal.rules.iter().filter(|r| r.never_seen.contains(&outcome)).map(|r| &*r.rule).collect();
        if !rules.is_empty() {
            out.push_str(&row(&format!("never seen {outcome}"), &rules.join(", "), 26, width));
        }
    }
    let wrong = rehearsal.trials.iter().filter(|t| !t.problems.is_empty()).count();
    let came = if wrong == 0 { "everything as marked".to_owned() } else { format!("{wrong} not as marked") };
    let _ = writeln!(
        out,
        "{}, {}, {}: {came}",
        counted(rehearsal.rules.len(), "rule"),
        counted(rehearsal.trials.len(), "answer"),
        counted(rehearsal.designs.len(), "rehearsal design")
    );
    out
}

/// The outcomes that every rule should be seen with.
pub const SEEN: [&str; 3] = ["short", "met", "not-assessed"];

fn counted(number: usize, of: &str) -> String {
    format!("{number} {of}{}", if number == 1 { "" } else { "s" })
}

/// The same for programs.
pub fn rehearsal_json(rehearsal: &Rehearsal) -> Value {
    let rules: Vec<Value> = rehearsal
        .rules
        .iter()
        .map(|r| json!({ "rule": r.rule, "never-seen": r.never_seen, "microseconds": r.microseconds }))
        .collect();
    let trials: Vec<Value> = rehearsal
        .trials
        .iter()
        .map(|t| {
            json!({ "rule": t.rule, "file": t.file, "shows": t.shows, "expected": t.expected, "got": t.got,
                    "problems": t.problems })
        })
        .collect();
    json!({
        "annexes": rehearsal.annexes, "holds": rehearsal.holds(), "rules": rules, "answers": trials,
        "designs": rehearsal.designs
    })
}
