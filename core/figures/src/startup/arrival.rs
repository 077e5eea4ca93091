//! Arrivals: how long a bag has to float and waters have to be mixed before the animals are let go.

use haulout_calc::formula::Refusal;
use haulout_calc::startup::arrival::{APART, FLOAT, MIX};
use haulout_model::{About, Subject};
use haulout_quantity::si::{TemperatureInterval, Time};
use haulout_sheet::{All, Figure, FigureCard, Known, Line, Many, Sheet};

use super::{arriving, group_of, pools_of};
use crate::pool::{pool, water::TEMPERATURE};
use crate::terms::arithmetic;

static LONGEST: Many<Time, Time> = Many {
    card: &arithmetic("longest of the pools", "t", "max", &[]),
    run: |all| {
        let most = all.iter().copied().reduce(Time::max);
        most.ok_or_else(|| Refusal::new("the group that arrives lives over no pool"))
    },
};

static WIDEST: Many<TemperatureInterval, TemperatureInterval> = Many {
    card: &arithmetic("widest of the pools", "ΔT", "max", &[]),
    run: |all| {
        let most = all.iter().copied().reduce(TemperatureInterval::max);
        most.ok_or_else(|| Refusal::new("the group that arrives lives over no pool"))
    },
};

const fn card(
    id: &'static str,
    title: &'static str,
    unit: &'static str,
    us_unit: &'static str,
) -> FigureCard {
    FigureCard { id, title, about: About::Arrival, axes: &[], unit, us_unit, resolution: None }
}

/// The pools an arrival is let into: those its group lives over.
///
/// # Errors
/// A gap where the group, pools or spaces are not stated.
pub fn pools(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Subject>> {
    pools_of(sheet, group_of(sheet, &arriving(sheet, at).group)?)
}

fn over_pools<R: haulout_sheet::Entry>(
    sheet: Sheet<'_>,
    at: Subject,
    most: &'static Many<R, R>,
    of: impl Fn(Subject) -> Known<Line<R>>,
) -> Known<Line<R>> {
    let each: Vec<Known<Line<R>>> = pools(sheet, at)?.into_iter().map(of).collect();
    sheet.fold(most, &each.all()?)
}

/// How far the transport water is from the water of the pool.
pub static ARRIVAL_APART: Figure<Line<TemperatureInterval>> = Figure {
    card: &card("arrival-apart", "difference of temperature of the transport water", "K", "R"),
    work: |sheet, at| {
        let own = arriving(sheet, at).temperature.on(sheet);
        over_pools(sheet, at, &WIDEST, |pool| {
            let lines = (own.clone(), TEMPERATURE.of(sheet, pool)).all()?;
            sheet.work(&APART, lines)
        })
    },
};

/// How long a closed bag floats until the temperatures have met.
pub static FLOAT_TIME: Figure<Line<Time>> = Figure {
    card: &card("float-time", "time for which a bag floats until temperatures meet", "min", "min"),
    work: |sheet, at| {
        let own = arriving(sheet, at);
        let own = (own.volume.on(sheet), own.temperature.on(sheet)).all();
        over_pools(sheet, at, &LONGEST, |pool| {
            let ((volume, bag), pool) = (own.clone(), TEMPERATURE.of(sheet, pool)).all()?;
            sheet.work(&FLOAT, (volume, bag, pool))
        })
    },
};

/// How long waters are mixed for the difference of pH.
pub static MIXING_TIME: Figure<Line<Time>> = Figure {
    card: &card("mixing-time", "time over which waters are mixed for the difference of pH", "min", "min"),
    work: |sheet, at| {
        let own = arriving(sheet, at).ph.on(sheet);
        over_pools(sheet, at, &LONGEST, |at| {
            let lines = (own.clone(), pool(sheet, at).water.ph.on(sheet)).all()?;
            sheet.work(&MIX, lines)
        })
    },
};

/// How long it is to float, as stated.
///
/// # Errors
/// A gap when it is not stated.
pub fn floats(sheet: Sheet<'_>, at: Subject) -> Known<Line<Time>> {
    arriving(sheet, at).floats.on(sheet)
}

/// How long waters are to be mixed, as stated.
///
/// # Errors
/// A gap when it is not stated.
pub fn mixed(sheet: Sheet<'_>, at: Subject) -> Known<Line<Time>> {
    arriving(sheet, at).mixed.on(sheet)
}
