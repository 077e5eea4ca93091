//! Water change: nitrate and alkalinity at rest and on the way there.

use haulout_calc::filtration::{oxygen, renewal as formulas};
use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::fill::Fill;
use haulout_model::{About, Number, Subject};
use haulout_quantity::si::{MassDensity, MassRate, Volume, VolumeRate};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Value;
use haulout_sheet::{All, Figure, FigureCard, Known, Line, Many, Sheet};

use super::joined::JOINED;
use super::load::{NITROGEN, RATES};
use crate::pool::{pool, volume::NET_VOLUME};
use crate::terms::{self, VOLUMES};

static FLOWS: Many<VolumeRate, VolumeRate> =
    Many { card: &terms::arithmetic("sum of flows", "Q", "+", &[]), run: |q| Ok(q.iter().copied().sum()) };

static FOUR_WEEKS: Value = Value {
    what: "four weeks",
    value: 28.0 * 86_400.0,
    unit: "d",
    dimension: Dimension::TIME,
    basis: Basis::Published,
    source: "definition",
};

const fn card(
    id: &'static str,
    title: &'static str,
    unit: &'static str,
    us_unit: &'static str,
) -> FigureCard {
    FigureCard { id, title, about: About::Pool, axes: &[], unit, us_unit, resolution: None }
}

const fn mg_l(id: &'static str, title: &'static str) -> FigureCard {
    card(id, title, "mg/L", "mg/L")
}

/// The pools of a water that are renewed: all but those that are said to have no fill.
fn renewed<'s>(sheet: Sheet<'s>, at: Subject) -> Known<Vec<&'s Fill>> {
    let joined = JOINED.of(sheet, at)?;
    let fills = joined.pools.iter().map(|at| &pool(sheet, *at).fill);
    let all: Vec<&Fill> = fills.collect();
    let some: Vec<&Fill> = all.iter().copied().filter(|fill| !fill.renewal.is_none()).collect();
    // Where every pool is said to have none, asking the first says where.
    Ok(if some.is_empty() { all.into_iter().take(1).collect() } else { some })
}

/// Water renewed a day in the water of a pool.
pub static RENEWED: Figure<Line<VolumeRate>> = Figure {
    card: &card("renewed", "water renewed", "L/d", "gal(US)/d"),
    work: |sheet, at| {
        let flows: Vec<Known<Line<VolumeRate>>> =
            renewed(sheet, at)?.into_iter().map(|fill| fill.renewal.on(sheet)).collect();
        sheet.fold(&FLOWS, &flows.all()?)
    },
};

/// What the fills of a water bring in of something.
pub(crate) fn brought(
    sheet: Sheet<'_>,
    at: Subject,
    what: fn(&Fill) -> &Number<MassDensity>,
) -> Known<Line<MassRate>> {
    let each = renewed(sheet, at)?.into_iter().map(|fill| {
        let lines = (fill.renewal.on(sheet), what(fill).on(sheet)).all()?;
        sheet.work(&formulas::BROUGHT_IN, lines)
    });
    let each: Vec<Known<Line<MassRate>>> = each.collect();
    sheet.fold(&RATES, &each.all()?)
}

/// Nitrate at rest, as nitrogen.
pub static NITRATE_AT_REST: Figure<Line<MassDensity>> = Figure {
    card: &mg_l("nitrate-at-rest", "nitrate at rest, as nitrogen"),
    work: |sheet, at| {
        let brought = brought(sheet, at, |fill| &fill.nitrate);
        let lines = (NITROGEN.of(sheet, at), brought, RENEWED.of(sheet, at)).all()?;
        sheet.work(&formulas::NITRATE_AT_REST, lines)
    },
};

/// The same number as NO3, 4.43 times as large.
pub static NITRATE_AS_NO3: Figure<Line<MassDensity>> = Figure {
    card: &mg_l("nitrate-as-no3", "nitrate at rest, as NO3"),
    work: |sheet, at| sheet.work(&formulas::AS_NITRATE, (NITRATE_AT_REST.of(sheet, at)?,)),
};

/// Nitrate after four weeks from what the fill holds, as nitrogen.
pub static NITRATE_AFTER: Figure<Line<MassDensity>> = Figure {
    card: &mg_l("nitrate-after-four-weeks", "nitrate after four weeks, as nitrogen"),
    work: |sheet, at| {
        let joined = JOINED.of(sheet, at)?;
        let waters: Vec<Known<Line<Volume>>> =
            joined.pools.iter().map(|pool| NET_VOLUME.of(sheet, *pool)).collect();
        let water = waters.all().and_then(|waters| sheet.fold(&VOLUMES, &waters));
        let start = pool(sheet, at).fill.nitrate.on(sheet);
        let (rest, start, flow, water) =
            (NITRATE_AT_REST.of(sheet, at), start, RENEWED.of(sheet, at), water).all()?;
        let time = sheet.register(&FOUR_WEEKS, None);
        sheet.work(&formulas::NITRATE_AFTER, (rest, start, flow, water, time))
    },
};

/// Alkalinity that nitrification uses up.
pub static ALKALINITY_USED: Figure<Line<MassRate>> = Figure {
    card: &card("alkalinity-used", "alkalinity used up, as calcium carbonate", "g/d", "g/d"),
    work: |sheet, at| sheet.work(&oxygen::ALKALINITY_USED, (NITROGEN.of(sheet, at)?,)),
};

/// Alkalinity at rest with nothing dosed.
pub static ALKALINITY_AT_REST: Figure<Line<MassDensity>> = Figure {
    card: &mg_l("alkalinity-at-rest", "alkalinity at rest, as calcium carbonate"),
    work: |sheet, at| {
        let brought = brought(sheet, at, |fill| &fill.alkalinity);
        let lines = (ALKALINITY_USED.of(sheet, at), brought, RENEWED.of(sheet, at)).all()?;
        sheet.work(&formulas::ALKALINITY_AT_REST, lines)
    },
};

/// What has to be dosed to hold the alkalinity that is stated of the water.
pub static ALKALINITY_TO_DOSE: Figure<Line<MassRate>> = Figure {
    card: &card("alkalinity-to-dose", "alkalinity to dose, as calcium carbonate", "g/d", "g/d"),
    work: |sheet, at| {
        let brought = brought(sheet, at, |fill| &fill.alkalinity);
        let hold = pool(sheet, at).water.alkalinity.on(sheet);
        let lines = (ALKALINITY_USED.of(sheet, at), brought, RENEWED.of(sheet, at), hold).all()?;
        sheet.work(&formulas::ALKALINITY_TO_DOSE, lines)
    },
};

/// Nitrate of what fills a pool, as nitrogen.
pub static NITRATE_OF_FILL: Figure<Line<MassDensity>> = Figure {
    card: &mg_l("nitrate-of-fill", "nitrate of the fill, as nitrogen"),
    work: |sheet, at| pool(sheet, at).fill.nitrate.on(sheet),
};

static ABOVE_NOUGHT: Formula<(VolumeRate,), bool> = Formula {
    card: &FormulaCard {
        name: "water is changed",
        result: "yes",
        text: "flow above nought",
        symbols: &["Q"],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "flows",
    },
    run: |(flow,)| Ok(flow.value > 0.0),
};

/// Whether any water is changed at all.
///
/// # Errors
/// A gap when the file does not say; of kind *said none* when it says that none is.
pub fn is_renewed(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&ABOVE_NOUGHT, (RENEWED.of(sheet, at)?,))
}
