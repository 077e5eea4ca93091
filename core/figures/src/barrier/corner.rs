//! The sharpest corner of a barrier on the animals' side: there they brace against two walls and climb.

use std::sync::Arc;

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_calc::geometry::{Outline, sharpest_corner};
use haulout_model::{About, Subject, TrackPoints};
use haulout_quantity::si::Angle;
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Assembly, Datum, Entry, Figure, FigureCard, Gap, Known, Line, LineId, Sheet};

use super::{barrier, space};

/// Outlines in the data are regions, lines are barriers; the first line is the barrier in question.
static SHARPEST: Assembly<Angle> = Assembly {
    card: &FormulaCard {
        name: "sharpest corner on the animals' side",
        result: "a",
        text: "least angle between walls joined within 10 mm, seen from inside the space; 180° where none is sharper than 170°",
        symbols: &[],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry",
        range: "walls drawn as straight pieces",
    },
    run: |data| {
        let [own, rest @ ..] = data else {
            return Err(Refusal::new("a corner needs the line of its barrier"));
        };
        let own = Arc::<TrackPoints>::take(own);
        let is_line = |d: &&Datum| matches!(d, Datum::Thing(t) if t.is::<TrackPoints>());
        let lines: Vec<Arc<TrackPoints>> = rest.iter().filter(is_line).map(Entry::take).collect();
        let regions: Vec<Arc<Outline>> = rest.iter().filter(|d| !is_line(d)).map(Entry::take).collect();
        let lines: Vec<&[[f64; 2]]> = lines.iter().map(|t| t.0.as_slice()).collect();
        let regions: Vec<&Outline> = regions.iter().map(AsRef::as_ref).collect();
        Ok(Angle::from_si(sharpest_corner(&own.0, &lines, &regions)))
    },
};

/// The lines of the other barriers that bound a space this one bounds.
fn neighbours(sheet: Sheet<'_>, at: Subject) -> Vec<Known<LineId>> {
    let own = barrier(sheet, at).spaces.items();
    let all = sheet.design().barriers.items().iter().enumerate();
    let beside = all.filter(|(i, b)| {
        let meets = b.spaces.items().iter().any(|s| own.iter().any(|o| o.name() == s.name()));
        *i != at.index() && (meets || b.spaces.items().is_empty())
    });
    beside.map(|(_, b)| b.line.on(sheet).map(Line::id)).collect()
}

/// The sharpest corner of a barrier, in itself or with its neighbours.
pub static INNER_CORNER: Figure<Line<Angle>> = Figure {
    card: &FigureCard {
        id: "inner-corner",
        title: "sharpest corner on the animals' side",
        about: About::Barrier,
        axes: &[],
        unit: "deg",
        us_unit: "deg",
        resolution: Some("walls joined within 10 mm"),
    },
    work: |sheet, at| {
        let own = barrier(sheet, at);
        if let Some(missing) = own.spaces.missing() {
            return Err(Gap::from(missing).into());
        }
        let regions = own.spaces.items().iter().map(|name| {
            let outline = crate::outline(sheet, &space(sheet, name)?.outline)?;
            Ok(outline.id())
        });
        let lines: Vec<Known<LineId>> = std::iter::once(own.line.on(sheet).map(Line::id))
            .chain(regions)
            .chain(neighbours(sheet, at))
            .collect();
        sheet.assemble(&SHARPEST, &lines.all()?)
    },
};
