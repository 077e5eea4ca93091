//! How low the water stands at its lowest: pumps started on a pool at rest, and evaporation until somebody comes.

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::{About, Subject};
use haulout_quantity::si::{Length, Time, Velocity};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Value;
use haulout_sheet::{All, Figure, FigureCard, Known, Line, Many, Sheet};

use super::ladder::{PUMPS_OFF_RISE, leads_to};
use super::stream::{STREAM_LIP_HEAD, stream};
use crate::pool::pool;

/// Water that evaporates from a warm indoor pool.
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
        result: "z",
        text,
        symbols,
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "a pool filled to its level at rest and then started",
    }
}

static LOWEST: Formula<(Length, Length, Length, Velocity, Time), Length> = Formula {
    card: &law("lowest level to reckon with", "z_w - dz - h_lip - e × t", &["z_w", "dz", "h_lip", "e", "t"]),
    run: |(water, rise, lip, evaporation, time)| Ok(water - rise - lip - evaporation * time),
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
        let unattended = sheet.design().keepers.unattended.on(sheet);
        let films = (PUMPS_OFF_RISE.of(sheet, at), own_lips(sheet, at)).all();
        let (water, (rise, lips), time) = (water, films, unattended).all()?;
        sheet.work(&LOWEST, (water, rise, lips, sheet.register(&EVAPORATION, None), time))
    },
};

/// The lowest running level the file states.
///
/// # Errors
/// A gap where it is not stated.
pub fn stated_low(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    crate::level(sheet, &pool(sheet, at).levels.low)
}
