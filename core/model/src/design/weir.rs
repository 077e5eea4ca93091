//! Weirs and grilles: what water runs over, and what it passes on the way.

use crate::card::{ChoiceCard, FieldCard, Role};
use crate::compound::Level;
use crate::field::{Choice, Flag, Number};
use crate::reader::Reader;
use haulout_quantity::Dimension;
use haulout_quantity::si::{Angle, Area, Length};

static X: FieldCard = FieldCard::quantity("x", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static Y: FieldCard = FieldCard::quantity("y", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static WEIR_KIND: ChoiceCard = ChoiceCard {
    what: "kind of weir",
    role: Role::Decision,
    options: &["full width", "contracted", "V-notch", "round edge"],
    default: None,
};
static WEIR_WIDTH: FieldCard =
    FieldCard::quantity("width of the crest", Dimension::LENGTH, Role::Decision, (0.01, 20.0), 0.01);
static WEIR_LEVEL: FieldCard =
    FieldCard::quantity("level of the crest", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static WEIR_ANGLE: FieldCard = FieldCard::quantity(
    "angle of the notch",
    Dimension::NUMBER,
    Role::Decision,
    (0.349065850399, 2.09439510239),
    0.0872664625997,
);
static GRILLE_APERTURE: FieldCard =
    FieldCard::quantity("aperture of the grille", Dimension::LENGTH, Role::Decision, (0.0005, 0.1), 0.0005);
static GRILLE_NET_AREA: FieldCard =
    FieldCard::quantity("net area of the grille", Dimension::AREA, Role::Decision, (0.0005, 4.0), 0.0005);
static GRILLE_WIDTH: FieldCard =
    FieldCard::quantity("width of the grille", Dimension::LENGTH, Role::Decision, (0.01, 10.0), 0.01);

/// A weir or a lip: water runs over its crest.
#[derive(Debug, Clone)]
pub struct Weir {
    /// How the crest is cut: over the full width of its channel, narrower than it, as a V, or as a rounded edge.
    pub kind: Choice,
    /// Along the crest; a V-notch has none.
    pub width: Number<Length>,
    /// The crest: water begins to run over it here.
    pub level: Level,
    /// The full angle of a V-notch.
    pub angle: Number<Angle>,
}

/// A grille or screen that water passes and animals do not.
#[derive(Debug, Clone)]
pub struct Grille {
    /// Its id.
    pub id: String,
    /// Where it is, in plan.
    pub at: [Number<Length>; 2],
    /// Its widest opening; the smallest animal, its head and its limbs are held against it.
    pub aperture: Number<Length>,
    /// The open area, framing and bars left out.
    pub net_area: Number<Area>,
    /// Its clear width across the water.
    pub width: Number<Length>,
    /// Whether it can be taken off with a tool only.
    pub tool: Flag,
}

impl Weir {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Weir {
            kind: r.choice("kind", &WEIR_KIND),
            width: r.number("width", &WEIR_WIDTH),
            level: r.level("level", &WEIR_LEVEL),
            angle: r.number("angle", &WEIR_ANGLE),
        }
    }
}

impl Grille {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Grille {
            id: r.id(),
            at: r.point("at", [&X, &Y]),
            aperture: r.number("aperture", &GRILLE_APERTURE),
            net_area: r.number("net-area", &GRILLE_NET_AREA),
            width: r.number("width", &GRILLE_WIDTH),
            tool: r.flag("tool", "taken off with a tool only", Role::Promise),
        }
    }
}
