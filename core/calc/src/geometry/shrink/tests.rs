//! Areas left against shapely 2.2.0 (GEOS 3.14.1): `polygon.buffer(-d, quad_segs=4000).area`.

use super::{Outline, Shrink};
use crate::geometry::point::signed_area;
use crate::geometry::{circle, less, rectangle};

const FAR: f64 = 3.0;

fn drawn(corners: &[[f64; 2]]) -> Outline {
    Outline::from_corners(corners.to_vec()).expect("a sound outline")
}

#[track_caller]
fn left(outline: &Outline, expected: &[(f64, f64)]) {
    let shrink = Shrink::of(outline, FAR);
    for &(by, area) in expected {
        assert!(by <= shrink.until, "{by} is beyond {}", shrink.until);
        assert!((shrink.area(by) - area).abs() < 2e-6, "{by}: {} is not {area}", shrink.area(by));
        // The contour encloses what the stages say.
        let enclosed: f64 = shrink.contours(by).iter().map(|ring| signed_area(ring)).sum();
        assert!((enclosed - shrink.area(by)).abs() < 1e-9, "{by}: {enclosed} is not {}", shrink.area(by));
    }
}

/// Two sides are used up on the way, then all of it: shapely's `maximum_inscribed_circle` has a radius of
/// 1.9205853323328483, and the composite Simpson of 6000 steps from 0 to 1.5 m gives 11.579404635429755 m3.
#[test]
fn a_convex_outline_to_its_last_point() {
    let six = drawn(&[[0.0, 0.0], [4.0, 0.0], [5.0, 1.5], [4.4, 3.4], [2.0, 4.0], [-0.5, 2.2]]);
    left(&six, &[(0.4, 11.117453757107857), (1.0, 4.69280412038203), (1.5, 1.2631683400885314)]);
    let shrink = Shrink::of(&six, FAR);
    assert!((shrink.gone - 1.9205853323328483).abs() < 1e-7, "{}", shrink.gone);
    assert!((shrink.sum_to(1.5) - 11.579404635429755).abs() < 1e-6, "{}", shrink.sum_to(1.5));
}

/// Closed form: a rectangle of 4 m by 3 m ends in a ridge at 1.5 m; until then (4 - 2d)(3 - 2d) is left, and the hipped
/// hollow holds 3 x 1.5 (3 x 4 - 3) / 6 = 6.75 m3.
#[test]
fn a_rectangle_to_its_ridge() {
    // Turned, sides that face each other differ by rounding.
    for turn in [0.0, 0.3, 1.9, -2.7, 0.01, 2.2] {
        let shrink = Shrink::of(&rectangle([41.3, -7.7], [4.0, 3.0], turn, 0.0).expect("sound"), FAR);
        for by in [0.0, 0.4, 1.1, 1.499] {
            assert!((shrink.area(by) - (4.0 - 2.0 * by) * (3.0 - 2.0 * by)).abs() < 1e-11, "{turn} {by}");
        }
        assert!((shrink.gone - 1.5).abs() < 1e-11 && (shrink.sum_to(9.0) - 6.75).abs() < 1e-10, "{turn}");
    }
}

/// A tower of 1.5 m on a foot: at half its width its sides meet, and the stages end.
#[test]
fn a_t_until_its_tower_closes() {
    let t = drawn(&[
        [0.0, 0.0],
        [6.0, 0.0],
        [6.0, 2.0],
        [4.0, 2.0],
        [4.0, 5.0],
        [2.5, 5.0],
        [2.5, 2.0],
        [0.0, 2.0],
    ]);
    left(&t, &[(0.2, 12.277168148543112), (0.5, 6.607300928394473), (0.7, 3.2703098196531504)]);
    let shrink = Shrink::of(&t, FAR);
    assert!((shrink.until - 0.75).abs() < 1e-6, "{}", shrink.until);
    // Composite Simpson of 1400 steps from 0 to 0.7 m.
    assert!((shrink.sum_to(0.7) - 6.6664056938250065).abs() < 1e-6, "{}", shrink.sum_to(0.7));
}

#[test]
fn a_hook_and_a_rectangle_with_a_hole() {
    let hook = drawn(&[[0.0, 0.0], [7.0, 0.5], [8.0, 4.0], [5.0, 3.0], [4.5, 6.0], [2.0, 4.2], [-1.0, 5.0]]);
    left(&hook, &[(0.3, 24.84114249512934)]);
    let [outer, hole] = [([0.0, 0.0], [5.0, 4.0]), ([2.0, 1.5], [1.0, 1.0])]
        .map(|(corner, size)| rectangle(corner, size, 0.0, 0.0).expect("sound"));
    let pierced = less(&outer, &[hole]).expect("a ring is left");
    left(&pierced, &[(0.3, 12.477256668444031), (0.7, 4.020619639306276)]);
    let shrink = Shrink::of(&pierced, FAR);
    // 1.5 m lie between the hole and the longer sides of the rectangle.
    assert!((shrink.until - 0.75).abs() < 1e-6, "{}", shrink.until);
}

/// Closed form: of a polygon round a circle with an inner radius r the share ((r - d) / r)^2 is left.
#[test]
fn a_round_outline_whose_sides_are_all_used_up_at_once() {
    let round = circle([3.0, -2.0], 2.0).expect("sound");
    let inner = round.distance_to_side([3.0, -2.0]);
    let shrink = Shrink::of(&round, FAR);
    for by in [0.5, 1.3, 1.9] {
        let share = (inner - by) / inner;
        assert!((shrink.area(by) - round.area() * share * share).abs() < 1e-9, "{by}");
    }
    assert!((shrink.gone - inner).abs() < 1e-9, "{} is not {inner}", shrink.gone);
}

/// Two sides of an ellipse are used up at one distance, wherever it lies. With its slopes from 0.82 m to 0.25 m (1 in 2) hidden but for 290 mm
/// all round by a zone that slopes (1 in 1) to 0.12 m, 0.57 m over the datum: shapely 2.2.0 (`buffer(-d, join_style=2, mitre_limit=50)` of the
/// 40 corners), 0.32 A(0) and Simpson's rule of 200 steps over A from 0 to 0.13 m, 1.1953156524 m3. The ring at the slopes holds nothing.
#[test]
fn sides_used_up_at_one_distance_and_where_the_ellipse_lies() {
    use crate::geometry::{Bed, BedPiece, Edge, ellipse, inset};
    for [x, y] in [[3.1, 2.4], [11.1, -13.6], [0.0, 0.0], [103.1, 57.7]] {
        let whole = ellipse([x, y], [1.38, 1.104], 3_f64.to_radians()).expect("sound");
        let zone = inset(&whole, 0.29, None).expect("something is left");
        let slope = |run_per_rise| Edge::Slope { run_per_rise };
        let pool = BedPiece { outline: whole, level: 0.25, edge: slope(2.0) };
        let deep = BedPiece { outline: zone, level: 0.12, edge: slope(1.0) };
        let bed = Bed::new(pool, vec![deep], 0.82).expect("sound");
        let volume = bed.volume_below(0.57);
        assert!((volume - 1.195_315_652_4).abs() < 1e-9, "{x} {y}: {volume}");
    }
}
