//! What a rule hands in, and the only comparison of the program.

use std::collections::HashSet;

use haulout_sheet::{Book, GapKind, Gaps, Known, Line, LineId};

use crate::answer::{Deciding, Outcome, Side};

/// What a rule says about a subject, in lines.
#[derive(Debug, Clone)]
pub enum Check {
    /// The first must be at least the second.
    AtLeast(LineId, LineId),
    /// The first must be at most the second.
    AtMost(LineId, LineId),
    /// The first must lie between the second and the third.
    Within(LineId, LineId, LineId),
    /// A yes or no that must be yes.
    Holds(LineId),
    /// Something that must be there to be read or drawn at all: gaps of this kind are the shortfall and say why, in
    /// their own words; gaps of any other kind leave it open.
    Stands(Known<LineId>, GapKind),
    /// One branch is enough; a branch that is met silences the gaps of the others.
    AnyOf(Vec<Known<Check>>),
    /// Every branch is wanted; a branch that falls short silences the gaps of the others.
    AllOf(Vec<Known<Check>>),
    /// Where the first does not hold, the rule does not apply.
    OnlyIf(Box<Known<Check>>, Box<Known<Check>>),
    /// The check alone is judged; the line is shown beside it.
    Beside(Box<Check>, LineId),
}

impl Check {
    /// `have` at least `limit`.
    pub fn at_least<T>(have: Line<T>, limit: Line<T>) -> Self {
        Check::AtLeast(have.id(), limit.id())
    }

    /// `have` at most `limit`.
    pub fn at_most<T>(have: Line<T>, limit: Line<T>) -> Self {
        Check::AtMost(have.id(), limit.id())
    }

    /// `have` between `low` and `high`.
    pub fn within<T>(have: Line<T>, low: Line<T>, high: Line<T>) -> Self {
        Check::Within(have.id(), low.id(), high.id())
    }

    /// `yes` must be yes.
    pub fn holds(yes: Line<bool>) -> Self {
        Check::Holds(yes.id())
    }

    /// `yes` must come about; where it does not, gaps of `kind` are the shortfall.
    pub fn stands(yes: Known<Line<bool>>, kind: GapKind) -> Self {
        Check::Stands(yes.map(Line::id), kind)
    }

    /// The same with a line shown beside it that is never judged; one that cannot be had is left out.
    #[must_use]
    pub fn beside<T>(self, line: Known<Line<T>>) -> Self {
        match line {
            Ok(line) => Check::Beside(Box::new(self), line.id()),
            Err(_) => self,
        }
    }

    /// `then` where `applies` holds, otherwise the rule does not apply.
    pub fn only_if(applies: Known<Check>, then: Known<Check>) -> Self {
        Check::OnlyIf(Box::new(applies), Box::new(then))
    }
}

/// What the comparison found.
#[derive(Debug, Clone, PartialEq)]
pub struct Verdict {
    /// The outcome; never a variance, which is the engine's to give.
    pub outcome: Outcome,
    /// What decided it.
    pub deciding: Option<Deciding>,
    /// By how much it is met (positive) or short (negative), in SI; none where there is no number to compare.
    pub margin: Option<f64>,
    /// Every line any branch was made of: a changed value may change which branch decides.
    pub lines: Vec<LineId>,
    /// What is missing, when it could not be assessed; the reasons, when something does not stand.
    pub gaps: Option<Gaps>,
    /// Lines that are shown beside it and were not judged.
    pub beside: Vec<LineId>,
}

/// Feet to metres and back is good to this: the edge is met.
const RELATIVE: f64 = 1e-9;

/// By how much `have` is at or above `limit`; a difference within the tolerance is none.
pub fn compare(have: f64, limit: f64) -> f64 {
    let margin = have - limit;
    let slack = RELATIVE * have.abs().max(limit.abs());
    if margin.abs() <= slack { 0.0 } else { margin }
}

impl Verdict {
    /// Judges what a rule handed in.
    pub fn of(book: &Book<'_>, known: Known<Check>) -> Self {
        match known {
            Ok(check) => Self::of_check(book, check),
            Err(gaps) => Verdict {
                outcome: Outcome::NotAssessed,
                deciding: None,
                margin: None,
                lines: gaps.0.iter().flat_map(|g| g.lines.iter().copied()).collect(),
                gaps: Some(gaps),
                beside: Vec::new(),
            },
        }
    }

    fn of_check(book: &Book<'_>, check: Check) -> Self {
        let number = |id: LineId| book.record(id).datum.number().unwrap_or(f64::NAN);
        match check {
            Check::AtLeast(have, limit) => {
                let side = Side::AtLeast(limit);
                Self::single(have, side, Some(compare(number(have), number(limit))), vec![have, limit])
            }
            Check::AtMost(have, limit) => {
                let side = Side::AtMost(limit);
                Self::single(have, side, Some(compare(number(limit), number(have))), vec![have, limit])
            }
            Check::Within(have, low, high) => {
                let over_low = compare(number(have), number(low));
                let under_high = compare(number(high), number(have));
                let margin = over_low.min(under_high);
                Self::single(have, Side::Within(low, high), Some(margin), vec![have, low, high])
            }
            Check::Holds(yes) => {
                let mut verdict = Self::single(yes, Side::Holds, None, vec![yes]);
                verdict.outcome = if number(yes) > 0.5 { Outcome::Met } else { Outcome::Short };
                verdict
            }
            Check::Stands(Ok(yes), _) => Self::of_check(book, Check::Holds(yes)),
            Check::Stands(Err(gaps), kind) => Self::fallen(book, gaps, kind),
            Check::AnyOf(branches) => {
                Self::any(book, branches.into_iter().map(|b| Self::of(book, b)).collect())
            }
            Check::AllOf(branches) => {
                Self::every(book, branches.into_iter().map(|b| Self::of(book, b)).collect())
            }
            Check::Beside(check, line) => {
                let mut verdict = Self::of_check(book, *check);
                verdict.beside.push(line);
                verdict
            }
            Check::OnlyIf(applies, then) => Self::only_if(Self::of(book, *applies), || Self::of(book, *then)),
        }
    }

    /// The reasons stay with the answer; the first number among them is what the design has.
    fn fallen(book: &Book<'_>, gaps: Gaps, kind: GapKind) -> Self {
        if gaps.0.iter().all(|g| g.kind != kind) {
            return Self::of(book, Err(gaps));
        }
        let lines = gaps.0.iter().flat_map(|g| g.lines.iter().copied()).collect();
        let reasons: Vec<_> = gaps.0.into_iter().filter(|g| g.kind == kind).collect();
        let numbers = reasons.iter().flat_map(|g| g.lines.first());
        let mut numbers = numbers.filter(|id| book.record(**id).datum.number().is_some());
        let deciding = numbers.next().map(|have| Deciding { have: *have, side: Side::Holds });
        Verdict {
            outcome: Outcome::Short,
            deciding,
            margin: None,
            lines,
            gaps: Some(Gaps(reasons)),
            beside: Vec::new(),
        }
    }

    fn single(have: LineId, side: Side, margin: Option<f64>, lines: Vec<LineId>) -> Self {
        // A number that is none compares as short, never as met.
        let met = margin.is_some_and(|m| m >= 0.0);
        let outcome = if met { Outcome::Met } else { Outcome::Short };
        Verdict {
            outcome,
            deciding: Some(Deciding { have, side }),
            margin,
            lines,
            gaps: None,
            beside: Vec::new(),
        }
    }

    fn any(book: &Book<'_>, branches: Vec<Verdict>) -> Self {
        Self::best(
            book,
            branches,
            &[Outcome::Met, Outcome::NotAssessed, Outcome::Short, Outcome::DoesNotApply],
            true,
        )
    }

    fn every(book: &Book<'_>, branches: Vec<Verdict>) -> Self {
        Self::best(
            book,
            branches,
            &[Outcome::Short, Outcome::NotAssessed, Outcome::Met, Outcome::DoesNotApply],
            false,
        )
    }

    /// The branch with the first of the outcomes that occurs; among equals the one with the largest margin, or the
    /// least where every branch is wanted. Metres and newtons are compared as shares of what is asked.
    fn best(book: &Book<'_>, branches: Vec<Verdict>, order: &[Outcome], largest: bool) -> Self {
        let mut lines: Vec<LineId> = branches.iter().flat_map(|b| b.lines.iter().copied()).collect();
        each_once(&mut lines);
        let wanted = order.iter().copied().find(|wanted| branches.iter().any(|b| b.outcome == *wanted));
        let alike = || branches.iter().filter(|b| Some(b.outcome) == wanted);
        let mut dimensions = alike().filter_map(|v| v.deciding).map(|d| book.record(d.have).dimension);
        let first = dimensions.next();
        let mixed = dimensions.any(|dimension| Some(dimension) != first);
        let rank = |v: &Verdict| {
            let margin = v.margin.unwrap_or(0.0);
            let asked = v.deciding.filter(|_| mixed && margin != 0.0).map(|d| asked(book, d, margin));
            asked.map_or(margin, |asked| margin / asked.abs())
        };
        let found = branches.into_iter().filter(|b| Some(b.outcome) == wanted).reduce(|a, b| {
            if a.outcome == Outcome::NotAssessed {
                return Verdict { gaps: both(a.gaps, b.gaps), ..a };
            }
            let (m, n) = (rank(&a), rank(&b));
            if (n > m) == largest && n != m { b } else { a }
        });
        match found {
            Some(verdict) => Verdict { lines, ..verdict },
            None => Verdict {
                outcome: Outcome::DoesNotApply,
                deciding: None,
                margin: None,
                lines,
                gaps: None,
                beside: Vec::new(),
            },
        }
    }

    fn only_if(applies: Verdict, then: impl FnOnce() -> Verdict) -> Self {
        match applies.outcome {
            Outcome::Met => {
                let mut verdict = then();
                verdict.lines.extend(applies.lines);
                verdict
            }
            Outcome::Short => Verdict { outcome: Outcome::DoesNotApply, ..applies },
            _ => applies,
        }
    }
}

/// The limit that gave a margin; what the design has where that is nothing.
fn asked(book: &Book<'_>, deciding: Deciding, margin: f64) -> f64 {
    let number = |id: LineId| book.record(id).datum.number().unwrap_or(f64::NAN);
    let have = number(deciding.have);
    let limit = match deciding.side {
        Side::AtLeast(limit) | Side::AtMost(limit) => number(limit),
        Side::Within(low, _) if compare(have, number(low)) == margin => number(low),
        Side::Within(_, high) => number(high),
        Side::Holds => 1.0,
    };
    if limit == 0.0 { have } else { limit }
}

/// Lines up to this number are compared with one another.
const FEW: usize = 32;

/// Keeps the first of equal lines, in the order of the check: that in which a book came by its lines depends on what else was asked.
fn each_once(lines: &mut Vec<LineId>) {
    if lines.len() > FEW {
        let mut met = HashSet::new();
        return lines.retain(|line| met.insert(*line));
    }
    let mut kept = 0;
    for at in 0..lines.len() {
        if !lines[..kept].contains(&lines[at]) {
            lines[kept] = lines[at];
            kept += 1;
        }
    }
    lines.truncate(kept);
}

fn both(a: Option<Gaps>, b: Option<Gaps>) -> Option<Gaps> {
    match (a, b) {
        (Some(a), Some(b)) => Some(a.and(b)),
        (one, other) => one.or(other),
    }
}
