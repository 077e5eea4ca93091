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

    /// Every line below `lines`, themselves included, each once, in the order they were made.
    pub fn below(book: &Book<'_>, lines: &[LineId]) -> Vec<LineId> {
        let mut seen = vec![false; book.len()];
        let mut open = lines.to_vec();
        while let Some(id) = open.pop() {
            if !std::mem::replace(&mut seen[id as usize], true) {
                open.extend(book.arguments(id));
            }
        }
        (0..seen.len()).filter(|i| seen[*i]).map(|i| i as LineId).collect()
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
