//! Chapter water: depth, levels, exits, what is seen and what is not.

pub(crate) mod bank_within_reach_of_an_exit;
pub(crate) mod bed_within_the_window;
pub(crate) mod depth_of_the_scheme;
pub(crate) mod depth_to_submerge_and_be_seen;
pub(crate) mod drawn_down_in_time;
pub(crate) mod exit_not_too_steep;
pub(crate) mod exit_reached_at_every_level;
pub(crate) mod exit_wide_enough;
pub(crate) mod fill_stuck_open;
pub(crate) mod freeboard_over_the_overflow;
pub(crate) mod freeboard_with_pumps_off;
pub(crate) mod lowest_level_reckoned_with;
pub(crate) mod opening_is_no_trap;
pub(crate) mod overflow_keeps_animals_out;
pub(crate) mod overflow_takes_the_pump;
pub(crate) mod parted_joint_kept_in;
pub(crate) mod pumps_off_under_the_overflow;
pub(crate) mod refuge_deep_enough;
pub(crate) mod retreat_out_of_sight;
pub(crate) mod righting_band_kept_small;
pub(crate) mod shallows_to_rest_in;
pub(crate) mod stream_not_too_fast;
pub(crate) mod window_of_depths_open;
