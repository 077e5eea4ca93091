//! Share of the bed by depth: where animals rest, where they work, where they get away.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_calc::geometry::Bed;
use haulout_model::{About, Subject};
use haulout_quantity::si::{Area, Length, Ratio};
use haulout_quantity::{Basis, Dimension, Measure};
use haulout_register::Value;
use haulout_sheet::{All, Axis, Figure, FigureCard, Known, Line, Sheet};

use super::{bed::BED, level_in_case, surface_area::SURFACE_AREA};
use crate::terms::SHARE;

const fn edge(what: &'static str, value: f64) -> Value {
    Value {
        what,
        value,
        unit: "m",
        dimension: Dimension::LENGTH,
        basis: Basis::CommonPractice,
        source: "bands of depth that keepers of pond turtles speak of",
    }
}

static NONE: Value = edge("water's edge", 0.0);
static REST: Value = edge("deepest resting shallow", 0.15);
static SHALLOW: Value = edge("shallowest working depth", 0.40);
static WORKING: Value = edge("deepest working depth", 0.80);
static ANY: Value = edge("deeper than any pool", 20.0);

pub(crate) static BAND: Formula<(Arc<Bed>, Length, Length, Length), Area> = Formula {
    card: &FormulaCard {
        name: "plan area between two depths",
        result: "A_band",
        text: "plan area of the bed from shallow to deep below level",
        symbols: &["bed", "level", "shallow", "deep"],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry",
        range: "the shallow end counts, the deep end does not",
    },
    run: |(bed, level, shallow, deep)| {
        Ok(Area::from_si(bed.band_area(level.value, shallow.value, deep.value)))
    },
};

fn share(sheet: Sheet<'_>, at: Subject, shallow: &'static Value, deep: &'static Value) -> Known<Line<Ratio>> {
    let (bed, level, surface) =
        (BED.of(sheet, at), level_in_case(sheet, at), SURFACE_AREA.of(sheet, at)).all()?;
    let band =
        sheet.construct(&BAND, (bed, level, sheet.register(shallow, None), sheet.register(deep, None)))?;
    sheet.work(&SHARE, (band, surface))
}

const fn card(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard {
        id,
        title,
        about: About::Pool,
        axes: &[Axis::Level],
        unit: "%",
        us_unit: "%",
        resolution: None,
    }
}

/// Less than 0.15 m deep.
pub static RESTING_SHARE: Figure<Line<Ratio>> = Figure {
    card: &card("resting-share", "share of the bed under 0.15 m of water"),
    work: |s, at| share(s, at, &NONE, &REST),
};

/// From 0.15 m to 0.40 m.
pub static SHALLOW_SHARE: Figure<Line<Ratio>> = Figure {
    card: &card("shallow-share", "share of the bed under 0.15 to 0.40 m of water"),
    work: |s, at| share(s, at, &REST, &SHALLOW),
};

/// From 0.40 m to 0.80 m.
pub static WORKING_SHARE: Figure<Line<Ratio>> = Figure {
    card: &card("working-share", "share of the bed under 0.40 to 0.80 m of water"),
    work: |s, at| share(s, at, &SHALLOW, &WORKING),
};

/// From 0.80 m on.
pub static DEEP_SHARE: Figure<Line<Ratio>> = Figure {
    card: &card("deep-share", "share of the bed under 0.80 m of water or more"),
    work: |s, at| share(s, at, &WORKING, &ANY),
};
