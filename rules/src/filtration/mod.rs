//! Chapter filtration: planted gravel beds, what nitrogen does, what lamps and screens do.

pub(crate) mod alkalinity_lasts;
pub(crate) mod free_ammonia;
pub(crate) mod free_ammonia_with_fish;
pub(crate) mod nitrate_held_by_water_change;
pub(crate) mod nitrate_of_the_fill;
pub(crate) mod notch_over_the_water;
pub(crate) mod oxygen_through_the_bed;
pub(crate) mod surface_for_the_nitrogen;
pub(crate) mod up_flow_through_the_bed;
