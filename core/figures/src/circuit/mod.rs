//! Figures about a water circuit.

pub mod duty;
pub mod lift;
mod plan;
pub mod remaining;
pub mod returns;
pub mod smooth;
pub mod suction;
pub mod system;
pub mod turnover;
pub mod velocity;
pub mod vessel;
pub mod yearly;

use haulout_model::circuit::Circuit;
use haulout_model::{About, Link, Subject};
use haulout_sheet::{Gap, GapKind, Known, Sheet};

/// The circuit of a subject.
pub(crate) fn circuit(sheet: Sheet<'_>, at: Subject) -> &Circuit {
    &sheet.design().circuits.items()[at.index()]
}

/// The basins the circuit joins, in the order listed.
pub(crate) fn served(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Known<Subject>>> {
    let serves = &circuit(sheet, at).serves;
    if let Some(missing) = serves.missing() {
        return Err(Gap::from(missing).into());
    }
    Ok(serves.items().iter().map(|reference| crate::pool::named(sheet, reference)).collect())
}

/// The circuit a reference leads to.
pub(crate) fn named(sheet: Sheet<'_>, link: &Link) -> Known<Subject> {
    let Some(reference) = link.given() else { return Err(Gap::from(link.missing()).into()) };
    let found = sheet.design().circuits.items().iter().position(|c| c.id == reference.name());
    found.map(|at| Subject::nth(About::Circuit, at)).ok_or_else(|| {
        let what = format!("there is no circuit \"{}\"", reference.name());
        Gap::at(GapKind::LeadsNowhere, what, reference.seat().origin).into()
    })
}
