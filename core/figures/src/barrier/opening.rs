//! Openings in a barrier against the body of the smallest animal, and how deep the barrier goes.

use haulout_calc::containment::SHARE_OF;
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::Length;
use haulout_sheet::{All, Case, Figure, FigureCard, Known, Limit, Line, Many, Sheet, Size};

use super::barrier;
use crate::group::BODY_HEIGHT;
use crate::species::group;

pub(crate) static LEAST: Many<Length, Length> = Many {
    card: &haulout_calc::formula::FormulaCard {
        name: "least of lengths",
        result: "b_min",
        text: "min",
        symbols: &[],
        kind: haulout_calc::formula::Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "one length or more",
    },
    run: |lengths| {
        let least = |a: Length, b: &Length| if *b < a { *b } else { a };
        let first = lengths.first().copied();
        first
            .map(|f| lengths.iter().fold(f, least))
            .ok_or_else(|| haulout_calc::formula::Refusal::new("there is no length to take the least of"))
    },
};

static LARGEST: Many<Length, Length> = Many {
    card: &haulout_calc::formula::FormulaCard {
        name: "largest of lengths",
        result: "w_max",
        text: "max",
        symbols: &[],
        kind: haulout_calc::formula::Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "one length or more",
    },
    run: |lengths| {
        let largest = |a: Length, b: &Length| if *b > a { *b } else { a };
        let first = lengths.first().copied();
        first
            .map(|f| lengths.iter().fold(f, largest))
            .ok_or_else(|| haulout_calc::formula::Refusal::new("there is no length to take the largest of"))
    },
};

const fn card(id: &'static str, title: &'static str, about: About) -> FigureCard {
    FigureCard { id, title, about, axes: &[], unit: "mm", us_unit: "in", resolution: None }
}

/// The least measure of the smallest animal ever kept: its height, or its breadth where that is stated and less.
pub static LEAST_BODY: Figure<Line<Length>> = Figure {
    card: &card("least-body", "least body measure of the smallest animal", About::Group),
    work: |sheet, at| {
        let height = BODY_HEIGHT.of(sheet.in_case(Case::NORMAL.size(Size::Smallest)), at);
        let breadth = &group(sheet, at).body_breadth.smallest;
        if breadth.is_given() {
            let (height, breadth) = (height, breadth.on(sheet)).all()?;
            return sheet.fold(&LEAST, &[height, breadth]);
        }
        height
    },
};

/// The widest opening that a share of the smallest body still allows.
///
/// # Errors
/// A gap where the size of the smallest animal is missing.
pub fn allowed_opening(sheet: Sheet<'_>, at: Subject, share: &'static Limit) -> Known<Line<Length>> {
    let body = LEAST_BODY.of(sheet, at)?;
    sheet.work(&SHARE_OF, (sheet.limit(share), body))
}

/// Options of "kind" and of "surface" that are mesh.
const MESH_KIND: u16 = 4;
const MESH_FACE: u16 = 2;

/// The widest opening of a barrier: its joints, and the aperture where it is mesh or where one is stated.
pub static WIDEST_OPENING: Figure<Line<Length>> = Figure {
    card: &card("widest-opening", "widest opening in the barrier", About::Barrier),
    work: |sheet, at| {
        let field = barrier(sheet, at);
        let (kind, face, joints) =
            (field.kind.on(sheet), field.surface.on(sheet), field.joints.on(sheet)).all()?;
        let mesh = sheet.option_of(kind) == MESH_KIND || sheet.option_of(face) == MESH_FACE;
        let choices = [kind.id(), face.id()];
        let opening = if mesh || field.aperture.is_given() {
            let because = |g: haulout_sheet::Gaps| choices.iter().fold(g, |g, c| g.because(*c));
            let aperture = field.aperture.on(sheet).map_err(because)?;
            sheet.fold(&LARGEST, &[joints, aperture])?
        } else {
            joints
        };
        sheet.work(&OF_FACE, (opening, kind.option(), face.option()))
    },
};

static OF_FACE: haulout_calc::formula::Formula<(Length, u16, u16), Length> = haulout_calc::formula::Formula {
    card: &haulout_calc::formula::FormulaCard {
        name: "widest opening of a barrier of its kind and face",
        result: "w",
        text: "w_max",
        symbols: &["w_max", "kind", "face"],
        kind: haulout_calc::formula::Kind::Closed,
        basis: Basis::Published,
        source: "definition: mesh has an aperture, other kinds only joints",
        range: "any lengths",
    },
    run: |(opening, _kind, _face)| Ok(opening),
};

/// How deep a barrier goes below the ground on the animals' side.
pub static BELOW_GROUND: Figure<Line<Length>> = Figure {
    card: &card("below-ground", "depth of the barrier below ground", About::Barrier),
    work: |sheet, at| barrier(sheet, at).below_ground.on(sheet),
};
