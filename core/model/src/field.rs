//! Fields: a seat in the document, what is known there, and the one exit through the ledger.

use std::hash::{Hash, Hasher};
use std::marker::PhantomData;
use std::sync::Arc;

use haulout_quantity::{Measure, Parts, Unit};

use crate::card::{ChoiceCard, FieldCard};
use crate::ledger::{ChoiceRoot, Ledger, NumberRoot};

/// Where a root comes from: a node of the document, which of its numbers, and by what detour it is used.
#[derive(Debug, Clone, Copy, Eq)]
pub struct Origin {
    /// The node; for something absent, the nearest node that is there.
    pub node: u32,
    /// The keys missing below `node`; empty strings where there are none.
    pub tail: [&'static str; 3],
    /// Which number of the node: 0 for the only one, 1.. for the parts of a range, a tolerance or `"1.3.0"`.
    pub part: u8,
    /// The node that uses it, when the value stands in a kind.
    pub through: Option<u32>,
}

impl PartialEq for Origin {
    /// Asked at every use of a stated number: missing keys, which hardly any origin has, are looked at last and only where there
    /// are some.
    fn eq(&self, other: &Self) -> bool {
        let same =
            |(a, b): (&&str, &&str)| a.len() == b.len() && (std::ptr::eq(*a, *b) || a.is_empty() || a == b);
        self.node == other.node
            && self.part == other.part
            && self.through == other.through
            && self.tail.iter().zip(&other.tail).all(same)
    }
}

impl Hash for Origin {
    /// Nearly every origin has no missing keys: these are not looked through letter by letter.
    fn hash<H: Hasher>(&self, state: &mut H) {
        state.write_u64(u64::from(self.node) << 8 | u64::from(self.part));
        state.write_u64(self.through.map_or(u64::MAX, u64::from));
        self.tail.iter().filter(|key| !key.is_empty()).for_each(|key| key.hash(state));
    }
}

impl Origin {
    /// The only number of a node.
    pub const fn at(node: u32) -> Self {
        Origin { node, tail: ["", "", ""], part: 0, through: None }
    }

    /// The same place, another number of it.
    pub const fn part(mut self, part: u8) -> Self {
        self.part = part;
        self
    }

    /// Whether something is missing there.
    pub const fn is_absent(&self) -> bool {
        !self.tail[0].is_empty()
    }
}

/// How far a value can be trusted, strong to weak.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Standing {
    /// A decision or a given: it needs no proof.
    Settled,
    /// Measured, by whom and when stated.
    Measured,
    /// From the maker's sheet.
    Maker,
    /// Hoped for: to be proved at commissioning.
    Declared,
}

impl Standing {
    /// The word the document uses.
    pub const fn name(self) -> &'static str {
        match self {
            Standing::Settled => "settled",
            Standing::Measured => "measured",
            Standing::Maker => "maker",
            Standing::Declared => "declared",
        }
    }
}

/// The four things a place can say.
#[derive(Debug, Clone, PartialEq)]
pub enum State<T> {
    /// The key is not there.
    Absent,
    /// `"none"`, or an empty list: there is none.
    None,
    /// `"to be decided"`.
    Undecided,
    /// A value.
    Given(T),
}

impl<T> State<T> {
    /// The value, if there is one.
    pub const fn given(&self) -> Option<&T> {
        match self {
            State::Given(value) => Some(value),
            _ => None,
        }
    }
}

/// Why nothing can be read at a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum MissingKind {
    /// Not stated.
    Absent,
    /// Said to be none.
    None,
    /// To be decided.
    Undecided,
}

/// A missing value: where it would stand and what it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Missing {
    /// Where it would stand.
    pub origin: Origin,
    /// Why it cannot be read.
    pub kind: MissingKind,
    /// What it is, in the words of its card.
    pub what: &'static str,
}

/// The place of a field and its words.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Seat {
    /// Where it stands or would stand.
    pub origin: Origin,
    /// What it is.
    pub what: &'static str,
}

impl Seat {
    pub(crate) fn missing<T>(&self, state: &State<T>) -> Missing {
        let kind = match state {
            State::Absent | State::Given(_) => MissingKind::Absent,
            State::None => MissingKind::None,
            State::Undecided => MissingKind::Undecided,
        };
        Missing { origin: self.origin, kind, what: self.what }
    }
}

/// A number as read.
#[derive(Debug, Clone, PartialEq)]
pub struct Value {
    pub(crate) parts: Parts,
    pub(crate) unit: Option<&'static Unit>,
    pub(crate) standing: Standing,
}

/// A stated number of the kind `Q`; private but through the ledger.
#[derive(Debug, Clone)]
pub struct Number<Q> {
    pub(crate) seat: Seat,
    pub(crate) card: &'static FieldCard,
    pub(crate) state: State<Value>,
    /// The step of a repeat and how often it is taken, as numbers on their way to the ledger; few
    /// numbers have one, so that the others are spared its room.
    pub(crate) moved: Option<Box<[NumberRoot; 2]>>,
    pub(crate) kind: PhantomData<Q>,
}

impl<Q: Measure> Number<Q> {
    /// The number itself: the only one, or the nominal one of a spread. Of a range its lower end; who wants the other
    /// end says [`Number::high`].
    ///
    /// # Errors
    /// A gap when nothing is stated and the card has no default.
    pub fn on<L: Ledger>(&self, ledger: L) -> Result<L::Line<Q>, L::Gap> {
        self.take(ledger, false)
    }

    /// The lower end of a range, or the only number.
    ///
    /// # Errors
    /// As [`Number::on`].
    pub fn low<L: Ledger>(&self, ledger: L) -> Result<L::Line<Q>, L::Gap> {
        self.take(ledger, false)
    }

    /// The upper end of a range, or the only number.
    ///
    /// # Errors
    /// As [`Number::on`].
    pub fn high<L: Ledger>(&self, ledger: L) -> Result<L::Line<Q>, L::Gap> {
        self.take(ledger, true)
    }

    fn take<L: Ledger>(&self, ledger: L, high: bool) -> Result<L::Line<Q>, L::Gap> {
        let State::Given(given) = &self.state else {
            return match (&self.state, self.card.default) {
                (State::Absent, Some(_)) => Ok(ledger.default(self.seat.origin, self.card)),
                _ => Err(ledger.missing(self.seat.missing(&self.state))),
            };
        };
        let (value, part) = match given.parts {
            // One of several counts in a text keeps its own part.
            Parts::One(value) => (value, self.seat.origin.part),
            Parts::Spread { value, .. } => (value, 1),
            Parts::Range { low, .. } if !high => (low, 1),
            Parts::Range { high, .. } => (high, 2),
        };
        let root = NumberRoot {
            origin: self.seat.origin.part(part),
            value,
            unit: given.unit,
            standing: given.standing,
            card: self.card,
        };
        match self.moved.as_deref() {
            Some([step, times]) => ledger.moved(root, *step, *times),
            None => Ok(ledger.number(root)),
        }
    }

    /// Where it stands or would stand.
    pub const fn seat(&self) -> Seat {
        self.seat
    }

    /// Whether the file states a value here.
    pub const fn is_given(&self) -> bool {
        matches!(self.state, State::Given(_))
    }

    /// Whether the file says that there is none.
    pub const fn is_none(&self) -> bool {
        matches!(self.state, State::None)
    }
}

/// What a line of a choice holds: the number of one of the words of its card.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Word;

/// A choice between the words of its card.
#[derive(Debug, Clone)]
pub struct Choice {
    pub(crate) seat: Seat,
    pub(crate) card: &'static ChoiceCard,
    pub(crate) state: State<(u16, Standing)>,
}

impl Choice {
    /// The choice as a line that counts the options of the card from 0.
    ///
    /// # Errors
    /// A gap when nothing is chosen; a card's default counts as chosen.
    pub fn on<L: Ledger>(&self, ledger: L) -> Result<L::Line<Word>, L::Gap> {
        match &self.state {
            State::Given((option, standing)) => Ok(ledger.choice(ChoiceRoot {
                origin: self.seat.origin,
                option: *option,
                standing: *standing,
                card: Some(self.card),
            })),
            other => Err(ledger.missing(self.seat.missing(other))),
        }
    }

    /// The word itself, for reading aloud and for walking the document; never for deciding an answer.
    pub fn word(&self) -> Option<&'static str> {
        self.state.given().and_then(|(option, _)| self.card.options.get(*option as usize)).copied()
    }
}

/// A yes or no as the file says it.
#[derive(Debug, Clone)]
pub struct Flag {
    pub(crate) seat: Seat,
    pub(crate) state: State<(bool, Standing)>,
}

impl Flag {
    /// Yes as 1, no as 0.
    ///
    /// # Errors
    /// A gap when it is not stated.
    pub fn on<L: Ledger>(&self, ledger: L) -> Result<L::Line<bool>, L::Gap> {
        match &self.state {
            State::Given((yes, standing)) => Ok(ledger.choice(ChoiceRoot {
                origin: self.seat.origin,
                option: u16::from(*yes),
                standing: *standing,
                card: None,
            })),
            other => Err(ledger.missing(self.seat.missing(other))),
        }
    }
}

/// Words that nothing is worked out of: a title, a name, a date.
#[derive(Debug, Clone)]
pub struct Text {
    pub(crate) seat: Seat,
    pub(crate) state: State<String>,
}

impl Text {
    /// The words, if they are stated.
    pub fn words(&self) -> Option<&str> {
        self.state.given().map(String::as_str)
    }

    /// Where they stand or would stand.
    pub const fn seat(&self) -> Seat {
        self.seat
    }

    /// The words as a line, for a look-up in a register.
    ///
    /// # Errors
    /// A gap when nothing is stated.
    pub fn on<L: Ledger>(&self, ledger: L) -> Result<L::Line<Arc<String>>, L::Gap> {
        match &self.state {
            State::Given(words) => {
                let origin = self.seat.origin;
                Ok(ledger.thing(origin, origin.node + 1, Standing::Settled, |_| words.clone()))
            }
            other => Err(ledger.missing(self.seat.missing(other))),
        }
    }
}
