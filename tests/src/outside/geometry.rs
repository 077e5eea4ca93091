//! Plane geometry, beds and paths against another library and closed forms.

use haulout_calc::geometry::{
    Bed, BedPiece, Edge, Mirror, Motion, Outline, Point, circle, ellipse, inset, join, less, moved,
    rectangle, sharpest_corner, track_to_outline,
};
use haulout_calc::reach::{Partition, Surroundings, shortest_path};
use haulout_quantity::Basis::{self, Published};
use std::f64::consts::PI;

use super::{Row, call, sheet};

const GABLE: (&str, Basis) = ("shapely 2.2.0, Polygon([(0,0),(4,0),(4,3),(2.5,4),(0,3)])", Published);
const ELL: (&str, Basis) = ("shapely 2.2.0, Polygon([(0,0),(6,0),(6,2),(3,2),(3,5),(0,5)])", Published);
const PAIR: (&str, Basis) = (
    "shapely 2.2.0, Polygon([(0,0),(4,.5),(3.5,3.2),(.4,2.9)]) with Polygon([(2,1),(6,1.7),(5,4),(1.5,3.6)])",
    Published,
);
const HOOK: (&str, Basis) =
    ("shapely 2.2.0, Polygon([(0,0),(7,.5),(8,4),(5,3),(4.5,6),(2,4.2),(-1,5)])", Published);
const SLOPED: (&str, Basis) =
    ("scipy quad over shapely 2.2.0: area of buffer(-n z, join_style=2) from 0 to the depth", Published);
const HAND: (&str, Basis) = ("closed form by hand", Published);

fn drawn(corners: &[Point]) -> Option<Outline> {
    Outline::from_corners(corners.to_vec()).ok()
}

fn of(outline: Option<Outline>, what: fn(&Outline) -> f64) -> f64 {
    outline.as_ref().map_or(f64::NAN, what)
}

fn gable() -> Option<Outline> {
    drawn(&[[0.0, 0.0], [4.0, 0.0], [4.0, 3.0], [2.5, 4.0], [0.0, 3.0]])
}

fn ell() -> Option<Outline> {
    drawn(&[[0.0, 0.0], [6.0, 0.0], [6.0, 2.0], [3.0, 2.0], [3.0, 5.0], [0.0, 5.0]])
}

fn leaning() -> Option<Outline> {
    drawn(&[[0.0, 0.0], [4.0, 0.5], [3.5, 3.2], [0.4, 2.9]])
}

fn across() -> Option<Outline> {
    drawn(&[[2.0, 1.0], [6.0, 1.7], [5.0, 4.0], [1.5, 3.6]])
}

fn hook() -> Option<Outline> {
    drawn(&[[0.0, 0.0], [7.0, 0.5], [8.0, 4.0], [5.0, 3.0], [4.5, 6.0], [2.0, 4.2], [-1.0, 5.0]])
}

fn block(x: f64, y: f64, long: f64, wide: f64) -> Option<Outline> {
    rectangle([x, y], [long, wide], 0.0, 0.0).ok()
}

fn inset_area(outline: Option<Outline>, by: f64) -> f64 {
    of(outline.and_then(|o| inset(&o, by, None).ok()), Outline::area)
}

fn pair(work: fn(&Outline, &Outline) -> f64) -> f64 {
    leaning().zip(across()).map_or(f64::NAN, |(a, b)| work(&a, &b))
}

fn joined(a: &Outline, b: &Outline) -> f64 {
    of(join(&[a.clone(), b.clone()]).ok(), Outline::area)
}

fn lessened(a: &Outline, b: &Outline) -> f64 {
    of(less(a, std::slice::from_ref(b)).ok(), Outline::area)
}

fn step(outline: Option<Outline>, level: f64) -> Option<BedPiece> {
    Some(BedPiece { outline: outline?, level, edge: Edge::Step })
}

fn slope(outline: Option<Outline>, level: f64, run_per_rise: f64) -> Option<BedPiece> {
    Some(BedPiece { outline: outline?, level, edge: Edge::Slope { run_per_rise } })
}

fn bed(pool: Option<BedPiece>, zones: &[Option<BedPiece>]) -> Option<Bed> {
    Bed::new(pool?, zones.iter().flatten().cloned().collect(), 0.0).ok()
}

/// A pool of 6 m by 4 m, bed at -0.8, with a shelf of 6 m by 1 m at -0.2 and a pit of 2 m by 1 m at -1.2.
fn stepped() -> Option<Bed> {
    let zones = [step(block(0.0, 0.0, 6.0, 1.0), -0.2), step(block(2.0, 2.0, 2.0, 1.0), -1.2)];
    bed(step(block(0.0, 0.0, 6.0, 4.0), -0.8), &zones)
}

fn in_bed(bed: Option<Bed>, what: fn(&Bed) -> f64) -> f64 {
    bed.as_ref().map_or(f64::NAN, what)
}

fn path(wall: &[Point], top: f64, to: Point, level: f64) -> f64 {
    let Some(water) = block(0.0, 0.0, 4.0, 2.0) else { return f64::NAN };
    let partitions = if wall.is_empty() { vec![] } else { vec![Partition { line: wall.to_vec(), top }] };
    shortest_path(&Surroundings { water, rim: 0.5, partitions }, to, level)
}

/// The gable mirrored across x, turned by a right angle and moved by (1, 2).
fn laid() -> Option<Outline> {
    let motion = Motion { about: [0.0, 0.0], mirror: Some(Mirror::AcrossX), turn: PI / 2.0, by: [1.0, 2.0] };
    moved(&gable()?, &motion).ok()
}

fn corner() -> f64 {
    let room = block(0.0, 0.0, 4.0, 3.0);
    let line = [[0.0, 0.0], [4.0, 0.0], [4.0, 3.0], [0.0, 3.0], [0.0, 0.0]];
    room.map_or(f64::NAN, |room| sharpest_corner(&line, &[], &[&room]))
}

pub(super) const ROWS: &[Row] = &[
    call("", "area of the gable", GABLE, || of(gable(), Outline::area), (14.0, "m2", 1e-12)),
    call(
        "",
        "perimeter of the gable",
        GABLE,
        || of(gable(), Outline::perimeter),
        (14.495358041299246, "m", 1e-12),
    ),
    call(
        "",
        "centroid of the gable, x",
        GABLE,
        || of(gable(), |o| o.centroid()[0]),
        (2.0238095238095237, "m", 1e-12),
    ),
    call(
        "",
        "centroid of the gable, y",
        GABLE,
        || of(gable(), |o| o.centroid()[1]),
        (1.761904761904762, "m", 1e-12),
    ),
    call("", "area of the L", ELL, || of(ell(), Outline::area), (21.0, "m2", 1e-12)),
    call("", "centroid of the L, x", ELL, || of(ell(), |o| o.centroid()[0]), (2.357142857142857, "m", 1e-12)),
    call("outline moved inward", "L by 0.25 m", ELL, || inset_area(ell(), 0.25), (15.75, "m2", 1e-12)),
    call("outline moved inward", "L by 0.50 m", ELL, || inset_area(ell(), 0.5), (11.0, "m2", 1e-12)),
    call(
        "outline moved inward",
        "L by 0.30 m outward",
        ELL,
        || inset_area(ell(), -0.3),
        (27.96, "m2", 1e-12),
    ),
    call(
        "",
        "distance from the L to (7, 4)",
        ELL,
        || of(ell(), |o| o.distance_to([7.0, 4.0])),
        (2.23606797749979, "m", 1e-12),
    ),
    call(
        "",
        "distance of a line from (5, 3) to (7, 6) from the L",
        ELL,
        || of(ell(), |o| track_to_outline(&[[5.0, 3.0], [7.0, 6.0]], o)),
        (1.0, "m", 1e-12),
    ),
    call(
        "area in common",
        "two quadrangles",
        PAIR,
        || pair(Outline::overlap_area),
        (3.7295058798468457, "m2", 1e-9),
    ),
    call("outlines joined", "two quadrangles", PAIR, || pair(joined), (15.830494120153155, "m2", 1e-9)),
    call("outline less others", "two quadrangles", PAIR, || pair(lessened), (6.230494120153156, "m2", 1e-9)),
    call(
        "area of a zone that is not drawn over",
        "two quadrangles",
        PAIR,
        || pair(|a, b| a.area_beside(std::iter::once(b))),
        (6.230494120153156, "m2", 1e-9),
    ),
    call(
        "area outside",
        "two quadrangles",
        PAIR,
        || pair(|a, b| a.area() - a.overlap_area(b)),
        (6.230494120153156, "m2", 1e-9),
    ),
    call("outline as drawn", "area of a hook", HOOK, || of(hook(), Outline::area), (32.8, "m2", 1e-12)),
    call(
        "outline as drawn",
        "perimeter of a hook",
        HOOK,
        || of(hook(), Outline::perimeter),
        (28.14598710676151, "m", 1e-12),
    ),
    call(
        "outline as drawn",
        "circle of 2 m, flattened to 5 mm",
        HAND,
        || of(circle([0.0, 0.0], 2.0).ok(), Outline::area),
        (4.0 * PI, "m2", 5e-3),
    ),
    call(
        "outline as drawn",
        "ellipse of 3 m by 1 m, flattened to 5 mm",
        HAND,
        || of(ellipse([0.0, 0.0], [3.0, 1.0], 0.3).ok(), Outline::area),
        (3.0 * PI, "m2", 1e-2),
    ),
    call(
        "volume over the bed up to a level",
        "stepped pool",
        HAND,
        || in_bed(stepped(), |b| b.volume_below(0.0)),
        (16.4, "m3", 1e-12),
    ),
    call(
        "greatest depth",
        "stepped pool",
        HAND,
        || in_bed(stepped(), |b| b.greatest_depth(0.0).unwrap_or(f64::NAN)),
        (1.2, "m", 1e-12),
    ),
    call(
        "mean depth",
        "stepped pool",
        HAND,
        || in_bed(stepped(), |b| b.mean_depth(0.0).unwrap_or(f64::NAN)),
        (16.4 / 24.0, "m", 1e-12),
    ),
    call(
        "plan area between two depths",
        "stepped pool, 0.15 to 0.40 m",
        HAND,
        || in_bed(stepped(), |b| b.band_area(0.0, 0.15, 0.4)),
        (6.0, "m2", 1e-12),
    ),
    call(
        "area of the bed that lies below a level",
        "stepped pool, 1 m down",
        HAND,
        || in_bed(stepped(), |b| b.area_below(-1.0)),
        (2.0, "m2", 1e-12),
    ),
    call(
        "bed sloping down from the rim",
        "6 m by 4 m, 0.5 m deep at 1 in 1.5",
        SLOPED,
        || in_bed(bed(slope(block(0.0, 0.0, 6.0, 4.0), -0.5, 1.5), &[]), |b| b.volume_below(0.0)),
        (8.625, "m3", 1e-9),
    ),
    call(
        "piece of bed with sloped sides",
        "6 m by 4 m, 0.8 m deep at 1 in 1",
        SLOPED,
        || in_bed(bed(slope(block(0.0, 0.0, 6.0, 4.0), -0.8, 1.0), &[]), |b| b.volume_below(0.0)),
        (13.482666666666663, "m3", 1e-9),
    ),
    call(
        "piece of bed with sloped sides",
        "L, 0.6 m deep at 1 in 1, the slope round the inner corner a cone",
        HAND,
        || in_bed(bed(slope(ell(), -0.6, 1.0), &[]), |b| b.volume_below(0.0)),
        (8.928 + (1.0 - PI / 4.0) * 0.072, "m3", 1e-9),
    ),
    call(
        "piece of bed with sheer sides",
        "hook, 0.5 m deep",
        HOOK,
        || in_bed(bed(step(hook(), -0.5), &[]), |b| b.volume_below(0.0)),
        (16.4, "m3", 1e-12),
    ),
    call(
        "sharpest corner on the animals' side",
        "a rectangular room",
        HAND,
        corner,
        (PI / 2.0, "rad", 1e-12),
    ),
    call(
        "shortest path from the water round fixed partitions",
        "3-4-5 off a corner",
        HAND,
        || path(&[], 0.0, [7.0, 6.0], 0.0),
        (5.0, "m", 1e-5),
    ),
    call(
        "shortest path from the water round fixed partitions",
        "round the end of a wall: 0.5 + sqrt(2.0^2 + 0.5^2)",
        HAND,
        || path(&[[-1.0, 2.5], [3.0, 2.5]], 2.5, [1.0, 3.0], 0.4),
        (2.561_552_812_808_83, "m", 1e-5),
    ),
    sheet("distance in plan", "3-4-5", HAND, &[1.0, 2.0, 5.0, 5.0], (5.0, "m", 1e-12)),
    sheet("distance in plan", "along x", HAND, &[1.0, 2.0, 4.0, 2.0], (3.0, "m", 1e-12)),
    call(
        "outline copied",
        "mirrored, turned and moved: centroid, x",
        GABLE,
        || of(laid(), |o| o.centroid()[0]),
        (2.761904761904762, "m", 1e-12),
    ),
    call(
        "outline copied",
        "mirrored, turned and moved: centroid, y",
        GABLE,
        || of(laid(), |o| o.centroid()[1]),
        (4.023809523809524, "m", 1e-12),
    ),
];
