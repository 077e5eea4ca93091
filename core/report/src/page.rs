//! The terminal page of a review: the list of what falls short, ranked, then the schedule of everything.

use std::fmt::Write;

use haulout_document::{Problem, Tree};
use haulout_engine::{Consequence, Demand, Outcome, Ruleset};
use haulout_model::{Design, Standing};
use haulout_place::Span;
use haulout_register::AUTHORITIES;
use miette::ReportHandler;

use crate::handler::List;
use crate::place::Place;
use crate::schedule::schedule;
use crate::snag::Snag;
use crate::source::{Text, Written};
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
    let count = problems.len();
    let things = if count == 1 { "one thing stands" } else { "these things stand" };
    let mut out = format!("{file}: not reviewed, {things} in the way\n\n");
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

fn heading(subject: &Subject<'_>, layout: Layout) -> String {
    let project = &subject.design.project;
    let title = project.title.words().unwrap_or(subject.file);
    let revision = project.revision.words().map_or_else(String::new, |r| format!(", revision {r}"));
    let left = format!("{title}{revision}, {} stage", subject.stage);
    let right = format!("reviewed on {}", subject.on);
    let pad = layout.width.saturating_sub(left.chars().count() + right.chars().count());
    let first =
        if pad >= 2 { format!("{left}{}{right}\n", " ".repeat(pad)) } else { format!("{left}\n{right}\n") };
    let held: Vec<&str> = AUTHORITIES.iter().filter(|a| is_held(subject, a.id)).map(|a| a.title).collect();
    let held = if held.is_empty() {
        "held to: practice only; no authority is chosen".to_owned()
    } else {
        format!("held to: {}", held.join("; "))
    };
    format!("{first}{}\n{}\n\n", wrap(&held, layout.width).join("\n"), subject.file)
}

fn is_held(subject: &Subject<'_>, id: &str) -> bool {
    let held = &subject.design.project.held_to;
    [&held.welfare, &held.electrical, &held.guards].iter().any(|l| l.items().iter().any(|r| r.name() == id))
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

fn snag<'p>(subject: &Subject<'p>, told: &Told) -> Snag<'p> {
    let card = &subject.ruleset.rules[told.rule].card;
    let mut rows = vec![("", about(told))];
    match &told.numbers {
        Some(numbers) => {
            rows.push(("has", numbers.printed.have.clone()));
            rows.extend(told.working.first().map(|working| ("", working.clone())));
            rows.push(("asks", format!("{}; {}", numbers.printed.asks, authority(told))));
        }
        None => rows.push(("asks", card.manual.asks.to_string())),
    }
    rows.extend(told.gaps.iter().map(|gap| ("found", gap.what.clone())));
    if told.standing == Some(Standing::Declared) {
        rows.push(("rests on", "a value that is declared and has still to be proved".to_owned()));
    }
    rows.push(("cure", card.manual.cure.to_string()));
    if let Some(caution) = &card.caution {
        rows.push(("caution", caution.to_string()));
    }
    if told.variance.is_some_and(|(_, expired)| expired) {
        rows.push(("variance", "one was accepted, and its last day is past".to_owned()));
    }
    let by = match &told.numbers {
        Some(numbers) => format!("short by {}", numbers.printed.margin),
        None => "short".to_owned(),
    };
    let place = told.governing.as_ref().map(|p| (p.start as usize, p.end as usize, words(p)));
    let title = format!("{} ({}: {})", card.title, card.demand.name(), card.id);
    Snag { title, by, rows, place, owed: told.owed, text: Some(Text::of(subject.tree)) }
}

fn about(told: &Told) -> String {
    let case = told.case.words();
    let states = if case.is_empty() { String::new() } else { format!(", {}", case.join(", ")) };
    let owed = if told.owed { "" } else { ", not yet owed at this stage" };
    format!("{}{states}{owed}", told.subject.replace('+', " with "))
}

/// The source of the limit that decided, with the basis of the whole answer.
fn authority(told: &Told) -> String {
    let limit = told.roots.iter().find(|r| r.kind == "limit");
    let basis = told.basis.map_or("", |b| b.name());
    match limit {
        Some(limit) => format!("{} ({basis})", limit.source),
        None => format!("({basis})"),
    }
}

/// The place in words, with the one that uses it when the value stands in a kind.
fn words(place: &Place) -> String {
    match &place.through {
        Some(user) => format!("{} (used by {user})", place.pointer),
        None => place.pointer.to_string(),
    }
}
