//! What tops a pool up, and what else comes into its water: materials it touches, fish kept as food.

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::field::{Choice, Flag, Number};
use crate::reader::Reader;
use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, Mass, MassDensity, Ratio, ThermodynamicTemperature, Time, VolumeRate};

static FILL_FLOW: FieldCard = FieldCard::quantity(
    "flow of the fill",
    Dimension::FLOW,
    Role::Reading,
    (2.77777777778e-06, 0.0138888888889),
    1.38888888889e-05,
);
static FILL_RENEWAL: FieldCard = FieldCard::quantity(
    "water renewed",
    Dimension::FLOW,
    Role::Decision,
    (0.0, 0.00115740740741),
    1.15740740741e-07,
);
static FILL_LONGEST: FieldCard =
    FieldCard::quantity("longest time it runs", Dimension::TIME, Role::Decision, (60.0, 86400.0), 60.0);
static FILL_TEMPERATURE: FieldCard = FieldCard::quantity(
    "temperature of the fill",
    Dimension::TEMPERATURE,
    Role::Reading,
    (275.15, 308.15),
    0.5,
);
static FILL_AIR_GAP: FieldCard =
    FieldCard::quantity("air gap of the fill", Dimension::LENGTH, Role::Decision, (0.0, 1.0), 0.005);
static FILL_BACKFLOW: ChoiceCard = ChoiceCard {
    what: "backflow protection",
    role: Role::Decision,
    options: &["air gap", "break tank", "pipe interrupter", "double check valve"],
    default: None,
};
static FILL_CHLORINE: FieldCard =
    FieldCard::quantity("chlorine in the fill", Dimension::DENSITY, Role::Reading, (0.0, 0.01), 5e-05);
static FILL_NITRATE: FieldCard =
    FieldCard::quantity("nitrate in the fill", Dimension::DENSITY, Role::Reading, (0.0, 0.1), 0.001);
static FILL_ALKALINITY: FieldCard =
    FieldCard::quantity("alkalinity of the fill", Dimension::DENSITY, Role::Reading, (0.0, 0.5), 0.005);
static WET_MATERIAL_KIND: ChoiceCard = ChoiceCard {
    what: "kind of wet material",
    role: Role::Decision,
    options: &[
        "mortar",
        "concrete",
        "galvanised steel",
        "copper",
        "brass",
        "lead",
        "treated timber",
        "sealant",
        "liner",
        "coating",
        "natural stone",
    ],
    default: None,
};
static WET_MATERIAL_PH: FieldCard = FieldCard::plain("pH after leaching", Role::Reading, (4.0, 13.0), 0.1);
static WET_MATERIAL_LEACHED: FieldCard =
    FieldCard::quantity("time leached", Dimension::TIME, Role::Decision, (0.0, 7776000.0), 86400.0);
static WET_MATERIAL_CURED: FieldCard =
    FieldCard::quantity("time cured", Dimension::TIME, Role::Decision, (0.0, 7776000.0), 86400.0);
static FOOD_FISH_COUNT: FieldCard =
    FieldCard::plain("food fish", Role::Decision, (0.0, 5000.0), 1.0).form(Form::Count);
static FOOD_FISH_MASS: FieldCard =
    FieldCard::quantity("mass of a food fish", Dimension::MASS, Role::Decision, (0.0001, 1.0), 0.0005);
static FOOD_FISH_STAY: FieldCard =
    FieldCard::quantity("time a food fish stays", Dimension::TIME, Role::Decision, (0.0, 5184000.0), 86400.0);

/// What tops a pool up, and what its water is like.
#[derive(Debug, Clone)]
pub struct Fill {
    /// What runs in while it is open; a fill that sticks open runs until somebody comes.
    pub flow: Number<VolumeRate>,
    /// How much of the water is taken out and replaced a day, on average.
    pub renewal: Number<VolumeRate>,
    /// Whether a meter shows what has run in, so that a leak is not hidden.
    pub metered: Flag,
    /// After which a timer shuts it whatever the level says.
    pub longest: Number<Time>,
    /// As it runs in, in the coldest month.
    pub temperature: Number<ThermodynamicTemperature>,
    /// From the end of the pipe down to the highest water, the rim.
    pub air_gap: Number<Length>,
    /// What keeps pool water out of the mains.
    pub backflow: Choice,
    /// Free chlorine and chloramine as chlorine, as it runs in.
    pub chlorine: Number<MassDensity>,
    /// As nitrogen (NO3-N), as it runs in; nitrate as NO3 is 4.43 times as much.
    pub nitrate: Number<MassDensity>,
    /// As calcium carbonate, as it runs in.
    pub alkalinity: Number<MassDensity>,
}

/// Something the water touches that may give off what harms.
#[derive(Debug, Clone)]
pub struct WetMaterial {
    /// Its id.
    pub id: String,
    /// What it is made of.
    pub kind: Choice,
    /// Whether a coating keeps the water off it.
    pub sealed: Flag,
    /// The pH of still water that stood on it for 72 hours, last reading.
    pub ph: Number<Ratio>,
    /// How long it has stood under water that was thrown away.
    pub leached: Number<Time>,
    /// How long it cures before water comes to it.
    pub cured: Number<Time>,
}

/// Fish kept in the pool to be eaten.
#[derive(Debug, Clone)]
pub struct FoodFish {
    /// The most that are in the pool at a time.
    pub count: Number<Ratio>,
    /// Of one of them.
    pub mass: Number<Mass>,
    /// How long one is there before it is eaten; while it is, it breathes and excretes.
    pub stay: Number<Time>,
}

impl Fill {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Fill {
            flow: r.number("flow", &FILL_FLOW),
            renewal: r.number("renewal", &FILL_RENEWAL),
            metered: r.flag("metered", "metered", Role::Decision),
            longest: r.number("longest", &FILL_LONGEST),
            temperature: r.number("temperature", &FILL_TEMPERATURE),
            air_gap: r.number("air-gap", &FILL_AIR_GAP),
            backflow: r.choice("backflow", &FILL_BACKFLOW),
            chlorine: r.number("chlorine", &FILL_CHLORINE),
            nitrate: r.number("nitrate", &FILL_NITRATE),
            alkalinity: r.number("alkalinity", &FILL_ALKALINITY),
        }
    }
}

impl WetMaterial {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        WetMaterial {
            id: r.id(),
            kind: r.choice("kind", &WET_MATERIAL_KIND),
            sealed: r.flag("sealed", "sealed", Role::Promise),
            ph: r.number("ph", &WET_MATERIAL_PH),
            leached: r.number("leached", &WET_MATERIAL_LEACHED),
            cured: r.number("cured", &WET_MATERIAL_CURED),
        }
    }
}

impl FoodFish {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        FoodFish {
            count: r.number("count", &FOOD_FISH_COUNT),
            mass: r.number("mass", &FOOD_FISH_MASS),
            stay: r.number("stay", &FOOD_FISH_STAY),
        }
    }
}
