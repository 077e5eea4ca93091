//! Stages of a filter: media that bacteria live on, screens that hold back solids, ultraviolet lamps.

use crate::card::{FieldCard, Form, Role};
use crate::field::{Flag, Number};
use crate::reader::Reader;
use haulout_quantity::Dimension;
use haulout_quantity::si::{
    Length, Power, RadiantExposure, Ratio, ReciprocalLength, Time, Volume, VolumeRate,
};

static MEDIA_VOLUME: FieldCard =
    FieldCard::quantity("volume of the media", Dimension::VOLUME, Role::Decision, (0.0, 50.0), 0.01);
static MEDIA_SPECIFIC_AREA: FieldCard = FieldCard::quantity(
    "specific area of the media",
    Dimension::AREA_PER_VOLUME,
    Role::Reading,
    (10.0, 5000.0),
    10.0,
);
static MEDIA_EFFECTIVE: FieldCard =
    FieldCard::plain("share of the area that works", Role::Given, (0.0, 1.0), 0.01).form(Form::Share);
static MEDIA_MATURE: FieldCard =
    FieldCard::plain("maturity of the media", Role::Reading, (0.0, 1.0), 0.01).form(Form::Share);
static SCREEN_MESH: FieldCard =
    FieldCard::quantity("mesh of the screen", Dimension::LENGTH, Role::Decision, (1e-05, 0.02), 1e-05);
static SCREEN_CAPTURES: FieldCard =
    FieldCard::plain("share of the solids it captures", Role::Reading, (0.0, 1.0), 0.01).form(Form::Share);
static SCREEN_CLEANED: FieldCard = FieldCard::quantity(
    "time between cleanings",
    Dimension::TIME,
    Role::Decision,
    (3600.0, 7776000.0),
    3600.0,
);
static SCREEN_BACKWASH: FieldCard =
    FieldCard::quantity("water of a cleaning", Dimension::VOLUME, Role::Reading, (0.0, 10.0), 0.01);
static UV_STAGE_POWER: FieldCard =
    FieldCard::quantity("power of the UV lamp", Dimension::POWER, Role::Reading, (1.0, 2000.0), 1.0);
static UV_STAGE_DOSE: FieldCard = FieldCard::quantity(
    "UV dose at the end of life",
    Dimension::ENERGY_PER_AREA,
    Role::Reading,
    (10.0, 5000.0),
    10.0,
);
static UV_STAGE_AT_FLOW: FieldCard = FieldCard::quantity(
    "flow of the dose",
    Dimension::FLOW,
    Role::Reading,
    (2.77777777778e-06, 0.0555555555556),
    2.77777777778e-05,
);
static UV_STAGE_MOST_FLOW: FieldCard = FieldCard::quantity(
    "largest flow of the clarifier",
    Dimension::FLOW,
    Role::Reading,
    (2.77777777778e-06, 0.0555555555556),
    2.77777777778e-05,
);
static UV_STAGE_TRANSMITTANCE: FieldCard =
    FieldCard::plain("transmittance of the water", Role::Reading, (0.0, 1.0), 0.01).form(Form::Share);

/// Media that bacteria live on.
#[derive(Debug, Clone)]
pub struct Media {
    /// The bulk of it.
    pub volume: Number<Volume>,
    /// Surface in a bulk volume, as the maker states for the clean media.
    pub specific_area: Number<ReciprocalLength>,
    /// How much of the surface is wetted, fed with oxygen and not clogged.
    pub effective: Number<Ratio>,
    /// How much of its final activity it has on the first day: 0 new, 1 moved over in full work.
    pub mature: Number<Ratio>,
}

/// What holds back solids.
#[derive(Debug, Clone)]
pub struct Screen {
    /// The size of particle it holds back.
    pub mesh: Number<Length>,
    /// How much of the solids that pass it stays in it.
    pub captures: Number<Ratio>,
    /// After which it is cleaned.
    pub cleaned: Number<Time>,
    /// The water thrown away each time.
    pub backwash: Number<Volume>,
    /// Whether it can be cleaned while the pool stays full.
    pub in_service: Flag,
}

/// The ultraviolet lamp of a clarifier.
#[derive(Debug, Clone)]
pub struct UvStage {
    /// Electrical power of the lamp.
    pub power: Number<Power>,
    /// At the flow beside it, at the end of the life of the lamp.
    pub dose: Number<RadiantExposure>,
    /// The flow the dose is stated for.
    pub at_flow: Number<VolumeRate>,
    /// The largest flow its maker allows.
    pub most_flow: Number<VolumeRate>,
    /// Of 10 mm of the water at 254 nm.
    pub transmittance: Number<Ratio>,
    /// Whether it goes out when the water stops.
    pub flow_switch: Flag,
}

impl Media {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Media {
            volume: r.number("volume", &MEDIA_VOLUME),
            specific_area: r.number("specific-area", &MEDIA_SPECIFIC_AREA),
            effective: r.number("effective", &MEDIA_EFFECTIVE),
            mature: r.number("mature", &MEDIA_MATURE),
        }
    }
}

impl Screen {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        Screen {
            mesh: r.number("mesh", &SCREEN_MESH),
            captures: r.number("captures", &SCREEN_CAPTURES),
            cleaned: r.number("cleaned", &SCREEN_CLEANED),
            backwash: r.number("backwash", &SCREEN_BACKWASH),
            in_service: r.flag("in-service", "cleaned without draining", Role::Decision),
        }
    }
}

impl UvStage {
    pub(crate) fn read<R: Reader>(r: &mut R) -> Self {
        UvStage {
            power: r.number("power", &UV_STAGE_POWER),
            dose: r.number("dose", &UV_STAGE_DOSE),
            at_flow: r.number("at-flow", &UV_STAGE_AT_FLOW),
            most_flow: r.number("most-flow", &UV_STAGE_MOST_FLOW),
            transmittance: r.number("transmittance", &UV_STAGE_TRANSMITTANCE),
            flow_switch: r.flag("flow-switch", "flow switch", Role::Promise),
        }
    }
}
