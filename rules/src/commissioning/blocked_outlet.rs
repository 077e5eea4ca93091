//! Where the water goes when nothing drains.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "blocked-outlet",
    title: "Blocked outlet",
    about: About::Pool,
    asked: always,
    guards: Consequence::Flood,
    does: "With someone at the switch close every outlet of the pool but its emergency overflow and let the pump run on. The level must come to rest under the edge of the liner.",
    why: "One leaf on one grille is enough. Where the emergency overflow does not carry the pump, the floor does.",
    caution: None,
    expects: &[
        Expects {
            what: "the level comes to rest at",
            figure: &haulout_figures::water::ladder::BLOCKED_LEVEL,
            case: Case::NORMAL,
        },
        Expects {
            what: "emergency overflow against inflow",
            figure: &haulout_figures::water::overflow::EMERGENCY_RATIO,
            case: Case::NORMAL,
        },
    ],
};
