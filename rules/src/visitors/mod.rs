//! Chapter visitors: guards.

pub(crate) mod guard_height;
pub(crate) mod guard_not_climbed;
pub(crate) mod guard_openings;
mod codes;
