//! Depths and levels of the bed that are stated twice, and zones whose slopes have no room.

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::{BedPiece, reach};
use haulout_model::{About, Level, Number, Subject};
use haulout_quantity::si::Length;
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Assembly, Entry, Figure, FigureCard, Gap, GapKind, Known, Line, LineId, Sheet};

use super::plan::zone;
use crate::pool::bed::{Piece, bed_level, piece};
use crate::pool::pool;
use crate::terms::DIFFERENCE;

static APART: Formula<(Length, Length, Length), Length> = Formula {
    card: &FormulaCard {
        name: "difference between depth and bed level",
        result: "e",
        text: "max(z_water - d - z_bed, z_bed - z_water + d)",
        symbols: &["z_water", "d", "z_bed"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "any levels",
    },
    run: |(water, depth, bed)| {
        let over = water - depth - bed;
        Ok(if over.value < 0.0 { -over } else { over })
    },
};

static REACHED: Assembly<Length> = Assembly {
    card: &FormulaCard {
        name: "lowest level a zone reaches",
        result: "z_reached",
        text: "level round the zone less its deepest inset over the run of its slope, not below its own level",
        symbols: &[],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry: a slope falls by the distance to the outline it starts from",
        range: "outlines that do not cross themselves",
    },
    run: |data| {
        let pieces: Vec<BedPiece> = data.iter().map(|d| Piece::take(d).as_ref().clone()).collect();
        let none = || Refusal::new("a zone lies in a pool");
        let (own, round) = pieces.split_last().ok_or_else(none)?;
        reach(round, own).map(Length::from_si).map_err(|unsound| Refusal::new(unsound.why))
    },
};

/// By how much depth and bed level of the pool and of its zones differ, where both are stated.
pub fn disagreements(sheet: Sheet<'_>, at: Subject) -> Vec<Known<Line<Length>>> {
    let pool = pool(sheet, at);
    let zones = pool.zones.items().iter().map(|z| (&z.depth, &z.bed));
    let both = |(depth, bed): &(&Number<Length>, &Level)| depth.is_given() && bed.state().given().is_some();
    let apart = |(depth, bed): (&Number<Length>, &Level)| {
        let water = crate::level(sheet, &pool.levels.water);
        sheet.work(&APART, (water, depth.on(sheet), crate::level(sheet, bed)).all()?)
    };
    std::iter::once((&pool.depth, &pool.bed)).chain(zones).filter(both).map(apart).collect()
}

/// Whether the zone has sloped sides at all.
pub fn is_sloped(sheet: Sheet<'_>, at: Subject) -> bool {
    zone(sheet, at).1.edge.is_given()
}

/// How far the bed of a sloped zone stays above the level stated for it, because its slopes meet before.
pub static BED_STAYS_ABOVE: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        id: "zone-stays-above",
        title: "height at which the slopes of a zone meet, over its stated bed",
        about: About::Zone,
        axes: &[],
        unit: "m",
        us_unit: "ft",
        resolution: Some("curves flattened to 5 mm"),
    },
    work: |sheet, at| {
        let (own, zone) = zone(sheet, at);
        if !is_sloped(sheet, at) {
            return Err(Gap::at(GapKind::SaidNone, "slope of the edge", zone.edge.seat().origin).into());
        }
        let stated = bed_level(sheet, own, &zone.bed, &zone.depth);
        let reached = pieces_down_to(sheet, own, &zone.id).and_then(|lines| sheet.assemble(&REACHED, &lines));
        sheet.work(&DIFFERENCE, (reached, stated).all()?)
    },
};

/// The pool's own piece and its zones up to the one with this id.
fn pieces_down_to(sheet: Sheet<'_>, own: Subject, id: &str) -> Known<Vec<LineId>> {
    let pool = pool(sheet, own);
    let last = pool.zones.items().iter().position(|z| z.id == id).unwrap_or(0);
    let zones = pool.zones.items().iter().take(last + 1);
    let base = piece(sheet, own, &pool.outline, &pool.bed, &pool.depth, &pool.edge);
    let zones = zones.map(|z| piece(sheet, own, &z.outline, &z.bed, &z.depth, &z.edge));
    let pieces: Vec<Known<LineId>> = std::iter::once(base).chain(zones).map(|p| p.map(Line::id)).collect();
    pieces.all()
}
