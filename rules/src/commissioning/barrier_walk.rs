//! The boundary as it was built.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "barrier-walk",
    title: "Barrier walk",
    about: About::Barrier,
    asked: always,
    guards: Consequence::LifeOfPeople,
    does: "Walk the closed boundary on the animals' side with a tape and a ball of the widest opening. At each corner, door and joint, and from every rock, branch and fitting: how high is it, what can be gripped, what passes under.",
    why: "A barrier is as high as its lowest place, and that is never on the drawing.",
    caution: None,
    expects: &[
        Expects {
            what: "widest opening",
            figure: &haulout_figures::barrier::opening::WIDEST_OPENING,
            case: Case::NORMAL,
        },
        Expects { what: "overhang", figure: &haulout_figures::barrier::height::OVERHANG, case: Case::NORMAL },
        Expects {
            what: "depth below ground",
            figure: &haulout_figures::barrier::opening::BELOW_GROUND,
            case: Case::NORMAL,
        },
    ],
};
