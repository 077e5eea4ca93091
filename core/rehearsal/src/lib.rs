//! A rehearsal: one rule alone on the examples of its own card, each held to what it says the rule must answer.
//!
//! No single rule is known here, and whether a rule is compiled or scripted makes no difference.

mod places;

use haulout_document::{Limits as Reading, Tree, read};
use haulout_engine::{Answer, Example, Expected, Options, Outcome, Review, Rule, Ruleset, review};
use haulout_model::Design;
use haulout_place::Pointer;
use haulout_sheet::Limits;

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
    let alone = Ruleset { limits: limits.clone(), ..Ruleset::new(vec![rule.clone()]) };
    rule.examples.iter().map(|example| play(&alone, example)).collect()
}

/// Variances are looked through, so the day of a rehearsal decides nothing.
const DAY: &str = "1970-01-01";

fn play(alone: &Ruleset, example: &Example) -> Rehearsed {
    let mut rehearsed = Rehearsed {
        shows: example.shows.to_string(),
        expected: example.expected,
        got: None,
        place_named: example.place.is_empty(),
        problems: Vec::new(),
    };
    match open(&example.design) {
        Ok((tree, design)) => {
            let review = review(&design, alone, &[], &Options { stage: None, on: DAY.to_owned() });
            answered(&mut rehearsed, example, &tree, &review);
        }
        Err(problems) => rehearsed.problems = problems,
    }
    rehearsed
}

fn open(text: &str) -> Result<(Tree, Design), Vec<String>> {
    let sentences =
        |problems: Vec<haulout_document::Problem>| problems.into_iter().map(|p| p.message).collect();
    let tree = read(text.as_bytes(), &Reading::default()).accepted().map_err(sentences)?;
    let (design, problems) = haulout_model::read(&tree);
    if problems.is_empty() { Ok((tree, design)) } else { Err(sentences(problems)) }
}

fn answered(rehearsed: &mut Rehearsed, example: &Example, tree: &Tree, review: &Review<'_>) {
    let wanted = outcome(example.expected);
    let key = |answer: &Answer| match answer.subject {
        Some(subject) => subject.key(review.book.design()),
        None => review.ruleset.rules[answer.rule].card.about.name().to_owned(),
    };
    let about: Vec<&Answer> = review.answers.iter().filter(|a| key(a) == example.subject).collect();
    // Under several authorities there are several answers; all must be as marked, so one that is not speaks first.
    let Some(answer) = about.iter().find(|a| a.without_variance != wanted).or(about.first()) else {
        let there: Vec<String> = review.answers.iter().map(key).collect();
        rehearsed.problems.push(format!(
            "there is no answer about \"{}\"; the subjects of this example are {}",
            example.subject,
            there.join(", ")
        ));
        return;
    };
    rehearsed.got = Some(answer.without_variance);
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

const fn outcome(expected: Expected) -> Outcome {
    match expected {
        Expected::Met => Outcome::Met,
        Expected::Short => Outcome::Short,
        Expected::NotAssessed => Outcome::NotAssessed,
        Expected::DoesNotApply => Outcome::DoesNotApply,
    }
}

#[cfg(test)]
mod tests;
