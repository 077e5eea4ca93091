//! The tape: every step a script takes while it is run once, in order, shared by all its values.

use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use haulout_quantity::Dimension;
use haulout_sheet::AnyFormula;
use rhai::Position;

use crate::factor::{Factor, factor};
use crate::formula::Operation;
use crate::gather::Gather;

/// Most steps of a script. No rule of the trade comes near; a loop that runs away does.
const MOST_STEPS: usize = 4_096;

/// Most comparisons in one answer, counted as often as they are used, and how deep they may be put together: the
/// engine walks an answer as a tree, on its own stack.
const MOST_CHECKS: usize = 1_024;
const DEEPEST: usize = 32;

/// Where a value comes from.
#[derive(Clone)]
pub(crate) enum Step {
    /// A figure, by its position on the card.
    Figure(usize),
    /// A value of the register, by its position on the card.
    Register(usize),
    /// A limit, by its position on the card.
    Limit(usize),
    /// A figure about each of several subjects, by its position on the card.
    Each(usize),
    /// A number of the script.
    Number(&'static Factor),
    /// Worked from two earlier steps.
    Worked(&'static Operation, usize, usize),
    /// Made of a list and the limits before it, in the order of the formula's arguments.
    Gathered(&'static Gather, usize, [Option<usize>; 3]),
    /// Worked by a formula of the trade.
    Named(&'static dyn AnyFormula, Vec<usize>),
}

impl Step {
    /// The earlier steps it rests on.
    pub(crate) fn rests_on(&self) -> Vec<usize> {
        match self {
            Step::Worked(_, a, b) => vec![*a, *b],
            Step::Gathered(_, list, before) => before.iter().flatten().copied().chain([*list]).collect(),
            Step::Named(_, arguments) => arguments.clone(),
            _ => Vec::new(),
        }
    }
}

/// A part of an answer: comparisons of steps, and combinations of earlier parts.
#[derive(Debug, Clone)]
pub(crate) enum Part {
    AtLeast(usize, usize),
    AtMost(usize, usize),
    Within(usize, usize, usize),
    AnyOf(Vec<usize>),
    AllOf(Vec<usize>),
    OnlyIf(usize, usize),
}

impl Part {
    /// The parts it is put together from.
    pub(crate) fn parts(&self) -> Vec<usize> {
        match self {
            Part::AnyOf(parts) | Part::AllOf(parts) => parts.clone(),
            Part::OnlyIf(applies, then) => vec![*applies, *then],
            _ => Vec::new(),
        }
    }

    /// The steps it compares.
    pub(crate) fn steps(&self) -> Vec<usize> {
        match self {
            Part::AtLeast(have, limit) | Part::AtMost(have, limit) => vec![*have, *limit],
            Part::Within(have, low, high) => vec![*have, *low, *high],
            _ => Vec::new(),
        }
    }
}

/// A part with its size as a tree, its depth, and where the script made it.
pub(crate) struct Made {
    pub(crate) part: Part,
    pub(crate) at: Position,
    size: usize,
    depth: usize,
}

/// What a script has done so far.
#[derive(Default)]
pub(crate) struct Tape {
    pub(crate) steps: Vec<(Step, Dimension)>,
    pub(crate) parts: Vec<Made>,
}

/// A tape that all values of one run hold on to.
pub(crate) type Shared = Arc<Mutex<Tape>>;

/// The tape, to write on. A panic cannot have left it half written: every write is one push.
pub(crate) fn open(tape: &Shared) -> MutexGuard<'_, Tape> {
    tape.lock().unwrap_or_else(PoisonError::into_inner)
}

impl Tape {
    /// Notes a step.
    pub(crate) fn step(&mut self, step: Step, dimension: Dimension) -> Result<usize, String> {
        self.room()?;
        self.steps.push((step, dimension));
        Ok(self.steps.len() - 1)
    }

    fn room(&self) -> Result<(), String> {
        if self.steps.len() < MOST_STEPS {
            return Ok(());
        }
        Err(format!("the script works more than {MOST_STEPS} lines: a rule compares a few"))
    }

    /// Notes a number.
    pub(crate) fn number(&mut self, value: f64) -> Result<usize, String> {
        if !value.is_finite() {
            return Err(format!("{value} is no number to compute with"));
        }
        // Before the number is leaked.
        self.room()?;
        self.step(Step::Number(factor(value)), Dimension::NUMBER)
    }

    /// Notes an operation on two steps.
    pub(crate) fn work(
        &mut self,
        operation: &'static Operation,
        a: usize,
        b: usize,
    ) -> Result<usize, String> {
        let dimension = operation.of(self.steps[a].1, self.steps[b].1).map_err(|clash| clash.message)?;
        self.step(Step::Worked(operation, a, b), dimension)
    }

    /// Notes what is made of a list.
    pub(crate) fn gather(
        &mut self,
        formula: &'static Gather,
        list: usize,
        before: [Option<usize>; 3],
    ) -> Result<usize, String> {
        self.step(Step::Gathered(formula, list, before), formula.dimension(&[]))
    }

    /// Notes a formula of the trade, the arguments of which fit.
    pub(crate) fn formula(
        &mut self,
        formula: &'static dyn AnyFormula,
        arguments: Vec<usize>,
        result: Dimension,
    ) -> Result<usize, String> {
        self.step(Step::Named(formula, arguments), result)
    }

    /// Notes a part of an answer.
    pub(crate) fn part(&mut self, part: Part, at: Position) -> Result<usize, String> {
        let inner = part.parts();
        let size = inner.iter().fold(1_usize, |sum, p| sum.saturating_add(self.parts[*p].size));
        let depth = 1 + inner.iter().map(|p| self.parts[*p].depth).max().unwrap_or(0);
        if size > MOST_CHECKS || depth > DEEPEST || self.parts.len() >= MOST_CHECKS {
            return Err(format!(
                "the answer is put together from more than {MOST_CHECKS} checks or more than {DEEPEST} deep: divide the rule"
            ));
        }
        self.parts.push(Made { part, at, size, depth });
        Ok(self.parts.len() - 1)
    }
}
