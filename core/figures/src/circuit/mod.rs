//! Figures about a water circuit.

pub mod duty;
pub mod system;
pub mod turnover;
pub mod velocity;

use haulout_model::Subject;
use haulout_model::circuit::Circuit;
use haulout_sheet::{Gap, Known, Sheet};

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
