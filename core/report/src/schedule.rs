//! The schedule: every check that was made, counted; what is tightest; what is open, waits or has to be proved.

use std::collections::BTreeMap;

use haulout_engine::{Consequence, Demand, Outcome};
use haulout_model::Standing;

use crate::entry::binding;
use crate::page::Subject;
use crate::spoken::{said, written};
use crate::told::{Told, ToldGap};
use crate::wrap::{row, wrap};

const INDENT: usize = 11;

/// Names of open rules up to this number are listed; more are counted.
const NAMED: usize = 6;

/// Lines of a list up to this number stand on the page.
const LISTED: usize = 8;

/// The closing words of every page.
pub(crate) const CLOSING: &str = "Screening results. Electrical, structural and glazing matters, guards and water safety \
belong to licensed people and local codes; animals to their keepers and vets.";

/// The schedule of a review.
pub(crate) fn schedule(subject: &Subject<'_>, width: usize) -> String {
    let mut out = String::new();
    for (word, text) in rows(subject) {
        out.push_str(&row(word, &text, INDENT, width));
    }
    out.push('\n');
    out.push_str(&wrap(CLOSING, width).join("\n"));
    out.push('\n');
    out
}

/// The rows of the schedule; a word that repeats itself is left out.
pub(crate) fn rows(subject: &Subject<'_>) -> Vec<(&'static str, String)> {
    let mut rows = vec![("SCHEDULE", counts(subject.answers))];
    let tight: Vec<String> =
        tightest(subject.answers).into_iter().map(|one| in_words(subject, one)).collect();
    if !tight.is_empty() {
        rows.push(("tightest", tight.join("; ")));
    }
    rows.extend(open(subject).map(|text| ("open", text)));
    headed(&mut rows, "waiting", listed(waiting(subject).iter().map(Awaited::line).collect()));
    headed(&mut rows, "to prove", listed(to_prove(subject).iter().map(ToProve::line).collect()));
    headed(&mut rows, "variance", variances(subject));
    rows.push(("STATUS", status(subject)));
    rows
}

/// The first of some lines; how many more there are is said.
fn listed(mut lines: Vec<String>) -> Vec<String> {
    let more = lines.len().saturating_sub(LISTED);
    if more > 0 {
        lines.truncate(LISTED);
        lines.push(format!("and {more} more; --as markdown lists them all"));
    }
    lines
}

fn headed(rows: &mut Vec<(&'static str, String)>, word: &'static str, lines: Vec<String>) {
    rows.extend(lines.into_iter().enumerate().map(|(at, line)| (if at == 0 { word } else { "" }, line)));
}

fn counts(answers: &[Told]) -> String {
    let of = |outcome: Outcome| answers.iter().filter(|a| a.outcome == outcome).count();
    let hoped = |a: &&Told| a.outcome == Outcome::Met && a.standing == Some(Standing::Declared);
    let to_prove = match answers.iter().filter(hoped).count() {
        0 => String::new(),
        some => format!(" ({some} to be proved)"),
    };
    let parts = [
        format!("{} met{to_prove}", of(Outcome::Met)),
        format!("{} short", of(Outcome::Short)),
        format!("{} not assessed", of(Outcome::NotAssessed)),
        format!("{} not applying", of(Outcome::DoesNotApply)),
        format!("{} accepted as a variance", of(Outcome::Variance)),
    ];
    parts.join(" · ")
}

/// The three smallest margins that are met, as a share of what is asked, and where in the list they stand; only where zero is a true
/// zero.
pub(crate) fn tightest(answers: &[Told]) -> Vec<(f64, usize)> {
    let met = answers.iter().enumerate().filter(|(_, told)| told.outcome == Outcome::Met);
    let mut shares: Vec<(f64, usize)> = met.filter_map(|(at, told)| Some((spare(told)?, at))).collect();
    shares.sort_by(|a, b| a.0.total_cmp(&b.0));
    shares.truncate(3);
    shares
}

fn in_words(subject: &Subject<'_>, (share, at): (f64, usize)) -> String {
    let told = &subject.answers[at];
    let rule = subject.ruleset.rules[told.rule].card.id.replace('-', " ");
    format!("{rule}, {}: {share:.0} % to spare", told.named)
}

/// The margin as a share of what is asked, per cent.
fn spare(told: &Told) -> Option<f64> {
    let numbers = told.numbers.as_ref()?;
    let true_zero = numbers.unit.dimension != haulout_quantity::Dimension::TEMPERATURE;
    let limit = numbers.low.or(numbers.high).filter(|limit| true_zero && *limit > 0.0)?;
    Some(numbers.margin? / limit * 100.0)
}

/// Required checks that are owed and could not be made: they count like a shortfall. Folded into one sentence.
fn open(subject: &Subject<'_>) -> Option<String> {
    let mut grave: BTreeMap<Consequence, Vec<String>> = BTreeMap::new();
    for told in subject.answers.iter().filter(|told| is_open(subject, told)) {
        let card = &subject.ruleset.rules[told.rule].card;
        let rules = grave.entry(card.consequence).or_default();
        if !rules.contains(&card.id.to_string()) {
            rules.push(card.id.to_string());
        }
    }
    let count: usize = grave.values().map(Vec::len).sum();
    let named = |(consequence, rules): (&Consequence, &Vec<String>)| match count <= NAMED {
        true => format!("{}: {}", consequence.name(), rules.join(", ")),
        false => format!("{} for {}", rules.len(), consequence.name()),
    };
    let parts: Vec<String> = grave.iter().map(named).collect();
    let owed = if count == 1 { "required rule is owed now" } else { "required rules are owed now" };
    (count > 0).then(|| format!("{count} {owed} and could not be judged; {}", parts.join("; ")))
}

fn is_open(subject: &Subject<'_>, told: &Told) -> bool {
    let shall = subject.ruleset.rules[told.rule].card.demand == Demand::Shall;
    shall && told.owed && told.outcome == Outcome::NotAssessed
}

/// A missing thing and how many checks wait for it.
pub(crate) struct Awaited {
    pub(crate) place: String,
    pub(crate) why: String,
    pub(crate) checks: usize,
}

impl Awaited {
    fn line(&self) -> String {
        format!("{}{}: {}", self.place, self.why, counted(self.checks, "check"))
    }
}

/// So many of something.
pub(crate) fn counted(count: usize, what: &str) -> String {
    format!("{count} {what}{}", if count == 1 { "" } else { "s" })
}

/// Each missing thing with the number of checks that wait for it, the most awaited first.
pub(crate) fn waiting(subject: &Subject<'_>) -> Vec<Awaited> {
    let mut waits: BTreeMap<(String, String), usize> = BTreeMap::new();
    let open = subject.answers.iter().filter(|a| a.outcome == Outcome::NotAssessed);
    for gap in open.flat_map(|a| &a.gaps) {
        *waits.entry((gap_place(subject, gap), gap_words(gap))).or_default() += 1;
    }
    let mut waits: Vec<_> = waits.into_iter().collect();
    waits.sort_by_key(|(place, count)| (std::cmp::Reverse(*count), place.clone()));
    waits.into_iter().map(|((place, why), checks)| Awaited { place, why, checks }).collect()
}

fn gap_place(subject: &Subject<'_>, gap: &ToldGap) -> String {
    gap.first.as_ref().map_or_else(|| gap.what.clone(), |place| said(subject.tree, &place.pointer))
}

/// What is missing speaks for itself where it is only not stated.
fn gap_words(gap: &ToldGap) -> String {
    match gap.kind {
        "not stated" => String::new(),
        "no authority chosen" => format!(" ({})", gap.what),
        kind if gap.places.is_empty() => format!(" ({kind})"),
        kind => format!(" ({}, {kind})", gap.what),
    }
}

/// A declared value that has to be shown, and how many checks rest on it.
pub(crate) struct ToProve {
    pub(crate) place: String,
    pub(crate) line: u32,
    pub(crate) checks: usize,
}

impl ToProve {
    fn line(&self) -> String {
        format!("line {} · {} · {}", self.line, self.place, counted(self.checks, "check"))
    }
}

/// Every declared value below an answer that is met or short, in the order of the file.
pub(crate) fn to_prove(subject: &Subject<'_>) -> Vec<ToProve> {
    let mut found: BTreeMap<(u32, String), ToProve> = BTreeMap::new();
    for told in subject.answers.iter().filter(|a| matches!(a.outcome, Outcome::Met | Outcome::Short)) {
        for promise in &told.promises {
            let at = (promise.place.start, promise.place.pointer.to_string());
            let new = || ToProve {
                place: written(subject.tree, &promise.place),
                line: promise.place.line,
                checks: 0,
            };
            found.entry(at).or_insert_with(new).checks += 1;
        }
    }
    found.into_values().collect()
}

pub(crate) fn variances(subject: &Subject<'_>) -> Vec<String> {
    let told = subject.answers.iter().filter(|a| a.outcome == Outcome::Variance);
    told.filter_map(|a| {
        let variance = subject.design.variances.items().get(a.variance?.0)?;
        let say = |text: &haulout_model::Text| text.words().unwrap_or("not stated").to_owned();
        Some(format!(
            "{} at {}: {}; accepted by {}, until {}",
            subject.ruleset.rules[a.rule].card.id,
            a.named,
            say(&variance.reason),
            say(&variance.accepted_by),
            say(&variance.until)
        ))
    })
    .collect()
}

/// What the exit status says, in words.
pub(crate) fn status(subject: &Subject<'_>) -> String {
    let demand = |told: &Told| subject.ruleset.rules[told.rule].card.demand;
    let short = |wanted: Demand| {
        let owed = subject.answers.iter().filter(|a| a.owed && a.outcome == Outcome::Short);
        owed.filter(|a| demand(a) == wanted).count()
    };
    let (required, recommended) = (short(Demand::Shall), short(Demand::Should));
    let open = subject.answers.iter().filter(|told| is_open(subject, told)).count();
    let later = subject.answers.iter().filter(|a| !a.owed && a.outcome == Outcome::Short).count();
    let head = if required + open > 0 { "open" } else { "nothing required falls short or stays open" };
    let parts = [
        (required, format!("{} short", counted(required, &format!("{} check", binding(Demand::Shall))))),
        (open, format!("{} not assessed", counted(open, &format!("{} check", binding(Demand::Shall))))),
        (
            recommended,
            format!("{} short", counted(recommended, &format!("{} check", binding(Demand::Should)))),
        ),
        (later, format!("{later} short, owed at a later stage")),
    ];
    let told: Vec<String> = parts.into_iter().filter(|(count, _)| *count > 0).map(|(_, text)| text).collect();
    if told.is_empty() { head.to_owned() } else { format!("{head}: {}", told.join(", ")) }
}
