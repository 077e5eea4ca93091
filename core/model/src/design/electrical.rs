//! Electrical items near water, the partitions between, and who classed the water as what.

use haulout_quantity::Dimension;
use haulout_quantity::si::{ElectricCurrent, ElectricPotential, Length, Power, Ratio};

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::{Level, Link, List, Track};
use crate::field::{Choice, Flag, Number, Text};
use crate::reader::Reader;

const fn at(what: &'static str) -> FieldCard {
    FieldCard::quantity(what, Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01)
}

static X: FieldCard = at("x");
static Y: FieldCard = at("y");
static Z: FieldCard = at("height");
static EXTENT: FieldCard = FieldCard::quantity(
    "reach of the case from its centre",
    Dimension::LENGTH,
    Role::Given,
    (0.0, 3.0),
    0.01,
);
static CORD: FieldCard =
    FieldCard::quantity("length of the cord", Dimension::LENGTH, Role::Decision, (0.0, 20.0), 0.1);
static VOLTAGE: FieldCard =
    FieldCard::quantity("voltage", Dimension::VOLTAGE, Role::Decision, (1.0, 690.0), 1.0);
static RESIDUAL: FieldCard =
    FieldCard::quantity("rated residual current", Dimension::CURRENT, Role::Decision, (0.001, 1.0), 0.001);
static TOP: FieldCard =
    FieldCard::quantity("top of the partition", Dimension::LENGTH, Role::Decision, (-5.0, 10.0), 0.01);
static CLASS: ChoiceCard = ChoiceCard {
    what: "what the water is classed as",
    role: Role::Given,
    options: &[
        "swimming pool",
        "fountain basin, entered",
        "fountain basin, nobody enters while energised",
        "other water",
    ],
    default: None,
};
static KIND: ChoiceCard = ChoiceCard {
    what: "kind of electrical item",
    role: Role::Decision,
    options: &[
        "socket",
        "switch",
        "luminaire",
        "lamp",
        "heater",
        "pump",
        "control gear",
        "transformer",
        "other",
    ],
    default: None,
};
static SUPPLY: ChoiceCard = ChoiceCard {
    what: "supply",
    role: Role::Decision,
    options: &["mains", "SELV, AC", "SELV, DC", "separated"],
    default: None,
};
/// Degrees of protection as marked (IEC 60529); numerals up to 6 imply the lower ones, 7 and 8 do not imply 5 and 6.
static INGRESS: ChoiceCard = ChoiceCard {
    what: "degree of protection against water",
    role: Role::Given,
    options: &[
        "IPX0",
        "IPX2",
        "IPX4",
        "IPX5",
        "IPX6",
        "IPX7",
        "IPX8",
        "IPX4/IPX7",
        "IPX5/IPX7",
        "IPX5/IPX8",
        "IPX6/IPX8",
    ],
    default: None,
};

static ITEM_POWER: FieldCard =
    FieldCard::quantity("power of the item", Dimension::POWER, Role::Decision, (1.0, 100000.0), 1.0);
static ITEM_SUPPORTS: FieldCard =
    FieldCard::plain("supports that hold it", Role::Decision, (0.0, 20.0), 1.0).form(Form::Count);
static ITEM_TO_COMBUSTIBLES: FieldCard =
    FieldCard::quantity("distance to what burns", Dimension::LENGTH, Role::Decision, (0.0, 10.0), 0.01);
static ITEM_ISOLATOR_AWAY: FieldCard = FieldCard::quantity(
    "distance of its isolator from the water",
    Dimension::LENGTH,
    Role::Decision,
    (0.0, 50.0),
    0.1,
);
/// Electrical matters of the design.
#[derive(Debug, Clone)]
pub struct Electrical {
    /// What the water is classed as.
    pub classed: Choice,
    /// Who classed it.
    pub classed_by: Text,
    /// The items.
    pub items: List<Item>,
    /// Fixed insulating partitions.
    pub partitions: List<Partition>,
}

/// An electrical item.
#[derive(Debug, Clone)]
pub struct Item {
    /// Its id.
    pub id: String,
    /// What it is.
    pub kind: Choice,
    /// Its centre: x, y, and height over the datum.
    pub at: [Number<Length>; 3],
    /// How far its case reaches from the centre.
    pub extent: Number<Length>,
    /// A plug-in item is where its cord reaches.
    pub cord: Number<Length>,
    /// Mains or extra-low.
    pub supply: Choice,
    /// Voltage.
    pub voltage: Number<ElectricPotential>,
    /// Rated residual current of its protection; `"none"` where there is none.
    pub residual_current: Number<ElectricCurrent>,
    /// As marked.
    pub ingress: Choice,
    /// Whether it is bonded.
    pub bonded: Flag,
    /// Whether it stands under water on purpose.
    pub submersed: Flag,
    /// The space it is in.
    pub space: Link,
    /// Its rated power.
    pub power: Number<Power>,
    /// Independent supports, each able to carry it alone.
    pub supports: Number<Ratio>,
    /// From its hot face to the nearest plant, foam, timber or dust.
    pub to_combustibles: Number<Length>,
    /// Whether animals cannot touch it.
    pub guarded: Flag,
    /// The name of the protective device it is behind: what shares one goes out together.
    pub behind: Text,
    /// How far from the rim the switch stands that makes it dead.
    pub isolator_away: Number<Length>,
}

/// A fixed insulating partition that a path has to go round.
#[derive(Debug, Clone)]
pub struct Partition {
    /// Its id.
    pub id: String,
    /// Its line in plan.
    pub line: Track,
    /// Its top.
    pub top: Level,
    /// Whether it is fixed, closed and insulating; mesh, plants and loose panels are none.
    pub solid: Flag,
}

impl Electrical {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Electrical {
            classed: r.choice("classed", &CLASS),
            classed_by: r.text("classed-by", "who classed the water"),
            items: r.repeats("items", "electrical items", Item::read),
            partitions: r.list("partitions", "fixed insulating partitions", Partition::read),
        }
    }
}

impl Item {
    fn read<R: Reader>(r: &mut R) -> Self {
        Item {
            id: r.id(),
            kind: r.choice("kind", &KIND),
            at: r.point("at", [&X, &Y, &Z]),
            extent: r.number("extent", &EXTENT),
            cord: r.number("cord", &CORD),
            supply: r.choice("supply", &SUPPLY),
            voltage: r.number("voltage", &VOLTAGE),
            residual_current: r.number("residual-current", &RESIDUAL),
            ingress: r.choice("ingress", &INGRESS),
            bonded: r.flag("bonded", "bonded", Role::Promise),
            submersed: r.flag("submersed", "under water on purpose", Role::Decision),
            space: r.reference("space", "space the item is in"),
            power: r.number("power", &ITEM_POWER),
            supports: r.number("supports", &ITEM_SUPPORTS),
            to_combustibles: r.number("to-combustibles", &ITEM_TO_COMBUSTIBLES),
            guarded: r.flag("guarded", "guarded against touch", Role::Promise),
            behind: r.text("behind", "protective device it is behind"),
            isolator_away: r.number("isolator-away", &ITEM_ISOLATOR_AWAY),
        }
    }
}

impl Partition {
    fn read<R: Reader>(r: &mut R) -> Self {
        Partition {
            id: r.id(),
            line: r.track("line", "line of the partition"),
            top: r.level("top", &TOP),
            solid: r.flag("solid", "fixed, closed and insulating", Role::Promise),
        }
    }
}
