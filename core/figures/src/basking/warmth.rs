//! Warmth and ultraviolet of the sites, and the bands of the species that use them.

use haulout_model::{About, Subject};
use haulout_quantity::Measure;
use haulout_quantity::si::{Ratio, ThermodynamicTemperature};
use haulout_register::{Species, Value};
use haulout_sheet::{Figure, FigureCard, Known, Line, Sheet};

use super::site;
use crate::species::species_value;

const fn card(id: &'static str, title: &'static str, about: About, unit: [&'static str; 2]) -> FigureCard {
    FigureCard { id, title, about, axes: &[], unit: unit[0], us_unit: unit[1], resolution: None }
}

const WARM: [&str; 2] = ["°C", "°F"];

/// Surface temperature as stated, the lower end of a range.
pub static SURFACE_LOW: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &card("surface-low", "coolest basking surface", About::Basking, WARM),
    work: |sheet, at| site(sheet, at).surface_temperature.low(sheet),
};

/// Surface temperature as stated, the upper end of a range.
pub static SURFACE_HIGH: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &card("surface-high", "warmest basking surface", About::Basking, WARM),
    work: |sheet, at| site(sheet, at).surface_temperature.high(sheet),
};

/// UV index at the animal's back.
pub static UV_INDEX: Figure<Line<Ratio>> = Figure {
    card: &card("site-uv-index", "UV index at the back", About::Basking, ["", ""]),
    work: |sheet, at| site(sheet, at).uv_index.on(sheet),
};

fn of<Q: Measure>(
    sheet: Sheet<'_>,
    at: Subject,
    what: &'static str,
    value: fn(&'static Species) -> Option<&'static Value>,
) -> Known<Line<Q>> {
    species_value(sheet, at, what, value)
}

/// Least temperature of a basking place for the species.
pub static WANTED_LOW: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &card("basking-warmth-from", "least warmth of its basking place", About::Group, WARM),
    work: |sheet, at| {
        of(sheet, at, "warmth of the basking place", |s| s.bask().and_then(|b| b.surface_low.as_ref()))
    },
};

/// Greatest temperature of a basking place for the species.
pub static WANTED_HIGH: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &card("basking-warmth-to", "greatest warmth of its basking place", About::Group, WARM),
    work: |sheet, at| {
        of(sheet, at, "warmth of the basking place", |s| s.bask().and_then(|b| b.surface_high.as_ref()))
    },
};

/// Least UV index for the species.
pub static UV_FROM: Figure<Line<Ratio>> = Figure {
    card: &card("uv-from", "least UV index at its back", About::Group, ["", ""]),
    work: |sheet, at| of(sheet, at, "UV zone", |s| s.bask().and_then(|b| b.uv_low.as_ref())),
};

/// Greatest UV index for the species.
pub static UV_TO: Figure<Line<Ratio>> = Figure {
    card: &card("uv-to", "greatest UV index at its back", About::Group, ["", ""]),
    work: |sheet, at| of(sheet, at, "UV zone", |s| s.bask().and_then(|b| b.uv_high.as_ref())),
};
