//! The compiled rules by chapter: one rule, one file, one line in the list.
//!
//! A rule reads figures and limits and hands in a check; it never compares, and it touches no file and no clock.

mod plumbing;
mod power;
mod water;

use haulout_engine::{CompiledRule, Rule};

/// Every compiled rule, chapter by chapter.
pub static RULES: &[&CompiledRule] = &[
    &water::depth_of_the_scheme::RULE,
    &water::depth_to_submerge_and_be_seen::RULE,
    &plumbing::turnover_by_delivered_flow::RULE,
    &power::water_is_classed::RULE,
    &power::mains_outside_zone_one::RULE,
    &power::sockets_and_switches_outside_zone_one::RULE,
    &power::receptacle_six_feet_from_water::RULE,
    &power::equipment_five_feet_from_water::RULE,
    &power::luminaires_clear_of_the_water::RULE,
    &power::extra_low_voltage_in_zone_one::RULE,
    &power::residual_current_protection::RULE,
    &power::ingress_degree_for_the_zone::RULE,
    &power::bonding_in_the_zones::RULE,
    &power::underwater_luminaire_deep_enough::RULE,
    &power::voltage_of_submersed_equipment::RULE,
    &power::residual_current_on_every_circuit::RULE,
];

/// The compiled rules, ready for a ruleset.
pub fn built_in() -> Vec<Rule> {
    RULES.iter().copied().map(Rule::compiled).collect()
}
