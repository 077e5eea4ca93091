//! A trial before animals: what is done on site, and the figures that say what will be seen.

use haulout_model::{About, Subject};
use haulout_sheet::{Book, Case, Catalogued, Entry, GapKind, Known, Line, LineId, Sheet};

use crate::card::Consequence;

/// What a trial expects to see.
pub struct Expects {
    /// What is read on site, in words.
    pub what: &'static str,
    /// The figure that says it, about the subject of the trial or a part of it.
    pub figure: &'static dyn Catalogued,
    /// The states it is read in.
    pub case: Case,
}

/// Whether a trial is made on a subject.
pub enum Asked {
    /// It is, or it is not, by what the file holds.
    Plainly(bool),
    /// Where the line says so.
    By(Line<bool>),
}

/// A trial.
pub struct Trial {
    /// A bare name; never used again for anything else.
    pub id: &'static str,
    /// Its name in a list.
    pub title: &'static str,
    /// What it is made on.
    pub about: About,
    /// Whether it is made on a subject; what cannot be told is tried.
    pub asked: fn(Sheet<'_>, Subject) -> Known<Asked>,
    /// What it guards.
    pub guards: Consequence,
    /// What is done.
    pub does: &'static str,
    /// Why.
    pub why: &'static str,
    /// A word of caution where it can hurt someone.
    pub caution: Option<&'static str>,
    /// What is expected.
    pub expects: &'static [Expects],
}

/// What one trial expects of one subject, each as a line or as what is missing for it.
pub type ExpectedAt<'t> = Vec<(&'t Expects, Known<LineId>)>;

/// A trial that is made on every subject.
///
/// # Errors
/// None; it has the shape of the others.
pub fn always(_: Sheet<'_>, _: Subject) -> Known<Asked> {
    Ok(Asked::Plainly(true))
}

impl Trial {
    /// The subjects of a design it is made on, with what is expected there. What the file says there is none of, and what a
    /// figure has no meaning for, is not read.
    pub fn on<'t>(&'t self, book: &Book<'_>) -> Vec<(Subject, ExpectedAt<'t>)> {
        let subjects = self.about.walk(book.design()).subjects;
        let each = subjects.into_iter().filter(|subject| self.is_asked(book, *subject)).map(|subject| {
            let known =
                |expects: &'t Expects| (expects, expects.figure.line(book.sheet(expects.case), subject));
            let expected = self.expects.iter().map(known).filter(|(_, known)| !is_beside_the_point(known));
            (subject, expected.collect())
        });
        each.filter(|(_, expected): &(_, ExpectedAt<'t>)| !expected.is_empty() || self.expects.is_empty())
            .collect()
    }

    fn is_asked(&self, book: &Book<'_>, subject: Subject) -> bool {
        match (self.asked)(book.sheet(Case::NORMAL), subject) {
            Ok(Asked::Plainly(asked)) => asked,
            Ok(Asked::By(line)) => bool::take(&book.record(line.id()).datum),
            Err(_) => true,
        }
    }
}

/// Whether the file says that there is none of it, or the method has no meaning here.
fn is_beside_the_point(known: &Known<LineId>) -> bool {
    let beside = |kind: GapKind| matches!(kind, GapKind::SaidNone | GapKind::OutOfRange);
    known.as_ref().is_err_and(|gaps| gaps.0.iter().any(|gap| beside(gap.kind)))
}
