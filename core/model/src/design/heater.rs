//! Heaters of the water, and the insulation that keeps the heat in.

use crate::card::{ChoiceCard, FieldCard, Role};
use crate::compound::Link;
use crate::field::{Choice, Flag, Number};
use crate::reader::Reader;
use haulout_quantity::Dimension;
use haulout_quantity::si::{Length, Power, ThermalConductivity, ThermodynamicTemperature};

static HEATER_PLACE: ChoiceCard = ChoiceCard {
    what: "place of the heater",
    role: Role::Decision,
    options: &["in line", "in the pool", "in a sump", "under the bed"],
    default: None,
};
static HEATER_POWER: FieldCard =
    FieldCard::quantity("power of the heater", Dimension::POWER, Role::Decision, (10.0, 100000.0), 50.0);
static HEATER_SET_POINT: FieldCard = FieldCard::quantity(
    "set point of the heater",
    Dimension::TEMPERATURE,
    Role::Decision,
    (283.15, 313.15),
    0.5,
);
static HEATER_LIMIT: FieldCard =
    FieldCard::quantity("independent limit", Dimension::TEMPERATURE, Role::Decision, (288.15, 333.15), 0.5);
static INSULATION_SIDE: ChoiceCard = ChoiceCard {
    what: "side it insulates",
    role: Role::Decision,
    options: &["under", "walls", "cover"],
    default: None,
};
static INSULATION_THICKNESS: FieldCard =
    FieldCard::quantity("thickness of the insulation", Dimension::LENGTH, Role::Decision, (0.0, 0.5), 0.005);
static INSULATION_CONDUCTIVITY: FieldCard = FieldCard::quantity(
    "conductivity of the insulation",
    Dimension::THERMAL_CONDUCTIVITY,
    Role::Reading,
    (0.015, 3.0),
    0.001,
);

/// A heater of the water.
#[derive(Debug, Clone)]
pub struct Heater {
    /// Its id.
    pub id: String,
    /// The pool it heats.
    pub pool: Link,
    /// The water circuit it stands in, where it stands in line.
    pub circuit: Link,
    /// The item of the electrical list it is.
    pub item: Link,
    /// Where it gives its heat to the water.
    pub place: Choice,
    /// Its rated power.
    pub power: Number<Power>,
    /// The temperature its thermostat holds.
    pub set_point: Number<ThermodynamicTemperature>,
    /// A second cut-out that shares nothing with the thermostat; "none" where there is none.
    pub limit: Number<ThermodynamicTemperature>,
    /// Whether it goes off when the water stops.
    pub flow_switch: Flag,
    /// Whether animals cannot touch it.
    pub guarded: Flag,
}

/// A layer between the water and what is colder.
#[derive(Debug, Clone)]
pub struct Insulation {
    /// Its id.
    pub id: String,
    /// Under the bed, behind the walls, or over the surface.
    pub side: Choice,
    /// As built in, pressed together by what stands on it.
    pub thickness: Number<Length>,
    /// As the maker states for the moist state.
    pub conductivity: Number<ThermalConductivity>,
}

impl Heater {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Heater {
            id: r.id(),
            pool: r.reference("pool", "pool it heats"),
            circuit: r.reference("circuit", "circuit it stands in"),
            item: r.reference("item", "electrical item it is"),
            place: r.choice("place", &HEATER_PLACE),
            power: r.number("power", &HEATER_POWER),
            set_point: r.number("set-point", &HEATER_SET_POINT),
            limit: r.number("limit", &HEATER_LIMIT),
            flow_switch: r.flag("flow-switch", "flow switch", Role::Promise),
            guarded: r.flag("guarded", "guarded", Role::Promise),
        }
    }
}

impl Insulation {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Insulation {
            id: r.id(),
            side: r.choice("side", &INSULATION_SIDE),
            thickness: r.number("thickness", &INSULATION_THICKNESS),
            conductivity: r.number("conductivity", &INSULATION_CONDUCTIVITY),
        }
    }
}
