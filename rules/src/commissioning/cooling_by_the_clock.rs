//! How fast the water cools without heaters.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "cooling-by-the-clock",
    title: "Cooling by the clock",
    about: About::Pool,
    asked: always,
    guards: Consequence::LifeOfAnimals,
    does: "Switch every heater of the water off in the evening of a cool day and read water and air each half hour for six hours.",
    why: "How fast it cools says how long the call-out may take.",
    caution: None,
    expects: &[
        Expects {
            what: "fall in the first hour",
            figure: &haulout_figures::heat::cool::FALL_RATE,
            case: Case::NORMAL,
        },
        Expects {
            what: "time to the least the animals bear",
            figure: &haulout_figures::heat::cool::TIME_TO_FLOOR,
            case: Case::NORMAL,
        },
    ],
};
