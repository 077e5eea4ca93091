//! Hydraulics: pipes, fittings, pumps and where a pump meets its system.

use haulout_calc::hydraulics::branches::{Branch, Branches, flow_of_branch};
use haulout_calc::hydraulics::device::DEVICE_HEAD;
use haulout_calc::hydraulics::duty::DUTY_FLOW;
use haulout_calc::hydraulics::fittings::{FITTINGS_HEAD, fitting};
use haulout_calc::hydraulics::pipe::{
    FRICTION_FACTOR, FRICTION_FACTOR_LAMINAR, FRICTION_HEAD, REYNOLDS, VELOCITY,
};
use haulout_calc::hydraulics::pump::{HYDRAULIC_POWER, PumpCurve};
use haulout_calc::hydraulics::system::{DeviceLoss, PipeRun, SystemCurve, TOTAL_HEAD};
use haulout_quantity::Basis::{self, Published, Reported};
use haulout_quantity::Measure;
use haulout_quantity::si::{KinematicViscosity, Length, MassDensity, Ratio, Velocity, VolumeRate};
use std::sync::Arc;

use super::{Row, call, sheet};

const FLUIDS: (&str, Basis) = ("fluids 1.3.1, friction_factor(Re, eD, Method='Colebrook')", Published);
const FITTING: (&str, Basis) = (
    "fluids 1.3.1, entrance_sharp(method='Crane'), exit_normal(), K_swing_check_valve_Crane(D=.05), contraction_sharp(.063, .05)",
    Published,
);
const LINE: (&str, Basis) = (
    "fluids 1.3.1 with CoolProp 8.0.0: 10 m3/h of water at 20 °C in 20 m of 50 mm, roughness 1.5 µm",
    Published,
);
const CENGEL: (&str, Basis) = (
    "Çengel & Cimbala, Fluid Mechanics, example 8-7 (inputs), solved anew with g 9.81, density 998, viscosity 1.002e-3",
    Reported,
);
const REVIEWPE: (&str, Basis) =
    ("reviewpe.com, lecture problem 4.9.4: pump table against 35 ft + 0.002 Q2 (US gpm)", Reported);
const COURSE: (&str, Basis) = ("printed course problem on pipes, three digits, g 32.2 ft/s2", Reported);
const HAND: (&str, Basis) = ("closed form by hand", Published);
const FOOT: f64 = 0.3048;
const GPM: f64 = 6.309_019_64e-5;

fn factor(re: f64, relative: f64) -> f64 {
    let lengths = (Length::from_si(relative), Length::from_si(1.0));
    FRICTION_FACTOR.work((Ratio::from_si(re), lengths.0, lengths.1)).map_or(f64::NAN, Measure::si)
}

/// Velocity, Reynolds number, factor and head of a pipe.
fn pipe(flow: f64, bore: f64, length: f64, roughness: f64, viscosity: f64) -> Option<[f64; 4]> {
    let bore = Length::from_si(bore);
    let v = VELOCITY.work((VolumeRate::from_si(flow), bore)).ok()?;
    let re = REYNOLDS.work((v, bore, KinematicViscosity::from_si(viscosity))).ok()?;
    let f = FRICTION_FACTOR.work((re, Length::from_si(roughness), bore)).ok()?;
    let h = FRICTION_HEAD.work((f, Length::from_si(length), bore, v)).ok()?;
    Some([v.si(), re.si(), f.si(), h.si()])
}

fn of_pipe(at: usize, flow: f64, bore: f64, length: f64, roughness: f64, viscosity: f64) -> f64 {
    pipe(flow, bore, length, roughness, viscosity).map_or(f64::NAN, |all| all[at])
}

fn line(at: usize) -> f64 {
    of_pipe(at, 10.0 / 3600.0, 0.05, 20.0, 1.5e-6, 1.003_395_079_519_367e-6)
}

fn branch(at: usize, flow: f64, bore: f64) -> f64 {
    of_pipe(at, flow, bore, 36.0, 4.5e-5, 1.002e-3 / 998.0)
}

/// Flow of one of two branches, 40 mm and 80 mm, that take 30.012 L/s together.
fn branch_of_two(at: usize) -> f64 {
    let run = |bore: f64| PipeRun {
        bore: Length::from_si(bore),
        length: Length::from_si(36.0),
        roughness: Length::from_si(4.5e-5),
        friction_multiplier: Ratio::from_si(1.0),
        k_sum: Ratio::from_si(0.0),
    };
    let branches = [0.04, 0.08].map(|bore| Branch { runs: vec![run(bore)], devices: Vec::new() });
    let viscosity = KinematicViscosity::from_si(1.002e-3 / 998.0);
    let branches = Arc::new(Branches(branches.into()));
    flow_of_branch(VolumeRate::from_si(30.012e-3), viscosity, &branches, at).map_or(f64::NAN, Measure::si)
}

fn twenty_inch(at: usize) -> f64 {
    let cubic = FOOT * FOOT * FOOT;
    of_pipe(at, 4.0 * cubic, 20.0 * 0.0254, 10_560.0 * FOOT, 0.0005 * FOOT, 1.2291e-5 * FOOT * FOOT)
}

fn loss(name: &str) -> f64 {
    fitting(name).map_or(f64::NAN, |f| f.k)
}

fn system(lift: f64, runs: &[PipeRun], devices: &[DeviceLoss]) -> Option<SystemCurve> {
    SystemCurve::new(Length::from_si(lift), KinematicViscosity::from_si(1.31e-6), runs, devices).ok()
}

fn table() -> Option<PumpCurve> {
    let table = [(0.0, 100.0), (110.0, 90.0), (180.0, 80.0), (250.0, 60.0), (300.0, 40.0), (340.0, 20.0)];
    let points = table.map(|(q, h)| (VolumeRate::from_si(q * GPM), Length::from_si(h * FOOT)));
    PumpCurve::new(&points).ok()
}

/// The flow at which a pump meets 35 ft and 0.002 Q2, US gpm.
fn meets(pump: Option<PumpCurve>) -> f64 {
    let at = DeviceLoss { loss: Length::from_si(20.0 * FOOT), at: VolumeRate::from_si(100.0 * GPM) };
    let both = pump.zip(system(35.0 * FOOT, &[], &[at]));
    let flow = both.and_then(|(pump, system)| DUTY_FLOW.work((Arc::new(pump), Arc::new(system))).ok());
    flow.map_or(f64::NAN, |q| q.si() / GPM)
}

fn run(bore: f64, k: f64) -> PipeRun {
    PipeRun {
        bore: Length::from_si(bore),
        length: Length::from_si(300.0),
        roughness: Length::from_si(2.6e-4),
        friction_multiplier: Ratio::from_si(1.0),
        k_sum: Ratio::from_si(k),
    }
}

fn stepping_down() -> f64 {
    let system = system(0.0, &[run(0.6, 0.5), run(0.4, 1.24)], &[]);
    let head = system.and_then(|s| s.head_at(VolumeRate::from_si(0.5)).ok());
    head.map_or(f64::NAN, Measure::si)
}

fn between_points() -> f64 {
    let head = table().and_then(|pump| pump.head_at(VolumeRate::from_si(145.0 * GPM)).ok());
    head.map_or(f64::NAN, |h| h.si() / FOOT)
}

fn fittings(k: f64, v: f64) -> f64 {
    FITTINGS_HEAD.work((Ratio::from_si(k), Velocity::from_si(v))).map_or(f64::NAN, Measure::si)
}

fn device() -> f64 {
    let (loss, rate) = (Length::from_si(0.8), |m3h: f64| VolumeRate::from_si(m3h / 3600.0));
    DEVICE_HEAD.work((loss, rate(6.0), rate(12.0))).map_or(f64::NAN, Measure::si)
}

fn total() -> f64 {
    let [lift, pipe, fittings, devices] = [2.0, 0.796_201, 0.612_259, 0.0].map(Length::from_si);
    TOTAL_HEAD.work((lift, pipe, fittings, devices)).map_or(f64::NAN, Measure::si)
}

fn power() -> f64 {
    let density = MassDensity::from_si(998.207_150_467_943_7);
    let work = HYDRAULIC_POWER.work((density, VolumeRate::from_si(10.0 / 3600.0), Length::from_si(3.408_46)));
    work.map_or(f64::NAN, Measure::si)
}

fn laminar() -> f64 {
    FRICTION_FACTOR_LAMINAR.work((Ratio::from_si(1500.0),)).map_or(f64::NAN, Measure::si)
}

const fn colebrook(what: &'static str, work: fn() -> f64, expected: f64) -> Row {
    call("friction factor of a pipe", what, FLUIDS, work, (expected, "", 1e-12))
}

const fn k(what: &'static str, work: fn() -> f64, expected: f64) -> Row {
    call("", what, FITTING, work, (expected, "", 1e-3))
}

pub(super) const ROWS: &[Row] = &[
    colebrook("Re 1e5, ε/D 1e-4", || factor(1e5, 1e-4), 0.018513866077471648),
    colebrook("Re 1e5, smooth", || factor(1e5, 0.0), 0.01798977308427384),
    colebrook("Re 1e6, ε/D 1e-3", || factor(1e6, 1e-3), 0.019943465840476883),
    colebrook("Re 4600, ε/D 1e-3", || factor(4600.0, 1e-3), 0.03936917371268541),
    colebrook("Re 4000, ε/D 0.01", || factor(4000.0, 0.01), 0.049082269447899715),
    colebrook("Re 1e7, ε/D 0.05", || factor(1e7, 0.05), 0.07155298184086675),
    colebrook("Re 1e8, ε/D 1e-6", || factor(1e8, 1e-6), 0.00643255651969228),
    colebrook("Re 25000, ε/D 2e-4", || factor(2.5e4, 2e-4), 0.02500732395366603),
    colebrook("Re 3e5, ε/D 5e-3", || factor(3e5, 5e-3), 0.03068930541095297),
    call(
        "friction factor of laminar flow",
        "Re 1500",
        ("fluids 1.3.1, friction_laminar(1500.)", Published),
        laminar,
        (0.042666666666666665, "", 1e-14),
    ),
    sheet(
        "velocity in a pipe",
        "10 m3/h in 50 mm",
        LINE,
        &[10.0 / 3600.0, 0.05],
        (1.4147106052612919, "m/s", 1e-12),
    ),
    call("Reynolds number of a pipe", "that line", LINE, || line(1), (70496.19009189022, "", 1e-12)),
    call("friction factor of a pipe", "that line", LINE, || line(2), (0.019506441109582467, "", 1e-10)),
    call("friction head of a pipe", "that line", LINE, || line(3), (0.7962007446058236, "m", 1e-10)),
    call("head lost in fittings", "K 6 in that line", LINE, || fittings(6.0, line(0)), (0.612259, "m", 1e-5)),
    call("total head", "that line with 2 m of lift", LINE, total, (3.40846, "m", 1e-6)),
    call("hydraulic power", "that line", LINE, power, (92.6823, "W", 1e-5)),
    call(
        "head lost in fittings",
        "K 2.5 at 1.2 m/s",
        ("fluids 1.3.1, head_from_K(K=2.5, V=1.2)", Published),
        || fittings(2.5, 1.2),
        (0.18354891833602707, "m", 1e-12),
    ),
    k("K of a sharp entrance", || loss("entrance"), 0.5),
    k("K of an exit", || loss("exit"), 1.0),
    k("K of a swing check valve", || loss("check-valve"), 1.9065302100048698),
    k("K of a reducer", || loss("reducer"), 0.2388098962581063),
    call("velocity in a pipe", "narrow branch", CENGEL, || branch(0, 4.1514e-3, 0.04), (3.3036, "m/s", 5e-5)),
    call(
        "friction factor of a pipe",
        "narrow branch",
        CENGEL,
        || branch(2, 4.1514e-3, 0.04),
        (0.0220897, "", 2e-5),
    ),
    call("velocity in a pipe", "wide branch", CENGEL, || branch(0, 25.861e-3, 0.08), (5.1448, "m/s", 5e-5)),
    call(
        "friction factor of a pipe",
        "wide branch",
        CENGEL,
        || branch(2, 25.861e-3, 0.08),
        (0.0182155, "", 2e-5),
    ),
    call("Reynolds number of a pipe", "20 in, 4 ft3/s", COURSE, || twenty_inch(1), (248_625.0, "", 1e-3)),
    call("friction factor of a pipe", "20 in, 4 ft3/s", COURSE, || twenty_inch(2), (0.0173, "", 5e-3)),
    call(
        "friction head of a pipe",
        "20 in, 4 ft3/s, 10 560 ft",
        COURSE,
        || twenty_inch(3) / FOOT,
        (5.72, "ft", 5e-3),
    ),
    call(
        "head of a system at a flow",
        "two reservoirs and a pipe that steps down",
        ("university tutorial on two reservoirs, recomputed with Colebrook", Reported),
        stepping_down,
        (13.363, "m", 5e-4),
    ),
    call("flow at the duty point", "one pump", REVIEWPE, || meets(table()), (155.68, "US gpm", 5e-5)),
    call(
        "flow at the duty point",
        "two in series",
        REVIEWPE,
        || meets(table().map(|p| p.one_after_the_other(2))),
        (223.66, "US gpm", 5e-5),
    ),
    call(
        "flow at the duty point",
        "two side by side",
        REVIEWPE,
        || meets(table().map(|p| p.side_by_side(2))),
        (169.27, "US gpm", 5e-5),
    ),
    call(
        "head of the pump at a flow",
        "halfway between 90 and 80 ft",
        HAND,
        between_points,
        (85.0, "ft", 1e-12),
    ),
    call("head lost in a device", "0.8 m at 12 m3/h, read at 6 m3/h", HAND, device, (0.2, "m", 1e-12)),
    // (101 325 - 2 339.3) / (998.2 × 9.80665) = 10.1119 m of water; 3 m of lift and 1 m of loss off.
    sheet(
        "net positive suction head available",
        "open tank at sea level, 20 °C, lift 3 m, loss 1 m",
        HAND,
        &[101_325.0, 2_339.3, 998.2, 0.0, 3.0, 1.0],
        (6.111_933_795, "m", 1e-9),
    ),
    sheet("suction head to spare", "6.1 m against 2.5 m", HAND, &[6.1, 2.5], (3.6, "m", 1e-12)),
    sheet(
        "height left out of the static head",
        "1.15 m over 0.80 m, 0.20 m stated",
        HAND,
        &[0.35, 0.2],
        (0.15, "m", 1e-12),
    ),
    sheet("flow without the strongest pump", "5, 6 and 2 m3/h", HAND, &[5.0, 6.0, 2.0], (7.0, "m3/s", 1e-12)),
    sheet("turnover time", "24 m3 at 12 m3/h", HAND, &[24.0, 12.0 / 3600.0], (7200.0, "s", 1e-12)),
    sheet(
        "velocity at the grille",
        "6 m3/h through half of 0.04 m2",
        HAND,
        &[6.0 / 3600.0, 0.04, 0.5],
        (1.0 / 12.0, "m/s", 1e-12),
    ),
    sheet("greatest velocity", "of three runs", HAND, &[0.7, 1.9, 1.2], (1.9, "m/s", 0.0)),
    sheet(
        "turnover time by the label of the pump",
        "24 m3 at 12 m3/h",
        HAND,
        &[24.0, 12.0 / 3600.0],
        (7200.0, "s", 1e-12),
    ),
    sheet(
        "holding force of a blocked grille",
        "998.2 kg/m3 x 9.80665 m/s2 x 0.3 m x 0.04 m2",
        HAND,
        &[998.2, 0.3, 0.04],
        (117.467_976_36, "N", 1e-12),
    ),
    call(
        "two pumps side by side",
        "a pump beside its like",
        REVIEWPE,
        || meets(table().and_then(|p| p.beside(&p).ok())),
        (169.27, "US gpm", 5e-5),
    ),
    call(
        "two pumps in a row",
        "a pump behind its like",
        REVIEWPE,
        || meets(table().and_then(|p| p.behind(&p).ok())),
        (223.66, "US gpm", 5e-5),
    ),
    call("flow of a branch", "narrow one of two", CENGEL, || branch_of_two(0), (4.1514e-3, "m3/s", 5e-5)),
    call("flow of a branch", "wide one of two", CENGEL, || branch_of_two(1), (25.861e-3, "m3/s", 5e-5)),
    sheet("friction of a hose of its material", "twice", HAND, &[2.0, 3.0], (2.0, "", 0.0)),
];
