//! Openings an animal may get into, grilles of overflows, and what a way out and a stream offer to its claws.

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::exit::{Exit, Opening};
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{Length, Ratio};
use haulout_sheet::{All, Figure, FigureCard, Gap, GapKind, Known, Limit, Line, Sheet};

use crate::barrier::opening::LEAST;

const fn pick(
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
        kind: Kind::Pick,
        basis: Basis::CommonPractice,
        source: "keepers' practice",
        range: "stated values",
    }
}

const fn card(id: &'static str, title: &'static str, about: About, unit: &'static str) -> FigureCard {
    let us_unit = if unit.is_empty() { "" } else { "in" };
    FigureCard { id, title, about, axes: &[], unit, us_unit, resolution: None }
}

fn nowhere<T>(found: Option<T>, what: &'static str) -> Known<T> {
    found.ok_or_else(|| Gap::of(GapKind::LeadsNowhere, what, Vec::new()).into())
}

/// The opening of a subject.
fn opening(sheet: Sheet<'_>, at: Subject) -> Known<&Opening> {
    nowhere(sheet.design().opening(at.index()).map(|(_, found)| found), "opening")
}

/// The way out of a subject.
fn exit(sheet: Sheet<'_>, at: Subject) -> Known<&Exit> {
    nowhere(sheet.design().exit(at.index()).map(|(_, found)| found), "way out")
}

/// Clear width of an opening.
pub static OPENING_WIDTH: Figure<Line<Length>> = Figure {
    card: &card("opening-width", "clear width of the opening", About::Opening, "mm"),
    work: |sheet, at| opening(sheet, at)?.size.on(sheet),
};

/// Clear height of an opening.
pub static OPENING_HEIGHT: Figure<Line<Length>> = Figure {
    card: &card("opening-height", "clear height of the opening", About::Opening, "mm"),
    work: |sheet, at| opening(sheet, at)?.height.on(sheet),
};

/// The less of both: what a body has to be smaller than to get in.
pub static OPENING_LEAST: Figure<Line<Length>> = Figure {
    card: &card("opening-least", "least clear measure of the opening", About::Opening, "mm"),
    work: |sheet, at| {
        let (width, height) = (OPENING_WIDTH.of(sheet, at), OPENING_HEIGHT.of(sheet, at)).all()?;
        sheet.fold(&LEAST, &[width, height])
    },
};

/// Whether an animal comes out at the other end.
///
/// # Errors
/// A gap where it is not stated.
pub fn leads_through(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    opening(sheet, at)?.through.on(sheet)
}

/// The grille before an overflow.
pub static OVERFLOW_APERTURE: Figure<Line<Length>> = Figure {
    card: &card("overflow-aperture", "aperture of the overflow's grille", About::Overflow, "mm"),
    work: |sheet, at| {
        let found = sheet.design().overflow(at.index()).map(|(_, overflow)| overflow);
        nowhere(found, "overflow")?.aperture.on(sheet)
    },
};

/// Slope of a way out.
pub static EXIT_SLOPE: Figure<Line<Ratio>> = Figure {
    card: &card("exit-slope", "slope of the way out", About::Exit, ""),
    work: |sheet, at| exit(sheet, at)?.slope.on(sheet),
};

/// Clear width of a way out.
pub static EXIT_WIDTH: Figure<Line<Length>> = Figure {
    card: &card("exit-width", "clear width of the way out", About::Exit, "mm"),
    work: |sheet, at| exit(sheet, at)?.width.on(sheet),
};

/// Options of the kind of a way out that are climbed on a slope: ramp, beach, steps; roots and nets are climbed sheer.
static WALKED: Formula<(u16,), bool> = Formula {
    card: &pick("walked rather than climbed", "yes", "kind is ramp, beach or steps", &["kind"]),
    run: |(kind,)| Ok(kind <= 2),
};

/// Option of a smooth surface.
const SMOOTH: u16 = 3;

static STEEPEST: Formula<(Ratio, Ratio, u16), Ratio> = Formula {
    card: &pick(
        "steepest slope for its surface",
        "s_max",
        "the one limit on a surface that claws hold on to, the other on a smooth one",
        &["s_rough", "s_smooth", "grip"],
    ),
    run: |(rough, smooth, grip)| Ok(if grip == SMOOTH { smooth } else { rough }),
};

static HOLDS_CLAWS: Formula<(u16,), bool> = Formula {
    card: &pick("claws hold on to it", "yes", "grip is rough, cleated or mesh", &["grip"]),
    run: |(grip,)| Ok(grip != SMOOTH),
};

/// Whether a way out is walked up, not climbed like a net or a root.
///
/// # Errors
/// A gap where its kind is not stated.
pub fn is_walked(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&WALKED, (exit(sheet, at)?.kind.on(sheet)?.option(),))
}

/// The limit of slope for the surface of a way out.
///
/// # Errors
/// A gap where the surface is not stated.
pub fn steepest(
    sheet: Sheet<'_>,
    at: Subject,
    rough: &'static Limit,
    smooth: &'static Limit,
) -> Known<Line<Ratio>> {
    let grip = exit(sheet, at)?.grip.on(sheet)?;
    sheet.work(&STEEPEST, (sheet.limit(rough), sheet.limit(smooth), grip.option()))
}

/// Whether claws find a hold in a stream.
///
/// # Errors
/// A gap where its surface is not stated.
pub fn stream_holds(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let own = at.part(About::Stream).expect("a stream-group has a stream");
    sheet.work(&HOLDS_CLAWS, (super::stream::stream(sheet, own).grip.on(sheet)?.option(),))
}

static RUNS: Formula<(u16,), bool> = Formula {
    card: &pick("runs along a bed", "yes", "kind is stream or chute", &["kind"]),
    run: |(kind,)| Ok(kind != 1),
};

/// Whether a stream runs along a bed, rather than falling free.
///
/// # Errors
/// A gap where its kind is not stated.
pub fn runs(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let own = at.part(About::Stream).expect("a stream-group has a stream");
    sheet.work(&RUNS, (super::stream::stream(sheet, own).kind.on(sheet)?.option(),))
}

/// A share, or a multiple, of a length.
///
/// # Errors
/// None but those of arithmetic.
pub fn share_of(sheet: Sheet<'_>, share: Line<Ratio>, length: Line<Length>) -> Known<Line<Length>> {
    sheet.work(&haulout_calc::containment::SHARE_OF, (share, length))
}
