//! Visitors: where they stand or sit, and how high their eyes are.

use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, Ratio};

use crate::card::{FieldCard, Form, Role};
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
static STEP: FieldCard =
    FieldCard::quantity("highest step at the guard", Dimension::LENGTH, Role::Decision, (0.0, 1.5), 0.01);
static SET_BACK: FieldCard = FieldCard::quantity(
    "way over the guard to the nearest animal",
    Dimension::LENGTH,
    Role::Decision,
    (0.0, 10.0),
    0.01,
);
static BASINS: FieldCard =
    FieldCard::plain("basins to wash hands", Role::Decision, (0.0, 50.0), 1.0).form(Form::Count);
static BASIN_RIM: FieldCard = FieldCard::quantity(
    "rim of the lowest basin over the floor",
    Dimension::LENGTH,
    Role::Decision,
    (0.2, 1.2),
    0.01,
);
static BASIN_WAY: FieldCard = FieldCard::quantity(
    "way from the exhibit to the basins",
    Dimension::LENGTH,
    Role::Given,
    (0.0, 500.0),
    0.5,
);
static EYE: FieldCard =
    FieldCard::quantity("eye level over the floor", Dimension::LENGTH, Role::Given, (0.6, 2.2), 0.01);

/// What is laid out for visitors.
#[derive(Debug, Clone)]
pub struct Visitors {
    /// Where they look from.
    pub positions: List<Position>,
    /// What keeps them from falling.
    pub guards: List<Guard>,
    /// Where they wash their hands.
    pub hand_wash: HandWash,
}

/// Where visitors wash their hands.
#[derive(Debug, Clone)]
pub struct HandWash {
    /// Basins that can be used at once.
    pub basins: Number<Ratio>,
    /// The rim of the lowest one over the floor.
    pub rim: Number<Length>,
    /// From the place where animals or their water can be touched.
    pub way: Number<Length>,
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
    /// The highest step, ledge or bench before it that a child can stand on, over the surface people stand on; zero is none.
    pub step: Number<Length>,
    /// From its top to the nearest place an animal can be.
    pub set_back: Number<Length>,
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
            hand_wash: r.object("hand-wash", "places to wash hands", HandWash::read),
        }
    }
}

impl HandWash {
    fn read<R: Reader>(r: &mut R) -> Self {
        HandWash {
            basins: r.number("basins", &BASINS),
            rim: r.number("rim", &BASIN_RIM),
            way: r.number("way", &BASIN_WAY),
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
            step: r.number("step", &STEP),
            set_back: r.number("set-back", &SET_BACK),
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
