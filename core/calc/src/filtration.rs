//! Filters and what animals load them with: ammonia out of feed, its un-ionised share, rise through a bed.

use haulout_quantity::si::{
    Area, MassDensity, MassRate, Ratio, ThermodynamicTemperature, Velocity, VolumeRate,
};
use haulout_quantity::{Basis, Measure};

use crate::formula::{Formula, FormulaCard, Kind, Refusal};
use crate::hydraulics::{above_zero, finite, not_below_zero};

/// Total ammonia as nitrogen that comes of a feed on its largest day: mass as fed, protein as fed, peak factor.
pub static AMMONIA_OF_FEED: Formula<(MassRate, Ratio, Ratio), MassRate> = Formula {
    card: &FormulaCard {
        name: "total ammonia of a feed",
        result: "P_TAN",
        text: "0.092 × F × p × k",
        symbols: &["F", "p", "k"],
        kind: Kind::Closed,
        basis: Basis::Recalled,
        source: "Timmons and Ebeling, Recirculating Aquaculture: 0.092 of the protein fed, a value of fish",
        range: "mass and protein as fed, not of dry matter; reptiles excrete part as urates, so it is a screen",
    },
    run: |(feed, protein, peak)| {
        let rate = 0.092 * not_below_zero(feed.value, "the feed")? * protein.value * peak.value;
        Ok(MassRate::from_si(finite(rate, "the ammonia")?))
    },
};

/// Share of total ammonia that is un-ionised in fresh water.
pub static FREE_AMMONIA_SHARE: Formula<(Ratio, ThermodynamicTemperature), Ratio> = Formula {
    card: &FormulaCard {
        name: "un-ionised share of ammonia",
        result: "f",
        text: "1 / (1 + 10^(0.09018 + 2729.92 / T - pH))",
        symbols: &["pH", "T"],
        kind: Kind::Closed,
        basis: Basis::Recalled,
        source: "Emerson, Russo, Lund and Thurston (1975), J. Fish. Res. Board Can. 32, 2379",
        range: "fresh water of 0 to 30 °C and a little over, pH 6 to 10; T in kelvin",
    },
    run: |(ph, temperature)| {
        let t = temperature.value;
        if !(273.0..=313.15).contains(&t) {
            return Err(Refusal::new(format!("the equation holds from 0 to 40 °C, and the water has {t} K")));
        }
        let exponent = 0.090_18 + 2_729.92 / t - ph.value;
        Ok(Ratio::from_si(1.0 / (1.0 + libm::pow(10.0, exponent))))
    },
};

/// Un-ionised ammonia, as nitrogen, of a total as nitrogen.
pub static FREE_AMMONIA: Formula<(Ratio, MassDensity), MassDensity> = Formula {
    card: &FormulaCard {
        name: "un-ionised ammonia",
        result: "c_NH3",
        text: "f × c_TAN",
        symbols: &["f", "c_TAN"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "definition; both as nitrogen",
        range: "total ammonia as nitrogen, not as NH3",
    },
    run: |(share, total)| Ok(share * total),
};

/// Rise of the water through a bed that is fed from below, over its whole plan.
pub static UP_FLOW: Formula<(VolumeRate, Area), Velocity> = Formula {
    card: &FormulaCard {
        name: "up-flow through the bed",
        result: "u",
        text: "Q / A",
        symbols: &["Q", "A"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "continuity",
        range: "flow spread over the whole plan by a plenum",
    },
    run: |(flow, area)| {
        Ok(Velocity::from_si(finite(flow.value / above_zero(area.value, "the plan area")?, "the up-flow")?))
    },
};
