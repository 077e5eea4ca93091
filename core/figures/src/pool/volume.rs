//! Gross and net water volume of a pool.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::Bed;
use haulout_model::About;
use haulout_quantity::si::{Length, Volume};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Axis, Figure, FigureCard, Line};

use super::{bed::BED, level_in_case, solids::SOLIDS};

pub(crate) static VOLUME_BELOW: Formula<(Arc<Bed>, Length), Volume> = Formula {
    card: &FormulaCard {
        name: "volume over the bed up to a level",
        result: "V_gross",
        text: "volume over the bed below level",
        symbols: &["bed", "level"],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "sum of area times height over steps; areas integrated over slopes",
        range: "a bed whose outlines do not cross themselves",
    },
    run: |(bed, level)| Ok(Volume::from_si(bed.volume_below(level.value))),
};

static LESS_SOLIDS: Formula<(Volume, Volume), Volume> = Formula {
    card: &FormulaCard {
        name: "net water volume",
        result: "V",
        text: "V_gross - V_solids",
        symbols: &["V_gross", "V_solids"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic; the open part of gravel and void-formers counts as water",
        range: "solids that lie wholly under water",
    },
    run: |(gross, solids)| {
        if solids >= gross {
            return Err(Refusal::new(
                "the solids in the pool would take up all its water; check their volumes",
            ));
        }
        Ok(gross - solids)
    },
};

const fn card(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard {
        id,
        title,
        about: About::Pool,
        axes: &[Axis::Level],
        unit: "m3",
        us_unit: "gal(US)",
        resolution: Some("curves flattened to 5 mm; slopes to 5e-6 of area times height"),
    }
}

/// Volume over the bed with nothing in it.
pub static GROSS_VOLUME: Figure<Line<Volume>> = Figure {
    card: &card("gross-volume", "gross water volume"),
    work: |sheet, at| {
        let lines = (BED.of(sheet, at), level_in_case(sheet, at)).all()?;
        sheet.construct(&VOLUME_BELOW, lines)
    },
};

/// Water in the pool.
pub static NET_VOLUME: Figure<Line<Volume>> = Figure {
    card: &card("net-volume", "net water volume"),
    work: |sheet, at| {
        let lines = (GROSS_VOLUME.of(sheet, at), SOLIDS.of(sheet, at)).all()?;
        sheet.work(&LESS_SOLIDS, lines)
    },
};
