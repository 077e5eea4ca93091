//! The water that all animals over a joined water bear: the highest lower end and the lowest upper end of their bands.

use haulout_calc::formula::Refusal;
use haulout_model::{About, Subject};
use haulout_quantity::si::ThermodynamicTemperature;
use haulout_register::{Species, Value};
use haulout_sheet::{All, Figure, Known, Line, Many, Sheet};

use super::{card, pools};
use crate::group::over::living_over;
use crate::species::species_value;
use crate::terms::arithmetic;

const DEGREES: (&str, &str) = ("°C", "°F");

static HIGHEST: Many<ThermodynamicTemperature, ThermodynamicTemperature> = Many {
    card: &arithmetic("highest of temperatures", "T", "max", &[]),
    run: |all| {
        let most = |a: ThermodynamicTemperature, b| if b > a { b } else { a };
        all.iter().copied().reduce(most).ok_or_else(|| Refusal::new("no animals live over this water"))
    },
};

static LOWEST: Many<ThermodynamicTemperature, ThermodynamicTemperature> = Many {
    card: &arithmetic("lowest of temperatures", "T", "min", &[]),
    run: |all| {
        let least = |a: ThermodynamicTemperature, b| if b < a { b } else { a };
        all.iter().copied().reduce(least).ok_or_else(|| Refusal::new("no animals live over this water"))
    },
};

/// The groups that live in the spaces of the pools a pool is joined to.
pub(crate) fn groups(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Subject>> {
    living_over(sheet, &pools(sheet, at)?)
}

/// Whether any animals live over the water of a pool.
///
/// # Errors
/// A gap where animals are not stated.
pub fn is_lived_in(sheet: Sheet<'_>, at: Subject) -> Known<bool> {
    groups(sheet, at).map(|found| !found.is_empty())
}

type Temperature = Line<ThermodynamicTemperature>;

fn each(
    sheet: Sheet<'_>,
    at: Subject,
    what: &'static str,
    of: fn(&'static Species) -> Option<&'static Value>,
) -> Known<Vec<Temperature>> {
    let each = groups(sheet, at)?.into_iter().map(|group| species_value(sheet, group, what, of));
    let each: Vec<Known<Temperature>> = each.collect();
    each.all()
}

/// The lowest water that a group's species is kept in.
pub static BAND_LOW: Figure<Temperature> = Figure {
    card: &card("water-low-of-group", "lowest water of the group", About::Group, DEGREES),
    work: |sheet, at| species_value(sheet, at, "lowest water temperature", |s| s.water_low.as_ref()),
};

/// The highest water that a group's species is kept in.
pub static BAND_HIGH: Figure<Temperature> = Figure {
    card: &card("water-high-of-group", "highest water of the group", About::Group, DEGREES),
    work: |sheet, at| species_value(sheet, at, "highest water temperature", |s| s.water_high.as_ref()),
};

/// The coolest water that all of them are kept in.
pub static FLOOR: Figure<Temperature> = Figure {
    card: &card("water-floor", "coolest water all animals are kept in", About::Pool, DEGREES),
    work: |sheet, at| {
        let each = each(sheet, at, "lowest water temperature", |s| s.water_low.as_ref())?;
        sheet.fold(&HIGHEST, &each)
    },
};

/// The warmest water that all of them are kept in.
pub static CEILING: Figure<Temperature> = Figure {
    card: &card("water-ceiling", "warmest water all animals are kept in", About::Pool, DEGREES),
    work: |sheet, at| {
        let each = each(sheet, at, "highest water temperature", |s| s.water_high.as_ref())?;
        sheet.fold(&LOWEST, &each)
    },
};
