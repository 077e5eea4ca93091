//! Habits of a group's species, how far it reaches, and what kind of barrier holds it.

use haulout_calc::containment::REACH as REACH_OF;
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{Length, Ratio};
use haulout_register::{Build, Habit, Species, Value};
use haulout_sheet::{Axis, Figure, FigureCard, Gaps, Known, Line, Sheet, Size};

use super::yes::{BY_HEIGHT, BY_ROOF, HAS};
use crate::group::BODY_LENGTH;
use crate::species::{group, species, species_value};

const fn card(
    id: &'static str,
    title: &'static str,
    axes: &'static [Axis],
    unit: [&'static str; 2],
) -> FigureCard {
    FigureCard { id, title, about: About::Group, axes, unit: unit[0], us_unit: unit[1], resolution: None }
}

const fn flag(id: &'static str, title: &'static str) -> FigureCard {
    card(id, title, &[], ["", ""])
}

static SHELL_REACH: Value = Value::number(
    "reach in shell lengths",
    1.0,
    Basis::CommonPractice,
    "keepers' practice: a turtle reaches at least one shell length",
);
static TAIL_REACH: Value = Value::number(
    "reach in total lengths",
    1.5,
    Basis::CommonPractice,
    "keepers' practice: 1 to 1.5 total lengths for what climbs; the upper end is taken",
);

/// A habit of the species of a group, as the register has it.
fn habit(
    sheet: Sheet<'_>,
    at: Subject,
    what: &'static str,
    of: fn(&'static Species) -> Option<&'static Value>,
) -> Known<Line<Ratio>> {
    species_value(sheet, at, what, of)
}

/// The kind of body as a line, and as the register has it: which lengths are read hangs on it, and the line says so.
pub(crate) fn body(sheet: Sheet<'_>, at: Subject) -> Known<(Line<Ratio>, Build)> {
    let line = habit(sheet, at, "kind of body", |s| s.habit().map(|h| &h.body))?;
    let row: Option<&'static Habit> = species(sheet, at)?.habit();
    Ok((line, row.map_or(Build::Lizard, |h| h.build)))
}

/// The habit as a yes or no.
fn has(
    sheet: Sheet<'_>,
    at: Subject,
    what: &'static str,
    of: fn(&'static Species) -> Option<&'static Value>,
) -> Known<Line<bool>> {
    sheet.work(&HAS, (habit(sheet, at, what, of)?,))
}

/// Whether it climbs, as a number to work with.
pub(crate) fn climbing(sheet: Sheet<'_>, at: Subject) -> Known<Line<Ratio>> {
    habit(sheet, at, "whether it climbs", |s| s.habit().map(|h| &h.climbs))
}

/// Climbs mesh, rough faces and corners.
pub static CLIMBS: Figure<Line<bool>> =
    Figure { card: &flag("climbs", "climbs"), work: |sheet, at| sheet.work(&HAS, (climbing(sheet, at)?,)) };

/// Digs under what it meets.
pub static DIGS: Figure<Line<bool>> = Figure {
    card: &flag("digs", "digs"),
    work: |sheet, at| has(sheet, at, "whether it digs", |s| s.habit().map(|h| &h.digs)),
};

/// Listed as dangerous to people.
pub static HAZARDOUS: Figure<Line<bool>> = Figure {
    card: &flag("hazardous", "dangerous to people"),
    work: |sheet, at| has(sheet, at, "whether it is dangerous", |s| s.habit().map(|h| &h.hazardous)),
};

/// Turtles and crocodilians: held by the height of a wall.
pub static HELD_BY_HEIGHT: Figure<Line<bool>> = Figure {
    card: &flag("held-by-height", "held by the height of a wall"),
    work: |sheet, at| sheet.work(&BY_HEIGHT, (body(sheet, at)?.0,)),
};

/// Lizards and snakes that climb or jump: held by a closed top only.
pub static HELD_BY_ROOF: Figure<Line<bool>> = Figure {
    card: &flag("held-by-a-closed-top", "held by a closed top only"),
    work: |sheet, at| {
        let jumps = |s: &'static Species| s.habit().map(|h| &h.jumps);
        let lines = (body(sheet, at)?.0, climbing(sheet, at)?, habit(sheet, at, "whether it jumps", jumps)?);
        sheet.work(&BY_ROOF, lines)
    },
};

/// Snout to tip of the tail.
pub static TOTAL_LENGTH: Figure<Line<Length>> = Figure {
    card: &card("total-length", "total length", &[Axis::Size], ["cm", "in"]),
    work: |sheet, at| {
        let sizes = &group(sheet, at).total_length;
        match sheet.case().size {
            Size::Grown => sizes.grown.on(sheet),
            Size::Smallest => sizes.smallest.on(sheet),
            Size::Now => sizes.now.on(sheet),
        }
    },
};

/// How far a full-grown animal reaches sideways: one shell length of turtles, one and a half total lengths of others.
pub static REACH: Figure<Line<Length>> = Figure {
    card: &card("reach", "reach sideways", &[], ["m", "ft"]),
    work: |sheet, at| {
        let (body, build) = body(sheet, at)?;
        let because = |gaps: Gaps| gaps.because(body.id());
        let (lengths, length) = match build {
            Build::Turtle => (&SHELL_REACH, BODY_LENGTH.of(sheet, at)),
            _ => (&TAIL_REACH, TOTAL_LENGTH.of(sheet, at)),
        };
        let lines = (sheet.register(lengths, None), length.map_err(because)?, body);
        sheet.work(&REACH_OF, lines)
    },
};
