//! Guards for visitors: how high over what people stand on, how deep the fall, how wide the openings.

use haulout_calc::containment::OVER;
use haulout_model::visitor::Guard;
use haulout_model::{About, Subject};
use haulout_quantity::si::Length;
use haulout_sheet::{All, Figure, FigureCard, Known, Limit, Line, Sheet};

use super::yes::{MORE_THAN, NOT};

fn guard(sheet: Sheet<'_>, at: Subject) -> &Guard {
    &sheet.design().visitors.guards.items()[at.index()]
}

const fn card(id: &'static str, title: &'static str, unit: [&'static str; 2]) -> FigureCard {
    FigureCard {
        id,
        title,
        about: About::Guard,
        axes: &[],
        unit: unit[0],
        us_unit: unit[1],
        resolution: None,
    }
}

/// Top of the guard over the surface people stand on before it.
pub static GUARD_HEIGHT: Figure<Line<Length>> = Figure {
    card: &card("guard-height", "height of the guard", ["mm", "in"]),
    work: |sheet, at| {
        let field = guard(sheet, at);
        let lines = (crate::level(sheet, &field.top), crate::level(sheet, &field.standing)).all()?;
        sheet.work(&OVER, lines)
    },
};

/// How far one falls beyond the guard.
pub static DROP: Figure<Line<Length>> = Figure {
    card: &card("drop", "drop beyond the guard", ["mm", "in"]),
    work: |sheet, at| {
        let field = guard(sheet, at);
        let lines = (crate::level(sheet, &field.standing), crate::level(sheet, &field.below)).all()?;
        sheet.work(&OVER, lines)
    },
};

/// Whether the drop is more than the code lets pass without a guard.
///
/// # Errors
/// A gap where a level is missing.
pub fn drop_beyond(sheet: Sheet<'_>, at: Subject, limit: &'static Limit) -> Known<Line<bool>> {
    let drop = DROP.of(sheet, at)?;
    sheet.work(&MORE_THAN, (drop, sheet.limit(limit)))
}

/// The widest opening of the guard.
pub static GUARD_OPENING: Figure<Line<Length>> = Figure {
    card: &card("guard-opening", "widest opening of the guard", ["mm", "in"]),
    work: |sheet, at| guard(sheet, at).opening.on(sheet),
};

/// No child climbs it readily.
pub static NOT_CLIMBED: Figure<Line<bool>> = Figure {
    card: &card("not-climbed", "not climbed by a child", ["", ""]),
    work: |sheet, at| sheet.work(&NOT, (guard(sheet, at).climbable.on(sheet)?,)),
};

/// Height from which one sees through the guard, over the surface people stand on.
pub static SEEN_THROUGH_FROM: Figure<Line<Length>> = Figure {
    card: &card("seen-through-from", "height from which one sees through the guard", ["m", "ft"]),
    work: |sheet, at| {
        let field = guard(sheet, at);
        let lines = (crate::level(sheet, &field.opaque_to), crate::level(sheet, &field.standing)).all()?;
        sheet.work(&OVER, lines)
    },
};

/// The highest step before it.
pub static STEP: Figure<Line<Length>> = Figure {
    card: &card("guard-step", "highest step at the guard", ["mm", "in"]),
    work: |sheet, at| guard(sheet, at).step.on(sheet),
};

/// Top of the guard over the highest step before it.
pub static OVER_THE_STEP: Figure<Line<Length>> = Figure {
    card: &card("guard-over-the-step", "height of the guard over the step before it", ["mm", "in"]),
    work: |sheet, at| {
        let lines = (GUARD_HEIGHT.of(sheet, at), guard(sheet, at).step.on(sheet)).all()?;
        sheet.work(&OVER, lines)
    },
};

/// From its top to the nearest place an animal can be.
pub static SET_BACK: Figure<Line<Length>> = Figure {
    card: &card("guard-set-back", "way over the guard to the nearest animal", ["m", "ft"]),
    work: |sheet, at| guard(sheet, at).set_back.on(sheet),
};
