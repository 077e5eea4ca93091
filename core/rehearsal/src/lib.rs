//! A rehearsal: one rule alone on the examples of its own card, each held to what it says the rule must answer; and a
//! ruleset on a whole design with the answers it must give.
//!
//! No single rule is known here, and whether a rule is compiled or scripted makes no difference.

mod design;
mod places;

use std::time::Duration;

use haulout_document::{Limits as Reading, Tree, read};
use haulout_engine::{Answer, Example, Expected, Options, Outcome, Review, Rule, Ruleset, review};
use haulout_model::Design;
use haulout_place::Pointer;
use haulout_sheet::Limits;

pub use design::{DesignRehearsed, Wanted, rehearse_design};
pub use places::places;

/// What came of one example.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Rehearsed {
    /// What the example shows.
    pub shows: String,
    /// What the rule must say.
    pub expected: Expected,
    /// What it says about the example's subject; none when there is no answer about it.
    pub got: Option<Outcome>,
    /// Whether the answer names the marked place, or a part that holds it; true when none is marked.
    pub place_named: bool,
    /// What keeps the example from being played, or from being played as marked, in sentences.
    pub problems: Vec<String>,
    /// The numbers of the answer, as the observer says them.
    pub told: String,
    /// How long the judgement took by the observer's clock, reading not counted.
    pub took: Duration,
}

/// How an answer of a review is said.
pub type Telling = dyn Fn(&Review<'_>, &Tree, &Answer) -> String;

/// Who watches a rehearsal: a clock, and a way to say an answer. Neither decides anything.
pub struct Observer<'o> {
    /// The time since some moment.
    pub clock: &'o dyn Fn() -> Duration,
    /// How an answer is said.
    pub tell: &'o Telling,
}

impl Observer<'_> {
    /// One who has no clock and says nothing.
    pub const NONE: Observer<'static> =
        Observer { clock: &|| Duration::ZERO, tell: &|_, _, _| String::new() };
}

impl Rehearsed {
    /// Whether everything is as marked.
    pub fn holds(&self) -> bool {
        self.problems.is_empty() && self.place_named && self.got == Some(outcome(self.expected))
    }
}

/// Plays every example of a rule, with the limits of a ruleset; the default ones are those of the cards.
///
/// A variance in an example is looked through: what is rehearsed is the judgement, not its acceptance.
pub fn rehearse(rule: &Rule, limits: &Limits) -> Vec<Rehearsed> {
    rehearse_before(&Observer::NONE, rule, limits)
}

/// The same before an observer.
pub fn rehearse_before(observer: &Observer<'_>, rule: &Rule, limits: &Limits) -> Vec<Rehearsed> {
    let alone = Ruleset { limits: limits.clone(), ..Ruleset::new(vec![rule.clone()]) };
    rule.examples.iter().map(|example| play(observer, &alone, example)).collect()
}

/// Variances are looked through, so the day of a rehearsal decides nothing.
const DAY: &str = "1970-01-01";

/// A judgement is timed so many times, and the least time counts.
const TIMED: u32 = 5;

pub(crate) fn options() -> Options {
    Options { stage: None, on: DAY.to_owned() }
}

fn play(observer: &Observer<'_>, alone: &Ruleset, example: &Example) -> Rehearsed {
    let mut rehearsed = Rehearsed::blank(example);
    match open(&example.design) {
        Ok((tree, design)) => {
            let review = review(&design, alone, &[], &options());
            answered(&mut rehearsed, (0, example), &tree, &review, observer);
            rehearsed.took = timed(observer, &design, alone);
        }
        Err(problems) => rehearsed.problems = problems,
    }
    rehearsed
}

/// The least time of some reviews.
pub(crate) fn timed(observer: &Observer<'_>, design: &Design, ruleset: &Ruleset) -> Duration {
    let once = |_| {
        let start = (observer.clock)();
        // The optimiser may not leave out what nobody looks at.
        std::hint::black_box(review(design, ruleset, &[], &options()));
        (observer.clock)().saturating_sub(start)
    };
    (0..TIMED).map(once).min().unwrap_or_default()
}

impl Rehearsed {
    pub(crate) fn blank(example: &Example) -> Self {
        Rehearsed {
            shows: example.shows.to_string(),
            expected: example.expected,
            got: None,
            place_named: example.place.is_empty(),
            problems: Vec::new(),
            told: String::new(),
            took: Duration::ZERO,
        }
    }
}

fn open(text: &str) -> Result<(Tree, Design), Vec<String>> {
    let sentences =
        |problems: Vec<haulout_document::Problem>| problems.into_iter().map(|p| p.message).collect();
    let tree = read(text.as_bytes(), &Reading::default()).accepted().map_err(sentences)?;
    let (design, problems) = haulout_model::read(&tree);
    if problems.is_empty() { Ok((tree, design)) } else { Err(sentences(problems)) }
}

/// The key of what an answer is about; that of the kind when the design has none of it.
pub(crate) fn key(review: &Review<'_>, answer: &Answer) -> String {
    match answer.subject {
        Some(subject) => subject.key(review.book.design()),
        None => review.ruleset.rules[answer.rule].card.about.name().to_owned(),
    }
}

pub(crate) fn answered(
    rehearsed: &mut Rehearsed,
    (rule, example): (usize, &Example),
    tree: &Tree,
    review: &Review<'_>,
    observer: &Observer<'_>,
) {
    let wanted = outcome(example.expected);
    let of_rule: Vec<&Answer> = review.answers.iter().filter(|a| a.rule == rule).collect();
    let about: Vec<&Answer> = of_rule.iter().copied().filter(|a| key(review, a) == example.subject).collect();
    // Under several authorities there are several answers; all must be as marked, so one that is not speaks first.
    let Some(answer) = about.iter().find(|a| a.without_variance != wanted).or(about.first()) else {
        let there: Vec<String> = of_rule.iter().map(|a| key(review, a)).collect();
        rehearsed.problems.push(format!(
            "there is no answer about \"{}\"; the subjects of this example are {}",
            example.subject,
            there.join(", ")
        ));
        return;
    };
    rehearsed.got = Some(answer.without_variance);
    rehearsed.told = (observer.tell)(review, tree, answer);
    if answer.without_variance != wanted {
        rehearsed.problems.push(format!(
            "expected is {}, the rule says {}",
            wanted.name(),
            answer.without_variance.name()
        ));
    }
    if !example.place.is_empty() {
        named(rehearsed, &example.place, places(tree, &review.book, answer));
    }
}

fn named(rehearsed: &mut Rehearsed, marked: &str, places: Vec<Pointer>) {
    let Ok(marked) = Pointer::parse(marked) else {
        rehearsed
            .problems
            .push(format!("the place \"{marked}\" is no JSON Pointer: write \"/pools/0/depth\""));
        return;
    };
    rehearsed.place_named = places.iter().any(|place| place.contains(&marked));
    if !rehearsed.place_named {
        let there: Vec<&str> = places.iter().map(Pointer::as_str).collect();
        rehearsed.problems.push(format!("the answer does not name {marked}; it names {}", there.join(", ")));
    }
}

/// The outcome behind a mark.
pub const fn outcome(expected: Expected) -> Outcome {
    match expected {
        Expected::Met => Outcome::Met,
        Expected::Short => Outcome::Short,
        Expected::NotAssessed => Outcome::NotAssessed,
        Expected::DoesNotApply => Outcome::DoesNotApply,
    }
}

#[cfg(test)]
mod tests;
