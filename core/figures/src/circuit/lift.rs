//! How high the water is lifted, from surface to surface, against the static head that is stated.

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::{About, Subject};
use haulout_quantity::si::Length;
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{All, Figure, FigureCard, Gap, GapKind, Known, Line, Sheet};

use super::circuit;
use super::returns::level_into;
use crate::pool::pool;
use crate::terms::DIFFERENCE;
use crate::water::spill::{HIGHER, drawn_from};

const fn card(
    id: &'static str,
    title: &'static str,
    unit: &'static str,
    us_unit: &'static str,
) -> FigureCard {
    FigureCard { id, title, about: About::Circuit, axes: &[], unit, us_unit, resolution: None }
}

/// Water level of the pool the circuit draws from to that of the pool or filter it lifts to, or to the mouth of a return that ends in the air.
pub static LIFT: Figure<Line<Length>> = Figure {
    card: &card("lift", "height from water to water", "m", "ft"),
    work: |sheet, at| {
        let from =
            drawn_from(sheet, at).and_then(|from| crate::level(sheet, &pool(sheet, from).levels.water));
        let (to, from) = (lifted_to(sheet, at), from).all()?;
        sheet.work(&DIFFERENCE, (to, from))
    },
};

static LEFT_OUT: Formula<(Length, Length), Length> = Formula {
    card: &FormulaCard {
        name: "height left out of the static head",
        result: "d",
        text: "max(0 m, z - h)",
        symbols: &["z", "h"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "any heights",
    },
    run: |(lift, head)| Ok((lift - head).max(Length::from_si(0.0))),
};

/// What of the lift the stated static head leaves out; nothing where it says more, as over an air break.
pub static LIFT_LEFT_OUT: Figure<Line<Length>> = Figure {
    card: &card("lift-left-out", "height that the static head leaves out", "mm", "in"),
    work: |sheet, at| {
        let lines = (LIFT.of(sheet, at), circuit(sheet, at).static_head.on(sheet)).all()?;
        sheet.work(&LEFT_OUT, lines)
    },
};

fn lifted_to(sheet: Sheet<'_>, at: Subject) -> Known<Line<Length>> {
    let own = circuit(sheet, at);
    let Some(to) = own.to.given() else { return Err(Gap::from(own.to.missing()).into()) };
    let design = sheet.design();
    if let Some(found) = design.filter_named(to.name()) {
        return crate::level(sheet, &design.filters.items()[found].levels.water);
    }
    let Some(back) = own.returns.items().iter().find(|back| back.id == to.name()) else {
        return crate::level(sheet, &pool(sheet, crate::pool::named(sheet, to)?).levels.water);
    };
    let (mouth, water) =
        (crate::level(sheet, &back.level), level_into(sheet, back)).all().map_err(|gaps| {
            gaps.and(Gap::at(GapKind::Absent, "where the circuit lifts to", to.seat().origin).into())
        })?;
    sheet.fold(&HIGHER, &[mouth, water])
}
