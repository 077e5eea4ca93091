//! The air of a space by season, and the drain in its floor.

use crate::card::{FieldCard, Form, Role};
use crate::field::{Number, Text};
use crate::reader::Reader;
use haulout_quantity::Dimension;
use haulout_quantity::si::{Frequency, Ratio, ThermodynamicTemperature, VolumeRate};

static AIR_SEASON_TEMPERATURE: FieldCard =
    FieldCard::quantity("air temperature", Dimension::TEMPERATURE, Role::Reading, (268.15, 318.15), 0.5)
        .form(Form::Band);
static AIR_SEASON_HUMIDITY: FieldCard =
    FieldCard::plain("relative humidity", Role::Reading, (0.0, 1.0), 0.01).form(Form::Share);
static AIR_SEASON_CHANGES: FieldCard = FieldCard::quantity(
    "air changes",
    Dimension::FREQUENCY,
    Role::Reading,
    (0.0, 0.00833333333333),
    2.77777777778e-05,
);
static FLOOR_DRAIN_FLOW: FieldCard = FieldCard::quantity(
    "flow of the floor drain",
    Dimension::FLOW,
    Role::Reading,
    (2.77777777778e-05, 0.0277777777778),
    2.77777777778e-05,
);

/// The air of a space in one season.
#[derive(Debug, Clone)]
pub struct AirSeason {
    /// From night to day, as "23 to 28 °C", or one value.
    pub temperature: Number<ThermodynamicTemperature>,
    /// Of the air, by day.
    pub humidity: Number<Ratio>,
    /// How many times an hour fresh air fills the space.
    pub changes: Number<Frequency>,
}

/// The air of a space by season.
#[derive(Debug, Clone)]
pub struct Air {
    /// In the coldest month.
    pub winter: AirSeason,
    /// In the warmest month.
    pub summer: AirSeason,
}

/// The drain in the floor of a space.
#[derive(Debug, Clone)]
pub struct FloorDrain {
    /// What it takes away, grating half covered.
    pub flow: Number<VolumeRate>,
    /// Where its water goes.
    pub to: Text,
}

impl AirSeason {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        AirSeason {
            temperature: r.number("temperature", &AIR_SEASON_TEMPERATURE),
            humidity: r.number("humidity", &AIR_SEASON_HUMIDITY),
            changes: r.number("changes", &AIR_SEASON_CHANGES),
        }
    }
}

impl Air {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Air {
            winter: r.object("winter", "air in winter", AirSeason::read),
            summer: r.object("summer", "air in summer", AirSeason::read),
        }
    }
}

impl FloorDrain {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        FloorDrain { flow: r.number("flow", &FLOOR_DRAIN_FLOW), to: r.text("to", "where it drains to") }
    }
}
