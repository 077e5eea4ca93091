//! How low the water stands at its lowest: pumps started on a pool at rest, and evaporation until somebody comes.

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::{About, Subject};
use haulout_quantity::si::{Length, Time, Velocity};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Value;
use haulout_sheet::{All, Figure, FigureCard, Known, Line, Many, Sheet};

use super::ladder::{PUMPS_OFF_RISE, leads_to};
use super::stream::{STREAM_LIP_HEAD, stream};
use crate::heat::{air_is_stated, evaporation::FALL_HIGH};
use crate::pool::pool;
use crate::terms::{BELOW, DIFFERENCE};

/// Water that evaporates from a warm indoor pool whose air nobody stated.
static EVAPORATION: Value = Value {
    what: "fall of an indoor pool by evaporation",
    value: 0.006 / 86400.0,
    unit: "mm/d",
    dimension: Dimension::VELOCITY,
    basis: Basis::CommonPractice,
    source: "indoor pools near the temperature of the air: 3 to 6 mm a day; the upper end",
};

const fn law(name: &'static str, text: &'static str, symbols: &'static [&'static str]) -> FormulaCard {
    FormulaCard {
        name,
        result: "f",
        text,
        symbols,
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "a pool filled to its level at rest and then started",
    }
}

static FALL: Formula<(Length, Length, Velocity, Time), Length> = Formula {
    card: &law("fall of the water to reckon with", "dz + h_lip + e × t", &["dz", "h_lip", "e", "t"]),
    run: |(rise, lip, evaporation, time)| Ok(rise + lip + evaporation * time),
};

static LIPS: Many<Length, Length> =
    Many { card: &law("sum of heads", "+", &[]), run: |heads| Ok(heads.iter().copied().sum()) };

/// The film over its own lips: what runs out of it over a stream's lip when its pump stops.
fn own_lips(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    let streams = (0..sheet.design().streams.items().len()).map(|i| Subject::nth(About::Stream, i));
    let own = streams.filter(|s| leads_to(sheet, &stream(sheet, *s).from, at));
    let heads: Vec<Known<Line<Length>>> = own.map(|s| STREAM_LIP_HEAD.of(sheet, s)).collect();
    sheet.fold(&LIPS, &heads.all()?)
}

/// Evaporation as worked from the winter air where the file states it, and what is usual where it does not.
fn evaporation(sheet: Sheet<'_>, at: Subject) -> Known<Line<Velocity>> {
    if air_is_stated(sheet, at) { FALL_HIGH.of(sheet, at) } else { Ok(sheet.register(&EVAPORATION, None)) }
}

/// How far the water falls under its normal level, to reckon with.
pub static FALL_TO_RECKON_WITH: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        id: "fall-to-reckon-with",
        title: "fall of the water to reckon with",
        about: About::Pool,
        axes: &[],
        unit: "mm",
        us_unit: "in",
        resolution: None,
    },
    work: |sheet, at| {
        let unattended = sheet.design().keepers.unattended.on(sheet);
        let (rise, lips) = (PUMPS_OFF_RISE.of(sheet, at), own_lips(sheet, at));
        sheet.work(&FALL, (rise, lips, evaporation(sheet, at), unattended).all()?)
    },
};

/// The lowest level to reckon with.
pub static LOWEST_LEVEL: Figure<Line<Length>> = Figure {
    card: &FigureCard {
        id: "lowest-level",
        title: "lowest level to reckon with",
        about: About::Pool,
        axes: &[],
        unit: "m",
        us_unit: "ft",
        resolution: None,
    },
    work: |sheet, at| {
        let water = crate::level(sheet, &pool(sheet, at).levels.water);
        sheet.work(&BELOW, (water, FALL_TO_RECKON_WITH.of(sheet, at)).all()?)
    },
};

/// How far the lowest running level that the file states lies under the normal water.
///
/// # Errors
/// A gap where either is missing.
pub fn stated_fall(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    let levels = &pool(sheet, at).levels;
    let lines = (crate::level(sheet, &levels.water), crate::level(sheet, &levels.low)).all()?;
    sheet.work(&DIFFERENCE, lines)
}
