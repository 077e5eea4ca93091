//! Fields of more than one value: references, lists, levels, tables.

use std::sync::Arc;

use crate::field::{Missing, Number, Seat, Standing, State};
use crate::ledger::Ledger;
use crate::shape::Coordinate;

/// A name that points to something else in the file: `"main"`, `"main.water"`.
#[derive(Debug, Clone)]
pub struct Reference {
    pub(crate) seat: Seat,
    pub(crate) name: String,
}

impl Reference {
    /// The name as written.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Where it stands.
    pub const fn seat(&self) -> Seat {
        self.seat
    }
}

/// One reference as the file states it: given, none, to be decided, or not stated.
#[derive(Debug, Clone)]
pub struct Link {
    pub(crate) seat: Seat,
    pub(crate) state: State<Reference>,
}

impl Link {
    /// The reference, if there is one.
    pub const fn given(&self) -> Option<&Reference> {
        self.state.given()
    }

    /// The name, if there is one.
    pub fn name(&self) -> Option<&str> {
        self.given().map(Reference::name)
    }

    /// The gap when there is none.
    pub fn missing(&self) -> Missing {
        self.seat.missing(&self.state)
    }

    /// Where it stands or would stand.
    pub const fn seat(&self) -> Seat {
        self.seat
    }
}

/// A list: not stated, none, to be decided, or its items.
#[derive(Debug, Clone)]
pub struct List<T> {
    pub(crate) seat: Seat,
    pub(crate) state: State<Vec<T>>,
}

impl<T> List<T> {
    /// The items; empty when there are none for whatever reason.
    pub fn items(&self) -> &[T] {
        self.state.given().map_or(&[], Vec::as_slice)
    }

    /// What is known of the list.
    pub const fn state(&self) -> &State<Vec<T>> {
        &self.state
    }

    /// Where it stands or would stand.
    pub const fn seat(&self) -> Seat {
        self.seat
    }

    /// What is missing when the list has no items; none when it has.
    pub fn missing(&self) -> Option<Missing> {
        match self.state {
            State::Given(_) => None,
            _ => Some(self.seat.missing(&self.state)),
        }
    }
}

/// A height over the datum, absolute or hung on another one.
#[derive(Debug, Clone)]
pub enum LevelExpr {
    /// `"+0.92 m"`.
    At(Number<haulout_quantity::si::Length>),
    /// `{"above": "main.water", "by": "120 mm"}`, or `below`.
    From {
        /// The level it hangs on.
        of: Reference,
        /// Above it, or below.
        above: bool,
        /// By how much.
        by: Number<haulout_quantity::si::Length>,
    },
}

/// A level as the file states it.
#[derive(Debug, Clone)]
pub struct Level {
    pub(crate) seat: Seat,
    pub(crate) state: State<LevelExpr>,
}

impl Level {
    /// What the file says.
    pub const fn state(&self) -> &State<LevelExpr> {
        &self.state
    }

    /// Where it stands or would stand.
    pub const fn seat(&self) -> Seat {
        self.seat
    }

    /// The gap when no level is given.
    pub fn missing(&self) -> Missing {
        self.seat.missing(&self.state)
    }
}

/// The points of a pump curve as stated, in SI: flow in m³/s, head in m.
#[derive(Debug, Clone, PartialEq)]
pub struct CurvePoints(pub Vec<[f64; 2]>);

/// A curve table as the file states it; every number keeps its node.
#[derive(Debug, Clone)]
pub struct Curve {
    pub(crate) seat: Seat,
    pub(crate) end: u32,
    pub(crate) standing: Standing,
    pub(crate) state: State<Vec<[(u32, f64); 2]>>,
}

impl Curve {
    /// The whole table as one root.
    ///
    /// # Errors
    /// A gap when no curve is given.
    pub fn on<L: Ledger>(&self, ledger: L) -> Result<L::Line<Arc<CurvePoints>>, L::Gap> {
        match &self.state {
            State::Given(points) => Ok(ledger.thing(self.seat.origin, self.end, self.standing, |patch| {
                let number = |(node, stated): (u32, f64)| patch(node).unwrap_or(stated);
                CurvePoints(points.iter().map(|[x, y]| [number(*x), number(*y)]).collect())
            })),
            other => Err(ledger.missing(self.seat.missing(other))),
        }
    }
}

/// The corners of a line as stated, metres.
#[derive(Debug, Clone, PartialEq)]
pub struct TrackPoints(pub Vec<[f64; 2]>);

/// An open line in plan; every number keeps its node, the whole is one root.
#[derive(Debug, Clone)]
pub struct Track {
    pub(crate) seat: Seat,
    pub(crate) end: u32,
    pub(crate) state: State<Vec<[Coordinate; 2]>>,
}

impl Track {
    /// The whole line as one root.
    ///
    /// # Errors
    /// A gap when no line is given.
    pub fn on<L: Ledger>(&self, ledger: L) -> Result<L::Line<Arc<TrackPoints>>, L::Gap> {
        match &self.state {
            State::Given(points) => {
                Ok(ledger.thing(self.seat.origin, self.end, Standing::Settled, |patch| {
                    TrackPoints(points.iter().map(|[x, y]| [x.patched(patch), y.patched(patch)]).collect())
                }))
            }
            other => Err(ledger.missing(self.seat.missing(other))),
        }
    }

    /// Where it stands or would stand.
    pub const fn seat(&self) -> Seat {
        self.seat
    }
}
