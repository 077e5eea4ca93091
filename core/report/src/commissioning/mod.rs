//! The commissioning list: trials with what the design lets expect, and every declared value that somebody has to measure.

mod formats;
mod page;

use std::collections::BTreeMap;

use haulout_document::Tree;
use haulout_engine::{Outcome, Ruleset, Trial};
use haulout_sheet::Book;

use crate::figured::{Figured, one};
use crate::place::Place;
use crate::spoken::written;
use crate::subject::named;
use crate::told::Told;

pub use formats::{commissioning_json, commissioning_markdown};
pub use page::commissioning_page;

/// The list of one design.
#[derive(Debug, Clone, PartialEq)]
pub struct Commissioning {
    /// Title and revision of the design.
    pub title: String,
    /// Trials in the order in which they are made; those that nothing in the design calls for are left out.
    pub trials: Vec<Tried>,
    /// Declared values that checks rest on, in the order of the file.
    pub declared: Vec<Declared>,
}

/// One trial and where it is made.
#[derive(Debug, Clone, PartialEq)]
pub struct Tried {
    /// Its name.
    pub id: &'static str,
    /// Its name in a list.
    pub title: &'static str,
    /// What it guards.
    pub guards: &'static str,
    /// What is done.
    pub does: &'static str,
    /// Why.
    pub why: &'static str,
    /// A word of caution.
    pub caution: Option<&'static str>,
    /// Where it is made.
    pub sites: Vec<Site>,
}

/// One subject of a trial.
#[derive(Debug, Clone, PartialEq)]
pub struct Site {
    /// Its key.
    pub subject: String,
    /// The same in the words of the trade.
    pub named: String,
    /// What is read on site, and the figure that says what it should be.
    pub expects: Vec<(&'static str, Figured)>,
}

/// A declared value.
#[derive(Debug, Clone, PartialEq)]
pub struct Declared {
    /// What it is.
    pub what: &'static str,
    /// Where it stands.
    pub place: Place,
    /// The same in words, with the value.
    pub written: String,
    /// The rules whose answers rest on it, in the order of their names.
    pub rules: Vec<String>,
}

/// Makes the list from the book of a review and its answers.
pub fn commissioning(
    (book, tree): (&Book<'_>, &Tree),
    ruleset: &Ruleset,
    answers: &[Told],
    trials: &'static [&'static Trial],
) -> Commissioning {
    let project = &book.design().project;
    let title: Vec<String> =
        [project.title.words().map(str::to_owned), project.revision.words().map(|r| format!("revision {r}"))]
            .into_iter()
            .flatten()
            .collect();
    Commissioning {
        title: title.join(", "),
        trials: trials.iter().map(|trial| tried(book, tree, trial)).filter(|t| !t.sites.is_empty()).collect(),
        declared: declared(tree, ruleset, answers),
    }
}

fn tried(book: &Book<'_>, tree: &Tree, trial: &'static Trial) -> Tried {
    let sites = trial.on(book).into_iter().map(|(subject, expected)| {
        let key = subject.key(book.design());
        let expects = expected.into_iter().map(|(expects, known)| {
            (expects.what, one((book, tree), expects.figure, &key, expects.case, known))
        });
        Site {
            expects: expects.collect(),
            named: named((book.design(), book.register()), trial.about, Some(subject), &[]),
            subject: key,
        }
    });
    Tried {
        id: trial.id,
        title: trial.title,
        guards: trial.guards.name(),
        does: trial.does,
        why: trial.why,
        caution: trial.caution,
        sites: sites.collect(),
    }
}

fn declared(tree: &Tree, ruleset: &Ruleset, answers: &[Told]) -> Vec<Declared> {
    let mut found: BTreeMap<(u32, String), Declared> = BTreeMap::new();
    for told in answers
        .iter()
        .filter(|told| matches!(told.outcome, Outcome::Met | Outcome::Short | Outcome::Variance))
    {
        let rule = &ruleset.rules[told.rule].card.id;
        for promise in &told.promises {
            let new = || Declared {
                what: promise.what,
                place: promise.place.clone(),
                written: written(tree, &promise.place),
                rules: Vec::new(),
            };
            let at = (promise.place.start, promise.place.pointer.to_string());
            let rules = &mut found.entry(at).or_insert_with(new).rules;
            if let Err(at) = rules.binary_search_by(|known| known.as_str().cmp(rule)) {
                rules.insert(at, rule.to_string());
            }
        }
    }
    found.into_values().collect()
}
