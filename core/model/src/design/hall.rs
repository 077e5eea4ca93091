//! The hall that is there already, and the spaces it is divided into.

use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, ThermodynamicTemperature};

use crate::card::{ChoiceCard, FieldCard, Role};
use crate::compound::{Level, List};
use crate::design::air::{Air, FloorDrain};
use crate::field::{Choice, Number};
use crate::reader::Reader;
use crate::shape::ShapeField;

static CLEAR_HEIGHT: FieldCard =
    FieldCard::quantity("clear height", Dimension::LENGTH, Role::Given, (2.0, 20.0), 0.01);
static FLOOR_LEVEL: FieldCard =
    FieldCard::quantity("floor level", Dimension::LENGTH, Role::Given, (-5.0, 5.0), 0.01);
static FOR: ChoiceCard = ChoiceCard {
    what: "whom the space is for",
    role: Role::Given,
    options: &["public", "animals", "keepers"],
    default: None,
};

static SPACE_BUND: FieldCard =
    FieldCard::quantity("top of the bund", Dimension::LENGTH, Role::Decision, (-5.0, 6.0), 0.005);
static HALL_GROUND_TEMPERATURE: FieldCard = FieldCard::quantity(
    "temperature under the floor",
    Dimension::TEMPERATURE,
    Role::Reading,
    (268.15, 303.15),
    0.5,
);

/// The existing room.
#[derive(Debug, Clone)]
pub struct Hall {
    /// Inside faces of its walls.
    pub outline: ShapeField,
    /// Floor to the lowest thing overhead.
    pub clear_height: Number<Length>,
    /// What it is divided into.
    pub spaces: List<Space>,
    /// Of the ground or the room below, in winter.
    pub ground_temperature: Number<ThermodynamicTemperature>,
}

/// A part of the hall.
#[derive(Debug, Clone)]
pub struct Space {
    /// Its id.
    pub id: String,
    /// Public, animals or keepers.
    pub whom: Choice,
    /// Its outline.
    pub outline: ShapeField,
    /// Its floor.
    pub floor_level: Level,
    /// The air by season.
    pub air: Air,
    /// The top of the kerb that keeps spilt water in the space.
    pub bund: Level,
    /// The drain in its floor.
    pub floor_drain: FloorDrain,
}

impl Hall {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Hall {
            outline: r.shape("outline", "outline of the hall"),
            clear_height: r.number("clear-height", &CLEAR_HEIGHT),
            spaces: r.list("spaces", "spaces of the hall", Space::read),
            ground_temperature: r.number("ground-temperature", &HALL_GROUND_TEMPERATURE),
        }
    }
}

impl Space {
    fn read<R: Reader>(r: &mut R) -> Self {
        Space {
            id: r.id(),
            whom: r.choice("for", &FOR),
            outline: r.shape("outline", "outline of the space"),
            floor_level: r.level("floor-level", &FLOOR_LEVEL),
            air: r.object("air", "air", Air::read),
            bund: r.level("bund", &SPACE_BUND),
            floor_drain: r.object("floor-drain", "floor drain", FloorDrain::read),
        }
    }
}
