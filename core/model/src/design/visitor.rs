//! Visitors: where they stand or sit, and how high their eyes are.

use haulout_quantity::Dimension;
use haulout_quantity::si::Length;

use crate::card::{FieldCard, Role};
use crate::compound::{Level, Link, List, Reference, Track};
use crate::field::{Flag, Number};
use crate::reader::Reader;

static X: FieldCard = FieldCard::quantity("x", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static Y: FieldCard = FieldCard::quantity("y", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static GUARD_TOP: FieldCard =
    FieldCard::quantity("top of the guard", Dimension::LENGTH, Role::Decision, (-5.0, 6.0), 0.01);
static OPAQUE_TO: FieldCard = FieldCard::quantity(
    "level up to which nobody sees through the guard",
    Dimension::LENGTH,
    Role::Decision,
    (-5.0, 6.0),
    0.01,
);
static STANDING: FieldCard =
    FieldCard::quantity("surface people stand on", Dimension::LENGTH, Role::Given, (-5.0, 5.0), 0.01);
static BELOW: FieldCard =
    FieldCard::quantity("surface below the guard", Dimension::LENGTH, Role::Given, (-8.0, 5.0), 0.01);
static OPENING: FieldCard =
    FieldCard::quantity("widest opening of the guard", Dimension::LENGTH, Role::Decision, (0.0, 1.0), 0.005);
static EYE: FieldCard =
    FieldCard::quantity("eye level over the floor", Dimension::LENGTH, Role::Given, (0.6, 2.2), 0.01);

/// What is laid out for visitors.
#[derive(Debug, Clone)]
pub struct Visitors {
    /// Where they look from.
    pub positions: List<Position>,
    /// What keeps them from falling.
    pub guards: List<Guard>,
}

/// A guard at a drop or at the water.
#[derive(Debug, Clone)]
pub struct Guard {
    /// Its id.
    pub id: String,
    /// Its line in plan.
    pub line: Track,
    /// Its top.
    pub top: Level,
    /// The surface people stand on before it; the floor, or a step or bench within reach.
    pub standing: Level,
    /// The surface or bed below on the far side.
    pub below: Level,
    /// Widest opening.
    pub opening: Number<Length>,
    /// Whether a child can climb it: horizontal rails, ledges.
    pub climbable: Flag,
    /// Up to here nobody sees through it: the top of the masonry under the glass.
    pub opaque_to: Level,
}

/// A place visitors look from.
#[derive(Debug, Clone)]
pub struct Position {
    /// Its id.
    pub id: String,
    /// Where the eye is, in plan.
    pub at: [Number<Length>; 2],
    /// How high the eye is over the floor it stands on.
    pub eye: Number<Length>,
    /// The space the visitor stands in.
    pub space: Link,
    /// The pools looked into from here.
    pub pools: List<Reference>,
}

impl Visitors {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Visitors {
            positions: r.list("positions", "viewing positions", Position::read),
            guards: r.list("guards", "guards", Guard::read),
        }
    }
}

impl Guard {
    fn read<R: Reader>(r: &mut R) -> Self {
        Guard {
            id: r.id(),
            line: r.track("line", "line of the guard"),
            top: r.level("top", &GUARD_TOP),
            standing: r.level("standing", &STANDING),
            below: r.level("below", &BELOW),
            opening: r.number("opening", &OPENING),
            climbable: r.flag("climbable", "climbable by a child", Role::Decision),
            opaque_to: r.level("opaque-to", &OPAQUE_TO),
        }
    }
}

impl Position {
    fn read<R: Reader>(r: &mut R) -> Self {
        Position {
            id: r.id(),
            at: r.point("at", [&X, &Y]),
            eye: r.number("eye", &EYE),
            space: r.reference("space", "space the visitor stands in"),
            pools: r.references("pools", "pools looked into"),
        }
    }
}
