//! Chapter water: depth, levels, exits.

pub(crate) mod depth_of_the_scheme;
pub(crate) mod depth_to_submerge_and_be_seen;
