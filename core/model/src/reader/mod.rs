//! The small trait a design is read through, with two implementers: one reads a tree, one describes the document.

mod describe;
mod members;
mod quantities;
mod repeat;
mod shapes;
mod tables;
mod tree;

use haulout_quantity::Measure;

pub use describe::{Described, describe};
pub(crate) use repeat::names;
pub(crate) use tree::TreeReader;

use crate::card::{ChoiceCard, FieldCard, Role};
use crate::compound::{Curve, Level, Link, List, Reference, Track};
use crate::field::{Choice, Flag, Number, Text};
use crate::shape::ShapeField;

/// Reads the members of the object it stands on. Every call names one key; the describing implementer notes it.
pub trait Reader: Sized {
    /// The id every item of a list has; empty when it is missing (the schema says so).
    fn id(&mut self) -> String;
    /// A number.
    fn number<Q: Measure>(&mut self, key: &'static str, card: &'static FieldCard) -> Number<Q>;
    /// A place in the drawing: `[x, y]` or `[x, y, z]`, bare numbers in the drawing's unit.
    fn point<const N: usize>(
        &mut self,
        key: &'static str,
        cards: [&'static FieldCard; N],
    ) -> [Number<haulout_quantity::si::Length>; N];
    /// Counts by sex: `"1.3.0"`, males, females, not sexed.
    fn sexes(
        &mut self,
        key: &'static str,
        card: &'static FieldCard,
    ) -> [Number<haulout_quantity::si::Ratio>; 3];
    /// One of the words of a card.
    fn choice(&mut self, key: &'static str, card: &'static ChoiceCard) -> Choice;
    /// A yes or no.
    fn flag(&mut self, key: &'static str, what: &'static str, role: Role) -> Flag;
    /// Words.
    fn text(&mut self, key: &'static str, what: &'static str) -> Text;
    /// The id of something else in the file.
    fn reference(&mut self, key: &'static str, what: &'static str) -> Link;
    /// Ids of other things in the file.
    fn references(&mut self, key: &'static str, what: &'static str) -> List<Reference>;
    /// An outline.
    fn shape(&mut self, key: &'static str, what: &'static str) -> ShapeField;
    /// An open line in plan: `[[x, y], …]`.
    fn track(&mut self, key: &'static str, what: &'static str) -> Track;
    /// A height over the datum, or hung on another level.
    fn level(&mut self, key: &'static str, card: &'static FieldCard) -> Level;
    /// A pump curve.
    fn curve(&mut self, key: &'static str, what: &'static str) -> Curve;
    /// An object of its own; read also when it is missing, so that what it would hold knows where it would stand.
    fn object<T>(&mut self, key: &'static str, what: &'static str, read: fn(&mut Self) -> T) -> T;
    /// A list of objects.
    fn list<T>(&mut self, key: &'static str, what: &'static str, read: fn(&mut Self) -> T) -> List<T>;
    /// A list of objects that may each be repeated with a step in plan: `"repeat": {"count": 6, "step": [0.9, 0]}`.
    fn repeats<T>(&mut self, key: &'static str, what: &'static str, read: fn(&mut Self) -> T) -> List<T>;
    /// The kind this item is of: what it does not state itself stands at `/kinds/family/name`.
    fn kind(&mut self, family: &'static str) -> Link;
    /// A count of each of some open set of names: `{"elbow-90": 6}`.
    fn counts(
        &mut self,
        key: &'static str,
        card: &'static FieldCard,
        names: &'static [&'static str],
    ) -> List<(String, Number<haulout_quantity::si::Ratio>)>;
}
