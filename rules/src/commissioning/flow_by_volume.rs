//! What the pump really delivers.

use haulout_engine::{Consequence, Expects, Trial, always};
use haulout_model::About;
use haulout_sheet::{Case, Filter};

const DIRTY: Case = Case { filter: Filter::Dirty, ..Case::NORMAL };

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "flow-by-volume",
    title: "Flow by volume",
    about: About::Circuit,
    asked: always,
    guards: Consequence::LifeOfAnimals,
    does: "With clean screens lead the whole return of the circuit into a vessel of known volume and take the time, three times over. Note it, and again when the filter is due for cleaning.",
    why: "The label of a pump is its flow without a pipe. What the vessel shows is what the animals get.",
    caution: None,
    expects: &[
        Expects {
            what: "flow with clean filters",
            figure: &haulout_figures::circuit::duty::DELIVERED_FLOW,
            case: Case::NORMAL,
        },
        Expects {
            what: "time to fill 100 L, clean",
            figure: &haulout_figures::circuit::vessel::VESSEL_TIME,
            case: Case::NORMAL,
        },
        Expects {
            what: "flow with dirty filters",
            figure: &haulout_figures::circuit::duty::DELIVERED_FLOW,
            case: DIRTY,
        },
        Expects {
            what: "time to fill 100 L, dirty",
            figure: &haulout_figures::circuit::vessel::VESSEL_TIME,
            case: DIRTY,
        },
    ],
};
