//! The course of a start-up over the days, for charts, and its peaks.

use std::sync::Arc;

use haulout_calc::startup::band::{COURSES, Courses};
use haulout_model::{About, Subject};
use haulout_sheet::{Figure, FigureCard, Known, Line, Sheet};

use super::start::{START, steps_over};
use crate::filtration::joined::JOINED;

/// The courses of the water of a pool. Not a number, so not in the catalogue.
pub static COURSE: Figure<Line<Arc<Courses>>> = Figure {
    card: &FigureCard {
        id: "course",
        title: "course of the start-up",
        about: About::Pool,
        axes: &[],
        unit: "",
        us_unit: "",
        resolution: Some("steps of 90 minutes or less, the classical method of the fourth order"),
    },
    work: |sheet, at| sheet.work(&COURSES, (START.of(sheet, at)?,)),
};

/// Whether animals come over the water of a pool by steps, and the pool speaks for its water, so that one water is drawn once.
///
/// # Errors
/// A gap when steps, animals or circuits are not stated.
pub fn is_started_here(sheet: Sheet<'_>, at: Subject) -> Known<bool> {
    let joined = JOINED.of(sheet, at)?;
    Ok(joined.speaker(sheet) == Some(at) && !steps_over(sheet, at)?.is_empty())
}
