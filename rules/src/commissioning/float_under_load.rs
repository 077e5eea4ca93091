//! Whether the float bears all of them at one edge.

use haulout_engine::{Asked, Consequence, Expects, Trial};
use haulout_figures::basking::floats;
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "float-under-load",
    title: "Float under load",
    about: About::Basking,
    asked: |sheet, at| floats(sheet, at).map(Asked::Plainly),
    guards: Consequence::Harm,
    does: "Lay sand bags of the mass of all animals of the site on one edge of the float and measure how far the edge stands over the water.",
    why: "Animals climb out at one place, all of them, and a float that tips throws them on their backs.",
    caution: None,
    expects: &[
        Expects {
            what: "mass of the animals",
            figure: &haulout_figures::basking::float::SITE_LOAD,
            case: Case::NORMAL,
        },
        Expects {
            what: "load the float is made for",
            figure: &haulout_figures::basking::float::CARRIES,
            case: Case::NORMAL,
        },
        Expects {
            what: "loaded edge over the water",
            figure: &haulout_figures::basking::float::EDGE_HEIGHT,
            case: Case::NORMAL,
        },
    ],
};
