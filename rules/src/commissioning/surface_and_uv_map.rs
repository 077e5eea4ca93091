//! Warmth and UV where the animals lie.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "surface-and-uv-map",
    title: "Surface and UV map",
    about: About::Basking,
    asked: always,
    guards: Consequence::LifeOfAnimals,
    does: "Lamps on for two hours. Measure the surface with a contact or infrared thermometer and the UV index with a meter at the height of the animals' backs, on a grid of 10 cm over the whole site, and draw the map.",
    why: "One reading in the middle says nothing of the edge, where the second animal lies.",
    caution: Some("Do not look into UV lamps; cover skin and eyes while measuring."),
    expects: &[
        Expects {
            what: "coolest surface",
            figure: &haulout_figures::basking::warmth::SURFACE_LOW,
            case: Case::NORMAL,
        },
        Expects {
            what: "warmest surface",
            figure: &haulout_figures::basking::warmth::SURFACE_HIGH,
            case: Case::NORMAL,
        },
        Expects {
            what: "UV index at the back",
            figure: &haulout_figures::basking::warmth::UV_INDEX,
            case: Case::NORMAL,
        },
    ],
};
