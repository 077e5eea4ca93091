//! Walks over the sheet: the roots of lines, the weakest basis, the weakest standing. Nobody writes such lists by hand.

use haulout_model::Standing;
use haulout_quantity::Basis;

use crate::book::Book;
use crate::line::{LineId, Made};

/// The roots below some lines, each once, in the order the lines were made.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Roots(pub Vec<LineId>);

impl Roots {
    /// The roots below `lines`.
    pub fn of(book: &Book<'_>, lines: &[LineId]) -> Self {
        let seen = Self::below(book, lines);
        Roots(seen.into_iter().filter(|id| !matches!(book.record(*id).made, Made::Worked(_))).collect())
    }

    /// The roots below `lines`, each once, in the order a reader meets them who follows every working to its end: it does not depend on
    /// what else was asked of the book before.
    pub fn met(book: &Book<'_>, lines: &[LineId]) -> Vec<LineId> {
        let mut marks = book.marks.borrow_mut();
        marks.begin(book.len());
        let mut open: Vec<LineId> = lines.iter().rev().copied().collect();
        let mut found = Vec::new();
        while let Some(id) = open.pop() {
            if !marks.first(id) {
                continue;
            }
            if !matches!(book.record(id).made, Made::Worked(_)) {
                found.push(id);
            }
            let from = open.len();
            book.extend_with_arguments(id, &mut open);
            open[from..].reverse();
        }
        found
    }

    /// Every line below `lines`, themselves included, each once, in the order they were made.
    pub fn below(book: &Book<'_>, lines: &[LineId]) -> Vec<LineId> {
        let mut marks = book.marks.borrow_mut();
        if let Some(found) = marks.found_before(lines, book.len()) {
            return found;
        }
        let (mut found, mut open) = (Vec::new(), lines.to_vec());
        marks.begin(book.len());
        while let Some(id) = open.pop() {
            if marks.first(id) {
                found.push(id);
                book.extend_with_arguments(id, &mut open);
            }
        }
        found.sort_unstable();
        marks.last = (lines.to_vec(), found.clone());
        found
    }
}

/// Which lines a walk has met already; kept from walk to walk, so that a short one costs no more than it meets. The last walk is
/// kept too: basis, standing, promises and units of an answer are all read off the same lines.
#[derive(Default)]
pub(crate) struct Marks {
    walk: u32,
    met_in: Vec<u32>,
    last: (Vec<LineId>, Vec<LineId>),
}

impl Marks {
    /// What the last walk found, if it began at the same lines. Lines never change once they are made.
    fn found_before(&self, lines: &[LineId], made: usize) -> Option<Vec<LineId>> {
        let (begun, found) = &self.last;
        (!lines.is_empty() && begun == lines && self.met_in.len() <= made).then(|| found.clone())
    }

    fn begin(&mut self, lines: usize) {
        self.met_in.resize(lines, self.walk);
        self.walk += 1;
    }

    fn first(&mut self, id: LineId) -> bool {
        std::mem::replace(&mut self.met_in[id as usize], self.walk) != self.walk
    }
}

/// The weakest basis among the roots and formulas below `lines`; published when nothing there rests on a source.
pub(crate) fn basis(book: &Book<'_>, lines: &[LineId]) -> Basis {
    let of = |id: LineId| match book.record(id).made {
        Made::Stated { .. } => None,
        Made::Register(value, _) => Some(value.basis),
        Made::Default(_, _, default) => Some(default.basis),
        Made::Limit(limit, _) => Some(limit.basis),
        Made::Worked(formula) => Some(formula.card().basis),
    };
    Roots::below(book, lines).into_iter().filter_map(of).max().unwrap_or(Basis::Published)
}

/// The weakest standing among the stated roots below `lines`; none when nothing is stated.
pub(crate) fn standing(book: &Book<'_>, lines: &[LineId]) -> Option<Standing> {
    let of = |id: LineId| match book.record(id).made {
        Made::Stated { standing, .. } => Some(standing),
        _ => None,
    };
    Roots::below(book, lines).into_iter().filter_map(of).max()
}

impl Book<'_> {
    /// The weakest basis among the roots and formulas below `lines`.
    pub fn basis(&self, lines: &[LineId]) -> Basis {
        basis(self, lines)
    }

    /// The weakest standing among the stated roots below `lines`.
    pub fn standing(&self, lines: &[LineId]) -> Option<Standing> {
        standing(self, lines)
    }
}
