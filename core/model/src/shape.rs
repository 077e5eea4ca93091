//! Outlines as they are drawn: corners, or one shape, or something made of other outlines.

use std::sync::Arc;

use haulout_quantity::si::{Angle, Length};

use crate::compound::Reference;
use crate::field::{Missing, Number, Seat, Standing, State};
use crate::ledger::{Ledger, Patch};

/// A drawn outline in plain numbers, metres and radians, before it is flattened to corners.
#[derive(Debug, Clone, PartialEq)]
pub enum Drawing {
    /// Corners in order, either winding.
    Corners(Vec<[f64; 2]>),
    /// A rectangle from its corner, turned about that corner, corners rounded.
    Rectangle {
        /// The corner it is drawn from.
        corner: [f64; 2],
        /// Width and height.
        size: [f64; 2],
        /// Counter-clockwise, radians.
        turn: f64,
        /// Radius of the corners, 0 for sharp ones.
        round: f64,
    },
    /// A circle.
    Circle {
        /// Centre.
        centre: [f64; 2],
        /// Radius.
        radius: f64,
    },
    /// An ellipse.
    Ellipse {
        /// Centre.
        centre: [f64; 2],
        /// Half axes.
        radii: [f64; 2],
        /// Counter-clockwise, radians.
        turn: f64,
    },
    /// A closed smooth curve through points.
    Smooth(Vec<[f64; 2]>),
    /// A strip along a line.
    Strip {
        /// The line.
        line: Vec<[f64; 2]>,
        /// Its width.
        width: f64,
        /// Which face of the strip the line is: 0 centre, 1 left, 2 right.
        side: u8,
    },
}

/// A number inside a drawing with the node it stands at.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Coordinate {
    pub(crate) node: u32,
    pub(crate) stated: f64,
    /// The step of a repeat and how often it is taken.
    pub(crate) moved: Option<Moved>,
}

/// A step of a repeat in plan: its node, the step as stated in metres, how often it is taken.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Moved {
    pub(crate) node: u32,
    pub(crate) step: f64,
    pub(crate) times: f64,
}

impl Coordinate {
    pub(crate) const fn at(node: u32, stated: f64) -> Self {
        Coordinate { node, stated, moved: None }
    }

    pub(crate) fn patched(&self, patch: Patch<'_>) -> f64 {
        let here = patch(self.node).unwrap_or(self.stated);
        self.moved.map_or(here, |m| here + m.times * patch(m.node).unwrap_or(m.step))
    }
}

/// A drawing whose every number keeps its node.
#[derive(Debug, Clone)]
pub(crate) struct Drawn {
    /// The numbers in the order in which `build` wants them.
    pub(crate) numbers: Vec<Coordinate>,
    pub(crate) build: fn(&[f64], u8) -> Drawing,
    pub(crate) side: u8,
}

impl Drawn {
    fn patched(&self, patch: Patch<'_>) -> Drawing {
        let numbers: Vec<f64> = self.numbers.iter().map(|c| c.patched(patch)).collect();
        (self.build)(&numbers, self.side)
    }
}

/// What an outline is made of.
#[allow(clippy::large_enum_variant, reason = "a shape stands in a box wherever it is kept")]
#[derive(Debug, Clone)]
pub enum Shape {
    /// Drawn in its own numbers: one root for the whole of it.
    Drawn(DrawnShape),
    /// Another outline moved inward (or outward, negative).
    Inset {
        /// The outline it follows.
        of: Reference,
        /// By how much.
        by: Number<Length>,
        /// Which sides move; all when not stated.
        sides: Option<Sides>,
    },
    /// Another outline, moved, turned, mirrored.
    Copy {
        /// The outline it repeats.
        of: Reference,
        /// Along x and y.
        shift: [Number<Length>; 2],
        /// About the first corner, counter-clockwise.
        turn: Number<Angle>,
        /// Mirrored before it is turned.
        mirror: Option<Mirror>,
    },
    /// Everything that lies in any of them.
    Join(Vec<ShapeField>),
    /// The first without the others.
    Less(Vec<ShapeField>),
}

/// The sides of an outline that move, as stated: counted from 1, side 1 from the first corner to the second as drawn.
#[derive(Debug, Clone)]
pub struct Sides {
    pub(crate) seat: Seat,
    pub(crate) end: u32,
    pub(crate) numbers: Vec<Coordinate>,
}

impl Sides {
    /// The numbers of the sides as one root.
    pub fn on<L: Ledger>(&self, ledger: L) -> L::Line<Arc<Vec<usize>>> {
        ledger.thing(self.seat.origin, self.end, Standing::Settled, |patch| {
            let number = |c: &Coordinate| patch(c.node).unwrap_or(c.stated).max(0.0) as usize;
            self.numbers.iter().map(number).collect()
        })
    }
}

/// The axis a copy is mirrored at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mirror {
    /// x changes its sign.
    X,
    /// y changes its sign.
    Y,
}

/// A drawing with its nodes.
#[derive(Debug, Clone)]
pub struct DrawnShape {
    pub(crate) seat: Seat,
    pub(crate) end: u32,
    pub(crate) drawn: Drawn,
}

impl DrawnShape {
    /// The whole drawing as one root.
    pub fn on<L: Ledger>(&self, ledger: L) -> L::Line<Arc<Drawing>> {
        ledger.thing(self.seat.origin, self.end, Standing::Settled, |patch| self.drawn.patched(patch))
    }

    /// The node of every number, with the number as stated in metres (radians for a turn).
    pub fn numbers(&self) -> impl Iterator<Item = (u32, f64)> + '_ {
        self.drawn.numbers.iter().map(|c| (c.node, c.stated))
    }
}

/// An outline as the file states it.
#[derive(Debug, Clone)]
pub struct ShapeField {
    pub(crate) seat: Seat,
    pub(crate) state: State<Box<Shape>>,
}

impl ShapeField {
    /// What the file says.
    pub const fn state(&self) -> &State<Box<Shape>> {
        &self.state
    }

    /// Where it stands or would stand.
    pub const fn seat(&self) -> Seat {
        self.seat
    }

    /// The gap when nothing is drawn.
    pub fn missing(&self) -> Missing {
        self.seat.missing(&self.state)
    }
}
