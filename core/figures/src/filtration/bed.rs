//! Beds that bacteria live on: their surface, the part of it that works, what the load needs.

use haulout_calc::filtration::bed as formulas;
use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::filter::{Filter, Layer};
use haulout_model::{About, Subject};
use haulout_quantity::si::{Area, MassFlux, Ratio};
use haulout_quantity::{Basis, Dimension, Measure};
use haulout_register::Value;
use haulout_sheet::{All, Figure, FigureCard, Known, Limit, Line, LineId, Many, Sheet};

use super::{filter, gravel::PLAN_AREA, joined::JOINED, load::NITROGEN_PEAK};
use crate::pool::water::COOLEST;
use crate::terms;

/// Positions of the kinds on their card.
const PLANTED: u16 = 0;
const LAST_WITH_A_BED: u16 = 4;

pub(crate) static WORKING_SHARE: Value = Value::number(
    "share of a gravel bed's surface that works",
    0.2,
    Basis::CommonPractice,
    "builders of gravel filters: 10 to 30 % of the clean surface is wetted, fed with oxygen and not clogged",
);

/// Nitrogen that a square metre takes out a day at 20 °C, cautiously.
pub static CAUTIOUS_REMOVAL: Value = Value {
    what: "nitrogen that a square metre takes out a day at 20 °C",
    value: 2.3148148148148148e-09,
    unit: "g/m2/d",
    dimension: Dimension::MASS_FLUX,
    basis: Basis::CommonPractice,
    source: "builders of filters for reptiles: 0.2 to 0.6 g/m2/d at 20 to 25 °C; the lower end for water with much organic matter (0.57 is printed for clean fish systems)",
};

static BELIEVED_SHARE: Value = Value::number(
    "largest share of a surface that is believed to work",
    0.3,
    Basis::CommonPractice,
    "builders of biological filters: no more than 30 % of the clean surface in dirty service",
);

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
        basis: Basis::Published,
        source: "definition",
        range: "stated kinds",
    }
}

static NO_SURFACE: Formula<(u16,), Area> = Formula {
    card: &pick("surface of a filter without a bed", "S", "none for this kind", &["kind"]),
    run: |(_,)| Ok(Area::from_si(0.0)),
};

static COUNTED: Formula<(u16, Area), Area> = Formula {
    card: &pick("surface of a filter with a bed", "S_w", "S for this kind", &["kind", "S"]),
    run: |(_, area)| Ok(area),
};

static LESSER: Formula<(Ratio, Ratio), Ratio> = Formula {
    card: &FormulaCard {
        name: "share believed",
        result: "w",
        text: "min(w_stated, w_most)",
        symbols: &["w_stated", "w_most"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "a stated share is believed up to a limit",
        range: "shares of a surface",
    },
    run: |(stated, most)| Ok(if stated < most { stated } else { most }),
};

static AREAS: Many<Area, Area> =
    Many { card: &terms::arithmetic("sum of areas", "S", "+", &[]), run: |a| Ok(a.iter().copied().sum()) };

static ANY_BED: Many<u16, bool> = Many {
    card: &FormulaCard {
        name: "a filter with a bed",
        result: "yes",
        text: "one of the filters has a bed that bacteria live on",
        symbols: &[],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "stated kinds",
    },
    run: |kinds| Ok(kinds.iter().any(|kind| *kind <= LAST_WITH_A_BED)),
};

const fn card(id: &'static str, title: &'static str, about: About) -> FigureCard {
    FigureCard { id, title, about, axes: &[], unit: "m2", us_unit: "ft2", resolution: None }
}

fn because(sheet_line: LineId) -> impl Fn(haulout_sheet::Gaps) -> haulout_sheet::Gaps {
    move |gaps| gaps.because(sheet_line)
}

fn layer(sheet: Sheet<'_>, at: Subject, layer: &Layer) -> Known<Line<Area>> {
    let grains = (layer.voids.low(sheet), layer.grain.high(sheet)).all();
    let specific = grains.and_then(|lines| sheet.work(&formulas::GRAIN_AREA, lines));
    let lines = (specific, PLAN_AREA.of(sheet, at), layer.thickness.on(sheet)).all()?;
    sheet.work(&formulas::LAYER_SURFACE, lines)
}

fn layers(sheet: Sheet<'_>, at: Subject, filter: &Filter) -> Known<Line<Area>> {
    if let Some(missing) = filter.layers.missing() {
        return Err(haulout_sheet::Gap::from(missing).into());
    }
    let each: Vec<Known<Line<Area>>> = filter.layers.items().iter().map(|l| layer(sheet, at, l)).collect();
    sheet.fold(&AREAS, &each.all()?)
}

fn media(sheet: Sheet<'_>, filter: &Filter) -> Known<Line<Area>> {
    let lines = (filter.media.specific_area.on(sheet), filter.media.volume.on(sheet)).all()?;
    sheet.work(&formulas::MEDIA_SURFACE, lines)
}

/// The share that works: as stated up to what is believed; of gravel that states none, the builders' value.
fn share(sheet: Sheet<'_>, filter: &Filter, kind: u16) -> Known<Line<Ratio>> {
    if kind == PLANTED && !filter.media.effective.is_given() {
        return Ok(sheet.register(&WORKING_SHARE, None));
    }
    let stated = filter.media.effective.on(sheet)?;
    sheet.work(&LESSER, (stated, sheet.register(&BELIEVED_SHARE, None)))
}

/// Surface of a filter that bacteria work on.
pub static WORKING_SURFACE: Figure<Line<Area>> = Figure {
    card: &card("working-surface", "surface of the filter that works", About::Filter),
    work: |sheet, at| {
        let filter = filter(sheet, at);
        let word = filter.kind.on(sheet)?;
        let kind = sheet.option_of(word);
        if kind > LAST_WITH_A_BED {
            return sheet.work(&NO_SURFACE, (word.option(),));
        }
        let surface = if kind == PLANTED { layers(sheet, at, filter) } else { media(sheet, filter) };
        let lines = (surface, share(sheet, filter, kind)).all().map_err(because(word.id()))?;
        let working = sheet.work(&formulas::WORKING_SURFACE, lines)?;
        sheet.work(&COUNTED, (word.option(), working))
    },
};

/// The same of every filter in the water of a pool.
pub static SURFACE_PROVIDED: Figure<Line<Area>> = Figure {
    card: &card("surface-provided", "surface of all filters that works", About::Pool),
    work: |sheet, at| {
        let filters = JOINED.of(sheet, at)?.filters.clone()?;
        let each: Vec<Known<Line<Area>>> =
            filters.iter().map(|filter| WORKING_SURFACE.of(sheet, *filter)).collect();
        sheet.fold(&AREAS, &each.all()?)
    },
};

/// Whether the water of a pool has a filter with a bed at all.
///
/// # Errors
/// A gap when filters or their kinds are not stated; of kind *said none* when the file says that there are none.
pub fn has_a_bed(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let filters = JOINED.of(sheet, at)?.filters.clone()?;
    let kinds = filters.iter().map(|at| Ok(filter(sheet, *at).kind.on(sheet)?.option()));
    let kinds: Vec<Known<Line<u16>>> = kinds.collect();
    sheet.fold(&ANY_BED, &kinds.all()?)
}

/// Surface that the largest day's nitrogen needs in the coolest water, where a square metre takes out `at_20` at 20 °C.
///
/// # Errors
/// All that is missing for it.
pub fn surface_needed(sheet: Sheet<'_>, at: Subject, at_20: &'static Limit) -> Known<Line<Area>> {
    let removal: Known<Line<MassFlux>> =
        COOLEST.of(sheet, at).and_then(|t| sheet.work(&formulas::REMOVAL, (sheet.limit(at_20), t)));
    let lines = (NITROGEN_PEAK.of(sheet, at), removal).all()?;
    sheet.work(&formulas::SURFACE_NEEDED, lines)
}
