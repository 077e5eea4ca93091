//! Figures about levels, ways out, and what takes water away.

pub mod exit;
