//! Chapter start-up: animals that come no faster than the bacteria, arrivals, materials that are let into the water.

pub(crate) mod bag_floats_long_enough;
pub(crate) mod cured_before_the_water;
pub(crate) mod every_animal_in_a_step;
pub(crate) mod filter_begins_alive;
pub(crate) mod lime_leached_or_sealed;
pub(crate) mod no_poison_in_the_water;
pub(crate) mod readings_that_hold_a_step;
pub(crate) mod step_within_the_filter;
pub(crate) mod waters_mixed_slowly;
