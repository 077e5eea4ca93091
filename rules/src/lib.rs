//! The compiled rules by chapter: one rule, one file, one line in the list.
//!
//! A rule reads figures and limits and hands in a check; it never compares, and it touches no file and no clock.

mod basking;
mod commissioning;
mod containment;
mod filtration;
mod heat;
mod plumbing;
mod power;
mod setting_out;
mod start_up;
mod visitors;
mod water;

pub use commissioning::TRIALS;
use haulout_engine::{CompiledRule, Rule};

/// The rules whose figures look at a hundred places and more of a bed, each along its own ray, or follow months of a start-up:
/// milliseconds where others take microseconds.
static HEAVY: &[&CompiledRule] = &[
    &water::retreat_out_of_sight::RULE,
    &visitors::bed_seen_from_the_position::RULE,
    &visitors::deep_water_seen_through_the_panel::RULE,
    &start_up::step_within_the_filter::RULE,
];

/// Every compiled rule, chapter by chapter.
pub static RULES: &[&CompiledRule] = &[
    &water::depth_of_the_scheme::RULE,
    &water::depth_to_submerge_and_be_seen::RULE,
    &water::window_of_depths_open::RULE,
    &water::bed_within_the_window::RULE,
    &water::shallows_to_rest_in::RULE,
    &water::righting_band_kept_small::RULE,
    &water::refuge_deep_enough::RULE,
    &water::retreat_out_of_sight::RULE,
    &water::freeboard_over_the_overflow::RULE,
    &water::exit_reached_at_every_level::RULE,
    &water::freeboard_with_pumps_off::RULE,
    &water::pumps_off_under_the_overflow::RULE,
    &water::lowest_level_reckoned_with::RULE,
    &water::overflow_takes_the_pump::RULE,
    &water::fill_stuck_open::RULE,
    &water::parted_joint_kept_in::RULE,
    &water::drawn_down_in_time::RULE,
    &water::exit_not_too_steep::RULE,
    &water::exit_wide_enough::RULE,
    &water::bank_within_reach_of_an_exit::RULE,
    &water::opening_is_no_trap::RULE,
    &water::overflow_keeps_animals_out::RULE,
    &water::stream_not_too_fast::RULE,
    &plumbing::no_single_blockable_suction::RULE,
    &plumbing::aperture_of_intakes::RULE,
    &plumbing::velocity_at_the_grille::RULE,
    &plumbing::water_over_the_intake::RULE,
    &plumbing::turnover_by_delivered_flow::RULE,
    &plumbing::velocity_in_the_pipes::RULE,
    &plumbing::delivered_near_the_label::RULE,
    &plumbing::suction_head_enough::RULE,
    &plumbing::static_head_fits_the_levels::RULE,
    &plumbing::siphon_broken_at_the_return::RULE,
    &plumbing::fill_parted_by_air::RULE,
    &plumbing::header_spreads_evenly::RULE,
    &plumbing::jet_clear_of_the_intake::RULE,
    &plumbing::basin_cleared_by_its_flow::RULE,
    &setting_out::references_lead_somewhere::RULE,
    &setting_out::outline_is_simple::RULE,
    &setting_out::space_inside_the_hall::RULE,
    &setting_out::pool_inside_its_space::RULE,
    &setting_out::zone_inside_its_pool::RULE,
    &setting_out::pools_do_not_overlap::RULE,
    &setting_out::depth_and_bed_agree::RULE,
    &setting_out::zone_reaches_its_depth::RULE,
    &setting_out::levels_ascend::RULE,
    &setting_out::value_is_plausible::RULE,
    &setting_out::kind_is_used::RULE,
    &setting_out::space_is_used::RULE,
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
    &visitors::bed_seen_from_the_position::RULE,
    &visitors::deep_water_seen_through_the_panel::RULE,
    &visitors::sill_below_the_water::RULE,
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
    &basking::dry_room_for_all_baskers::RULE,
    &basking::sites_for_the_group::RULE,
    &basking::sites_apart::RULE,
    &basking::site_stays_dry::RULE,
    &basking::way_up_from_low_water::RULE,
    &basking::way_up_not_too_steep::RULE,
    &basking::surface_warm_enough::RULE,
    &basking::surface_not_too_hot::RULE,
    &basking::ultraviolet_where_it_is_warm::RULE,
    &basking::float_carries_all::RULE,
    &basking::float_edge_stays_dry::RULE,
    &basking::surface_takes_claws::RULE,
    &filtration::notch_over_the_water::RULE,
    &filtration::up_flow_through_the_bed::RULE,
    &filtration::free_ammonia::RULE,
    &filtration::free_ammonia_with_fish::RULE,
    &filtration::surface_for_the_nitrogen::RULE,
    &filtration::oxygen_through_the_bed::RULE,
    &filtration::nitrate_held_by_water_change::RULE,
    &filtration::alkalinity_lasts::RULE,
    &filtration::nitrate_of_the_fill::RULE,
    &filtration::wall_over_the_notch::RULE,
    &filtration::no_draining_back::RULE,
    &filtration::light_for_the_plants::RULE,
    &filtration::animals_kept_off_the_bed::RULE,
    &filtration::clogged_bed_within_the_rise::RULE,
    &filtration::water_over_the_gravel::RULE,
    &filtration::plenum_is_flushed::RULE,
    &filtration::solids_caught_before_the_bed::RULE,
    &filtration::dose_of_the_clarifier::RULE,
    &filtration::protein_as_fed::RULE,
    &heat::heater_stuck_on::RULE,
    &heat::heater_needs_flow::RULE,
    &heat::heater_out_of_reach::RULE,
    &heat::cold_noticed_in_time::RULE,
    &heat::heater_large_enough::RULE,
    &heat::water_in_every_band::RULE,
    &heat::alarm_outside_the_swing::RULE,
    &heat::fill_does_not_chill::RULE,
    &heat::warm_again_in_time::RULE,
    &start_up::step_within_the_filter::RULE,
    &start_up::filter_begins_alive::RULE,
    &start_up::readings_that_hold_a_step::RULE,
    &start_up::every_animal_in_a_step::RULE,
    &start_up::bag_floats_long_enough::RULE,
    &start_up::waters_mixed_slowly::RULE,
    &start_up::lime_leached_or_sealed::RULE,
    &start_up::no_poison_in_the_water::RULE,
    &start_up::cured_before_the_water::RULE,
];

/// The compiled rules, ready for a ruleset.
pub fn built_in() -> Vec<Rule> {
    let rule = |rule: &'static CompiledRule| Rule {
        heavy: HEAVY.iter().any(|heavy| std::ptr::eq(*heavy, rule)),
        ..Rule::compiled(rule)
    };
    RULES.iter().copied().map(rule).collect()
}
