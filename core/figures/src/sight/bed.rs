//! Shares of the bed that a position sees, how long the ways in water are, and the clarity it would take.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::sight::{WATER, apart, deepest_within};
use haulout_model::{About, Subject};
use haulout_quantity::si::{Length, Ratio};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Figure, FigureCard, Known, Line, Sheet};

use super::{GRAIN, SEEN, Seen, eye_level, position};
use crate::pool::bed::BED;
use crate::pool::water::{CLEAR_SHARE, SEEING_DEPTH};

const fn of_ways(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind: Kind::Construction,
        basis: Basis::CommonPractice,
        source: "exhibit practice: what is seen depends on the way in water, whichever way the ray comes in",
        range: "a flat surface at the normal level",
    }
}

static WITHIN: Formula<(Arc<Seen>, Length), Ratio> = Formula {
    card: &of_ways(
        "share of the bed seen on ways up to a length",
        "S",
        "places whose shortest way in water is at most s, of all places under water",
        &["view", "s"],
    ),
    run: |(seen, path)| {
        let near = seen.places.iter().filter_map(|p| p.ways.shortest()).filter(|way| *way <= path.value);
        Ok(Ratio::from_si(near.count() as f64 / seen.places.len() as f64))
    },
};

static NEAREST: Formula<(Arc<Seen>,), Length> = Formula {
    card: &of_ways("shortest way in water to the bed", "s_min", "least of the ways", &["view"]),
    run: |(seen,)| chosen(seen.places.iter().filter_map(|p| p.ways.shortest()), f64::min),
};

static FARTHEST: Formula<(Arc<Seen>,), Length> = Formula {
    card: &of_ways("longest way in water to the bed", "s_max", "largest of the ways", &["view"]),
    run: |(seen,)| chosen(seen.places.iter().filter_map(|p| p.ways.shortest()), f64::max),
};

static TO_THE_DEEP: Formula<(Arc<Seen>,), Length> = Formula {
    card: &of_ways(
        "longest way in water to the deep bed",
        "s_deep",
        "largest of the ways to places within 50 mm of the greatest depth",
        &["view"],
    ),
    run: |(seen,)| chosen(seen.deep().filter_map(|p| p.ways.shortest()), f64::max),
};

fn chosen(ways: impl Iterator<Item = f64>, best: fn(f64, f64) -> f64) -> Result<Length, Refusal> {
    let none =
        || Refusal::new("no ray of this eye reaches it; lower the front or the sill, or raise the eye");
    ways.reduce(best).map(Length::from_si).ok_or_else(none)
}

static HALF: Formula<(Arc<Seen>, Ratio), Length> = Formula {
    card: &of_ways(
        "clarity needed to see half of the bed",
        "Z_half",
        "the way in water within which half of the places are seen, over k",
        &["view", "k"],
    ),
    run: |(seen, share)| {
        let mut ways: Vec<f64> = seen.places.iter().filter_map(|p| p.ways.shortest()).collect();
        ways.sort_unstable_by(f64::total_cmp);
        let half = seen.places.len().div_ceil(2);
        match ways.get(half.saturating_sub(1)) {
            Some(way) => Ok(Length::from_si(way / share.value)),
            None => Err(Refusal::new(
                "less than half of the bed is reached by any ray of this eye: no clarity is enough; a larger panel, a lower sill or a lower front is",
            )),
        }
    },
};

/// What the deepest bed in sight is worked from, in the order of its symbols.
type Seeing = (Length, Length, Length, Length, Arc<haulout_calc::geometry::Bed>, Length);

static DEEPEST: Formula<Seeing, Length> = Formula {
    card: &FormulaCard {
        name: "depth at which the middle of the pool is still seen",
        result: "d_seen",
        text: "the depth at which the way in water from the eye through the surface to the middle is s",
        symbols: &["x", "y", "z_eye", "z_water", "bed", "s"],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "Snell's law, n = 1.333; the middle is the centre of area of the outline",
        range: "an eye above the water; what stands in the way is asked by the shares of the bed",
    },
    run: |(x, y, eye, water, bed, path)| {
        let middle = bed.pool().centroid();
        let across = apart([x.value, y.value], middle);
        Ok(Length::from_si(deepest_within(path.value, (eye - water).value, across, WATER)))
    },
};

const fn share(id: &'static str, title: &'static str) -> FigureCard {
    let about = About::PositionPool;
    FigureCard { id, title, about, axes: &[], unit: "%", us_unit: "%", resolution: Some(GRAIN) }
}

const fn way(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard { unit: "m", us_unit: "ft", ..share(id, title) }
}

fn pool_of(at: Subject) -> Subject {
    Subject::nth(About::Pool, at.second())
}

/// Share of the bed seen within 0.7 of the clarity.
pub static BED_SEEN: Figure<Line<Ratio>> = Figure {
    card: &share("bed-seen", "share of the bed well seen"),
    work: |sheet, at| {
        let lines = (SEEN.of(sheet, at), SEEING_DEPTH.of(sheet, pool_of(at))).all()?;
        sheet.construct(&WITHIN, lines)
    },
};

/// Share of the bed seen within the whole clarity.
pub static BED_MADE_OUT: Figure<Line<Ratio>> = Figure {
    card: &share("bed-made-out", "share of the bed just made out"),
    work: |sheet, at| {
        let clarity = crate::pool::pool(sheet, pool_of(at)).water.secchi.on(sheet);
        sheet.construct(&WITHIN, (SEEN.of(sheet, at), clarity).all()?)
    },
};

fn on_ways(
    sheet: Sheet<'_>,
    at: Subject,
    formula: &'static Formula<(Arc<Seen>,), Length>,
) -> Known<Line<Length>> {
    sheet.work(formula, (SEEN.of(sheet, at)?,))
}

/// Shortest way in water.
pub static NEAREST_WAY: Figure<Line<Length>> = Figure {
    card: &way("nearest-way", "shortest way in water to the bed"),
    work: |sheet, at| on_ways(sheet, at, &NEAREST),
};

/// Longest way in water.
pub static FARTHEST_WAY: Figure<Line<Length>> = Figure {
    card: &way("farthest-way", "longest way in water to the bed"),
    work: |sheet, at| on_ways(sheet, at, &FARTHEST),
};

/// Longest way in water to the deep bed.
pub static WAY_TO_THE_DEEP: Figure<Line<Length>> = Figure {
    card: &way("way-to-the-deep", "longest way in water to the deep bed"),
    work: |sheet, at| on_ways(sheet, at, &TO_THE_DEEP),
};

/// The clarity that would show half of the bed: the promise turned round.
pub static CLARITY_NEEDED: Figure<Line<Length>> = Figure {
    card: &way("clarity-needed", "clarity needed to see half of the bed well"),
    work: |sheet, at| sheet.work(&HALF, (SEEN.of(sheet, at)?, sheet.register(&CLEAR_SHARE, None))),
};

/// How deep the middle of the pool may be and still be well seen from a position through the surface.
pub static SEEN_DEPTH: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        resolution: None,
        ..way("seen-depth", "depth at which the middle of the pool is still well seen")
    },
    work: |sheet, at| {
        let own = pool_of(at);
        let position = position(sheet, at.index());
        let [x, y] = &position.at;
        let eye = (x.on(sheet), y.on(sheet), eye_level(sheet, position)).all();
        let water = crate::level(sheet, &crate::pool::pool(sheet, own).levels.water);
        let ((x, y, eye), water, bed, path) =
            (eye, water, BED.of(sheet, own), SEEING_DEPTH.of(sheet, own)).all()?;
        sheet.construct(&DEEPEST, (x, y, eye, water, bed, path))
    },
};
