//! A ruleset: rules in order, the limits and the register resolved for them, the annexes that took part.

use haulout_sheet::Limits;

use crate::annexed::{Annex, Given, Loosened, Raised};
use crate::rule::Rule;
use crate::specification::Specification;

/// Rules and limits, resolved once before a run.
#[derive(Clone, Default)]
pub struct Ruleset {
    /// The rules, built in first, then annex by annex.
    pub rules: Vec<Rule>,
    /// The limits that differ from their cards, and the register of the run.
    pub limits: Limits,
    /// The annexes, in the order given.
    pub annexes: Vec<Annex>,
    /// What they loosened.
    pub loosened: Vec<Loosened>,
    /// What they made a requirement.
    pub raised: Vec<Raised>,
    /// The values of the register they gave.
    pub given: Vec<Given>,
    /// The specification the run was made by.
    pub specification: Option<Specification>,
}

impl Ruleset {
    /// A ruleset of rules as they stand.
    pub fn new(rules: Vec<Rule>) -> Self {
        Ruleset { rules, ..Ruleset::default() }
    }

    /// The same without the rules whose figures take long: what many designs are judged by at once.
    pub fn without_heavy(mut self) -> Self {
        self.rules.retain(|rule| !rule.heavy);
        self
    }

    /// The position of a rule by its id.
    pub fn position(&self, id: &str) -> Option<usize> {
        self.rules.iter().position(|r| r.card.id == id)
    }

    /// Everything that decides what this ruleset asks, as text: the rules with their cards' binding parts and every
    /// limit with its value. Its digest names the ruleset.
    pub fn substance(&self) -> String {
        use std::fmt::Write;
        let mut text = String::new();
        for rule in &self.rules {
            let card = &rule.card;
            // Writing to a String cannot fail.
            let _ = writeln!(text, "{} {} {}", card.id, card.demand.name(), card.stage.name());
            for limit in &rule.limits {
                let value = self.limits.value(limit).value;
                let _ = writeln!(text, "  {} {} {value:e}", limit.name, limit.row);
            }
        }
        for annex in &self.annexes {
            let _ = writeln!(text, "annex {} {} {}", annex.name, annex.version, annex.digest);
        }
        if let Some(specification) = &self.specification {
            let _ = writeln!(text, "specification {}", specification.digest);
        }
        text
    }
}
