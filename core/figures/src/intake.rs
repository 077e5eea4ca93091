//! Figures about an intake: velocity at its grille, holding force, distance to its partner, depth over it.

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_calc::hydraulics::intake as grille;
use haulout_calc::water::DENSITY;
use haulout_model::circuit::Intake;
use haulout_model::{About, Subject};
use haulout_quantity::si::{Area, Force, Length, Ratio, Velocity};
use haulout_quantity::{Basis, Measure};
use haulout_register::Value;
use haulout_sheet::{All, Axis, Figure, FigureCard, Gap, GapKind, Known, Line, Sheet};

use crate::circuit::duty::DELIVERED_FLOW;
use crate::pool::water::TEMPERATURE;
use crate::terms::DIFFERENCE;

/// Half the face is taken as blocked by leaves and shed skin.
pub(crate) static STILL_OPEN: Value = Value::number(
    "share of the grille still open",
    0.5,
    Basis::CommonPractice,
    "intakes are judged with half the grille blocked",
);

pub(crate) static DISTANCE: Formula<(Length, Length, Length, Length), Length> = Formula {
    card: &FormulaCard {
        name: "distance in plan",
        result: "d",
        text: "sqrt((x_1 - x_2)^2 + (y_1 - y_2)^2)",
        symbols: &["x_1", "y_1", "x_2", "y_2"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "Pythagoras",
        range: "any two places",
    },
    run: |(x1, y1, x2, y2)| {
        let (dx, dy) = ((x1 - x2).value, (y1 - y2).value);
        Ok(Length::from_si((dx * dx + dy * dy).sqrt()))
    },
};

fn intake(sheet: Sheet<'_>, at: Subject) -> Option<&Intake> {
    sheet.design().intake(at.index()).map(|(_, intake)| intake)
}

fn known(sheet: Sheet<'_>, at: Subject) -> Known<&Intake> {
    intake(sheet, at).ok_or_else(|| Gap::of(GapKind::LeadsNowhere, "intake", Vec::new()).into())
}

const fn card(
    id: &'static str,
    title: &'static str,
    axes: &'static [Axis],
    unit: &'static str,
    us_unit: &'static str,
) -> FigureCard {
    FigureCard { id, title, about: About::Intake, axes, unit, us_unit, resolution: None }
}

/// Velocity at the grille when the partner is blocked and half of this grille too.
pub static GRILLE_VELOCITY: Figure<Line<Velocity>> = Figure {
    card: &card(
        "grille-velocity",
        "velocity at the half-blocked grille, partner blocked",
        &[Axis::Filter],
        "m/s",
        "ft/s",
    ),
    work: |sheet, at| {
        let area: Known<Line<Area>> = known(sheet, at)?.area.on(sheet);
        let circuit = sheet.design().circuit_of_intake(at.index()).unwrap_or(usize::MAX);
        let flow = DELIVERED_FLOW.of(sheet, Subject::nth(About::Circuit, circuit));
        let (flow, area) = (flow, area).all()?;
        let open: Line<Ratio> = sheet.register(&STILL_OPEN, None);
        sheet.work(&grille::APPROACH_VELOCITY, (flow, area, open))
    },
};

/// Force on something that seals the grille.
pub static HOLDING_FORCE: Figure<Line<Force>> = Figure {
    card: &card("holding-force", "holding force of the blocked grille", &[], "N", "lbf"),
    work: |sheet, at| {
        let own = known(sheet, at)?;
        let density = pool_of(sheet, own).and_then(|pool| TEMPERATURE.of(sheet, pool));
        let (temperature, head, area) = (density, own.head.on(sheet), own.area.on(sheet)).all()?;
        sheet.work(&grille::HOLDING_FORCE, (sheet.work(&DENSITY, (temperature,))?, head, area))
    },
};

/// Distance to the partner, in plan.
pub static PARTNER_DISTANCE: Figure<Line<Length>> = Figure {
    card: &card("partner-distance", "distance to the partner intake", &[], "m", "ft"),
    work: |sheet, at| {
        let own = known(sheet, at)?;
        let partner = partner(sheet, own)?;
        let ([x1, y1], [x2, y2]) = (&own.at, &partner.at);
        let lines = (x1.on(sheet), y1.on(sheet), x2.on(sheet), y2.on(sheet)).all()?;
        sheet.work(&DISTANCE, lines)
    },
};

/// Water over the grille.
pub static COVER: Figure<Line<Length>> = Figure {
    card: &card("water-over-intake", "water over the intake", &[Axis::Level], "mm", "in"),
    work: |sheet, at| {
        let own = known(sheet, at)?;
        let water = pool_of(sheet, own).and_then(|pool| crate::pool::level_in_case(sheet, pool));
        sheet.work(&DIFFERENCE, (water, crate::level(sheet, &own.level)).all()?)
    },
};

/// Widest opening of the grille.
pub static APERTURE: Figure<Line<Length>> = Figure {
    card: &card("intake-aperture", "aperture of the grille", &[], "mm", "in"),
    work: |sheet, at| known(sheet, at)?.aperture.on(sheet),
};

/// Head that can act on the blocked grille.
pub static HEAD: Figure<Line<Length>> = Figure {
    card: &card("head-on-intake", "head on the blocked grille", &[], "m", "ft"),
    work: |sheet, at| known(sheet, at)?.head.on(sheet),
};

fn partner<'s>(sheet: Sheet<'s>, own: &Intake) -> Known<&'s Intake> {
    let Some(reference) = own.partner.given() else { return Err(Gap::from(own.partner.missing()).into()) };
    let design = sheet.design();
    let found = design.intake_named(reference.name()).and_then(|at| design.intake(at)).map(|(_, i)| i);
    found.filter(|i| i.id != own.id).ok_or_else(|| {
        let what = format!("there is no other intake \"{}\"", reference.name());
        Gap::at(GapKind::LeadsNowhere, what, reference.seat().origin).into()
    })
}

fn pool_of(sheet: Sheet<'_>, own: &Intake) -> Known<Subject> {
    let Some(reference) = own.pool.given() else { return Err(Gap::from(own.pool.missing()).into()) };
    crate::pool::named(sheet, reference)
}
