//! What water change carries off and brings in: nitrate and alkalinity at rest and on the way there.

use haulout_quantity::si::{MassDensity, MassRate, Time, Volume, VolumeRate};
use haulout_quantity::{Basis, Measure};

use super::{BALANCE, closed};
use crate::formula::Formula;
use crate::hydraulics::{above_zero, finite};

/// A litre a day: what counts as no water change at all, so that a pool that is never renewed has a number too.
const NEXT_TO_NOTHING: f64 = 1e-3 / 86_400.0;

/// What a fill brings in of something: flow, concentration.
pub static BROUGHT_IN: Formula<(VolumeRate, MassDensity), MassRate> = Formula {
    card: &closed(
        "brought in by the fill",
        "M",
        "Q × c",
        &["Q", "c"],
        BALANCE,
        "water renewed a day on average",
    ),
    run: |(flow, concentration)| Ok(flow * concentration),
};

/// Nitrate at rest, as nitrogen: made a day, brought in a day, water renewed a day.
pub static NITRATE_AT_REST: Formula<(MassRate, MassRate, VolumeRate), MassDensity> = Formula {
    card: &closed(
        "nitrate at rest",
        "c_NO3",
        "(N + M) / max(Q, 1 L/d)",
        &["N", "M", "Q"],
        BALANCE,
        "as nitrogen; all nitrogen fed ends as nitrate, none is taken up by plants",
    ),
    run: |(made, brought, renewed)| {
        let flow = renewed.value.max(NEXT_TO_NOTHING);
        Ok(MassDensity::from_si(finite((made.value + brought.value) / flow, "the nitrate")?))
    },
};

/// The same number as the test kits read it.
pub static AS_NITRATE: Formula<(MassDensity,), MassDensity> = Formula {
    card: &closed(
        "nitrate as NO3",
        "c_as_NO3",
        "4.4268 × c_NO3",
        &["c_NO3"],
        (Basis::Published, "atomic masses: 62.005 / 14.007"),
        "nitrate as nitrogen",
    ),
    run: |(as_nitrogen,)| Ok(4.4268 * as_nitrogen),
};

/// Nitrate after a time, as nitrogen: at rest, at the start, water renewed a day, water, time.
pub static NITRATE_AFTER: Formula<(MassDensity, MassDensity, VolumeRate, Volume, Time), MassDensity> =
    Formula {
        card: &closed(
            "nitrate after a time",
            "c_t",
            "c_NO3 - (c_NO3 - c_0) × exp(0 - Q × t / V)",
            &["c_NO3", "c_0", "Q", "V", "t"],
            BALANCE,
            "full feeding from the first day, a mixed water",
        ),
        run: |(rest, start, flow, water, time)| {
            let turned = flow.value * time.value / above_zero(water.value, "the water")?;
            let left = (rest.value - start.value) * libm::exp(-turned);
            Ok(MassDensity::from_si(finite(rest.value - left, "the nitrate")?))
        },
    };

/// Alkalinity at rest, as calcium carbonate: used up a day, brought in a day, water renewed a day.
pub static ALKALINITY_AT_REST: Formula<(MassRate, MassRate, VolumeRate), MassDensity> = Formula {
    card: &closed(
        "alkalinity at rest",
        "b",
        "(M - B) / max(Q, 1 L/d)",
        &["B", "M", "Q"],
        BALANCE,
        "as calcium carbonate, nothing dosed; below zero it has run out",
    ),
    run: |(used, brought, renewed)| {
        let flow = renewed.value.max(NEXT_TO_NOTHING);
        Ok(MassDensity::from_si(finite((brought.value - used.value) / flow, "the alkalinity")?))
    },
};

/// What has to be dosed to hold an alkalinity: used up a day, brought in a day, water renewed a day, alkalinity to hold.
pub static ALKALINITY_TO_DOSE: Formula<(MassRate, MassRate, VolumeRate, MassDensity), MassRate> = Formula {
    card: &closed(
        "alkalinity to dose",
        "D",
        "max(B + Q × b_hold - M, 0 kg/s)",
        &["B", "M", "Q", "b_hold"],
        BALANCE,
        "as calcium carbonate",
    ),
    run: |(used, brought, renewed, hold)| {
        let dose = used.value + renewed.value * hold.value - brought.value;
        Ok(MassRate::from_si(finite(dose, "the dose")?.max(0.0)))
    },
};
