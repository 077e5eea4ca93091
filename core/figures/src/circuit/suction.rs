//! What presses the water into a pump that does not stand in it, at the lowest running level.

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_calc::hydraulics::branches::Branch;
use haulout_calc::hydraulics::suction::{NPSH_AVAILABLE, NPSH_SPARE};
use haulout_calc::hydraulics::system::SystemCurve;
use haulout_calc::water::{DENSITY, VAPOUR_PRESSURE};
use haulout_model::{About, Subject};
use haulout_quantity::si::{KinematicViscosity, Length, VolumeRate};
use haulout_quantity::{Basis, Dimension, Measure};
use haulout_register::Value;
use haulout_sheet::{
    All, Assembly, Axis, Case, Entry, Figure, FigureCard, Gap, GapKind, Known, LevelState, Line, LineId,
    Many, Sheet,
};

use super::circuit;
use super::duty::DELIVERED_FLOW;
use super::plan::{Place, places};
use super::system::{device, in_series, run, stands_in, viscosity};
use crate::pool::level_in_case;
use crate::pool::water::WARMEST;
use crate::terms::arithmetic;
use crate::water::spill::drawn_from;

/// 95 kPa.
static AIR_PRESSURE: Value = Value {
    what: "pressure of the air",
    value: 95_000.0,
    unit: "kPa",
    dimension: Dimension::PRESSURE,
    basis: Basis::CommonPractice,
    source: "standard atmosphere at some 540 m, or lower down on a day of low pressure; a site above that has less",
};

/// Option of a run's side that lies before the pump.
const SUCTION: u16 = 0;

const fn card(id: &'static str, title: &'static str) -> FigureCard {
    FigureCard {
        id,
        title,
        about: About::Circuit,
        axes: &[Axis::Filter],
        unit: "m",
        us_unit: "ft",
        resolution: None,
    }
}

/// Flow, viscosity, then runs and devices before the pump; the sides that say so are among the lines.
static LOSS: Assembly<Length> = Assembly {
    card: &FormulaCard {
        name: "loss before the pump",
        result: "h_s",
        text: "runs and devices on the suction side at the flow",
        symbols: &[],
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "Darcy-Weisbach with Colebrook-White; fittings by velocity heads; devices by the square of the flow",
        range: "runs and devices in series",
    },
    run: |data| {
        let [flow, viscosity, parts @ ..] = data else {
            return Err(Refusal::new("a loss needs a flow"));
        };
        let Branch { runs, devices } = in_series(parts);
        let curve =
            SystemCurve::new(Length::from_si(0.0), KinematicViscosity::take(viscosity), &runs, &devices)?;
        curve.head_at(VolumeRate::take(flow))
    },
};

/// Loss in what lies before the pump, at the delivered flow.
pub static SUCTION_LOSS: Figure<Line<Length>> = Figure {
    card: &card("suction-loss", "loss before the pump"),
    work: |sheet, at| {
        let ends = (DELIVERED_FLOW.of(sheet, at), viscosity(sheet, at)).all()?;
        let mut lines = vec![ends.0.id(), ends.1.id()];
        lines.extend(before_the_pump(sheet, at)?);
        sheet.assemble(&LOSS, &lines)
    },
};

/// The runs on the suction side with their devices, and the choices that put them there.
fn before_the_pump(sheet: Sheet<'_>, at: Subject) -> Known<Vec<LineId>> {
    let own = circuit(sheet, at);
    if let Some(missing) = own.runs.missing() {
        return Err(Gap::from(missing).into());
    }
    let (mut found, mut sides): (Vec<Known<LineId>>, usize) = (Vec::new(), 0);
    for place in places(own)? {
        let Place::Alone(which) = place else {
            let Place::Beside(branches) = place else { continue };
            for which in branches.into_iter().flatten() {
                let side = own.runs.items()[which].side.on(sheet)?;
                if sheet.option_of(side) == SUCTION {
                    let what = "suction pipes that lie side by side are not worked";
                    return Err(Gap::of(GapKind::OutOfRange, what, vec![side.id()]).into());
                }
                found.push(Ok(side.id()));
                sides += 1;
            }
            continue;
        };
        let stated = &own.runs.items()[which];
        let side = stated.side.on(sheet)?;
        found.push(Ok(side.id()));
        sides += 1;
        if sheet.option_of(side) != SUCTION {
            continue;
        }
        found.push(run(sheet, stated).map(Line::id));
        let devices = own.devices.items().iter().filter(|device| stands_in(own, device, which));
        found.extend(devices.map(|d| device(sheet, d).map(Line::id)));
    }
    let found = found.all()?;
    if sides == found.len() {
        // A pump beside its water always has a pipe before it.
        let what = "no run lies before the pump; the pipe from the water to the pump";
        return Err(Gap::at(GapKind::Absent, what, own.runs.seat().origin).into());
    }
    Ok(found)
}

/// Net positive suction head that is there at the lowest running level, the water at its warmest.
pub static SUCTION_HEAD: Figure<Line<Length>> = Figure {
    card: &card("suction-head", "suction head that is there (NPSH)"),
    work: |sheet, at| {
        let pool = drawn_from(sheet, at)?;
        let water = level_in_case(sheet.in_case(Case { level: LevelState::Low, ..sheet.case() }), pool);
        let eye = crate::level(sheet, &circuit(sheet, at).pump_level);
        let (water, eye, loss, warmest) =
            (water, eye, SUCTION_LOSS.of(sheet, at), WARMEST.of(sheet, pool)).all()?;
        let (vapour, density) =
            (sheet.work(&VAPOUR_PRESSURE, (warmest,)), sheet.work(&DENSITY, (warmest,))).all()?;
        let air = sheet.register(&AIR_PRESSURE, None);
        sheet.work(&NPSH_AVAILABLE, (air, vapour, density, water, eye, loss))
    },
};

static MORE: Many<Length, Length> = Many {
    card: &arithmetic("more of what pumps need", "NPSH_R", "max", &[]),
    run: |needs| Ok(needs.iter().copied().fold(needs[0], Length::max)),
};

/// Net positive suction head that the pump needs, as its maker states it; the greater where there is a second one.
pub static SUCTION_HEAD_NEEDED: Figure<Line<Length>> = Figure {
    card: &FigureCard { axes: &[], ..card("suction-head-needed", "suction head the pump needs (NPSH)") },
    work: |sheet, at| {
        let own = circuit(sheet, at);
        let (first, second) = (own.pump.npsh.on(sheet)?, &own.second_pump.pump.npsh);
        if !second.is_given() {
            return Ok(first);
        }
        sheet.fold(&MORE, &[first, second.on(sheet)?])
    },
};

/// What is left of the suction head when the pump has what it needs.
pub static SUCTION_SPARE: Figure<Line<Length>> = Figure {
    card: &card("suction-spare", "suction head to spare"),
    work: |sheet, at| {
        let lines = (SUCTION_HEAD.of(sheet, at), SUCTION_HEAD_NEEDED.of(sheet, at)).all()?;
        sheet.work(&NPSH_SPARE, lines)
    },
};

/// Whether the file says that the pump needs none: it stands in the water.
pub fn needs_none(sheet: Sheet<'_>, at: Subject) -> bool {
    circuit(sheet, at).pump.npsh.is_none()
}
