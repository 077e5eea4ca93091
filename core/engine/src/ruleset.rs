//! A ruleset: rules in order, the limits resolved for them, the annexes that took part.

use haulout_sheet::{LimitValue, Limits, Tighter};

use crate::rule::Rule;

/// An annex that took part.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Annex {
    /// Its name.
    pub name: String,
    /// Its version.
    pub version: String,
    /// SHA-256 of its files, hexadecimal.
    pub digest: String,
}

/// A limit that an annex loosened, repeated by every output.
#[derive(Debug, Clone, PartialEq)]
pub struct Loosened {
    /// The rule.
    pub rule: String,
    /// The limit, with its row if it has one.
    pub limit: String,
    /// From, in SI.
    pub from: f64,
    /// To, in SI.
    pub to: f64,
    /// Why.
    pub reason: String,
    /// By which annex.
    pub annex: String,
}

/// Rules and limits, resolved once before a run.
#[derive(Clone, Default)]
pub struct Ruleset {
    /// The rules, built in first, then annex by annex.
    pub rules: Vec<Rule>,
    /// The limits that differ from their cards.
    pub limits: Limits,
    /// The annexes.
    pub annexes: Vec<Annex>,
    /// What they loosened.
    pub loosened: Vec<Loosened>,
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

    /// Sets a limit: the one door for annexes and for the mutation of limits in tests. A value that asks less than
    /// the present one needs a reason.
    ///
    /// # Errors
    /// A sentence when there is no such limit, or when it would be loosened without a reason.
    pub fn set_limit(
        &mut self,
        rule: &str,
        name: &str,
        row: &str,
        value: LimitValue,
        reason: Option<&str>,
    ) -> Result<(), String> {
        let found = self.rules.iter().find(|r| r.card.id == rule);
        let limits = found.map(|r| r.limits.as_slice()).unwrap_or_default();
        let Some(limit) = limits.iter().find(|l| l.name == name && l.row == row) else {
            return Err(format!(
                "the rule {rule} has no limit {name}{}{row}",
                if row.is_empty() { "" } else { ", row " }
            ));
        };
        let now = self.limits.value(limit).value;
        let looser = match limit.tighter {
            Tighter::Higher => value.value < now,
            Tighter::Lower => value.value > now,
        };
        if looser {
            let Some(reason) = reason.filter(|r| !r.trim().is_empty()) else {
                return Err(format!("{rule}, {name}: loosening a limit needs a reason"));
            };
            let annex = value.by.and_then(|by| self.annexes.get(usize::from(by))).map(|a| a.name.clone());
            self.loosened.push(Loosened {
                rule: rule.to_owned(),
                limit: if row.is_empty() { name.to_owned() } else { format!("{name}, {row}") },
                from: now,
                to: value.value,
                reason: reason.to_owned(),
                annex: annex.unwrap_or_default(),
            });
        }
        self.limits.set(rule, name, row, value);
        Ok(())
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
        text
    }
}
