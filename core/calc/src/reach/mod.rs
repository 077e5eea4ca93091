//! How far something is from the water, by the shortest path round fixed partitions: round their ends and over their tops.
//!
//! Lengths and levels are plain metres. Where nothing stands between, the path runs level, as codes measure: the height
//! of the item is a matter of its own. Round the end of a partition it runs level too. Over a top it is a string from the
//! rim, over the top edge, down to the item; an item above that top is reached on the level of the top, since a
//! height that the partition does not ask for must not lengthen the path. Every simplification shortens the path.

mod legs;
mod search;
mod taut;

#[cfg(test)]
mod tests;

use crate::geometry::{Outline, Point};

/// A partition lower than this over the rim hinders nobody, metres (common practice; half the height of a chair's seat).
pub const LEAST_RISE: f64 = 0.25;

/// A fixed, closed, insulating partition.
#[derive(Debug, Clone, PartialEq)]
pub struct Partition {
    /// Its line in plan, at least two corners.
    pub line: Vec<Point>,
    /// Its top, over the datum; infinite for a wall of the room.
    pub top: f64,
}

/// Water with what stands round it.
#[derive(Debug, Clone, PartialEq)]
pub struct Surroundings {
    /// The pool at its rim.
    pub water: Outline,
    /// Level of the rim, over the datum.
    pub rim: f64,
    /// What a path has to go round.
    pub partitions: Vec<Partition>,
}

/// Length of the shortest path from the water to a point at a level, metres; nothing for a point over the water,
/// infinite where walls of the room leave no way at all.
pub fn shortest_path(around: &Surroundings, to: Point, level: f64) -> f64 {
    if around.water.contains(to) {
        return 0.0;
    }
    search::Search::new(around, to, level).shortest()
}
