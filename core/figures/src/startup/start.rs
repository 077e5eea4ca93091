//! What a start-up begins with: the water, what lives in its filters on the first day, what is fed from which day on.

use std::sync::Arc;

use haulout_calc::filtration::bed::{MEDIA_SURFACE, REMOVAL, WORKING_SURFACE};
use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::startup::band::{DAYS_AFTER, OXYGEN_IN_BED, STEP_LOAD, TURNED_OVER, loads};
use haulout_calc::startup::course::Start;
use haulout_model::start_up::MovedMedia;
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{
    MassDensity, MassFlux, MassRate, Ratio, ThermodynamicTemperature, Volume, VolumeRate,
};
use haulout_register::Value;
use haulout_sheet::{
    All, Assembly, Datum, Entry, Figure, FigureCard, Gap, GapKind, Known, Line, LineId, Many, Sheet,
};

use super::{group_of, step};
use crate::filtration::bed::{CAUTIOUS_REMOVAL, SURFACE_PROVIDED, WORKING_SHARE};
use crate::filtration::joined::JOINED;
use crate::filtration::load::{NITROGEN, RATES, nitrogen_of_group};
use crate::filtration::oxygen::LEAST_OXYGEN;
use crate::filtration::renewal::{RENEWED, brought};
use crate::group::{ANIMALS, over::living_over};
use crate::pool::water::COOLEST;
use crate::pool::{pool, volume::NET_VOLUME};
use crate::terms::VOLUMES;

static BY_THEMSELVES: Value = Value::number(
    "bacteria that come by themselves, as a share of what the whole feed needs",
    0.001,
    Basis::CommonPractice,
    "set so that an unfed new filter takes the three to five weeks that summaries of FAO Technical Paper 589, chapter 5, give",
);

static ALL_OF_THEM: Value = Value::number("share alive", 1.0, Basis::Published, "definition");

const fn card(id: &'static str, title: &'static str, unit: &'static str) -> FigureCard {
    FigureCard { id, title, about: About::Pool, axes: &[], unit, us_unit: unit, resolution: None }
}

/// What a square metre takes out in the coolest water.
fn removal(sheet: Sheet<'_>, at: Subject) -> Known<Line<MassFlux>> {
    let coolest = COOLEST.of(sheet, at)?;
    sheet.work(&REMOVAL, (sheet.register(&CAUTIOUS_REMOVAL, None), coolest))
}

fn of_media(sheet: Sheet<'_>, at: Subject, media: &MovedMedia) -> Known<Line<MassRate>> {
    let lines = (media.specific_area.on(sheet), media.volume.on(sheet)).all();
    let surface = lines.and_then(|lines| sheet.work(&MEDIA_SURFACE, lines));
    let (surface, alive, removal) = (surface, media.alive.on(sheet), removal(sheet, at)).all()?;
    let working = sheet.work(&WORKING_SURFACE, (surface, sheet.register(&WORKING_SHARE, None)))?;
    sheet.work(&TURNED_OVER, (working, alive, removal))
}

/// The media that are moved into filters of the water of a pool.
fn moved(sheet: Sheet<'_>, at: Subject) -> Known<Vec<&MovedMedia>> {
    let design = sheet.design();
    let media = &design.start_up.media;
    if let Some(gap) = media.missing().map(Gap::from) {
        return if gap.kind == GapKind::SaidNone { Ok(Vec::new()) } else { Err(gap.into()) };
    }
    let filters = JOINED.of(sheet, at)?.filters.clone()?;
    let own = |name: &str| filters.iter().any(|at| design.filters.items()[at.index()].id == name);
    let one = |media| {
        let link = |media: &MovedMedia| media.filter.name().map(own);
        link(media).map(|own| own.then_some(media)).ok_or_else(|| Gap::from(media.filter.missing()).into())
    };
    let each: Vec<Known<Option<&MovedMedia>>> = media.items().iter().map(one).collect();
    Ok(each.all()?.into_iter().flatten().collect())
}

/// Nitrogen that the bacteria turn over that are moved in on the first day.
pub static MOVED_IN: Figure<Line<MassRate>> = Figure {
    card: &card("moved-in", "nitrogen that the moved media turn over", "g/d"),
    work: |sheet, at| {
        let each: Vec<Known<Line<MassRate>>> =
            moved(sheet, at)?.into_iter().map(|media| of_media(sheet, at, media)).collect();
        sheet.fold(&RATES, &each.all()?)
    },
};

/// Nitrogen that the whole bed of all filters turns over in the coolest water.
pub static BED_TURNS_OVER: Figure<Line<MassRate>> = Figure {
    card: &card("bed-turns-over", "nitrogen that the whole bed turns over", "g/d"),
    work: |sheet, at| {
        let (surface, removal) = (SURFACE_PROVIDED.of(sheet, at), removal(sheet, at)).all()?;
        sheet.work(&TURNED_OVER, (surface, sheet.register(&ALL_OF_THEM, None), removal))
    },
};

/// Nitrogen that a step adds to the feed.
pub static STEP_NITROGEN: Figure<Line<MassRate>> = Figure {
    card: &FigureCard {
        about: About::Stocking,
        ..card("step-nitrogen", "nitrogen that the feed of a step adds", "g/d")
    },
    work: |sheet, at| {
        let step = step(sheet, at);
        let group = group_of(sheet, &step.group);
        let all = group.clone().and_then(|group| nitrogen_of_group(sheet, group));
        let animals = group.and_then(|group| ANIMALS.of(sheet, group));
        let (all, count, animals) = (all, step.count.on(sheet), animals).all()?;
        sheet.work(&STEP_LOAD, (all, count, animals))
    },
};

/// The steps that bring animals over the water of a pool.
pub fn steps_over(sheet: Sheet<'_>, at: Subject) -> Known<Vec<Subject>> {
    let steps = &sheet.design().start_up.steps;
    if let Some(missing) = steps.missing() {
        return Err(Gap::from(missing).into());
    }
    let living = living_over(sheet, &JOINED.of(sheet, at)?.pools)?;
    let one = |at: usize| {
        let step = Subject::nth(About::Stocking, at);
        let group = group_of(sheet, &super::step(sheet, step).group)?;
        Ok(living.contains(&group).then_some(step))
    };
    let each: Vec<Known<Option<Subject>>> = (0..steps.items().len()).map(one).collect();
    Ok(each.all()?.into_iter().flatten().collect())
}

/// Water, coolest temperature, oxygen, alkalinity, both brought by the fill, water renewed, what is moved in, the whole
/// feed, the share that comes by itself, the whole bed, what is dosed; then day and feed of each step.
static TOGETHER: Assembly<Arc<Start>> = Assembly {
    card: &FormulaCard {
        name: "beginning of a start-up",
        result: "start",
        text: "the water, its filters and the steps put together",
        symbols: &[],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "definition",
        range: "one mixed water",
    },
    run: |data| start(data).map(Arc::new),
};

fn start(data: &[Datum]) -> Result<Start, Refusal> {
    let [water, warm, oxygen, hard, hard_in, nitrate_in, renewed, moved, fed, share, bed, dosed, steps @ ..] =
        data
    else {
        return Err(Refusal::new("a start-up has a water, its filters and what is fed"));
    };
    let changed = VolumeRate::take(renewed).value * 86_400.0;
    let a_day = |rate: &Datum| MassRate::take(rate).value * 86_400.0;
    let per_fill = |rate: &Datum| if changed > 0.0 { a_day(rate) / changed } else { 0.0 };
    let pairs = steps.chunks_exact(2).map(|pair| (Ratio::take(&pair[0]).value, a_day(&pair[1])));
    let pairs: Vec<(f64, f64)> = pairs.collect();
    let last = pairs.iter().map(|(day, _)| *day).fold(0.0, f64::max);
    Ok(Start {
        water: Volume::take(water).value,
        temperature: ThermodynamicTemperature::take(warm).value,
        oxygen: MassDensity::take(oxygen).value,
        alkalinity: MassDensity::take(hard).value,
        alkalinity_of_fill: per_fill(hard_in),
        nitrate_of_fill: per_fill(nitrate_in),
        changed,
        loads: loads(&pairs, a_day(dosed)),
        there: a_day(moved) + Ratio::take(share).value * a_day(fed),
        bed: a_day(bed),
        days: (last + DAYS_AFTER) as u32,
    })
}

/// The start-up of the water of a pool. Not a number, so not in the catalogue.
pub static START: Figure<Line<Arc<Start>>> = Figure {
    card: &card("start", "beginning of the start-up", ""),
    work: |sheet, at| {
        let own = &pool(sheet, at).water;
        let volumes = JOINED.of(sheet, at).and_then(|joined| {
            let each = joined.pools.iter().map(|pool| NET_VOLUME.of(sheet, *pool));
            each.collect::<Vec<_>>().all().and_then(|waters| sheet.fold(&VOLUMES, &waters))
        });
        let oxygen = own
            .oxygen
            .on(sheet)
            .and_then(|comes| sheet.work(&OXYGEN_IN_BED, (comes, sheet.register(&LEAST_OXYGEN, None))));
        let first = (volumes, COOLEST.of(sheet, at), oxygen, own.alkalinity.on(sheet)).all();
        let hard = brought(sheet, at, |fill| &fill.alkalinity);
        let nitrate = brought(sheet, at, |fill| &fill.nitrate);
        let second = (hard, nitrate, RENEWED.of(sheet, at)).all();
        let third =
            (MOVED_IN.of(sheet, at), NITROGEN.of(sheet, at), BED_TURNS_OVER.of(sheet, at), dosed(sheet))
                .all();
        let (first, second, third, steps) = (first, second, third, steps(sheet, at)).all()?;
        let share: Line<Ratio> = sheet.register(&BY_THEMSELVES, None);
        let mut lines = vec![first.0.id(), first.1.id(), first.2.id(), first.3.id()];
        lines.extend([second.0.id(), second.1.id(), second.2.id()]);
        lines.extend([third.0.id(), third.1.id(), share.id(), third.2.id(), third.3.id()]);
        lines.extend(steps);
        sheet.assemble(&TOGETHER, &lines)
    },
};

fn dosed(sheet: Sheet<'_>) -> Known<Line<MassRate>> {
    let dosed = &sheet.design().start_up.dosed;
    if dosed.is_given() { dosed.on(sheet) } else { sheet.fold(&RATES, &[]) }
}

/// Day and feed of each step over the water, one after the other.
fn steps(sheet: Sheet<'_>, at: Subject) -> Known<Vec<LineId>> {
    let each = steps_over(sheet, at)?.into_iter().map(|at| {
        let lines = (step(sheet, at).day.on(sheet), STEP_NITROGEN.of(sheet, at)).all()?;
        Ok([lines.0.id(), lines.1.id()])
    });
    let each: Vec<Known<[LineId; 2]>> = each.collect();
    Ok(each.all()?.concat())
}

const fn above_nought(name: &'static str, symbol: &'static [&'static str]) -> FormulaCard {
    FormulaCard {
        name,
        result: "yes",
        text: "more than nothing",
        symbols: symbol,
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "any amount",
    }
}

static SEEDED: Many<Volume, bool> = Many {
    card: &above_nought("media moved in", &[]),
    run: |volumes| Ok(volumes.iter().any(|volume| volume.value > 0.0)),
};

static FED: Formula<(MassRate,), bool> =
    Formula { card: &above_nought("ammonia dosed", &["N"]), run: |(dosed,)| Ok(dosed.value > 0.0) };

/// Whether media of an established filter are moved in.
///
/// # Errors
/// A gap when the file does not say; of kind *said none* when it says that there are none.
pub fn is_seeded(sheet: Sheet<'_>) -> Known<Line<bool>> {
    let media = &sheet.design().start_up.media;
    if let Some(missing) = media.missing() {
        return Err(Gap::from(missing).into());
    }
    let volumes: Vec<Known<Line<Volume>>> =
        media.items().iter().map(|media| media.volume.on(sheet)).collect();
    sheet.fold(&SEEDED, &volumes.all()?)
}

/// Whether ammonia is dosed before the first animals come.
///
/// # Errors
/// A gap when the file does not say; of kind *said none* when it says that none is.
pub fn is_fed_first(sheet: Sheet<'_>) -> Known<Line<bool>> {
    sheet.work(&FED, (sheet.design().start_up.dosed.on(sheet)?,))
}
