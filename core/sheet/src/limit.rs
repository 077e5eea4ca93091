//! Limits as cards, read only through the sheet, and the values a ruleset has resolved for them.

use haulout_quantity::{Basis, Dimension};
use haulout_register::{Register, Value};
use rustc_hash::FxHashMap;

/// Which way a limit becomes harder to meet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Tighter {
    /// A higher value asks more: a least depth.
    Higher,
    /// A lower value asks more: a greatest time.
    Lower,
}

/// The card of a limit, or of one row of a table of limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    /// The id of its rule.
    pub rule: &'static str,
    /// Its name within the rule; unique there.
    pub name: &'static str,
    /// The row, for a table; empty otherwise.
    pub row: &'static str,
    /// What it is, in words.
    pub what: &'static str,
    /// In SI.
    pub value: f64,
    /// The unit it is printed in.
    pub unit: &'static str,
    /// Its dimension.
    pub dimension: Dimension,
    /// Which way it is tighter.
    pub tighter: Tighter,
    /// How well it is known.
    pub basis: Basis,
    /// Where it stands: title, edition, clause or table.
    pub source: &'static str,
}

/// A limit's value in the ruleset at hand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LimitValue {
    /// In SI.
    pub value: f64,
    /// The position of the annex that changed it, in the order given; none when it stands as built in.
    pub by: Option<u16>,
}

/// The limits of a ruleset that differ from their cards, and the register it is run with.
#[derive(Debug, Clone, Default)]
pub struct Limits {
    changed: FxHashMap<(String, String, String), LimitValue>,
    /// By address, for values of a register have no names of their own; each is a static, so its address stays.
    registered: FxHashMap<usize, f64>,
    register: Register,
}

impl Limits {
    /// Changes one limit. The caller has checked which way is tighter and who may loosen.
    pub fn set(&mut self, rule: &str, name: &str, row: &str, value: LimitValue) {
        self.changed.insert((rule.to_owned(), name.to_owned(), row.to_owned()), value);
    }

    /// The value of a limit.
    pub fn value(&self, limit: &Limit) -> LimitValue {
        let as_built_in = LimitValue { value: limit.value, by: None };
        if self.changed.is_empty() {
            return as_built_in;
        }
        let key = (limit.rule.to_owned(), limit.name.to_owned(), limit.row.to_owned());
        self.changed.get(&key).copied().unwrap_or(as_built_in)
    }

    /// Changes a value of a register, in SI, to see what depends on it; annexes go through [`Limits::register_mut`].
    pub fn set_registered(&mut self, value: &'static Value, number: f64) {
        self.registered.insert(std::ptr::from_ref(value) as usize, number);
    }

    /// The number of a value of a register, in SI.
    pub fn registered(&self, value: &'static Value) -> f64 {
        let changed = self.registered.get(&(std::ptr::from_ref(value) as usize));
        changed.copied().unwrap_or(value.value)
    }

    /// The species and authorities of the run.
    pub const fn register(&self) -> &Register {
        &self.register
    }

    /// The same, for annexes to add to.
    pub const fn register_mut(&mut self) -> &mut Register {
        &mut self.register
    }

    /// Whether no limit differs from its card, and no value from its register.
    pub fn is_empty(&self) -> bool {
        self.changed.is_empty() && self.registered.is_empty() && self.register.is_empty()
    }
}
