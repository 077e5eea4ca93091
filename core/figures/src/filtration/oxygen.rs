//! Oxygen through the bed of a filter: what the flow can leave in it, and what its part of the nitrogen asks for.

use haulout_calc::filtration::oxygen as formulas;
use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::{About, Subject};
use haulout_quantity::si::{MassDensity, MassRate};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Value;
use haulout_sheet::{All, Axis, Figure, FigureCard, Known, Line, Sheet};

use super::bed::{SURFACE_PROVIDED, WORKING_SURFACE};
use super::load::NITROGEN_PEAK;
use super::{filter, gravel, water_of};
use crate::pool::water::WARMEST;

pub(crate) static LEAST_OXYGEN: Value = Value {
    what: "least oxygen that a filter works at",
    value: 0.002,
    unit: "mg/L",
    dimension: Dimension::DENSITY,
    basis: Basis::Reported,
    source: "Sandy (1987), as quoted in a thesis of the University of Wisconsin: 2 mg/L",
};

const fn card(id: &'static str, title: &'static str, axes: &'static [Axis]) -> FigureCard {
    FigureCard { id, title, about: About::Filter, axes, unit: "g/d", us_unit: "g/d", resolution: None }
}

/// Oxygen that fresh water holds when it is warmest.
pub static SATURATION: Figure<Line<MassDensity>> = Figure {
    card: &FigureCard {
        id: "oxygen-saturation",
        title: "oxygen at saturation in the warmest water",
        about: About::Pool,
        axes: &[],
        unit: "mg/L",
        us_unit: "mg/L",
        resolution: None,
    },
    work: |sheet, at| sheet.work(&formulas::OXYGEN_SATURATION, (WARMEST.of(sheet, at)?,)),
};

/// Oxygen that the flow can leave in the bed.
pub static OXYGEN_PASSED: Figure<Line<MassRate>> = Figure {
    card: &card("oxygen-passed", "oxygen the flow can leave in the bed", &[Axis::Filter]),
    work: |sheet, at| {
        let saturation = water_of(sheet, at).and_then(|pool| SATURATION.of(sheet, pool));
        let stated = filter(sheet, at).oxygen_in.on(sheet);
        let (flow, stated, saturation) = (gravel::flow(sheet, at), stated, saturation).all()?;
        let least = sheet.register(&LEAST_OXYGEN, None);
        sheet.work(&formulas::OXYGEN_PASSED, (flow, stated, saturation, least))
    },
};

/// Oxygen that the filter's part of the largest day's nitrogen asks for.
pub static OXYGEN_WANTED: Figure<Line<MassRate>> = Figure {
    card: &card("oxygen-wanted", "oxygen that nitrification asks for", &[]),
    work: |sheet, at| {
        let pool = water_of(sheet, at)?;
        let all = SURFACE_PROVIDED.of(sheet, pool);
        let lines = (NITROGEN_PEAK.of(sheet, pool), WORKING_SURFACE.of(sheet, at), all).all()?;
        sheet.work(&formulas::OXYGEN_WANTED, lines)
    },
};

static ON_THE_FLOW: Formula<(u16,), bool> = Formula {
    card: &FormulaCard {
        name: "bed that lives on the oxygen of its flow",
        result: "yes",
        text: "planted gravel, static media, sand or bead",
        symbols: &["kind"],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition; moving beds are blown with air, trickling filters stand in it",
        range: "stated kinds",
    },
    run: |(kind,)| Ok(matches!(kind, PLANTED | STATIC | SAND)),
};

/// Positions of the kinds on their card.
const PLANTED: u16 = 0;
const STATIC: u16 = 1;
const SAND: u16 = 4;

/// Whether the bed has no oxygen but what its flow brings.
///
/// # Errors
/// A gap when the kind of the filter is not stated.
pub fn lives_on_the_flow(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&ON_THE_FLOW, (filter(sheet, at).kind.on(sheet)?.option(),))
}
