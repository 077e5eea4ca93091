//! Whether a group basks, and how many baskers it has.

use haulout_calc::formula::Formula;
use haulout_model::{About, Subject};
use haulout_quantity::si::Ratio;
use haulout_register::Bask;
use haulout_sheet::{All, Figure, FigureCard, Known, Line, Sheet};

use super::{closed, pick};
use crate::group::ANIMALS;
use crate::species::{species, species_value};

const fn card(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard { id, title, about: About::Group, axes: &[], unit: "", us_unit: "", resolution: None }
}

static BASKERS_OF: Formula<(Ratio, Ratio), Ratio> = Formula {
    card: &closed("animals that bask", "n_b", "n × basks", &["n", "basks"], "definition"),
    run: |(number, basks)| Ok(number * basks),
};

static ANY: Formula<(Ratio,), bool> = Formula {
    card: &pick("some bask", "yes", "one basker or more", &["n_b"], "definition"),
    run: |(number,)| Ok(number.value > 0.5),
};

/// What the register knows of the basking of a group, as a line and as the row itself.
pub(crate) fn basks(sheet: Sheet<'_>, at: Subject) -> Known<(Line<Ratio>, bool)> {
    let line = species_value(sheet, at, "whether it basks", |s| s.bask().map(|b| &b.basks))?;
    let row: Option<&'static Bask> = species(sheet, at)?.bask();
    Ok((line, row.is_none_or(|b| b.basks.value > 0.5)))
}

/// How many animals of a group bask: all, or none.
pub static BASKERS: Figure<Line<Ratio>> = Figure {
    card: &card("baskers", "animals that bask"),
    work: |sheet, at| {
        let (number, habit) = (ANIMALS.of(sheet, at), basks(sheet, at).map(|b| b.0)).all()?;
        sheet.work(&BASKERS_OF, (number, habit))
    },
};

/// Some animals of the group bask.
pub static ANY_BASK: Figure<Line<bool>> = Figure {
    card: &card("any-bask", "some bask"),
    work: |sheet, at| sheet.work(&ANY, (BASKERS.of(sheet, at)?,)),
};
