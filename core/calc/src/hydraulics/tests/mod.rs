//! Outside checks, properties and attacks for the whole of hydraulics; the source of each value stands beside it.

mod curves;
mod pieces;

use haulout_quantity::si::{KinematicViscosity, Length, Ratio, Velocity, Volume, VolumeRate};
use uom::si::{
    kinematic_viscosity::square_meter_per_second, length::meter, mass_density::kilogram_per_cubic_meter,
    ratio::ratio, velocity::meter_per_second, volume::cubic_meter, volume_rate::cubic_meter_per_second,
};

use super::device::DEVICE_HEAD;
use super::duty::{DUTY_FLOW, Duty, duty_points};
use super::fittings::{FITTINGS, FITTINGS_HEAD, fitting};
use super::pipe::*;
use super::pump::*;
use super::system::*;
use super::turnover::{LABEL_TURNOVER, TURNOVER};

const FOOT: f64 = 0.3048;
const US_GPM: f64 = 6.309_019_64e-5;

fn m(x: f64) -> Length {
    Length::new::<meter>(x)
}
fn rate(x: f64) -> VolumeRate {
    VolumeRate::new::<cubic_meter_per_second>(x)
}
fn nu(x: f64) -> KinematicViscosity {
    KinematicViscosity::new::<square_meter_per_second>(x)
}
fn one(x: f64) -> Ratio {
    Ratio::new::<ratio>(x)
}
fn speed(x: f64) -> Velocity {
    Velocity::new::<meter_per_second>(x)
}
fn close(have: f64, expected: f64, relative: f64) {
    assert!((have - expected).abs() <= relative * expected.abs(), "{have} against {expected}");
}
fn run(bore: f64, length: f64, roughness: f64, k: f64) -> PipeRun {
    PipeRun {
        bore: m(bore),
        length: m(length),
        roughness: m(roughness),
        friction_multiplier: one(1.0),
        k_sum: one(k),
    }
}
fn factor(re: f64, relative: f64) -> f64 {
    FRICTION_FACTOR.work((one(re), m(relative), m(1.0))).unwrap().value
}
/// Velocity, Reynolds number, friction factor and friction head of a pipe, piece by piece.
fn chain(q: f64, bore: f64, length: f64, roughness: f64, viscosity: f64) -> (f64, f64, f64, f64) {
    let v = VELOCITY.work((rate(q), m(bore))).unwrap();
    let re = REYNOLDS.work((v, m(bore), nu(viscosity))).unwrap();
    let f = FRICTION_FACTOR.work((re, m(roughness), m(bore))).unwrap();
    let h = FRICTION_HEAD.work((f, m(length), m(bore), v)).unwrap();
    (v.value, re.value, f.value, h.value)
}
/// A curve from flows in L/s and heads in m.
fn curve(points: &[(f64, f64)]) -> PumpCurve {
    let points: Vec<_> = points.iter().map(|&(q, h)| (rate(q / 1000.0), m(h))).collect();
    PumpCurve::new(&points).unwrap()
}
/// A system of a static head and a loss (m) at 1 L/s.
fn square_system(lift: f64, loss: f64) -> SystemCurve {
    let device = DeviceLoss { loss: m(loss), at: rate(0.001) };
    SystemCurve::new(m(lift), nu(1e-6), &[], &[device]).unwrap()
}
fn litres(duty: &Duty) -> Vec<f64> {
    match duty {
        Duty::One(point) => vec![point.flow.value * 1000.0],
        Duty::Several(points) => points.iter().map(|point| point.flow.value * 1000.0).collect(),
        Duty::None | Duty::BeyondCurve => Vec::new(),
    }
}
