//! The system a pump works against: static head, pipes, fittings and devices, as head at a flow.

use std::sync::Arc;

use haulout_quantity::Basis;
use haulout_quantity::si::{KinematicViscosity, Length, Ratio, VolumeRate};
use uom::si::length::meter;

use super::branches::Fork;
use super::pipe::{LAMINAR_TO, TURBULENT_FROM, friction_factor, relative_roughness};
use super::{G, above_zero, finite, not_below_zero};
use crate::formula::{Formula, FormulaCard, Kind, Refusal};

/// A pipe of one bore with its fittings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PipeRun {
    /// Bore, not trade size.
    pub bore: Length,
    /// Length.
    pub length: Length,
    /// Roughness ε.
    pub roughness: Length,
    /// 1 for pipe; 1.5 to 3 for a ribbed hose (common practice).
    pub friction_multiplier: Ratio,
    /// Sum of K of the fittings of this bore.
    pub k_sum: Ratio,
}

/// A device known by its loss at one flow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DeviceLoss {
    /// Loss at that flow.
    pub loss: Length,
    /// The flow it is stated at.
    pub at: VolumeRate,
}

/// Everything one flow passes through, checked once.
#[derive(Debug, Clone, PartialEq)]
pub struct SystemCurve {
    static_head: f64,
    runs: Vec<Run>,
    /// Head of all devices over the square of the flow, s²/m⁵.
    device_square: f64,
    /// Where the flow splits and joins again.
    forks: Vec<Fork>,
}

/// A run, ready to be worked: h = friction × f(Re) × Q² + square × Q², Re = reynolds × Q.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Run {
    reynolds: f64,
    relative_roughness: f64,
    friction: f64,
    square: f64,
}

impl SystemCurve {
    /// A system from its parts, in a row, all passed by the same flow.
    ///
    /// The static head is from surface to surface (or to the open outlet) and may be negative, downhill.
    ///
    /// # Errors
    /// A [`Refusal`] for numbers no formula takes, and for pipes rougher than the Colebrook equation knows.
    pub fn new(
        static_head: Length,
        viscosity: KinematicViscosity,
        runs: &[PipeRun],
        devices: &[DeviceLoss],
    ) -> Result<Self, Refusal> {
        let nu = above_zero(viscosity.value, "the kinematic viscosity")?;
        Ok(SystemCurve {
            static_head: finite(static_head.value, "the static head")?,
            runs: runs.iter().map(|run| Run::new(run, nu)).collect::<Result<_, _>>()?,
            device_square: devices.iter().map(square_of).sum::<Result<f64, Refusal>>()?,
            forks: Vec::new(),
        })
    }

    /// The same with places where the flow splits and joins again.
    #[must_use]
    pub fn with_forks(mut self, forks: Vec<Fork>) -> Self {
        self.forks = forks;
        self
    }

    /// Head the system asks for at a flow.
    ///
    /// # Errors
    /// For flows below zero or not numbers.
    pub fn head_at(&self, flow: VolumeRate) -> Result<Length, Refusal> {
        let q = not_below_zero(flow.value, "the flow")?;
        Ok(Length::new::<meter>(finite(self.head(q), "the head of the system")?))
    }

    /// Head (m) at a flow (m³/s, not below zero).
    pub(crate) fn head(&self, q: f64) -> f64 {
        let pipes: f64 = self.runs.iter().map(|run| run.head(q)).sum();
        let forks: f64 = self.forks.iter().map(|fork| fork.head(q)).sum();
        self.static_head + pipes + self.device_square * q * q + forks
    }

    /// Flows (m³/s) at which some run changes its regime, in no order.
    pub(crate) fn kinks(&self) -> impl Iterator<Item = f64> + '_ {
        let runs =
            self.runs.iter().flat_map(|run| [LAMINAR_TO / run.reynolds, TURBULENT_FROM / run.reynolds]);
        runs.chain(self.forks.iter().flat_map(Fork::kinks))
    }
}

impl Run {
    fn new(run: &PipeRun, nu: f64) -> Result<Self, Refusal> {
        let relative_roughness = relative_roughness(run.roughness, run.bore)?;
        let d = run.bore.value;
        let length = not_below_zero(run.length.value, "the length of the pipe")?;
        let k = not_below_zero(run.k_sum.value, "the sum of K of the fittings")?;
        let m = run.friction_multiplier.value;
        if !(m >= 1.0 && m.is_finite()) {
            return Err(Refusal::new(format!(
                "a hose is given {m} times the friction of a pipe; write 1 or more"
            )));
        }
        let area = std::f64::consts::PI * d * d / 4.0;
        let square = k / (2.0 * G * area * area);
        let friction = m * length / d / (2.0 * G * area * area);
        Ok(Run {
            reynolds: above_zero(d / (area * nu), "the Reynolds number of the pipe")?,
            relative_roughness,
            friction: finite(friction, "the friction of the pipe")?,
            square: finite(square, "the loss of the fittings")?,
        })
    }

    fn head(&self, q: f64) -> f64 {
        let re = self.reynolds * q;
        // At rest the friction factor is without bound, but the head it leads to is nought.
        let f = if re > 0.0 { friction_factor(re, self.relative_roughness) } else { 0.0 };
        (self.friction * f + self.square) * q * q
    }
}

fn square_of(device: &DeviceLoss) -> Result<f64, Refusal> {
    let h = not_below_zero(device.loss.value, "the stated loss of the device")?;
    let q = above_zero(device.at.value, "the flow at which the loss of the device is stated")?;
    finite(h / (q * q), "the loss of the device over the square of its flow")
}

/// Total head from its four parts.
pub static TOTAL_HEAD: Formula<(Length, Length, Length, Length), Length> = Formula {
    card: &FormulaCard {
        name: "total head",
        result: "H",
        text: "h_s + h_f + h_m + h_d",
        symbols: &["h_s", "h_f", "h_m", "h_d"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "energy equation: static head from surface to surface, friction, fittings (the exit among them), devices",
        range: "steady flow; the velocity head at an outlet is counted once, as the K of the exit",
    },
    run: |(lift, friction, fittings, devices)| {
        let sum = finite(lift.value, "the static head")?
            + not_below_zero(friction.value, "the friction head")?
            + not_below_zero(fittings.value, "the head lost in fittings")?
            + not_below_zero(devices.value, "the head lost in devices")?;
        Ok(Length::new::<meter>(finite(sum, "the total head")?))
    },
};

/// Head a whole system asks for at a flow.
pub static SYSTEM_HEAD: Formula<(Arc<SystemCurve>, VolumeRate), Length> = Formula {
    card: &FormulaCard {
        name: "head of a system at a flow",
        result: "H",
        text: "static head + friction, fittings and devices of each run at the flow",
        symbols: &["system", "Q"],
        kind: Kind::Search,
        basis: Basis::Reported,
        source: "Darcy-Weisbach with the Colebrook equation (Clamond, Ind. Eng. Chem. Res. 48 (2009) 3665)",
        range: "runs in a row or in branches that join again, full bores",
    },
    run: |(system, flow)| system.head_at(flow),
};
