//! Every stated number with its card, by the part of the file that states it: for what is asked of all numbers alike.

use std::collections::HashMap;
use std::sync::Arc;

use haulout_document::Node;
use haulout_quantity::{Dimension, Measure, Parts, Unit};
use rustc_hash::{FxBuildHasher, FxHashMap, FxHashSet};

use crate::card::FieldCard;
use crate::field::{Missing, Origin, Seat, Standing, State, Value};
use crate::ledger::{Ledger, NumberRoot, Patch};
use crate::standing_in::Places;

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
/// The cards of all numbers of a part of the file are a root beside its first number; this far above the part of that.
const CARDS: u8 = 192;

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

/// Notes the numbers of a field: none, one, or both ends of a range.
pub(crate) fn note(noted: &mut Vec<Stated>, seat: Seat, card: &'static FieldCard, state: &State<Value>) {
    let State::Given(Value { parts, unit, standing }) = state else { return };
    let mut one = |value: f64, part: u8| {
        // The parts of a range or a spread are counted from 1; the counts of "1.3.0" are numbered by their seat.
        let origin = if part == 0 { seat.origin } else { seat.origin.part(part) };
        noted.push(Stated { root: NumberRoot { origin, value, unit: *unit, standing: *standing, card } });
    };
    match *parts {
        Parts::One(value) => one(value, 0),
        Parts::Spread { value, .. } => one(value, 1),
        Parts::Range { low, high } => {
            one(low, 1);
            one(high, 2);
        }
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

impl Part {
    /// The cards of its numbers, in their order, as a line; none where it states no number.
    pub fn written<L: Ledger>(&self, ledger: L) -> Option<L::Line<Arc<Vec<Written>>>> {
        let origin = self.numbers.first()?.root.origin;
        let card = |n: &Stated| Written { card: n.root.card, unit: n.root.unit };
        let cards = |_: Patch<'_>| self.numbers.iter().map(card).collect();
        let beside = origin.part(origin.part + CARDS);
        Some(ledger.thing(beside, origin.node + 1, Standing::Settled, cards))
    }
}

pub(crate) fn parts(places: &Places<'_>, numbers: Vec<Stated>, undecided: Vec<Missing>) -> Vec<Part> {
    let mut sorted =
        Sorted { places, parts: Vec::new(), by_node: FxHashMap::default(), by_name: HashMap::new() };
    for missing in undecided {
        sorted.part_of(missing.origin).undecided.push(missing);
    }
    let mut known = FxHashSet::with_capacity_and_hasher(numbers.len(), FxBuildHasher);
    for number in numbers {
        let origin = number.root.origin;
        // What is given has no missing keys; so this much of the origin tells two apart.
        if known.insert((origin.node, origin.part, origin.through)) {
            sorted.part_of(origin).numbers.push(number);
        }
    }
    sorted.parts
}

/// The parts found so far, in the order in which something of theirs was read.
struct Sorted<'p> {
    places: &'p Places<'p>,
    parts: Vec<Part>,
    by_node: FxHashMap<u32, usize>,
    by_name: HashMap<String, usize>,
}

impl Sorted<'_> {
    fn part_of(&mut self, origin: Origin) -> &mut Part {
        let node = Node(origin.through.unwrap_or(origin.node));
        let at = *self.by_node.entry(self.places.outermost_node(node)).or_insert_with(|| {
            let name = self.places.outermost(node);
            *self.by_name.entry(name).or_insert_with_key(|name| {
                self.parts.push(Part { name: name.clone(), numbers: Vec::new(), undecided: Vec::new() });
                self.parts.len() - 1
            })
        });
        &mut self.parts[at]
    }
}
