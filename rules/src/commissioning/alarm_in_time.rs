//! Whether whoever comes, comes in time.

use haulout_engine::{Asked, Consequence, Expects, Trial};
use haulout_figures::heat::alarm::watches_temperature;
use haulout_model::About;
use haulout_sheet::Case;

/// The trial.
pub(super) static TRIAL: Trial = Trial {
    id: "alarm-in-time",
    title: "Alarm in time",
    about: About::Alarm,
    asked: |sheet, at| watches_temperature(sheet, at).map(Asked::By),
    guards: Consequence::LifeOfAnimals,
    does: "Hold the sensor in a cup of water beyond the limit, at night and unannounced. Take the time from the call until the spare heater or the fault is in somebody's hand.",
    why: "The animals have as long as the water takes from the call to what they cannot bear.",
    caution: None,
    expects: &[
        Expects { what: "calls below", figure: &haulout_figures::heat::alarm::ALARM_LOW, case: Case::NORMAL },
        Expects {
            what: "calls above",
            figure: &haulout_figures::heat::alarm::ALARM_HIGH,
            case: Case::NORMAL,
        },
        Expects {
            what: "time left after the call",
            figure: &haulout_figures::heat::alarm::TIME_AFTER_ALARM,
            case: Case::NORMAL,
        },
    ],
};
