//! Ways out of the water, places to rest in it, and openings an animal may get into.

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::Level;
use crate::field::{Choice, Flag, Number};
use crate::reader::Reader;
use crate::shape::ShapeField;
use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, Ratio};

static X: FieldCard = FieldCard::quantity("x", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static Y: FieldCard = FieldCard::quantity("y", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static EXIT_KIND: ChoiceCard = ChoiceCard {
    what: "kind of exit",
    role: Role::Decision,
    options: &["ramp", "beach", "steps", "root", "net"],
    default: None,
};
static EXIT_SLOPE: FieldCard =
    FieldCard::plain("slope of the exit", Role::Decision, (0.05, 2.0), 0.05).form(Form::Slope);
static EXIT_WIDTH: FieldCard =
    FieldCard::quantity("width of the exit", Dimension::LENGTH, Role::Decision, (0.02, 10.0), 0.01);
static EXIT_FOOT: FieldCard =
    FieldCard::quantity("foot of the exit", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static EXIT_TOP: FieldCard =
    FieldCard::quantity("top of the exit", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static EXIT_GRIP: ChoiceCard = ChoiceCard {
    what: "surface of the exit",
    role: Role::Decision,
    options: &["rough", "cleated", "mesh", "smooth"],
    default: None,
};
static LEDGE_KIND: ChoiceCard = ChoiceCard {
    what: "kind of ledge",
    role: Role::Decision,
    options: &["shelf", "root", "log", "ledge", "plant", "raft"],
    default: None,
};
static LEDGE_LEVEL: FieldCard =
    FieldCard::quantity("top of the ledge", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static LEDGE_SLOPE: FieldCard =
    FieldCard::plain("slope up to the ledge", Role::Decision, (0.05, 5.0), 0.05).form(Form::Slope);
static LEDGE_GRIP: ChoiceCard = ChoiceCard {
    what: "surface of the ledge",
    role: Role::Decision,
    options: &["rough", "cleated", "mesh", "smooth"],
    default: None,
};
static OPENING_KIND: ChoiceCard = ChoiceCard {
    what: "kind of opening",
    role: Role::Decision,
    options: &["gap", "hollow", "slot", "pipe", "throat"],
    default: None,
};
static OPENING_SIZE: FieldCard =
    FieldCard::quantity("clear width of the opening", Dimension::LENGTH, Role::Decision, (0.001, 2.0), 0.005);
static OPENING_HEIGHT: FieldCard = FieldCard::quantity(
    "clear height of the opening",
    Dimension::LENGTH,
    Role::Decision,
    (0.001, 2.0),
    0.005,
);
static OPENING_LEVEL: FieldCard =
    FieldCard::quantity("level of the opening", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static OPENING_LENGTH: FieldCard =
    FieldCard::quantity("length of the opening", Dimension::LENGTH, Role::Decision, (0.0, 5.0), 0.01);

/// A way out of the water.
#[derive(Debug, Clone)]
pub struct Exit {
    /// Its id.
    pub id: String,
    /// Where it leaves the water, in plan.
    pub at: [Number<Length>; 2],
    /// What it is: a ramp cut into the land, a beach, steps, a root or log, a net.
    pub kind: Choice,
    /// Rise over run of its steepest part; the gentlest way an animal can go counts, not the shortest.
    pub slope: Number<Ratio>,
    /// The clear width an animal has to climb on.
    pub width: Number<Length>,
    /// Where it begins, in the water; it has to lie under the lowest level at which animals are left.
    pub foot: Level,
    /// Where it ends, on the land.
    pub top: Level,
    /// What claws find on it: rough, cleated, mesh, or smooth.
    pub grip: Choice,
}

/// A place in the water where an animal can rest with its nostrils in the air.
#[derive(Debug, Clone)]
pub struct Ledge {
    /// Its id.
    pub id: String,
    /// What carries the animal.
    pub kind: Choice,
    /// The surface an animal can rest on.
    pub outline: ShapeField,
    /// The top of it; how much water stands over it follows from the water level.
    pub level: Level,
    /// The slope of the way up to it; "step" where it is sheer.
    pub slope: Number<Ratio>,
    /// What claws find on it.
    pub grip: Choice,
}

/// A gap or an opening under or beside the water that an animal can get into.
#[derive(Debug, Clone)]
pub struct Opening {
    /// Its id.
    pub id: String,
    /// Where it is, in plan.
    pub at: [Number<Length>; 2],
    /// A gap beside something, a hollow under rocks, a slot, an open pipe, the throat of a skimmer or weir.
    pub kind: Choice,
    /// Its clear width where it is narrowest.
    pub size: Number<Length>,
    /// Its clear height where it is lowest.
    pub height: Number<Length>,
    /// Its top edge: whether there is air in it follows from the water level.
    pub level: Level,
    /// How far it goes in, or through.
    pub length: Number<Length>,
    /// Whether an animal that gets in comes out at the other end without turning.
    pub through: Flag,
}

impl Exit {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Exit {
            id: r.id(),
            at: r.point("at", [&X, &Y]),
            kind: r.choice("kind", &EXIT_KIND),
            slope: r.number("slope", &EXIT_SLOPE),
            width: r.number("width", &EXIT_WIDTH),
            foot: r.level("foot", &EXIT_FOOT),
            top: r.level("top", &EXIT_TOP),
            grip: r.choice("grip", &EXIT_GRIP),
        }
    }
}

impl Ledge {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Ledge {
            id: r.id(),
            kind: r.choice("kind", &LEDGE_KIND),
            outline: r.shape("outline", "outline of the ledge"),
            level: r.level("level", &LEDGE_LEVEL),
            slope: r.number("slope", &LEDGE_SLOPE),
            grip: r.choice("grip", &LEDGE_GRIP),
        }
    }
}

impl Opening {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Opening {
            id: r.id(),
            at: r.point("at", [&X, &Y]),
            kind: r.choice("kind", &OPENING_KIND),
            size: r.number("size", &OPENING_SIZE),
            height: r.number("height", &OPENING_HEIGHT),
            level: r.level("level", &OPENING_LEVEL),
            length: r.number("length", &OPENING_LENGTH),
            through: r.flag("through", "leads right through", Role::Decision),
        }
    }
}
