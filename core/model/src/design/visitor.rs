//! Visitors: where they stand or sit, and how high their eyes are.

use haulout_quantity::Dimension;
use haulout_quantity::si::Length;

use crate::card::{FieldCard, Role};
use crate::compound::{List, Reference};
use crate::field::Number;
use crate::reader::Reader;

static X: FieldCard = FieldCard::quantity("x", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static Y: FieldCard = FieldCard::quantity("y", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static EYE: FieldCard = FieldCard::quantity(
    "eye level over the floor",
    Dimension::LENGTH,
    Role::Given,
    (0.6, 2.2),
    0.01,
);

/// What is laid out for visitors.
#[derive(Debug, Clone)]
pub struct Visitors {
    /// Where they look from.
    pub positions: List<Position>,
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
    pub space: Option<Reference>,
    /// The pools looked into from here.
    pub pools: List<Reference>,
}

impl Visitors {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Visitors {
            positions: r.list("positions", "viewing positions", Position::read),
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
