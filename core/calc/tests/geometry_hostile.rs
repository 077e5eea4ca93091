//! Drawings that cannot be built: each answered with a sentence, none with a panic.

use std::f64::consts::PI;

use haulout_calc::geometry::{
    Bed, BedPiece, Edge, Motion, Outline, Point, Side, circle, ellipse, inset, join, less, moved, rectangle,
    smooth, strip,
};

fn why(corners: &[Point]) -> String {
    Outline::from_corners(corners.to_vec()).expect_err("unsound").why
}

fn block(size: f64) -> Outline {
    rectangle([0.0, 0.0], [size, size], 0.0, 0.0).expect("sound")
}

fn piece(outline: Outline, level: f64, edge: Edge) -> BedPiece {
    BedPiece { outline, level, edge }
}

#[test]
fn crossing_sides_are_named() {
    let found = why(&[[0.0, 0.0], [2.0, 2.0], [2.0, 0.0], [0.0, 2.0]]);
    assert!(
        found.contains("side 1 (corner 1 to corner 2)") && found.contains("side 3 (corner 3 to corner 4)"),
        "{found}"
    );
}

#[test]
fn names_count_the_corners_as_typed() {
    let found = why(&[[0.0, 0.0], [0.0, 0.0], [3.0, 2.0], [2.0, 0.0], [0.0, 2.0]]);
    assert!(
        found.contains("side 1 (corner 1 to corner 3)") && found.contains("side 4 (corner 4 to corner 5)"),
        "{found}"
    );
}

#[test]
fn spikes_and_touching_corners() {
    assert!(why(&[[0.0, 0.0], [4.0, 0.0], [6.0, 0.0], [4.0, 0.0], [4.0, 3.0]]).contains("doubles back"));
    assert!(why(&[[0.0, 0.0], [4.0, 0.0], [4.0, 4.0], [2.0, 0.0], [0.0, 4.0]]).contains("touches"));
}

#[test]
fn too_few_corners_and_no_area() {
    assert!(why(&[]).contains("at least 3"));
    assert!(why(&[[1.0, 1.0], [1.0, 1.0], [2.0, 1.0], [1.0, 1.0]]).contains("at least 3"));
    assert!(why(&[[0.0, 0.0], [1.0, 0.0], [3.0, 0.0]]).contains("one line"));
    assert!(why(&[[0.0, 0.0], [1e-6, 0.0], [0.0, 1e-6]]).contains("no area"));
}

#[test]
fn numbers_that_are_none() {
    assert!(why(&[[0.0, 0.0], [1.0, f64::NAN], [0.0, 1.0]]).contains("corner 2"));
    assert!(why(&[[0.0, 0.0], [1.0, 0.0], [0.0, f64::INFINITY]]).contains("corner 3"));
    assert!(why(&[[0.0, 0.0], [1e300, 0.0], [0.0, 1e300]]).contains("corner 2"));
    assert!(circle([0.0, 0.0], f64::NAN).is_err());
    assert!(inset(&block(1.0), f64::NAN, None).is_err());
    let motion = Motion { turn: f64::NAN, ..Motion::default() };
    assert!(moved(&block(1.0), &motion).is_err());
}

#[test]
fn repeated_and_closing_corners_are_dropped() {
    let corners = vec![[0.0, 0.0], [2.0, 0.0], [2.0, 0.0], [2.0, 2.0], [0.0, 2.0], [0.0, 0.0]];
    let outline = Outline::from_corners(corners).expect("sound");
    assert_eq!(outline.corners().map(<[Point]>::len), Some(4));
}

#[test]
fn shapes_without_size() {
    assert!(circle([0.0, 0.0], 0.0).expect_err("unsound").why.contains("radius"));
    assert!(ellipse([0.0, 0.0], [1.0, -1.0], 0.0).is_err());
    assert!(rectangle([0.0, 0.0], [1.0, 0.0], 0.0, 0.0).is_err());
    assert!(rectangle([0.0, 0.0], [3.0, 1.0], 0.0, 0.6).expect_err("unsound").why.contains("0.6"));
    assert!(strip(&[[0.0, 0.0], [0.0, 0.0]], 0.5, Side::Centre).is_err());
    assert!(smooth(&[[0.0, 0.0], [1.0, 0.0]]).is_err());
    assert!(
        smooth(&[[0.0, 0.0], [2.0, 2.0], [2.0, 0.0], [0.0, 2.0]])
            .expect_err("unsound")
            .why
            .contains("crosses itself")
    );
}

#[test]
fn strips_that_cross_themselves() {
    let back = [[0.0, 0.0], [3.0, 0.0], [0.0, 0.1]];
    assert!(strip(&back, 0.5, Side::Centre).expect_err("unsound").why.contains("point 2"));
    let knot = [[0.0, 0.0], [4.0, 0.0], [4.0, 4.0], [2.0, 4.0], [2.0, -2.0]];
    assert!(strip(&knot, 0.5, Side::Centre).expect_err("unsound").why.contains("crosses itself"));
}

#[test]
fn nothing_left() {
    assert!(inset(&block(2.0), 1.0, None).expect_err("unsound").why.contains("leaves nothing"));
    assert!(inset(&block(2.0), 50.0, None).is_err());
    assert!(inset(&block(2.0), 0.1, Some(&[4])).expect_err("unsound").why.contains("side 5"));
    assert!(less(&block(2.0), &[block(3.0)]).is_err());
    assert!(join(&[]).is_err());
}

#[test]
fn unsound_beds() {
    let slope = |run_per_rise| Edge::Slope { run_per_rise };
    assert!(
        Bed::new(piece(block(2.0), 0.1, slope(2.0)), Vec::new(), 0.0)
            .expect_err("unsound")
            .why
            .contains("rim")
    );
    assert!(Bed::new(piece(block(2.0), -1.0, slope(0.0)), Vec::new(), 0.0).is_err());
    assert!(Bed::new(piece(block(2.0), f64::NAN, Edge::Step), Vec::new(), 0.0).is_err());
    assert!(Bed::new(piece(block(2.0), -1.0, Edge::Step), Vec::new(), f64::NAN).is_err());
}

#[test]
fn a_zone_wholly_hidden_or_outside_counts_nothing() {
    let away = rectangle([9.0, 9.0], [1.0, 1.0], 0.0, 0.0).expect("sound");
    let zones = vec![
        piece(away, -5.0, Edge::Slope { run_per_rise: 1.0 }),
        piece(block(1.0), -4.0, Edge::Slope { run_per_rise: 1.0 }),
        piece(block(1.5), -1.0, Edge::Step),
    ];
    let bed = Bed::new(piece(block(2.0), -1.0, Edge::Step), zones, 0.0).expect("sound");
    assert!((bed.volume_below(0.0) - 4.0).abs() < 1e-12);
    assert!((bed.lowest() + 1.0).abs() < 1e-12);
}

#[test]
fn far_from_the_origin() {
    // Closed form: a block of 2 m a million metres out; coordinates there are good to 1e-10 m.
    let far = rectangle([1e6, -1e6], [2.0, 2.0], 0.5, 0.0).expect("sound");
    assert!((far.area() - 4.0).abs() < 1e-8);
    assert!((far.overlap_area(&far) - 4.0).abs() < 1e-8 && far.covers(&far));
    let bed = Bed::new(piece(far.clone(), -0.5, Edge::Slope { run_per_rise: 1.0 }), Vec::new(), 0.0)
        .expect("sound");
    // Prismoidal formula: 0.5/6 (4 + 4 x 2.25 + 1) = 7/6 m3.
    assert!((bed.volume_below(0.0) - 7.0 / 6.0).abs() < 1e-6);
    assert!((inset(&far, 0.5, None).expect("sound").area() - 1.0).abs() < 1e-6);
    let vast = block(1e6);
    assert!(vast.covers(&vast) && (vast.overlap_area(&vast) - 1e12).abs() < 1.0);
}

#[test]
fn five_thousand_corners() {
    // A toothed ring: every other corner 0.1 % in. Closed form: n/2 R r sin(2 pi / n).
    let radius = |i: usize| if i.is_multiple_of(2) { 10.0 } else { 9.99 };
    let angle = |i: usize| 2.0 * PI * i as f64 / 5000.0;
    let corners = (0..5000).map(|i| [radius(i) * libm::cos(angle(i)), radius(i) * libm::sin(angle(i))]);
    let gear = Outline::from_corners(corners.collect()).expect("sound");
    let exact = 2500.0 * 10.0 * 9.99 * libm::sin(2.0 * PI / 5000.0);
    assert!((gear.area() - exact).abs() < 1e-9);
    assert!((gear.overlap_area(&gear) - exact).abs() < 1e-6 && gear.covers(&gear));
    let bed = Bed::new(piece(gear.clone(), -0.5, Edge::Step), Vec::new(), 0.0).expect("sound");
    assert!((bed.volume_below(0.0) - 0.5 * exact).abs() < 1e-6);
    // The teeth's sides stand 38.5 degrees off the round, so that mitred valleys go in by 1 / cos 38.5 = 1.278 m.
    let ring = inset(&gear, 1.0, None).expect("something is left");
    assert!(ring.area() < PI * 81.0 && ring.area() > PI * 8.711 * 8.711);
}

#[test]
fn four_hundred_teeth_of_a_sloped_comb() {
    let corner = |i: usize| [0.01 * i as f64, if i.is_multiple_of(2) { 1.0 } else { 2.0 }];
    let mut corners: Vec<Point> = (0..800).map(corner).collect();
    corners.extend([[8.0, 0.0], [0.0, 0.0]]);
    let comb = Outline::from_corners(corners).expect("sound");
    let bed = Bed::new(piece(comb, -0.2, Edge::Slope { run_per_rise: 1.0 }), Vec::new(), 0.0).expect("sound");
    assert!(bed.volume_below(0.0) > 0.0);
}
