//! How far two regions lie apart.

use super::outline::Outline;
use super::track::track_to_outline;

/// Distance between two regions, edge to edge, metres; nothing where they touch, overlap or one lies in the other.
pub fn apart(one: &Outline, other: &Outline) -> f64 {
    let inside = |a: &Outline, b: &Outline| a.rings().any(|r| r.iter().any(|p| b.contains(*p)));
    if inside(one, other) || inside(other, one) {
        return 0.0;
    }
    let closed = one.rings().map(|ring| ring.iter().chain(ring.first()).copied().collect::<Vec<_>>());
    closed.map(|ring| track_to_outline(&ring, other)).fold(f64::INFINITY, f64::min)
}

#[cfg(test)]
mod tests {
    use super::apart;
    use crate::geometry::{Outline, rectangle};

    fn rect(corner: [f64; 2], size: [f64; 2]) -> Outline {
        rectangle(corner, size, 0.0, 0.0).expect("a rectangle")
    }

    /// By hand: side by side 0.4 m; corner to corner 0.3 and 0.4 give 0.5 m; crossing and nested nothing.
    #[test]
    fn rectangles_apart() {
        let one = rect([0.0, 0.0], [1.0, 1.0]);
        let near = |other: Outline, metres: f64| {
            assert!((apart(&one, &other) - metres).abs() < 1e-12);
            assert!((apart(&other, &one) - metres).abs() < 1e-12);
        };
        near(rect([1.4, 0.2], [0.5, 0.5]), 0.4);
        near(rect([1.3, 1.4], [0.5, 0.5]), 0.5);
        near(rect([0.4, -1.0], [0.2, 3.0]), 0.0);
        near(rect([0.4, 0.4], [0.2, 0.2]), 0.0);
        near(rect([1.0, 0.0], [0.2, 0.2]), 0.0);
    }
}
