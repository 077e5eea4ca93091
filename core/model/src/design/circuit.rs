//! Water circuits: what they serve, the pump, the runs, the devices in line.

use haulout_quantity::Dimension;
use haulout_quantity::si::{Area, Length, Power, Ratio, VolumeRate};

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::{Curve, Level, Link, List, Reference};
use crate::design::returns::{Return, Valve};
use crate::field::{Choice, Flag, Number};
use crate::reader::Reader;

static X: FieldCard = FieldCard::quantity("x", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static Y: FieldCard = FieldCard::quantity("y", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static INTAKE_LEVEL: FieldCard =
    FieldCard::quantity("top of the intake", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.01);
static NET_AREA: FieldCard =
    FieldCard::quantity("net area of the grille", Dimension::AREA, Role::Decision, (0.0005, 2.0), 0.001);
static APERTURE: FieldCard =
    FieldCard::quantity("aperture of the grille", Dimension::LENGTH, Role::Decision, (0.0005, 0.1), 0.0005);
static HEAD_AVAILABLE: FieldCard =
    FieldCard::quantity("head on a blocked grille", Dimension::LENGTH, Role::Given, (0.0, 30.0), 0.05);
static STATIC_HEAD: FieldCard = FieldCard::quantity(
    "static head, water surface to water surface or outlet",
    Dimension::LENGTH,
    Role::Decision,
    (-2.0, 10.0),
    0.01,
);
static BORE: FieldCard = FieldCard::quantity("bore", Dimension::LENGTH, Role::Decision, (0.005, 0.5), 0.001);
static LENGTH: FieldCard =
    FieldCard::quantity("length of the run", Dimension::LENGTH, Role::Decision, (0.0, 200.0), 0.1);
static ROUGHNESS: FieldCard =
    FieldCard::quantity("roughness of the wall", Dimension::LENGTH, Role::Given, (0.0, 0.005), 0.000_000_5)
        .or_else(
            1.5e-6,
            haulout_quantity::Basis::Recalled,
            "smooth PE or PVC pipe, as Moody-type tables list it",
        );
static K_SUM: FieldCard = FieldCard::plain("sum of loss coefficients", Role::Decision, (0.0, 200.0), 0.1);
static RIBBED: FieldCard =
    FieldCard::plain("factor on friction for ribbed hose", Role::Given, (1.0, 4.0), 0.1).or_else(
        1.0,
        haulout_quantity::Basis::CommonPractice,
        "a run that is not called ribbed is smooth-bored",
    );
static AT_FLOW: FieldCard =
    FieldCard::quantity("flow the loss was read at", Dimension::FLOW, Role::Reading, (1e-6, 0.1), 1e-5);
static CLEAN: FieldCard =
    FieldCard::quantity("loss when clean", Dimension::LENGTH, Role::Reading, (0.0, 20.0), 0.01);
static DIRTY: FieldCard =
    FieldCard::quantity("loss when dirty", Dimension::LENGTH, Role::Reading, (0.0, 20.0), 0.01);
static FITTINGS: FieldCard =
    FieldCard::plain("fittings by kind", Role::Decision, (0.0, 50.0), 1.0).form(Form::Count);

static ARRANGEMENT: ChoiceCard = ChoiceCard {
    what: "arrangement of the pumps",
    role: Role::Decision,
    options: &["standby", "parallel", "series"],
    default: None,
};

/// The fittings a run may count, with the names of the table of loss coefficients.
pub const FITTING_NAMES: &[&str] = &[
    "elbow-90",
    "elbow-45",
    "tee-through",
    "tee-branch",
    "entrance",
    "exit",
    "check-valve",
    "ball-valve",
    "union",
];

static CIRCUIT_CUT_OUT: FieldCard = FieldCard::quantity(
    "level of the low-water cut-out",
    Dimension::LENGTH,
    Role::Decision,
    (-6.0, 6.0),
    0.005,
);
static INTAKE_KIND: ChoiceCard = ChoiceCard {
    what: "kind of intake",
    role: Role::Decision,
    options: &["bottom", "side", "skimmer", "surface weir", "sump"],
    default: None,
};
static INTAKE_GROSS_AREA: FieldCard =
    FieldCard::quantity("gross area of the grille", Dimension::AREA, Role::Decision, (0.0005, 4.0), 0.001);
static INTAKE_FACE: ChoiceCard = ChoiceCard {
    what: "face of the grille",
    role: Role::Decision,
    options: &["flat", "domed", "long slot"],
    default: None,
};
static INTAKE_THROAT: FieldCard =
    FieldCard::quantity("height of the throat", Dimension::LENGTH, Role::Decision, (0.005, 0.5), 0.005);

static PUMP_POWER: FieldCard =
    FieldCard::quantity("power of the pump", Dimension::POWER, Role::Reading, (1.0, 20000.0), 5.0);
static PUMP_EFFICIENCY: FieldCard =
    FieldCard::plain("efficiency of the pump", Role::Reading, (0.0, 1.0), 0.01).form(Form::Share);
static PUMP_HEAT_TO_WATER: FieldCard =
    FieldCard::plain("share of its power that warms the water", Role::Given, (0.0, 1.0), 0.01)
        .form(Form::Share);
static PUMP_NPSH: FieldCard = FieldCard::quantity(
    "suction head the pump needs (NPSH)",
    Dimension::LENGTH,
    Role::Reading,
    (0.1, 15.0),
    0.1,
);
static PUMP_LEVEL: FieldCard =
    FieldCard::quantity("level of the pump's eye", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.01);
static RUN_SIDE: ChoiceCard = ChoiceCard {
    what: "side of the pump",
    role: Role::Decision,
    options: &["suction", "delivery"],
    default: None,
};
static RUN_MATERIAL: ChoiceCard = ChoiceCard {
    what: "material of the run",
    role: Role::Decision,
    options: &["PE", "PVC-U", "smooth hose", "ribbed hose", "steel", "copper"],
    default: None,
};
static RUN_HIGHEST: FieldCard =
    FieldCard::quantity("highest point of the run", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);

static DEVICE_KIND: ChoiceCard = ChoiceCard {
    what: "kind of device",
    role: Role::Decision,
    options: &["screen", "UV clarifier", "heater", "pressure filter", "chiller", "flow meter", "other"],
    default: None,
};
/// A water circuit.
#[derive(Debug, Clone)]
pub struct Circuit {
    /// Its id.
    pub id: String,
    /// Every basin and filter it joins.
    pub serves: List<Reference>,
    /// Its pump.
    pub pump: Pump,
    /// Pipe runs in series.
    pub runs: List<Run>,
    /// Devices in line.
    pub devices: List<Device>,
    /// Where the circuit takes its water.
    pub intakes: List<Intake>,
    /// Height the water is lifted, surface to surface.
    pub static_head: Number<Length>,
    /// The pool whose surface the water is lifted from; with "to" it takes the place of the static head.
    pub from: Link,
    /// The pool or filter whose surface it is lifted to, or the return it comes out of in the air.
    pub to: Link,
    /// Where the pump is stopped before it empties the pool over a split joint.
    pub cut_out: Level,
    /// The middle of the inlet of the first pump.
    pub pump_level: Level,
    /// Another pump, beside the first, behind it, or in reserve.
    pub second_pump: SecondPump,
    /// Where it gives its water back.
    pub returns: List<Return>,
}

/// An intake with its grille.
#[derive(Debug, Clone)]
pub struct Intake {
    /// Its id.
    pub id: String,
    /// The pool it takes its water from.
    pub pool: Link,
    /// Where it is, in plan.
    pub at: [Number<Length>; 2],
    /// Top of the grille.
    pub level: Level,
    /// Open area of the grille, framing left out.
    pub area: Number<Area>,
    /// Widest opening of the grille.
    pub aperture: Number<Length>,
    /// The other intake of the same circuit that can pass the whole flow alone.
    pub partner: Link,
    /// The largest head that can act on a wholly blocked grille: of the pump at no flow, or the drop of a gravity sump.
    pub head: Number<Length>,
    /// Where it takes its water; a sump is fed by fall, and no pump pulls at its grille.
    pub kind: Choice,
    /// The pipe run that begins at it; the first one when left out.
    pub run: Link,
    /// The whole face, bars included.
    pub gross_area: Number<Area>,
    /// A flat face can be sealed by a body, a dome cannot.
    pub face: Choice,
    /// Whether it can be taken off with a tool only.
    pub tool: Flag,
    /// Of a skimmer or weir: what swims over it has to find a way out.
    pub throat: Number<Length>,
    /// Whether an animal that got behind it finds a way out.
    pub way_out: Flag,
}

/// A pump.
#[derive(Debug, Clone)]
pub struct Pump {
    /// The kind it is of.
    pub kind: Link,
    /// Head against flow.
    pub curve: Curve,
    /// Electrical power it takes in at its duty.
    pub power: Number<Power>,
    /// Power in the water over electrical power, at its duty.
    pub efficiency: Number<Ratio>,
    /// All of it in a pump that stands in the water, little in one that an air stream cools.
    pub heat_to_water: Number<Ratio>,
    /// At its duty, as the maker states it; "none" for a pump that stands in the water.
    pub npsh: Number<Length>,
    /// The item of the electrical list it is.
    pub item: Link,
}

/// Another pump of the same circuit.
#[derive(Debug, Clone)]
pub struct SecondPump {
    /// The pump, as the first one is stated.
    pub pump: Pump,
    /// How it stands to the first pump.
    pub arrangement: Choice,
}

/// A pipe run.
#[derive(Debug, Clone)]
pub struct Run {
    /// Its id.
    pub id: String,
    /// The kind it is of.
    pub kind: Link,
    /// Inside diameter.
    pub bore: Number<Length>,
    /// Along the pipe.
    pub length: Number<Length>,
    /// Of its wall.
    pub roughness: Number<Length>,
    /// Above 1 for ribbed hose.
    pub ribbed: Number<Ratio>,
    /// Loss coefficients that are not counted as fittings.
    pub loss_coefficients: Number<Ratio>,
    /// Fittings by kind.
    pub fittings: List<(String, Number<Ratio>)>,
    /// The runs whose water it takes on; the one before it in the list when left out, and "none" for one that begins at the intakes. Runs after the same one lie in parallel.
    pub after: List<Reference>,
    /// Before the pump or behind it.
    pub side: Choice,
    /// What it is made of.
    pub material: Choice,
    /// The top of the pipe where it is highest; what lies over the water runs back when the pump stops.
    pub highest: Level,
    /// Valves in it, each with its own loss.
    pub valves: List<Valve>,
}

/// A device in line: screen, clarifier, heater.
#[derive(Debug, Clone)]
pub struct Device {
    /// Its id.
    pub id: String,
    /// The flow its losses were read at.
    pub at_flow: Number<VolumeRate>,
    /// When clean.
    pub clean: Number<Length>,
    /// When due for cleaning.
    pub dirty: Number<Length>,
    /// What it is.
    pub kind: Choice,
    /// The run it stands in; the whole flow passes it when left out.
    pub run: Link,
}

impl Circuit {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Circuit {
            id: r.id(),
            serves: r.references("serves", "what the circuit joins"),
            pump: r.object("pump", "pump", Pump::read),
            runs: r.list("runs", "pipe runs", Run::read),
            devices: r.list("devices", "devices in line", Device::read),
            intakes: r.repeats("intakes", "intakes", Intake::read),
            static_head: r.number("static-head", &STATIC_HEAD),
            from: r.reference("from", "water the circuit draws from"),
            to: r.reference("to", "where the circuit lifts to"),
            cut_out: r.level("cut-out", &CIRCUIT_CUT_OUT),
            pump_level: r.level("pump-level", &PUMP_LEVEL),
            second_pump: r.object("second-pump", "second pump", SecondPump::read),
            returns: r.repeats("returns", "returns", Return::read),
        }
    }
}

impl Intake {
    fn read<R: Reader>(r: &mut R) -> Self {
        Intake {
            id: r.id(),
            pool: r.reference("pool", "pool the intake stands in"),
            at: r.point("at", [&X, &Y]),
            level: r.level("level", &INTAKE_LEVEL),
            area: r.number("net-area", &NET_AREA),
            aperture: r.number("aperture", &APERTURE),
            partner: r.reference("partner", "partner intake"),
            head: r.number("head-available", &HEAD_AVAILABLE),
            kind: r.choice("kind", &INTAKE_KIND),
            run: r.reference("run", "run that begins there"),
            gross_area: r.number("gross-area", &INTAKE_GROSS_AREA),
            face: r.choice("face", &INTAKE_FACE),
            tool: r.flag("tool", "taken off with a tool only", Role::Promise),
            throat: r.number("throat", &INTAKE_THROAT),
            way_out: r.flag("way-out", "way out behind it", Role::Decision),
        }
    }
}

impl Pump {
    fn read<R: Reader>(r: &mut R) -> Self {
        Pump {
            kind: r.kind("pumps"),
            curve: r.curve("curve", "pump curve"),
            power: r.number("power", &PUMP_POWER),
            efficiency: r.number("efficiency", &PUMP_EFFICIENCY),
            heat_to_water: r.number("heat-to-water", &PUMP_HEAT_TO_WATER),
            npsh: r.number("npsh", &PUMP_NPSH),
            item: r.reference("item", "electrical item it is"),
        }
    }
}

impl SecondPump {
    fn read<R: Reader>(r: &mut R) -> Self {
        SecondPump { pump: Pump::read(r), arrangement: r.choice("arrangement", &ARRANGEMENT) }
    }
}

impl Run {
    fn read<R: Reader>(r: &mut R) -> Self {
        Run {
            id: r.id(),
            kind: r.kind("pipes"),
            bore: r.number("bore", &BORE),
            length: r.number("length", &LENGTH),
            roughness: r.number("roughness", &ROUGHNESS),
            ribbed: r.number("ribbed", &RIBBED),
            loss_coefficients: r.number("loss-coefficients", &K_SUM),
            fittings: r.counts("fittings", &FITTINGS, FITTING_NAMES),
            after: r.references("after", "runs it follows"),
            side: r.choice("side", &RUN_SIDE),
            material: r.choice("material", &RUN_MATERIAL),
            highest: r.level("highest", &RUN_HIGHEST),
            valves: r.list("valves", "valves", Valve::read),
        }
    }
}

impl Device {
    fn read<R: Reader>(r: &mut R) -> Self {
        Device {
            id: r.id(),
            at_flow: r.number("at-flow", &AT_FLOW),
            clean: r.number("clean-loss", &CLEAN),
            dirty: r.number("dirty-loss", &DIRTY),
            kind: r.choice("kind", &DEVICE_KIND),
            run: r.reference("run", "run it stands in"),
        }
    }
}
