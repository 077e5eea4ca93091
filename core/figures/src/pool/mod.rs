//! Figures about a pool.

pub mod bands;
pub mod bed;
pub mod depth;
pub mod solids;
pub mod surface_area;
pub mod volume;
pub mod water;

use haulout_model::Subject;
use haulout_model::pool::Pool;
use haulout_quantity::si::Length;
use haulout_sheet::{Known, LevelState, Line, Sheet};

/// The pool of a subject.
pub(crate) fn pool(sheet: Sheet<'_>, at: Subject) -> &Pool {
    &sheet.design().pools.items()[at.index()]
}

/// The level at which the water stands in the sheet's case.
pub(crate) fn level_in_case(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    let levels = &pool(sheet, at).levels;
    let field = match sheet.case().level {
        LevelState::Water => &levels.water,
        LevelState::Low => &levels.low,
        LevelState::High => &levels.overflow,
    };
    crate::level(sheet, field)
}
