//! How high a barrier is for the animals behind it, and how high it has to be.

use haulout_calc::containment::{HEIGHT_ROUGH, HEIGHT_SMOOTH, HEIGHT_SMOOTH_FROM, OVER, TURTLE_WALL};
use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::{About, State, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{Length, Ratio};
use haulout_register::Build;
use haulout_sheet::{All, Figure, FigureCard, Gap, GapKind, Known, Limit, Line, Sheet};

use super::footing::FOOTING;
use super::habit::{TOTAL_LENGTH, body, climbing};
use super::yes::{IS_LIDDED, IS_OPEN};
use super::{barrier, top};
use crate::group::BODY_LENGTH;
use crate::row_by_size;

/// The option of the field "surface" that is smooth.
const SMOOTH: u16 = 0;

/// Effective height: the smooth part of the barrier above the highest footing within reach. A rough face without a
/// smooth part counts nothing for what climbs, mesh nothing for any.
pub static EFFECTIVE_HEIGHT: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        id: "effective-height",
        title: "effective height of the barrier",
        about: About::BarrierGroup,
        axes: &[],
        unit: "m",
        us_unit: "ft",
        resolution: Some("curves flattened to 5 mm"),
    },
    work: |sheet, at| {
        let barrier_at = at.part(About::Barrier).expect("a barrier-group has a barrier");
        let ends = (top(sheet, barrier_at), FOOTING.of(sheet, at)).all();
        let field = barrier(sheet, barrier_at);
        match field.smooth_from.state() {
            State::Given(_) => {
                let ((top, foot), smooth) = (ends, crate::level(sheet, &field.smooth_from)).all()?;
                sheet.work(&HEIGHT_SMOOTH_FROM, (top, foot, smooth))
            }
            State::Undecided => Err(Gap::from(field.smooth_from.missing()).into()),
            State::Absent | State::None => of_one_face(sheet, at, ends),
        }
    },
};

fn of_one_face(
    sheet: Sheet<'_>,
    at: Subject,
    ends: Known<(Line<Length>, Line<Length>)>,
) -> Known<Line<Length>> {
    let barrier_at = at.part(About::Barrier).expect("a barrier-group has a barrier");
    let ((top, foot), face) = (ends, barrier(sheet, barrier_at).surface.on(sheet)).all()?;
    if sheet.option_of(face) == SMOOTH {
        return sheet.work(&HEIGHT_SMOOTH, (top, foot, face.option()));
    }
    let climbs = climbing(sheet, group_of(at));
    let climbs = climbs.map_err(|gaps| gaps.because(face.id()))?;
    sheet.work(&HEIGHT_ROUGH, (top, foot, face.option(), climbs))
}

fn group_of(at: Subject) -> Subject {
    at.part(About::Group).expect("a height is asked for a subject that has a group")
}

/// The limits from which the height is asked.
pub struct Asked {
    /// Shell lengths of a turtle.
    pub lengths: &'static Limit,
    /// Added to them.
    pub allowance: &'static Limit,
    /// Never less.
    pub least: &'static Limit,
    /// Crocodilians by total length: the upper end of each class and its height.
    pub crocodilians: &'static [(&'static Limit, &'static Limit)],
}

static FOR_BODY: Formula<(Length, Ratio), Length> = Formula {
    card: &FormulaCard {
        name: "barrier height by the kind of body",
        result: "h_ask",
        text: "h",
        symbols: &["h", "body"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "keepers' practice",
        range: "crocodilians",
    },
    run: |(height, _body)| Ok(height),
};

/// The height a barrier must have for a full-grown animal of the group.
///
/// # Errors
/// A gap where a length is missing, or where height does not hold such animals.
pub fn asked_height(sheet: Sheet<'_>, at: Subject, asked: &Asked) -> Known<Line<Length>> {
    let group_at = group_of(at);
    let (line, build) = body(sheet, group_at)?;
    match build {
        Build::Turtle => {
            let length = BODY_LENGTH.of(sheet, group_at).map_err(|g| g.because(line.id()))?;
            let lines = (
                sheet.limit(asked.lengths),
                length,
                sheet.limit(asked.allowance),
                sheet.limit(asked.least),
                line,
            );
            sheet.work(&TURTLE_WALL, lines)
        }
        Build::Crocodilian => {
            let length = TOTAL_LENGTH.of(sheet, group_at).map_err(|g| g.because(line.id()))?;
            let row = row_by_size(sheet, length, asked.crocodilians)?;
            sheet.work(&FOR_BODY, (row, line))
        }
        Build::Lizard | Build::Snake => Err(Gap::of(
            GapKind::OutOfRange,
            "no height holds lizards and snakes; close the top",
            vec![line.id()],
        )
        .into()),
    }
}

/// How much higher a barrier is than it has to be.
///
/// # Errors
/// None of its own.
pub fn spare_height(sheet: Sheet<'_>, have: Line<Length>, asked: Line<Length>) -> Known<Line<Length>> {
    sheet.work(&OVER, (have, asked))
}

const fn closed(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard { id, title, about: About::Barrier, axes: &[], unit: "", us_unit: "", resolution: None }
}

/// The enclosure is open over this barrier.
pub static OPEN_TOP: Figure<Line<bool>> = Figure {
    card: &closed("open-top", "open at the top"),
    work: |sheet, at| {
        let closure = barrier(sheet, at).closure.on(sheet)?;
        sheet.work(&IS_OPEN, (closure.option(),))
    },
};

/// The enclosure is closed by a lid over this barrier.
pub static LIDDED: Figure<Line<bool>> = Figure {
    card: &closed("lidded", "closed by a lid"),
    work: |sheet, at| {
        let closure = barrier(sheet, at).closure.on(sheet)?;
        sheet.work(&IS_LIDDED, (closure.option(),))
    },
};

/// Inward overhang at the top of a barrier.
pub static OVERHANG: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        id: "overhang",
        title: "inward overhang",
        about: About::Barrier,
        axes: &[],
        unit: "mm",
        us_unit: "in",
        resolution: None,
    },
    work: |sheet, at| barrier(sheet, at).overhang.on(sheet),
};
