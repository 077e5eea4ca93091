//! What runs back to a pool through its own circuits: films over filters, submerged returns, and the pipes.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_calc::geometry::Outline;
use haulout_model::circuit::{Circuit, Run};
use haulout_model::filter::Filter;
use haulout_model::returns::Return;
use haulout_model::{About, State, Subject};
use haulout_quantity::si::{Area, Length, Ratio, Volume};
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Gap, GapKind, Known, Line, Sheet};

use super::ladder::{SPREAD, leads_to};
use super::lip::head_over;
use crate::circuit::duty::DELIVERED_FLOW;
use crate::pool::pool;
use crate::pool::surface_area::SURFACE_AREA;

const fn card(
    name: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    kind: Kind,
) -> FormulaCard {
    FormulaCard {
        name,
        result: "V",
        text,
        symbols,
        kind,
        basis: Basis::Published,
        source: "arithmetic",
        range: "everything runs back that can",
    }
}

pub(super) static PLAN_AREA: Formula<(Arc<Outline>,), Area> = Formula {
    card: &FormulaCard {
        name: "plan area of an outline",
        result: "A",
        text: "area of the corners of the outline",
        symbols: &["outline"],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "half the sum of cross products of neighbouring corners",
        range: "outlines that do not cross themselves",
    },
    run: |(outline,)| Ok(Area::from_si(outline.area())),
};

static OVER_GRAVEL: Formula<(Area, Length, Length, Length, Ratio), Volume> = Formula {
    card: &card(
        "film over the lip of a gravel filter",
        "A × (h - (1 - n) × min(h, max(0, z_bed - z_lip)))",
        &["A", "h", "z_bed", "z_lip", "n"],
        Kind::Closed,
    ),
    run: |(area, head, bed, lip, voids)| {
        let none = Length::from_si(0.0);
        let over = if bed > lip { bed - lip } else { none };
        let in_gravel = if over < head { over } else { head };
        Ok(area * (head - (Ratio::from_si(1.0) - voids) * in_gravel))
    },
};

static CLOSED_VESSEL: Formula<(u16,), Volume> = Formula {
    card: &card("film in a closed vessel", "none", &["kind"], Kind::Pick),
    run: |(_kind,)| Ok(Volume::from_si(0.0)),
};

static SIPHON: Formula<(Area, Length, Length, Length), Volume> = Formula {
    card: &card(
        "water a return draws back",
        "A × max(0, z_w - max(z_end, z_p))",
        &["A", "z_w", "z_end", "z_p"],
        Kind::Closed,
    ),
    run: |(area, water, end, to)| {
        let stop = if end > to { end } else { to };
        let drawn = if water > stop { water - stop } else { Length::from_si(0.0) };
        Ok(area * drawn)
    },
};

static NO_SIPHON: Formula<(u16,), Volume> = Formula {
    card: &card("water a return over the water draws back", "none", &["ends"], Kind::Pick),
    run: |(_ends,)| Ok(Volume::from_si(0.0)),
};

static IN_PIPE: Formula<(Length, Length), Volume> = Formula {
    card: &card("water in a pipe", "pi / 4 × D^2 × L", &["D", "L"], Kind::Closed),
    run: |(bore, length)| Ok(std::f64::consts::FRAC_PI_4 * bore * bore * length),
};

static IN_HIGH_PIPE: Formula<(Length, Length, Length, Length), Volume> = Formula {
    card: &card(
        "water in a pipe that rises over the water",
        "all of it if its highest point lies over the water",
        &["D", "L", "z_high", "z_w"],
        Kind::Pick,
    ),
    run: |(bore, length, high, water)| {
        let all = std::f64::consts::FRAC_PI_4 * bore * bore * length;
        Ok(if high > water { all } else { Volume::from_si(0.0) })
    },
};

type Volumes = Vec<Known<Line<Volume>>>;

/// The circuits that draw from the pool. One that does not say where it draws from is not among them; where it serves the
/// pool, that it does not say is a gap.
fn circuits(sheet: Sheet<'_>, at: Subject) -> impl Iterator<Item = (Subject, &Circuit)> {
    let all = sheet.design().circuits.items().iter().enumerate();
    let own = all.filter(move |(_, circuit)| leads_to(sheet, &circuit.from, at));
    own.map(|(i, circuit)| (Subject::nth(About::Circuit, i), circuit))
}

/// The film over the lip of each open filter whose circuit draws from the pool.
pub(super) fn of_filters(sheet: Sheet<'_>, at: Subject) -> Volumes {
    let fed = |filter: &Filter| {
        let named = filter.circuit.name();
        circuits(sheet, at).find(|(_, circuit)| Some(circuit.id.as_str()) == named).map(|(at, _)| at)
    };
    let filters = sheet.design().filters.items().iter();
    filters.filter_map(|f| fed(f).map(|circuit| film_over(sheet, f, circuit))).collect()
}

/// The option of a planted gravel filter.
const GRAVEL: u16 = 0;

/// Options of the kind of a filter that stand open to the air: planted gravel, static and moving media, trickling, settling.
const OPEN: [u16; 5] = [0, 1, 2, 3, 6];

fn film_over(sheet: Sheet<'_>, filter: &Filter, circuit: Subject) -> Known<Line<Volume>> {
    let kind = filter.kind.on(sheet)?;
    if !OPEN.contains(&sheet.option_of(kind)) {
        return sheet.work(&CLOSED_VESSEL, (kind.option(),));
    }
    let gravel = sheet.option_of(kind) == GRAVEL;
    let film = open_film(sheet, filter, circuit, gravel).map_err(|gaps| gaps.because(kind.id()))?;
    sheet.work(&OF_FILTER, (film, kind.option()))
}

static OF_FILTER: Formula<(Volume, u16), Volume> = Formula {
    card: &card("film over a filter of its kind", "V_film", &["V_film", "kind"], Kind::Closed),
    run: |(film, _kind)| Ok(film),
};

fn open_film(sheet: Sheet<'_>, filter: &Filter, circuit: Subject, gravel: bool) -> Known<Line<Volume>> {
    let outline = crate::outline(sheet, &filter.outline);
    let area = outline.and_then(|outline| sheet.construct(&PLAN_AREA, (outline,)));
    let head = DELIVERED_FLOW.of(sheet, circuit).and_then(|flow| head_over(sheet, &filter.lip, flow));
    if !gravel {
        return sheet.work(&SPREAD, (area, head).all()?);
    }
    let levels = (crate::level(sheet, &filter.levels.bed), crate::level(sheet, &filter.lip.level)).all();
    let (area, head, (bed, lip), voids) = (area, head, levels, top_voids(sheet, filter)).all()?;
    sheet.work(&OVER_GRAVEL, (area, head, bed, lip, voids))
}

/// How open the uppermost layer is.
fn top_voids(sheet: Sheet<'_>, filter: &Filter) -> Known<Line<Ratio>> {
    if let Some(missing) = filter.layers.missing() {
        return Err(Gap::from(missing).into());
    }
    let top = filter.layers.items().last().map(|layer| layer.voids.on(sheet));
    top.unwrap_or_else(|| Err(Gap::of(GapKind::Absent, "layers of the filter", Vec::new()).into()))
}

/// What each circuit that draws from the pool lets back: through its returns, and out of its pipes.
pub(super) fn of_circuits(sheet: Sheet<'_>, at: Subject) -> Volumes {
    let serves = |circuit: &Circuit| circuit.serves.items().iter().any(|r| r.name() == pool(sheet, at).id);
    let silent = sheet.design().circuits.items().iter();
    let silent = silent.filter(|c| c.from.given().is_none() && serves(c));
    let mut found: Volumes = silent.map(|c| Err(Gap::from(c.from.missing()).into())).collect();
    for (_, circuit) in circuits(sheet, at) {
        let missing = [circuit.returns.missing(), circuit.runs.missing()].into_iter().flatten();
        found.extend(missing.map(|m| Err(Gap::from(m).into())));
        found.extend(circuit.returns.items().iter().map(|r| drawn_back(sheet, at, r)));
        found.extend(circuit.runs.items().iter().map(|run| out_of(sheet, at, run)));
    }
    found
}

fn out_of(sheet: Sheet<'_>, at: Subject, run: &Run) -> Known<Line<Volume>> {
    let (bore, length) = (run.bore.on(sheet), run.length.on(sheet)).all()?;
    if !matches!(run.highest.state(), State::Given(_)) {
        return sheet.work(&IN_PIPE, (bore, length));
    }
    let water = crate::level(sheet, &pool(sheet, at).levels.water);
    let (high, water) = (crate::level(sheet, &run.highest), water).all()?;
    sheet.work(&IN_HIGH_PIPE, (bore, length, high, water))
}

/// Option of a return that ends under the water.
const UNDER: u16 = 1;

fn drawn_back(sheet: Sheet<'_>, at: Subject, own: &Return) -> Known<Line<Volume>> {
    let ends = own.ends.on(sheet)?;
    if sheet.option_of(ends) != UNDER {
        return sheet.work(&NO_SIPHON, (ends.option(),));
    }
    let volume = siphoned(sheet, at, own).map_err(|gaps| gaps.because(ends.id()))?;
    sheet.work(&OF_END, (volume, ends.option()))
}

static OF_END: Formula<(Volume, u16), Volume> = Formula {
    card: &card("water a return under the water draws back", "V_back", &["V_back", "ends"], Kind::Closed),
    run: |(volume, _ends)| Ok(volume),
};

/// Down to where air gets in, or to the end of the pipe.
fn siphoned(sheet: Sheet<'_>, at: Subject, own: &Return) -> Known<Line<Volume>> {
    let stop = match own.siphon_break.state() {
        State::None => crate::level(sheet, &own.level),
        _ => crate::level(sheet, &own.siphon_break),
    };
    let to = crate::level(sheet, &pool(sheet, at).levels.water);
    let ((area, water), stop, to) = (upper_water(sheet, own), stop, to).all()?;
    sheet.work(&SIPHON, (area, water, stop, to))
}

/// Surface and level of the water a return ends in.
fn upper_water(sheet: Sheet<'_>, own: &Return) -> Known<(Line<Area>, Line<Length>)> {
    let Some(into) = own.into.given() else { return Err(Gap::from(own.into.missing()).into()) };
    let design = sheet.design();
    if let Some(found) = design.filter_named(into.name()) {
        let filter = &design.filters.items()[found];
        let outline = crate::outline(sheet, &filter.outline);
        let area = outline.and_then(|outline| sheet.construct(&PLAN_AREA, (outline,)));
        return (area, crate::level(sheet, &filter.levels.water)).all();
    }
    let found = crate::pool::named(sheet, into)?;
    (SURFACE_AREA.of(sheet, found), crate::level(sheet, &pool(sheet, found).levels.water)).all()
}
