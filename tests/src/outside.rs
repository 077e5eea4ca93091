//! Outside checks: numbers that were not derived from this code, each with its source and what it may differ by.
//!
//! A row that names a formula of the sheet gives its arguments in SI and works the very formula the sheet works, found by
//! the name on its card; other rows call a function. Yes is 1, no is 0, a choice is the number of its option.

mod animals;
mod basking;
mod electricity;
mod filtration;
mod geometry;
mod heat;
mod hydraulics;
mod levels;
mod startup;
mod units;
mod water;
mod weirs;

use std::collections::BTreeMap;

use haulout_engine::{Ruleset, review};
use haulout_quantity::Basis;
use haulout_sheet::{AnyFormula, Book, Case, Datum, Made};

use crate::evidence::moved::Played;
use crate::options;

/// How the number comes about here.
pub enum Work {
    /// The formula of that name on the sheet, on these numbers in SI.
    Sheet(&'static [f64]),
    /// A function of a crate.
    Call(fn() -> f64),
}

/// One outside check.
pub struct Row {
    /// The name on the card of the formula; empty where it is a function or a table that no card names.
    pub formula: &'static str,
    /// What is checked of it.
    pub what: &'static str,
    /// Standard, book and page, or library with version and call.
    pub source: &'static str,
    /// How the expected number is known.
    pub basis: Basis,
    /// The work.
    pub work: Work,
    /// The unit of both numbers.
    pub unit: &'static str,
    /// The number of the source.
    pub expected: f64,
    /// What it may differ by, as a share of the expected number; outright where that is nothing.
    pub allowed: f64,
}

/// A row worked by a formula of the sheet.
const fn sheet(
    formula: &'static str,
    what: &'static str,
    (source, basis): (&'static str, Basis),
    given: &'static [f64],
    (expected, unit, allowed): (f64, &'static str, f64),
) -> Row {
    Row { formula, what, source, basis, work: Work::Sheet(given), unit, expected, allowed }
}

/// A row worked by a function.
const fn call(
    formula: &'static str,
    what: &'static str,
    (source, basis): (&'static str, Basis),
    work: fn() -> f64,
    (expected, unit, allowed): (f64, &'static str, f64),
) -> Row {
    Row { formula, what, source, basis, work: Work::Call(work), unit, expected, allowed }
}

/// Every outside check, by subject.
pub fn rows() -> Vec<(&'static str, &'static [Row])> {
    vec![
        ("water", water::ROWS),
        ("hydraulics", hydraulics::ROWS),
        ("geometry", geometry::ROWS),
        ("levels and arithmetic", levels::ROWS),
        ("animals and barriers", animals::ROWS),
        ("basking and depth", basking::ROWS),
        ("electricity", electricity::ROWS),
        ("filtration", filtration::ROWS),
        ("heat", heat::ROWS),
        ("start-up", startup::ROWS),
        ("units", units::ROWS),
        ("weirs, streams and levels", weirs::ROWS),
    ]
}

/// The formulas the sheet works for some designs, by the names on their cards: in every answer and every figure.
pub fn formulas(played: &[Played], ruleset: &Ruleset) -> BTreeMap<&'static str, &'static dyn AnyFormula> {
    let mut found = BTreeMap::new();
    for one in played {
        let review = review(&one.loaded.design, ruleset, &[], &options());
        collect(&review.book, &mut found);
        let book = Book::new(&one.loaded.design, &ruleset.limits, &[]);
        for figure in haulout_figures::CATALOGUE {
            for subject in figure.card().about.walk(&one.loaded.design).subjects {
                for case in Case::each(figure.card().axes) {
                    // What cannot be worked leaves the lines it was worked from.
                    let _ = figure.line(book.sheet(case), subject);
                }
            }
        }
        collect(&book, &mut found);
    }
    found
}

fn collect(book: &Book<'_>, found: &mut BTreeMap<&'static str, &'static dyn AnyFormula>) {
    for line in 0..book.len() {
        if let Made::Worked(formula) = book.record(line as u32).made {
            found.insert(formula.card().name, formula);
        }
    }
}

impl Row {
    /// The number as it is worked here.
    ///
    /// # Errors
    /// A sentence when no design draws on the formula, or when it refuses the numbers.
    pub fn got(&self, formulas: &BTreeMap<&'static str, &'static dyn AnyFormula>) -> Result<f64, String> {
        match self.work {
            Work::Call(work) => Ok(work()),
            Work::Sheet(given) => {
                let formula = formulas.get(self.formula);
                let formula = formula.ok_or_else(|| format!("no design draws on \"{}\"", self.formula))?;
                let given: Vec<Datum> = given.iter().map(|n| Datum::Number(*n)).collect();
                let datum = formula.again(&given).map_err(|refusal| refusal.why)?;
                datum.number().ok_or_else(|| format!("\"{}\" gives no number", self.formula))
            }
        }
    }

    /// By how much a number differs from the expected one, as a share of it; outright where that is nothing.
    pub fn difference(&self, got: f64) -> f64 {
        let difference = (got - self.expected).abs();
        if self.expected == 0.0 { difference } else { difference / self.expected.abs() }
    }
}
