//! Basking sites: where they are, how dry and how high, how one gets up, what warms them, what floats them.

use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, Mass, Ratio, ThermodynamicTemperature};

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::{Level, Link, List, Reference};
use crate::field::{Choice, Number};
use crate::reader::Reader;
use crate::shape::ShapeField;

static LEVEL: FieldCard = FieldCard::quantity(
    "level of the basking surface",
    Dimension::LENGTH,
    Role::Decision,
    (-5.0, 8.0),
    0.005,
);
static FOOT: FieldCard =
    FieldCard::quantity("foot of the access", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static ACCESS: FieldCard =
    FieldCard::plain("slope of the access", Role::Decision, (0.0, 3.0), 0.05).form(Form::Slope);
static SURFACE: FieldCard = FieldCard::quantity(
    "temperature of the basking surface",
    Dimension::TEMPERATURE,
    Role::Reading,
    (288.15, 343.15),
    1.0,
)
.form(Form::Band);
static UV_INDEX: FieldCard =
    FieldCard::plain("UV index at the back of the animal", Role::Reading, (0.0, 12.0), 0.1);
static MATERIAL: ChoiceCard = ChoiceCard {
    what: "material of the basking surface",
    role: Role::Decision,
    options: &["wood", "cork", "rock", "concrete", "brick", "sand", "resin", "plastic"],
    default: None,
};
static OWN_MASS: FieldCard =
    FieldCard::quantity("mass of the float itself", Dimension::MASS, Role::Decision, (0.1, 500.0), 0.5);
static CARRIES: FieldCard =
    FieldCard::quantity("load the float is made for", Dimension::MASS, Role::Reading, (0.1, 1000.0), 0.5);
static FREEBOARD: FieldCard = FieldCard::quantity(
    "height of the float's deck over the water, unloaded",
    Dimension::LENGTH,
    Role::Decision,
    (0.0, 0.5),
    0.005,
);

/// A place to haul out and bask.
#[derive(Debug, Clone)]
pub struct Basking {
    /// Its id.
    pub id: String,
    /// The space it is in.
    pub space: Link,
    /// The pool it stands in or beside.
    pub pool: Link,
    /// The groups that use it; every group of the space when not stated.
    pub groups: List<Reference>,
    /// The electrical items that warm and light it.
    pub lamps: List<Reference>,
    /// The usable dry surface.
    pub outline: ShapeField,
    /// Its level.
    pub level: Level,
    /// What it is made of.
    pub material: Choice,
    /// Slope of the way up.
    pub access_slope: Number<Ratio>,
    /// Where the way up begins.
    pub access_foot: Level,
    /// Surface temperature under the lamp.
    pub surface_temperature: Number<ThermodynamicTemperature>,
    /// UV index at the animal's back, at the same place.
    pub uv_index: Number<Ratio>,
    /// What floats, if it does.
    pub float: Float,
}

/// What carries a floating site.
#[derive(Debug, Clone)]
pub struct Float {
    /// Mass of the float.
    pub own_mass: Number<Mass>,
    /// Load it is made for.
    pub carries: Number<Mass>,
    /// Height of the deck over the water, unloaded.
    pub freeboard: Number<Length>,
}

impl Basking {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Basking {
            id: r.id(),
            space: r.reference("space", "space the site is in"),
            pool: r.reference("pool", "pool the site stands in or beside"),
            groups: r.references("groups", "groups that use the site"),
            lamps: r.references("lamps", "lamps of the site"),
            outline: r.shape("outline", "outline of the basking surface"),
            level: r.level("level", &LEVEL),
            material: r.choice("material", &MATERIAL),
            access_slope: r.number("access-slope", &ACCESS),
            access_foot: r.level("access-foot", &FOOT),
            surface_temperature: r.number("surface-temperature", &SURFACE),
            uv_index: r.number("uv-index", &UV_INDEX),
            float: r.object("float", "float", |r| Float {
                own_mass: r.number("own-mass", &OWN_MASS),
                carries: r.number("carries", &CARRIES),
                freeboard: r.number("freeboard", &FREEBOARD),
            }),
        }
    }
}
