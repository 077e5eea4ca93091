//! Levels: as stated, or hung on others by name.

use haulout_model::{Level, LevelExpr, Reference, State};
use haulout_quantity::si::Length;
use haulout_sheet::{All, Gap, GapKind, Known, Line, Sheet};

use crate::terms::{ABOVE, BELOW};

/// A chain of levels longer than this hangs on itself.
const LONGEST_CHAIN: u8 = 32;

/// The level a field states, in metres over the datum.
///
/// # Errors
/// A gap where it is missing, where its name leads nowhere, or where it hangs on itself.
pub fn level(sheet: Sheet<'_>, field: &Level) -> Known<Line<Length>> {
    chained(sheet, field, 0)
}

/// The level of a name such as `main.water`.
///
/// # Errors
/// As [`level`].
pub fn level_named(sheet: Sheet<'_>, reference: &Reference) -> Known<Line<Length>> {
    named(sheet, reference, 0)
}

fn chained(sheet: Sheet<'_>, field: &Level, length: u8) -> Known<Line<Length>> {
    if length > LONGEST_CHAIN {
        let seat = field.seat();
        return Err(Gap::at(GapKind::Unsound, format!("{} hangs on itself", seat.what), seat.origin).into());
    }
    match field.state() {
        State::Given(LevelExpr::At(number)) => number.on(sheet),
        State::Given(LevelExpr::From { of, above, by }) => {
            let (from, by) = (named(sheet, of, length), by.on(sheet)).all()?;
            sheet.work(if *above { &ABOVE } else { &BELOW }, (from, by))
        }
        _ => Err(Gap::from(field.missing()).into()),
    }
}

fn named(sheet: Sheet<'_>, reference: &Reference, length: u8) -> Known<Line<Length>> {
    match sheet.design().level(reference.name()) {
        Some(field) => chained(sheet, field, length + 1),
        None => {
            let what = format!("there is no level \"{}\"", reference.name());
            Err(Gap::at(GapKind::LeadsNowhere, what, reference.seat().origin).into())
        }
    }
}
