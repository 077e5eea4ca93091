//! How arrivals are let into the water.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "bag-against-water",
    title: "Bag against water",
    about: About::Arrival,
    asked: always,
    guards: Consequence::LifeOfAnimals,
    does: "Measure the water in the bag and the water of the pool. Float the bag closed until both agree, then mix pool water in by small parts over the time; measure again before it is opened.",
    why: "A jump of temperature or pH is the last straw after a day in a box.",
    caution: None,
    expects: &[
        Expects {
            what: "apart by",
            figure: &haulout_figures::startup::arrival::ARRIVAL_APART,
            case: Case::NORMAL,
        },
        Expects {
            what: "floats closed for",
            figure: &haulout_figures::startup::arrival::FLOAT_TIME,
            case: Case::NORMAL,
        },
        Expects {
            what: "mixed over",
            figure: &haulout_figures::startup::arrival::MIXING_TIME,
            case: Case::NORMAL,
        },
    ],
};
