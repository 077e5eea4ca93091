//! The plan in plain numbers: what stands where, in metres, and the words beside it.

use std::collections::BTreeMap;

use haulout_calc::geometry::{Bounds, Outline, Point};

/// Things with an outline that are no pool.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum RegionKind {
    /// A space of the hall.
    Space,
    /// Something to stand on.
    Feature,
    /// A place to bask.
    Basking,
}

/// A thing with an outline.
#[derive(Debug, Clone)]
pub(super) struct Region {
    pub(super) id: String,
    pub(super) kind: RegionKind,
    pub(super) outline: Outline,
    pub(super) words: Vec<String>,
}

/// A piece of the bed of a pool.
#[derive(Debug, Clone)]
pub(super) struct Piece {
    /// Its zone; empty for the pool's own bed.
    pub(super) id: String,
    pub(super) outline: Outline,
    /// Below the water level, metres.
    pub(super) depth: Option<f64>,
    /// For sloped sides: the depth they start from, and horizontal metres for one metre of depth.
    pub(super) slope: Option<(f64, f64)>,
    pub(super) words: Vec<String>,
}

/// A pool.
#[derive(Debug, Clone)]
pub(super) struct Basin {
    pub(super) id: String,
    pub(super) outline: Outline,
    pub(super) pieces: Vec<Piece>,
    pub(super) words: Vec<String>,
}

/// Things with a line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum TrackKind {
    /// Keeps animals in.
    Barrier,
    /// Is looked through.
    Panel,
    /// Keeps visitors from falling.
    Guard,
    /// An electrical path goes round it.
    Partition,
    /// Water runs along it, from pool to pool.
    Stream,
}

/// A thing with a line.
#[derive(Debug, Clone)]
pub(super) struct Track {
    pub(super) id: String,
    pub(super) kind: TrackKind,
    pub(super) line: Vec<Point>,
    pub(super) words: Vec<String>,
}

/// Things with a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum SpotKind {
    /// An electrical item, with the letters of its kind.
    Item(&'static str),
    /// Takes water.
    Intake,
    /// Gives water back.
    Return,
    /// Lets water out that is too much.
    Overflow,
    /// Lets animals out of the water.
    Exit,
    /// Somebody looks from here.
    Position,
    /// A door, somewhere along its barrier.
    Door,
}

/// A thing with a place.
#[derive(Debug, Clone)]
pub(super) struct Spot {
    pub(super) id: String,
    pub(super) kind: SpotKind,
    pub(super) at: Point,
    /// How far its cord and case reach, metres.
    pub(super) reach: Option<f64>,
    pub(super) words: Vec<String>,
}

/// A line at a distance from the water.
#[derive(Debug, Clone)]
pub(super) struct Offset {
    /// What it is, for the legend.
    pub(super) words: String,
    /// On the line itself.
    pub(super) letters: String,
    /// Its position among the lines of its family.
    pub(super) rank: usize,
    pub(super) outlines: Vec<Outline>,
}

/// Everything there is to draw.
#[derive(Debug, Clone, Default)]
pub(super) struct Plan {
    pub(super) hall: Option<Outline>,
    pub(super) regions: Vec<Region>,
    pub(super) basins: Vec<Basin>,
    pub(super) tracks: Vec<Track>,
    pub(super) spots: Vec<Spot>,
    pub(super) offsets: Vec<Offset>,
    /// Things without a place of their own, and whose place stands for them.
    pub(super) aliases: BTreeMap<String, String>,
    /// Whole sentences.
    pub(super) not_drawn: Vec<String>,
}

impl Plan {
    /// Whether there is nothing at all.
    pub(super) fn is_empty(&self) -> bool {
        self.hall.is_none()
            && self.regions.is_empty()
            && self.basins.is_empty()
            && self.tracks.is_empty()
            && self.spots.is_empty()
    }

    /// The bounds the sheet is cut to: of the hall where it is drawn, otherwise of everything.
    pub(super) fn bounds(&self) -> Bounds {
        if let Some(hall) = &self.hall {
            return hall.bounds();
        }
        let outlines = self.regions.iter().map(|r| &r.outline).chain(self.basins.iter().map(|b| &b.outline));
        let corners = outlines.map(Outline::bounds).flat_map(|b| [b.low, b.high]);
        let places = self.tracks.iter().flat_map(|t| t.line.iter().copied());
        let all = corners.chain(places).chain(self.spots.iter().map(|s| s.at));
        let all: Vec<Point> = all.filter(|p| p.iter().all(|c| c.is_finite())).collect();
        let Some(first) = all.first().copied() else { return Bounds { low: [0.0; 2], high: [0.0; 2] } };
        all.iter().fold(Bounds { low: first, high: first }, |b, p| Bounds {
            low: [b.low[0].min(p[0]), b.low[1].min(p[1])],
            high: [b.high[0].max(p[0]), b.high[1].max(p[1])],
        })
    }

    /// Where each thing is pointed to: the middle of an outline, of a line, a place.
    pub(super) fn places(&self) -> BTreeMap<String, Point> {
        let mut places = BTreeMap::new();
        places.extend(self.hall.iter().map(|o| ("hall".to_owned(), inner(o))));
        places.extend(self.regions.iter().map(|r| (r.id.clone(), inner(&r.outline))));
        places.extend(self.basins.iter().map(|b| (b.id.clone(), inner(&b.outline))));
        let pieces = self.basins.iter().flat_map(|b| &b.pieces).filter(|p| !p.id.is_empty());
        places.extend(pieces.map(|p| (p.id.clone(), inner(&p.outline))));
        places.extend(self.tracks.iter().map(|t| (t.id.clone(), middle(&t.line))));
        places.extend(self.spots.iter().map(|s| (s.id.clone(), s.at)));
        let stand_in = |(id, of): (&String, &String)| Some((id.clone(), *places.get(of)?));
        let more: Vec<(String, Point)> = self.aliases.iter().filter_map(stand_in).collect();
        for (id, place) in more {
            places.entry(id).or_insert(place);
        }
        places
    }
}

/// The centre of an outline, or the place within it that is farthest from its sides on a coarse grid.
pub(super) fn inner(outline: &Outline) -> Point {
    let centre = outline.centroid();
    // Far more sides than a plan has are not searched again and again.
    if outline.sides().count() > 2_000 || outline.contains(centre) {
        return centre;
    }
    let Bounds { low, high } = outline.bounds();
    let step = |i: usize, k: usize| low[i] + (high[i] - low[i]) * (k as f64 + 0.5) / 12.0;
    let grid = (0..12).flat_map(|x| (0..12).map(move |y| [step(0, x), step(1, y)]));
    let within = grid.filter(|p| outline.contains(*p));
    let depth = |p: &Point| outline.distance_to_side(*p);
    within.max_by(|a, b| depth(a).total_cmp(&depth(b))).unwrap_or(centre)
}

/// The middle of a line by its length.
pub(super) fn middle(line: &[Point]) -> Point {
    along(line, 0.5)
}

/// The place at a share of the length of a line.
pub(super) fn along(line: &[Point], share: f64) -> Point {
    let long = |w: &[Point]| ((w[1][0] - w[0][0]).powi(2) + (w[1][1] - w[0][1]).powi(2)).sqrt();
    let mut rest = line.windows(2).map(long).sum::<f64>() * share;
    for piece in line.windows(2) {
        let length = long(piece);
        if rest <= length && length > 0.0 {
            let share = rest / length;
            return [0, 1].map(|i| piece[0][i] + (piece[1][i] - piece[0][i]) * share);
        }
        rest -= length;
    }
    line.first().copied().unwrap_or_default()
}
