//! A whole design with the answers it must give: what is listed must come, and no shortfall of a house may come unlisted.

use haulout_document::Tree;
use haulout_engine::{Answer, Example, Outcome, Ruleset, review};
use haulout_model::Design;

use crate::{Observer, Rehearsed, answered, key, options};

/// One answer that a design must give.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Wanted {
    /// Id of the rule; of any rule of the ruleset, so that a limit tightened on the card of an annex can be tried too.
    pub rule: String,
    /// Subject, outcome and place; the design of this example is not looked at.
    pub example: Example,
}

/// What came of a design.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DesignRehearsed {
    /// What came of each answer wanted, in their order.
    pub wanted: Vec<Rehearsed>,
    /// Every outcome of a rule that was asked about: position of the rule, key of the subject, outcome.
    pub seen: Vec<(usize, String, Outcome)>,
    /// Shortfalls among them that nobody listed: position of the rule, and key of the subject.
    pub unlisted: Vec<(usize, String)>,
}

/// Reviews a design and compares; `own` says which rules may not fall short unlisted.
pub fn rehearse_design(
    observer: &Observer<'_>,
    ruleset: &Ruleset,
    own: &dyn Fn(usize) -> bool,
    (tree, design): (&Tree, &Design),
    wanted: &[Wanted],
) -> DesignRehearsed {
    let review = review(design, ruleset, &[], &options());
    let one = |want: &Wanted| {
        let mut rehearsed = Rehearsed::blank(&want.example);
        match ruleset.position(&want.rule) {
            Some(rule) => answered(&mut rehearsed, (rule, &want.example), tree, &review, observer),
            None => rehearsed.problems.push(format!("there is no rule \"{}\"", want.rule)),
        }
        rehearsed
    };
    let rehearsed = wanted.iter().map(one).collect();
    let of_own: Vec<&Answer> = review.answers.iter().filter(|a| own(a.rule)).collect();
    let seen: Vec<(usize, String, Outcome)> =
        of_own.iter().map(|a| (a.rule, key(&review, a), a.without_variance)).collect();
    let listed = |rule: usize, subject: &str| {
        let id = &*ruleset.rules[rule].card.id;
        wanted.iter().any(|w| w.rule == id && w.example.subject == subject)
    };
    let short = seen.iter().filter(|(.., outcome)| *outcome == Outcome::Short);
    let mut unlisted: Vec<(usize, String)> =
        short.filter(|(rule, subject, _)| !listed(*rule, subject)).map(|(r, s, _)| (*r, s.clone())).collect();
    // Under several authorities one subject has several answers.
    unlisted.dedup();
    DesignRehearsed { wanted: rehearsed, seen, unlisted }
}
