//! Stages beside the bed: what catches solids before it, the flush of the plenum, the dose of a clarifier.

use haulout_calc::filtration::solids as formulas;
use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{Area, Length, Mass, RadiantExposure, Time, Volume, VolumeRate};
use haulout_sheet::{All, Axis, Figure, FigureCard, Gap, GapKind, Known, Line, Sheet};

use super::{filter, gravel, load::SOLIDS_A_DAY, water_of};

/// Positions of the kinds on their card.
const SCREEN: u16 = 5;
const CLARIFIER: u16 = 7;

const fn pick(name: &'static str, text: &'static str) -> FormulaCard {
    FormulaCard {
        name,
        result: "yes",
        text,
        symbols: &["kind"],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "stated kinds",
    }
}

static IS_CLARIFIER: Formula<(u16,), bool> = Formula {
    card: &pick("ultraviolet clarifier", "kind is UV clarifier"),
    run: |(kind,)| Ok(kind == CLARIFIER),
};

static IS_SCREEN: Formula<(u16,), bool> = Formula {
    card: &pick("screen with a mesh", "kind is mechanical screen"),
    run: |(kind,)| Ok(kind == SCREEN),
};

static BULK: Formula<(Area, Length), Volume> = Formula {
    card: &crate::terms::arithmetic("bulk of the plenum", "V", "A × d", &["A", "d"]),
    run: |(plan, depth)| Ok(plan * depth),
};

const fn card(
    id: &'static str,
    title: &'static str,
    axes: &'static [Axis],
    unit: &'static str,
    us_unit: &'static str,
) -> FigureCard {
    FigureCard { id, title, about: About::Filter, axes, unit, us_unit, resolution: None }
}

/// Whether the filter is an ultraviolet clarifier.
///
/// # Errors
/// A gap when its kind is not stated.
pub fn is_clarifier(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&IS_CLARIFIER, (filter(sheet, at).kind.on(sheet)?.option(),))
}

/// Whether the filter is a screen with a mesh.
///
/// # Errors
/// A gap when its kind is not stated.
pub fn is_screen(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&IS_SCREEN, (filter(sheet, at).kind.on(sheet)?.option(),))
}

/// The first filter that the water passes before this one.
///
/// # Errors
/// A gap where nothing is stated; of kind *said none* where the file says that there is nothing before it.
pub fn stage_before(sheet: Sheet<'_>, at: Subject) -> Known<Subject> {
    let before = &filter(sheet, at).pre_treatment;
    if let Some(missing) = before.missing() {
        return Err(Gap::from(missing).into());
    }
    let filters = sheet.design().filters.items();
    let mut found = before.items().iter().filter_map(|r| filters.iter().position(|f| f.id == r.name()));
    let first = found.next().map(|index| Subject::nth(About::Filter, index));
    first.ok_or_else(|| {
        let what = "what stands before the bed as a filter with its screen";
        Gap::at(GapKind::Absent, what, before.seat().origin).into()
    })
}

/// Whether a stage is cleaned while the pool stays full.
///
/// # Errors
/// A gap when it is not stated.
pub fn cleaned_in_service(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    filter(sheet, at).screen.in_service.on(sheet)
}

/// Mesh of a screen.
pub static MESH: Figure<Line<Length>> = Figure {
    card: &card("screen-mesh", "mesh of the screen", &[], "mm", "in"),
    work: |sheet, at| filter(sheet, at).screen.mesh.on(sheet),
};

/// Time between cleanings of a screen.
pub static CLEANED: Figure<Line<Time>> = Figure {
    card: &card("screen-cleaned", "time between cleanings of the screen", &[], "d", "d"),
    work: |sheet, at| filter(sheet, at).screen.cleaned.on(sheet),
};

/// Solids that stay in a screen until it is cleaned.
pub static SOLIDS_HELD: Figure<Line<Mass>> = Figure {
    card: &card("solids-held", "solids held until the next cleaning", &[], "g", "lb"),
    work: |sheet, at| {
        let solids = water_of(sheet, at).and_then(|pool| SOLIDS_A_DAY.of(sheet, pool));
        let captured = filter(sheet, at).screen.captures.on(sheet);
        sheet.work(&formulas::SOLIDS_HELD, (solids, captured, CLEANED.of(sheet, at)).all()?)
    },
};

/// Time in which the flush takes away the water of the plenum once.
pub static FLUSH_TIME: Figure<Line<Time>> = Figure {
    card: &card("flush-time", "time to flush the plenum once", &[], "min", "min"),
    work: |sheet, at| {
        let plenum = &filter(sheet, at).plenum;
        let bulk = (gravel::PLAN_AREA.of(sheet, at), plenum.depth.on(sheet)).all();
        let bulk = bulk.and_then(|lines| sheet.work(&BULK, lines));
        let lines = (bulk, plenum.voids.on(sheet), plenum.flush.on(sheet)).all()?;
        sheet.work(&formulas::FLUSH_TIME, lines)
    },
};

/// Ultraviolet dose at the end of the lamp's life at the delivered flow.
pub static UV_DOSE: Figure<Line<RadiantExposure>> = Figure {
    card: &card("uv-dose", "ultraviolet dose at the delivered flow", &[Axis::Filter], "mJ/cm2", "mJ/cm2"),
    work: |sheet, at| {
        let uv = &filter(sheet, at).uv;
        let lines = (uv.dose.on(sheet), uv.at_flow.on(sheet), gravel::flow(sheet, at)).all()?;
        sheet.work(&formulas::DOSE_AT_FLOW, lines)
    },
};

/// Flow through the lamp.
pub static UV_FLOW: Figure<Line<VolumeRate>> = Figure {
    card: &card("uv-flow", "flow through the lamp", &[Axis::Filter], "m3/h", "gal(US)/min"),
    work: gravel::flow,
};

/// The largest flow that the maker of the lamp allows.
pub static UV_MOST_FLOW: Figure<Line<VolumeRate>> = Figure {
    card: &card("uv-most-flow", "largest flow of the lamp", &[], "m3/h", "gal(US)/min"),
    work: |sheet, at| filter(sheet, at).uv.most_flow.on(sheet),
};

static FLOWS_OFF: Formula<(VolumeRate,), bool> = Formula {
    card: &FormulaCard { symbols: &["Q"], ..pick("there is a flush", "flow of the flush above nought") },
    run: |(flow,)| Ok(flow.value > 0.0),
};

/// Whether the plenum has a flush at all.
///
/// # Errors
/// A gap when the file does not say; of kind *said none* when it says that there is none.
pub fn has_a_flush(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&FLOWS_OFF, (filter(sheet, at).plenum.flush.on(sheet)?,))
}

static STANDS: Formula<(u16,), bool> = Formula {
    card: &pick("a stage before the bed", "a filter stands before it, whatever its kind"),
    run: |(_,)| Ok(true),
};

/// Whether a filter stands before this one.
///
/// # Errors
/// As [`stage_before`], and a gap when its kind is not stated.
pub fn something_before(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let stage = stage_before(sheet, at)?;
    sheet.work(&STANDS, (filter(sheet, stage).kind.on(sheet)?.option(),))
}
