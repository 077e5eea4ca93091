//! Shares of a pool's bed by the depths that a group asks for, band by band and never by the mean.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_calc::geometry::Bed;
use haulout_model::{About, Subject};
use haulout_quantity::si::{Area, Length, Ratio};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Known, Line, Sheet};

use super::body::{REFUGE_DEPTH, RESTING_DEPTH};
use super::{WINDOW_HIGH, WINDOW_LOW, parts};
use crate::group::{BODY_HEIGHT, BODY_LENGTH};
use crate::pool::bands::BAND;
use crate::pool::bed::BED;
use crate::pool::level_in_case;
use crate::pool::surface_area::SURFACE_AREA;
use crate::terms::SHARE;

/// A depth as typed must not miss the level as typed by a rounding, metres.
const SAME: f64 = 1e-9;

const fn area(name: &'static str, text: &'static str, symbols: &'static [&'static str]) -> FormulaCard {
    FormulaCard {
        name,
        result: "A_band",
        text,
        symbols,
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry",
        range: "both ends count; dry bed does not",
    }
}

static UP_TO: Formula<(Arc<Bed>, Length, Length), Area> = Formula {
    card: &area(
        "plan area under so much water or less",
        "plan area of the wet bed above level less d",
        &["bed", "level", "d"],
    ),
    run: |(bed, level, depth)| {
        let deeper = bed.area_below(level.value - depth.value - SAME);
        Ok(Area::from_si((bed.area_below(level.value) - deeper).max(0.0)))
    },
};

static FROM: Formula<(Arc<Bed>, Length, Length), Area> = Formula {
    card: &area(
        "plan area under so much water or more",
        "plan area of the bed below level less d",
        &["bed", "level", "d"],
    ),
    run: |(bed, level, depth)| Ok(Area::from_si(bed.area_below(level.value - depth.value + SAME))),
};

static BETWEEN: Formula<(Arc<Bed>, Length, Length, Length), Area> = Formula {
    card: &area(
        "plan area between two depths",
        "plan area of the bed from d_low to d_high below level",
        &["bed", "level", "d_low", "d_high"],
    ),
    run: |(bed, level, low, high)| {
        let deeper = bed.area_below(level.value - high.value - SAME);
        Ok(Area::from_si((bed.area_below(level.value - low.value + SAME) - deeper).max(0.0)))
    },
};

const fn card(id: &'static str, title: &'static str, axes: &'static [Axis]) -> FigureCard {
    FigureCard { id, title, about: About::PoolGroup, axes, unit: "%", us_unit: "%", resolution: None }
}

fn share(
    sheet: Sheet<'_>,
    at: Subject,
    formula: &'static Formula<(Arc<Bed>, Length, Length), Area>,
    depth: Known<Line<Length>>,
) -> Known<Line<Ratio>> {
    let pool = parts(at).0;
    let (bed, level, surface) =
        (BED.of(sheet, pool), level_in_case(sheet, pool), SURFACE_AREA.of(sheet, pool)).all()?;
    let part = sheet.construct(formula, (bed, level, depth?))?;
    sheet.work(&SHARE, (part, surface))
}

/// Share of the wet bed on which animals of the size rest with their nostrils out.
pub static REST_SHARE: Figure<Line<Ratio>> = Figure {
    card: &card("rest-share", "share of the bed to rest on", &[Axis::Level, Axis::Size]),
    work: |sheet, at| share(sheet, at, &UP_TO, RESTING_DEPTH.of(sheet, parts(at).1)),
};

/// Share of the bed deep enough to get away in.
pub static REFUGE_SHARE: Figure<Line<Ratio>> = Figure {
    card: &card("refuge-share", "share of the bed deep enough to get away in", &[Axis::Level, Axis::Size]),
    work: |sheet, at| share(sheet, at, &FROM, REFUGE_DEPTH.of(sheet, parts(at).1)),
};

/// Share of the bed on which a turtle on its back neither reaches the air nor rolls over swimming.
pub static RIGHTING_BAND: Figure<Line<Ratio>> = Figure {
    card: &card(
        "righting-band",
        "share of the bed between shell height and shell length",
        &[Axis::Level, Axis::Size],
    ),
    work: |sheet, at| {
        let (pool, group) = parts(at);
        let shape = (BED.of(sheet, pool), level_in_case(sheet, pool), SURFACE_AREA.of(sheet, pool)).all();
        let body = (BODY_HEIGHT.of(sheet, group), BODY_LENGTH.of(sheet, group)).all();
        let ((bed, level, surface), (height, length)) = (shape, body).all()?;
        sheet.work(&SHARE, (sheet.construct(&BAND, (bed, level, height, length))?, surface))
    },
};

/// Share of the bed whose depth lies in the window.
pub static IN_THE_WINDOW: Figure<Line<Ratio>> = Figure {
    card: &card("in-the-window", "share of the bed within the window of depths", &[]),
    work: |sheet, at| {
        let pool = parts(at).0;
        let shape = (BED.of(sheet, pool), level_in_case(sheet, pool), SURFACE_AREA.of(sheet, pool)).all();
        let window = (WINDOW_LOW.of(sheet, at), WINDOW_HIGH.of(sheet, at)).all();
        let ((bed, level, surface), (low, high)) = (shape, window).all()?;
        sheet.work(&SHARE, (sheet.construct(&BETWEEN, (bed, level, low, high))?, surface))
    },
};
