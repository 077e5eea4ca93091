//! Pools: outline, levels, zones of the bed, what takes up volume, the water in them.

use haulout_quantity::Dimension;
use haulout_quantity::si::{
    Length, MassDensity, Ratio, TemperatureInterval, ThermodynamicTemperature, Volume,
};

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::{Level, Link, List, Reference};
use crate::design::exit::{Exit, Ledge, Opening};
use crate::design::fill::{Fill, FoodFish, WetMaterial};
use crate::design::heater::Insulation;
use crate::design::overflow::{Drain, Overflow};
use crate::field::{Choice, Flag, Number};
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

static POOL_BED_FALL: FieldCard =
    FieldCard::plain("fall of the bed", Role::Decision, (0.002, 0.333333333333), 0.005).form(Form::Slope);
static POOL_SURGE: FieldCard =
    FieldCard::quantity("wave over the water level", Dimension::LENGTH, Role::Reading, (0.0, 0.5), 0.005);
static LEVELS_PUMPS_OFF: FieldCard = FieldCard::quantity(
    "water level with the pumps off",
    Dimension::LENGTH,
    Role::Decision,
    (-6.0, 6.0),
    0.005,
);

static WATER_PH: FieldCard = FieldCard::plain("pH", Role::Reading, (4.0, 10.0), 0.1);
static WATER_PH_SWING: FieldCard = FieldCard::plain("swing of the pH", Role::Reading, (0.0, 2.0), 0.1);
static WATER_ALKALINITY: FieldCard =
    FieldCard::quantity("alkalinity", Dimension::DENSITY, Role::Reading, (0.0, 0.5), 0.005);
static WATER_HARDNESS: FieldCard =
    FieldCard::quantity("hardness", Dimension::DENSITY, Role::Reading, (0.0, 1.0), 0.005);
static WATER_TURBIDITY: FieldCard =
    FieldCard::quantity("turbidity", Dimension::NUMBER, Role::Reading, (0.0, 100.0), 0.1);
static WATER_OXYGEN: FieldCard =
    FieldCard::quantity("dissolved oxygen", Dimension::DENSITY, Role::Reading, (0.0, 0.02), 0.0001);
static WATER_COVER: FieldCard =
    FieldCard::plain("share of the surface covered", Role::Decision, (0.0, 1.0), 0.01).form(Form::Share);
static WATER_SPRAY: FieldCard =
    FieldCard::plain("factor on evaporation for falls and spray", Role::Given, (1.0, 5.0), 0.1);
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
    /// Whether a pump lifts water into it: a raised basin then has to lose as much as comes in.
    pub pump_fed: Flag,
    /// How much the bed falls towards where dirt is collected.
    pub bed_fall: Number<Ratio>,
    /// The intakes and outlets the dirt of the bed is swept to.
    pub collected_by: List<Reference>,
    /// How high water is thrown by animals and falls.
    pub surge: Number<Length>,
    /// The ways out of the water. "none" says that animals cannot get out.
    pub exits: List<Exit>,
    /// Where an animal can rest in the water with its nostrils in the air.
    pub ledges: List<Ledge>,
    /// Gaps and openings under or beside the water. "none" says that there are none.
    pub openings: List<Opening>,
    /// What takes water away before it comes over the rim.
    pub overflows: List<Overflow>,
    /// How it is emptied.
    pub drain: Drain,
    /// What tops it up, and with what.
    pub fill: Fill,
    /// Layers between its water and what is colder.
    pub insulation: List<Insulation>,
    /// What its water touches and may be harmed by.
    pub wet_materials: List<WetMaterial>,
    /// Fish kept in it to be eaten.
    pub food_fish: FoodFish,
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
    /// Where the water stands after all pumps have stopped and everything has run back.
    pub pumps_off: Level,
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
    /// The intakes and outlets the dirt of this part of the bed is swept to.
    pub collected_by: List<Reference>,
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
    /// pH of the water.
    pub ph: Number<Ratio>,
    /// How far the pH may swing to either side.
    pub ph_swing: Number<Ratio>,
    /// As calcium carbonate: what nitrification uses up.
    pub alkalinity: Number<MassDensity>,
    /// As calcium carbonate.
    pub hardness: Number<MassDensity>,
    /// In nephelometric units, where no Secchi depth is stated.
    pub turbidity: Number<Ratio>,
    /// In the open water, at the warmest hour.
    pub oxygen: Number<MassDensity>,
    /// How much of the surface leaves or lids keep from evaporating.
    pub cover: Number<Ratio>,
    /// How many times the evaporation of the still surface; falls and spray commonly double it.
    pub spray: Number<Ratio>,
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
            pump_fed: r.flag("pump-fed", "fed by a pump", Role::Decision),
            bed_fall: r.number("bed-fall", &POOL_BED_FALL),
            collected_by: r.references("collected-by", "what takes its dirt"),
            surge: r.number("surge", &POOL_SURGE),
            exits: r.repeats("exits", "exits", Exit::read),
            ledges: r.repeats("ledges", "ledges and resting shelves", Ledge::read),
            openings: r.repeats("openings", "openings and gaps", Opening::read),
            overflows: r.repeats("overflows", "overflows", Overflow::read),
            drain: r.object("drain", "drain", Drain::read),
            fill: r.object("fill", "fill", Fill::read),
            insulation: r.list("insulation", "insulation of the pool", Insulation::read),
            wet_materials: r.list("wet-materials", "wet materials", WetMaterial::read),
            food_fish: r.object("food-fish", "food fish", FoodFish::read),
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
            pumps_off: r.level("pumps-off", &LEVELS_PUMPS_OFF),
        }
    }

    /// The level of a name as used in `"main.water"`.
    pub fn named(&self, name: &str) -> Option<&Level> {
        match name {
            "low" => Some(&self.low),
            "water" => Some(&self.water),
            "pumps-off" => Some(&self.pumps_off),
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
            collected_by: r.references("collected-by", "what takes its dirt"),
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
            ph: r.number("ph", &WATER_PH),
            ph_swing: r.number("ph-swing", &WATER_PH_SWING),
            alkalinity: r.number("alkalinity", &WATER_ALKALINITY),
            hardness: r.number("hardness", &WATER_HARDNESS),
            turbidity: r.number("turbidity", &WATER_TURBIDITY),
            oxygen: r.number("oxygen", &WATER_OXYGEN),
            cover: r.number("cover", &WATER_COVER),
            spray: r.number("spray", &WATER_SPRAY),
        }
    }
}
