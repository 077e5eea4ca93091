//! Outlines and the shapes they are drawn with, against shapely 2.2.0 (GEOS 3.14.1) and closed forms.

use std::f64::consts::{FRAC_PI_2, PI};

use haulout_calc::geometry::{
    Mirror, Motion, Outline, Point, SAGITTA, Side, circle, ellipse, inset, join, less, moved, rectangle,
    smooth, strip,
};

fn drawn(corners: &[Point]) -> Outline {
    Outline::from_corners(corners.to_vec()).expect("a sound outline")
}

fn l_shape() -> Outline {
    drawn(&[[0.0, 0.0], [6.0, 0.0], [6.0, 2.0], [3.0, 2.0], [3.0, 5.0], [0.0, 5.0]])
}

fn leaning() -> Outline {
    drawn(&[[0.0, 0.0], [4.0, 0.5], [3.5, 3.2], [0.4, 2.9]])
}

fn across() -> Outline {
    drawn(&[[2.0, 1.0], [6.0, 1.7], [5.0, 4.0], [1.5, 3.6]])
}

#[track_caller]
fn near(found: f64, expected: f64, within: f64) {
    assert!((found - expected).abs() <= within, "{found} is not {expected}");
}

#[test]
fn area_length_and_centroid_of_a_gable() {
    // shapely 2.2.0: P = Polygon([(0,0),(4,0),(4,3),(2.5,4),(0,3)]); P.area 14.0;
    // P.length 14.495358041299246; P.centroid POINT (2.0238095238095237 1.761904761904762)
    let gable = drawn(&[[0.0, 0.0], [4.0, 0.0], [4.0, 3.0], [2.5, 4.0], [0.0, 3.0]]);
    near(gable.area(), 14.0, 1e-12);
    near(gable.perimeter(), 14.495358041299246, 1e-12);
    near(gable.centroid()[0], 2.0238095238095237, 1e-12);
    near(gable.centroid()[1], 1.761904761904762, 1e-12);
}

#[test]
fn area_length_and_centroid_of_an_l() {
    // shapely 2.2.0: L = Polygon([(0,0),(6,0),(6,2),(3,2),(3,5),(0,5)]); L.area 21.0; L.length 22.0;
    // L.centroid 2.357142857142857, 2.0714285714285716
    near(l_shape().area(), 21.0, 1e-12);
    near(l_shape().perimeter(), 22.0, 1e-12);
    near(l_shape().centroid()[0], 2.357142857142857, 1e-12);
    near(l_shape().centroid()[1], 2.0714285714285716, 1e-12);
}

#[test]
fn insets_of_an_l() {
    // shapely 2.2.0: L.buffer(d, join_style=2).area for d = 0.3, -0.25, -0.5: 27.96, 15.75, 11.0
    for (by, area) in [(-0.3, 27.96), (0.25, 15.75), (0.5, 11.0)] {
        let found = inset(&l_shape(), by, None).expect("something is left");
        near(found.area(), area, 1e-12);
        assert_eq!(found.corners().map(<[Point]>::len), Some(6), "{found:?}");
    }
}

#[test]
fn insets_of_a_leaning_outline() {
    // shapely 2.2.0: A = Polygon([(0,0),(4,0.5),(3.5,3.2),(0.4,2.9)]);
    // A.buffer(-.4, join_style=2).area 5.483642842148967;
    // A.buffer(.4, join_style=2, mitre_limit=8).area 15.738821603620046
    let inward = inset(&leaning(), 0.4, None).expect("something is left");
    near(inward.area(), 5.483642842148967, 1e-12);
    let outward = inset(&leaning(), -0.4, None).expect("it grows");
    near(outward.area(), 15.738821603620046, 1e-12);
}

#[test]
fn an_inset_of_one_side() {
    // Closed form: the east end of the L, 2 m long, moved in by 1 m takes 2 m2.
    let found = inset(&l_shape(), 1.0, Some(&[1])).expect("something is left");
    near(found.area(), 19.0, 1e-12);
    near(found.bounds().high[0], 5.0, 1e-12);
}

#[test]
fn an_inset_may_part_an_outline() {
    // Closed form: two rooms of 4 m by 4 m joined by a passage 1 m wide; at 0.6 m two squares of 2.8 m remain.
    let a = rectangle([0.0, 0.0], [4.0, 4.0], 0.0, 0.0).expect("sound");
    let b = rectangle([6.0, 0.0], [4.0, 4.0], 0.0, 0.0).expect("sound");
    let passage = rectangle([3.0, 1.5], [4.0, 1.0], 0.0, 0.0).expect("sound");
    let rooms = join(&[a, b, passage]).expect("sound");
    near(rooms.area(), 34.0, 1e-12);
    let left = inset(&rooms, 0.6, None).expect("something is left");
    near(left.area(), 2.0 * 2.8 * 2.8, 1e-9);
    assert_eq!(left.rings().count(), 2);
}

#[test]
fn joined_cut_and_common() {
    // shapely 2.2.0, A as above, B = Polygon([(2,1),(6,1.7),(5,4),(1.5,3.6)]): A.union(B).area
    // 15.830494120153155, its length 17.822951337483396; A.difference(B).area 6.230494120153156;
    // A.intersection(B).area 3.7295058798468457
    let both = join(&[leaning(), across()]).expect("sound");
    near(both.area(), 15.830494120153155, 1e-12);
    near(both.perimeter(), 17.822951337483396, 1e-12);
    near(less(&leaning(), &[across()]).expect("sound").area(), 6.230494120153156, 1e-12);
    near(leaning().overlap_area(&across()), 3.7295058798468457, 1e-12);
}

#[test]
fn a_hole() {
    // shapely 2.2.0: D = square of 10 .difference(Polygon([(3,3),(5,3),(5,6),(3,6)])): area 94.0,
    // length 50.0, centroid 5.0638297872340425, 5.031914893617022
    let square = rectangle([0.0, 0.0], [10.0, 10.0], 0.0, 0.0).expect("sound");
    let island = rectangle([3.0, 3.0], [2.0, 3.0], 0.0, 0.0).expect("sound");
    let ring = less(&square, std::slice::from_ref(&island)).expect("sound");
    near(ring.area(), 94.0, 1e-12);
    near(ring.perimeter(), 50.0, 1e-12);
    near(ring.centroid()[0], 5.0638297872340425, 1e-12);
    near(ring.centroid()[1], 5.031914893617022, 1e-12);
    assert!(ring.corners().is_none() && !ring.contains([4.0, 4.0]));
    near(ring.distance_to([4.0, 4.0]), 1.0, 1e-12);
    assert!(square.covers(&ring) && !ring.covers(&square) && !ring.covers(&island));
}

#[test]
fn distances() {
    // shapely 2.2.0: L.distance(Point(5,4)) 2.0; L.exterior.distance(Point(1.2,1.1)) 1.1
    near(l_shape().distance_to([5.0, 4.0]), 2.0, 1e-12);
    near(l_shape().distance_to([1.2, 1.1]), 0.0, 0.0);
    near(l_shape().distance_to_side([1.2, 1.1]), 1.1, 1e-12);
    assert!(l_shape().contains([6.0, 1.0]) && !l_shape().contains([6.001, 1.0]));
}

#[test]
fn a_strip() {
    // shapely 2.2.0: LineString([(0,0),(3,0),(5,2),(5,5)]).buffer(.25, cap_style='flat', join_style='mitre').area
    // 4.414213562373095
    let line = [[0.0, 0.0], [3.0, 0.0], [5.0, 2.0], [5.0, 5.0]];
    let stream = strip(&line, 0.5, Side::Centre).expect("sound");
    near(stream.area(), 4.414213562373095, 1e-12);
    let left = strip(&line, 0.5, Side::Left).expect("sound");
    let right = strip(&line, 0.5, Side::Right).expect("sound");
    // Closed form: both faces' strips together are the strip of double width.
    let double = strip(&line, 1.0, Side::Centre).expect("sound");
    near(left.area() + right.area(), double.area(), 1e-12);
    assert!(left.contains([1.0, 0.4]) && right.contains([1.0, -0.4]));
}

#[test]
fn curves_keep_to_the_sagitta() {
    // Closed forms: area pi a b; an inscribed polygon falls short by at most 2/3 of sagitta x perimeter.
    let round = circle([1.0, -2.0], 2.0).expect("sound");
    let oval = ellipse([0.0, 0.0], [3.0, 1.5], 0.4).expect("sound");
    for (outline, exact) in [(&round, PI * 4.0), (&oval, PI * 4.5)] {
        let shortfall = exact - outline.area();
        assert!(shortfall > 0.0 && shortfall < 2.0 / 3.0 * SAGITTA * 1.01 * outline.perimeter());
    }
    near(round.bounds().high[0], 3.0, 1e-12);
    for (a, b) in round.sides() {
        let middle = [0.5 * (a[0] + b[0]) - 1.0, 0.5 * (a[1] + b[1]) + 2.0];
        assert!(2.0 - libm::hypot(middle[0], middle[1]) <= SAGITTA);
    }
}

#[test]
fn a_rounded_rectangle() {
    // Closed form: length x width less (4 - pi) r^2, less the sagitta's share of 2 pi r.
    let tray = rectangle([0.3, 5.1], [3.0, 1.2], 0.3, 0.15).expect("sound");
    let exact = 3.6 - (4.0 - PI) * 0.15 * 0.15;
    assert!(exact > tray.area() && exact - tray.area() < 2.0 / 3.0 * SAGITTA * 2.0 * PI * 0.16);
    let round = rectangle([0.0, 0.0], [2.0, 2.0], 0.0, 1.0).expect("half the size is the limit");
    near(round.area(), circle([1.0, 1.0], 1.0).expect("sound").area(), 1e-12);
}

#[test]
fn a_smooth_curve_through_points_of_a_circle() {
    // By symmetry the tangent at each point is square to its radius. At the middle of a stretch the
    // pyramid's weights on evenly spaced points are -1/16, 9/16, 9/16, -1/16, so that through four points of a
    // unit circle the curve stands at radius (9/8 + 1/8) cos 45 = 0.88388, and through eight at
    // 9/8 cos 22.5 - 1/8 cos 67.5 = 0.99153.
    let through = |count: usize| -> Vec<Point> {
        let angle = |i: usize| 2.0 * PI * i as f64 / count as f64;
        (0..count).map(|i| [libm::cos(angle(i)), libm::sin(angle(i))]).collect()
    };
    let four = smooth(&through(4)).expect("sound");
    near(four.distance_to_side([0.0, 0.0]), 0.88388, SAGITTA);
    let eight = smooth(&through(8)).expect("sound");
    near(eight.area(), PI, 0.02 * PI);
    near(eight.distance_to_side([0.0, 0.0]), 0.99153, SAGITTA);
    assert!(through(8).iter().all(|&p| eight.distance_to_side(p) < 1e-12));
}

#[test]
fn winding_turning_and_moving_change_nothing() {
    let mut corners = leaning().corners().expect("one ring").to_vec();
    corners.reverse();
    assert_eq!(drawn(&corners).area(), leaning().area());
    for (turn, mirror) in
        [(FRAC_PI_2, None), (0.7, None), (-2.1, Some(Mirror::AcrossX)), (1.0, Some(Mirror::AcrossY))]
    {
        let motion = Motion { about: [1.0, 2.0], mirror, turn, by: [31.7, -12.9] };
        let laid = |outline: Outline| moved(&outline, &motion).expect("finite");
        let (a, b) = (laid(leaning()), laid(across()));
        let same = |found: f64, expected: f64| near(found / expected, 1.0, 1e-9);
        same(a.area(), leaning().area());
        same(a.overlap_area(&b), leaning().overlap_area(&across()));
        same(join(&[a.clone(), b.clone()]).expect("sound").area(), 15.830494120153155);
        same(less(&a, &[b]).expect("sound").area(), 6.230494120153156);
        same(inset(&laid(l_shape()), 0.5, None).expect("sound").area(), 11.0);
    }
}
