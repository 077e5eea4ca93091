//! A rule: its card, its limits, its examples, and its judgement, compiled or scripted.

use std::sync::Arc;

use haulout_model::Subject;
use haulout_sheet::{Known, Limit, Sheet};

use crate::card::{Card, Example};
use crate::check::Check;

/// What judges: a compiled function or a script.
pub trait Judge: Send + Sync {
    /// Judges one subject in the sheet's case.
    ///
    /// # Errors
    /// All that is missing for a judgement.
    fn judge(&self, sheet: Sheet<'_>, at: Subject) -> Known<Check>;
}

/// A rule as it is written in a file of its own.
pub struct CompiledRule {
    /// Its card.
    pub card: Card,
    /// Its limits.
    pub limits: &'static [&'static Limit],
    /// Its examples.
    pub examples: &'static [Example],
    /// Its judgement.
    pub judge: fn(Sheet<'_>, Subject) -> Known<Check>,
}

/// A rule of a ruleset. Nothing here tells a compiled one from a scripted one.
#[derive(Clone)]
pub struct Rule {
    /// Its card.
    pub card: Arc<Card>,
    /// Its limits.
    pub limits: Vec<&'static Limit>,
    /// Its examples.
    pub examples: Vec<Example>,
    /// Where it comes from: the position of its annex, none when it is built in.
    pub annex: Option<u16>,
    /// Whether its figures look at samples or search so long that a run over many designs may want to leave it out.
    pub heavy: bool,
    /// Its judgement.
    pub judge: Arc<dyn Judge>,
}

struct Function(fn(Sheet<'_>, Subject) -> Known<Check>);

impl Judge for Function {
    fn judge(&self, sheet: Sheet<'_>, at: Subject) -> Known<Check> {
        (self.0)(sheet, at)
    }
}

impl Rule {
    /// A compiled rule.
    pub fn compiled(rule: &'static CompiledRule) -> Self {
        Rule {
            card: Arc::new(rule.card.clone()),
            limits: rule.limits.to_vec(),
            examples: rule.examples.to_vec(),
            annex: None,
            heavy: false,
            judge: Arc::new(Function(rule.judge)),
        }
    }
}
