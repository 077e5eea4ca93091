//! Rooms worked by hand: round an end, over a front, round an L, aslant over an edge.

use super::{Partition, Surroundings, shortest_path};
use crate::geometry::{Outline, Point};

/// Starts lie a micrometre inside the rim and bends a micrometre off a corner.
const CLOSE: f64 = 1e-5;

fn room(pool: [Point; 2], rim: f64, partitions: &[(&[Point], f64)]) -> Surroundings {
    let [[x, y], [to_x, to_y]] = pool;
    let corners = vec![[x, y], [to_x, y], [to_x, to_y], [x, to_y]];
    Surroundings {
        water: Outline::from_corners(corners).expect("a rectangle is an outline"),
        rim,
        partitions: partitions
            .iter()
            .map(|(line, top)| Partition { line: line.to_vec(), top: *top })
            .collect(),
    }
}

fn asserted(around: &Surroundings, to: Point, level: f64, by_hand: f64) {
    let found = shortest_path(around, to, level);
    assert!((found - by_hand).abs() < CLOSE, "{found} and by hand {by_hand}");
}

#[test]
fn nothing_between_is_measured_level() {
    let open = room([[0.0, 0.0], [4.0, 2.0]], 0.5, &[]);
    // Straight off a side, and off a corner 3-4-5; the height of the item adds nothing.
    asserted(&open, [1.0, 3.99], 2.9, 1.99);
    asserted(&open, [7.0, 6.0], 0.0, 5.0);
    // Over the water there is no distance at all.
    asserted(&open, [1.0, 1.0], 2.0, 0.0);
}

/// ```text
///        . item (1.0, 3.0)
///  =================== top +2.50, y 2.5        end (3.0, 2.5)
///  +------------------------+ y 2.0
///  |  pool, rim +0.50       |
/// ```
/// Round the right end: up from (3.0, 2.0) to (3.0, 2.5) 0.5, then sqrt(2.0^2 + 0.5^2) = 2.061553; in all 2.561553.
/// Round the left end (-1.0, 2.5): sqrt(1 + 0.25) + sqrt(4 + 0.25) = 3.179587. Over the top:
/// sqrt(0.25 + 4) + sqrt(0.25 + 2.1^2) = 4.220258. The right end wins.
#[test]
fn a_high_partition_is_gone_round() {
    let wall: &[Point] = &[[-1.0, 2.5], [3.0, 2.5]];
    asserted(&room([[0.0, 0.0], [4.0, 2.0]], 0.5, &[(wall, 2.5)]), [1.0, 3.0], 0.4, 2.561_553);
}

/// ```text
///  section     top +1.50
///                 |
///   rim +0.95 ----|   y 2.8            y 0.05
///   water         |   . socket +0.30   . socket +0.30
///                 |     y 2.58
/// ```
/// Up 1.50 - 0.95 = 0.55 on the water's face, then sqrt(0.22^2 + 1.20^2) = 1.22: in all 1.77 (through the wall it
/// would be 0.22 level). At the far wall of the gallery: 0.55 + sqrt(2.75^2 + 1.20^2) = 3.550417. Drawn with both faces, 0.20 m
/// thick: 0.55 + 0.20 + sqrt(0.02^2 + 1.20^2) = 1.950167 and 0.75 + sqrt(2.55^2 + 1.20^2) = 3.568244.
#[test]
fn a_low_front_is_gone_over() {
    let face: &[Point] = &[[-6.0, 2.8], [14.0, 2.8]];
    let other: &[Point] = &[[-6.0, 2.6], [14.0, 2.6]];
    let thin = room([[1.0, 2.8], [7.6, 5.0]], 0.95, &[(face, 1.5)]);
    asserted(&thin, [4.4, 2.58], 0.30, 1.77);
    asserted(&thin, [4.4, 0.05], 0.30, 3.550_417);
    let thick = room([[1.0, 2.8], [7.6, 5.0]], 0.95, &[(face, 1.5), (other, 1.5)]);
    asserted(&thick, [4.4, 2.58], 0.30, 1.950_167);
    asserted(&thick, [4.4, 0.05], 0.30, 3.568_244);
}

/// An item above the top is reached on the level of the top: 0.55 up, 0.22 across. A height that the front does not
/// ask for must not move a lamp out of reach.
#[test]
fn an_item_above_the_top_gains_nothing_by_its_height() {
    let face: &[Point] = &[[-6.0, 2.8], [14.0, 2.8]];
    asserted(&room([[1.0, 2.8], [7.6, 5.0]], 0.95, &[(face, 1.5)]), [4.4, 2.58], 2.4, 0.77);
}

/// ```text
///               . item (3.0, 3.0)
///   (0.5, 2.5) ======+ (2.5, 2.5)   top +3.00
///   +---------+      |
///   |  pool   |      |
///   +---------+      |
///                    | (2.5, -1.0)
/// ```
/// Round the upper end: 0.5 + sqrt(2.5^2 + 0.5^2) = 3.049510. Round the lower end:
/// sqrt(0.5^2 + 1.0^2) + sqrt(0.5^2 + 4.0^2) = 5.149162. Over the top there are 2.5 m up and 2.5 m down.
/// Level and straight it would be sqrt(2) = 1.414.
#[test]
fn an_l_leaks_at_no_corner() {
    let bent: &[Point] = &[[2.5, -1.0], [2.5, 2.5], [0.5, 2.5]];
    asserted(&room([[0.0, 0.0], [2.0, 2.0]], 0.5, &[(bent, 3.0)]), [3.0, 3.0], 0.5, 3.049_510);
    // The same of two pieces that only meet.
    let (upright, level): (&[Point], &[Point]) = (&[[2.5, -1.0], [2.5, 2.5]], &[[2.5, 2.5], [0.5, 2.5]]);
    let two = room([[0.0, 0.0], [2.0, 2.0]], 0.5, &[(upright, 3.0), (level, 3.0)]);
    asserted(&two, [3.0, 3.0], 0.5, 3.049_510);
}

/// Aslant over a top edge: both faces laid flat make one straight line from the corner (1, 1) of the pool. Across the
/// fold sqrt(0.3^2 + 1.0^2) + sqrt(0.7^2 + 0.8^2) = 2.107045, along it 2.0: sqrt(2.107045^2 + 4) = 2.905106.
#[test]
fn a_string_over_an_edge_is_straight_once_laid_flat() {
    let wall: &[Point] = &[[-20.0, 1.3], [20.0, 1.3]];
    asserted(&room([[0.0, 0.0], [1.0, 1.0]], 0.0, &[(wall, 1.0)]), [3.0, 2.0], 0.2, 2.905_106);
}

/// Two edges of different height, aslant. scipy 1.17.1, `minimize` (Nelder-Mead, xatol 1e-12) over the two places on the
/// edges and the place on the side y = 1, x from 0 to 1.
#[test]
fn a_string_over_two_edges_is_what_a_minimiser_finds() {
    let (near, far): (&[Point], &[Point]) = (&[[-20.0, 1.3], [20.0, 1.3]], &[[-20.0, 2.1], [20.0, 2.6]]);
    let two = room([[0.0, 0.0], [1.0, 1.0]], 0.0, &[(near, 1.0), (far, 1.4)]);
    asserted(&two, [4.0, 3.0], 0.2, TWO_EDGES);
}

const TWO_EDGES: f64 = 4.647215;

/// Heron: over a straight edge a string is shortest where both ends see it under the same angle; what stands in the way ends the search
/// at its corner.
#[test]
fn a_string_slides_to_where_both_angles_are_the_same() {
    let string = |share: f64| libm::hypot(share, 0.6) + libm::hypot(1.0 - share, 0.2);
    let free = super::taut::least(string, 0.1);
    assert!((free - 0.75).abs() < 1e-7, "0.6 : 0.2 parts the edge at three quarters, not at {free}");
    let barred = super::taut::least(|share| if share > 0.5 { f64::INFINITY } else { string(share) }, 0.1);
    assert!((barred - 0.5).abs() < 1e-6, "the free part ends at a half, not at {barred}");
}

#[test]
fn a_kerb_or_a_wall_without_a_way_round() {
    let wall: &[Point] = &[[-20.0, 1.3], [20.0, 1.3]];
    // 0.2 m over the rim is nothing to go round; just so high that it counts adds its climb.
    asserted(&room([[0.0, 0.0], [1.0, 1.0]], 0.0, &[(wall, 0.2)]), [0.5, 2.0], 0.0, 1.0);
    // A wall of the room without end that nobody climbs: round its ends, 20 m out, or not at all.
    let ring: &[Point] = &[[-2.0, -2.0], [3.0, -2.0], [3.0, 1.5], [-2.0, 1.5], [-2.0, -2.0]];
    let closed = room([[0.0, 0.0], [1.0, 1.0]], 0.0, &[(ring, f64::INFINITY)]);
    assert!(shortest_path(&closed, [0.5, 2.0], 0.0).is_infinite());
}

#[test]
fn what_hangs_on_a_partition_is_reached_from_the_water() {
    let wall: &[Point] = &[[-20.0, 1.3], [20.0, 1.3]];
    asserted(&room([[0.0, 0.0], [1.0, 1.0]], 0.0, &[(wall, 2.0)]), [0.5, 1.3], 0.5, 0.3);
}
