//! Solids out of feed, and what a lamp gives to the water that passes it.

use haulout_quantity::si::{Mass, MassRate, RadiantExposure, Ratio, Time, Volume, VolumeRate};
use haulout_quantity::{Basis, Measure};

use super::closed;
use crate::formula::Formula;
use crate::hydraulics::{above_zero, finite};

/// Solids a day of a feed: mass as fed, share given in the water, share left uneaten.
pub static SOLIDS_OF_FEED: Formula<(MassRate, Ratio, Ratio), MassRate> = Formula {
    card: &closed(
        "solids of a feed",
        "X",
        "F × (0.25 × (1 - l) + w × l)",
        &["F", "w", "l"],
        (
            Basis::Recalled,
            "Timmons and Ebeling, Recirculating Aquaculture: a quarter of the feed eaten becomes solids; what is left in the water is added",
        ),
        "dry feed; of moist feed an upper bound",
    ),
    run: |(feed, in_water, left)| {
        let share = 0.25 * (1.0 - left.value) + in_water.value * left.value;
        Ok(MassRate::from_si(finite(feed.value * share, "the solids")?))
    },
};

/// Solids that stay in a screen between cleanings: solids a day, share it captures, time between cleanings.
pub static SOLIDS_HELD: Formula<(MassRate, Ratio, Time), Mass> = Formula {
    card: &closed(
        "solids held until the next cleaning",
        "m",
        "X × e × t",
        &["X", "e", "t"],
        super::BALANCE,
        "all solids of the water come to the screen",
    ),
    run: |(solids, captured, time)| Ok(solids * captured * time),
};

/// Ultraviolet dose at a flow: dose at the stated flow, that flow, the flow there is.
pub static DOSE_AT_FLOW: Formula<(RadiantExposure, VolumeRate, VolumeRate), RadiantExposure> = Formula {
    card: &closed(
        "ultraviolet dose at the delivered flow",
        "H",
        "H_0 × Q_0 / Q",
        &["H_0", "Q_0", "Q"],
        (Basis::Published, "dose is mean fluence rate times the time of passage"),
        "the same lamp and the same clearness of the water",
    ),
    run: |(dose, at, flow)| {
        let flow = above_zero(flow.value, "the flow")?;
        Ok(RadiantExposure::from_si(finite(dose.value * at.value / flow, "the dose")?))
    },
};

/// Time in which a flush takes away the water of a plenum: its bulk, share of voids, flow of the flush.
pub static FLUSH_TIME: Formula<(Volume, Ratio, VolumeRate), Time> = Formula {
    card: &closed(
        "time to flush the plenum once",
        "t",
        "V × n / Q",
        &["V", "n", "Q"],
        super::BALANCE,
        "one volume of its water",
    ),
    run: |(bulk, voids, flow)| {
        let flow = above_zero(flow.value, "the flow of the flush")?;
        Ok(Time::from_si(finite(bulk.value * voids.value / flow, "the time")?))
    },
};
