//! What the keepers undertake: how often somebody comes by, what calls them, how soon they are there.

use crate::card::{ChoiceCard, FieldCard, Form, Role};
use crate::compound::{Level, Link, List};
use crate::field::{Choice, Flag, Number};
use crate::reader::Reader;
use haulout_quantity::Dimension;
use haulout_quantity::si::{Ratio, ThermodynamicTemperature, Time};

static KEEPERS_UNATTENDED: FieldCard =
    FieldCard::quantity("longest time unattended", Dimension::TIME, Role::Given, (1800.0, 604800.0), 1800.0);
static KEEPERS_RESPONSE: FieldCard =
    FieldCard::quantity("alarm response time", Dimension::TIME, Role::Promise, (300.0, 259200.0), 300.0);
static KEEPERS_BACKUP: FieldCard = FieldCard::quantity(
    "time life support runs without mains",
    Dimension::TIME,
    Role::Reading,
    (0.0, 2592000.0),
    1800.0,
);
static KEEPERS_TOGETHER: FieldCard =
    FieldCard::plain("keepers who go in together", Role::Promise, (0.0, 20.0), 1.0).form(Form::Count);
static KEEPERS_HOLDING: FieldCard =
    FieldCard::plain("places to hold one animal apart", Role::Decision, (0.0, 200.0), 1.0).form(Form::Count);
static ALARM_WATCHES: ChoiceCard = ChoiceCard {
    what: "what the alarm watches",
    role: Role::Decision,
    options: &["level", "temperature", "flow", "power", "leak", "oxygen"],
    default: None,
};
static ALARM_LEVEL: FieldCard =
    FieldCard::quantity("level of the alarm", Dimension::LENGTH, Role::Decision, (-6.0, 6.0), 0.005);
static ALARM_LOW: FieldCard = FieldCard::quantity(
    "low alarm temperature",
    Dimension::TEMPERATURE,
    Role::Decision,
    (278.15, 308.15),
    0.5,
);
static ALARM_HIGH: FieldCard = FieldCard::quantity(
    "high alarm temperature",
    Dimension::TEMPERATURE,
    Role::Decision,
    (288.15, 318.15),
    0.5,
);

/// What the keepers undertake.
#[derive(Debug, Clone)]
pub struct Keepers {
    /// The longest time nobody comes by, nights and holidays counted.
    pub unattended: Number<Time>,
    /// From the call of an alarm until somebody is there who can help.
    pub response: Number<Time>,
    /// How long a battery or generator carries the pumps that must not stop.
    pub backup: Number<Time>,
    /// How many go in to the animals together; one who stands at the door counts.
    pub together: Number<Ratio>,
    /// Boxes, pens and basins, each for one animal apart from all others.
    pub holding: Number<Ratio>,
    /// What calls somebody.
    pub alarms: List<Alarm>,
}

/// An alarm that calls somebody.
#[derive(Debug, Clone)]
pub struct Alarm {
    /// Its id.
    pub id: String,
    /// What sets it off.
    pub watches: Choice,
    /// The pool it watches, where it watches one.
    pub pool: Link,
    /// Where it goes off, falling.
    pub level: Level,
    /// It goes off below.
    pub low: Number<ThermodynamicTemperature>,
    /// It goes off above.
    pub high: Number<ThermodynamicTemperature>,
    /// Whether it reaches somebody who is not in the building.
    pub calls_out: Flag,
}

impl Keepers {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Keepers {
            unattended: r.number("unattended", &KEEPERS_UNATTENDED),
            response: r.number("response", &KEEPERS_RESPONSE),
            backup: r.number("backup", &KEEPERS_BACKUP),
            together: r.number("together", &KEEPERS_TOGETHER),
            holding: r.number("holding", &KEEPERS_HOLDING),
            alarms: r.list("alarms", "alarms", Alarm::read),
        }
    }
}

impl Alarm {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Alarm {
            id: r.id(),
            watches: r.choice("watches", &ALARM_WATCHES),
            pool: r.reference("pool", "pool it watches"),
            level: r.level("level", &ALARM_LEVEL),
            low: r.number("low", &ALARM_LOW),
            high: r.number("high", &ALARM_HIGH),
            calls_out: r.flag("calls-out", "calls somebody out", Role::Promise),
        }
    }
}
