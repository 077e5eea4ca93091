//! The compiled rules by chapter: one rule, one file, one line in the list.
//!
//! A rule reads figures and limits and hands in a check; it never compares, and it touches no file and no clock.

mod plumbing;
mod water;

use haulout_engine::{CompiledRule, Rule};

/// Every compiled rule, chapter by chapter.
pub static RULES: &[&CompiledRule] = &[
    &water::depth_of_the_scheme::RULE,
    &water::depth_to_submerge_and_be_seen::RULE,
    &plumbing::turnover_by_delivered_flow::RULE,
];

/// The compiled rules, ready for a ruleset.
pub fn built_in() -> Vec<Rule> {
    RULES.iter().copied().map(Rule::compiled).collect()
}
