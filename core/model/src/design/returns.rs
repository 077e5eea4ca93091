//! Where a circuit gives its water back, the headers that spread it, and the valves on the way.

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::{Level, Link};
use crate::field::{Choice, Number};
use crate::reader::Reader;
use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, Ratio};

static X: FieldCard = FieldCard::quantity("x", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static Y: FieldCard = FieldCard::quantity("y", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static RETURN_LEVEL: FieldCard =
    FieldCard::quantity("level of the return", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static RETURN_ENDS: ChoiceCard = ChoiceCard {
    what: "how the return ends",
    role: Role::Decision,
    options: &["over the water", "under the water"],
    default: None,
};
static RETURN_SIPHON_BREAK: FieldCard =
    FieldCard::quantity("level of the siphon break", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static RETURN_BORE: FieldCard =
    FieldCard::quantity("bore of the return", Dimension::LENGTH, Role::Decision, (0.005, 0.5), 0.001);
static RETURN_SHARE: FieldCard =
    FieldCard::plain("share of the flow", Role::Decision, (0.0, 1.0), 0.01).form(Form::Share);
static HEADER_BORE: FieldCard =
    FieldCard::quantity("bore of the header", Dimension::LENGTH, Role::Decision, (0.005, 0.5), 0.001);
static HEADER_LENGTH: FieldCard =
    FieldCard::quantity("length of the header", Dimension::LENGTH, Role::Decision, (0.1, 20.0), 0.1);
static HEADER_HOLES: FieldCard =
    FieldCard::plain("holes of the header", Role::Decision, (1.0, 2000.0), 1.0).form(Form::Count);
static HEADER_HOLE_BORE: FieldCard =
    FieldCard::quantity("bore of a hole", Dimension::LENGTH, Role::Decision, (0.001, 0.05), 0.0005);
static VALVE_KIND: ChoiceCard = ChoiceCard {
    what: "kind of valve",
    role: Role::Decision,
    options: &["ball", "gate", "check", "throttle", "butterfly", "solenoid", "three-way"],
    default: None,
};
static VALVE_LOSS_COEFFICIENT: FieldCard =
    FieldCard::plain("loss coefficient of the valve", Role::Reading, (0.0, 1000.0), 0.1);
static VALVE_FAILING: ChoiceCard = ChoiceCard {
    what: "how it fails",
    role: Role::Reading,
    options: &["open", "shut", "as it stands"],
    default: None,
};

/// Where a circuit gives its water back.
#[derive(Debug, Clone)]
pub struct Return {
    /// Its id.
    pub id: String,
    /// The pipe run that ends in it; the last one when left out.
    pub run: Link,
    /// The pool, filter or stream its water runs into.
    pub into: Link,
    /// Where it is, in plan.
    pub at: [Number<Length>; 2],
    /// The middle of its outlet.
    pub level: Level,
    /// An end under the water of a raised basin drains it through a stopped pump.
    pub ends: Choice,
    /// Where a hole or a vent lets air in and ends the backward flow.
    pub siphon_break: Level,
    /// The inside diameter of its end: it makes the speed of the jet.
    pub bore: Number<Length>,
    /// How much of the flow of the circuit comes out here, where it has several returns.
    pub share: Number<Ratio>,
    /// A pipe with holes that spreads the water, where it ends in one.
    pub header: Header,
}

/// A pipe with holes that spreads water.
#[derive(Debug, Clone)]
pub struct Header {
    /// The inside diameter.
    pub bore: Number<Length>,
    /// From its feed to its closed end.
    pub length: Number<Length>,
    /// How many holes it has.
    pub holes: Number<Ratio>,
    /// The diameter of one hole.
    pub hole_bore: Number<Length>,
}

/// A valve in a run.
#[derive(Debug, Clone)]
pub struct Valve {
    /// Its id.
    pub id: String,
    /// What it is.
    pub kind: Choice,
    /// At the opening it is run at.
    pub loss_coefficient: Number<Ratio>,
    /// Where it stays when power or a spring fails.
    pub failing: Choice,
}

impl Return {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Return {
            id: r.id(),
            run: r.reference("run", "run that ends there"),
            into: r.reference("into", "water it runs into"),
            at: r.point("at", [&X, &Y]),
            level: r.level("level", &RETURN_LEVEL),
            ends: r.choice("ends", &RETURN_ENDS),
            siphon_break: r.level("siphon-break", &RETURN_SIPHON_BREAK),
            bore: r.number("bore", &RETURN_BORE),
            share: r.number("share", &RETURN_SHARE),
            header: r.object("header", "header", Header::read),
        }
    }
}

impl Header {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Header {
            bore: r.number("bore", &HEADER_BORE),
            length: r.number("length", &HEADER_LENGTH),
            holes: r.number("holes", &HEADER_HOLES),
            hole_bore: r.number("hole-bore", &HEADER_HOLE_BORE),
        }
    }
}

impl Valve {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Valve {
            id: r.id(),
            kind: r.choice("kind", &VALVE_KIND),
            loss_coefficient: r.number("loss-coefficient", &VALVE_LOSS_COEFFICIENT),
            failing: r.choice("failing", &VALVE_FAILING),
        }
    }
}
