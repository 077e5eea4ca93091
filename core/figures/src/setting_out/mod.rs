//! Figures about the design against itself: what lies outside what, names, numbers, levels in their order.

pub mod beds;
pub mod ladder;
pub mod names;
pub mod numbers;
pub mod plan;
