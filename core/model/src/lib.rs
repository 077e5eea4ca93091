//! A design, typed: what the file says, field by field, and nothing worked out.
//!
//! Numbers, choices and drawings are private: the only way to them is [`Ledger`], which notes where each was read.
//! The same reading code describes the document ([`describe`]), so that the published schema can be held to it.

mod belonging;
mod card;
mod compound;
mod design;
mod directory;
mod field;
mod index;
mod kinds;
mod layout;
mod ledger;
mod named;
mod nested;
mod reader;
mod shape;
mod standing_in;
mod stated;
mod subject;

pub use card::{ChoiceCard, Default, FieldCard, Form, Role};
pub use compound::{Curve, CurvePoints, Level, LevelExpr, Link, List, Reference, Track, TrackPoints};
pub use design::{Design, read};
pub use design::{
    air, animal, barrier, basking, circuit, electrical, exit, feed, fill, filter, hall, heater, keeper,
    overflow, panel, pool, project, returns, stage, start_up, stream, variance, visitor, weir,
};
pub use directory::{Awaited, Directory, Entry, Leads, Pointing};
pub use field::{
    Choice, Flag, Missing, MissingKind, Number, Origin, Seat, Standing, State, Text, Value, Word,
};
pub use layout::Stage;
pub use ledger::{ChoiceRoot, Ledger, NumberRoot, Patch};
pub use reader::{Described, Reader, describe};
pub use shape::{Drawing, DrawnShape, Mirror, Shape, ShapeField, Sides};
pub use stated::{Part, Stated, Written};
pub use subject::{About, Subject, Walk};
