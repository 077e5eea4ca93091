//! Every stated number with its card, by the part of the file that states it: for what is asked of all numbers alike.

use std::sync::Arc;

use haulout_document::{Node, Tree};
use haulout_quantity::{Dimension, Measure, Parts, Unit};

use crate::card::FieldCard;
use crate::directory::{ancestors, id_of};
use crate::field::{Missing, Origin, Seat, State, Value};
use crate::ledger::{Ledger, NumberRoot};

/// A stated number whose kind is known by its card only.
#[derive(Debug, Clone, Copy)]
pub struct Stated {
    root: NumberRoot,
}

/// The card of a stated number as a line can hold it, with the unit the designer wrote.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Written {
    /// The card.
    pub card: &'static FieldCard,
    /// The unit; none for plain numbers.
    pub unit: Option<&'static Unit>,
}

/// The card of a number is a root beside the number at the same node; this far above its part.
const CARD: u8 = 128;

impl Stated {
    /// The dimension of its card.
    pub const fn dimension(&self) -> Dimension {
        self.root.card.dimension
    }

    /// The number as a line; `Q` has the dimension of the card.
    pub fn on<Q: Measure, L: Ledger>(&self, ledger: L) -> L::Line<Q> {
        ledger.number(self.root)
    }

    /// Its card as a line.
    pub fn written<L: Ledger>(&self, ledger: L) -> L::Line<Arc<Written>> {
        let NumberRoot { origin, standing, card, unit, .. } = self.root;
        ledger.thing(origin.part(origin.part + CARD), origin.node + 1, standing, |_| Written { card, unit })
    }
}

/// The numbers of a field: none, one, or both ends of a range.
pub(crate) fn numbers(seat: Seat, card: &'static FieldCard, state: &State<Value>) -> Vec<Stated> {
    let State::Given(Value { parts, unit, standing }) = state else { return Vec::new() };
    let one = |value: f64, part: u8| {
        // The parts of a range or a spread are counted from 1; the counts of "1.3.0" are numbered by their seat.
        let origin = if part == 0 { seat.origin } else { seat.origin.part(part) };
        Stated { root: NumberRoot { origin, value, unit: *unit, standing: *standing, card } }
    };
    match *parts {
        Parts::One(value) => vec![one(value, 0)],
        Parts::Spread { value, .. } => vec![one(value, 1)],
        Parts::Range { low, high } => vec![one(low, 1), one(high, 2)],
    }
}

/// A part of the file that states numbers: the outermost thing with an id, or a member of the top level.
#[derive(Debug, Clone)]
pub struct Part {
    /// The id, or the key of the member.
    pub name: String,
    /// Its numbers, in the order of the file.
    pub numbers: Vec<Stated>,
    /// Its numbers that are to be decided.
    pub undecided: Vec<Missing>,
}

pub(crate) fn parts(tree: &Tree, numbers: Vec<Stated>, undecided: Vec<Missing>) -> Vec<Part> {
    let mut parts: Vec<Part> = Vec::new();
    for missing in undecided {
        part_of(&mut parts, tree, missing.origin).undecided.push(missing);
    }
    for number in numbers {
        let origin = number.root.origin;
        let part = part_of(&mut parts, tree, origin);
        if !part.numbers.iter().any(|n| n.root.origin == origin) {
            part.numbers.push(number);
        }
    }
    parts
}

fn part_of<'p>(parts: &'p mut Vec<Part>, tree: &Tree, origin: Origin) -> &'p mut Part {
    let name = outermost(tree, Node(origin.through.unwrap_or(origin.node)));
    let at = parts.iter().position(|p| p.name == name).unwrap_or_else(|| {
        parts.push(Part { name, numbers: Vec::new(), undecided: Vec::new() });
        parts.len() - 1
    });
    &mut parts[at]
}

fn outermost(tree: &Tree, node: Node) -> String {
    let chain: Vec<Node> = ancestors(tree, node).collect();
    let top = || chain.last().and_then(|n| tree.key(*n)).unwrap_or_default().into_owned();
    chain.iter().rev().find_map(|n| id_of(tree, *n)).unwrap_or_else(top)
}
