//! Fittings: their loss as a multiple of the velocity head, and a table of the multiples.

use haulout_quantity::Basis;
use haulout_quantity::si::{Length, Ratio, Velocity};
use uom::si::length::meter;

use super::{G, finite, not_below_zero};
use crate::formula::{Formula, FormulaCard, Kind};

/// Head lost in fittings of one bore.
pub static FITTINGS_HEAD: Formula<(Ratio, Velocity), Length> = Formula {
    card: &FormulaCard {
        name: "head lost in fittings",
        result: "h_m",
        text: "K × v^2 / (2 × 9.80665 m/s2)",
        symbols: &["K", "v"],
        kind: Kind::Closed,
        basis: Basis::CommonPractice,
        source: "loss coefficients summed; K as listed for each fitting",
        range: "turbulent flow; fittings several bores apart; velocity of the bore the K belongs to",
    },
    run: |(k, velocity)| {
        let k = not_below_zero(k.value, "the sum of K of the fittings")?;
        let v = not_below_zero(velocity.value, "the velocity")?;
        Ok(Length::new::<meter>(finite(k * v * v / (2.0 * G), "the head lost in fittings")?))
    },
};

/// A fitting of the trade and its loss coefficient.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FittingKind {
    /// The word for it, e.g. `elbow-90`.
    pub name: &'static str,
    /// Loss in velocity heads of the bore it stands in (of the smaller bore, for reducers and enlargements).
    pub k: f64,
    /// How well the number is founded.
    pub basis: Basis,
    /// Where the number stands.
    pub source: &'static str,
}

/// The fitting of a name, if the table has it.
pub fn fitting(name: &str) -> Option<&'static FittingKind> {
    FITTINGS.iter().find(|fitting| fitting.name == name)
}

const fn reported(name: &'static str, k: f64, source: &'static str) -> FittingKind {
    FittingKind { name, k, basis: Basis::Reported, source }
}

/// Every fitting known here.
///
/// K of real fittings falls with the bore; these are for about 50 mm and Re 1e5, where most of the trade's pumps
/// work. At 100 mm they are high by about a quarter, at 25 mm low by as much.
pub static FITTINGS: &[FittingKind] = &[
    reported(
        "elbow-90",
        0.608,
        "Hooper 1981, as reported by fluids 1.3.1: Hooper2K(Di=2, Re=1e5), 90° standard, screwed",
    ),
    reported(
        "elbow-90-long",
        0.308,
        "Hooper 1981, as reported by fluids 1.3.1: Hooper2K(Di=2, Re=1e5), 90° long-radius",
    ),
    reported("elbow-90-mitred", 1.202, "fluids 1.3.1: bend_miter(Di=.05, angle=90)"),
    reported(
        "elbow-45",
        0.305,
        "Hooper 1981, as reported by fluids 1.3.1: Hooper2K(Di=2, Re=1e5), 45° standard",
    ),
    reported(
        "tee-through",
        0.152,
        "Hooper 1981, as reported by fluids 1.3.1: Hooper2K(Di=2, Re=1e5), tee, run, screwed",
    ),
    reported(
        "tee-branch",
        1.055,
        "Hooper 1981, as reported by fluids 1.3.1: Hooper2K(Di=2, Re=1e5), tee used as elbow, screwed",
    ),
    reported("entrance", 0.5, "Crane TP-410, as reported by fluids 1.3.1: entrance_sharp(method='Crane')"),
    reported(
        "entrance-projecting",
        0.78,
        "Crane TP-410, as reported by fluids 1.3.1: entrance_distance(method='Crane')",
    ),
    reported("exit", 1.0, "fluids 1.3.1: exit_normal()"),
    reported(
        "check-valve",
        1.907,
        "Crane TP-410, as reported by fluids 1.3.1: K_swing_check_valve_Crane(D=.05)",
    ),
    reported(
        "foot-valve",
        8.007,
        "Crane TP-410, as reported by fluids 1.3.1: K_foot_valve_Crane(D=.05), poppet disc",
    ),
    reported(
        "ball-valve",
        0.057,
        "Crane TP-410, as reported by fluids 1.3.1: K_ball_valve_Crane(.05, .05, 0), full bore, open",
    ),
    reported(
        "gate-valve",
        0.153,
        "Crane TP-410, as reported by fluids 1.3.1: K_gate_valve_Crane(.05, .05, 0), open",
    ),
    reported(
        "butterfly-valve",
        0.858,
        "Crane TP-410, as reported by fluids 1.3.1: K_butterfly_valve_Crane(D=.05), open",
    ),
    reported(
        "diaphragm-valve",
        2.841,
        "Crane TP-410, as reported by fluids 1.3.1: K_diaphragm_valve_Crane(D=.05), open",
    ),
    reported(
        "reducer",
        0.239,
        "fluids 1.3.1: contraction_sharp(.063, .05), next size down, velocity of the smaller bore",
    ),
    reported(
        "enlargement",
        0.137,
        "fluids 1.3.1: diffuser_sharp(.05, .063), next size up, velocity of the smaller bore",
    ),
    FittingKind {
        name: "union",
        k: 0.08,
        basis: Basis::Recalled,
        source: "handbook tables of minor losses, threaded union",
    },
];
