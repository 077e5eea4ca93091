//! The bed of a pool: its own piece and its zones, each at its level, put together.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::{Bed, BedPiece, Edge, Outline};
use haulout_model::{About, Level, Number, ShapeField, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{Length, Ratio};
use haulout_sheet::{All, Assembly, Datum, Entry, Figure, FigureCard, Known, Line, LineId, Sheet};

use super::pool;
use crate::terms::BELOW;

const fn construction(
    name: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
) -> FormulaCard {
    FormulaCard {
        name,
        result: "bed",
        text,
        symbols,
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry: a slope falls by the distance to the outline it starts from",
        range: "outlines that do not cross themselves",
    }
}

pub(crate) type Piece = Arc<BedPiece>;

static STEPPED: Formula<(Arc<Outline>, Length), Piece> = Formula {
    card: &construction("piece of bed with sheer sides", "outline at level", &["outline", "level"]),
    run: |(outline, level)| {
        Ok(Arc::new(BedPiece { outline: outline.as_ref().clone(), level: level.value, edge: Edge::Step }))
    },
};

static SLOPED: Formula<(Arc<Outline>, Length, Ratio), Piece> = Formula {
    card: &construction(
        "piece of bed with sloped sides",
        "outline at level, sides at slope",
        &["outline", "level", "slope"],
    ),
    run: |(outline, level, slope)| {
        if slope.value <= 0.0 {
            return Err(Refusal::new("a slope rises by more than nothing; for sheer sides write \"step\""));
        }
        let edge = Edge::Slope { run_per_rise: 1.0 / slope.value };
        Ok(Arc::new(BedPiece { outline: outline.as_ref().clone(), level: level.value, edge }))
    },
};

static WITH_RIM: Assembly<Arc<Bed>> = Assembly {
    card: &construction("bed sloping down from the rim", "rim level, then piece over piece", &[]),
    run: |data| {
        let (rim, pieces) = data.split_first().ok_or_else(|| Refusal::new("a bed has a piece of its own"))?;
        together(pieces, Length::take(rim).value)
    },
};

static SHEER: Assembly<Arc<Bed>> = Assembly {
    card: &construction("bed with a sheer rim", "piece over piece", &[]),
    // A sheer side does not ask where the rim is.
    run: |pieces| together(pieces, 0.0),
};

fn together(pieces: &[Datum], rim: f64) -> Result<Arc<Bed>, Refusal> {
    let mut pieces = pieces.iter().map(|d| Piece::take(d).as_ref().clone());
    let own = pieces.next().ok_or_else(|| Refusal::new("a bed has a piece of its own"))?;
    Bed::new(own, pieces.collect(), rim).map(Arc::new).map_err(|unsound| Refusal::new(unsound.why))
}

/// The bed as a surface. Not a number, so not in the catalogue.
pub static BED: Figure<Line<Arc<Bed>>> = Figure {
    card: &FigureCard {
        id: "bed",
        title: "bed of the pool",
        about: About::Pool,
        axes: &[],
        unit: "",
        us_unit: "",
        resolution: Some("curves flattened to 5 mm; slopes to 5e-6 of area times height"),
    },
    work,
};

fn work(sheet: Sheet<'_>, at: Subject) -> Known<Line<Arc<Bed>>> {
    let pool = pool(sheet, at);
    let own = piece(sheet, at, &pool.outline, &pool.bed, &pool.depth, &pool.edge);
    let zones = pool.zones.items().iter().map(|z| piece(sheet, at, &z.outline, &z.bed, &z.depth, &z.edge));
    let pieces: Vec<Known<LineId>> = std::iter::once(own).chain(zones).map(|p| p.map(Line::id)).collect();
    if pool.edge.is_given() {
        let rim = crate::level(sheet, &pool.levels.rim).map(Line::id);
        let lines = std::iter::once(rim).chain(pieces).collect::<Vec<_>>().all()?;
        return sheet.assemble(&WITH_RIM, &lines);
    }
    sheet.assemble(&SHEER, &pieces.all()?)
}

pub(crate) fn piece(
    sheet: Sheet<'_>,
    at: Subject,
    outline: &ShapeField,
    bed: &Level,
    depth: &Number<Length>,
    edge: &Number<Ratio>,
) -> Known<Line<Piece>> {
    let outline = crate::outline(sheet, outline);
    let level = bed_level(sheet, at, bed, depth);
    // A side that is not stated is taken as sheer: the pessimistic reading, since a slope lets animals out.
    if edge.is_given() {
        return sheet.construct(&SLOPED, (outline, level, edge.on(sheet)).all()?);
    }
    sheet.construct(&STEPPED, (outline, level).all()?)
}

/// The level of a piece of bed: stated, or its depth below the normal water level.
pub(crate) fn bed_level(
    sheet: Sheet<'_>,
    at: Subject,
    bed: &Level,
    depth: &Number<Length>,
) -> Known<Line<Length>> {
    if bed.state().given().is_some() {
        return crate::level(sheet, bed);
    }
    let water = crate::level(sheet, &pool(sheet, at).levels.water);
    sheet.work(&BELOW, (water, depth.on(sheet)).all()?)
}
