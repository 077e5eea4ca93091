//! Chapter filtration: planted gravel beds and what ammonia does.

pub(crate) mod free_ammonia;
pub(crate) mod notch_over_the_water;
pub(crate) mod up_flow_through_the_bed;
