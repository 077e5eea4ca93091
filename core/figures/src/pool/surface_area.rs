//! Water surface of a pool.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_calc::geometry::Bed;
use haulout_model::{About, Subject};
use haulout_quantity::si::{Area, Length};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Known, Line, Sheet};

use super::{bed::BED, level_in_case};

static AREA_BELOW: Formula<(Arc<Bed>, Length), Area> = Formula {
    card: &FormulaCard {
        name: "area of the bed that lies below a level",
        result: "A",
        text: "plan area of the bed below level",
        symbols: &["bed", "level"],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry",
        range: "a bed whose outlines do not cross themselves",
    },
    run: |(bed, level)| Ok(Area::from_si(bed.surface_area(level.value))),
};

/// Water surface.
pub static SURFACE_AREA: Figure<Line<Area>> = Figure {
    card: &FigureCard {
        id: "surface-area",
        title: "water surface",
        about: About::Pool,
        axes: &[Axis::Level],
        unit: "m2",
        us_unit: "ft2",
        resolution: Some("curves flattened to 5 mm"),
    },
    work: |sheet: Sheet<'_>, at: Subject| -> Known<Line<Area>> {
        let lines = (BED.of(sheet, at), level_in_case(sheet, at)).all()?;
        sheet.construct(&AREA_BELOW, lines)
    },
};
