//! Outlines joined, and outlines with others cut away.

use geo::{BooleanOps, Coord, LineString, MultiPolygon, Polygon, unary_union};

use super::Outline;
use super::point::{NEAR, Point, distance, distance_to_side, signed_area};
use super::sound::{NO_AREA, Unsound};
use super::sweep::{crossing, near_pairs};

/// The overlay works on a grid; its corners stand within this share of the drawing's extent.
const GRID: f64 = 2e-8;

/// One outline from several: what lies in any of them. Those that touch nowhere stay separate parts.
///
/// # Errors
/// [`Unsound`] where there is nothing to join.
pub fn join(outlines: &[Outline]) -> Result<Outline, Unsound> {
    let regions: Vec<MultiPolygon> = outlines.iter().map(region).collect();
    if regions.is_empty() {
        return Err(Unsound::new("there is nothing to join; name at least one outline"));
    }
    restored(&unary_union(&regions), outlines)
}

/// What is left of an outline when others are cut away.
///
/// # Errors
/// [`Unsound`] where nothing is left.
pub fn less(outline: &Outline, away: &[Outline]) -> Result<Outline, Unsound> {
    let cuts: Vec<MultiPolygon> = away.iter().map(region).collect();
    let rest = region(outline).difference(&unary_union(&cuts));
    let mut drawn = vec![outline.clone()];
    drawn.extend_from_slice(away);
    restored(&rest, &drawn)
}

fn region(outline: &Outline) -> MultiPolygon {
    let line = |ring: &Vec<Point>| -> LineString { ring.iter().map(|&[x, y]| Coord { x, y }).collect() };
    let polygon = |part: &Vec<Vec<Point>>| {
        let mut rings = part.iter().map(line);
        let outer = rings.next().unwrap_or_else(|| LineString::new(Vec::new()));
        Polygon::new(outer, rings.collect())
    };
    MultiPolygon::new(outline.parts().iter().map(polygon).collect())
}

/// The overlay's rings with every corner put back on the drawn corner or crossing it stands for.
fn restored(found: &MultiPolygon, drawn: &[Outline]) -> Result<Outline, Unsound> {
    let places = Places::of(drawn);
    let parts = found.0.iter().filter_map(|polygon| {
        let outer = tidy(polygon.exterior(), &places, Turn::Left)?;
        let holes = polygon.interiors().iter();
        let holes = holes.filter_map(|hole| tidy(hole, &places, Turn::Right));
        Some(std::iter::once(outer).chain(holes).collect())
    });
    Outline::from_parts(parts.collect())
}

#[derive(Clone, Copy, PartialEq)]
enum Turn {
    Left,
    Right,
}

/// The ring wound as asked, without corners on straight sides or at the tips of spikes that have no width; `None` for a sliver of the grid.
fn tidy(line: &LineString, places: &Places, turn: Turn) -> Option<Vec<Point>> {
    let mut ring: Vec<Point> = line.coords().map(|c| places.nearest([c.x, c.y])).collect();
    loop {
        let count = ring.len();
        if count < 3 {
            return None;
        }
        let idle = |i: usize| {
            let (before, own, after) = (ring[(i + count - 1) % count], ring[i], ring[(i + 1) % count]);
            let beside = |place, from, to| distance_to_side(place, from, to) <= NEAR;
            distance(before, own) <= NEAR
                || beside(own, before, after)
                || beside(before, own, after)
                || beside(after, before, own)
        };
        match (0..count).find(|&i| idle(i)) {
            Some(i) => ring.remove(i),
            None => break,
        };
    }
    let area = signed_area(&ring);
    if (area > 0.0) != (turn == Turn::Left) {
        ring.reverse();
    }
    (area.abs() > NO_AREA).then_some(ring)
}

/// The drawn corners and crossings, by x, and how far from one a grid corner may stand.
struct Places {
    sorted: Vec<Point>,
    within: f64,
}

impl Places {
    fn of(drawn: &[Outline]) -> Self {
        let sides: Vec<(Point, Point)> = drawn.iter().flat_map(Outline::sides).collect();
        let mut sorted: Vec<Point> = sides.iter().map(|side| side.0).collect();
        near_pairs(&sides, |i, j| sorted.extend(crossing(sides[i], sides[j])));
        sorted.sort_unstable_by(|a, b| a[0].total_cmp(&b[0]).then(a[1].total_cmp(&b[1])));
        let bounds = drawn.iter().map(Outline::bounds);
        let extent = bounds.map(|b| distance(b.low, b.high)).fold(0.0, f64::max);
        Self { sorted, within: NEAR + GRID * extent }
    }

    fn nearest(&self, corner: Point) -> Point {
        let first = self.sorted.partition_point(|p| p[0] < corner[0] - self.within);
        let near = self.sorted[first..].iter().take_while(|p| p[0] <= corner[0] + self.within);
        let near = near.filter(|p| distance(**p, corner) <= self.within);
        let best = near.min_by(|a, b| distance(**a, corner).total_cmp(&distance(**b, corner)));
        best.copied().unwrap_or(corner)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A corner of the grid put back on the drawn one can leave a spike that goes out and back on one line.
    #[test]
    fn a_spike_without_width_is_no_part_of_a_ring() {
        let square = [[1.0, 0.0], [1.0, 1.0], [0.0, 1.0], [0.0, 0.0]];
        let places = Places { sorted: Vec::new(), within: NEAR };
        let ring =
            |corners: &[Point]| -> LineString { corners.iter().map(|&[x, y]| Coord { x, y }).collect() };
        for spike in
            [vec![[-0.5, -0.5], [0.0, 0.0]], vec![[-0.5, 0.0], [-0.2, 0.0]], vec![[0.0, -0.5], [0.0, 0.0]]]
        {
            let spiked: Vec<Point> = square.iter().copied().chain(spike).collect();
            let tidied = tidy(&ring(&spiked), &places, Turn::Left).expect("a square is left");
            assert_eq!(tidied.len(), 4, "{spiked:?} became {tidied:?}");
            assert!((signed_area(&tidied) - 1.0).abs() < 1e-12);
        }
    }
}
