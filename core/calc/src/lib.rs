//! Formulas of the trade as pure functions on typed quantities, one subject a file, sources beside them.
//!
//! Nothing here knows a design: what goes in are quantities, curves and outlines, what comes out is a quantity or a
//! [`formula::Refusal`] where the arguments lie outside the range of the method. Transcendental functions come from
//! `libm`, so that every machine works out the same bytes.

pub mod animal;
pub mod buoyancy;
pub mod containment;
pub mod filtration;
pub mod formula;
pub mod geometry;
pub mod heat;
pub mod hydraulics;
pub mod plausible;
pub mod reach;
pub mod sight;
pub mod startup;
pub mod water;
mod zero;
