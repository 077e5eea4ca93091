//! Outlines: flattened from what is drawn, or worked from other outlines.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::geometry::{self, Motion, Outline, Unsound};
use haulout_model::{Drawing, Reference, Shape, ShapeField, State};
use haulout_quantity::Basis;
use haulout_quantity::si::{Angle, Length};
use haulout_sheet::{All, Assembly, Datum, Gap, GapKind, Known, Line, LineId, Sheet};

type Drawn = Arc<Outline>;

const LONGEST_CHAIN: u8 = 16;

const fn construction(
    name: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
) -> FormulaCard {
    FormulaCard {
        name,
        result: "outline",
        text,
        symbols,
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "plane geometry; curves are flattened with a sagitta of 5 mm",
        range: "outlines that do not cross themselves",
    }
}

fn refuse(unsound: Unsound) -> Refusal {
    Refusal::new(unsound.why)
}

static FLATTENED: Formula<(Arc<Drawing>,), Drawn> = Formula {
    card: &construction("outline as drawn", "corners of the drawing", &["drawing"]),
    run: |(drawing,)| flatten(&drawing).map(Arc::new).map_err(refuse),
};

static INSET: Formula<(Drawn, Length), Drawn> = Formula {
    card: &construction("outline moved inward", "outline inset by", &["outline", "by"]),
    run: |(outline, by)| geometry::inset(&outline, by.value, None).map(Arc::new).map_err(refuse),
};

static INSET_SIDES: Formula<(Drawn, Length, Arc<Vec<usize>>), Drawn> = Formula {
    card: &construction("sides of an outline moved inward", "sides inset by", &["outline", "by", "sides"]),
    run: |(outline, by, sides)| {
        geometry::inset(&outline, by.value, Some(&from_nought(&sides)?)).map(Arc::new).map_err(refuse)
    },
};

/// What an inset of single sides is worked from: the drawing, by how much, and which sides.
type InsetSides = (Arc<Drawing>, Length, Arc<Vec<usize>>);

static INSET_SIDES_AS_DRAWN: Formula<InsetSides, Drawn> = Formula {
    card: &construction("sides of a drawing moved inward", "sides inset by", &["drawing", "by", "sides"]),
    run: |(drawing, by, sides)| {
        let outline = flatten(&drawing).map_err(refuse)?;
        let sides = as_drawn(&drawing, &outline, from_nought(&sides)?);
        geometry::inset(&outline, by.value, Some(&sides)).map(Arc::new).map_err(refuse)
    },
};

/// Sides are counted from 1 in the document and from 0 in the geometry.
fn from_nought(sides: &[usize]) -> Result<Vec<usize>, Refusal> {
    let known = |side: &usize| side.checked_sub(1);
    let counted: Option<Vec<usize>> = sides.iter().map(known).collect();
    counted.ok_or_else(|| Refusal::new("sides are counted from 1"))
}

/// A drawing of corners keeps the sides its designer counts: clockwise corners are kept in the other order, where the
/// side that is drawn from corner i lies n - 2 - i sides on.
fn as_drawn(drawing: &Drawing, outline: &Outline, sides: Vec<usize>) -> Vec<usize> {
    let (Drawing::Corners(typed), Some(kept)) = (drawing, outline.corners()) else { return sides };
    let (count, turned) = (kept.len(), typed.first() != kept.first());
    let other = |side: usize| if turned && side < count { (2 * count - 2 - side) % count } else { side };
    sides.into_iter().map(other).collect()
}

static COPIED: Formula<(Drawn, Length, Length, Angle), Drawn> = Formula {
    card: &construction("outline copied", "outline moved by x, y and turned", &["outline", "x", "y", "turn"]),
    run: |(outline, x, y, turn)| copied(&outline, [x.value, y.value], turn.value, None),
};

static COPIED_X: Formula<(Drawn, Length, Length, Angle), Drawn> = Formula {
    card: &construction(
        "outline copied and mirrored in x",
        "mirrored, moved, turned",
        &["outline", "x", "y", "turn"],
    ),
    run: |(outline, x, y, turn)| {
        copied(&outline, [x.value, y.value], turn.value, Some(geometry::Mirror::AcrossY))
    },
};

static COPIED_Y: Formula<(Drawn, Length, Length, Angle), Drawn> = Formula {
    card: &construction(
        "outline copied and mirrored in y",
        "mirrored, moved, turned",
        &["outline", "x", "y", "turn"],
    ),
    run: |(outline, x, y, turn)| {
        copied(&outline, [x.value, y.value], turn.value, Some(geometry::Mirror::AcrossX))
    },
};

static JOINED: Assembly<Drawn> = Assembly {
    card: &construction("outlines joined", "everything inside any of them", &[]),
    run: |data| geometry::join(&outlines(data)).map(Arc::new).map_err(refuse),
};

static LESS: Assembly<Drawn> = Assembly {
    card: &construction("outline less others", "the first without the others", &[]),
    run: |data| {
        let all = outlines(data);
        let (first, others) =
            all.split_first().ok_or_else(|| Refusal::new("there is no outline to take from"))?;
        geometry::less(first, others).map(Arc::new).map_err(refuse)
    },
};

fn outlines(data: &[Datum]) -> Vec<Outline> {
    data.iter().map(|d| <Drawn as haulout_sheet::Entry>::take(d).as_ref().clone()).collect()
}

fn flatten(drawing: &Drawing) -> Result<Outline, Unsound> {
    match drawing {
        Drawing::Corners(corners) => Outline::from_corners(corners.clone()),
        Drawing::Rectangle { corner, size, turn, round } => {
            geometry::rectangle(*corner, *size, *turn, *round)
        }
        Drawing::Circle { centre, radius } => geometry::circle(*centre, *radius),
        Drawing::Ellipse { centre, radii, turn } => geometry::ellipse(*centre, *radii, *turn),
        Drawing::Smooth(through) => geometry::smooth(through),
        Drawing::Strip { line, width, side } => {
            let side = [geometry::Side::Centre, geometry::Side::Left, geometry::Side::Right]
                [usize::from(*side).min(2)];
            geometry::strip(line, *width, side)
        }
    }
}

fn copied(
    outline: &Outline,
    by: [f64; 2],
    turn: f64,
    mirror: Option<geometry::Mirror>,
) -> Result<Drawn, Refusal> {
    let about = outline.corners().and_then(|c| c.first().copied()).unwrap_or_else(|| outline.centroid());
    geometry::moved(outline, &Motion { about, mirror, turn, by }).map(Arc::new).map_err(refuse)
}

/// The outline a field states.
///
/// # Errors
/// A gap where nothing is drawn, where the drawing is unsound, or where a name leads nowhere.
pub fn outline(sheet: Sheet<'_>, field: &ShapeField) -> Known<Line<Drawn>> {
    chained(sheet, field, 0)
}

fn chained(sheet: Sheet<'_>, field: &ShapeField, length: u8) -> Known<Line<Drawn>> {
    let State::Given(shape) = field.state() else {
        return Err(Gap::from(field.missing()).into());
    };
    if length > LONGEST_CHAIN {
        let seat = field.seat();
        return Err(Gap::at(GapKind::Unsound, format!("{} hangs on itself", seat.what), seat.origin).into());
    }
    match shape.as_ref() {
        Shape::Drawn(drawn) => sheet.construct(&FLATTENED, (drawn.on(sheet),)),
        Shape::Inset { of, by, sides } => {
            let Some(sides) = sides else {
                let lines = (named(sheet, of, length), by.on(sheet)).all()?;
                return sheet.construct(&INSET, lines);
            };
            let sides = sides.on(sheet);
            if let Some(drawn) = drawn_as(sheet, of) {
                return sheet.construct(&INSET_SIDES_AS_DRAWN, (drawn, by.on(sheet)?, sides));
            }
            let (outline, by) = (named(sheet, of, length), by.on(sheet)).all()?;
            sheet.construct(&INSET_SIDES, (outline, by, sides))
        }
        Shape::Copy { of, shift: [x, y], turn, mirror } => {
            let lines = (named(sheet, of, length), x.on(sheet), y.on(sheet), turn.on(sheet)).all()?;
            let formula = match mirror {
                None => &COPIED,
                Some(haulout_model::Mirror::X) => &COPIED_X,
                Some(haulout_model::Mirror::Y) => &COPIED_Y,
            };
            sheet.construct(formula, lines)
        }
        Shape::Join(parts) => sheet.assemble(&JOINED, &parts_of(sheet, parts, length)?),
        Shape::Less(parts) => sheet.assemble(&LESS, &parts_of(sheet, parts, length)?),
    }
}

fn parts_of(sheet: Sheet<'_>, parts: &[ShapeField], length: u8) -> Known<Vec<LineId>> {
    let parts: Vec<Known<LineId>> =
        parts.iter().map(|p| chained(sheet, p, length + 1).map(Line::id)).collect();
    parts.all()
}

/// The drawing of the outline a name leads to, where it is drawn in its own numbers.
fn drawn_as(sheet: Sheet<'_>, of: &Reference) -> Option<Line<Arc<Drawing>>> {
    match sheet.design().outline(of.name())?.state() {
        State::Given(shape) => match shape.as_ref() {
            Shape::Drawn(drawn) => Some(drawn.on(sheet)),
            _ => None,
        },
        _ => None,
    }
}

fn named(sheet: Sheet<'_>, of: &Reference, length: u8) -> Known<Line<Drawn>> {
    match sheet.design().outline(of.name()) {
        Some(field) => chained(sheet, field, length + 1),
        None => {
            let what = format!("there is no outline \"{}\"", of.name());
            Err(Gap::at(GapKind::LeadsNowhere, what, of.seat().origin).into())
        }
    }
}
