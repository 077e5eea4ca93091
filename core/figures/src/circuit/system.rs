//! What the pump of a circuit works against: static head, runs, devices clean or dirty.

use std::sync::{Arc, LazyLock};

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_calc::hydraulics::branches::{BRANCH_FLOW, Branch, Branches, Fork, flow_of_branch};
use haulout_calc::hydraulics::fittings::FITTINGS;
use haulout_calc::hydraulics::system::{DeviceLoss, PipeRun, SystemCurve};
use haulout_calc::water::{DENSITY, DYNAMIC_VISCOSITY, KINEMATIC_VISCOSITY};
use haulout_model::circuit::{Circuit, Device, Run};
use haulout_model::{About, State, Subject};
use haulout_quantity::Basis;
use haulout_quantity::si::{KinematicViscosity, Length, Ratio, VolumeRate};
use haulout_register::Value;
use haulout_sheet::{
    All, Assembly, Axis, Datum, Entry, Figure, FigureCard, Filter, Gap, GapKind, Known, Line, LineId, Sheet,
};

use super::duty::DELIVERED_FLOW;
use super::plan::{Place, places};
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
        range: "runs and devices in series, and branches that begin and end together",
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
        let viscosity = KinematicViscosity::take(viscosity);
        let forks = things(parts).filter_map(|part| part.downcast_ref::<Branches>());
        let forks = forks.map(|fork| Fork::new(fork, viscosity)).collect::<Result<Vec<_>, _>>()?;
        let Branch { runs, devices } = in_series(parts);
        let curve = SystemCurve::new(Length::take(head), viscosity, &runs, &devices)?;
        Ok(Arc::new(curve.with_forks(forks)))
    },
};

/// Runs and devices in a row.
static BRANCH: Assembly<Arc<Branch>> = Assembly {
    card: &construction("branch of a circuit", "runs and devices in a row", &[]),
    run: |parts| Ok(Arc::new(in_series(parts))),
};

/// Branches that begin together and end together.
static BESIDE: Assembly<Arc<Branches>> = Assembly {
    card: &construction("branches side by side", "branch beside branch", &[]),
    run: |parts| Ok(Arc::new(branches_of(parts))),
};

/// The flow, the viscosity, then the branches, the one in question first.
static FLOW_OF_BRANCH: Assembly<VolumeRate> = Assembly {
    card: &BRANCH_FLOW,
    run: |data| {
        let [flow, viscosity, branches @ ..] = data else {
            return Err(Refusal::new("a branch has a flow to take its part of"));
        };
        let branches = Arc::new(branches_of(branches));
        flow_of_branch(VolumeRate::take(flow), KinematicViscosity::take(viscosity), &branches, 0)
    },
};

type Thing = Arc<dyn std::any::Any + Send + Sync>;

fn things(parts: &[Datum]) -> impl Iterator<Item = &Thing> {
    parts.iter().filter_map(|part| if let Datum::Thing(thing) = part { Some(thing) } else { None })
}

pub(super) fn in_series(parts: &[Datum]) -> Branch {
    let runs = things(parts).filter_map(|part| part.downcast_ref::<PipeRun>().copied()).collect();
    let devices = things(parts).filter_map(|part| part.downcast_ref::<DeviceLoss>().copied()).collect();
    Branch { runs, devices }
}

fn branches_of(parts: &[Datum]) -> Branches {
    Branches(things(parts).filter_map(|part| part.downcast_ref::<Branch>().cloned()).collect())
}

static OF_HOSE: Formula<(Ratio, u16), Ratio> = Formula {
    card: &FormulaCard {
        name: "friction of a hose of its material",
        result: "m",
        text: "m_0",
        symbols: &["m_0", "material"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "definition",
        range: "any factor",
    },
    run: |(factor, _material)| Ok(factor),
};

/// A ribbed hose of which nothing more is said.
static RIBBED_HOSE: Value = Value::number(
    "factor on the friction of a ribbed hose",
    2.0,
    Basis::CommonPractice,
    "pond builders' practice: 1.5 to 3 times a smooth pipe of its bore",
);

/// Option of a run's material that is a ribbed hose.
const RIBBED: u16 = 3;

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
    let (mut runs, mut branched) = (Vec::new(), Vec::new());
    match circuit.runs.missing() {
        Some(missing) => runs.push(Err(Gap::from(missing).into())),
        None => {
            for place in places(circuit)? {
                match place {
                    Place::Alone(own) => runs.push(run(sheet, &circuit.runs.items()[own]).map(Line::id)),
                    Place::Beside(branches) => {
                        let lines: Vec<Known<LineId>> =
                            branches.iter().map(|b| branch(sheet, circuit, b).map(Line::id)).collect();
                        runs.push(lines.all().and_then(|l| sheet.assemble(&BESIDE, &l)).map(Line::id));
                        branched.extend(branches.into_iter().flatten());
                    }
                }
            }
        }
    }
    // No devices in line is common and does no harm to say; not saying is a gap, since a dirty screen may be the largest loss.
    let devices: Vec<Known<LineId>> = match circuit.devices.state() {
        State::None => Vec::new(),
        State::Given(devices) => {
            let whole = devices.iter().filter(|d| !branched.iter().any(|own| stands_in(circuit, d, *own)));
            whole.map(|d| device(sheet, d).map(Line::id)).collect()
        }
        State::Absent | State::Undecided => {
            circuit.devices.missing().map(|m| Err(Gap::from(m).into())).into_iter().collect()
        }
    };
    let lines: Vec<Known<LineId>> = ends.into_iter().chain(runs).chain(devices).collect();
    sheet.assemble(&TOGETHER, &lines.all()?)
}

/// Whether a device stands in a run; by names only.
pub(super) fn stands_in(circuit: &Circuit, device: &Device, own: usize) -> bool {
    device.run.name() == Some(circuit.runs.items()[own].id.as_str())
}

/// The runs of a branch, with the devices that stand in them.
pub(super) fn branch(sheet: Sheet<'_>, circuit: &Circuit, own: &[usize]) -> Known<Line<Arc<Branch>>> {
    let runs = own.iter().map(|i| run(sheet, &circuit.runs.items()[*i]).map(Line::id));
    let devices = circuit.devices.items().iter();
    let devices = devices.filter(|d| own.iter().any(|i| stands_in(circuit, d, *i)));
    let lines: Vec<Known<LineId>> = runs.chain(devices.map(|d| device(sheet, d).map(Line::id))).collect();
    sheet.assemble(&BRANCH, &lines.all()?)
}

/// The flow in one run of a circuit: all of it, or what its branch takes.
pub static RUN_FLOW: Figure<Line<VolumeRate>> = Figure {
    card: &FigureCard {
        id: "run-flow",
        title: "flow in the run",
        about: About::Run,
        axes: &[Axis::Filter],
        unit: "m3/h",
        us_unit: "gal(US)/min",
        resolution: None,
    },
    work: |sheet, at| {
        let nowhere = || Gap::of(GapKind::LeadsNowhere, "run", Vec::new());
        let (of, own) = sheet.design().run(at.index()).ok_or_else(nowhere)?;
        let circuit_at = Subject::nth(About::Circuit, of);
        let circuit = circuit(sheet, circuit_at);
        let own = circuit.runs.items().iter().position(|run| std::ptr::eq(run, own)).ok_or_else(nowhere)?;
        let flow = DELIVERED_FLOW.of(sheet, circuit_at)?;
        let Some(mut branches) = places(circuit)?.into_iter().find_map(|place| branches_with(place, own))
        else {
            return Ok(flow);
        };
        branches.sort_by_key(|branch| !branch.contains(&own));
        let lines = branches.iter().map(|b| branch(sheet, circuit, b).map(Line::id));
        let viscosity = viscosity(sheet, circuit_at).map(Line::id);
        let lines: Vec<Known<LineId>> = [Ok(flow.id()), viscosity].into_iter().chain(lines).collect();
        sheet.assemble(&FLOW_OF_BRANCH, &lines.all()?)
    },
};

/// The branches side by side that a run is among.
fn branches_with(place: Place, run: usize) -> Option<Vec<Vec<usize>>> {
    match place {
        Place::Beside(branches) if branches.iter().flatten().any(|own| *own == run) => Some(branches),
        _ => None,
    }
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

pub(super) fn run(sheet: Sheet<'_>, run: &Run) -> Known<Line<Arc<PipeRun>>> {
    let size = (run.bore.on(sheet), run.length.on(sheet)).all();
    let wall = (run.roughness.on(sheet), ribbed(sheet, run)).all();
    let ((bore, length), (roughness, ribbed), k) = (size, wall, coefficients(sheet, run)).all()?;
    sheet.construct(&RUN, (bore, length, roughness, ribbed, k))
}

/// The factor on friction: stated, or of a ribbed hose where the material says so and the file states no factor.
fn ribbed(sheet: Sheet<'_>, run: &Run) -> Known<Line<Ratio>> {
    if run.ribbed.is_given() {
        return run.ribbed.on(sheet);
    }
    let Ok(material) = run.material.on(sheet) else { return run.ribbed.on(sheet) };
    let factor = if sheet.option_of(material) == RIBBED {
        sheet.register(&RIBBED_HOSE, Some(material.id()))
    } else {
        run.ribbed.on(sheet)?
    };
    sheet.work(&OF_HOSE, (factor, material.option()))
}

/// The sum of K: stated outright, counted from fittings, or both, and every valve.
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
    parts.extend(run.valves.items().iter().map(|valve| valve.loss_coefficient.on(sheet)));
    sheet.fold(&NUMBERS, &parts.all()?)
}

pub(super) fn device(sheet: Sheet<'_>, device: &Device) -> Known<Line<Arc<DeviceLoss>>> {
    let loss = match sheet.case().filter {
        Filter::Clean => &device.clean,
        Filter::Dirty => &device.dirty,
    };
    let lines = (loss.on(sheet), device.at_flow.on(sheet)).all()?;
    sheet.construct(&DEVICE, lines)
}
