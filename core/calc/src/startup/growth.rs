//! Growth of the two kinds of bacteria that turn ammonia into nitrite and nitrite into nitrate, low, middle and high.
//!
//! Published constants of growth scatter by a factor of two to three. The three sets below are therefore a band, and what is
//! judged is judged by its slow edge.

use crate::formula::Refusal;

/// The gas constant, J/(mol K), as the source of the two energies rounds it.
const GAS: f64 = 8.31;
/// Where the constants are given, K.
const REFERENCE: f64 = 293.15;
/// Where the constants may be carried to, K: fitted from 10 to 25 °C, believed a little beyond.
const RANGE: std::ops::RangeInclusive<f64> = 283.15..=306.15;
/// Below this alkalinity nitrification slows down, kg/m³ as CaCO3; taken as a straight fall to nothing.
///
/// Grady and Lim (1980), 40 mg/L, as quoted in a thesis of the University of Wisconsin; the straight fall is our simplification.
const ENOUGH_ALKALINITY: f64 = 0.040;

/// How fast the bacteria are taken to grow.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pace {
    /// The slowest of the published sets: what a careful builder reckons with.
    Low,
    /// The set most treatment models start from.
    Middle,
    /// The fastest.
    High,
}

impl Pace {
    /// Slow first.
    pub const ALL: [Pace; 3] = [Pace::Low, Pace::Middle, Pace::High];
}

/// Constants of one of the two steps at 20 °C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Kind {
    /// Largest growth, 1/d.
    pub growth: f64,
    /// Decay, 1/d.
    pub decay: f64,
    /// Half-saturation with what it feeds on, kg N/m³.
    pub half: f64,
    /// Half-saturation with oxygen, kg/m³.
    pub half_oxygen: f64,
    /// Cells, as oxygen demand, for nitrogen turned over, kg/kg.
    pub yields: f64,
    /// Activation energy, J/mol.
    pub energy: f64,
}

/// Both steps.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Kinds {
    /// Ammonia oxidisers.
    pub ammonia: Kind,
    /// Nitrite oxidisers.
    pub nitrite: Kind,
}

/// Nitrogen in cells, kg N/kg as oxygen demand.
///
/// Hiatt and Grady, Water Environment Research 80 (2008) 2145, as coded in a public parameter file.
pub const IN_CELLS: f64 = 0.086;

/// Activation energies, J/mol: ammonia and nitrite oxidisers.
///
/// Vannecke and Volcke, appendix.
const ENERGIES: (f64, f64) = (68_000.0, 44_000.0);

/// The constants at 20 °C.
///
/// - low: a public two-step parameter file on total ammonia and nitrite (0.297 and 0.337 1/d);
/// - middle: ASM1 (Henze et al. 1987), 0.5 1/d, 1.0 g N/m³, 0.4 g O2/m³, decay 0.05 1/d, its yield of 0.24 shared between the
///   steps as 0.18 and 0.06 (Hiatt and Grady 2008), the second step taken to grow like the first;
/// - high: Hiatt and Grady (2008), 0.78 1/d, decay 0.096 1/d; its half-saturations are of free ammonia and nitrous acid, so
///   those of the middle stand in their place.
///
/// All read where public documentation and parameter files carry them.
pub fn at_20(pace: Pace) -> Kinds {
    let kind = |growth, decay, half, half_oxygen, yields, energy| Kind {
        growth,
        decay,
        half,
        half_oxygen,
        yields,
        energy,
    };
    let (one, two) = ENERGIES;
    match pace {
        Pace::Low => Kinds {
            ammonia: kind(0.297, 0.014, 0.0024, 0.0006, 0.18, one),
            nitrite: kind(0.337, 0.014, 0.0005, 0.0004, 0.08, two),
        },
        Pace::Middle => Kinds {
            ammonia: kind(0.5, 0.05, 0.001, 0.0004, 0.18, one),
            nitrite: kind(0.5, 0.05, 0.0005, 0.0012, 0.06, two),
        },
        Pace::High => Kinds {
            ammonia: kind(0.78, 0.096, 0.001, 0.0006, 0.18, one),
            nitrite: kind(0.78, 0.096, 0.0005, 0.0012, 0.06, two),
        },
    }
}

/// Growth with as much to feed on as there can be, 1/d, at a temperature (K) and an oxygen content (kg/m³). Decay stays as at
/// 20 °C: the sources of the energies give none for it.
///
/// # Errors
/// A refusal outside 10 to 33 °C.
pub fn at(pace: Pace, temperature: f64, oxygen: f64) -> Result<Kinds, Refusal> {
    if !RANGE.contains(&temperature) {
        return Err(Refusal::new(format!(
            "the growth of the bacteria is known from 10 to 33 °C, and the water has {:.1} °C",
            temperature - 273.15
        )));
    }
    let oxygen = oxygen.max(0.0);
    let warmed = |kind: Kind| {
        let rise = kind.energy / GAS * (temperature - REFERENCE) / (temperature * REFERENCE);
        Kind { growth: kind.growth * libm::exp(rise) * oxygen / (kind.half_oxygen + oxygen), ..kind }
    };
    let kinds = at_20(pace);
    Ok(Kinds { ammonia: warmed(kinds.ammonia), nitrite: warmed(kinds.nitrite) })
}

/// What an alkalinity (kg/m³ as CaCO3) leaves of the growth of ammonia oxidisers.
pub const fn by_alkalinity(alkalinity: f64) -> f64 {
    (alkalinity / ENOUGH_ALKALINITY).clamp(0.0, 1.0)
}
