//! Chapter filtration: planted gravel beds, what nitrogen does, what lamps and screens do.

pub(crate) mod alkalinity_lasts;
pub(crate) mod animals_kept_off_the_bed;
pub(crate) mod clogged_bed_within_the_rise;
pub(crate) mod dose_of_the_clarifier;
pub(crate) mod free_ammonia;
pub(crate) mod free_ammonia_with_fish;
pub(crate) mod light_for_the_plants;
pub(crate) mod nitrate_held_by_water_change;
pub(crate) mod nitrate_of_the_fill;
pub(crate) mod no_draining_back;
pub(crate) mod notch_over_the_water;
pub(crate) mod oxygen_through_the_bed;
pub(crate) mod plenum_is_flushed;
pub(crate) mod protein_as_fed;
pub(crate) mod solids_caught_before_the_bed;
pub(crate) mod surface_for_the_nitrogen;
pub(crate) mod up_flow_through_the_bed;
pub(crate) mod wall_over_the_notch;
pub(crate) mod water_over_the_gravel;
