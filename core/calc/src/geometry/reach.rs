//! How far down a sloped zone comes before its middle is reached.

use super::bed::level_round;
use super::{Bed, BedPiece, Edge, Unsound};

/// The lowest level a zone reaches, metres: its own where its slopes have room to run down to it, otherwise the level
/// of its middle. `round` are the pool's own piece and the zones drawn before it; what is drawn over it does not count.
///
/// # Errors
/// [`Unsound`] where a level or a slope is not a number.
pub fn reach(round: &[BedPiece], zone: &BedPiece) -> Result<f64, Unsound> {
    if round.is_empty() {
        return Err(Unsound::new("a zone lies in a pool; give the pool's own piece first"));
    }
    let level = level_round(round, &zone.outline);
    let floor = BedPiece { outline: zone.outline.clone(), level, edge: Edge::Step };
    Ok(Bed::new(floor, vec![zone.clone()], level)?.lowest())
}

#[cfg(test)]
mod tests {
    use super::super::{BedPiece, Edge, rectangle};
    use super::reach;

    fn piece(corner: [f64; 2], size: [f64; 2], level: f64, edge: Edge) -> BedPiece {
        BedPiece { outline: rectangle(corner, size, 0.0, 0.0).expect("a rectangle"), level, edge }
    }

    #[test]
    fn a_narrow_zone_stops_where_its_slopes_meet() {
        let pool = piece([0.0, 0.0], [4.0, 3.0], 0.0, Edge::Step);
        // 0.60 m wide at 1 in 1: the slopes meet 0.30 m below the level round it, short of the 0.50 m asked for.
        let zone = piece([1.0, 1.0], [2.0, 0.6], -0.5, Edge::Slope { run_per_rise: 1.0 });
        let found = reach(&[pool], &zone).expect("sound");
        assert!((found + 0.3).abs() < 1e-6, "{found}");
    }

    #[test]
    fn a_wide_zone_comes_down_to_its_level() {
        let pool = piece([0.0, 0.0], [4.0, 3.0], 0.0, Edge::Step);
        let zone = piece([1.0, 1.0], [2.0, 1.5], -0.5, Edge::Slope { run_per_rise: 1.0 });
        let found = reach(&[pool], &zone).expect("sound");
        assert!((found + 0.5).abs() < 1e-9, "{found}");
    }

    #[test]
    fn a_zone_within_a_zone_starts_from_that_one() {
        let pool = piece([0.0, 0.0], [4.0, 3.0], 0.0, Edge::Step);
        let round = piece([0.5, 0.5], [3.0, 2.0], -0.4, Edge::Step);
        let zone = piece([1.0, 1.0], [2.0, 0.6], -1.0, Edge::Slope { run_per_rise: 1.0 });
        let found = reach(&[pool, round], &zone).expect("sound");
        assert!((found + 0.7).abs() < 1e-6, "{found}");
    }
}
