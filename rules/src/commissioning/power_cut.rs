//! Where the water goes when the pumps stop.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "power-cut",
    title: "Power cut",
    about: About::Pool,
    asked: always,
    guards: Consequence::Flood,
    does: "At the running level cut the supply of all pumps at once and wait until nothing runs back. Mark the level. Switch on again: every pump must start by itself, and no siphon may have emptied a filter or a pool.",
    why: "Films, filters and pipes drain into the lowest water when the pumps stop, and a return that ends under water draws it up the pipe.",
    caution: None,
    expects: &[
        Expects {
            what: "the level comes to rest at",
            figure: &haulout_figures::water::ladder::PUMPS_OFF_LEVEL,
            case: Case::NORMAL,
        },
        Expects {
            what: "freeboard left, the wave taken off",
            figure: &haulout_figures::water::ladder::PUMPS_OFF_FREEBOARD,
            case: Case::NORMAL,
        },
        Expects {
            what: "water that comes back",
            figure: &haulout_figures::water::ladder::DRAIN_DOWN,
            case: Case::NORMAL,
        },
    ],
};
