//! The schedule: every check that was made, counted; what is tightest; what waits for what.

use std::collections::BTreeMap;
use std::fmt::Write;

use haulout_engine::{Demand, Outcome};
use haulout_model::Standing;

use crate::page::Subject;
use crate::told::Told;
use crate::wrap::{row, wrap};

const INDENT: usize = 11;

/// The closing words of every page.
const CLOSING: &str = "Screening results. Electrical, structural and glazing matters, guards and water safety belong to \
licensed people and local codes; animals to their keepers and vets.";

/// The schedule of a review.
pub(crate) fn schedule(subject: &Subject<'_>, width: usize) -> String {
    let mut out = row("SCHEDULE", &counts(subject.answers), INDENT, width);
    let tight = tightest(subject);
    if !tight.is_empty() {
        out.push_str(&row("tightest", &tight.join(", "), INDENT, width));
    }
    for line in open(subject) {
        out.push_str(&row("open", &line, INDENT, width));
    }
    for line in waiting(subject.answers) {
        out.push_str(&row("waiting", &line, INDENT, width));
    }
    for line in variances(subject) {
        out.push_str(&row("variance", &line, INDENT, width));
    }
    out.push('\n');
    out.push_str(&wrap(CLOSING, width).join("\n"));
    out.push('\n');
    out
}

fn counts(answers: &[Told]) -> String {
    let of = |outcome: Outcome| answers.iter().filter(|a| a.outcome == outcome).count();
    let to_prove = answers
        .iter()
        .filter(|a| a.outcome == Outcome::Met && a.standing == Some(Standing::Declared))
        .count();
    format!(
        "{} met, {} of them as declared and to be proved; {} short; {} not assessed; {} do not apply; {} accepted as a variance",
        of(Outcome::Met),
        to_prove,
        of(Outcome::Short),
        of(Outcome::NotAssessed),
        of(Outcome::DoesNotApply),
        of(Outcome::Variance),
    )
}

/// The three smallest margins that are met, as a share of what is asked; only where zero is a true zero.
fn tightest(subject: &Subject<'_>) -> Vec<String> {
    let met = subject.answers.iter().filter(|told| told.outcome == Outcome::Met);
    let mut shares: Vec<(f64, &Told)> = met.filter_map(|told| Some((spare(told)?, told))).collect();
    shares.sort_by(|a, b| a.0.total_cmp(&b.0));
    let words = |(share, told): &(f64, &Told)| {
        format!("{} at {} {share:.0} %", subject.ruleset.rules[told.rule].card.id, told.subject)
    };
    shares.iter().take(3).map(words).collect()
}

/// The margin as a share of what is asked, per cent.
fn spare(told: &Told) -> Option<f64> {
    let numbers = told.numbers.as_ref()?;
    let true_zero = numbers.unit.dimension != haulout_quantity::Dimension::TEMPERATURE;
    let limit = numbers.low.or(numbers.high).filter(|limit| true_zero && *limit > 0.0)?;
    Some(numbers.margin? / limit * 100.0)
}

/// Required checks that are owed and could not be made: they count like a shortfall.
fn open(subject: &Subject<'_>) -> Vec<String> {
    let mut rules: BTreeMap<usize, usize> = BTreeMap::new();
    for told in subject.answers {
        let shall = subject.ruleset.rules[told.rule].card.demand == Demand::Shall;
        if shall && told.owed && told.outcome == Outcome::NotAssessed {
            *rules.entry(told.rule).or_default() += 1;
        }
    }
    let words = |(rule, count): (usize, usize)| {
        let id = &subject.ruleset.rules[rule].card.id;
        format!(
            "{id}: required at this stage, not assessed{}",
            if count > 1 { format!(" ({count} times)") } else { String::new() }
        )
    };
    rules.into_iter().map(words).collect()
}

/// Each missing thing with the number of checks that wait for it, the most awaited first.
fn waiting(answers: &[Told]) -> Vec<String> {
    let mut waits: BTreeMap<(String, String), usize> = BTreeMap::new();
    for gap in answers.iter().filter(|a| a.outcome == Outcome::NotAssessed).flat_map(|a| &a.gaps) {
        let at = gap.places.first().map_or_else(String::new, |p| p.pointer.to_string());
        *waits.entry((at, format!("{}, {}", gap.what, gap.kind))).or_default() += 1;
    }
    let mut waits: Vec<_> = waits.into_iter().collect();
    waits.sort_by_key(|(place, count)| (std::cmp::Reverse(*count), place.clone()));
    let words = |((at, what), count): ((String, String), usize)| {
        let mut line = String::new();
        // Writing to a String cannot fail.
        let _ = write!(line, "{at}: {what}: {count} {}", if count == 1 { "check" } else { "checks" });
        line
    };
    waits.into_iter().map(words).collect()
}

fn variances(subject: &Subject<'_>) -> Vec<String> {
    let told = subject.answers.iter().filter(|a| a.outcome == Outcome::Variance);
    told.filter_map(|a| {
        let variance = subject.design.variances.items().get(a.variance?.0)?;
        let say = |text: &haulout_model::Text| text.words().unwrap_or("not stated").to_owned();
        Some(format!(
            "{} at {}: {}; accepted by {}, until {}",
            subject.ruleset.rules[a.rule].card.id,
            a.subject,
            say(&variance.reason),
            say(&variance.accepted_by),
            say(&variance.until)
        ))
    })
    .collect()
}
