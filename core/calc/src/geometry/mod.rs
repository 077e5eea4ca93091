//! Plan geometry: outlines, the shapes they are drawn with, and the bed of a basin.
//!
//! Everything here is plain `f64`: lengths and levels in metres, areas in square metres, volumes in
//! cubic metres, angles in radians counter-clockwise from the x axis. Curves become straight sides
//! with their corners on the curve, nowhere farther than [`SAGITTA`] from it. Nothing panics on data:
//! whatever cannot be drawn is an [`Unsound`] with a sentence.
//!
//! Areas of overlapping outlines come from one sweep (`sweep`) that never rounds a corner to a
//! grid, so that turning or moving the drawing leaves them alone; only [`join`], [`less`] and
//! [`inset`], which must give new outlines, use the overlay of the crate `geo`, and they put its
//! corners back where the drawn sides really meet.

mod apart;
mod bed;
mod combine;
mod erosion;
mod inmost;
mod inset;
mod outline;
mod parallel;
mod passage;
mod point;
mod reach;
mod relief;
mod shapes;
mod shore;
mod shrink;
mod sight;
mod slope;
mod smooth;
mod sound;
mod strip;
mod sweep;
mod track;

pub use apart::apart;
pub use bed::{Bed, BedPiece, Edge, Laid};
pub use combine::{join, less};
pub use inset::inset;
pub use outline::{Bounds, Outline};
pub use parallel::parallel;
pub use passage::{Passage, middle, passage};
pub(crate) use point::NEAR;
pub use point::{Mirror, Motion, Point, moved};
pub use reach::reach;
pub use shapes::{SAGITTA, circle, ellipse, rectangle};
pub use shore::farthest_along;
pub use smooth::smooth;
pub use sound::Unsound;
pub use strip::{Side, strip};
pub use track::{JOINED, sharpest_corner, track_to_outline};
