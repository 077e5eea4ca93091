//! Chapter heat: evaporation and other losses, heaters that stick or fail, alarms, water that suits all animals.

pub(crate) mod alarm_outside_the_swing;
pub(crate) mod cold_noticed_in_time;
pub(crate) mod fill_does_not_chill;
pub(crate) mod heater_large_enough;
pub(crate) mod heater_needs_flow;
pub(crate) mod heater_out_of_reach;
pub(crate) mod heater_stuck_on;
pub(crate) mod warm_again_in_time;
pub(crate) mod water_in_every_band;
