//! Water circuits: what they serve, the pump, the runs, the devices in line.

use haulout_quantity::Dimension;
use haulout_quantity::si::{Area, Length, Ratio, VolumeRate};

use crate::card::{FieldCard, Form, Role};
use crate::compound::{Curve, Level, Link, List, Reference};
use crate::field::Number;
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
}

/// A pump.
#[derive(Debug, Clone)]
pub struct Pump {
    /// The kind it is of.
    pub kind: Link,
    /// Head against flow.
    pub curve: Curve,
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
}

impl Circuit {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Circuit {
            id: r.id(),
            serves: r.references("serves", "what the circuit joins"),
            pump: r.object("pump", "pump", Pump::read),
            runs: r.list("runs", "pipe runs", Run::read),
            devices: r.list("devices", "devices in line", Device::read),
            intakes: r.list("intakes", "intakes", Intake::read),
            static_head: r.number("static-head", &STATIC_HEAD),
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
        }
    }
}

impl Pump {
    fn read<R: Reader>(r: &mut R) -> Self {
        Pump { kind: r.kind("pumps"), curve: r.curve("curve", "pump curve") }
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
        }
    }
}
