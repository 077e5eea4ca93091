//! Figures about a return: its flow, whether a siphon can form, how near it is to an intake, how even its header is.

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::hydraulics::header::{HEADER_LOSS, HOLE_LOSS};
use haulout_model::circuit::{Circuit, Intake};
use haulout_model::returns::Return;
use haulout_model::{About, State, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{Length, Ratio, VolumeRate};
use haulout_sheet::{All, Axis, Figure, FigureCard, Gap, GapKind, Known, Line, Sheet};

use super::system::viscosity;
use crate::barrier::opening::LEAST;
use crate::intake::DISTANCE;
use crate::item::said_none;
use crate::pool::pool;
use crate::terms::DIFFERENCE;
use crate::water::overflow::of_return;

const fn pick(name: &'static str, text: &'static str, symbols: &'static [&'static str]) -> FormulaCard {
    FormulaCard {
        name,
        result: "yes",
        text,
        symbols,
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "stated values",
    }
}

/// Option of a return that ends under the water.
const UNDER: u16 = 1;

static DRAWS_BACK: Formula<(u16, Length, Length), bool> = Formula {
    card: &pick(
        "a stopped pump can draw water back",
        "it ends under the water, and that water lies higher than the water it was drawn from",
        &["ends", "z_into", "z_from"],
    ),
    run: |(ends, into, from)| Ok(ends == UNDER && into > from),
};

static NO_BREAK: Formula<(bool,), bool> =
    Formula { card: &pick("a siphon break", "no, as the file says", &["said"]), run: |(said,)| Ok(said) };

static RATIO: Formula<(Length, Length), Ratio> = Formula {
    card: &FormulaCard {
        name: "head of the holes against head of the header",
        result: "r",
        text: "h_hole / h_header",
        symbols: &["h_hole", "h_header"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "a header that loses anything",
    },
    run: |(hole, header)| {
        if header.value <= 0.0 {
            return Err(Refusal::new("the header loses no head: check its length"));
        }
        Ok(hole / header)
    },
};

const fn card(
    id: &'static str,
    title: &'static str,
    axes: &'static [Axis],
    unit: &'static str,
    us_unit: &'static str,
) -> FigureCard {
    FigureCard { id, title, about: About::Return, axes, unit, us_unit, resolution: None }
}

/// The return of a subject, with its circuit.
fn known(sheet: Sheet<'_>, at: Subject) -> Known<(Subject, &Circuit, &Return)> {
    let found = sheet.design().return_at(at.index());
    let (circuit, own) = found.ok_or_else(|| Gap::of(GapKind::LeadsNowhere, "return", Vec::new()))?;
    Ok((Subject::nth(About::Circuit, circuit), &sheet.design().circuits.items()[circuit], own))
}

/// What comes out of it.
pub static RETURN_FLOW: Figure<Line<VolumeRate>> = Figure {
    card: &card("return-flow", "flow of the return", &[Axis::Filter], "m3/h", "gal(US)/min"),
    work: |sheet, at| {
        let (circuit_at, circuit, own) = known(sheet, at)?;
        of_return(sheet, circuit_at, circuit, own)
    },
};

/// The level of the water a return ends in.
pub(super) fn level_into(sheet: Sheet<'_>, own: &Return) -> Known<Line<Length>> {
    let Some(into) = own.into.given() else { return Err(Gap::from(own.into.missing()).into()) };
    let design = sheet.design();
    if let Some(found) = design.filter_named(into.name()) {
        return crate::level(sheet, &design.filters.items()[found].levels.water);
    }
    crate::level(sheet, &pool(sheet, crate::pool::named(sheet, into)?).levels.water)
}

/// Whether a stopped pump can draw water back through it.
///
/// # Errors
/// A gap where its end or either water level is not stated.
pub fn draws_back(sheet: Sheet<'_>, at: Subject) -> Known<Line<bool>> {
    let (_, circuit, own) = known(sheet, at)?;
    let from = match circuit.from.given() {
        Some(from) => crate::pool::named(sheet, from),
        None => Err(Gap::from(circuit.from.missing()).into()),
    };
    let from = from.and_then(|from| crate::level(sheet, &pool(sheet, from).levels.water));
    let (ends, into, from) = (own.ends.on(sheet), level_into(sheet, own), from).all()?;
    sheet.work(&DRAWS_BACK, (ends.option(), into, from))
}

/// How far its siphon break lies under the water it ends in; where the file says that there is none, a no with its place.
///
/// # Errors
/// A gap where the break or the water level is not stated.
pub fn break_depth(sheet: Sheet<'_>, at: Subject) -> Known<Result<Line<Length>, Line<bool>>> {
    let (_, _, own) = known(sheet, at)?;
    if matches!(own.siphon_break.state(), State::None) {
        let said = said_none(sheet, own.siphon_break.seat().origin);
        return sheet.work(&NO_BREAK, (said,)).map(Err);
    }
    let lines = (level_into(sheet, own), crate::level(sheet, &own.siphon_break)).all()?;
    sheet.work(&DIFFERENCE, lines).map(Ok)
}

/// Intakes that stand in the pool a return ends in.
fn intakes_beside<'s>(sheet: Sheet<'s>, own: &'s Return) -> impl Iterator<Item = &'s Intake> {
    let into = own.into.name();
    sheet.design().intakes().filter(move |i| into.is_some() && i.pool.name() == into)
}

/// Whether there is an intake in the water it ends in; by names only.
pub fn has_intake_beside(sheet: Sheet<'_>, at: Subject) -> bool {
    known(sheet, at).is_ok_and(|(_, _, own)| intakes_beside(sheet, own).next().is_some())
}

/// Distance to the nearest intake in the same pool, in plan.
pub static INTAKE_DISTANCE: Figure<Line<Length>> = Figure {
    card: &card("return-to-intake", "distance from the return to the nearest intake", &[], "m", "ft"),
    work: |sheet, at| {
        let (_, _, own) = known(sheet, at)?;
        let [x, y] = &own.at;
        let (x, y) = (x.on(sheet), y.on(sheet)).all()?;
        let to = |intake: &Intake| {
            let (u, v) = (intake.at[0].on(sheet), intake.at[1].on(sheet)).all()?;
            sheet.work(&DISTANCE, (x, y, u, v))
        };
        let each: Vec<Known<Line<Length>>> = intakes_beside(sheet, own).map(to).collect();
        sheet.fold(&LEAST, &each.all()?)
    },
};

/// Whether its header is asked about: where one is stated, and where it feeds a filter unless the file says that there is
/// none.
pub fn header_is_asked(sheet: Sheet<'_>, at: Subject) -> bool {
    known(sheet, at).is_ok_and(|(_, _, own)| {
        let filter = own.into.name().is_some_and(|name| sheet.design().filter_named(name).is_some());
        let stated = own.header.bore.is_given() || own.header.holes.is_given();
        stated || (filter && !own.header.bore.is_none())
    })
}

/// Head lost in the holes of its header against head lost along it.
pub static HEADER_EVENNESS: Figure<Line<Ratio>> = Figure {
    card: &card("header-evenness", "loss of the holes against loss of the header", &[Axis::Filter], "", ""),
    work: |sheet, at| {
        let (circuit_at, _, own) = known(sheet, at)?;
        let header = &own.header;
        let holes = (header.holes.on(sheet), header.hole_bore.on(sheet)).all();
        let pipe = (header.bore.on(sheet), header.length.on(sheet)).all();
        let water = (RETURN_FLOW.of(sheet, at), viscosity(sheet, circuit_at)).all();
        let ((holes, hole), (bore, length), (flow, viscosity)) = (holes, pipe, water).all()?;
        let hole = sheet.work(&HOLE_LOSS, (flow, holes, hole))?;
        sheet.work(&RATIO, (hole, sheet.work(&HEADER_LOSS, (flow, bore, length, viscosity))?))
    },
};
