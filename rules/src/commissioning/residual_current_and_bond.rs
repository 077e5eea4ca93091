//! Electrical items near water, by those who may.

use haulout_engine::{Consequence, Trial, always};
use haulout_model::About;
/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "residual-current-and-bond",
    title: "Residual current and bond",
    about: About::Item,
    asked: always,
    guards: Consequence::LifeOfPeople,
    does: "Have the residual current device of the item tried by its button and by an instrument, the bond measured from the item to the main terminal, and the distance from the water taken with a tape along the shortest way.",
    why: "Water, wet hands and metal: the one promise here that nobody may take on trust.",
    caution: Some("Only a licensed electrician tests and signs, by the local wiring code."),
    expects: &[],
};
