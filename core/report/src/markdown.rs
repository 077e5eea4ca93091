//! A review as Markdown, to be pasted into a ticket: what falls short, the schedule, what waits, what has to be proved.

use std::fmt::Write;

use haulout_document::Problem;
use haulout_engine::Outcome;

use crate::annexed::{self, overridden};
use crate::entry::rows;
use crate::lever::strongest;
use crate::page::{Subject, held_to, ranked, title};
use crate::schedule::{CLOSING, counted, status, to_prove, variances, waiting};
use crate::source::Written;
use crate::spoken::written;
use crate::told::Told;

/// One design.
pub fn markdown(subject: &Subject<'_>) -> String {
    let mut out = format!("# {}\n\n", text(&title(subject)));
    line(&mut out, &format!("Screening result of {}, reviewed on {}.", code(subject.file), subject.on));
    line(&mut out, &format!("{}.", text(&sentence(&held_to(subject)))));
    line(&mut out, &format!("**{}.**", text(&sentence(&status(subject)))));
    let run = overridden(subject).into_iter().chain(annexed::rows(subject.ruleset));
    let run = run.map(|(word, said)| vec![text(word), text(&said)]).collect();
    table(&mut out, "Annexes and specification", &["", "what"], run);
    short(&mut out, subject);
    schedule(&mut out, subject);
    let waits = waiting(subject).into_iter().map(|w| vec![text(&(w.place + &w.why)), w.checks.to_string()]);
    table(&mut out, "Waiting for", &["what is missing", "checks"], waits.collect());
    let promises = to_prove(subject).into_iter();
    let promises = promises.map(|p| vec![p.line.to_string(), text(&p.place), p.checks.to_string()]);
    table(&mut out, "To be proved", &["line", "declared, not measured", "checks"], promises.collect());
    let accepted = variances(subject).into_iter().map(|v| vec![text(&v)]).collect();
    table(&mut out, "Accepted as a variance", &["what, why, by whom, until when"], accepted);
    line(&mut out, "## Caution");
    line(&mut out, CLOSING);
    out.trim_end().to_owned() + "\n"
}

/// One document that could not be reviewed.
pub fn markdown_of_problems(file: &str, of: Option<Written<'_>>, problems: &[Problem]) -> String {
    let mut out = String::new();
    line(&mut out, &format!("# {}: not reviewed", text(file)));
    for problem in problems {
        let at = of.map_or_else(String::new, |of| {
            let position = of.source().position(problem.span.start);
            format!("line {}, column {}: ", position.line, position.column)
        });
        let _ = writeln!(out, "- {at}{}", text(&problem.message));
    }
    out
}

/// A paragraph.
fn line(out: &mut String, text: &str) {
    // Writing to a String cannot fail.
    let _ = writeln!(out, "{text}\n");
}

fn short(out: &mut String, subject: &Subject<'_>) {
    let found = ranked(subject.ruleset, subject.answers);
    let row = |told: &&Told| {
        let card = &subject.ruleset.rules[told.rule].card;
        let word = |wanted: &str| {
            let rows = rows(subject, told);
            rows.into_iter().find(|(word, _)| *word == wanted).map_or_else(String::new, |(_, text)| text)
        };
        let by = told.numbers.as_ref().map_or_else(|| "short".to_owned(), |n| n.printed.margin.clone());
        let place = strongest(subject, told);
        let place = place
            .as_ref()
            .map_or_else(String::new, |p| format!("line {}, {}", p.line, written(subject.tree, p)));
        let caution = card.caution.as_ref().map_or_else(String::new, |caution| format!(" {caution}"));
        let what = format!("{} ({})", card.title, word(""));
        let cells = [card.consequence.name(), &what, &by, &word("has"), &(word("asks") + &caution), &place];
        cells.map(text).into_iter().chain([code(&card.id)]).collect()
    };
    let heads = ["guards", "what falls short", "short by", "has", "asks", "where to change it", "rule"];
    if found.is_empty() {
        line(out, "## Short");
        return line(out, "Nothing that was checked falls short.");
    }
    table(out, "Short", &heads, found.iter().map(row).collect());
}

/// Every check that was made, rule by rule.
fn schedule(out: &mut String, subject: &Subject<'_>) {
    let row = |told: &Told| {
        let card = &subject.ruleset.rules[told.rule].card;
        let numbers = told.numbers.as_ref();
        vec![
            code(&card.id),
            text(card.demand.name()),
            text(&told.named),
            text(told.authority.unwrap_or("practice")),
            text(outcome(told.outcome)),
            text(numbers.map_or("", |n| &n.printed.have)),
            text(numbers.map_or("", |n| &n.printed.asks)),
            text(told.basis.filter(|_| numbers.is_some()).map_or("", |b| b.name())),
        ]
    };
    let told = subject.answers.iter().filter(|told| told.outcome != Outcome::DoesNotApply);
    let heads = ["rule", "demand", "subject", "authority", "answer", "has", "asks", "basis"];
    table(out, "Schedule", &heads, told.map(row).collect());
    let idle = subject.answers.iter().filter(|told| told.outcome == Outcome::DoesNotApply).count();
    if idle > 0 {
        let verb = if idle == 1 { "does" } else { "do" };
        line(out, &format!("{} more {verb} not apply to this design.", counted(idle, "check")));
    }
}

const fn outcome(outcome: Outcome) -> &'static str {
    match outcome {
        Outcome::NotAssessed => "not assessed",
        Outcome::DoesNotApply => "does not apply",
        other => other.name(),
    }
}

/// A heading and a table; nothing at all without rows.
fn table(out: &mut String, heading: &str, heads: &[&str], rows: Vec<Vec<String>>) {
    if rows.is_empty() {
        return;
    }
    line(out, &format!("## {heading}"));
    let _ = writeln!(out, "| {} |", heads.join(" | "));
    let _ = writeln!(out, "|{}", " --- |".repeat(heads.len()));
    for row in rows {
        let _ = writeln!(out, "| {} |", row.join(" | "));
    }
    out.push('\n');
}

fn sentence(words: &str) -> String {
    let mut characters = words.chars();
    characters.next().map_or_else(String::new, |first| first.to_uppercase().chain(characters).collect())
}

/// Text that stays text: what comes from a file may not become a heading, a link or a cell.
pub(crate) fn text(words: &str) -> String {
    let mut out = String::new();
    for c in words.split_whitespace().collect::<Vec<_>>().join(" ").chars() {
        match c {
            '<' => out.push_str("&lt;"),
            '&' => out.push_str("&amp;"),
            '\\' | '`' | '*' | '_' | '[' | ']' | '|' | '#' | '~' | '!' | '@' => {
                out.push('\\');
                out.push(c);
            }
            _ => out.push(c),
        }
    }
    out
}

/// A name as code.
fn code(name: &str) -> String {
    format!("`{}`", name.replace('`', "'").replace('|', "/").replace(['\n', '\r'], " "))
}

#[cfg(test)]
mod tests {
    use super::{code, sentence, text};

    #[test]
    fn what_a_file_says_stays_text() {
        assert_eq!(text("a | b\n# <b> [x](y)"), "a \\| b \\# &lt;b> \\[x\\](y)");
        assert_eq!(code("a`b|c"), "`a'b/c`");
        assert_eq!(sentence("open: 1"), "Open: 1");
    }
}
