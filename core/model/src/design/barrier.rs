//! What keeps animals in: barriers as lines, doors in them, and the things one can stand on near them.

use haulout_quantity::Dimension;
use haulout_quantity::si::Length;

use crate::card::{ChoiceCard, FieldCard, Role};
use crate::compound::{Level, Link, List, Reference, Track};
use crate::field::{Choice, Flag, Number};
use crate::reader::Reader;
use crate::shape::ShapeField;

const fn level(what: &'static str) -> FieldCard {
    FieldCard::quantity(what, Dimension::LENGTH, Role::Decision, (-5.0, 10.0), 0.01)
}

const fn gap(what: &'static str, top: f64) -> FieldCard {
    FieldCard::quantity(what, Dimension::LENGTH, Role::Decision, (0.0, top), 0.001)
}

static TOP: FieldCard = level("top of the barrier");
static SMOOTH_FROM: FieldCard = level("level from which the barrier is smooth");
static FEATURE_TOP: FieldCard = level("top of the feature");
static SILL: FieldCard = level("sill of the door");
static OVERHANG: FieldCard = gap("inward overhang at the top", 1.0);
static APERTURE: FieldCard = gap("aperture of the mesh", 0.2);
static JOINTS: FieldCard = gap("widest gap at joints and penetrations", 0.2);
static UNDER: FieldCard = gap("gap under the leaf", 0.2);
static BELOW: FieldCard = FieldCard::quantity(
    "depth of the barrier below ground",
    Dimension::LENGTH,
    Role::Decision,
    (0.0, 3.0),
    0.01,
);
static KIND: ChoiceCard = ChoiceCard {
    what: "kind of barrier",
    role: Role::Decision,
    options: &["masonry", "glass", "acrylic", "boards", "mesh", "rockwork"],
    default: None,
};
static SURFACE: ChoiceCard = ChoiceCard {
    what: "face towards the animals",
    role: Role::Decision,
    options: &["smooth", "rough", "mesh"],
    default: None,
};
static LID: ChoiceCard = ChoiceCard {
    what: "top of the enclosure",
    role: Role::Decision,
    options: &["open", "lid"],
    default: None,
};
static FEATURE_KIND: ChoiceCard = ChoiceCard {
    what: "kind of feature",
    role: Role::Decision,
    options: &["rock", "root", "branch", "log", "plant", "fitting", "ledge"],
    default: None,
};

static LOBBY_LENGTH: FieldCard =
    FieldCard::quantity("length of the lobby", Dimension::LENGTH, Role::Decision, (0.3, 20.0), 0.01);
static DOOR_WIDTH: FieldCard =
    FieldCard::quantity("width of the door", Dimension::LENGTH, Role::Decision, (0.2, 5.0), 0.01);
static DOOR_OPENS: ChoiceCard = ChoiceCard {
    what: "way the door opens",
    role: Role::Decision,
    options: &["in", "out", "sliding"],
    default: None,
};
static DOOR_LOCK: ChoiceCard = ChoiceCard {
    what: "lock of the door",
    role: Role::Decision,
    options: &["latch", "key", "two locks", "code"],
    default: None,
};
/// A stretch of boundary.
#[derive(Debug, Clone)]
pub struct Barrier {
    /// Its id.
    pub id: String,
    /// The spaces it bounds.
    pub spaces: List<Reference>,
    /// Its line in plan.
    pub line: Track,
    /// Its top.
    pub top: Level,
    /// What it is.
    pub kind: Choice,
    /// Its face.
    pub surface: Choice,
    /// From where up it is smooth; below it may be climbed.
    pub smooth_from: Level,
    /// Inward overhang.
    pub overhang: Number<Length>,
    /// Aperture, where it is mesh or railing.
    pub aperture: Number<Length>,
    /// Widest gap at its joints.
    pub joints: Number<Length>,
    /// How deep it goes below ground.
    pub below_ground: Number<Length>,
    /// Open, or closed by a lid.
    pub closure: Choice,
}

/// Something an animal can stand on or climb.
#[derive(Debug, Clone)]
pub struct Feature {
    /// Its id.
    pub id: String,
    /// The space it is in.
    pub space: Link,
    /// Its footprint.
    pub outline: ShapeField,
    /// Its top.
    pub top: Level,
    /// What it is.
    pub kind: Choice,
}

/// A door.
#[derive(Debug, Clone)]
pub struct Door {
    /// Its id.
    pub id: String,
    /// The barrier it stands in.
    pub barrier: Link,
    /// The spaces it joins.
    pub spaces: List<Reference>,
    /// What an animal would have to get over when it is open.
    pub sill: Level,
    /// Gap under the leaf, worn.
    pub gap_under: Number<Length>,
    /// Whether a second door stands behind it.
    pub lobby: Flag,
    /// Between the two doors, along the way.
    pub lobby_length: Number<Length>,
    /// Whether it closes by itself.
    pub self_closing: Flag,
    /// Clear, open.
    pub width: Number<Length>,
    /// Seen from the keepers: in, towards the animals; an animal that stands behind it holds a door that opens in.
    pub opens: Choice,
    /// What keeps it shut.
    pub lock: Choice,
}

impl Barrier {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Barrier {
            id: r.id(),
            spaces: r.references("spaces", "spaces the barrier bounds"),
            line: r.track("line", "line of the barrier"),
            top: r.level("top", &TOP),
            kind: r.choice("kind", &KIND),
            surface: r.choice("surface", &SURFACE),
            smooth_from: r.level("smooth-from", &SMOOTH_FROM),
            overhang: r.number("overhang", &OVERHANG),
            aperture: r.number("aperture", &APERTURE),
            joints: r.number("joints", &JOINTS),
            below_ground: r.number("below-ground", &BELOW),
            closure: r.choice("closure", &LID),
        }
    }
}

impl Feature {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Feature {
            id: r.id(),
            space: r.reference("space", "space the feature is in"),
            outline: r.shape("outline", "footprint of the feature"),
            top: r.level("top", &FEATURE_TOP),
            kind: r.choice("kind", &FEATURE_KIND),
        }
    }
}

impl Door {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Door {
            id: r.id(),
            barrier: r.reference("barrier", "barrier the door stands in"),
            spaces: r.references("spaces", "spaces the door joins"),
            sill: r.level("sill", &SILL),
            gap_under: r.number("gap-under", &UNDER),
            lobby: r.flag("lobby", "second door behind it", Role::Decision),
            lobby_length: r.number("lobby-length", &LOBBY_LENGTH),
            self_closing: r.flag("self-closing", "closes by itself", Role::Promise),
            width: r.number("width", &DOOR_WIDTH),
            opens: r.choice("opens", &DOOR_OPENS),
            lock: r.choice("lock", &DOOR_LOCK),
        }
    }
}
