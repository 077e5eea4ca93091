//! What the pump of a circuit works against: static head, runs, devices clean or dirty.

use std::sync::{Arc, LazyLock};

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::hydraulics::fittings::FITTINGS;
use haulout_calc::hydraulics::system::{DeviceLoss, PipeRun, SystemCurve};
use haulout_calc::water::{DENSITY, DYNAMIC_VISCOSITY, KINEMATIC_VISCOSITY};
use haulout_model::circuit::{Device, Run};
use haulout_model::{About, State, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{KinematicViscosity, Length, Ratio, VolumeRate};
use haulout_register::Value;
use haulout_sheet::{
    All, Assembly, Axis, Entry, Figure, FigureCard, Filter, Gap, GapKind, Known, Line, LineId, Sheet,
};

use super::{circuit, served};
use crate::pool::water::TEMPERATURE;
use crate::terms::{NUMBERS, TIMES};

const fn construction(
    name: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
) -> FormulaCard {
    FormulaCard {
        name,
        result: "system",
        text,
        symbols,
        kind: Kind::Construction,
        basis: Basis::Published,
        source: "Darcy-Weisbach with Colebrook-White; fittings by velocity heads; devices by the square of the flow",
        range: "runs and devices in series, all passed by the same flow",
    }
}

static RUN: Formula<(Length, Length, Length, Ratio, Ratio), Arc<PipeRun>> = Formula {
    card: &construction("pipe run", "bore, length, roughness, factor, sum of K", &["D", "L", "ε", "m", "K"]),
    run: |(bore, length, roughness, friction_multiplier, k_sum)| {
        Ok(Arc::new(PipeRun { bore, length, roughness, friction_multiplier, k_sum }))
    },
};

static DEVICE: Formula<(Length, VolumeRate), Arc<DeviceLoss>> = Formula {
    card: &construction("device in line", "loss read at a flow", &["h", "Q"]),
    run: |(loss, at)| Ok(Arc::new(DeviceLoss { loss, at })),
};

/// Static head, viscosity, then runs, then devices.
static TOGETHER: Assembly<Arc<SystemCurve>> = Assembly {
    card: &construction("system curve", "static head, then runs and devices in series", &[]),
    run: |data| {
        let [head, viscosity, parts @ ..] = data else {
            return Err(Refusal::new("a system has a static head"));
        };
        let (mut runs, mut devices) = (Vec::new(), Vec::new());
        for part in parts {
            let haulout_sheet::Datum::Thing(thing) = part else {
                continue;
            };
            if let Some(run) = thing.downcast_ref::<PipeRun>() {
                runs.push(*run);
            } else if let Some(device) = thing.downcast_ref::<DeviceLoss>() {
                devices.push(*device);
            }
        }
        SystemCurve::new(Length::take(head), KinematicViscosity::take(viscosity), &runs, &devices)
            .map(Arc::new)
    },
};

/// Loss coefficients of the fittings, as register values in the order of the table they come from.
static COEFFICIENTS: LazyLock<Vec<Value>> =
    LazyLock::new(|| FITTINGS.iter().map(|f| Value::number(f.name, f.k, f.basis, f.source)).collect());

/// The system curve. Not a number, so not in the catalogue.
pub static SYSTEM: Figure<Line<Arc<SystemCurve>>> = Figure {
    card: &FigureCard {
        id: "system-curve",
        title: "system curve",
        about: About::Circuit,
        axes: &[Axis::Filter],
        unit: "",
        us_unit: "",
        resolution: None,
    },
    work,
};

fn work(sheet: Sheet<'_>, at: Subject) -> Known<Line<Arc<SystemCurve>>> {
    let circuit = circuit(sheet, at);
    let ends = [circuit.static_head.on(sheet).map(Line::id), viscosity(sheet, at).map(Line::id)];
    let runs = match circuit.runs.missing() {
        Some(missing) => vec![Err(Gap::from(missing).into())],
        None => circuit.runs.items().iter().map(|r| run(sheet, r).map(Line::id)).collect(),
    };
    // No devices in line is common and does no harm to say; not saying is a gap, since a dirty screen may be the largest loss.
    let devices = match circuit.devices.state() {
        State::None => Vec::new(),
        State::Given(devices) => devices.iter().map(|d| device(sheet, d).map(Line::id)).collect(),
        State::Absent | State::Undecided => {
            circuit.devices.missing().map(|m| Err(Gap::from(m).into())).into_iter().collect()
        }
    };
    let lines: Vec<Known<LineId>> = ends.into_iter().chain(runs).chain(devices).collect();
    sheet.assemble(&TOGETHER, &lines.all()?)
}

pub(super) fn viscosity(sheet: Sheet<'_>, at: Subject) -> Known<Line<KinematicViscosity>> {
    let Some(first) = served(sheet, at)?.into_iter().next() else {
        return Err(Gap::of(GapKind::Absent, "a basin the circuit joins", Vec::new()).into());
    };
    let temperature = TEMPERATURE.of(sheet, first?)?;
    let (density, dynamic) =
        (sheet.work(&DENSITY, (temperature,)), sheet.work(&DYNAMIC_VISCOSITY, (temperature,))).all()?;
    sheet.work(&KINEMATIC_VISCOSITY, (dynamic, density))
}

fn run(sheet: Sheet<'_>, run: &Run) -> Known<Line<Arc<PipeRun>>> {
    let size = (run.bore.on(sheet), run.length.on(sheet)).all();
    let wall = (run.roughness.on(sheet), run.ribbed.on(sheet)).all();
    let ((bore, length), (roughness, ribbed), k) = (size, wall, coefficients(sheet, run)).all()?;
    sheet.construct(&RUN, (bore, length, roughness, ribbed, k))
}

/// The sum of K: stated outright, counted from fittings, or both.
fn coefficients(sheet: Sheet<'_>, run: &Run) -> Known<Line<Ratio>> {
    let counted = run.fittings.items().iter().map(|(name, count)| {
        let Some(value) = COEFFICIENTS.iter().find(|v| v.what == name) else {
            let gap =
                Gap::at(GapKind::Unknown, format!("loss coefficient of \"{name}\""), count.seat().origin);
            return Err(gap.into());
        };
        sheet.work(&TIMES, (count.on(sheet)?, sheet.register(value, None)))
    });
    let mut parts: Vec<Known<Line<Ratio>>> = counted.collect();
    let fittings_said = !matches!(run.fittings.state(), State::Absent | State::Undecided);
    if run.loss_coefficients.is_given() || !fittings_said {
        parts.push(run.loss_coefficients.on(sheet));
    }
    sheet.fold(&NUMBERS, &parts.all()?)
}

fn device(sheet: Sheet<'_>, device: &Device) -> Known<Line<Arc<DeviceLoss>>> {
    let loss = match sheet.case().filter {
        Filter::Clean => &device.clean,
        Filter::Dirty => &device.dirty,
    };
    let lines = (loss.on(sheet), device.at_flow.on(sheet)).all()?;
    sheet.construct(&DEVICE, lines)
}
