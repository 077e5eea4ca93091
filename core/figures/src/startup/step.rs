//! What each stocking step finds: the highest ammonia and nitrite until the next one, and the days from which it is carried.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::startup::band::{
    Courses, HIGHEST_NITRITE, HIGHEST_TAN, READY_EARLY, READY_LATE, ReadyFormula,
};
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{MassDensity, Ratio, Time};
use haulout_sheet::{All, Figure, FigureCard, Gap, GapKind, Known, Line, Many, Sheet};

use super::course::COURSE;
use super::start::START;
use super::{group_of, step, waters_of};
use crate::species::group;
use crate::terms::{NUMBERS, arithmetic};

static WORST: Many<MassDensity, MassDensity> = Many {
    card: &arithmetic("largest of the waters", "c", "max", &[]),
    run: |all| {
        let most = all.iter().copied().reduce(MassDensity::max);
        most.ok_or_else(|| Refusal::new("the group of the step lives over no water"))
    },
};

static LAST: Many<Time, Time> = Many {
    card: &arithmetic("latest of the waters", "t", "max", &[]),
    run: |all| {
        let last = all.iter().copied().reduce(Time::max);
        last.ok_or_else(|| Refusal::new("the group of the step lives over no water"))
    },
};

const fn card(id: &'static str, title: &'static str, unit: &'static str) -> FigureCard {
    FigureCard { id, title, about: About::Stocking, axes: &[], unit, us_unit: unit, resolution: None }
}

/// The first pool of each water that a step brings animals over.
///
/// # Errors
/// A gap where the group of the step, pools, spaces or circuits are not stated.
pub fn waters(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Subject>> {
    waters_of(sheet, group_of(sheet, &step(sheet, at).group)?)
}

type Read = Formula<(Arc<Courses>, Ratio), MassDensity>;

fn highest(sheet: Sheet<'_>, at: Subject, read: &'static Read) -> Known<Line<MassDensity>> {
    let day = step(sheet, at).day.on(sheet);
    let each = waters(sheet, at)?.into_iter().map(|water| {
        let lines = (COURSE.of(sheet, water), day.clone()).all()?;
        sheet.work(read, lines)
    });
    let each: Vec<Known<Line<MassDensity>>> = each.collect();
    sheet.fold(&WORST, &each.all()?)
}

/// Highest total ammonia, as nitrogen, from the step until the next, worst of the band.
pub static STEP_TAN: Figure<Line<MassDensity>> = Figure {
    card: &card("step-ammonia", "highest total ammonia after a step, as nitrogen", "mg/L"),
    work: |sheet, at| highest(sheet, at, &HIGHEST_TAN),
};

/// Highest nitrite, as nitrogen, from the step until the next, worst of the band.
pub static STEP_NITRITE: Figure<Line<MassDensity>> = Figure {
    card: &card("step-nitrite", "highest nitrite after a step, as nitrogen", "mg/L"),
    work: |sheet, at| highest(sheet, at, &HIGHEST_NITRITE),
};

fn ready(sheet: Sheet<'_>, at: Subject, read: &'static ReadyFormula) -> Known<Line<Time>> {
    let targets = (TARGET_TAN.of(sheet, at), TARGET_NITRITE.of(sheet, at));
    let own = (step(sheet, at).day.on(sheet), targets.0, targets.1).all();
    let each = waters(sheet, at)?.into_iter().map(|water| {
        let (start, (day, tan, nitrite)) = (START.of(sheet, water), own.clone()).all()?;
        sheet.work(read, (start, day, tan, nitrite))
    });
    let each: Vec<Known<Line<Time>>> = each.collect();
    sheet.fold(&LAST, &each.all()?)
}

/// Day from which the step is carried with none after it, slowest growth.
pub static STEP_READY_LATE: Figure<Line<Time>> = Figure {
    card: &card("step-carried-latest", "day from which a step is carried, slowest growth", "d"),
    work: |sheet, at| ready(sheet, at, &READY_LATE),
};

/// The same, fastest growth.
pub static STEP_READY_EARLY: Figure<Line<Time>> = Figure {
    card: &card("step-carried-earliest", "day from which a step is carried, fastest growth", "d"),
    work: |sheet, at| ready(sheet, at, &READY_EARLY),
};

const fn target(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard { id, title, about: About::Whole, axes: &[], unit: "mg/L", us_unit: "mg/L", resolution: None }
}

/// Total ammonia, as nitrogen, at which the next step waits.
pub static TARGET_TAN: Figure<Line<MassDensity>> = Figure {
    card: &target("target-ammonia", "total ammonia, as nitrogen, at which the next step waits"),
    work: |sheet, _| sheet.design().start_up.target_tan.on(sheet),
};

/// Nitrite, as nitrogen, at which the next step waits.
pub static TARGET_NITRITE: Figure<Line<MassDensity>> = Figure {
    card: &target("target-nitrite", "nitrite, as nitrogen, at which the next step waits"),
    work: |sheet, _| sheet.design().start_up.target_nitrite.on(sheet),
};

/// Animals of a group that come in all its steps together.
pub static STOCKED: Figure<Line<Ratio>> = Figure {
    card: &FigureCard { about: About::Group, ..card("stocked", "animals that come in steps", "") },
    work: |sheet, at| {
        let steps = &sheet.design().start_up.steps;
        if let Some(missing) = steps.missing() {
            return Err(Gap::from(missing).into());
        }
        let own = &group(sheet, at).id;
        let each = steps.items().iter().map(|step| match step.group.name() {
            Some(name) => Ok((name == own).then_some(step)),
            None => Err(Gap::from(step.group.missing()).into()),
        });
        let each: Vec<Known<Option<_>>> = each.collect();
        let counts: Vec<Known<Line<Ratio>>> =
            each.all()?.into_iter().flatten().map(|step| step.count.on(sheet)).collect();
        if counts.is_empty() {
            let seat = steps.seat();
            return Err(
                Gap::at(GapKind::SaidNone, format!("no step brings \"{own}\" in"), seat.origin).into()
            );
        }
        sheet.fold(&NUMBERS, &counts.all()?)
    },
};

/// Whether any animals come by steps; by ids alone.
///
/// # Errors
/// A gap when the steps are not stated.
pub fn is_stocked(sheet: Sheet<'_>) -> Known<bool> {
    let steps = &sheet.design().start_up.steps;
    match steps.missing().map(Gap::from) {
        Some(gap) if gap.kind != GapKind::SaidNone => Err(gap.into()),
        _ => Ok(!steps.items().is_empty()),
    }
}

static COME: Formula<(Ratio,), bool> = Formula {
    card: &FormulaCard {
        name: "some come",
        result: "yes",
        text: "count is above nought",
        symbols: &["n"],
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "counts",
    },
    run: |(count,)| Ok(count.value > 0.0),
};

/// Whether any animals of a group come by steps.
///
/// # Errors
/// A gap of kind *said none* where no step brings the group in; others where counts are not stated.
pub fn some_come(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    sheet.work(&COME, (STOCKED.of(sheet, at)?,))
}
