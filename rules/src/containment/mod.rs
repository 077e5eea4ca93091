//! Chapter containment: barriers, doors and what gets through or under them.

pub(crate) mod barrier_height;
pub(crate) mod boundary_closed;
pub(crate) mod corner_lipped;
pub(crate) mod door_leaf;
pub(crate) mod door_open;
mod heights;
pub(crate) mod lip_for_climbers;
pub(crate) mod not_dug_under;
pub(crate) mod openings_small;
pub(crate) mod top_closed;
pub(crate) mod two_doors;
