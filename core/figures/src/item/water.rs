//! What the water is classed as, by whom, and whether people are meant to be in it.

use std::sync::Arc;

use haulout_calc::formula::Formula;
use haulout_sheet::{All, Known, Line, Sheet};

use super::pick;

const SWIMMING: u16 = 0;
const ENTERED: u16 = 1;
const FOUNTAIN: u16 = 2;
const SCOPE: &str = "scope of IEC 60364-7-702:2010 (abstract): basins of swimming pools and of fountains; NFPA 70 (2020) 680.50: a fountain people use also meets the part on pools";

static BATHED: Formula<(u16,), bool> = Formula {
    card: &pick(
        "classed as water people enter",
        "entered",
        "swimming pool, or basin entered",
        &["class"],
        SCOPE,
    ),
    run: |(class,)| Ok(class == SWIMMING || class == ENTERED),
};

static BASIN: Formula<(u16,), bool> = Formula {
    card: &pick("classed as a pool or a fountain", "basin", "any class but other water", &["class"], SCOPE),
    run: |(class,)| Ok([SWIMMING, ENTERED, FOUNTAIN].contains(&class)),
};

static CLASSED_BY: Formula<(u16, Arc<String>), bool> = Formula {
    card: &pick(
        "classed by somebody",
        "classed",
        "a class, and words with letters in them for who chose it",
        &["class", "by"],
        "the class is a decision of the electrical designer",
    ),
    run: |(_class, by)| Ok(by.chars().filter(|c| c.is_alphabetic()).count() > 1),
};

/// The class, as the number of its option. Missing it is a gap: no class is taken silently.
///
/// # Errors
/// A gap when the water is not classed.
pub fn classed(sheet: Sheet<'_>) -> Known<Line<u16>> {
    Ok(sheet.design().electrical.classed.on(sheet)?.option())
}

/// Whether people enter the water.
///
/// # Errors
/// As [`classed`].
pub fn bathed(sheet: Sheet<'_>) -> Known<Line<bool>> {
    sheet.work(&BATHED, (classed(sheet)?,))
}

/// Whether the water is classed as a pool or a fountain.
///
/// # Errors
/// As [`classed`].
pub fn basin(sheet: Sheet<'_>) -> Known<Line<bool>> {
    sheet.work(&BASIN, (classed(sheet)?,))
}

/// Whether the class is stated with who chose it.
///
/// # Errors
/// Gaps for the class and for who chose it.
pub fn classed_by_somebody(sheet: Sheet<'_>) -> Known<Line<bool>> {
    let by = sheet.design().electrical.classed_by.on(sheet);
    let lines = (classed(sheet), by).all()?;
    sheet.work(&CLASSED_BY, lines)
}
