//! Filters: planted gravel and other biological stages, with their levels, layers and feed.

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::{Level, Link, List, Reference};
use crate::design::stage::{Media, Screen, UvStage};
use crate::design::weir::Weir;
use crate::field::{Choice, Flag, Number};
use crate::reader::Reader;
use crate::shape::ShapeField;
use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, MassDensity, MolarFlux, Ratio, VolumeRate};

static FILTER_KIND: ChoiceCard = ChoiceCard {
    what: "kind of filter",
    role: Role::Decision,
    options: &[
        "planted gravel",
        "static media",
        "moving bed",
        "trickling",
        "sand or bead",
        "mechanical screen",
        "settling",
        "UV clarifier",
    ],
    default: None,
};
static FILTER_OXYGEN_IN: FieldCard =
    FieldCard::quantity("oxygen in what comes in", Dimension::DENSITY, Role::Reading, (0.0, 0.02), 0.0001);
static FILTER_LIGHT_DOSE: FieldCard = FieldCard::quantity(
    "light on its plants",
    Dimension::PHOTON_FLUX,
    Role::Reading,
    (0.0, 0.000810185185185),
    5.78703703704e-06,
);
static FILTER_COVER_APERTURE: FieldCard =
    FieldCard::quantity("aperture of its cover", Dimension::LENGTH, Role::Decision, (0.001, 0.2), 0.001);
static FILTER_LEVELS_FLOOR: FieldCard =
    FieldCard::quantity("floor of the filter", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static FILTER_LEVELS_BED: FieldCard =
    FieldCard::quantity("top of the filter bed", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static FILTER_LEVELS_WATER: FieldCard =
    FieldCard::quantity("water level of the filter", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static FILTER_LEVELS_WALL_TOP: FieldCard =
    FieldCard::quantity("top of the filter wall", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static PLENUM_DEPTH: FieldCard =
    FieldCard::quantity("depth of the plenum", Dimension::LENGTH, Role::Decision, (0.0, 1.5), 0.01);
static PLENUM_VOIDS: FieldCard =
    FieldCard::plain("share of voids of the plenum", Role::Given, (0.0, 1.0), 0.01).form(Form::Share);
static PLENUM_FLUSH: FieldCard = FieldCard::quantity(
    "flow of the flush",
    Dimension::FLOW,
    Role::Decision,
    (2.77777777778e-05, 0.0277777777778),
    2.77777777778e-05,
);
static LAYER_MATERIAL: ChoiceCard = ChoiceCard {
    what: "material of the layer",
    role: Role::Decision,
    options: &["gravel", "sand", "expanded clay", "lava", "shell grit", "plastic"],
    default: None,
};
static LAYER_GRAIN: FieldCard =
    FieldCard::quantity("grain of the layer", Dimension::LENGTH, Role::Decision, (0.0001, 0.08), 0.0005)
        .form(Form::Band);
static LAYER_VOIDS: FieldCard =
    FieldCard::plain("share of voids of the layer", Role::Given, (0.0, 1.0), 0.01).form(Form::Share);
static LAYER_THICKNESS: FieldCard =
    FieldCard::quantity("thickness of the layer", Dimension::LENGTH, Role::Decision, (0.01, 2.0), 0.01);
static FILTER_FEED_SIDE: ChoiceCard = ChoiceCard {
    what: "side the filter is fed from",
    role: Role::Decision,
    options: &["bottom", "top", "side"],
    default: None,
};
static FILTER_FEED_AIR_BREAK: FieldCard =
    FieldCard::quantity("air break of the riser", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);

/// A filter: what takes out solids or works on dissolved waste.
#[derive(Debug, Clone)]
pub struct Filter {
    /// Its id.
    pub id: String,
    /// The space it stands in.
    pub space: Link,
    /// The water circuit whose water passes it.
    pub circuit: Link,
    /// What it is; a planted gravel filter is one that water rises or sinks through.
    pub kind: Choice,
    /// The filters and devices the water passes before this one.
    pub pre_treatment: List<Reference>,
    /// Inner faces of its walls: the plan area water passes.
    pub outline: ShapeField,
    /// Its levels from the floor up.
    pub levels: FilterLevels,
    /// The open space under the gravel that spreads the water.
    pub plenum: Plenum,
    /// Its layers, from the bottom up.
    pub layers: List<Layer>,
    /// The lip its water leaves over.
    pub lip: Weir,
    /// The emergency notch, for the day the gravel or the lip is clogged.
    pub notch: Weir,
    /// How the water comes in.
    pub feed: FilterFeed,
    /// What bacteria live on, where it is not layers of gravel.
    pub media: Media,
    /// What holds back solids.
    pub screen: Screen,
    /// The ultraviolet lamp of a clarifier.
    pub uv: UvStage,
    /// Dissolved oxygen in the water that comes in.
    pub oxygen_in: Number<MassDensity>,
    /// Light for plants a day at the height of their leaves, as a daily light integral (400 to 700 nm).
    pub light_dose: Number<MolarFlux>,
    /// Whether animals cannot get onto it: warm moist gravel is where they would lay and dig.
    pub animals_excluded: Flag,
    /// The widest opening of the mesh or grating over it.
    pub cover_aperture: Number<Length>,
}

/// Levels of a filter.
#[derive(Debug, Clone)]
pub struct FilterLevels {
    /// The inside of its floor.
    pub floor: Level,
    /// The top of its uppermost layer.
    pub bed: Level,
    /// The running water level, at the lip.
    pub water: Level,
    /// The top of what holds its water.
    pub wall_top: Level,
}

/// The open space under the bed of a filter.
#[derive(Debug, Clone)]
pub struct Plenum {
    /// From the floor to the underside of the gravel.
    pub depth: Number<Length>,
    /// How much of it is open to water.
    pub voids: Number<Ratio>,
    /// What its flushing outlet takes away; "none" where there is no outlet.
    pub flush: Number<VolumeRate>,
}

/// A layer of a filter.
#[derive(Debug, Clone)]
pub struct Layer {
    /// Its id.
    pub id: String,
    /// What it is made of.
    pub material: Choice,
    /// From the smallest to the largest grain, as "10 to 16 mm".
    pub grain: Number<Length>,
    /// How much of its bulk is open to water.
    pub voids: Number<Ratio>,
    /// As laid.
    pub thickness: Number<Length>,
    /// Whether it is washed free of fines before it is laid.
    pub washed: Flag,
}

/// How water comes into a filter.
#[derive(Debug, Clone)]
pub struct FilterFeed {
    /// From the bottom it rises, from the top it sinks through the bed.
    pub side: Choice,
    /// The return of the circuit that ends in it, with its header.
    pub from_return: Link,
    /// Where the riser is open to the air; above the water of the filter it cannot drain back through a stopped pump.
    pub air_break: Level,
    /// Whether a check valve stands in for the air break; grit holds it open.
    pub check_valve: Flag,
}

impl Filter {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Filter {
            id: r.id(),
            space: r.reference("space", "space the filter is in"),
            circuit: r.reference("circuit", "circuit of the filter"),
            kind: r.choice("kind", &FILTER_KIND),
            pre_treatment: r.references("pre-treatment", "what stands before it"),
            outline: r.shape("outline", "outline of the filter"),
            levels: r.object("levels", "levels of the filter", FilterLevels::read),
            plenum: r.object("plenum", "plenum", Plenum::read),
            layers: r.list("layers", "layers of the filter", Layer::read),
            lip: r.object("lip", "lip of the filter", Weir::read),
            notch: r.object("notch", "notch of the filter", Weir::read),
            feed: r.object("feed", "feed of the filter", FilterFeed::read),
            media: r.object("media", "media of the filter", Media::read),
            screen: r.object("screen", "screen of the filter", Screen::read),
            uv: r.object("uv", "UV lamp of the filter", UvStage::read),
            oxygen_in: r.number("oxygen-in", &FILTER_OXYGEN_IN),
            light_dose: r.number("light-dose", &FILTER_LIGHT_DOSE),
            animals_excluded: r.flag("animals-excluded", "animals kept off it", Role::Promise),
            cover_aperture: r.number("cover-aperture", &FILTER_COVER_APERTURE),
        }
    }
}

impl FilterLevels {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        FilterLevels {
            floor: r.level("floor", &FILTER_LEVELS_FLOOR),
            bed: r.level("bed", &FILTER_LEVELS_BED),
            water: r.level("water", &FILTER_LEVELS_WATER),
            wall_top: r.level("wall-top", &FILTER_LEVELS_WALL_TOP),
        }
    }
}

impl Plenum {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Plenum {
            depth: r.number("depth", &PLENUM_DEPTH),
            voids: r.number("voids", &PLENUM_VOIDS),
            flush: r.number("flush", &PLENUM_FLUSH),
        }
    }
}

impl Layer {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Layer {
            id: r.id(),
            material: r.choice("material", &LAYER_MATERIAL),
            grain: r.number("grain", &LAYER_GRAIN),
            voids: r.number("voids", &LAYER_VOIDS),
            thickness: r.number("thickness", &LAYER_THICKNESS),
            washed: r.flag("washed", "washed", Role::Promise),
        }
    }
}

impl FilterFeed {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        FilterFeed {
            side: r.choice("side", &FILTER_FEED_SIDE),
            from_return: r.reference("return", "return that feeds the filter"),
            air_break: r.level("air-break", &FILTER_FEED_AIR_BREAK),
            check_valve: r.flag("check-valve", "check valve in the feed", Role::Decision),
        }
    }
}

impl Filter {
    /// The level of a name as used in `"wetland.water"`.
    pub fn level(&self, name: &str) -> Option<&Level> {
        match name {
            "floor" => Some(&self.levels.floor),
            "bed" => Some(&self.levels.bed),
            "water" => Some(&self.levels.water),
            "wall-top" => Some(&self.levels.wall_top),
            "lip" => Some(&self.lip.level),
            "notch" => Some(&self.notch.level),
            "air-break" => Some(&self.feed.air_break),
            _ => None,
        }
    }
}
