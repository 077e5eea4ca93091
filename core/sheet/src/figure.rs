//! Figures: named numbers about a subject, worked at most once for the case their axes leave.

use std::any::Any;
use std::sync::Arc;

use haulout_model::{About, Subject};
use haulout_quantity::Dimension;

use crate::book::{Memo, Sheet};
use crate::case::Axis;
use crate::gap::{Gap, GapKind, Known};
use crate::line::{Entry, Line, LineId};

/// The card of a figure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FigureCard {
    /// Its name, bare words with hyphens.
    pub id: &'static str,
    /// What it is, in words.
    pub title: &'static str,
    /// What it is about.
    pub about: About,
    /// The axes of the case it depends on.
    pub axes: &'static [Axis],
    /// The unit of the trade it is printed in.
    pub unit: &'static str,
    /// The same in US customary.
    pub us_unit: &'static str,
    /// For a search or a construction: how finely it was resolved, in words.
    pub resolution: Option<&'static str>,
}

/// A figure: its card and its work.
pub struct Figure<T: 'static> {
    /// Its card.
    pub card: &'static FigureCard,
    /// The work; called at most once for each subject and case.
    pub work: fn(Sheet<'_>, Subject) -> Known<T>,
}

impl<T: Clone + Send + Sync + 'static> Figure<T> {
    /// The figure about a subject, or about the part of it that the figure is about.
    ///
    /// # Errors
    /// All that is missing for it, down to the root causes.
    pub fn of(&'static self, sheet: Sheet<'_>, at: Subject) -> Known<T> {
        let subject =
            at.part(self.card.about).expect("a rule about a subject asks only for figures of its parts");
        let sheet = sheet.in_case(sheet.case.only(self.card.axes));
        let key = (std::ptr::from_ref(self.card) as usize, subject.packed(), sheet.case.packed());
        let known = sheet.book.memo.borrow().get(&key).map(|memo| self.worked_before(memo));
        known.unwrap_or_else(|| self.work_once(sheet, subject, key))
    }

    fn worked_before(&self, memo: &Memo) -> Known<T> {
        match memo {
            Memo::Done(Ok(any)) => {
                Ok(any.downcast_ref::<T>().expect("a figure's memo holds its own type").clone())
            }
            Memo::Done(Err(gaps)) => Err(gaps.clone()),
            Memo::UnderWork => {
                let what = format!("{} hangs on itself", self.card.title);
                Err(Gap::of(GapKind::Unsound, what, Vec::new()).into())
            }
        }
    }

    fn work_once(&'static self, sheet: Sheet<'_>, subject: Subject, key: crate::book::MemoKey) -> Known<T> {
        sheet.book.memo.borrow_mut().insert(key, Memo::UnderWork);
        let known = (self.work)(sheet, subject);
        let kept = known.clone().map(|value| Arc::new(value) as Arc<dyn Any + Send + Sync>);
        sheet.book.memo.borrow_mut().insert(key, Memo::Done(kept));
        known
    }
}

/// A figure that is one number, as the catalogue lists it.
pub trait Catalogued: Sync {
    /// Its card.
    fn card(&self) -> &'static FigureCard;
    /// Its dimension.
    fn dimension(&self) -> Dimension;
    /// Its line about a subject.
    ///
    /// # Errors
    /// All that is missing for it.
    fn line(&'static self, sheet: Sheet<'_>, at: Subject) -> Known<LineId>;
}

impl<Q: Entry + Send + Sync> Catalogued for Figure<Line<Q>> {
    fn card(&self) -> &'static FigureCard {
        self.card
    }
    fn dimension(&self) -> Dimension {
        Q::DIMENSION
    }
    fn line(&'static self, sheet: Sheet<'_>, at: Subject) -> Known<LineId> {
        self.of(sheet, at).map(Line::id)
    }
}
