//! Chapter water: depth, levels, exits, what is seen and what is not.

pub(crate) mod bed_within_the_window;
pub(crate) mod depth_of_the_scheme;
pub(crate) mod depth_to_submerge_and_be_seen;
pub(crate) mod exit_reached_at_every_level;
pub(crate) mod freeboard_over_the_overflow;
pub(crate) mod refuge_deep_enough;
pub(crate) mod retreat_out_of_sight;
pub(crate) mod righting_band_kept_small;
pub(crate) mod shallows_to_rest_in;
pub(crate) mod window_of_depths_open;
