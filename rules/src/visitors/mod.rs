//! Chapter visitors: guards.

mod codes;
pub(crate) mod guard_height;
pub(crate) mod guard_not_climbed;
pub(crate) mod guard_openings;
