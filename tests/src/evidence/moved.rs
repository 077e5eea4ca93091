//! Moving one limit a little up and down, and looking which marked example notices.

use std::collections::{BTreeMap, BTreeSet};

use haulout_engine::{Answer, Options, Outcome, Rule, Ruleset, review};
use haulout_quantity::Dimension;
use haulout_sheet::{Limit, LimitValue, Made};

use crate::{Loaded, load, options};

/// A design with the rule whose example it is; none for an example design, which answers for every rule.
pub struct Played {
    /// What it is called on the page.
    pub name: String,
    /// The id of the rule whose example it is.
    pub rule: Option<String>,
    /// The key of the subject the example is about; empty for all.
    pub subject: String,
    /// The design.
    pub loaded: Loaded,
}

/// The marked examples of some rules, own rule first, then the example designs.
pub fn played(rules: &[Rule]) -> Vec<Played> {
    let marked = rules.iter().flat_map(|rule| rule.examples.iter().map(move |example| (rule, example)));
    let marked = marked.filter_map(|(rule, example)| {
        Some(Played {
            name: example.shows.to_string(),
            rule: Some(rule.card.id.to_string()),
            subject: example.subject.to_string(),
            loaded: load(&example.design).ok()?,
        })
    });
    let whole = crate::examples().into_iter().filter_map(|(name, text)| {
        Some(Played { name, rule: None, subject: String::new(), loaded: load(&text).ok()? })
    });
    marked.chain(whole).collect()
}

/// Outcome and sign of the margin by rule, subject and authority.
type Heard = BTreeMap<(String, String, Option<u16>), (Outcome, i8)>;

/// What a ruleset says of a design, as far as the example is about it.
pub fn heard(played: &Played, ruleset: &Ruleset) -> Heard {
    let options = Options { stage: None, ..options() };
    let review = review(&played.loaded.design, ruleset, &[], &options);
    let about = |a: &Answer| {
        let subject = a.subject.map_or_else(String::new, |s| s.key(&played.loaded.design));
        let rule = ruleset.rules[a.rule].card.id.to_string();
        let own = played.rule.as_ref().is_none_or(|r| *r == rule);
        let asked = played.subject.is_empty() || played.subject == subject;
        (own && asked).then(|| ((rule, subject, a.authority), (a.without_variance, sign(a.margin))))
    };
    review.answers.iter().filter_map(about).collect()
}

fn sign(margin: Option<f64>) -> i8 {
    match margin {
        Some(m) if m < 0.0 => -1,
        Some(m) if m >= 0.0 => 1,
        _ => 0,
    }
}

/// A limit moved by 5 % of the number in its unit; a whole number without a dimension by one.
pub fn moved(limit: &Limit, up: bool) -> f64 {
    shifted(limit.value, limit.unit, limit.dimension, up)
}

/// A number in SI moved by 5 % of what is printed; a whole number without a dimension by one, nothing by one of its unit.
pub fn shifted(value: f64, unit: &str, dimension: Dimension, up: bool) -> f64 {
    let sense = if up { 1.0 } else { -1.0 };
    if dimension == Dimension::NUMBER && unit.is_empty() && value.fract() == 0.0 {
        return value + sense;
    }
    match haulout_quantity::unit(unit) {
        // Of degrees Celsius 5 % are meant in degrees Celsius.
        Some(unit) if dimension == Dimension::TEMPERATURE => {
            value + unit.difference_to_si(0.05 * sense * unit.of_si(value).abs())
        }
        Some(unit) if value == 0.0 => sense * unit.difference_to_si(1.0),
        _ => value + 0.05 * sense * value.abs(),
    }
}

/// The rules that read a limit, its own first, as a ruleset in which it is moved.
///
/// # Errors
/// The sentence of the door when the limit cannot be reached.
pub fn through_the_door(rules: &[Rule], limit: &Limit, value: f64) -> Result<Ruleset, String> {
    let mut ruleset = Ruleset::new(rules.to_vec());
    let value = LimitValue { value, by: None };
    ruleset.set_limit(limit.rule, limit.name, limit.row, value, Some("moved to see what notices"))?;
    Ok(ruleset)
}

/// The first played design of which another thing is said.
pub fn noticed<'p>(played: &'p [Played], before: &[Heard], moved: &Ruleset) -> Option<&'p Played> {
    let differs = |(p, before): &(&Played, &Heard)| heard(p, moved) != **before;
    played.iter().zip(before).find(differs).map(|(p, _)| p)
}

/// The addresses of the limits that a rule draws on for its own examples, listed on its card or not.
pub fn limits_drawn(rule: &Rule) -> BTreeSet<usize> {
    let ruleset = Ruleset::new(vec![rule.clone()]);
    let mut found = BTreeSet::new();
    for loaded in rule.examples.iter().filter_map(|example| load(&example.design).ok()) {
        let review = review(&loaded.design, &ruleset, &[], &options());
        for line in 0..review.book.len() {
            if let Made::Limit(limit, _) = review.book.record(line as u32).made {
                found.insert(std::ptr::from_ref(limit) as usize);
            }
        }
    }
    found
}
