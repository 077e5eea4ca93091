//! Figures about levels, ways out, and what takes water away.

mod back;
pub mod bank;
pub mod exit;
pub mod ladder;
pub mod leak;
pub mod lip;
pub mod lowest;
pub mod overflow;
pub mod spill;
pub mod stream;
pub mod times;
pub mod trap;
