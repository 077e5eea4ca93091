//! The terminal page of a review: the list of what falls short, ranked, then the schedule of everything.

use std::fmt::Write;

use haulout_document::{Problem, Tree};
use haulout_engine::{Consequence, Demand, Outcome, Ruleset};
use haulout_model::Design;
use haulout_place::Span;
use miette::ReportHandler;

use crate::annexed;
use crate::entry::snag;
use crate::handler::List;
use crate::schedule::schedule;
use crate::snag::Snag;
use crate::source::Written;
use crate::told::Told;
use crate::wrap::wrap;

/// How the page is laid out.
#[derive(Debug, Clone, Copy)]
pub struct Layout {
    /// Characters in a line.
    pub width: usize,
    /// Whether titles are set in bold.
    pub colour: bool,
}

/// What one page is about.
pub struct Subject<'p> {
    /// The file as it was named.
    pub file: &'p str,
    /// Its tree.
    pub tree: &'p Tree,
    /// Its design.
    pub design: &'p Design,
    /// The stage it was held to.
    pub stage: &'static str,
    /// The day.
    pub on: &'p str,
    /// The rules.
    pub ruleset: &'p Ruleset,
    /// The answers.
    pub answers: &'p [Told],
}

/// The page.
pub fn page(subject: &Subject<'_>, layout: Layout) -> String {
    let mut out = heading(subject, layout);
    out.push_str(&annexed::lines(&annexed::overridden(subject), layout.width));
    out.push_str(&annexed::lines(&annexed::rows(subject.ruleset), layout.width));
    let short = ranked(subject.ruleset, subject.answers);
    let mut group: Option<Consequence> = None;
    for (at, told) in short.iter().enumerate() {
        let consequence = subject.ruleset.rules[told.rule].card.consequence;
        if group != Some(consequence) {
            let _ = writeln!(out, "{}", consequence.name().to_uppercase());
            group = Some(consequence);
        }
        let list = List { number: at + 1, width: layout.width, colour: layout.colour };
        let _ = writeln!(out, "{}", Drawn(&list, &snag(subject, told)));
    }
    if short.is_empty() {
        out.push_str("Nothing that was checked falls short.\n\n");
    }
    out.push_str(&schedule(subject, layout.width));
    out
}

/// What falls short, gravest first: the order in which the page and the keynotes of the drawing are numbered.
pub(crate) fn ranked<'a>(ruleset: &Ruleset, answers: &'a [Told]) -> Vec<&'a Told> {
    let mut short: Vec<&Told> = answers.iter().filter(|a| a.outcome == Outcome::Short).collect();
    short.sort_by(|a, b| rank(ruleset, a).total_cmp_with(&rank(ruleset, b)));
    short
}

/// The page of a document that could not be reviewed.
pub fn problem_page(file: &str, text: Written<'_>, problems: &[Problem], layout: Layout) -> String {
    in_the_way(file, "not reviewed", (text, problems), layout)
}

/// The page of a file of an annex, or of a specification, that cannot be used.
pub fn fault_page(file: &str, text: Written<'_>, problems: &[Problem], layout: Layout) -> String {
    in_the_way(file, "not used", (text, problems), layout)
}

/// The page of a file whose marks a rehearsal did not bear out.
pub fn rehearsed_page(file: &str, text: Written<'_>, problems: &[Problem], layout: Layout) -> String {
    listed(&format!("{file}: not as marked"), (text, problems), layout)
}

fn in_the_way(file: &str, not: &str, (text, problems): (Written<'_>, &[Problem]), layout: Layout) -> String {
    let things = if problems.len() == 1 { "one thing stands" } else { "these things stand" };
    listed(&format!("{file}: {not}, {things} in the way"), (text, problems), layout)
}

fn listed(heading: &str, (text, problems): (Written<'_>, &[Problem]), layout: Layout) -> String {
    let mut out = format!("{heading}\n\n");
    for (at, problem) in problems.iter().enumerate() {
        let list = List { number: at + 1, width: layout.width, colour: layout.colour };
        let source = text.source();
        let column = format!("column {}", source.position(problem.span.start).column);
        let also = |(span, words): &(Span, String)| {
            ("also", format!("line {}: {words}", source.position(span.start).line))
        };
        let snag = Snag {
            title: problem.message.clone(),
            by: String::new(),
            rows: problem.also.iter().map(also).collect(),
            place: Some((problem.span.start as usize, problem.span.end as usize, column)),
            owed: true,
            text: Some(source),
        };
        let _ = writeln!(out, "{}", Drawn(&list, &snag));
    }
    out
}

struct Drawn<'a>(&'a List, &'a Snag<'a>);

impl std::fmt::Display for Drawn<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.0.debug(self.1, f)
    }
}

/// Title, revision and stage.
pub(crate) fn title(subject: &Subject<'_>) -> String {
    let project = &subject.design.project;
    let title = project.title.words().unwrap_or(subject.file);
    let revision = project.revision.words().map_or_else(String::new, |r| format!(", revision {r}"));
    let none = if project.stage.word().is_none() { " (the file states none)" } else { "" };
    format!("{title}{revision}, {} stage{none}", subject.stage)
}

/// The authorities the design is held to.
pub(crate) fn held_to(subject: &Subject<'_>) -> String {
    let chosen = subject.ruleset.held_to(subject.design);
    let known = subject.ruleset.limits.register().authorities();
    let held: Vec<&str> = known.filter(|a| chosen.iter().any(|id| id == a.id)).map(|a| a.title).collect();
    if held.is_empty() {
        "held to: practice only; no authority is chosen".to_owned()
    } else {
        format!("held to: {}", held.join("; "))
    }
}

fn heading(subject: &Subject<'_>, layout: Layout) -> String {
    let left = title(subject);
    let right = format!("reviewed on {}", subject.on);
    let pad = layout.width.saturating_sub(left.chars().count() + right.chars().count());
    let first = if pad >= 2 {
        format!("{left}{}{right}\n", " ".repeat(pad))
    } else {
        format!("{}\n{right}\n", wrap(&left, layout.width).join("\n"))
    };
    format!("{first}{}\n{}\n\n", wrap(&held_to(subject), layout.width).join("\n"), subject.file)
}

/// Gravest first, required before recommended, owed before not yet owed, furthest short first.
struct Rank(Consequence, bool, bool, f64);

impl Rank {
    fn total_cmp_with(&self, other: &Rank) -> std::cmp::Ordering {
        (self.0, self.1, self.2).cmp(&(other.0, other.1, other.2)).then(self.3.total_cmp(&other.3))
    }
}

fn rank(ruleset: &Ruleset, told: &Told) -> Rank {
    let card = &ruleset.rules[told.rule].card;
    let share = told.numbers.as_ref().map_or(-1.0, |n| {
        let limit = n.low.or(n.high).unwrap_or(1.0).abs();
        n.margin.unwrap_or(-1.0) / if limit > 0.0 { limit } else { 1.0 }
    });
    Rank(card.consequence, card.demand == Demand::Should, !told.owed, share)
}
