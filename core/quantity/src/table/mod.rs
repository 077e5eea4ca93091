//! The table of units, joined from one file a field of the trade, and the spellings that are refused.
//!
//! Factors are exact by definition: SI brochure, 9th edition (2019); the international yard and pound agreement
//! (1959), 1 yd = 0.9144 m, 1 lb = 0.453 592 37 kg; NIST SP 811 (2008), appendix B, for what is built on them.
//! Basis: *recalled*, and 35 of them checked against `pint` 0.25.3 in the tests. Beside a factor stands only what
//! these definitions do not make plain.

mod electricity;
mod flow;
mod force;
mod geometry;
mod heat;
mod mass;
mod number;
pub(crate) mod refused;
#[cfg(test)]
mod tests;

use crate::{Dimension, System, Unit};

const FIELDS: [&[Unit]; 7] =
    [geometry::UNITS, flow::UNITS, mass::UNITS, force::UNITS, heat::UNITS, electricity::UNITS, number::UNITS];

const COUNT: usize = {
    let mut count = 0;
    let mut field = 0;
    while field < FIELDS.len() {
        count += FIELDS[field].len();
        field += 1;
    }
    count
};

static JOINED: [Unit; COUNT] = {
    let mut joined = [FIELDS[0][0]; COUNT];
    let (mut at, mut field) = (0, 0);
    while field < FIELDS.len() {
        let mut i = 0;
        while i < FIELDS[field].len() {
            joined[at] = FIELDS[field][i];
            at += 1;
            i += 1;
        }
        field += 1;
    }
    joined
};

/// Every unit that is read and printed.
pub static UNITS: &[Unit] = &JOINED;

/// Pound-force in 1e-13 N: 0.453 592 37 kg times the standard acceleration of 9.806 65 m/s², exactly.
const LBF_E13: f64 = 44_482_216_152_605.0;
/// International table Btu in 1e-8 J, exactly; the thermochemical one is smaller by 0.07 %.
const BTU_E8: f64 = 105_505_585_262.0;
/// US gallon of 231 in³ in 1e-12 m³, exactly.
const GAL_US_E12: f64 = 3_785_411_784.0;
/// UK gallon of 4.546 09 L in 1e-8 m³, exactly.
const GAL_UK_E8: f64 = 454_609.0;
/// Cubic foot in 1e-12 m³, exactly.
const FT3_E12: f64 = 28_316_846_592.0;
/// Square foot in 1e-8 m², exactly.
const FT2_E8: f64 = 9_290_304.0;

const fn metric(
    symbol: &'static str,
    spellings: &'static [&'static str],
    dimension: Dimension,
    ratio: (f64, f64),
) -> Unit {
    Unit::new(symbol, spellings, dimension, System::Metric, ratio)
}

const fn us(
    symbol: &'static str,
    spellings: &'static [&'static str],
    dimension: Dimension,
    ratio: (f64, f64),
) -> Unit {
    Unit::new(symbol, spellings, dimension, System::Us, ratio)
}

const fn neutral(
    symbol: &'static str,
    spellings: &'static [&'static str],
    dimension: Dimension,
    ratio: (f64, f64),
) -> Unit {
    Unit::new(symbol, spellings, dimension, System::Neutral, ratio)
}
