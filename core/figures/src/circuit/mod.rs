//! Figures about a water circuit.

pub mod duty;
pub mod system;
pub mod turnover;

use haulout_model::circuit::Circuit;
use haulout_model::{About, Subject};
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
    let pools = sheet.design().pools.items();
    let find =
        |reference: &haulout_model::Reference| match pools.iter().position(|p| p.id == reference.name()) {
            Some(index) => Ok(Subject::nth(About::Pool, index)),
            None => {
                let what = format!("there is no basin \"{}\"", reference.name());
                Err(Gap::at(GapKind::LeadsNowhere, what, reference.seat().origin).into())
            }
        };
    Ok(serves.items().iter().map(find).collect())
}
