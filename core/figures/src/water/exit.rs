//! Figures about a way out of the water: its foot under the lowest water, its top over the highest.

use haulout_model::exit::Exit;
use haulout_model::{About, Subject};
use haulout_quantity::si::Length;
use haulout_sheet::{All, Figure, FigureCard, Gap, GapKind, Known, Line, Sheet};

use crate::terms::DIFFERENCE;

const fn card(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard { id, title, about: About::Exit, axes: &[], unit: "mm", us_unit: "in", resolution: None }
}

/// The way out of a subject, with the pool it leads out of.
fn known(sheet: Sheet<'_>, at: Subject) -> Known<(Subject, &Exit)> {
    let found = sheet.design().exits().nth(at.index());
    found
        .map(|(pool, exit)| (Subject::nth(About::Pool, pool), exit))
        .ok_or_else(|| Gap::of(GapKind::LeadsNowhere, "way out", Vec::new()).into())
}

/// How far the foot lies under the lowest running water.
pub static EXIT_FOOT_DEPTH: Figure<Line<Length>> = Figure {
    card: &card("exit-foot-under-lowest-water", "foot of the way out under the lowest water"),
    work: |sheet, at| {
        let (pool, exit) = known(sheet, at)?;
        let low = crate::level(sheet, &crate::pool::pool(sheet, pool).levels.low);
        sheet.work(&DIFFERENCE, (low, crate::level(sheet, &exit.foot)).all()?)
    },
};

/// How far the top stands over the invert of the overflow.
pub static EXIT_TOP_HEIGHT: Figure<Line<Length>> = Figure {
    card: &card("exit-top-over-highest-water", "top of the way out over the highest water"),
    work: |sheet, at| {
        let (pool, exit) = known(sheet, at)?;
        let high = crate::level(sheet, &crate::pool::pool(sheet, pool).levels.overflow);
        sheet.work(&DIFFERENCE, (crate::level(sheet, &exit.top), high).all()?)
    },
};
