//! The law of refraction against published numbers and numbers by hand; rays against walls, sills and steps.

use super::{Front, Panel, View, WATER, apparent_depth, below, deepest_within, passes, places};
use crate::geometry::{Bed, BedPiece, Edge, Outline, Point, rectangle};

fn near(found: f64, by_hand: f64, within: f64) {
    assert!((found - by_hand).abs() <= within, "{found}, by hand {by_hand}");
}

/// Angles to the upright below the surface for 30, 45, 60 and 80 degrees above it, n = 1.333: 22.0301, 32.0367, 40.5176,
/// 47.6285 degrees, from asin(sin(a) / 1.333) on a pocket calculator; a swimming pool of 0.6 m seems 0.6 / 1.333 = 0.4501 m
/// deep (schoolphysics.co.uk, Refraction in a swimming pool).
#[test]
fn rays_bend_as_the_tables_say() {
    for (above, under) in [(30.0, 22.0301), (45.0, 32.0367), (60.0, 40.5176), (80.0, 47.6285)] {
        let sine = libm::sin(f64::to_radians(above));
        near(libm::asin(below(sine, 1.333)).to_degrees(), under, 5e-5);
    }
    near(apparent_depth(0.6, 1.333), 0.450_113, 1e-6);
    near(WATER, 1.333, 0.0);
}

/// livephysics.com, Observer of a swimming pool: a ray that leaves at 45 degrees meets the foot of the far wall 1.7 m away, so
/// with n = 1.33 the pool is 2.71 m deep. Turned round: an eye 1 m over the water and 1 m before the edge of that ray, a
/// point 2.70818 m deep and 2.7 m away, and the ray must pass 1 m from the eye.
#[test]
fn the_swimming_pool_of_the_textbook() {
    near(passes(1.0, 2.708_18, 2.7, 1.33), 1.0, 2e-6);
}

/// An angle above of which the sine is 0.8 (3-4-5) and n = 4/3: the sine below is 0.6. Eye 0.6 m over the water passes 0.8 m
/// away; a point 0.4 m deep lies 0.3 m farther, and 0.5 m along the ray.
#[test]
fn a_ray_of_two_plain_triangles() {
    near(passes(0.6, 0.4, 1.1, 4.0 / 3.0), 0.8, 1e-12);
    near(deepest_within(0.5, 0.6, 1.1, 4.0 / 3.0), 0.4, 1e-12);
    near(passes(0.6, 0.4, 0.0, 4.0 / 3.0), 0.0, 0.0);
    near(passes(0.6, 0.0, 1.1, 4.0 / 3.0), 1.1, 0.0);
}

#[test]
fn the_law_holds_wherever_a_ray_passes() {
    for i in 1..200 {
        let (near_by, far, across) = (0.01 * f64::from(i), 0.3 + 0.005 * f64::from(i), 0.05 * f64::from(i));
        let x = passes(near_by, far, across, WATER);
        let rest = across - x;
        let sine = x / (x * x + near_by * near_by).sqrt();
        let under = rest / (rest * rest + far * far).sqrt();
        near(sine, WATER * under, 1e-9);
        assert!(under <= 1.0 / WATER, "beyond the critical angle");
    }
}

fn pool(steps: &[([f64; 4], f64)]) -> Bed {
    let piece = |([x, y, w, d], level): &([f64; 4], f64)| BedPiece {
        outline: rectangle([*x, *y], [*w, *d], 0.0, 0.0).expect("a rectangle"),
        level: *level,
        edge: Edge::Step,
    };
    let mut pieces = steps.iter().map(piece);
    let own = pieces.next().expect("a pool");
    Bed::new(own, pieces.collect(), 0.0).expect("a sound bed")
}

fn view<'a>(bed: &'a Bed, eye: (Point, f64), fronts: &'a [Front], panels: &'a [Panel]) -> View<'a> {
    View { eye: eye.0, eye_level: eye.1, bed, water: 0.0, rim: 0.1, fronts, panels }
}

/// Eye straight over the water: the way is the depth. From aside, the rim 0.1 m over the water hides what lies close under it.
#[test]
fn the_rim_hides_what_lies_close_under_it() {
    let bed = pool(&[([0.0, 0.0, 4.0, 2.0], -0.6)]);
    let over = view(&bed, ([2.0, 1.0], 1.0), &[], &[]);
    assert_eq!(over.ways([2.0, 1.0], -0.6).surface, Some(0.6));
    let aside = view(&bed, ([2.0, -1.0], 1.0), &[], &[]);
    // Over the rim at 1 m from the eye the ray is down by at most 0.9 m: it meets the water 1/0.9 = 1.111 m from the eye.
    // There the tangent is 1.111, the sine 0.7433, under water 0.5576, the tangent 0.6718: 0.6 m deep it is 0.403 m on.
    assert!(aside.ways([2.0, 0.5], -0.6).surface.is_none());
    assert!(aside.ways([2.0, 0.111 + 0.403 + 0.01], -0.6).surface.is_some());
}

/// A step of the bed stands between the panel and the deep part.
#[test]
fn a_step_of_the_bed_hides_what_lies_behind_it() {
    let bed = pool(&[([0.0, 0.0, 4.0, 3.0], -0.8), ([0.0, 1.0, 4.0, 0.5], -0.1)]);
    let panels = [Panel { line: vec![[1.0, 0.0], [3.0, 0.0]], sill: -0.8, head: 0.5, let_into: vec![] }];
    let low = view(&bed, ([2.0, -0.6], -0.4), &[], &panels);
    assert!(low.ways([2.0, 0.6], -0.8).panels[0].is_some());
    assert!(low.ways([2.0, 2.0], -0.8).panels[0].is_none(), "the step is in the way");
    assert!(low.ways([2.0, 2.0], -0.8).surface.is_none(), "the eye lies under the surface");
}

#[test]
fn a_front_hides_and_the_panel_let_into_it_opens() {
    let bed = pool(&[([0.0, 0.0, 4.0, 3.0], -0.8)]);
    let front = [Front { line: vec![[0.0, -0.2], [4.0, -0.2]], opaque_to: 0.9 }];
    let panel = |let_into| Panel { line: vec![[1.0, 0.0], [3.0, 0.0]], sill: -0.6, head: 0.5, let_into };
    let eye = ([2.0, -0.6], 0.2);
    let hidden = [panel(vec![])];
    assert_eq!(view(&bed, eye, &front, &hidden).ways([2.0, 1.0], -0.8).shortest(), None);
    let open = [panel(vec![0])];
    assert!(view(&bed, eye, &front, &open).ways([2.0, 1.0], -0.8).shortest().is_some());
}

#[test]
fn the_grid_turns_with_the_pool() {
    let corners = |turn: f64| -> Vec<Point> {
        let (s, c) = (libm::sin(turn), libm::cos(turn));
        let turned = |[x, y]: Point| [c * x - s * y + 3.0, s * x + c * y - 2.0];
        [[0.0, 0.0], [4.0, 0.3], [4.4, 2.1], [0.5, 2.6]].map(turned).to_vec()
    };
    let bed = |turn| {
        let outline = Outline::from_corners(corners(turn)).expect("a sound outline");
        Bed::new(BedPiece { outline, level: -0.5, edge: Edge::Step }, Vec::new(), 0.0).expect("a sound bed")
    };
    let (straight, turned) = (places(&bed(0.0)), places(&bed(0.7)));
    assert_eq!(straight.len(), turned.len());
    assert!((120..=180).contains(&straight.len()), "{}", straight.len());
}
