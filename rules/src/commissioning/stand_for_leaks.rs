//! Whether the water stays where it is.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "stand-for-leaks",
    title: "Stand for leaks",
    about: About::Pool,
    asked: always,
    guards: Consequence::Flood,
    does: "Fill to the water level and stop pumps, fill and heaters. Mark the level on something fixed; read it again after 48 and after 72 h, with a bucket of the same water standing in the pool beside the mark.",
    why: "A liner that leaks in the first week leaks under the stone for good. What evaporates is not a leak, and the bucket shows how much that is.",
    caution: None,
    expects: &[
        Expects {
            what: "evaporation takes at least",
            figure: &haulout_figures::heat::evaporation::FALL_LOW,
            case: Case::NORMAL,
        },
        Expects {
            what: "evaporation takes at most",
            figure: &haulout_figures::heat::evaporation::FALL_HIGH,
            case: Case::NORMAL,
        },
        Expects {
            what: "a leak is likely beyond",
            figure: &haulout_figures::water::leak::LEAK_FALL,
            case: Case::NORMAL,
        },
    ],
};
