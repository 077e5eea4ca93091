//! Nitrogen out of feed: all that protein holds, and the part that fish give off as ammonia.

use haulout_quantity::si::{MassRate, Ratio};
use haulout_quantity::{Basis, Measure};

use super::closed;
use crate::formula::Formula;
use crate::hydraulics::{finite, not_below_zero};

/// What protein holds of nitrogen.
const NITROGEN: (Basis, &str) = (
    Basis::Reported,
    "FAO Fisheries and Aquaculture Technical Paper 589 (2014), appendix 4, in its Italian translation: 16 % of protein is nitrogen",
);

const AS_FED: &str = "mass and protein as fed, not of dry matter; all of it counted, since urates and uneaten prey end as ammonia too";

/// Nitrogen in a feed: mass as fed, protein as fed.
pub static NITROGEN_OF_FEED: Formula<(MassRate, Ratio), MassRate> = Formula {
    card: &closed("nitrogen of a feed", "N", "0.16 × F × p", &["F", "p"], NITROGEN, AS_FED),
    run: |(feed, protein)| {
        let rate = 0.16 * not_below_zero(feed.value, "the feed")? * protein.value;
        Ok(MassRate::from_si(finite(rate, "the nitrogen")?))
    },
};

/// The same on the largest day.
pub static NITROGEN_OF_LARGEST_DAY: Formula<(MassRate, Ratio), MassRate> = Formula {
    card: &closed(
        "nitrogen of the largest day",
        "N_max",
        "N × k",
        &["N", "k"],
        (Basis::Published, "definition of the peak factor"),
        "the largest day as a multiple of the mean",
    ),
    run: |(mean, peak)| Ok(mean * peak),
};

/// Total ammonia as nitrogen that fish give off for a feed on its largest day: mass as fed, protein as fed, peak factor.
pub static AMMONIA_OF_FEED: Formula<(MassRate, Ratio, Ratio), MassRate> = Formula {
    card: &closed(
        "total ammonia of a feed",
        "P_TAN",
        "0.092 × F × p × k",
        &["F", "p", "k"],
        (
            Basis::Reported,
            "Timmons and Ebeling, Recirculating Aquaculture (2013), as used in Goddek and Körner (2019), table 4: 0.092 of the protein fed",
        ),
        "fish; reptiles excrete part as urates, so it is a value to compare with, not one to build for",
    ),
    run: |(feed, protein, peak)| {
        let rate = 0.092 * not_below_zero(feed.value, "the feed")? * protein.value * peak.value;
        Ok(MassRate::from_si(finite(rate, "the ammonia")?))
    },
};
