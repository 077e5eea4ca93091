//! What nobody sees of a pool, and how deep it may be for the best placed of its visitors.

use std::sync::Arc;

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_model::About;
use haulout_quantity::si::{Length, Ratio};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Assembly, Entry, Figure, FigureCard, Known, Line, LineId, Many};

use super::bed::SEEN_DEPTH;
use super::panel::looking_into;
use super::{GRAIN, SEEN, Seen};
use crate::pool::pool;
use crate::pool::water::SEEING_DEPTH;

static HIDDEN: Assembly<Ratio> = Assembly {
    card: &FormulaCard {
        name: "share of the bed that nobody sees",
        result: "S_hidden",
        text: "places that no position sees on a way in water up to the clarity, of all places under water",
        symbols: &[],
        kind: Kind::Construction,
        basis: Basis::CommonPractice,
        source: "keepers' practice: an animal needs a place that nobody looks into",
        range: "a flat surface at the normal level; rocks and roots hide more than is counted",
    },
    run: |data| {
        let [clarity, views @ ..] = data else {
            return Err(Refusal::new("what is seen depends on a clarity"));
        };
        let clarity = Length::take(clarity).value;
        let views: Vec<Arc<Seen>> = views.iter().map(Arc::<Seen>::take).collect();
        let Some(first) = views.first() else { return Ok(Ratio::from_si(1.0)) };
        // Every position looks at the same places of the same bed.
        let seen =
            |i: &usize| views.iter().any(|v| v.places[*i].ways.shortest().is_some_and(|way| way <= clarity));
        let hidden = (0..first.places.len()).filter(|i| !seen(i)).count();
        Ok(Ratio::from_si(hidden as f64 / first.places.len() as f64))
    },
};

static BEST: Many<Length, Length> = Many {
    card: &FormulaCard {
        name: "depth seen from the best of the positions",
        result: "d_seen",
        text: "max",
        symbols: &[],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "definition",
        range: "any depths",
    },
    run: |depths| Ok(depths.iter().copied().fold(Length::from_si(0.0), |a, b| if b > a { b } else { a })),
};

/// Share of the bed that nobody sees.
pub static OUT_OF_SIGHT: Figure<Line<Ratio>> = Figure {
    card: &FigureCard {
        id: "out-of-sight",
        title: "share of the bed that nobody sees",
        about: About::Pool,
        axes: &[],
        unit: "%",
        us_unit: "%",
        resolution: Some(GRAIN),
    },
    work: |sheet, at| {
        let mut lines: Vec<Known<LineId>> = vec![pool(sheet, at).water.secchi.on(sheet).map(Line::id)];
        lines.extend(looking_into(sheet, at)?.into_iter().map(|s| SEEN.of(sheet, s).map(Line::id)));
        sheet.assemble(&HIDDEN, &lines.all()?)
    },
};

/// How deep the middle may be and still be well seen: from the best of the positions, or straight down where no position
/// looks into the pool.
pub static DEEPEST_SEEN: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        id: "deepest-seen",
        title: "depth at which the middle of the pool is well seen by somebody",
        about: About::Pool,
        axes: &[],
        unit: "m",
        us_unit: "ft",
        resolution: None,
    },
    work: |sheet, at| {
        let positions = looking_into(sheet, at)?;
        if positions.is_empty() {
            return SEEING_DEPTH.of(sheet, at);
        }
        let depths: Vec<Known<Line<Length>>> =
            positions.into_iter().map(|position| SEEN_DEPTH.of(sheet, position)).collect();
        sheet.fold(&BEST, &depths.all()?)
    },
};
