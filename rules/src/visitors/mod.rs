//! Chapter visitors: guards, what is seen.

pub(crate) mod bed_seen_from_the_position;
mod codes;
pub(crate) mod deep_water_seen_through_the_panel;
pub(crate) mod guard_height;
pub(crate) mod guard_not_climbed;
pub(crate) mod guard_openings;
pub(crate) mod sill_below_the_water;
