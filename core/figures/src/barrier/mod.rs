//! Figures about barriers, doors and the animals behind them, and about guards for visitors.

pub mod boundary;
pub mod corner;
pub mod door;
pub mod footing;
pub mod guard;
pub mod habit;
pub mod height;
pub mod opening;
mod yes;

use haulout_model::barrier::{Barrier, Door};
use haulout_model::hall::Space;
use haulout_model::{Reference, Subject};
use haulout_quantity::si::Length;
use haulout_sheet::{All, Gap, GapKind, Known, Line, Sheet};

use crate::species::group;

/// The barrier of a subject.
pub(crate) fn barrier(sheet: Sheet<'_>, at: Subject) -> &Barrier {
    &sheet.design().barriers.items()[at.index()]
}

/// The door of a subject.
pub(crate) fn door(sheet: Sheet<'_>, at: Subject) -> &Door {
    &sheet.design().doors.items()[at.index()]
}

/// A space by its name.
fn space<'s>(sheet: Sheet<'s>, name: &Reference) -> Known<&'s Space> {
    let found = sheet.design().space_named(name.name()).map(|at| &sheet.design().hall.spaces.items()[at]);
    found.ok_or_else(|| {
        let what = format!("there is no space \"{}\"", name.name());
        Gap::at(GapKind::LeadsNowhere, what, name.seat().origin).into()
    })
}

/// The spaces a barrier bounds and a group lives in.
fn shared<'s>(sheet: Sheet<'s>, barrier_at: Subject, group_at: Subject) -> Known<Vec<&'s Reference>> {
    let (bounds, lives) = (&barrier(sheet, barrier_at).spaces, &group(sheet, group_at).spaces);
    let stated =
        |missing: Option<haulout_model::Missing>| missing.map_or(Ok(()), |m| Err(Gap::from(m).into()));
    (stated(bounds.missing()), stated(lives.missing())).all()?;
    let lives_in = |s: &&Reference| lives.items().iter().any(|g| g.name() == s.name());
    Ok(bounds.items().iter().filter(lives_in).collect())
}

/// Whether something that names a space counts for these; what names none, or one that is not there, counts everywhere:
/// a slip of the pen must not hide a rock.
fn belongs(sheet: Sheet<'_>, named: Option<&Reference>, spaces: &[&Reference]) -> bool {
    named.is_none_or(|n| spaces.iter().any(|s| s.name() == n.name()) || space(sheet, n).is_err())
}

/// The top of the barrier.
fn top(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    crate::level(sheet, &barrier(sheet, at).top)
}
