//! Gaps: what is missing, all of it at once, each with its kind.

use std::borrow::Cow;

use haulout_model::{Missing, MissingKind, Origin};

use crate::line::LineId;

/// Why a number cannot be had.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum GapKind {
    /// The field is not stated.
    Absent,
    /// The file says that there is none.
    SaidNone,
    /// To be decided.
    Undecided,
    /// The register knows no such value.
    Unknown,
    /// Outside the range in which the method holds.
    OutOfRange,
    /// The drawing cannot be worked with.
    Unsound,
    /// A reference leads nowhere.
    LeadsNowhere,
    /// No authority is chosen for the matter, or none that the rule knows.
    NoAuthority,
}

impl GapKind {
    /// The words for it.
    pub const fn name(self) -> &'static str {
        match self {
            GapKind::Absent => "not stated",
            GapKind::SaidNone => "none",
            GapKind::Undecided => "to be decided",
            GapKind::Unknown => "not in the register",
            GapKind::OutOfRange => "outside the range of the method",
            GapKind::Unsound => "cannot be worked with",
            GapKind::LeadsNowhere => "leads nowhere",
            GapKind::NoAuthority => "no authority chosen",
        }
    }
}

/// One thing that is missing.
#[derive(Debug, Clone, PartialEq)]
pub struct Gap {
    /// Why.
    pub kind: GapKind,
    /// What, in words.
    pub what: Cow<'static, str>,
    /// Where it stands or would stand.
    pub origin: Option<Origin>,
    /// The lines that led to it; their roots are places of the gap too.
    pub lines: Vec<LineId>,
}

impl Gap {
    /// A gap that rests on lines.
    pub fn of(kind: GapKind, what: impl Into<Cow<'static, str>>, lines: Vec<LineId>) -> Self {
        Gap { kind, what: what.into(), origin: None, lines }
    }

    /// A gap at a place.
    pub fn at(kind: GapKind, what: impl Into<Cow<'static, str>>, origin: Origin) -> Self {
        Gap { kind, what: what.into(), origin: Some(origin), lines: Vec::new() }
    }
}

impl From<Missing> for Gap {
    fn from(missing: Missing) -> Self {
        let kind = match missing.kind {
            MissingKind::Absent => GapKind::Absent,
            MissingKind::None => GapKind::SaidNone,
            MissingKind::Undecided => GapKind::Undecided,
        };
        Gap::at(kind, missing.what, missing.origin)
    }
}

/// Everything that is missing for one number; never empty.
#[derive(Debug, Clone, PartialEq)]
pub struct Gaps(pub Vec<Gap>);

impl From<Gap> for Gaps {
    fn from(gap: Gap) -> Self {
        Gaps(vec![gap])
    }
}

impl Gaps {
    /// The same gaps, resting on one more line: it decided that they were looked for.
    pub fn because(mut self, line: LineId) -> Gaps {
        for gap in &mut self.0 {
            gap.lines.push(line);
        }
        self
    }

    /// Both lists, a gap at the same place once.
    pub fn and(mut self, other: Gaps) -> Gaps {
        for gap in other.0 {
            if !self.0.contains(&gap) {
                self.0.push(gap);
            }
        }
        self
    }
}

/// A number, or all that is missing for it.
pub type Known<T> = Result<T, Gaps>;

/// Several knowns at once: all the values, or all the gaps of all of them.
pub trait All {
    /// The values.
    type Values;
    /// # Errors
    /// Every gap of every part.
    fn all(self) -> Known<Self::Values>;
}

impl<T> All for Vec<Known<T>> {
    type Values = Vec<T>;
    fn all(self) -> Known<Vec<T>> {
        let mut values = Vec::with_capacity(self.len());
        let mut gaps: Option<Gaps> = None;
        for known in self {
            match known {
                Ok(value) => values.push(value),
                Err(more) => gaps = Some(gaps.map_or(more.clone(), |g| g.and(more))),
            }
        }
        gaps.map_or(Ok(values), Err)
    }
}

impl<A, B> All for (Known<A>, Known<B>) {
    type Values = (A, B);
    fn all(self) -> Known<(A, B)> {
        match self {
            (Ok(a), Ok(b)) => Ok((a, b)),
            (Err(a), Err(b)) => Err(a.and(b)),
            (Err(g), _) | (_, Err(g)) => Err(g),
        }
    }
}

impl<A, B, C> All for (Known<A>, Known<B>, Known<C>) {
    type Values = (A, B, C);
    fn all(self) -> Known<(A, B, C)> {
        ((self.0, self.1).all(), self.2).all().map(|((a, b), c)| (a, b, c))
    }
}

impl<A, B, C, D> All for (Known<A>, Known<B>, Known<C>, Known<D>) {
    type Values = (A, B, C, D);
    fn all(self) -> Known<(A, B, C, D)> {
        ((self.0, self.1).all(), (self.2, self.3).all()).all().map(|((a, b), (c, d))| (a, b, c, d))
    }
}
