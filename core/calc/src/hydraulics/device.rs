//! A device known by its loss at one flow: filter, screen, lamp, heater.

use haulout_quantity::Basis;
use haulout_quantity::si::{Length, VolumeRate};
use uom::si::length::meter;

use super::{above_zero, finite, not_below_zero};
use crate::formula::{Formula, FormulaCard, Kind};

/// Head lost in a device at a flow, from its loss at another.
pub static DEVICE_HEAD: Formula<(Length, VolumeRate, VolumeRate), Length> = Formula {
    card: &FormulaCard {
        name: "head lost in a device",
        result: "h_d",
        text: "h_0 × (Q / Q_0)^2",
        symbols: &["h_0", "Q", "Q_0"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "loss of a turbulent passage grows with the square of the flow",
        range: "turbulent passages; a bed of sand or a cloth loses less than this above the stated flow, more below it",
    },
    run: |(loss, flow, at)| {
        let h = not_below_zero(loss.value, "the stated loss of the device")?;
        let q = not_below_zero(flow.value, "the flow")?;
        let q0 = above_zero(at.value, "the flow at which the loss of the device is stated")?;
        let share = q / q0;
        Ok(Length::new::<meter>(finite(h * share * share, "the head lost in the device")?))
    },
};
