//! What takes water away before it comes over the rim, and how a pool is emptied.

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::Level;
use crate::design::weir::Weir;
use crate::field::{Choice, Flag, Number, Text};
use crate::reader::Reader;
use haulout_quantity::Dimension;
use haulout_quantity::si::{Area, Length, Ratio, VolumeRate};

static X: FieldCard = FieldCard::quantity("x", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static Y: FieldCard = FieldCard::quantity("y", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static OVERFLOW_KIND: ChoiceCard = ChoiceCard {
    what: "kind of overflow",
    role: Role::Decision,
    options: &["pipe", "weir", "slot"],
    default: None,
};
static OVERFLOW_COUNT: FieldCard =
    FieldCard::plain("overflows alike", Role::Decision, (1.0, 20.0), 1.0).form(Form::Count);
static OVERFLOW_BORE: FieldCard =
    FieldCard::quantity("bore of the overflow", Dimension::LENGTH, Role::Decision, (0.015, 0.3), 0.001);
static OVERFLOW_INVERT: FieldCard =
    FieldCard::quantity("invert of the overflow", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static OVERFLOW_APERTURE: FieldCard =
    FieldCard::quantity("aperture of its grille", Dimension::LENGTH, Role::Decision, (0.0005, 0.1), 0.0005);
static OVERFLOW_NET_AREA: FieldCard =
    FieldCard::quantity("net area of its grille", Dimension::AREA, Role::Decision, (0.0005, 2.0), 0.0005);
static DRAIN_LEVEL: FieldCard =
    FieldCard::quantity("level of the drain", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static DRAIN_BORE: FieldCard =
    FieldCard::quantity("bore of the drain", Dimension::LENGTH, Role::Decision, (0.015, 0.5), 0.001);
static DRAIN_FLOW: FieldCard = FieldCard::quantity(
    "flow of the drain",
    Dimension::FLOW,
    Role::Reading,
    (1.38888888889e-05, 0.0555555555556),
    2.77777777778e-05,
);
static DRAIN_ALLOWED: FieldCard = FieldCard::quantity(
    "flow the sewer may take",
    Dimension::FLOW,
    Role::Given,
    (1.38888888889e-05, 0.0555555555556),
    2.77777777778e-05,
);

/// An outlet that takes water away before it comes over the rim.
#[derive(Debug, Clone)]
pub struct Overflow {
    /// Its id.
    pub id: String,
    /// Where it is, in plan.
    pub at: [Number<Length>; 2],
    /// A pipe end, a weir, or a slot along the side.
    pub kind: Choice,
    /// How many there are of it; one that can be blocked counts as blocked.
    pub count: Number<Ratio>,
    /// The inside diameter, where it is a pipe.
    pub bore: Number<Length>,
    /// Its crest, where it is a weir or a slot.
    pub weir: Weir,
    /// Its lowest point inside, where it differs from the overflow level of the pool.
    pub invert: Level,
    /// The widest opening of the grille before it.
    pub aperture: Number<Length>,
    /// The open area of the grille before it.
    pub net_area: Number<Area>,
    /// Whether it stands ready for the day the others are blocked.
    pub emergency: Flag,
    /// Where its water goes: a drain, another basin, the floor.
    pub to: Text,
}

/// The way a pool is emptied.
#[derive(Debug, Clone)]
pub struct Drain {
    /// Where it is, in plan.
    pub at: [Number<Length>; 2],
    /// Its invert: what lies under it has to be pumped or bailed.
    pub level: Level,
    /// The inside diameter.
    pub bore: Number<Length>,
    /// What it takes away, by pump or by fall.
    pub flow: Number<VolumeRate>,
    /// What may be let into the sewer or the ground.
    pub allowed: Number<VolumeRate>,
    /// Where its water goes, and by whose consent.
    pub to: Text,
}

impl Overflow {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Overflow {
            id: r.id(),
            at: r.point("at", [&X, &Y]),
            kind: r.choice("kind", &OVERFLOW_KIND),
            count: r.number("count", &OVERFLOW_COUNT),
            bore: r.number("bore", &OVERFLOW_BORE),
            weir: r.object("weir", "weir of the overflow", Weir::read),
            invert: r.level("invert", &OVERFLOW_INVERT),
            aperture: r.number("aperture", &OVERFLOW_APERTURE),
            net_area: r.number("net-area", &OVERFLOW_NET_AREA),
            emergency: r.flag("emergency", "overflow of last resort", Role::Decision),
            to: r.text("to", "where it runs"),
        }
    }
}

impl Drain {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Drain {
            at: r.point("at", [&X, &Y]),
            level: r.level("level", &DRAIN_LEVEL),
            bore: r.number("bore", &DRAIN_BORE),
            flow: r.number("flow", &DRAIN_FLOW),
            allowed: r.number("allowed", &DRAIN_ALLOWED),
            to: r.text("to", "where it drains to"),
        }
    }
}
