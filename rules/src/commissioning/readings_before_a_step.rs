//! The readings that let the next animals in.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "readings-before-a-step",
    title: "Readings before a step",
    about: About::Stocking,
    asked: always,
    guards: Consequence::LifeOfAnimals,
    does: "On the day before, with the water as it is, measure total ammonia, nitrite, pH and temperature, twice, with a kit in date. Above the target the animals wait.",
    why: "The computed day is a guess; the kit is not.",
    caution: None,
    expects: &[
        Expects {
            what: "total ammonia, as nitrogen, at most",
            figure: &haulout_figures::startup::step::TARGET_TAN,
            case: Case::NORMAL,
        },
        Expects {
            what: "nitrite, as nitrogen, at most",
            figure: &haulout_figures::startup::step::TARGET_NITRITE,
            case: Case::NORMAL,
        },
        Expects {
            what: "carried from day, fast growth",
            figure: &haulout_figures::startup::step::STEP_READY_EARLY,
            case: Case::NORMAL,
        },
        Expects {
            what: "carried from day, slow growth",
            figure: &haulout_figures::startup::step::STEP_READY_LATE,
            case: Case::NORMAL,
        },
    ],
};
