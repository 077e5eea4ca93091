//! The greatest velocity in any run of a circuit.

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_calc::hydraulics::pipe::VELOCITY;
use haulout_model::{About, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::Velocity;
use haulout_sheet::{All, Axis, Figure, FigureCard, Gap, Known, Line, Many};

use super::{circuit, system::RUN_FLOW};

static FASTEST: Many<Velocity, Velocity> = Many {
    card: &FormulaCard {
        name: "greatest velocity",
        result: "v_max",
        text: "max",
        symbols: &[],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "one run or more",
    },
    run: |velocities| {
        let faster = |a: Velocity, b: Velocity| if b > a { b } else { a };
        velocities.iter().copied().reduce(faster).ok_or_else(|| Refusal::new("the circuit has no runs"))
    },
};

/// Velocity in the narrowest run.
pub static GREATEST_VELOCITY: Figure<Line<Velocity>> = Figure {
    card: &FigureCard {
        id: "greatest-velocity",
        title: "greatest velocity in the pipes",
        about: About::Circuit,
        axes: &[Axis::Filter],
        unit: "m/s",
        us_unit: "ft/s",
        resolution: None,
    },
    work: |sheet, at| {
        let runs = &circuit(sheet, at).runs;
        if let Some(missing) = runs.missing() {
            return Err(Gap::from(missing).into());
        }
        let earlier = sheet.design().circuits.items()[..at.index()].iter().map(|c| c.runs.items().len());
        let first: usize = earlier.sum();
        let each = runs.items().iter().enumerate().map(|(i, run)| {
            let flow = RUN_FLOW.of(sheet, Subject::nth(About::Run, first + i));
            sheet.work(&VELOCITY, (flow, run.bore.on(sheet)).all()?)
        });
        let each: Vec<Known<Line<Velocity>>> = each.collect();
        sheet.fold(&FASTEST, &each.all()?)
    },
};
