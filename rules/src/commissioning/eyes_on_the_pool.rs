//! How far one sees into the water.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "eyes-on-the-pool",
    title: "Eyes on the pool",
    about: About::Pool,
    asked: always,
    guards: Consequence::Embarrassment,
    does: "Lower a Secchi disc from the bank and read where it goes out of sight, once clean and once in the afternoon of a full day. Then look from each viewing position, kneeling and standing, lights as for visitors.",
    why: "What the water lets through is found out in water, and the public stands where the reflections are.",
    caution: None,
    expects: &[Expects {
        what: "the disc goes out of sight at",
        figure: &haulout_figures::pool::water::SEEING_DEPTH,
        case: Case::NORMAL,
    }],
};
