//! Figures about a pool.

pub mod bands;
pub mod bed;
pub mod depth;
pub mod solids;
pub mod surface_area;
pub mod volume;
pub mod water;

use haulout_model::pool::Pool;
use haulout_model::{About, Reference, Subject};
use haulout_quantity::si::Length;
use haulout_sheet::{Gap, GapKind, Known, LevelState, Line, Sheet};

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

/// The pool a reference leads to.
pub(crate) fn named(sheet: Sheet<'_>, reference: &Reference) -> Known<Subject> {
    match sheet.design().pool_named(reference.name()) {
        Some(at) => Ok(Subject::nth(About::Pool, at)),
        None => {
            let what = format!("there is no pool \"{}\"", reference.name());
            Err(Gap::at(GapKind::LeadsNowhere, what, reference.seat().origin).into())
        }
    }
}
