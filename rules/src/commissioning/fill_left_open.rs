//! Where the water goes when the fill does not stop.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "fill-left-open",
    title: "Fill left open",
    about: About::Pool,
    asked: always,
    guards: Consequence::Flood,
    does: "Hold the fill valve open as if it were stuck and watch for an hour: the overflow must carry it, the alarm must call, and the water must not fall back into the mains when the supply is shut.",
    why: "A float valve sticks one day, at night.",
    caution: Some("Backflow protection is for the local water authority and a licensed plumber to test."),
    expects: &[Expects {
        what: "air gap at the fill",
        figure: &haulout_figures::water::overflow::AIR_GAP,
        case: Case::NORMAL,
    }],
};
