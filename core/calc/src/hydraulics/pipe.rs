//! Flow in a full round pipe: velocity, Reynolds number, friction factor, friction head.

use haulout_quantity::Basis;
use haulout_quantity::si::{KinematicViscosity, Length, Ratio, Velocity, VolumeRate};
use uom::si::{length::meter, ratio::ratio, velocity::meter_per_second};

use super::{G, above_zero, finite, not_below_zero};
use crate::formula::{Formula, FormulaCard, Kind, Refusal};

/// Upper end of laminar flow in this room.
pub const LAMINAR_TO: f64 = 2000.0;
/// Lower end of the Colebrook equation in this room.
pub const TURBULENT_FROM: f64 = 4000.0;
/// Roughest pipe of the Colebrook equation, ε / D.
pub const ROUGHEST: f64 = 0.05;

/// Mean velocity from flow and bore.
pub static VELOCITY: Formula<(VolumeRate, Length), Velocity> = Formula {
    card: &FormulaCard {
        name: "velocity in a pipe",
        result: "v",
        text: "4 × Q / (pi × D^2)",
        symbols: &["Q", "D"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "continuity",
        range: "full round bore; the bore itself, not the trade size",
    },
    run: |(flow, bore)| {
        let q = not_below_zero(flow.value, "the flow")?;
        let d = above_zero(bore.value, "the bore of the pipe")?;
        let v = 4.0 * q / (std::f64::consts::PI * d * d);
        Ok(Velocity::new::<meter_per_second>(finite(v, "the velocity")?))
    },
};

/// Reynolds number of a pipe.
pub static REYNOLDS: Formula<(Velocity, Length, KinematicViscosity), Ratio> = Formula {
    card: &FormulaCard {
        name: "Reynolds number of a pipe",
        result: "Re",
        text: "v × D / ν",
        symbols: &["v", "D", "ν"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "definition",
        range: "full round bore",
    },
    run: |(velocity, bore, viscosity)| {
        let v = not_below_zero(velocity.value, "the velocity")?;
        let d = above_zero(bore.value, "the bore of the pipe")?;
        let nu = above_zero(viscosity.value, "the kinematic viscosity")?;
        Ok(Ratio::new::<ratio>(finite(v * d / nu, "the Reynolds number")?))
    },
};

/// Friction factor (Darcy) of laminar flow.
pub static FRICTION_FACTOR_LAMINAR: Formula<(Ratio,), Ratio> = Formula {
    card: &FormulaCard {
        name: "friction factor of laminar flow",
        result: "f",
        text: "64 / Re",
        symbols: &["Re"],
        kind: Kind::Closed,
        basis: Basis::Reported,
        source: "Hagen-Poiseuille law as reported by fluids 1.3.1, friction_laminar",
        range: "Reynolds numbers above 0 up to 2000",
    },
    run: |(reynolds,)| {
        let re = above_zero(reynolds.value, "the Reynolds number")?;
        if re > LAMINAR_TO {
            return Err(Refusal::new(format!(
                "at a Reynolds number of {re:.0} the flow is not laminar (2000)"
            )));
        }
        Ok(Ratio::new::<ratio>(64.0 / re))
    },
};

/// Friction factor (Darcy) from Reynolds number, roughness and bore, in every regime.
///
/// From 4000 on the Colebrook-White equation is solved to the last digits; an explicit approximation would leave up
/// to 2 % on the table. Below 2000 it is 64/Re. In between neither holds and real flow switches to and fro; a
/// straight blend is taken so that the system curve has no jump a duty point could fall into.
pub static FRICTION_FACTOR: Formula<(Ratio, Length, Length), Ratio> = Formula {
    card: &FormulaCard {
        name: "friction factor of a pipe",
        result: "f",
        text: "1 / sqrt(f) = -2 × log10(ε / (3.7 × D) + 2.51 / (Re × sqrt(f))) from Re 4000, 64 / Re up to 2000, a straight line between",
        symbols: &["Re", "ε", "D"],
        kind: Kind::Search,
        basis: Basis::Reported,
        source: "Colebrook 1939 as quoted by Clamond, Ind. Eng. Chem. Res. 48 (2009) 3665; the blend between 2000 and 4000 is common practice",
        range: "Reynolds numbers above 0, roughness up to a twentieth of the bore",
    },
    run: |(reynolds, roughness, bore)| {
        let re = above_zero(reynolds.value, "the Reynolds number")?;
        let relative = relative_roughness(roughness, bore)?;
        Ok(Ratio::new::<ratio>(friction_factor(re, relative)))
    },
};

/// Friction head of a pipe, Darcy-Weisbach.
pub static FRICTION_HEAD: Formula<(Ratio, Length, Length, Velocity), Length> = Formula {
    card: &FormulaCard {
        name: "friction head of a pipe",
        result: "h_f",
        text: "f × L / D × v^2 / (2 × 9.80665 m/s2)",
        symbols: &["f", "L", "D", "v"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "Darcy-Weisbach equation",
        range: "full round bore, any regime with its friction factor",
    },
    run: |(factor, length, bore, velocity)| {
        let f = not_below_zero(factor.value, "the friction factor")?;
        let l = not_below_zero(length.value, "the length of the pipe")?;
        let d = above_zero(bore.value, "the bore of the pipe")?;
        let v = not_below_zero(velocity.value, "the velocity")?;
        let h = f * l / d * v * v / (2.0 * G);
        Ok(Length::new::<meter>(finite(h, "the friction head")?))
    },
};

/// Friction head of a ribbed hose: that of a smooth pipe of the same bore times a multiplier.
pub static RIBBED_HOSE_HEAD: Formula<(Ratio, Length), Length> = Formula {
    card: &FormulaCard {
        name: "friction head of a ribbed hose",
        result: "h_r",
        text: "m × h_f",
        symbols: &["m", "h_f"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "common practice: 1.5 to 3 times the friction of a pipe",
        range: "multipliers of 1 or more",
    },
    run: |(multiplier, head)| {
        let m = multiplier.value;
        if !(m >= 1.0 && m.is_finite()) {
            return Err(Refusal::new(format!(
                "a hose is given {m} times the friction of a pipe; write 1 or more"
            )));
        }
        let h = not_below_zero(head.value, "the friction head")?;
        Ok(Length::new::<meter>(finite(m * h, "the friction head")?))
    },
};

/// ε / D, if the Colebrook equation knows pipes as rough.
pub(crate) fn relative_roughness(roughness: Length, bore: Length) -> Result<f64, Refusal> {
    let e = not_below_zero(roughness.value, "the roughness of the pipe")?;
    let d = above_zero(bore.value, "the bore of the pipe")?;
    // A hair of room, so that the edge itself is met whatever units it was reached through.
    if e / d <= ROUGHEST * (1.0 + 1e-9) {
        return Ok(e / d);
    }
    Err(Refusal::new(format!(
        "a roughness of {:.4} of the bore is beyond {ROUGHEST}, the roughest the Colebrook equation knows; for a \
         ribbed hose give a smooth roughness and a multiplier of friction",
        e / d
    )))
}

/// Friction factor in every regime; `re` above zero, `relative` between 0 and [`ROUGHEST`].
pub(crate) fn friction_factor(re: f64, relative: f64) -> f64 {
    if re <= LAMINAR_TO {
        return 64.0 / re;
    }
    if re >= TURBULENT_FROM {
        return colebrook(re, relative);
    }
    let (low, high) = (64.0 / LAMINAR_TO, colebrook(TURBULENT_FROM, relative));
    low + (high - low) * (re - LAMINAR_TO) / (TURBULENT_FROM - LAMINAR_TO)
}

/// Colebrook-White, solved for x = 1/√f by Newton's method.
///
/// x + 2 log10(a + b x) is rising and concave, so from below the root the steps climb to it without overshoot; one
/// round of plain substitution brings the start close enough that four or five steps reach the last bit.
fn colebrook(re: f64, relative: f64) -> f64 {
    let (a, b) = (relative / 3.7, 2.51 / re);
    let mut x = -2.0 * libm::log10(a + b * 7.0);
    for _ in 0..30 {
        let inside = a + b * x;
        let slope = 1.0 + 2.0 * b / (std::f64::consts::LN_10 * inside);
        let step = (x + 2.0 * libm::log10(inside)) / slope;
        x -= step;
        if step.abs() <= 1e-15 * x {
            break;
        }
    }
    1.0 / (x * x)
}
