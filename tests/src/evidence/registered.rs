//! Which values of a register the rules draw on for their marked examples, and what notices when one is moved.

use std::collections::BTreeMap;

use haulout_engine::{Rule, Ruleset, review};
use haulout_quantity::Dimension;
use haulout_register::Value;
use haulout_sheet::Made;

use crate::evidence::moved::{Played, heard, shifted};
use crate::options;

/// A value of a register with the positions of the played designs that draw on it.
pub struct Drawn {
    /// The value.
    pub value: &'static Value,
    /// Positions in the list of played designs.
    pub by: Vec<usize>,
}

/// The rule whose example a design is, alone; every rule for an example design.
pub fn own_rule(rules: &[Rule], played: &Played) -> Ruleset {
    let own = |rule: &&Rule| played.rule.as_ref().is_none_or(|id| *id == rule.card.id);
    Ruleset::new(rules.iter().filter(own).cloned().collect())
}

/// Every value of a register that the rules draw on for their own examples, in the order of what they are.
pub fn drawn(played: &[Played], rules: &[Rule]) -> Vec<Drawn> {
    let mut found: BTreeMap<usize, Drawn> = BTreeMap::new();
    for (at, one) in played.iter().enumerate() {
        let ruleset = own_rule(rules, one);
        let review = review(&one.loaded.design, &ruleset, &[], &options());
        for line in 0..review.book.len() {
            let Made::Register(value, _) = review.book.record(line as u32).made else { continue };
            let entry = found.entry(std::ptr::from_ref(value) as usize);
            let drawn = entry.or_insert(Drawn { value, by: Vec::new() });
            if drawn.by.last() != Some(&at) {
                drawn.by.push(at);
            }
        }
    }
    let mut all: Vec<Drawn> = found.into_values().collect();
    all.sort_by(|a, b| key(a.value).cmp(&key(b.value)).then(a.value.value.total_cmp(&b.value.value)));
    all
}

fn key(value: &Value) -> (&str, &str) {
    (value.what, value.source)
}

/// A value moved by 5 %; a yes becomes a no, and a kind of body the next one.
pub fn moved(value: &Value, up: bool) -> f64 {
    let flag = value.dimension == Dimension::NUMBER && value.unit.is_empty() && value.value.fract() == 0.0;
    if flag && value.value <= 1.0 {
        return 1.0 - value.value;
    }
    shifted(value.value, value.unit, value.dimension, up)
}

/// The first played design of which another thing is said when a value is moved.
pub fn noticed<'p>(drawn: &Drawn, played: &'p [Played], rules: &[Rule], up: bool) -> Option<&'p Played> {
    let differs = |one: &&Played| {
        let before = own_rule(rules, one);
        let mut after = before.clone();
        after.limits.set_registered(drawn.value, moved(drawn.value, up));
        heard(one, &before) != heard(one, &after)
    };
    drawn.by.iter().map(|at| &played[*at]).find(differs)
}
