//! Values of a group's species out of the register.

use std::sync::Arc;

use haulout_model::animal::Group;
use haulout_model::{About, Subject};
use haulout_quantity::Measure;
use haulout_register::{Species, Value};
use haulout_sheet::{Figure, FigureCard, Gap, GapKind, Known, Line, Sheet};

/// The row of the register that the name of a group's species leads to, with the line of the name. Not a number, so not
/// in the catalogue.
static ROW: Figure<(Line<Arc<String>>, &'static Species)> = Figure {
    card: &FigureCard {
        id: "species",
        title: "species of the group",
        about: About::Group,
        axes: &[],
        unit: "",
        us_unit: "",
        resolution: None,
    },
    work: |sheet, at| {
        let name = group(sheet, at).species.on(sheet)?;
        let words = sheet.word_of(name);
        sheet
            .species(&words)
            .map(|species| (name, species))
            .ok_or_else(|| Gap::of(GapKind::Unknown, sheet.unknown_species(&words), vec![name.id()]).into())
    },
};

/// The species of a group, as the register has it.
pub(crate) fn species(sheet: Sheet<'_>, at: Subject) -> Known<&'static Species> {
    ROW.of(sheet, at).map(|(_, species)| species)
}

/// A value of the species of a group, looked up by the name the file states.
///
/// # Errors
/// A gap where no species is stated, where the register does not know it, or where it does not know the value.
pub fn species_value<Q: Measure>(
    sheet: Sheet<'_>,
    at: Subject,
    what: &'static str,
    of: fn(&'static Species) -> Option<&'static Value>,
) -> Known<Line<Q>> {
    let (name, species) = ROW.of(sheet, at)?;
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
