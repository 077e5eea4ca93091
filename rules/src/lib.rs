//! The compiled rules by chapter: one rule, one file, one line in the list.
//!
//! A rule reads figures and limits and hands in a check; it never compares, and it touches no file and no clock.

mod containment;
mod plumbing;
mod visitors;
mod water;

use haulout_engine::{CompiledRule, Rule};

/// Every compiled rule, chapter by chapter.
pub static RULES: &[&CompiledRule] = &[
    &water::depth_of_the_scheme::RULE,
    &water::depth_to_submerge_and_be_seen::RULE,
    &plumbing::turnover_by_delivered_flow::RULE,
    &containment::boundary_closed::RULE,
    &containment::barrier_height::RULE,
    &containment::top_closed::RULE,
    &containment::lip_for_climbers::RULE,
    &containment::corner_lipped::RULE,
    &containment::openings_small::RULE,
    &containment::not_dug_under::RULE,
    &containment::door_leaf::RULE,
    &containment::door_open::RULE,
    &containment::two_doors::RULE,
    &visitors::guard_height::RULE,
    &visitors::guard_openings::RULE,
    &visitors::guard_not_climbed::RULE,
];

/// The compiled rules, ready for a ruleset.
pub fn built_in() -> Vec<Rule> {
    RULES.iter().copied().map(Rule::compiled).collect()
}
