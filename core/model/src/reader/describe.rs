//! The describing implementer: it reads nothing and notes every key the reading code asks for, with its card.

use std::marker::PhantomData;

use haulout_quantity::Measure;
use haulout_quantity::si::{Length, Ratio};

use super::Reader;
use crate::card::{ChoiceCard, FieldCard, Role};
use crate::compound::{Curve, Level, Link, List, Reference, Track};
use crate::design::Design;
use crate::field::{Choice, Flag, Number, Origin, Seat, State, Text};
use crate::shape::ShapeField;

/// One key of the document as the reading code knows it.
#[derive(Debug, Clone, PartialEq)]
pub struct Described {
    /// The key.
    pub key: &'static str,
    /// What stands there: `number`, `choice`, `flag`, `text`, `id`, `reference`, `references`, `shape`, `level`,
    /// `curve`, `point`, `sexes`, `counts`, `object`, `list`, `kind`.
    pub form: &'static str,
    /// What it is, in words.
    pub what: &'static str,
    /// The card of a number.
    pub card: Option<&'static FieldCard>,
    /// The card of a choice.
    pub choice: Option<&'static ChoiceCard>,
    /// Who may change a yes or no.
    pub role: Option<Role>,
    /// The keys of an object or of the objects of a list.
    pub members: Vec<Described>,
}

/// Describes the whole document: the members of its top level.
pub fn describe() -> Vec<Described> {
    let mut describer = Describer { members: Vec::new() };
    let _ = Design::members(&mut describer);
    describer.members
}

struct Describer {
    members: Vec<Described>,
}

const NOWHERE: Origin = Origin::at(0);

impl Describer {
    fn note(&mut self, key: &'static str, form: &'static str, what: &'static str) -> &mut Described {
        // A key asked for twice (once for each alternative of its form) is noted once.
        let at = self.members.iter().position(|m| m.key == key).unwrap_or_else(|| {
            self.members.push(Described {
                key,
                form,
                what,
                card: None,
                choice: None,
                role: None,
                members: Vec::new(),
            });
            self.members.len() - 1
        });
        &mut self.members[at]
    }

    fn inside<T>(
        &mut self,
        key: &'static str,
        form: &'static str,
        what: &'static str,
        read: fn(&mut Self) -> T,
    ) -> T {
        let mut inner = Describer { members: Vec::new() };
        let value = read(&mut inner);
        self.note(key, form, what).members = inner.members;
        value
    }
}

fn seat(what: &'static str) -> Seat {
    Seat { origin: NOWHERE, what }
}

fn no_number<Q>(card: &'static FieldCard) -> Number<Q> {
    Number { seat: seat(card.what), card, state: State::Absent, moved: None, kind: PhantomData }
}

impl Reader for Describer {
    fn id(&mut self) -> String {
        self.note("id", "id", "id");
        String::new()
    }
    fn number<Q: Measure>(&mut self, key: &'static str, card: &'static FieldCard) -> Number<Q> {
        debug_assert!(card.dimension == Q::DIMENSION, "{key}: card and type differ in dimension");
        self.note(key, "number", card.what).card = Some(card);
        no_number(card)
    }
    fn point<const N: usize>(
        &mut self,
        key: &'static str,
        cards: [&'static FieldCard; N],
    ) -> [Number<Length>; N] {
        self.note(key, "point", "place in the drawing");
        cards.map(no_number)
    }
    fn sexes(&mut self, key: &'static str, card: &'static FieldCard) -> [Number<Ratio>; 3] {
        self.note(key, "sexes", card.what).card = Some(card);
        [no_number(card), no_number(card), no_number(card)]
    }
    fn choice(&mut self, key: &'static str, card: &'static ChoiceCard) -> Choice {
        self.note(key, "choice", card.what).choice = Some(card);
        Choice { seat: seat(card.what), card, state: State::Absent }
    }
    fn flag(&mut self, key: &'static str, what: &'static str, role: Role) -> Flag {
        self.note(key, "flag", what).role = Some(role);
        Flag { seat: seat(what), state: State::Absent }
    }
    fn text(&mut self, key: &'static str, what: &'static str) -> Text {
        self.note(key, "text", what);
        Text { seat: seat(what), state: State::Absent }
    }
    fn reference(&mut self, key: &'static str, what: &'static str) -> Link {
        self.note(key, "reference", what);
        Link { seat: seat(what), state: State::Absent }
    }
    fn references(&mut self, key: &'static str, what: &'static str) -> List<Reference> {
        self.note(key, "references", what);
        List { seat: seat(what), state: State::Absent }
    }
    fn shape(&mut self, key: &'static str, what: &'static str) -> ShapeField {
        self.note(key, "shape", what);
        ShapeField { seat: seat(what), state: State::Absent }
    }
    fn track(&mut self, key: &'static str, what: &'static str) -> Track {
        self.note(key, "track", what);
        Track { seat: seat(what), end: 0, state: State::Absent }
    }
    fn level(&mut self, key: &'static str, card: &'static FieldCard) -> Level {
        self.note(key, "level", card.what).card = Some(card);
        Level { seat: seat(card.what), state: State::Absent }
    }
    fn curve(&mut self, key: &'static str, what: &'static str) -> Curve {
        self.note(key, "curve", what);
        Curve { seat: seat(what), end: 0, standing: crate::field::Standing::Maker, state: State::Absent }
    }
    fn object<T>(&mut self, key: &'static str, what: &'static str, read: fn(&mut Self) -> T) -> T {
        self.inside(key, "object", what, read)
    }
    fn list<T>(&mut self, key: &'static str, what: &'static str, read: fn(&mut Self) -> T) -> List<T> {
        let _ = self.inside(key, "list", what, read);
        List { seat: seat(what), state: State::Absent }
    }
    fn repeats<T>(&mut self, key: &'static str, what: &'static str, read: fn(&mut Self) -> T) -> List<T> {
        let list = self.list(key, what, read);
        let at = self.members.iter().position(|m| m.key == key).unwrap_or_default();
        let mut inner = Describer { members: std::mem::take(&mut self.members[at].members) };
        inner.note("repeat", "repeat", "repeat of the item");
        self.members[at].members = inner.members;
        list
    }
    fn kind(&mut self, _family: &'static str) -> Link {
        self.note("kind", "kind", "kind");
        Link { seat: seat("kind"), state: State::Absent }
    }
    fn counts(
        &mut self,
        key: &'static str,
        card: &'static FieldCard,
        _names: &'static [&'static str],
    ) -> List<(String, Number<Ratio>)> {
        self.note(key, "counts", card.what).card = Some(card);
        List { seat: seat(card.what), state: State::Absent }
    }
}
