//! What is left when the pool runs low.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "dry-pump",
    title: "Pump at low water",
    about: About::Circuit,
    asked: always,
    guards: Consequence::Money,
    does: "Draw the pool down slowly with the pump on. It must be stopped by its protection, or have stopped drawing, before it runs dry; note the level.",
    why: "A joint that breaks empties the pool down to the level at which the pump draws air, and that is the water the animals are left with.",
    caution: None,
    expects: &[
        Expects {
            what: "the pump stops drawing at",
            figure: &haulout_figures::water::spill::STOP_LEVEL,
            case: Case::NORMAL,
        },
        Expects {
            what: "water on the floor until then",
            figure: &haulout_figures::water::spill::JOINT_LOSS,
            case: Case::NORMAL,
        },
    ],
};
