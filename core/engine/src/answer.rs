//! An answer: what a rule says about one subject under one authority.

use haulout_model::Subject;
use haulout_sheet::{Case, Gap, LineId};

/// The five things an answer can be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Outcome {
    /// What is asked is there.
    Met,
    /// It is not.
    Short,
    /// It could not be judged; what is missing is listed.
    NotAssessed,
    /// The rule has nothing to say here.
    DoesNotApply,
    /// It falls short or is judged elsewhere, and somebody has accepted that.
    Variance,
}

impl Outcome {
    /// The word in machine formats.
    pub const fn name(self) -> &'static str {
        match self {
            Outcome::Met => "met",
            Outcome::Short => "short",
            Outcome::NotAssessed => "not-assessed",
            Outcome::DoesNotApply => "does-not-apply",
            Outcome::Variance => "variance",
        }
    }
}

/// What `have` is held against.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// At least this line.
    AtLeast(LineId),
    /// At most this line.
    AtMost(LineId),
    /// Between these two.
    Within(LineId, LineId),
    /// Nothing: it must be yes.
    Holds,
}

/// The comparison that decided an answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Deciding {
    /// What the design has.
    pub have: LineId,
    /// What it is held against.
    pub side: Side,
}

impl Deciding {
    /// All its lines.
    pub fn lines(self) -> Vec<LineId> {
        match self.side {
            Side::AtLeast(limit) | Side::AtMost(limit) => vec![self.have, limit],
            Side::Within(low, high) => vec![self.have, low, high],
            Side::Holds => vec![self.have],
        }
    }
}

/// One answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// Position of the rule in the ruleset.
    pub rule: usize,
    /// The subject; none when the design has none of the kind.
    pub subject: Option<Subject>,
    /// Position of the authority in the table of authorities.
    pub authority: Option<u16>,
    /// The states it was judged in.
    pub case: Case,
    /// The outcome.
    pub outcome: Outcome,
    /// What it would be without the variance.
    pub without_variance: Outcome,
    /// Whether the design's stage owes it.
    pub owed: bool,
    /// What decided it.
    pub deciding: Option<Deciding>,
    /// By how much it is met (positive) or short (negative), SI.
    pub margin: Option<f64>,
    /// All the lines it was made of.
    pub lines: Vec<LineId>,
    /// Lines that are shown beside it and were not judged.
    pub beside: Vec<LineId>,
    /// What is missing; the reasons, when something that must stand does not.
    pub gaps: Vec<Gap>,
    /// Position of the variance that covers it, or covered it until its day.
    pub variance: Option<usize>,
    /// Whether that variance has run out.
    pub expired: bool,
}
