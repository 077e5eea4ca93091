//! What annexes did to a ruleset, kept so that every output can repeat it.

use haulout_sheet::{LimitValue, Tighter};

use crate::card::Demand;
use crate::ruleset::Ruleset;

/// An annex that took part.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Annex {
    /// Its name.
    pub name: String,
    /// Its version.
    pub version: String,
    /// The licence it is given under.
    pub licence: String,
    /// Who wrote it.
    pub authors: Vec<String>,
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
    /// The unit the limit is printed in.
    pub unit: &'static str,
    /// Why.
    pub reason: String,
    /// By which annex.
    pub annex: String,
}

/// A recommendation that an annex made a requirement.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Raised {
    /// The rule.
    pub rule: String,
    /// By which annex.
    pub annex: String,
}

/// A value of the register that an annex gave: of a species it added, or in the place of a built-in one.
#[derive(Debug, Clone, PartialEq)]
pub struct Given {
    /// Key of the species.
    pub species: &'static str,
    /// The name of the value, as scripts use it.
    pub name: &'static str,
    /// What stood there before, in SI; none when nothing did.
    pub from: Option<f64>,
    /// What stands there now, in SI.
    pub to: f64,
    /// The unit it is printed in.
    pub unit: &'static str,
    /// Where it stands.
    pub source: &'static str,
    /// By which annex.
    pub annex: String,
}

impl Ruleset {
    /// The name of the annex at a position; empty for what is built in.
    pub fn annex_name(&self, by: Option<u16>) -> String {
        by.and_then(|by| self.annexes.get(usize::from(by))).map(|a| a.name.clone()).unwrap_or_default()
    }

    /// Sets a limit: the one door for annexes and for the mutation of limits in tests. Of several values that ask more
    /// than the card, the one that asks most stands, in whatever order they come. A value that asks less than the card,
    /// or takes back with a reason what an earlier annex asked, is a loosening and is noted.
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
            let of = if row.is_empty() { "" } else { ", row " };
            return Err(format!("the rule {rule} has no limit {name}{of}{row}"));
        };
        let looser_than = |than: f64| match limit.tighter {
            Tighter::Higher => value.value < than,
            Tighter::Lower => value.value > than,
        };
        let now = self.limits.value(limit).value;
        if looser_than(now) {
            let Some(reason) = reason.filter(|r| !r.trim().is_empty()) else {
                // Asking more than the card and less than another annex is a tightening that changes nothing.
                let loosened = looser_than(limit.value) || value.by.is_none();
                let told = format!("{rule}, {name}: loosening a limit needs a reason");
                return if loosened { Err(told) } else { Ok(()) };
            };
            self.loosened.push(Loosened {
                rule: rule.to_owned(),
                limit: if row.is_empty() { name.to_owned() } else { format!("{name}, {row}") },
                from: now,
                to: value.value,
                unit: limit.unit,
                reason: reason.to_owned(),
                annex: self.annex_name(value.by),
            });
        }
        if value.value != now {
            self.limits.set(rule, name, row, value);
        }
        Ok(())
    }

    /// Makes a recommendation a requirement; a rule that is one stays one.
    ///
    /// # Errors
    /// A sentence when there is no such rule.
    pub fn raise(&mut self, rule: &str, annex: u16) -> Result<(), String> {
        let by = self.annex_name(Some(annex));
        let Some(at) = self.position(rule) else { return Err(format!("there is no rule \"{rule}\"")) };
        let card = std::sync::Arc::make_mut(&mut self.rules[at].card);
        if card.demand == Demand::Should {
            card.demand = Demand::Shall;
            self.raised.push(Raised { rule: rule.to_owned(), annex: by });
        }
        Ok(())
    }
}
