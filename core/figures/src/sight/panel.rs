//! What each panel shows to the lowest eye that looks into its pool, and how far its sill lies under the water.

use std::sync::Arc;

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_model::panel::Panel;
use haulout_model::{About, Subject};
use haulout_quantity::si::{Length, Ratio};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{
    All, Assembly, Entry, Figure, FigureCard, Gap, GapKind, Known, LevelState, Line, LineId, Sheet,
};

use super::{GRAIN, Opening, SEEN, Seen, opening, position};
use crate::pool::water::SEEING_DEPTH;
use crate::pool::{level_in_case, named};
use crate::terms::DIFFERENCE;

/// Eyes within this of the lowest are as low, metres.
const AS_LOW: f64 = 1e-6;

/// The panel, the longest way, then an eye and what it sees for each position.
static THROUGH: Assembly<Ratio> = Assembly {
    card: &FormulaCard {
        name: "share of the deep bed that the lowest eye sees through the panel",
        result: "S_panel",
        text: "of the positions with the lowest eye the one that sees most: places of the deep bed on ways up to s through this panel, of all its places",
        symbols: &[],
        kind: Kind::Construction,
        basis: Basis::CommonPractice,
        source: "exhibit practice: a panel is for those who cannot look over the front",
        range: "a flat surface at the normal level; the deep bed lies within 50 mm of the greatest depth",
    },
    run: |data| {
        let [panel, path, views @ ..] = data else {
            return Err(Refusal::new("a panel is looked through on ways up to a length"));
        };
        let (panel, path) = (Arc::<Opening>::take(panel), Length::take(path).value);
        let eyes = || views.chunks_exact(2).map(|v| (Length::take(&v[0]).value, &v[1]));
        let lowest = eyes().map(|(eye, _)| eye).fold(f64::INFINITY, f64::min);
        let low = eyes().filter(|(eye, _)| *eye <= lowest + AS_LOW);
        let best = low.map(|(_, seen)| shown(&Arc::<Seen>::take(seen), &panel, path)).fold(0.0, f64::max);
        Ok(Ratio::from_si(best))
    },
};

fn shown(seen: &Seen, opening: &Opening, path: f64) -> f64 {
    let own = |p: &haulout_calc::sight::Panel| {
        (&p.line, p.sill, p.head) == (&opening.panel.line, opening.panel.sill, opening.panel.head)
    };
    let Some(at) = seen.panels.iter().position(own) else { return 0.0 };
    let (mut all, mut through) = (0_u32, 0_u32);
    for place in seen.deep() {
        all += 1;
        through += u32::from(place.ways.panels[at].is_some_and(|way| way <= path));
    }
    f64::from(through) / f64::from(all.max(1))
}

const fn card(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard { id, title, about: About::Panel, axes: &[], unit: "m", us_unit: "ft", resolution: None }
}

fn panel(sheet: Sheet<'_>, at: Subject) -> &Panel {
    &sheet.design().panels.items()[at.index()]
}

fn pool_of(sheet: Sheet<'_>, panel: &Panel) -> Known<Subject> {
    match panel.pool.given() {
        Some(name) => named(sheet, name),
        None => Err(Gap::from(panel.pool.missing()).into()),
    }
}

/// Share of the deep bed that the lowest eye sees through the panel.
pub static DEEP_SEEN_THROUGH: Figure<Line<Ratio>> = Figure {
    card: &FigureCard {
        unit: "%",
        us_unit: "%",
        resolution: Some(GRAIN),
        ..card("deep-seen-through", "share of the deep bed seen through the panel by the lowest eye")
    },
    work: |sheet, at| {
        let panel = panel(sheet, at);
        let own = pool_of(sheet, panel)?;
        let mut lines = vec![opening(sheet, panel).map(Line::id), SEEING_DEPTH.of(sheet, own).map(Line::id)];
        lines.extend(views(sheet, own)?);
        sheet.assemble(&THROUGH, &lines.all()?)
    },
};

/// Eye and view of every position that looks into a pool.
fn views(sheet: Sheet<'_>, pool: Subject) -> Known<Vec<Known<LineId>>> {
    let positions = looking_into(sheet, pool)?;
    if positions.is_empty() {
        let what = "a viewing position that looks into the pool";
        return Err(Gap::of(GapKind::Absent, what, Vec::new()).into());
    }
    let view = |at: &Subject| {
        let eye = position(sheet, at.index()).eye.on(sheet).map(Line::id);
        [eye, SEEN.of(sheet, *at).map(Line::id)]
    };
    Ok(positions.iter().flat_map(view).collect())
}

/// The positions that look into a pool, each with it.
pub(crate) fn looking_into(sheet: Sheet<'_>, pool: Subject) -> Known<Vec<Subject>> {
    let list = &sheet.design().visitors.positions;
    if let Some(missing) = list.missing().filter(|_| !matches!(list.state(), haulout_model::State::None)) {
        return Err(Gap::from(missing).into());
    }
    let walk = About::PositionPool.walk(sheet.design());
    Ok(walk.subjects.into_iter().filter(|s| s.second() == pool.index()).collect())
}

/// How far the sill lies under the lowest water.
pub static SILL_UNDER_WATER: Figure<Line<Length>> = Figure {
    card: &card("sill-under-water", "sill of the panel under the lowest water"),
    work: |sheet, at| {
        let panel = panel(sheet, at);
        let own = pool_of(sheet, panel)?;
        let low = level_in_case(sheet.in_case(sheet.case().level(LevelState::Low)), own);
        sheet.work(&DIFFERENCE, (low, crate::level(sheet, &panel.sill)).all()?)
    },
};
