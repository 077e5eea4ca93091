//! How fast the water warms with a heater that does not stop.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "heater-by-the-clock",
    title: "Heater by the clock",
    about: About::HeaterPool,
    asked: always,
    guards: Consequence::LifeOfAnimals,
    does: "Hold the heater on with its thermostat bridged by a competent person, pumps running, and read the water each half hour for three hours; then let the independent limit cut it off.",
    why: "A thermostat that sticks cooks slowly. The rise in an hour says how long there is to notice, and the limit must not need anyone.",
    caution: Some("Without animals in the water. Work on the heater is for a licensed electrician."),
    expects: &[
        Expects {
            what: "rise in an hour",
            figure: &haulout_figures::heat::heater::STUCK_RISE,
            case: Case::NORMAL,
        },
        Expects {
            what: "where it would end without the limit",
            figure: &haulout_figures::heat::heater::STUCK_END,
            case: Case::NORMAL,
        },
    ],
};
