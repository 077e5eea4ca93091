//! Values of a group's species out of the register.

use haulout_model::Subject;
use haulout_model::animal::Group;
use haulout_quantity::Measure;
use haulout_register::{Species, Value};
use haulout_sheet::{Gap, GapKind, Known, Line, Sheet};

/// A value of the species of a group, looked up by the name the file states.
///
/// # Errors
/// A gap where no species is stated, where the register does not know it, or where it does not know the value.
pub fn species_value<Q: Measure>(
    sheet: Sheet<'_>,
    group: &Group,
    what: &'static str,
    of: fn(&'static Species) -> Option<&'static Value>,
) -> Known<Line<Q>> {
    let name = group.species.on(sheet)?;
    let words = sheet.word_of(name);
    let Some(species) = sheet.species(&words) else {
        return Err(Gap::of(GapKind::Unknown, sheet.unknown_species(&words), vec![name.id()]).into());
    };
    match of(species) {
        Some(value) => Ok(sheet.register(value, Some(name.id()))),
        None => {
            Err(Gap::of(GapKind::Unknown, format!("{what} of {}", species.latin), vec![name.id()]).into())
        }
    }
}

/// The group of a subject.
pub(crate) fn group(sheet: Sheet<'_>, at: Subject) -> &Group {
    &sheet.design().animals.items()[at.index()]
}
