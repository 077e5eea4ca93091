//! Reading a quantity never panics; what is read is finite, and a slip points inside the text.

#![no_main]

use haulout_quantity::{Dimension, Slip, Stated};
use libfuzzer_sys::fuzz_target;

const DIMENSIONS: [Dimension; 6] = [
    Dimension::LENGTH,
    Dimension::AREA,
    Dimension::VOLUME,
    Dimension::FLOW,
    Dimension::TEMPERATURE,
    Dimension::MASS,
];

fuzz_target!(|text: &str| {
    for dimension in DIMENSIONS {
        sound(text, haulout_quantity::read(text, dimension));
    }
    for read in [
        haulout_quantity::read_difference,
        haulout_quantity::read_angle,
        haulout_quantity::read_share,
        haulout_quantity::read_slope,
        haulout_quantity::read_turbidity,
    ] {
        sound(text, read(text));
    }
});

fn sound(text: &str, read: Result<Stated, Slip>) {
    match read {
        Ok(stated) => assert!(stated.parts.value().is_finite()),
        Err(slip) => {
            assert!(text.get(slip.at.clone()).is_some(), "{slip:?}");
            assert!(!slip.message.is_empty());
        }
    }
}
