//! Streams and falls from one water to another.

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::{Link, List, Track};
use crate::design::weir::{Grille, Weir};
use crate::field::{Choice, Number};
use crate::reader::Reader;
use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, Ratio, Volume};

static STREAM_KIND: ChoiceCard = ChoiceCard {
    what: "kind of stream",
    role: Role::Decision,
    options: &["stream", "fall", "chute"],
    default: None,
};
static STREAM_WIDTH: FieldCard =
    FieldCard::quantity("width of the stream", Dimension::LENGTH, Role::Decision, (0.02, 10.0), 0.01);
static STREAM_FALL: FieldCard =
    FieldCard::quantity("fall of the stream", Dimension::LENGTH, Role::Decision, (0.0, 10.0), 0.01);
static STREAM_ROUGHNESS: FieldCard =
    FieldCard::plain("roughness of the stream bed (Manning's n)", Role::Given, (0.008, 0.2), 0.001);
static STREAM_SIDE_SLOPE: FieldCard =
    FieldCard::plain("slope of its sides", Role::Decision, (0.1, 10.0), 0.05).form(Form::Slope);
static STREAM_PONDED: FieldCard =
    FieldCard::quantity("water that stays in it", Dimension::VOLUME, Role::Decision, (0.0, 20.0), 0.01);
static STREAM_GRIP: ChoiceCard = ChoiceCard {
    what: "surface of the stream bed",
    role: Role::Decision,
    options: &["rough", "cleated", "mesh", "smooth"],
    default: None,
};

/// A stream or a fall from one water to another.
#[derive(Debug, Clone)]
pub struct Stream {
    /// Its id.
    pub id: String,
    /// The space it runs in.
    pub space: Link,
    /// A bed that water runs along, a free fall, or a steep smooth slide.
    pub kind: Choice,
    /// The water circuit that feeds it; its flow, clean, is the flow of the stream.
    pub circuit: Link,
    /// The pool or filter it runs out of.
    pub from: Link,
    /// The pool it runs into.
    pub to: Link,
    /// Its middle line in plan, from its lip to the water it runs into.
    pub line: Track,
    /// Across the bed.
    pub width: Number<Length>,
    /// How much lower its end lies than its beginning, or how far the water falls.
    pub fall: Number<Length>,
    /// Manning's n in SI: about 0.012 smooth concrete, 0.03 to 0.05 pebbles and stones.
    pub roughness: Number<Ratio>,
    /// Rise over run of its sides; "step" where they are upright.
    pub side_slope: Number<Ratio>,
    /// What stands behind its steps when the pump stops and does not run off.
    pub ponded: Number<Volume>,
    /// The lip its water comes over.
    pub lip: Weir,
    /// What claws find in it.
    pub grip: Choice,
    /// Grilles its water passes on the way; each is asked about half blocked.
    pub grilles: List<Grille>,
}

impl Stream {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Stream {
            id: r.id(),
            space: r.reference("space", "space the stream is in"),
            kind: r.choice("kind", &STREAM_KIND),
            circuit: r.reference("circuit", "circuit whose water runs in it"),
            from: r.reference("from", "water it comes from"),
            to: r.reference("to", "water it runs into"),
            line: r.track("line", "line of the stream"),
            width: r.number("width", &STREAM_WIDTH),
            fall: r.number("fall", &STREAM_FALL),
            roughness: r.number("roughness", &STREAM_ROUGHNESS),
            side_slope: r.number("side-slope", &STREAM_SIDE_SLOPE),
            ponded: r.number("ponded", &STREAM_PONDED),
            lip: r.object("lip", "lip of the stream", Weir::read),
            grip: r.choice("grip", &STREAM_GRIP),
            grilles: r.repeats("grilles", "grilles of the stream", Grille::read),
        }
    }
}
