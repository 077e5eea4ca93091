//! Planted gravel filters: the rise of the water through the bed, the lip it leaves over, and what is left below notch and wall.

use std::sync::Arc;

use haulout_calc::filtration::gravel as formulas;
use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_calc::geometry::Outline;
use haulout_calc::water::{DENSITY, DYNAMIC_VISCOSITY};
use haulout_model::filter::Layer;
use haulout_model::weir::Weir;
use haulout_model::{About, Subject};
use haulout_quantity::si::{Area, Length, MolarFlux, Ratio, Velocity, VolumeRate};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Gap, Known, Limit, Line, Many, Sheet};

use super::{circuit_of, filter, water_of};
use crate::circuit::duty::DELIVERED_FLOW;
use crate::pool::water::COOLEST;
use crate::terms::{self, DIFFERENCE};
use crate::water::lip;

static PLAN: Formula<(Arc<Outline>,), Area> = Formula {
    card: &FormulaCard {
        name: "plan area of a filter",
        result: "A",
        text: "area of outline",
        symbols: &["outline"],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry",
        range: "outlines that do not cross themselves",
    },
    run: |(outline,)| Ok(Area::from_si(outline.area())),
};

static IS_PLANTED: Formula<(u16,), bool> = Formula {
    card: &FormulaCard {
        name: "planted gravel",
        result: "yes",
        text: "kind is planted gravel",
        symbols: &["kind"],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "stated kinds",
    },
    run: |(kind,)| Ok(kind == 0),
};

/// The filter is a bed of planted gravel. Not a number, so not in the catalogue.
pub static PLANTED: Figure<Line<bool>> = Figure {
    card: &FigureCard {
        id: "planted-gravel",
        title: "planted gravel",
        about: About::Filter,
        axes: &[],
        unit: "",
        us_unit: "",
        resolution: None,
    },
    work: |sheet, at| sheet.work(&IS_PLANTED, (filter(sheet, at).kind.on(sheet)?.option(),)),
};

static LENGTHS: Many<Length, Length> =
    Many { card: &terms::arithmetic("sum of lengths", "h", "+", &[]), run: |l| Ok(l.iter().copied().sum()) };

static BETWEEN: Formula<(Length, Length, Length), Length> = Formula {
    card: &terms::arithmetic(
        "room over a crest in flow",
        "d",
        "z_top - z_crest - h",
        &["z_top", "z_crest", "h"],
    ),
    run: |(top, crest, head)| Ok(top - crest - head),
};

/// Plan area of a filter.
pub static PLAN_AREA: Figure<Line<Area>> = Figure {
    card: &FigureCard {
        id: "filter-plan",
        title: "plan area of the filter",
        about: About::Filter,
        axes: &[],
        unit: "m2",
        us_unit: "ft2",
        resolution: Some("curves flattened to 5 mm"),
    },
    work: |sheet, at| {
        let plan = crate::outline(sheet, &filter(sheet, at).outline)?;
        sheet.construct(&PLAN, (plan,))
    },
};

/// What the pump of its circuit delivers.
pub(super) fn flow(sheet: Sheet<'_>, at: Subject) -> Known<Line<VolumeRate>> {
    circuit_of(sheet, at).and_then(|circuit| DELIVERED_FLOW.of(sheet, circuit))
}

/// Rise of the water through the bed by the delivered flow.
pub static UP_FLOW: Figure<Line<Velocity>> = Figure {
    card: &FigureCard {
        id: "up-flow",
        title: "up-flow through the bed",
        about: About::Filter,
        axes: &[Axis::Filter],
        unit: "m/h",
        us_unit: "ft/h",
        resolution: None,
    },
    work: |sheet, at| sheet.work(&formulas::UP_FLOW, (flow(sheet, at), PLAN_AREA.of(sheet, at)).all()?),
};

/// How far the emergency notch lies over the running water: what the water may rise as the bed clogs.
pub static NOTCH_OVER_WATER: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        id: "notch-over-water",
        title: "notch over the running water",
        about: About::Filter,
        axes: &[],
        unit: "mm",
        us_unit: "in",
        resolution: None,
    },
    work: |sheet, at| {
        let filter = filter(sheet, at);
        let notch = crate::level(sheet, &filter.notch.level);
        let lines = (notch, crate::level(sheet, &filter.levels.water)).all()?;
        sheet.work(&DIFFERENCE, lines)
    },
};

const fn level_card(id: &'static str, title: &'static str, axes: &'static [Axis]) -> FigureCard {
    FigureCard { id, title, about: About::Filter, axes, unit: "mm", us_unit: "in", resolution: None }
}

fn head_over(sheet: Sheet<'_>, at: Subject, weir: &Weir) -> Known<Line<Length>> {
    flow(sheet, at).and_then(|flow| lip::head_over(sheet, weir, flow))
}

/// Head over the lip by the delivered flow.
pub static LIP_HEAD: Figure<Line<Length>> = Figure {
    card: &level_card("lip-head", "head over the lip", &[Axis::Filter]),
    work: |sheet, at| head_over(sheet, at, &filter(sheet, at).lip),
};

/// The level at which the water runs: the lip and the head over it.
pub static RUNNING_LEVEL: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        unit: "m",
        us_unit: "ft",
        ..level_card("running-level", "running level by the lip", &[Axis::Filter])
    },
    work: |sheet, at| {
        let lip = crate::level(sheet, &filter(sheet, at).lip.level);
        sheet.fold(&LENGTHS, &Vec::from([lip, LIP_HEAD.of(sheet, at)]).all()?)
    },
};

/// What is left under the top of the wall when the lip is blocked and the notch takes the whole flow.
pub static WALL_OVER_NOTCH: Figure<Line<Length>> = Figure {
    card: &level_card("wall-over-notch", "wall over the notch in full flow", &[Axis::Filter]),
    work: |sheet, at| {
        let filter = filter(sheet, at);
        let wall = crate::level(sheet, &filter.levels.wall_top);
        let notch = crate::level(sheet, &filter.notch.level);
        let lines = (wall, notch, head_over(sheet, at, &filter.notch)).all()?;
        sheet.work(&BETWEEN, lines)
    },
};

/// How far the air break of the riser lies over the running water.
pub static AIR_BREAK_OVER_WATER: Figure<Line<Length>> = Figure {
    card: &level_card("air-break-over-water", "air break of the riser over the running water", &[]),
    work: |sheet, at| {
        let filter = filter(sheet, at);
        let lines =
            (crate::level(sheet, &filter.feed.air_break), crate::level(sheet, &filter.levels.water)).all()?;
        sheet.work(&DIFFERENCE, lines)
    },
};

/// How far the running water stands over the top of the gravel.
pub static WATER_OVER_BED: Figure<Line<Length>> = Figure {
    card: &level_card("water-over-bed", "running water over the gravel", &[]),
    work: |sheet, at| {
        let levels = &filter(sheet, at).levels;
        let lines = (crate::level(sheet, &levels.water), crate::level(sheet, &levels.bed)).all()?;
        sheet.work(&DIFFERENCE, lines)
    },
};

fn loss_of(sheet: Sheet<'_>, at: Subject, layer: &Layer) -> Known<Line<Length>> {
    let water = water_of(sheet, at)
        .and_then(|pool| COOLEST.of(sheet, pool))
        .and_then(|t| (sheet.work(&DYNAMIC_VISCOSITY, (t,)), sheet.work(&DENSITY, (t,))).all());
    let bed = (layer.thickness.on(sheet), layer.voids.low(sheet), layer.grain.low(sheet)).all();
    let ((thickness, voids, grain), (viscosity, density), rise) =
        (bed, water, UP_FLOW.of(sheet, at)).all()?;
    sheet.work(&formulas::CLEAN_LOSS, (rise, thickness, voids, grain, viscosity, density))
}

/// Head lost in the clean bed.
pub static CLEAN_LOSS: Figure<Line<Length>> = Figure {
    card: &level_card("clean-bed-loss", "head lost in the clean bed", &[Axis::Filter]),
    work: |sheet, at| {
        let layers = &filter(sheet, at).layers;
        if let Some(missing) = layers.missing() {
            return Err(Gap::from(missing).into());
        }
        let each: Vec<Known<Line<Length>>> =
            layers.items().iter().map(|layer| loss_of(sheet, at, layer)).collect();
        sheet.fold(&LENGTHS, &each.all()?)
    },
};

static CLOGGED: Formula<(Length, Ratio), Length> = Formula {
    card: &terms::arithmetic("head lost in the clogged bed", "h_c", "h × k", &["h", "k"]),
    run: |(clean, times)| Ok(clean * times),
};

/// Head that a clogged bed takes, so many times that of the clean one.
///
/// # Errors
/// None but those of arithmetic.
pub fn clogged(sheet: Sheet<'_>, clean: Line<Length>, times: &'static Limit) -> Known<Line<Length>> {
    sheet.work(&CLOGGED, (clean, sheet.limit(times)))
}

/// Light a day on the plants.
pub static LIGHT: Figure<Line<MolarFlux>> = Figure {
    card: &FigureCard {
        unit: "mol/m2/d",
        us_unit: "mol/m2/d",
        ..level_card("light-on-plants", "light a day on the plants of the filter", &[])
    },
    work: |sheet, at| filter(sheet, at).light_dose.on(sheet),
};

/// The widest opening of the cover.
pub static COVER_APERTURE: Figure<Line<Length>> = Figure {
    card: &level_card("cover-aperture", "widest opening of the cover of the filter", &[]),
    work: |sheet, at| filter(sheet, at).cover_aperture.on(sheet),
};

/// Whether animals are kept off.
///
/// # Errors
/// A gap when the file does not say.
pub fn animals_kept_off(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    filter(sheet, at).animals_excluded.on(sheet)
}

static FROM_BELOW: Formula<(u16, u16), bool> = Formula {
    card: &FormulaCard {
        name: "gravel fed from below",
        result: "yes",
        text: "kind is planted gravel and side is bottom",
        symbols: &["kind", "side"],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "stated kinds and sides",
    },
    run: |(kind, side)| Ok(kind == 0 && side == 0),
};

/// Whether it is a bed of gravel that water rises through.
///
/// # Errors
/// A gap when kind or side are not stated.
pub fn fed_from_below(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let filter = filter(sheet, at);
    let (kind, side) = (filter.kind.on(sheet), filter.feed.side.on(sheet)).all()?;
    sheet.work(&FROM_BELOW, (kind.option(), side.option()))
}

static OPEN: Formula<(Length,), bool> = Formula {
    card: &FormulaCard {
        name: "open to the air",
        result: "yes",
        text: "a level of the air break is stated",
        symbols: &["z"],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "levels",
    },
    run: |(_,)| Ok(true),
};

/// Whether the riser has an air break at all.
///
/// # Errors
/// A gap when the file does not say; of kind *said none* when it says that there is none.
pub fn has_air_break(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&OPEN, (crate::level(sheet, &filter(sheet, at).feed.air_break)?,))
}
