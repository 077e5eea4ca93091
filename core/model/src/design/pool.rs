//! Pools: outline, levels, zones of the bed, what takes up volume, the water in them.

use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, Ratio, TemperatureInterval, ThermodynamicTemperature, Volume};

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::{Level, Link, List, Reference};
use crate::field::{Choice, Number};
use crate::reader::Reader;
use crate::shape::ShapeField;

const LEVELS: (f64, f64) = (-6.0, 6.0);

const fn level(what: &'static str) -> FieldCard {
    FieldCard::quantity(what, Dimension::LENGTH, Role::Decision, LEVELS, 0.005)
}

static LOW: FieldCard = level("lowest running level");
static WATER: FieldCard = level("water level");
static OVERFLOW: FieldCard = level("overflow level");
static LINER_TOP: FieldCard = level("top of the liner");
static RIM: FieldCard = level("rim");
static BED: FieldCard = level("bed level");
static DEPTH: FieldCard = FieldCard::quantity("depth", Dimension::LENGTH, Role::Decision, (0.0, 3.0), 0.01);
static EDGE: FieldCard =
    FieldCard::plain("slope of the edge", Role::Decision, (0.05, 20.0), 0.05).form(Form::Slope);
static SOLID_VOLUME: FieldCard =
    FieldCard::quantity("volume of the solid", Dimension::VOLUME, Role::Decision, (0.0, 100.0), 0.01);
static THICKNESS: FieldCard =
    FieldCard::quantity("thickness of the layer", Dimension::LENGTH, Role::Decision, (0.0, 1.5), 0.01);
static VOIDS: FieldCard =
    FieldCard::plain("share of voids", Role::Given, (0.0, 0.99), 0.01).form(Form::Share);
static SOLID_KIND: ChoiceCard = ChoiceCard {
    what: "kind of solid",
    role: Role::Decision,
    options: &["rock", "gravel", "void-former", "timber", "other"],
    default: None,
};
static SECCHI: FieldCard =
    FieldCard::quantity("clarity (Secchi depth)", Dimension::LENGTH, Role::Reading, (0.1, 20.0), 0.05);
static TEMPERATURE: FieldCard =
    FieldCard::quantity("water temperature", Dimension::TEMPERATURE, Role::Reading, (283.15, 308.15), 0.5)
        .form(Form::Band);
static SWING: FieldCard = FieldCard::quantity(
    "swing of the water temperature",
    Dimension::TEMPERATURE,
    Role::Reading,
    (0.0, 10.0),
    0.5,
)
.form(Form::Difference);

/// A pool.
#[derive(Debug, Clone)]
pub struct Pool {
    /// Its id.
    pub id: String,
    /// The space it lies in.
    pub space: Link,
    /// Its outline at the rim.
    pub outline: ShapeField,
    /// Its levels.
    pub levels: Levels,
    /// Where no zone lies: the bed, as a depth below the water level.
    pub depth: Number<Length>,
    /// The same as a level; both only if they agree.
    pub bed: Level,
    /// Sheer, or the slope from the rim down.
    pub edge: Number<Ratio>,
    /// Zones of other depth, later ones over earlier ones.
    pub zones: List<Zone>,
    /// What takes up volume.
    pub solids: List<Solid>,
    /// The water.
    pub water: Water,
}

/// The level ladder of a pool.
#[derive(Debug, Clone)]
pub struct Levels {
    /// Lowest running level.
    pub low: Level,
    /// Normal water level.
    pub water: Level,
    /// Invert of the overflow.
    pub overflow: Level,
    /// Top of the liner.
    pub liner_top: Level,
    /// Top of what holds the water.
    pub rim: Level,
}

/// A part of the bed at its own depth.
#[derive(Debug, Clone)]
pub struct Zone {
    /// Its id.
    pub id: String,
    /// Its outline.
    pub outline: ShapeField,
    /// Depth below the water level.
    pub depth: Number<Length>,
    /// The same as a level.
    pub bed: Level,
    /// Step, or the slope from the bed around it.
    pub edge: Number<Ratio>,
}

/// Something in the pool that takes up volume.
#[derive(Debug, Clone)]
pub struct Solid {
    /// Its id.
    pub id: String,
    /// Rock, gravel, void-former …
    pub kind: Choice,
    /// Its bulk, where stated outright.
    pub volume: Number<Volume>,
    /// Its thickness, where it is a layer.
    pub thickness: Number<Length>,
    /// The zones the layer lies in.
    pub zones: List<Reference>,
    /// How much of its bulk is open to water.
    pub voids: Number<Ratio>,
}

/// The water of a pool.
#[derive(Debug, Clone)]
pub struct Water {
    /// Temperature.
    pub temperature: Number<ThermodynamicTemperature>,
    /// How far it may swing either way.
    pub swing: Number<TemperatureInterval>,
    /// Clarity as Secchi depth.
    pub secchi: Number<Length>,
}

impl Pool {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Pool {
            id: r.id(),
            space: r.reference("space", "space the pool lies in"),
            outline: r.shape("outline", "outline of the pool"),
            levels: r.object("levels", "levels", Levels::read),
            depth: r.number("depth", &DEPTH),
            bed: r.level("bed", &BED),
            edge: r.number("edge", &EDGE),
            zones: r.list("zones", "depth zones", Zone::read),
            solids: r.list("solids", "solids in the pool", Solid::read),
            water: r.object("water", "water", Water::read),
        }
    }
}

impl Levels {
    fn read<R: Reader>(r: &mut R) -> Self {
        Levels {
            low: r.level("low", &LOW),
            water: r.level("water", &WATER),
            overflow: r.level("overflow", &OVERFLOW),
            liner_top: r.level("liner-top", &LINER_TOP),
            rim: r.level("rim", &RIM),
        }
    }

    /// The level of a name as used in `"main.water"`.
    pub fn named(&self, name: &str) -> Option<&Level> {
        match name {
            "low" => Some(&self.low),
            "water" => Some(&self.water),
            "overflow" => Some(&self.overflow),
            "liner-top" => Some(&self.liner_top),
            "rim" => Some(&self.rim),
            _ => None,
        }
    }
}

impl Zone {
    fn read<R: Reader>(r: &mut R) -> Self {
        Zone {
            id: r.id(),
            outline: r.shape("outline", "outline of the zone"),
            depth: r.number("depth", &DEPTH),
            bed: r.level("bed", &BED),
            edge: r.number("edge", &EDGE),
        }
    }
}

impl Solid {
    fn read<R: Reader>(r: &mut R) -> Self {
        Solid {
            id: r.id(),
            kind: r.choice("kind", &SOLID_KIND),
            volume: r.number("volume", &SOLID_VOLUME),
            thickness: r.number("thickness", &THICKNESS),
            zones: r.references("zones", "zones the layer lies in"),
            voids: r.number("voids", &VOIDS),
        }
    }
}

impl Water {
    fn read<R: Reader>(r: &mut R) -> Self {
        Water {
            temperature: r.number("temperature", &TEMPERATURE),
            swing: r.number("swing", &SWING),
            secchi: r.number("secchi", &SECCHI),
        }
    }
}
