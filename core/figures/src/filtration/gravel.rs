//! Planted gravel filters: the rise of the water through the bed, and what is left below the notch.

use std::sync::Arc;

use haulout_calc::filtration;
use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_calc::geometry::Outline;
use haulout_model::About;
use haulout_quantity::si::{Area, Length, Velocity};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Line};

use super::{circuit_of, filter};
use crate::circuit::duty::DELIVERED_FLOW;
use crate::terms::DIFFERENCE;

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
    work: |sheet, at| {
        let plan = crate::outline(sheet, &filter(sheet, at).outline);
        let area = plan.and_then(|outline| sheet.construct(&PLAN, (outline,)));
        let flow = circuit_of(sheet, at).and_then(|circuit| DELIVERED_FLOW.of(sheet, circuit));
        sheet.work(&filtration::UP_FLOW, (flow, area).all()?)
    },
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
