//! Figures about heat of the water: evaporation, losses, heaters stuck on or off, and what the animals bear.

pub mod alarm;
pub mod bear;
pub mod cool;
pub mod evaporation;
pub mod fill;
pub mod heater;
pub mod loss;

use haulout_model::air::AirSeason;
use haulout_model::heater::Heater;
use haulout_model::{About, State, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{MassDensity, Ratio, ThermodynamicTemperature, Volume};
use haulout_sheet::{All, Figure, FigureCard, Gap, GapKind, Known, Line, Sheet};

use haulout_calc::formula::{FormulaCard, Kind};
use haulout_calc::water::DENSITY;

use crate::filtration::joined::joined_pools;
use crate::pool::{pool, volume::NET_VOLUME};
use crate::terms::VOLUMES;
use crate::water::times::SPECIFIC_HEAT;

/// A card of a choice among words of the file, or of one of several values.
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
        range: "stated words",
    }
}

const fn card(
    id: &'static str,
    title: &'static str,
    about: About,
    (unit, us_unit): (&'static str, &'static str),
) -> FigureCard {
    FigureCard { id, title, about, axes: &[], unit, us_unit, resolution: None }
}

/// The heater of a subject.
fn heater(sheet: Sheet<'_>, at: Subject) -> &Heater {
    &sheet.design().heaters.items()[at.index()]
}

/// The pools that circuits join to a pool, with itself.
fn pools(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Subject>> {
    joined_pools(sheet, at)
}

/// The winter air over a pool.
fn air(sheet: Sheet<'_>, at: Subject) -> Known<&AirSeason> {
    let link = &pool(sheet, at).space;
    let Some(name) = link.name() else { return Err(Gap::from(link.missing()).into()) };
    let found = sheet.design().hall.spaces.items().iter().find(|space| space.id == name);
    found.map(|space| &space.air.winter).ok_or_else(|| {
        let what = format!("there is no space \"{name}\"");
        Gap::at(GapKind::LeadsNowhere, what, link.missing().origin).into()
    })
}

/// Whether the file states what evaporation is worked from: the water, and the winter air over it.
pub(crate) fn air_is_stated(sheet: Sheet<'_>, at: Subject) -> bool {
    let given = air(sheet, at).is_ok_and(|air| air.temperature.is_given() && air.humidity.is_given());
    given && pool(sheet, at).water.temperature.is_given()
}

/// The water at its warm end, as stated and without its swing.
fn warm(sheet: Sheet<'_>, at: Subject) -> Known<Line<ThermodynamicTemperature>> {
    pool(sheet, at).water.temperature.high(sheet)
}

/// Water of all the pools that circuits join to a pool; what stands in pipes and filters is not counted.
pub static JOINED_WATER: Figure<Line<Volume>> = Figure {
    card: &card("joined-volume", "water of the joined pools", About::Pool, ("m3", "gal(US)")),
    work: |sheet, at| {
        let each: Vec<Known<Line<Volume>>> =
            pools(sheet, at)?.into_iter().map(|pool| NET_VOLUME.of(sheet, pool)).collect();
        sheet.fold(&VOLUMES, &each.all()?)
    },
};

/// Density of the water at its warm end, and its specific heat.
fn body(sheet: Sheet<'_>, at: Subject) -> Known<(Line<MassDensity>, Line<Ratio>)> {
    let density = sheet.work(&DENSITY, (warm(sheet, at)?,))?;
    Ok((density, sheet.register(&SPECIFIC_HEAT, None)))
}

/// The heaters of the pools that circuits join to a pool.
///
/// # Errors
/// A gap where heaters, or the pool of one of them, are not stated.
pub(crate) fn heaters(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Subject>> {
    let design = sheet.design();
    if !matches!(design.heaters.state(), State::None)
        && let Some(missing) = design.heaters.missing()
    {
        return Err(Gap::from(missing).into());
    }
    let pools = pools(sheet, at)?;
    let own = |(at, heater): (usize, &Heater)| {
        let Some(name) = heater.pool.name() else { return Err(Gap::from(heater.pool.missing()).into()) };
        let warms = pools.iter().any(|pool| Some(pool.index()) == design.pool_named(name));
        Ok(warms.then(|| Subject::nth(About::Heater, at)))
    };
    let each: Vec<Known<Option<Subject>>> = design.heaters.items().iter().enumerate().map(own).collect();
    Ok(each.all()?.into_iter().flatten().collect())
}

/// Whether any heater warms the water of a pool.
///
/// # Errors
/// A gap where heaters are not stated.
pub fn is_heated(sheet: Sheet<'_>, at: Subject) -> Known<bool> {
    heaters(sheet, at).map(|found| !found.is_empty())
}
