//! Start-up: mature media moved in, stocking steps, arrivals.

use crate::card::{FieldCard, Form, Role};
use crate::compound::{Link, List};
use crate::field::{Number, Text};
use crate::reader::Reader;
use haulout_quantity::Dimension;
use haulout_quantity::si::{
    MassDensity, MassRate, Ratio, ReciprocalLength, ThermodynamicTemperature, Time, Volume,
};

static START_UP_TARGET_TAN: FieldCard = FieldCard::quantity(
    "total ammonia not to be passed",
    Dimension::DENSITY,
    Role::Decision,
    (0.0, 0.01),
    5e-05,
);
static START_UP_TARGET_NITRITE: FieldCard =
    FieldCard::quantity("nitrite not to be passed", Dimension::DENSITY, Role::Decision, (0.0, 0.01), 5e-05);
static START_UP_DOSED: FieldCard = FieldCard::quantity(
    "ammonia dosed before the first animals, as nitrogen",
    Dimension::MASS_FLOW,
    Role::Decision,
    (0.0, 1.15740740741e-06),
    1.15740740741e-09,
);
static MOVED_MEDIA_VOLUME: FieldCard =
    FieldCard::quantity("volume of the moved media", Dimension::VOLUME, Role::Decision, (0.0, 20.0), 0.01);
static MOVED_MEDIA_SPECIFIC_AREA: FieldCard = FieldCard::quantity(
    "specific area of the moved media",
    Dimension::AREA_PER_VOLUME,
    Role::Reading,
    (10.0, 5000.0),
    10.0,
);
static MOVED_MEDIA_ALIVE: FieldCard =
    FieldCard::plain("share still alive", Role::Reading, (0.0, 1.0), 0.01).form(Form::Share);
static STOCKING_STEP_COUNT: FieldCard =
    FieldCard::plain("animals of the step", Role::Decision, (0.0, 200.0), 1.0).form(Form::Count);
static STOCKING_STEP_DAY: FieldCard =
    FieldCard::plain("day of the step", Role::Decision, (0.0, 730.0), 1.0).form(Form::Count);
static ARRIVAL_COUNT: FieldCard =
    FieldCard::plain("animals of the arrival", Role::Given, (0.0, 200.0), 1.0).form(Form::Count);
static ARRIVAL_TEMPERATURE: FieldCard = FieldCard::quantity(
    "temperature of the transport water",
    Dimension::TEMPERATURE,
    Role::Reading,
    (275.15, 311.15),
    0.5,
);
static ARRIVAL_PH: FieldCard = FieldCard::plain("pH of the transport water", Role::Reading, (4.0, 10.0), 0.1);
static ARRIVAL_VOLUME: FieldCard =
    FieldCard::quantity("volume of the transport water", Dimension::VOLUME, Role::Reading, (0.0, 5.0), 0.001);
static ARRIVAL_FLOATS: FieldCard =
    FieldCard::quantity("time it floats closed", Dimension::TIME, Role::Decision, (0.0, 14400.0), 60.0);
static ARRIVAL_MIXED: FieldCard = FieldCard::quantity(
    "time over which waters are mixed",
    Dimension::TIME,
    Role::Decision,
    (0.0, 86400.0),
    300.0,
);

/// How the water is brought to life and the animals come in.
#[derive(Debug, Clone)]
pub struct StartUp {
    /// Media in full work that are moved in from another filter.
    pub media: List<MovedMedia>,
    /// Which animals come when; a step is gated by readings, not by its day alone.
    pub steps: List<StockingStep>,
    /// The water animals arrive in.
    pub arrivals: List<Arrival>,
    /// Total ammonia nitrogen (TAN) at which the next step waits.
    pub target_tan: Number<MassDensity>,
    /// Nitrite nitrogen (NO2-N) at which the next step waits.
    pub target_nitrite: Number<MassDensity>,
    /// Ammonia dosed each day, as nitrogen, from the first day until the first animals come, to feed the bacteria.
    pub dosed: Number<MassRate>,
}

/// Mature media moved in.
#[derive(Debug, Clone)]
pub struct MovedMedia {
    /// Its id.
    pub id: String,
    /// The filter they go into.
    pub filter: Link,
    /// The bulk of it.
    pub volume: Number<Volume>,
    /// Surface in a bulk volume.
    pub specific_area: Number<ReciprocalLength>,
    /// How much of their activity has come through the move.
    pub alive: Number<Ratio>,
    /// Which filter they come from, and since when it has run.
    pub from: Text,
}

/// Animals that come in on a day.
#[derive(Debug, Clone)]
pub struct StockingStep {
    /// Its id.
    pub id: String,
    /// The group the animals belong to.
    pub group: Link,
    /// How many of the group come in this step.
    pub count: Number<Ratio>,
    /// Days after the filter is started.
    pub day: Number<Ratio>,
}

/// The water a group arrives in.
#[derive(Debug, Clone)]
pub struct Arrival {
    /// Its id.
    pub id: String,
    /// The group.
    pub group: Link,
    /// How many arrive together.
    pub count: Number<Ratio>,
    /// As it arrives.
    pub temperature: Number<ThermodynamicTemperature>,
    /// As it arrives.
    pub ph: Number<Ratio>,
    /// In one bag or tub.
    pub volume: Number<Volume>,
    /// How long it is to float in the pool before it is opened.
    pub floats: Number<Time>,
    /// How long pool water is to be given to it, little by little, before the animals are let go.
    pub mixed: Number<Time>,
}

impl StartUp {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        StartUp {
            media: r.list("media", "mature media moved in", MovedMedia::read),
            steps: r.list("steps", "stocking steps", StockingStep::read),
            arrivals: r.list("arrivals", "arrivals", Arrival::read),
            target_tan: r.number("target-tan", &START_UP_TARGET_TAN),
            target_nitrite: r.number("target-nitrite", &START_UP_TARGET_NITRITE),
            dosed: r.number("dosed", &START_UP_DOSED),
        }
    }
}

impl MovedMedia {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        MovedMedia {
            id: r.id(),
            filter: r.reference("filter", "filter they go into"),
            volume: r.number("volume", &MOVED_MEDIA_VOLUME),
            specific_area: r.number("specific-area", &MOVED_MEDIA_SPECIFIC_AREA),
            alive: r.number("alive", &MOVED_MEDIA_ALIVE),
            from: r.text("from", "where they come from"),
        }
    }
}

impl StockingStep {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        StockingStep {
            id: r.id(),
            group: r.reference("group", "group that comes"),
            count: r.number("count", &STOCKING_STEP_COUNT),
            day: r.number("day", &STOCKING_STEP_DAY),
        }
    }
}

impl Arrival {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Arrival {
            id: r.id(),
            group: r.reference("group", "group that arrives"),
            count: r.number("count", &ARRIVAL_COUNT),
            temperature: r.number("temperature", &ARRIVAL_TEMPERATURE),
            ph: r.number("ph", &ARRIVAL_PH),
            volume: r.number("volume", &ARRIVAL_VOLUME),
            floats: r.number("floats", &ARRIVAL_FLOATS),
            mixed: r.number("mixed", &ARRIVAL_MIXED),
        }
    }
}
