//! Beds of basins: volumes, areas and depth bands against closed forms and shapely 2.2.0 (GEOS 3.14.1).

use std::f64::consts::PI;

use haulout_calc::geometry::{Bed, BedPiece, Edge, Motion, Outline, Point, circle, inset, moved, rectangle};

const L: [Point; 6] = [[0.0, 0.0], [6.0, 0.0], [6.0, 2.0], [3.0, 2.0], [3.0, 5.0], [0.0, 5.0]];
const HOOK: [Point; 7] =
    [[0.0, 0.0], [7.0, 0.5], [8.0, 4.0], [5.0, 3.0], [4.5, 6.0], [2.0, 4.2], [-1.0, 5.0]];
const ZONE: [Point; 6] = [[1.0, 0.8], [5.0, 1.0], [4.6, 2.6], [2.5, 2.4], [2.0, 3.5], [1.0, 3.3]];

fn drawn(corners: &[Point]) -> Outline {
    Outline::from_corners(corners.to_vec()).expect("a sound outline")
}

fn step(outline: Outline, level: f64) -> BedPiece {
    BedPiece { outline, level, edge: Edge::Step }
}

fn slope(outline: Outline, level: f64, run_per_rise: f64) -> BedPiece {
    BedPiece { outline, level, edge: Edge::Slope { run_per_rise } }
}

fn bed(pool: BedPiece, zones: Vec<BedPiece>) -> Bed {
    Bed::new(pool, zones, 0.0).expect("a sound bed")
}

fn block(x: f64, y: f64, long: f64, wide: f64) -> Outline {
    rectangle([x, y], [long, wide], 0.0, 0.0).expect("sound")
}

#[track_caller]
fn near(found: f64, expected: f64, within: f64) {
    assert!((found - expected).abs() <= within, "{found} is not {expected}");
}

/// A pool of 6 m by 4 m, bed at -0.8, with a shelf of 6 m by 1 m at -0.2 and a pit of 2 m by 1 m at -1.2.
fn stepped() -> Bed {
    bed(
        step(block(0.0, 0.0, 6.0, 4.0), -0.8),
        vec![step(block(0.0, 0.0, 6.0, 1.0), -0.2), step(block(2.0, 2.0, 2.0, 1.0), -1.2)],
    )
}

#[test]
fn a_stepped_pool() {
    // Closed form: 16 m2 at 0.8 m, 6 m2 at 0.2 m, 2 m2 at 1.2 m hold 12.8 + 1.2 + 2.4 = 16.4 m3.
    near(stepped().volume_below(0.0), 16.4, 1e-12);
    near(stepped().mean_depth(0.0).expect("wet"), 16.4 / 24.0, 1e-12);
    near(stepped().greatest_depth(0.0).expect("wet"), 1.2, 1e-12);
    near(stepped().band_area(0.0, 0.0, 0.2), 0.0, 1e-12);
    near(stepped().band_area(0.0, 0.2, 0.8), 6.0, 1e-12);
    near(stepped().band_area(0.0, 0.8, 1.2), 16.0, 1e-12);
    near(stepped().band_area(0.0, 0.8, 9.0), 18.0, 1e-12);
}

#[test]
fn the_water_lowered() {
    // Closed form: at -0.3 the shelf is dry; 16 x 0.5 + 2 x 0.9 = 9.8 m3 on 18 m2.
    near(stepped().volume_below(-0.3), 9.8, 1e-12);
    near(stepped().surface_area(-0.3), 18.0, 1e-12);
    near(stepped().level_for_volume(9.8).expect("a volume"), -0.3, 1e-9);
    near(stepped().level_for_volume(16.4 + 2.4).expect("a volume"), 0.1, 1e-9);
    assert_eq!(stepped().mean_depth(-1.2), None);
    assert_eq!(stepped().greatest_depth(-1.3), None);
}

#[test]
fn later_zones_hide_earlier_ones() {
    // Closed form: 4 m2 at 1 m, of which 1 m2 at 2 m and over a half of that again 0.5 m: 3 + 0.5 x 2 + 0.5 x 0.5.
    let found = bed(
        step(block(0.0, 0.0, 2.0, 2.0), -1.0),
        vec![step(block(0.0, 0.0, 1.0, 1.0), -2.0), step(block(0.5, -3.0, 0.5, 4.0), -0.5)],
    );
    near(found.volume_below(0.0), 4.25, 1e-12);
}

#[test]
fn an_l_shaped_basin_between_mitred_outlines() {
    // Prismoidal formula with shapely's mitred buffers of the L (21, 15.75 and 11 m2): 0.6/6 (21 + 4 x 15.75 + 11) = 9.5 m3.
    let at = |by: f64| inset(&drawn(&L), by, None).expect("something is left").area();
    near(0.6 / 6.0 * (drawn(&L).area() + 4.0 * at(0.25) + at(0.5)), 9.5, 1e-12);
}

#[test]
fn eroded_areas_of_an_l() {
    // shapely 2.2.0: L.buffer(-d, quad_segs=2000).area for d = .25, .5, .8:
    // 15.763412619834252, 11.05365047933702, 6.097345227102762
    let basin = bed(slope(drawn(&L), -0.9, 1.0), Vec::new());
    for (depth, area) in [(0.25, 15.763412619834252), (0.5, 11.05365047933702), (0.8, 6.097345227102762)] {
        near(basin.area_below(-depth), area, 1e-6);
    }
}

#[test]
fn a_sloped_l_shaped_basin() {
    // shapely 2.2.0: composite Simpson of L.buffer(-r, quad_segs=400).area, r from 0 (0.45) to 1.2 m in 2400
    // steps, divided by 1.5: 7.9212620597184475 (3.0209163315543837)
    let basin = bed(slope(drawn(&L), -0.8, 1.5), Vec::new());
    near(basin.volume_below(0.0) / 7.9212620597184475, 1.0, 1e-5);
    near(basin.volume_below(-0.3) / 3.0209163315543837, 1.0, 1e-5);
}

#[test]
fn a_sloped_hooked_basin() {
    // shapely 2.2.0: C = Polygon of the seven corners; composite Simpson of C.buffer(-r, quad_segs=400).area,
    // r from 0 to 1 m in 4000 steps, divided by 2: 10.261538272153242; C.buffer(-.6, quad_segs=2000).area
    // 17.85216228084998; C.buffer(-1., quad_segs=2000).area 10.042219962424292
    let basin = bed(slope(drawn(&HOOK), -0.5, 2.0), Vec::new());
    near(basin.volume_below(0.0) / 10.261538272153242, 1.0, 1e-5);
    near(basin.area_below(-0.3), 17.85216228084998, 1e-6);
    near(basin.area_below(-0.5 + 1e-12), 10.042219962424292, 1e-6);
    assert_eq!(basin.area_below(-0.5), 0.0);
}

#[test]
fn a_slope_that_never_reaches_its_floor() {
    // shapely 2.2.0: maximum_inscribed_circle(C, 1e-9).length 2.1143548348744865; at 1 in 2 that is 1.05717742 m.
    let basin = bed(slope(drawn(&HOOK), -9.0, 2.0), Vec::new());
    near(basin.greatest_depth(0.0).expect("wet"), 1.05717742, 1e-5);
}

#[test]
fn a_sloped_zone_under_a_stepped_one() {
    // shapely 2.2.0: V(r) = Z.buffer(-r, quad_segs=1000).intersection(C).difference(T), T the block of 1.5 m by 0.6 m:
    // V(0) 6.345, V(.4) 2.102291140552837; composite Simpson of V from 0 to 0.6 m in 3200 steps 1.9095475311931938.
    // The pool lies at -0.4, the zone falls 1 in 2 to -0.7, the block stands at -0.1.
    let basin = bed(
        step(drawn(&HOOK), -0.4),
        vec![slope(drawn(&ZONE), -0.7, 2.0), step(block(1.5, 1.2, 1.5, 0.6), -0.1)],
    );
    let sheer = (32.8 - 7.245) * 0.4 + 6.345 * 0.4 + 0.9 * 0.1;
    near(basin.volume_below(0.0), sheer + 1.9095475311931938 / 2.0, 1e-5);
    near(basin.area_below(-0.6), 2.102291140552837, 1e-6);
}

#[test]
fn a_mound_is_the_pit_turned_over() {
    // Closed form: a zone rising as a pit falls takes from the water what the pit adds.
    let with =
        |level: f64| bed(step(drawn(&HOOK), -0.6), vec![slope(drawn(&ZONE), level, 2.0)]).volume_below(0.0);
    let flat = 32.8 * 0.6;
    near(with(-0.9) - flat, flat - with(-0.3), 1e-5);
    assert!(with(-0.9) > flat + 0.5);
}

#[test]
fn a_slope_starts_from_the_zone_it_lies_on() {
    // Closed form: a pit of 1 m by 1 m, 0.2 m deep at 1 in 1, in a zone at -0.5: frustum 0.2/3 (1 + 0.36 + 0.6) m3.
    let basin = bed(
        step(block(0.0, 0.0, 5.0, 5.0), -0.3),
        vec![step(block(1.0, 1.0, 3.0, 3.0), -0.5), slope(block(2.0, 2.0, 1.0, 1.0), -0.7, 1.0)],
    );
    near(basin.volume_below(0.0), 16.0 * 0.3 + 9.0 * 0.5 + 0.2 / 3.0 * 1.96, 1e-6);
}

#[test]
fn a_frustum_of_a_rectangle() {
    // Prismoidal formula: 6 x 4 falling 1 in 2 by 0.5 m: 0.5/6 (24 + 4 x 5 x 3 + 4 x 2) = 23/3 m3.
    let basin = bed(slope(block(0.0, 0.0, 6.0, 4.0), -0.5, 2.0), Vec::new());
    near(basin.volume_below(0.0) * 3.0 / 23.0, 1.0, 1e-9);
    // Beyond the ridge: a hipped hollow, span 4 m, 1 in 2, 1 m deep: 4 (3 x 6 - 4) / 6 m3 = 28/3.
    let hip = bed(slope(block(0.0, 0.0, 6.0, 4.0), -3.0, 2.0), Vec::new());
    near(hip.volume_below(0.0) * 3.0 / 28.0, 1.0, 1e-5);
    near(hip.greatest_depth(0.0).expect("wet"), 1.0, 1e-5);
}

#[test]
fn a_frustum_of_a_cone() {
    // Closed form: h/3 pi (R^2 + R r + r^2), R = 2, r = 1, h = 0.5, on a polygon of 2000 corners whose area is short
    // by 1.6e-6; and the same share of the regular polygon that the sagitta gives.
    let angle = |i: usize| 2.0 * PI * i as f64 / 2000.0;
    let fine =
        drawn(&(0..2000).map(|i| [2.0 * libm::cos(angle(i)), 2.0 * libm::sin(angle(i))]).collect::<Vec<_>>());
    let cone = bed(slope(fine, -0.5, 2.0), Vec::new());
    near(cone.volume_below(0.0) / (0.5 / 3.0 * PI * 7.0), 1.0, 1e-5);
    let drawn = circle([0.0, 0.0], 2.0).expect("sound");
    let (area, inner) = (drawn.area(), drawn.distance_to_side([0.0, 0.0]));
    let ratio = (inner - 1.0) / inner;
    let exact = 0.5 / 3.0 * area * (1.0 + ratio + ratio * ratio);
    near(bed(slope(drawn, -0.5, 2.0), Vec::new()).volume_below(0.0) / exact, 1.0, 1e-9);
}

#[test]
fn areas_and_volumes_rise_with_the_level() {
    let basin = bed(
        slope(drawn(&HOOK), -0.6, 1.5),
        vec![slope(drawn(&ZONE), -1.1, 1.0), step(block(4.0, 1.0, 3.0, 1.0), -0.2)],
    );
    let levels = (0..60).map(|i| -1.3 + 0.025 * f64::from(i));
    let pairs: Vec<(f64, f64)> = levels.map(|l| (basin.area_below(l), basin.volume_below(l))).collect();
    assert!(pairs.windows(2).all(|p| p[0].0 <= p[1].0 + 1e-9 && p[0].1 <= p[1].1 + 1e-9), "{pairs:?}");
}

#[test]
fn turning_and_moving_the_drawing() {
    let zones = |motion: &Motion, edge: Edge| {
        let laid = |corners: &[Point]| moved(&drawn(corners), motion).expect("finite");
        let piece = |corners: &[Point], level| BedPiece { outline: laid(corners), level, edge };
        let block = [[4.0, 1.0], [7.0, 1.0], [7.0, 2.0], [4.0, 2.0]];
        bed(piece(&HOOK, -0.6), vec![piece(&ZONE, -1.1), piece(&block, -0.2)]).volume_below(0.0)
    };
    let stay = Motion::default();
    for turn in [0.3, 1.9, -2.7] {
        let motion = Motion { turn, by: [41.3, -7.7], ..stay };
        near(zones(&motion, Edge::Step) / zones(&stay, Edge::Step), 1.0, 1e-9);
        let sloped = Edge::Slope { run_per_rise: 1.3 };
        near(zones(&motion, sloped) / zones(&stay, sloped), 1.0, 1e-5);
    }
}

#[test]
fn volumes_scale_with_the_cube() {
    let scaled = |by: f64| {
        let corners: Vec<Point> = HOOK.iter().map(|p| [p[0] * by, p[1] * by]).collect();
        bed(slope(drawn(&corners), -0.5 * by, 2.0), Vec::new()).volume_below(0.0)
    };
    near(scaled(3.0) / scaled(1.0), 27.0, 27.0 * 1e-6);
}

/// A pool 4 m by 3 m round an island 0.4 m by 0.4 m, at 1 in 1 from a rim at 0 down to 1 m; a step 1 m by 1 m, 2 m deep, lies
/// round the island. In sight of the pool's own piece is 12 - 1 = 11 m2, none of it within 0.3 m of the island: 0.2 m under
/// the rim only the frame along the rim is dry, 12 - 3.6 x 2.6 = 2.64 m2 of it; the step adds 1 - 0.16 m2.
#[test]
fn an_island_under_a_zone_hides_nothing_beside_it() {
    let island = rectangle([1.8, 1.3], [0.4, 0.4], 0.0, 0.0).expect("an island");
    let outline = haulout_calc::geometry::less(
        &rectangle([0.0, 0.0], [4.0, 3.0], 0.0, 0.0).expect("a pool"),
        &[island],
    )
    .expect("a pool round an island");
    let zone = rectangle([1.5, 1.0], [1.0, 1.0], 0.0, 0.0).expect("a zone");
    let pool = BedPiece { outline, level: -1.0, edge: Edge::Slope { run_per_rise: 1.0 } };
    let zone = BedPiece { outline: zone, level: -2.0, edge: Edge::Step };
    let bed = Bed::new(pool, vec![zone], 0.0).expect("sound");
    let found = bed.area_below(-0.2);
    assert!((found - (11.0 - 2.64 + 0.84)).abs() < 1e-9, "{found}");
}

#[test]
fn a_slope_from_too_many_corners_is_refused_with_a_way_out() {
    let ring = |count: usize| -> Vec<[f64; 2]> {
        let turn = |i: usize| i as f64 / count as f64 * std::f64::consts::TAU;
        (0..count).map(|i| [9.0 * libm::cos(turn(i)), 9.0 * libm::sin(turn(i))]).collect()
    };
    let bed = |count: usize| {
        let outline = Outline::from_corners(ring(count)).expect("a ring");
        Bed::new(BedPiece { outline, level: -0.5, edge: Edge::Slope { run_per_rise: 1.0 } }, Vec::new(), 0.0)
    };
    // A cone cut off 0.5 m down: pi h (R^2 + R r + r^2) / 3 with R = 9, r = 8.5.
    let whole = std::f64::consts::PI * 0.5 * (81.0 + 76.5 + 72.25) / 3.0;
    let found = bed(2_000).expect("as many as are worked").volume_below(0.0);
    assert!((found / whole - 1.0).abs() < 1e-5, "{found} and {whole}");
    let refused = bed(2_001).expect_err("one more").why;
    assert!(refused.contains("2001 corners") && refused.contains("fewer"), "{refused}");
}
