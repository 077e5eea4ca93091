//! The ladder of levels: what runs back into a pool when the pumps stop, and where its water then stands.

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_model::{About, Level, Link, State, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{Area, Length, Volume};
use haulout_sheet::{All, Figure, FigureCard, Gap, Known, Line, Many, Sheet};

use super::back;
use super::stream::{STREAM_FILM, STREAM_LIP_HEAD, stream};
use crate::pool::pool;
use crate::pool::surface_area::SURFACE_AREA;
use crate::terms::{ABOVE, DIFFERENCE, VOLUMES};

static RISE: Formula<(Volume, Area), Length> = Formula {
    card: &FormulaCard {
        name: "rise of a water level",
        result: "dz",
        text: "V / A",
        symbols: &["V", "A"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic, with the surface at the normal level: a pool widens upwards, so it rises by no more",
        range: "a surface above nothing",
    },
    run: |(volume, area)| {
        if area.value <= 0.0 {
            return Err(Refusal::new("there is no water surface at this level"));
        }
        Ok(volume / area)
    },
};

pub(super) static SPREAD: Formula<(Area, Length), Volume> = Formula {
    card: &FormulaCard {
        name: "film on a basin",
        result: "V_film",
        text: "A × h",
        symbols: &["A", "h"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "any numbers",
    },
    run: |(area, head)| Ok(area * head),
};

pub(super) static LOWER: Many<Length, Length> = Many {
    card: &FormulaCard {
        name: "lower of levels",
        result: "z_min",
        text: "min",
        symbols: &[],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "one level or more",
    },
    run: |levels| {
        let lower = |a: Length, b: Length| if b < a { b } else { a };
        levels
            .iter()
            .copied()
            .reduce(lower)
            .ok_or_else(|| Refusal::new("there is no level to take the lower of"))
    },
};

const fn card(
    id: &'static str,
    title: &'static str,
    unit: &'static str,
    us_unit: &'static str,
) -> FigureCard {
    FigureCard { id, title, about: About::Pool, axes: &[], unit, us_unit, resolution: None }
}

/// Whether a reference leads to the pool.
pub(super) fn leads_to(sheet: Sheet<'_>, link: &Link, at: Subject) -> bool {
    link.name() == Some(pool(sheet, at).id.as_str())
}

/// Everything that runs into a pool once its pumps stand still.
pub static DRAIN_DOWN: Figure<Line<Volume>> = Figure {
    card: &card("drain-down", "water that runs back when the pumps stop", "L", "gal(US)"),
    work: |sheet, at| {
        let design = sheet.design();
        let lists = [design.streams.missing(), design.filters.missing(), design.circuits.missing()];
        let gaps = lists.into_iter().flatten().filter(|m| m.kind != haulout_model::MissingKind::None);
        let gaps: Vec<Known<Line<Volume>>> = gaps.map(|m| Err(Gap::from(m).into())).collect();
        let streams = of_streams(sheet, at).into_iter();
        let rest = back::of_filters(sheet, at).into_iter().chain(back::of_circuits(sheet, at));
        let all: Vec<Known<Line<Volume>>> = gaps.into_iter().chain(streams).chain(rest).collect();
        sheet.fold(&VOLUMES, &all.all()?)
    },
};

/// Each stream that runs into the pool: what moves in it, and the film over the lip on the basin it comes from.
fn of_streams(sheet: Sheet<'_>, at: Subject) -> Vec<Known<Line<Volume>>> {
    let mut found = Vec::new();
    for own in (0..sheet.design().streams.items().len()).map(|i| Subject::nth(About::Stream, i)) {
        if !leads_to(sheet, &stream(sheet, own).to, at) {
            continue;
        }
        found.push(STREAM_FILM.of(sheet, own));
        let from = stream(sheet, own).from.name().and_then(|name| sheet.design().pool_named(name));
        if let Some(from) = from {
            let area = SURFACE_AREA.of(sheet, Subject::nth(About::Pool, from));
            let lines = (area, STREAM_LIP_HEAD.of(sheet, own)).all();
            found.push(lines.and_then(|lines| sheet.work(&SPREAD, lines)));
        }
    }
    found
}

/// By how much the water rises when the pumps stop.
pub static PUMPS_OFF_RISE: Figure<Line<Length>> = Figure {
    card: &card("pumps-off-rise", "rise of the water when the pumps stop", "mm", "in"),
    work: |sheet, at| {
        let lines = (DRAIN_DOWN.of(sheet, at), SURFACE_AREA.of(sheet, at)).all()?;
        sheet.work(&RISE, lines)
    },
};

/// Where the water stands when the pumps have stopped and everything has run back.
pub static PUMPS_OFF_LEVEL: Figure<Line<Length>> = Figure {
    card: &card("pumps-off-level", "water level with the pumps off", "m", "ft"),
    work: |sheet, at| {
        let water = crate::level(sheet, &pool(sheet, at).levels.water);
        sheet.work(&ABOVE, (water, PUMPS_OFF_RISE.of(sheet, at)).all()?)
    },
};

/// The lower of the top of the liner and the rim: beyond it the water is in the hall. Without a liner, as the file says,
/// it is the rim.
///
/// # Errors
/// A gap where either is missing.
pub fn holding_top(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    let levels = &pool(sheet, at).levels;
    let rim = crate::level(sheet, &levels.rim);
    if matches!(levels.liner_top.state(), State::None) {
        return rim;
    }
    let (rim, liner) = (rim, crate::level(sheet, &levels.liner_top)).all()?;
    sheet.fold(&LOWER, &[rim, liner])
}

/// Where the water can stand when nothing takes it away any more: the top of what holds it.
pub static BLOCKED_LEVEL: Figure<Line<Length>> = Figure {
    card: &card("blocked-level", "water level with every outlet blocked", "m", "ft"),
    work: holding_top,
};

/// What is left from the water with the pumps off, and the wave on it, to the top of what holds it.
pub static PUMPS_OFF_FREEBOARD: Figure<Line<Length>> = Figure {
    card: &card("pumps-off-freeboard", "freeboard with the pumps off and the wave on it", "mm", "in"),
    work: |sheet, at| {
        let wave = pool(sheet, at).surge.on(sheet);
        let (top, level, wave) = (holding_top(sheet, at), PUMPS_OFF_LEVEL.of(sheet, at), wave).all()?;
        sheet.work(&DIFFERENCE, (top, sheet.work(&ABOVE, (level, wave))?))
    },
};

/// How far the invert of the overflow lies over the normal water.
///
/// # Errors
/// A gap where either is missing.
pub fn overflow_over_water(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    over_water(sheet, at, &pool(sheet, at).levels.overflow)
}

/// The rise that the level stated for the pumps off stands for, where one is stated.
pub fn stated_rise(sheet: Sheet<'_>, at: Subject) -> Option<Known<Line<Length>>> {
    let field: &Level = &pool(sheet, at).levels.pumps_off;
    matches!(field.state(), State::Given(_)).then(|| over_water(sheet, at, field))
}

fn over_water(sheet: Sheet<'_>, at: Subject, level: &Level) -> Known<Line<Length>> {
    let water = crate::level(sheet, &pool(sheet, at).levels.water);
    sheet.work(&DIFFERENCE, (crate::level(sheet, level), water).all()?)
}
