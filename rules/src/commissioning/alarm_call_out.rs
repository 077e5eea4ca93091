//! Whether anybody comes.

use haulout_engine::{Consequence, Trial, always};
use haulout_model::About;
/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "alarm-call-out",
    title: "Alarm call-out",
    about: About::Alarm,
    asked: always,
    guards: Consequence::LifeOfAnimals,
    does: "Make the alarm call, at night and unannounced: lift the float, warm or cool the sensor in a cup, pull the plug. Note when somebody answers and when somebody stands at the pool.",
    why: "An alarm that nobody hears is a light in an empty room.",
    caution: None,
    expects: &[],
};
