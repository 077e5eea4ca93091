//! Plausible designs made by chance, each seed another one: what properties and budgets are tried on.

mod hall;
mod paper;
mod pen;
mod plant;
mod pool;
mod shapes;
mod wet;

use serde_json::{Map, Value, json};

use pen::Pen;

/// How much a design holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Size {
    /// One pool, one group, little else.
    Tiny,
    /// So many pools, each with what belongs to it.
    Pools(usize),
}

impl Size {
    /// About 20 KB of text, the design that the budget is made for.
    pub const BUDGET: Size = Size::Pools(3);
}

/// The units a design is written in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Units {
    /// Metric and US customary beside each other, rounded as people round.
    Mixed,
    /// Metric; the same numbers as [`Units::Us`].
    Metric,
    /// US customary; the same numbers as [`Units::Metric`], to all their digits.
    Us,
}

/// Where the whole drawing is put: turned about the origin of the drawing, then moved; levels stay.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Placing {
    /// Counter-clockwise, in degrees.
    pub turn: f64,
    /// Along x and y, in metres.
    pub by: [f64; 2],
}

/// Which outlines are drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outlines {
    /// Every shape of the document.
    All,
    /// Only those whose corners turn with the drawing: a circle is flattened to the same corners however it is turned.
    Straight,
}

/// How a design is written down; the same seed is the same design in every manner but [`Units::Mixed`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Manner {
    /// Its units.
    pub units: Units,
    /// Where the drawing is put.
    pub placing: Placing,
    /// Its outlines.
    pub outlines: Outlines,
}

impl Manner {
    /// Mixed units, every shape, where it was drawn.
    pub const PLAIN: Manner = Manner {
        units: Units::Mixed,
        placing: Placing { turn: 0.0, by: [0.0, 0.0] },
        outlines: Outlines::All,
    };
}

/// The design of a seed, as JSON text.
pub fn design(seed: u64, size: Size) -> String {
    design_as(seed, size, Manner::PLAIN)
}

/// The design of a seed in a manner, as JSON text.
pub fn design_as(seed: u64, size: Size, manner: Manner) -> String {
    let mut pen = Pen::new(seed, manner);
    let rooms = match size {
        Size::Tiny => 1,
        Size::Pools(pools) => pools.max(1),
    };
    let mut members = Map::new();
    members.insert("edition".to_owned(), json!(0));
    members.insert("project".to_owned(), hall::project(&mut pen, seed));
    members.insert("drawing".to_owned(), hall::drawing(&pen));
    let site = Site { rooms, kinds: size != Size::Tiny };
    if site.kinds {
        members.insert("kinds".to_owned(), plant::kinds(&mut pen));
        members.insert("hall".to_owned(), hall::hall(&mut pen, site));
    }
    members.insert("animals".to_owned(), hall::animals(&mut pen, site));
    members.insert("pools".to_owned(), pool::pools(&mut pen, site));
    members.insert("circuits".to_owned(), plant::circuits(&mut pen, site));
    if site.kinds {
        members.extend(hall::around(&mut pen, site));
        wet::wet(&mut pen, site, &mut members);
    }
    paper::print(&Value::Object(members))
}

/// Rooms in a row of rows, one pool in each.
#[derive(Clone, Copy)]
struct Site {
    rooms: usize,
    /// Whether there is a hall, kinds and everything around the pools.
    kinds: bool,
}

impl Site {
    const WIDE: f64 = 10.0;
    const DEEP: f64 = 8.0;

    /// Rooms in one row.
    fn columns(self) -> usize {
        (1..).find(|n| n * n >= self.rooms).unwrap_or(1)
    }

    /// The corner of a room.
    fn corner(self, room: usize) -> [f64; 2] {
        let (column, row) = (room % self.columns(), room / self.columns());
        [column as f64 * Self::WIDE, row as f64 * Self::DEEP]
    }

    /// The outer size of all rooms.
    fn extent(self) -> [f64; 2] {
        let rows = self.rooms.div_ceil(self.columns());
        [self.columns() as f64 * Self::WIDE, rows as f64 * Self::DEEP]
    }
}
