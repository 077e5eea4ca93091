//! Viewing panels: where they stand, from sill to head, and which pool they look into.

use haulout_quantity::Dimension;

use crate::card::{FieldCard, Role};
use crate::compound::{Level, Link, List, Reference, Track};
use crate::reader::Reader;

static SILL: FieldCard =
    FieldCard::quantity("sill of the panel", Dimension::LENGTH, Role::Decision, (-5.0, 5.0), 0.01);
static HEAD: FieldCard =
    FieldCard::quantity("head of the panel", Dimension::LENGTH, Role::Decision, (-5.0, 6.0), 0.01);

/// A viewing panel.
#[derive(Debug, Clone)]
pub struct Panel {
    /// Its id.
    pub id: String,
    /// The pool it looks into.
    pub pool: Link,
    /// Its wet face in plan, from end to end of the clear opening.
    pub line: Track,
    /// Lower edge of the clear opening.
    pub sill: Level,
    /// Upper edge.
    pub head: Level,
    /// The guards and barriers it is let into: through it one sees past them.
    pub let_into: List<Reference>,
}

impl Panel {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Panel {
            id: r.id(),
            pool: r.reference("pool", "pool the panel looks into"),
            line: r.track("line", "wet face of the panel"),
            sill: r.level("sill", &SILL),
            head: r.level("head", &HEAD),
            let_into: r.references("let-into", "guards and barriers the panel is let into"),
        }
    }
}
