//! Places of the bed that are looked at, on a grid in the pool's own frame.

use crate::geometry::{Bed, Point};

/// How many places a bed is looked at in, about; each stands for the same plan area.
pub const SAMPLES: f64 = 150.0;

/// Sides as long as this to the longest are taken as just as long.
const AS_LONG: f64 = 1e-9;

/// Where in its cell a place lies: off the middle, so that it seldom falls on a drawn line.
const OFF: (f64, f64) = (0.513_7, 0.471_9);

/// The places: a square grid along the first of the longest sides of the pool, so that it turns and moves with the pool.
pub fn places(bed: &Bed) -> Vec<Point> {
    let pool = bed.pool();
    let longest = pool.sides().map(long).fold(0.0, f64::max);
    let Some((a, b)) = pool.sides().find(|s| long(*s) >= longest * (1.0 - AS_LONG)) else {
        return Vec::new();
    };
    let cell = (pool.area() / SAMPLES).sqrt();
    let (u, v) = frame(a, b, longest);
    let corners: Vec<Point> = pool.rings().flatten().map(|c| within(*c, a, u, v)).collect();
    let span = |i: usize| {
        let low = corners.iter().map(|c| c[i]).fold(f64::INFINITY, f64::min);
        let high = corners.iter().map(|c| c[i]).fold(f64::NEG_INFINITY, f64::max);
        ((low / cell).floor() as i32, (high / cell).ceil() as i32)
    };
    let (columns, rows) = (span(0), span(1));
    let place = |i: i32, j: i32| {
        let (x, y) = ((f64::from(i) + OFF.0) * cell, (f64::from(j) + OFF.1) * cell);
        [a[0] + u[0] * x + v[0] * y, a[1] + u[1] * x + v[1] * y]
    };
    let all = (columns.0..columns.1).flat_map(|i| (rows.0..rows.1).map(move |j| (i, j)));
    all.map(|(i, j)| place(i, j)).filter(|p| pool.contains(*p)).collect()
}

fn long((a, b): (Point, Point)) -> f64 {
    ((b[0] - a[0]) * (b[0] - a[0]) + (b[1] - a[1]) * (b[1] - a[1])).sqrt()
}

fn frame(a: Point, b: Point, longest: f64) -> (Point, Point) {
    let u = [(b[0] - a[0]) / longest, (b[1] - a[1]) / longest];
    (u, [-u[1], u[0]])
}

fn within(p: Point, a: Point, u: Point, v: Point) -> Point {
    let d = [p[0] - a[0], p[1] - a[1]];
    [d[0] * u[0] + d[1] * u[1], d[0] * v[0] + d[1] * v[1]]
}
