//! A pump curve read smoothly instead of by straight lines: a monotone cubic through its points.

use super::pump::{PumpCurve, Unsound};
use haulout_quantity::Measure;
use haulout_quantity::si::{Length, VolumeRate};

/// Straight pieces that stand for a stretch between two points: within a millimetre of the cubic for any pump of a pond.
const PIECES: usize = 32;

/// The curve through the same points by piecewise cubics that neither overshoot nor turn between points: slopes by the weighted harmonic mean
/// (Fritsch and Butland 1984), at the ends by three points, as piecewise cubic Hermite interpolation is commonly coded.
///
/// # Errors
/// [`Unsound`] where the points are no pump curve.
pub fn smoothed(points: &[(VolumeRate, Length)]) -> Result<PumpCurve, Unsound> {
    PumpCurve::new(points)?;
    let points: Vec<(f64, f64)> = points.iter().map(|(flow, head)| (flow.value, head.value)).collect();
    let slopes = slopes(&points);
    let mut dense: Vec<(f64, f64)> = Vec::with_capacity(points.len() * PIECES);
    for (at, pair) in points.windows(2).enumerate() {
        let wide = pair[1].0 - pair[0].0;
        for piece in 0..PIECES {
            let t = piece as f64 / PIECES as f64;
            dense.push((
                pair[0].0 + t * wide,
                hermite([pair[0].1, pair[1].1], [slopes[at], slopes[at + 1]], wide, t),
            ));
        }
    }
    dense.extend(points.last());
    let typed = |(flow, head): (f64, f64)| (VolumeRate::from_si(flow), Length::from_si(head.max(0.0)));
    PumpCurve::new(&dense.into_iter().map(typed).collect::<Vec<_>>())
}

/// The cubic between two points at a share of the way.
fn hermite([low, high]: [f64; 2], slopes: [f64; 2], wide: f64, t: f64) -> f64 {
    let (square, cube) = (t * t, t * t * t);
    (2.0 * cube - 3.0 * square + 1.0) * low
        + (cube - 2.0 * square + t) * wide * slopes[0]
        + (3.0 * square - 2.0 * cube) * high
        + (cube - square) * wide * slopes[1]
}

fn slopes(points: &[(f64, f64)]) -> Vec<f64> {
    let wide: Vec<f64> = points.windows(2).map(|pair| pair[1].0 - pair[0].0).collect();
    let rise: Vec<f64> =
        points.windows(2).zip(&wide).map(|(pair, wide)| (pair[1].1 - pair[0].1) / wide).collect();
    let last = rise.len() - 1;
    let inner = |i: usize| {
        let (before, after) = (rise[i - 1], rise[i]);
        if before * after <= 0.0 {
            return 0.0;
        }
        let (one, two) = (2.0 * wide[i] + wide[i - 1], wide[i] + 2.0 * wide[i - 1]);
        (one + two) / (one / before + two / after)
    };
    let end = |near: usize, next: usize| {
        let slope = ((2.0 * wide[near] + wide[next]) * rise[near] - wide[near] * rise[next])
            / (wide[near] + wide[next]);
        if slope * rise[near] <= 0.0 {
            0.0
        } else if rise[near] * rise[next] <= 0.0 && slope.abs() > 3.0 * rise[near].abs() {
            3.0 * rise[near]
        } else {
            slope
        }
    };
    let mut slopes = vec![end(0, 1)];
    slopes.extend((1..=last).map(inner));
    slopes.push(end(last, last - 1));
    slopes
}

#[cfg(test)]
mod tests {
    use super::smoothed;
    use haulout_quantity::Measure;
    use haulout_quantity::si::{Length, VolumeRate};

    /// scipy 1.17.1, `PchipInterpolator([0, 2, 4, 6, 7.5], [4.2, 3.8, 3.1, 1.9, 0.6])`.
    #[test]
    fn the_cubic_of_a_reference_library() {
        let points = [(0.0, 4.2), (2.0, 3.8), (4.0, 3.1), (6.0, 1.9), (7.5, 0.6)];
        let typed = points.map(|(q, h)| (VolumeRate::from_si(q / 3600.0), Length::from_si(h)));
        let curve = smoothed(&typed).expect("a curve");
        for (flow, head) in [
            (1.0_f64, 4.032386),
            (3.0_f64, 3.496890),
            (5.0_f64, 2.568295),
            (6.47_f64, 1.537772),
            (7.2_f64, 0.889209),
        ] {
            let found = curve.head_at(VolumeRate::from_si(flow / 3600.0)).expect("on the curve").si();
            assert!((found - head).abs() < 5e-4, "{flow}: {found} {head}");
        }
        assert!(smoothed(&typed[..2]).is_err());
    }
}
