//! Figures about the start-up of a water: what it begins with, its course, what each step finds, how arrivals are met.

pub mod arrival;
pub mod course;
pub mod material;
pub mod start;
pub mod step;

use haulout_model::start_up::{Arrival, StockingStep};
use haulout_model::{About, Link, Subject};
use haulout_sheet::{All, Gap, GapKind, Known, Sheet};

use crate::filtration::joined::JOINED;
use crate::group::over::living_over;

/// The stocking step of a subject.
pub(crate) fn step(sheet: Sheet<'_>, at: Subject) -> &StockingStep {
    &sheet.design().start_up.steps.items()[at.index()]
}

/// The arrival of a subject.
pub(crate) fn arriving(sheet: Sheet<'_>, at: Subject) -> &Arrival {
    &sheet.design().start_up.arrivals.items()[at.index()]
}

/// The group a link names.
pub(crate) fn group_of(sheet: Sheet<'_>, link: &Link) -> Known<Subject> {
    let Some(name) = link.name() else {
        return Err(Gap::from(link.missing()).into());
    };
    match sheet.design().animals.items().iter().position(|group| group.id == name) {
        Some(found) => Ok(Subject::nth(About::Group, found)),
        None => {
            let what = format!("there is no group \"{name}\"");
            Err(Gap::at(GapKind::LeadsNowhere, what, link.missing().origin).into())
        }
    }
}

/// The pools a group lives over.
pub(crate) fn pools_of(sheet: Sheet<'_>, group: Subject) -> Known<Vec<Subject>> {
    let pools = &sheet.design().pools;
    if let Some(missing) = pools.missing() {
        return Err(Gap::from(missing).into());
    }
    let over = |at: usize| {
        let pool = Subject::nth(About::Pool, at);
        living_over(sheet, &[pool]).map(|living| living.contains(&group).then_some(pool))
    };
    let each: Vec<Known<Option<Subject>>> = (0..pools.items().len()).map(over).collect();
    Ok(each.all()?.into_iter().flatten().collect())
}

/// The pool that speaks for each water a group lives over.
///
/// # Errors
/// A gap where pools, spaces or circuits are not stated.
pub(crate) fn waters_of(sheet: Sheet<'_>, group: Subject) -> Known<Vec<Subject>> {
    let speaker = |pool: Subject| {
        let joined = JOINED.of(sheet, pool)?;
        Ok(joined.speaker(sheet).unwrap_or(pool))
    };
    let each: Vec<Known<Subject>> = pools_of(sheet, group)?.into_iter().map(speaker).collect();
    let mut waters = each.all()?;
    waters.sort_unstable();
    waters.dedup();
    Ok(waters)
}
