//! Mean and greatest depth of a pool.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::Bed;
use haulout_model::About;
use haulout_quantity::si::{Area, Length, Volume};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Line};

use super::{bed::BED, level_in_case, surface_area::SURFACE_AREA, volume::GROSS_VOLUME};

static GREATEST: Formula<(Arc<Bed>, Length), Length> = Formula {
    card: &FormulaCard {
        name: "greatest depth",
        result: "d_max",
        text: "level less the lowest bed",
        symbols: &["bed", "level"],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "definition",
        range: "a level above the lowest bed",
    },
    run: |(bed, level)| {
        let depth = bed.greatest_depth(level.value);
        depth.map(Length::from_si).ok_or_else(|| Refusal::new("the water level lies below the whole bed"))
    },
};

static MEAN: Formula<(Volume, Area), Length> = Formula {
    card: &FormulaCard {
        name: "mean depth",
        result: "d_mean",
        text: "V_gross / A",
        symbols: &["V_gross", "A"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "definition",
        range: "a water surface above nothing",
    },
    run: |(volume, area)| {
        if area.value > 0.0 {
            Ok(volume / area)
        } else {
            Err(Refusal::new("there is no water surface at this level"))
        }
    },
};

const fn card(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard {
        id,
        title,
        about: About::Pool,
        axes: &[Axis::Level],
        unit: "m",
        us_unit: "ft",
        resolution: None,
    }
}

/// Depth over the lowest bed.
pub static GREATEST_DEPTH: Figure<Line<Length>> = Figure {
    card: &card("greatest-depth", "greatest depth"),
    work: |sheet, at| {
        let lines = (BED.of(sheet, at), level_in_case(sheet, at)).all()?;
        sheet.construct(&GREATEST, lines)
    },
};

/// Gross volume over water surface. No rule judges by it: one deep corner hides behind a mean.
pub static MEAN_DEPTH: Figure<Line<Length>> = Figure {
    card: &card("mean-depth", "mean depth"),
    work: |sheet, at| {
        let lines = (GROSS_VOLUME.of(sheet, at), SURFACE_AREA.of(sheet, at)).all()?;
        sheet.work(&MEAN, lines)
    },
};
