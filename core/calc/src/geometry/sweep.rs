//! The plan area of regions laid over each other, by cutting the drawing into slabs.
//!
//! Between two neighbouring heights at which a side ends or two sides cross, no side crosses another,
//! so each gap between neighbouring sides is a trapezium: its area is its width at half height times
//! the height. Sides that coincide enclose gaps of no width and do no harm, and a crossing missed by
//! rounding costs an area of the size of that rounding. That is why no grid, no snapping and no
//! tolerance is needed here, which an overlay that must return new outlines cannot do without.

use super::outline::Bounds;
use super::point::{Point, cross, step, sub};
use super::relief::{Edge, Plane};

/// How many regions one sweep tells apart.
pub(super) const LAYERS: usize = 3;

/// Visits each pair of sides whose bounding boxes touch, each pair once, in no stated order.
pub(super) fn near_pairs(all: &[(Point, Point)], mut visit: impl FnMut(usize, usize)) {
    let boxes: Vec<[f64; 4]> = all.iter().map(|&(a, b)| frame(a, b)).collect();
    let mut order: Vec<usize> = (0..all.len()).collect();
    order.sort_unstable_by(|&i, &j| boxes[i][1].total_cmp(&boxes[j][1]).then(i.cmp(&j)));
    let mut open: Vec<usize> = Vec::new();
    for &i in &order {
        let [west, south, east, _] = boxes[i];
        open.retain(|&j| boxes[j][3] >= south);
        for &j in &open {
            if boxes[j][0] <= east && boxes[j][2] >= west {
                visit(j, i);
            }
        }
        open.push(i);
    }
}

fn frame(a: Point, b: Point) -> [f64; 4] {
    [a[0].min(b[0]), a[1].min(b[1]), a[0].max(b[0]), a[1].max(b[1])]
}

/// The inner share of a side: what meets nearer to an end meets at that end, which is known already.
const INNER: std::ops::Range<f64> = 1e-14..1.0 - 1e-14;

/// Where two straight sides cross, unless they are parallel, miss each other or meet at an end.
pub(super) fn crossing(p: (Point, Point), q: (Point, Point)) -> Option<Point> {
    let (along, other, between) = (sub(p.1, p.0), sub(q.1, q.0), sub(q.0, p.0));
    let turn = cross(along, other);
    if turn == 0.0 {
        return None;
    }
    let (t, u) = (cross(between, other) / turn, cross(between, along) / turn);
    let within = INNER.contains(&t) && INNER.contains(&u);
    within.then(|| step(p.0, along, t))
}

/// Sides of several regions, each counted by how often its rings wind round a place.
#[derive(Debug, Clone)]
pub(super) struct Sweep {
    sides: Vec<Side>,
    /// Heights at which sides end, in no order.
    ends: Vec<f64>,
    /// By how much a surface changes its plane where an edge of it is crossed eastward.
    jumps: Vec<Plane>,
    rings: u16,
    origin: Point,
    lying: bool,
}

#[derive(Debug, Clone, Copy)]
struct Side {
    low: Point,
    high: Point,
    /// How far it goes east for one metre of height.
    lean: f64,
    layer: u8,
    way: i8,
    /// The ring it is a side of, counted from 1; 0 where that may cross itself.
    ring: u16,
    /// Which of the jumps is made there; none where it is beyond them.
    jump: u32,
}

/// No jump.
const LEVEL: u32 = u32::MAX;

impl Sweep {
    /// An empty sweep for a drawing within these bounds: slabs stay short along its longer way, coordinates small.
    pub(super) fn new(bounds: Bounds) -> Self {
        let [long, high] = sub(bounds.high, bounds.low);
        let (sides, ends, jumps) = (Vec::new(), Vec::new(), Vec::new());
        Self { sides, ends, jumps, rings: 0, origin: bounds.low, lying: long > high }
    }

    /// Adds a closed ring that does not cross itself to a layer: counter-clockwise counts +1 inside it, clockwise −1.
    pub(super) fn add(&mut self, ring: &[Point], layer: usize) {
        // Beyond what is counted, sides are compared that need not be.
        self.rings = self.rings.saturating_add(1);
        let known = if self.rings < u16::MAX { self.rings } else { 0 };
        self.lay(ring, layer, known);
    }

    /// Adds a closed ring that may cross itself at will, counted as in [`Sweep::add`].
    pub(super) fn add_raw(&mut self, ring: &[Point], layer: usize) {
        self.lay(ring, layer, 0);
    }

    fn lay(&mut self, ring: &[Point], layer: usize, known: u16) {
        if ring.len() < 3 {
            return;
        }
        let place = |p: Point| {
            let [x, y] = sub(p, self.origin);
            if self.lying { [y, x] } else { [x, y] }
        };
        self.sides.reserve(ring.len());
        self.ends.reserve(ring.len());
        let mut before = place(ring[ring.len() - 1]);
        for corner in ring {
            let next = place(*corner);
            self.sides
                .extend(side(before, next, layer as u8, self.lying).map(|side| Side { ring: known, ..side }));
            self.ends.push(next[1]);
            before = next;
        }
    }

    /// Where heights of a surface are counted from.
    pub(super) fn origin(&self) -> Point {
        self.origin
    }

    /// Adds an edge of a surface, which bounds no region.
    pub(super) fn fold(&mut self, (from, to, [height, along_x, along_y]): Edge) {
        let place = |p: Point| {
            let [x, y] = sub(p, self.origin);
            if self.lying { [y, x] } else { [x, y] }
        };
        if let Some(side) = side(place(from), place(to), 0, self.lying) {
            let way = f64::from(side.way);
            let rise = if self.lying { [along_y, along_x] } else { [along_x, along_y] };
            self.sides.push(Side { way: 0, jump: self.jumps.len() as u32, ..side });
            self.jumps.push([way * height, way * rise[0], way * rise[1]]);
            self.ends.extend([side.low[1], side.high[1]]);
        }
    }

    /// The surface summed over the places whose winding numbers satisfy `counts`, and how high it comes there on any
    /// stretch larger than `least`.
    pub(super) fn relief(mut self, least: f64, counts: impl Fn(&[i32; LAYERS]) -> bool) -> (f64, f64) {
        let (mut sum, mut most) = (0.0, 0.0_f64);
        let jumps = std::mem::take(&mut self.jumps);
        self.slabs(|open, middle, half| {
            let mut winding = [0; LAYERS];
            let mut plane = [0.0; 3];
            let mut west = (0.0, 0.0);
            for (i, Cut { x, side }) in open.iter().enumerate() {
                let east = (*x, side.lean);
                if i > 0 && counts(&winding) {
                    let strip = Strip { middle, half, west, east };
                    sum += strip.sum(plane);
                    most = if strip.area() > least { most.max(strip.most(plane)) } else { most };
                }
                west = east;
                winding[usize::from(side.layer)] += i32::from(side.way);
                if let Some(jump) = jumps.get(side.jump as usize) {
                    plane = [plane[0] + jump[0], plane[1] + jump[1], plane[2] + jump[2]];
                }
            }
        });
        (sum, most)
    }

    /// Area of the places whose winding numbers, one a layer, satisfy `counts`.
    pub(super) fn area(self, counts: impl Fn(&[i32; LAYERS]) -> bool) -> f64 {
        let mut area = 0.0;
        self.slabs(|open, _, half| area += width(open, &counts) * 2.0 * half);
        area
    }

    /// Visits every slab: the sides through it with where they cross its middle, west to east, the height of the middle,
    /// and half the height of the slab.
    fn slabs(mut self, mut visit: impl FnMut(&[Cut<'_>], f64, f64)) {
        self.sides.sort_unstable_by(|a, b| a.low[1].total_cmp(&b.low[1]));
        let heights = heights(&self.sides, self.ends);
        let mut waiting = self.sides.as_slice();
        // Kept in the order of the slab before, which a slab changes in few places: the sort has next to nothing to do.
        let mut open: Vec<Cut<'_>> = Vec::new();
        for pair in heights.windows(2) {
            open.retain(|cut| cut.side.high[1] > pair[0]);
            while let [side, rest @ ..] = waiting
                && side.low[1] <= pair[0]
            {
                open.push(Cut { x: 0.0, side });
                waiting = rest;
            }
            let middle = 0.5 * (pair[0] + pair[1]);
            for Cut { x, side } in &mut open {
                *x = side.low[0] + (middle - side.low[1]) * side.lean;
            }
            in_order(&mut open);
            visit(&open, middle, 0.5 * (pair[1] - pair[0]));
        }
    }
}

/// A side, and where it crosses the middle of a slab.
#[derive(Clone, Copy)]
struct Cut<'s> {
    x: f64,
    side: &'s Side,
}

/// A side with its lower end first. Falling sides have the inside of a counter-clockwise ring to their
/// east, so crossing one eastward enters; swapping the axes turns that round. Level sides bound nothing.
fn side(a: Point, b: Point, layer: u8, swapped: bool) -> Option<Side> {
    let falls = a[1] > b[1];
    let way = if falls == swapped { -1 } else { 1 };
    let (low, high) = if falls { (b, a) } else { (a, b) };
    let lean = (high[0] - low[0]) / (high[1] - low[1]);
    (low[1] < high[1] && lean.is_finite()).then_some(Side {
        low,
        high,
        lean,
        layer,
        way,
        ring: 0,
        jump: LEVEL,
    })
}

/// What lies between two sides within a slab: where each crosses its middle, and its lean.
struct Strip {
    middle: f64,
    half: f64,
    west: (f64, f64),
    east: (f64, f64),
}

impl Strip {
    fn area(&self) -> f64 {
        2.0 * self.half * (self.east.0 - self.west.0)
    }

    /// A plane summed over it.
    fn sum(&self, [height, along, up]: Plane) -> f64 {
        let square = |a: f64, b: f64| 0.5 * (a * a - b * b);
        let ((west, west_lean), (east, east_lean)) = (self.west, self.east);
        let at_middle = (height + up * self.middle) * (east - west) + along * square(east, west);
        let bend = up * (east_lean - west_lean) + along * square(east_lean, west_lean);
        2.0 * self.half * (at_middle + self.half * self.half / 3.0 * bend)
    }

    /// The highest of its corners.
    fn most(&self, [height, along, up]: Plane) -> f64 {
        let at = |(x, lean): (f64, f64), way: f64| {
            let by = way * self.half;
            height + along * (x + lean * by) + up * (self.middle + by)
        };
        let [a, b] = [-1.0, 1.0].map(|way| at(self.west, way).max(at(self.east, way)));
        a.max(b)
    }
}

/// Sorts by insertion, which costs as many steps as there are pairs out of order.
fn in_order(open: &mut [Cut<'_>]) {
    for i in 1..open.len() {
        let mut k = i;
        while k > 0 && open[k - 1].x > open[k].x {
            open.swap(k - 1, k);
            k -= 1;
        }
    }
}

/// Every height at which a side ends or two cross, rising; the sides stand in the order of their lower ends.
fn heights(all: &[Side], ends: Vec<f64>) -> Vec<f64> {
    let mut found = ends;
    // The westmost and eastmost of a side, and how high it comes, stand with it: most pairs are told apart by these.
    let mut open: Vec<([f64; 3], &Side)> = Vec::new();
    for side in all {
        let (west, east) = (side.low[0].min(side.high[0]), side.low[0].max(side.high[0]));
        open.retain(|([_, _, high], _)| *high >= side.low[1]);
        for ([other_west, other_east, _], other) in &open {
            let apart = side.ring != 0 && side.ring == other.ring;
            if *other_west <= east && *other_east >= west && !apart {
                let place = crossing((other.low, other.high), (side.low, side.high));
                found.extend(place.map(|place| place[1]));
            }
        }
        open.push(([west, east, side.high[1]], side));
    }
    found.sort_unstable_by(f64::total_cmp);
    found.dedup();
    found
}

/// Length of one cut, west to east, that lies where `counts` holds.
fn width(open: &[Cut<'_>], counts: &impl Fn(&[i32; LAYERS]) -> bool) -> f64 {
    let mut winding = [0; LAYERS];
    let (mut total, mut west) = (0.0, None);
    for Cut { x, side } in open {
        if let Some(west) = west
            && counts(&winding)
        {
            total += x - west;
        }
        west = Some(*x);
        winding[usize::from(side.layer)] += i32::from(side.way);
    }
    total
}
