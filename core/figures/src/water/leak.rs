//! The fall of a standing pool beyond which it leaks.

use haulout_calc::heat::evaporation::FALL_OF_A_LEAK;
use haulout_model::About;
use haulout_quantity::si::Velocity;
use haulout_quantity::{Basis, Dimension};
use haulout_register::Value;
use haulout_sheet::{Figure, FigureCard, Line};

use crate::heat::evaporation::FALL_HIGH;

/// 3 mm a day.
static ALLOWED: Value = Value {
    what: "fall that liners, wicking and reading are allowed beside evaporation",
    value: 0.003 / 86_400.0,
    unit: "mm/d",
    dimension: Dimension::VELOCITY,
    basis: Basis::CommonPractice,
    source: "pond builders' practice: 2 to 3 mm a day over 48 to 72 h beside evaporation",
};

/// Fall of the level with everything stopped beyond which a pool leaks.
pub static LEAK_FALL: Figure<Line<Velocity>> = Figure {
    card: &FigureCard {
        id: "leak-fall",
        title: "fall of a standing pool beyond which it leaks",
        about: About::Pool,
        axes: &[],
        unit: "mm/d",
        us_unit: "in/h",
        resolution: None,
    },
    work: |sheet, at| {
        let evaporated = FALL_HIGH.of(sheet, at)?;
        sheet.work(&FALL_OF_A_LEAK, (evaporated, sheet.register(&ALLOWED, None)))
    },
};
