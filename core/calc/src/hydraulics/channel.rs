//! Open channels: how deep and how fast water runs in a stream (Manning).

use haulout_quantity::si::{Area, Length, Ratio, Velocity, VolumeRate};
use haulout_quantity::{Basis, Measure};

use super::weir::rising;
use super::{above_zero, not_below_zero};
use crate::formula::{Formula, FormulaCard, Kind, Refusal};

const SOURCE: &str = "Manning, V = R^(2/3) S^(1/2) / n in SI, with n as Chow 1959 lists it";

const fn card(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    kind: Kind,
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind,
        basis: Basis::Reported,
        source: SOURCE,
        range: "even flow in a long even stream; in a film thinner than its stones it says little",
    }
}

/// Depth at which a flow runs evenly in a stream with upright sides.
pub static NORMAL_DEPTH: Formula<(VolumeRate, Length, Ratio, Ratio), Length> = Formula {
    card: &card(
        "depth of a stream with upright sides",
        "d",
        "d at which Q = b d R^(2/3) S^(1/2) / n",
        &["Q", "b", "S", "n"],
        Kind::Search,
    ),
    run: |(flow, width, slope, n)| depth(flow.value, width.value, 0.0, slope.value, n.value),
};

/// The same with sides that rise by `m` over a run of 1.
pub static NORMAL_DEPTH_SLOPED: Formula<(VolumeRate, Length, Ratio, Ratio, Ratio), Length> = Formula {
    card: &card(
        "depth of a stream with sloped sides",
        "d",
        "d at which Q = A R^(2/3) S^(1/2) / n",
        &["Q", "b", "m", "S", "n"],
        Kind::Search,
    ),
    run: |(flow, width, side, slope, n)| {
        let side = above_zero(side.value, "the slope of the sides")?;
        depth(flow.value, width.value, 1.0 / side, slope.value, n.value)
    },
};

/// Flow of a stream with upright sides at a depth: what a found depth is proved by.
pub static CHANNEL_FLOW: Formula<(Length, Length, Ratio, Ratio), VolumeRate> = Formula {
    card: &card(
        "flow of a stream with upright sides",
        "Q",
        "b × d × (b × d / (b + 2 × d))^(2 / 3) × sqrt(S) / n",
        &["b", "d", "S", "n"],
        Kind::Closed,
    ),
    run: |(width, depth, slope, n)| {
        Ok(VolumeRate::from_si(flow(depth.value, width.value, 0.0, slope.value, n.value)))
    },
};

/// Mean velocity of a stream from its flow, width and depth.
pub static STREAM_VELOCITY: Formula<(VolumeRate, Length, Length), Velocity> = Formula {
    card: &card("velocity of a stream", "v", "Q / (b × d)", &["Q", "b", "d"], Kind::Closed),
    run: |(flow, width, depth)| {
        let section: Area = width * depth;
        above_zero(section.value, "the section of the stream")?;
        Ok(flow / section)
    },
};

/// How much a stream falls for its length.
pub static SLOPE_OF: Formula<(Length, Length), Ratio> = Formula {
    card: &card("slope of a stream", "S", "z / L", &["z", "L"], Kind::Closed),
    run: |(fall, length)| {
        above_zero(length.value, "the length of the stream")?;
        Ok(fall / length)
    },
};

/// Deepest stream that is looked for, metres.
const DEEPEST: f64 = 5.0;

fn depth(q: f64, width: f64, side: f64, slope: f64, n: f64) -> Result<Length, Refusal> {
    let q = not_below_zero(q, "the flow of the stream")?;
    let b = above_zero(width, "the width of the stream")?;
    let s = above_zero(slope, "the slope of the stream")?;
    let n = above_zero(n, "the roughness of the stream bed")?;
    if q > flow(DEEPEST, b, side, s, n) {
        return Err(Refusal::new("the stream would run more than 5 m deep; check its flow, width and fall"));
    }
    Ok(Length::from_si(rising(|d| flow(d, b, side, s, n), q, DEEPEST)))
}

fn flow(d: f64, width: f64, side: f64, slope: f64, n: f64) -> f64 {
    let area = (width + side * d) * d;
    let wetted = width + 2.0 * d * (1.0 + side * side).sqrt();
    area * libm::pow(area / wetted, 2.0 / 3.0) * slope.sqrt() / n
}

#[cfg(test)]
mod tests {
    use haulout_quantity::Measure;
    use haulout_quantity::si::{Length, Ratio, VolumeRate};

    use super::{NORMAL_DEPTH, NORMAL_DEPTH_SLOPED};

    fn r(value: f64) -> Ratio {
        Ratio::from_si(value)
    }

    /// Steep sides make the trapezoid the rectangle; gentle ones make it shallower.
    #[test]
    fn sloped_sides_become_upright_ones() {
        let (q, b) = (VolumeRate::from_si(0.01), Length::from_si(0.4));
        let upright = NORMAL_DEPTH.work((q, b, r(0.02), r(0.03))).expect("in range").si();
        let steep = NORMAL_DEPTH_SLOPED.work((q, b, r(1e7), r(0.02), r(0.03))).expect("in range").si();
        let gentle = NORMAL_DEPTH_SLOPED.work((q, b, r(0.5), r(0.02), r(0.03))).expect("in range").si();
        assert!((steep / upright - 1.0).abs() < 1e-5 && gentle < upright);
        assert!(NORMAL_DEPTH.work((q, b, r(0.0), r(0.03))).is_err());
    }
}
