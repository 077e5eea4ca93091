//! The reading implementer: stands on an object of the tree, notes problems, goes on.

use haulout_document::{Kind, Node, Problem, Tree};
use haulout_quantity::Measure;
use haulout_quantity::si::{Length, Ratio};

use super::Reader;
use super::repeat::Copy;
use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::{Curve, Level, Link, List, Reference, Track};
use crate::directory::Noted;
use crate::field::{Choice, Flag, MissingKind, Number, Origin, Seat, Standing, State, Text, Value};
use crate::shape::ShapeField;
use crate::stated::note;

/// Where the reader stands.
#[derive(Clone, Copy)]
enum Here {
    /// On an object; what it lacks may stand in its kind. Its members are noted from this position on.
    At(Node, Option<Node>, usize),
    /// On nothing: the object is missing, for this reason, at this place.
    Missing(Origin, MissingKind),
}

/// What a key holds.
#[derive(Clone, Copy)]
pub(super) enum Slot {
    /// A value node, after a standing has been taken off, with the place for its lines.
    Value(Node, Origin, Option<Standing>),
    /// Nothing.
    Missing(Origin, MissingKind),
}

impl Slot {
    pub(super) fn state<T>(kind: MissingKind) -> State<T> {
        match kind {
            MissingKind::Absent => State::Absent,
            MissingKind::None => State::None,
            MissingKind::Undecided => State::Undecided,
        }
    }
}

/// Reads a tree into a design.
pub(crate) struct TreeReader<'t> {
    pub(super) tree: &'t Tree,
    pub(super) problems: Vec<Problem>,
    pub(super) drawing_unit: f64,
    pub(super) noted: Noted,
    pub(super) copy: Option<Copy>,
    kinds: Option<Node>,
    here: Here,
    /// The members of the objects the reader stands in, each object's behind those of the one around it: all keys of
    /// an object are asked for one after the other, and this finds them without a walk through what they hold.
    pub(super) members: Vec<(u64, Node)>,
}

impl<'t> TreeReader<'t> {
    pub(crate) fn new(tree: &'t Tree) -> Self {
        let root = tree.root();
        let kinds = tree.member(root, "kinds");
        let mut reader = TreeReader {
            tree,
            problems: Vec::new(),
            drawing_unit: 1.0,
            noted: Noted::default(),
            copy: None,
            kinds,
            here: Here::At(root, None, 0),
            members: Vec::new(),
        };
        reader.note_members(root);
        reader
    }

    /// Takes the unit of bare coordinates from `/drawing/unit` before anything is drawn.
    pub(crate) fn with_drawing_unit(mut self) -> Self {
        let unit = self.tree.member(self.tree.root(), "drawing").and_then(|d| self.tree.member(d, "unit"));
        if let Some(node) = unit {
            match self.tree.string(node).as_deref().and_then(haulout_quantity::unit) {
                Some(unit) if unit.dimension == haulout_quantity::Dimension::LENGTH => {
                    self.drawing_unit = unit.factor
                }
                _ => self.problem(
                    node,
                    "the unit of the drawing is one of length, such as \"m\", \"mm\" or \"ft\"".to_owned(),
                ),
            }
        }
        self
    }

    pub(crate) fn into_problems(self) -> Vec<Problem> {
        self.problems
    }

    /// What was noted on the way, once.
    pub(crate) fn noted(&mut self) -> Noted {
        std::mem::take(&mut self.noted)
    }

    pub(super) fn problem(&mut self, node: Node, message: String) {
        self.problems.push(Problem { message, span: self.tree.span(node), also: Vec::new() });
    }

    pub(super) fn slot(&mut self, key: &'static str) -> Slot {
        match self.here {
            Here::Missing(origin, kind) => Slot::Missing(below(origin, key), kind),
            Here::At(node, kind, from) => {
                let own = self.own_member(from, key).map(|value| (value, None));
                let found = own.or_else(|| {
                    kind.and_then(|k| self.tree.member(k, key)).map(|value| (value, Some(node.0)))
                });
                match found {
                    None => Slot::Missing(below(Origin::at(node.0), key), MissingKind::Absent),
                    Some((value, through)) => self.value(value, through),
                }
            }
        }
    }

    /// Looks through a standing and recognises the words for nothing.
    pub(super) fn value(&mut self, node: Node, through: Option<u32>) -> Slot {
        let (node, standing) = self.standing(node);
        let origin = Origin { through, ..Origin::at(node.0) };
        match self.tree.kind(node) {
            Kind::String if self.tree.says(node, "none") => Slot::Missing(origin, MissingKind::None),
            Kind::String if self.tree.says(node, "to be decided") => {
                Slot::Missing(origin, MissingKind::Undecided)
            }
            Kind::Null => {
                self.problem(node, "null says nothing here: leave the key out if it is not stated, or write \"none\" or \"to be decided\"".to_owned());
                Slot::Missing(origin, MissingKind::Absent)
            }
            _ => Slot::Value(node, origin, standing),
        }
    }

    fn standing(&mut self, node: Node) -> (Node, Option<Standing>) {
        let value = if self.tree.kind(node) == Kind::Object { self.tree.member(node, "value") } else { None };
        let Some(value) = value else { return (node, None) };
        let status = self.tree.member(node, "status").and_then(|s| self.tree.string(s));
        let standing = match status.as_deref() {
            Some("measured") => Some(Standing::Measured),
            Some("maker") => Some(Standing::Maker),
            Some("declared") => Some(Standing::Declared),
            _ => None,
        };
        (value, standing)
    }

    /// The number of a card at a slot, with its seat.
    pub(super) fn number_at<Q>(&mut self, slot: Slot, card: &'static FieldCard) -> Number<Q> {
        let (origin, state) = match slot {
            Slot::Missing(origin, kind) => (origin, Slot::state(kind)),
            // "step" is the trade's word for no slope at all.
            Slot::Value(node, origin, _) if card.form == Form::Slope && self.tree.says(node, "step") => {
                (origin, State::None)
            }
            Slot::Value(node, origin, standing) => {
                let read = self.quantity(node, card, standing);
                (origin, read.map_or(State::Absent, State::Given))
            }
        };
        self.number_of(Seat { origin, what: card.what }, card, state)
    }

    /// Every number is made here, so that none is missing among the noted ones.
    pub(super) fn number_of<Q>(
        &mut self,
        seat: Seat,
        card: &'static FieldCard,
        state: State<Value>,
    ) -> Number<Q> {
        note(&mut self.noted.numbers, seat, card, &state);
        if matches!(state, State::Undecided) {
            self.noted.undecided.push(seat.missing(&state));
        }
        Number { seat, card, state, moved: None, kind: std::marker::PhantomData }
    }

    /// What is read standing on an item of a list.
    pub(super) fn inside<T>(&mut self, item: Node, read: fn(&mut Self) -> T) -> T {
        let from = self.members.len();
        self.note_members(item);
        let value = self.standing_on(Here::At(item, None, from), read);
        self.members.truncate(from);
        value
    }

    fn standing_on<T>(&mut self, here: Here, read: fn(&mut Self) -> T) -> T {
        let outer = std::mem::replace(&mut self.here, here);
        let value = read(self);
        self.here = outer;
        value
    }

    pub(super) fn wrong(&mut self, node: Node, what: &str, expected: &str) {
        let typed = self.tree.span(node).of(self.tree.text()).chars().take(40).collect::<String>();
        self.problem(node, format!("{what}: {expected} is expected here, not {typed}"));
    }

    pub(super) fn reference_at(
        &mut self,
        node: Node,
        through: Option<u32>,
        what: &'static str,
    ) -> Option<Reference> {
        match self.tree.string(node) {
            Some(name) => {
                let origin = Origin { through, ..Origin::at(node.0) };
                let reference = Reference { seat: Seat { origin, what }, name: name.into_owned() };
                self.noted.references.push((reference.clone(), None));
                Some(reference)
            }
            None => {
                self.wrong(node, what, "the id of something in this file, as a string,");
                None
            }
        }
    }
}

fn below(mut origin: Origin, key: &'static str) -> Origin {
    if let Some(free) = origin.tail.iter_mut().find(|t| t.is_empty()) {
        *free = key;
    }
    origin
}

impl Reader for TreeReader<'_> {
    fn id(&mut self) -> String {
        match self.slot("id") {
            Slot::Value(node, ..) => {
                let id = self.tree.string(node).map(std::borrow::Cow::into_owned).unwrap_or_default();
                self.copy.map_or(id.clone(), |copy| copy.name(&id))
            }
            Slot::Missing(..) => String::new(),
        }
    }

    fn number<Q: Measure>(&mut self, key: &'static str, card: &'static FieldCard) -> Number<Q> {
        let slot = self.slot(key);
        self.number_at(slot, card)
    }

    fn point<const N: usize>(
        &mut self,
        key: &'static str,
        cards: [&'static FieldCard; N],
    ) -> [Number<Length>; N] {
        let slot = self.slot(key);
        self.point_at(slot, cards)
    }

    fn sexes(&mut self, key: &'static str, card: &'static FieldCard) -> [Number<Ratio>; 3] {
        let slot = self.slot(key);
        self.sexes_at(slot, card)
    }

    fn choice(&mut self, key: &'static str, card: &'static ChoiceCard) -> Choice {
        let (origin, state) = match self.slot(key) {
            Slot::Missing(origin, kind) => (origin, Slot::state(kind)),
            Slot::Value(node, origin, standing) => (origin, self.option(node, card, standing)),
        };
        Choice { seat: Seat { origin, what: card.what }, card, state }
    }

    fn flag(&mut self, key: &'static str, what: &'static str, role: Role) -> Flag {
        let (origin, state) = match self.slot(key) {
            Slot::Missing(origin, kind) => (origin, Slot::state(kind)),
            Slot::Value(node, origin, standing) => {
                let standing = standing.unwrap_or(own_standing(role));
                let state = match self.tree.kind(node) {
                    Kind::True => State::Given((true, standing)),
                    Kind::False => State::Given((false, standing)),
                    _ => {
                        self.wrong(node, what, "true or false");
                        State::Absent
                    }
                };
                (origin, state)
            }
        };
        Flag { seat: Seat { origin, what }, state }
    }

    fn text(&mut self, key: &'static str, what: &'static str) -> Text {
        let (origin, state) = match self.slot(key) {
            Slot::Missing(origin, kind) => (origin, Slot::state(kind)),
            Slot::Value(node, origin, _) => match self.tree.string(node) {
                Some(words) => (origin, State::Given(words.into_owned())),
                None => {
                    self.wrong(node, what, "a string");
                    (origin, State::Absent)
                }
            },
        };
        Text { seat: Seat { origin, what }, state }
    }

    fn reference(&mut self, key: &'static str, what: &'static str) -> Link {
        let (origin, state) = match self.slot(key) {
            Slot::Missing(origin, kind) => (origin, Slot::state(kind)),
            Slot::Value(node, origin, _) => {
                let reference = self.reference_at(node, origin.through, what);
                (origin, reference.map_or(State::Absent, State::Given))
            }
        };
        Link { seat: Seat { origin, what }, state }
    }

    fn references(&mut self, key: &'static str, what: &'static str) -> List<Reference> {
        let (origin, state) = match self.slot(key) {
            Slot::Missing(origin, kind) => (origin, Slot::state(kind)),
            Slot::Value(node, origin, _) if self.tree.kind(node) == Kind::Array => {
                let items: Vec<Node> = self.tree.children(node).collect();
                let read: Vec<Reference> =
                    items.into_iter().filter_map(|n| self.reference_at(n, origin.through, what)).collect();
                (origin, if read.is_empty() { State::None } else { State::Given(read) })
            }
            Slot::Value(node, origin, _) => {
                self.wrong(node, what, "a list of ids");
                (origin, State::Absent)
            }
        };
        List { seat: Seat { origin, what }, state }
    }

    fn shape(&mut self, key: &'static str, what: &'static str) -> ShapeField {
        let slot = self.slot(key);
        self.shape_at(slot, what)
    }

    fn track(&mut self, key: &'static str, what: &'static str) -> Track {
        let slot = self.slot(key);
        self.track_at(slot, what)
    }

    fn level(&mut self, key: &'static str, card: &'static FieldCard) -> Level {
        let slot = self.slot(key);
        self.level_at(slot, card)
    }

    fn curve(&mut self, key: &'static str, what: &'static str) -> Curve {
        let slot = self.slot(key);
        self.curve_at(slot, what)
    }

    fn object<T>(&mut self, key: &'static str, what: &'static str, read: fn(&mut Self) -> T) -> T {
        let here = match self.slot(key) {
            Slot::Missing(origin, kind) => Here::Missing(origin, kind),
            Slot::Value(node, origin, _) if self.tree.kind(node) != Kind::Object => {
                self.wrong(node, what, "an object");
                Here::Missing(origin, MissingKind::Absent)
            }
            Slot::Value(node, ..) => return self.inside(node, read),
        };
        self.standing_on(here, read)
    }

    fn list<T>(&mut self, key: &'static str, what: &'static str, read: fn(&mut Self) -> T) -> List<T> {
        self.list_by(key, what, |r, n, items| items.push(r.inside(n, read)))
    }

    fn repeats<T>(&mut self, key: &'static str, what: &'static str, read: fn(&mut Self) -> T) -> List<T> {
        self.list_by(key, what, |r, n, items| items.extend(r.copies(n, read)))
    }

    fn kind(&mut self, family: &'static str) -> Link {
        let link = self.reference("kind", "kind");
        if let (Some(_), Some(noted)) = (link.name(), self.noted.references.last_mut()) {
            noted.1 = Some(family);
        }
        if let (Here::At(node, _, from), Some(name)) = (self.here, link.name()) {
            let family = self.kinds.and_then(|kinds| self.tree.member(kinds, family));
            self.here = Here::At(node, family.and_then(|family| self.tree.member(family, name)), from);
        }
        link
    }

    fn counts(
        &mut self,
        key: &'static str,
        card: &'static FieldCard,
        names: &'static [&'static str],
    ) -> List<(String, Number<Ratio>)> {
        let slot = self.slot(key);
        self.counts_at(slot, card, names)
    }
}

/// A bare reading or promise is hoped for until somebody says otherwise; decisions and givens need no proof.
pub(super) const fn own_standing(role: Role) -> Standing {
    match role {
        Role::Reading | Role::Promise => Standing::Declared,
        Role::Decision | Role::Given => Standing::Settled,
    }
}
