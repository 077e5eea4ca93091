//! Start-up: how the bacteria of a filter grow into what is fed over its water, and what ammonia and nitrite do until then.

pub mod arrival;
pub mod band;
pub mod course;
pub mod growth;

#[cfg(test)]
mod tests;
