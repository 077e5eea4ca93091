//! The bed of a basin: the pool's own piece, and zones that lie over it in the order drawn.

use std::sync::OnceLock;

use super::sight::Sight;
use super::slope::Sums;
use super::sound::{Unsound, finite, positive};
use super::{Outline, Point};

/// Levels and depths nearer than this are the same, metres: a difference of two levels as typed must
/// not miss the depth as typed by a rounding.
const SAME_LEVEL: f64 = 1e-9;

/// A piece with less than this in sight is wholly covered, square metres.
const OUT_OF_SIGHT: f64 = 1e-9;

/// Corners of one sloped outline at most: a slope takes time by the square of them, and a shore surveyed every 100 mm over
/// 200 m has no more.
const MOST_CORNERS: usize = 2_000;

/// How a piece of bed meets what lies round it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Edge {
    /// A sheer side: the whole piece lies at its own level.
    Step,
    /// A slope from the level round it to its own level, never beyond, by the distance to its outline.
    Slope {
        /// Horizontal metres for one metre of height: 2 for a slope of 1 in 2.
        run_per_rise: f64,
    },
}

/// A piece of bed as drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct BedPiece {
    /// Where it lies.
    pub outline: Outline,
    /// Its bed level over the datum, metres.
    pub level: f64,
    /// How it meets what lies round it.
    pub edge: Edge,
}

/// The bed surface of a basin, ready to be asked for areas, volumes and depths at any level.
///
/// Only what lies within the pool's outline counts. A later zone hides what it lies over. A sloped zone
/// starts from the level of the smallest earlier zone that covers it, or else of the pool; a sloped pool
/// starts from its rim. Areas are exact for steps (to rounding); for slopes, arcs round reflex corners
/// stand within 0.5 mm of true ones and enclose their area. Volumes are exact too, but
/// where the sides of a slope meet from afar, as at the waist of an hourglass: there within about 5e-6 of area × height.
#[derive(Debug, Clone)]
pub struct Bed {
    pieces: Vec<Piece>,
}

#[derive(Debug, Clone)]
struct Piece {
    level: f64,
    sight: Sight,
    slope: Option<Slope>,
}

#[derive(Debug, Clone)]
struct Slope {
    from: f64,
    run: f64,
    /// Worked when first asked for: most beds are asked for one volume or none.
    sums: OnceLock<Sums>,
    reach: OnceLock<f64>,
}

/// A piece of bed as it came to lie: what a drawing of the bed is made from.
#[derive(Debug, Clone, Copy)]
pub struct Laid<'b> {
    /// Where it lies, parts hidden under later pieces included.
    pub outline: &'b Outline,
    /// Its level over the datum, metres.
    pub level: f64,
    /// For sloped sides: the level they start from, and horizontal metres for one metre of height.
    pub slope: Option<(f64, f64)>,
}

impl Bed {
    /// The pieces in the order drawn, the pool's own first.
    pub fn pieces(&self) -> impl Iterator<Item = Laid<'_>> {
        self.pieces.iter().map(|piece| Laid {
            outline: &piece.sight.outline,
            level: piece.level,
            slope: piece.slope.as_ref().map(|slope| (slope.from, slope.run)),
        })
    }

    /// The bed of a pool whose top stands at `rim`, with zones in the order drawn.
    ///
    /// # Errors
    /// [`Unsound`] where a level or slope is not a number, a slope's run is not above nothing, or the
    /// bed of a sloped pool does not lie below its rim.
    pub fn new(pool: BedPiece, zones: Vec<BedPiece>, rim: f64) -> Result<Self, Unsound> {
        finite("the level of the rim", rim)?;
        if pool.edge != Edge::Step && pool.level >= rim {
            return Err(Unsound::new(format!(
                "the bed of the pool at {} m does not lie below its rim at {rim} m, so its sides cannot slope down to it; lower the bed or raise the rim",
                pool.level
            )));
        }
        let mut drawn = vec![pool];
        drawn.extend(zones);
        let pieces = (0..drawn.len()).map(|i| Piece::of(&drawn, i, rim));
        Ok(Self { pieces: pieces.collect::<Result<_, _>>()? })
    }

    /// Plan area where the bed lies below a level, square metres.
    pub fn area_below(&self, level: f64) -> f64 {
        self.pieces.iter().map(|piece| piece.area_below(level)).sum()
    }

    /// Volume between the bed and a level, where the bed lies below it, cubic metres.
    pub fn volume_below(&self, level: f64) -> f64 {
        self.pieces.iter().map(|piece| piece.volume_below(level)).sum()
    }

    /// Area of the water surface at a level, square metres: the area where the bed lies below it.
    pub fn surface_area(&self, level: f64) -> f64 {
        self.area_below(level)
    }

    /// Volume by surface area, metres; `None` for a dry basin.
    pub fn mean_depth(&self, level: f64) -> Option<f64> {
        let area = self.surface_area(level);
        (area > OUT_OF_SIGHT).then(|| self.volume_below(level) / area)
    }

    /// Depth of the lowest bed in sight, metres; `None` for a dry basin.
    pub fn greatest_depth(&self, level: f64) -> Option<f64> {
        let depth = level - self.lowest();
        (depth > 0.0).then_some(depth)
    }

    /// Level of the bed at a place, metres: that of the last piece drawn over it; `None` beside the pool.
    pub fn level_at(&self, place: Point) -> Option<f64> {
        let within = |piece: &&Piece| piece.sight.outline.contains(place);
        self.pieces.first().filter(within)?;
        self.pieces.iter().rev().find(within).map(|piece| piece.level_at(place))
    }

    /// The sides of every piece, the pool's own first, as ends in metres.
    pub fn sides(&self) -> impl Iterator<Item = (Point, Point)> + '_ {
        self.pieces.iter().flat_map(|piece| piece.sight.outline.sides())
    }

    /// Whether no piece of it slopes.
    pub fn is_stepped(&self) -> bool {
        self.pieces.iter().all(|piece| piece.slope.is_none())
    }

    /// The outline of the pool.
    pub fn pool(&self) -> &Outline {
        // A bed is made of the pool's own piece and what lies over it.
        &self.pieces[0].sight.outline
    }

    /// The lowest level of the bed, metres.
    pub fn lowest(&self) -> f64 {
        let mut deepest: Vec<(f64, &Piece)> = self.pieces.iter().map(|p| (p.not_below(), p)).collect();
        // A piece that could not come lower than what is found already need not be looked into.
        deepest.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut found = f64::INFINITY;
        for (bound, piece) in deepest {
            if bound >= found {
                break;
            }
            if piece.sight.seen() > OUT_OF_SIGHT {
                found = found.min(piece.lowest());
            }
        }
        found
    }

    /// Plan area where the depth at a water level is at least `shallow` and less than `deep`, square metres.
    pub fn band_area(&self, level: f64, shallow: f64, deep: f64) -> f64 {
        let less_deep = |depth: f64| self.area_below(level - depth + SAME_LEVEL);
        (less_deep(shallow) - less_deep(deep)).max(0.0)
    }

    /// The water level at which the basin holds a volume, metres; above the highest bed its sides count as sheer.
    ///
    /// # Errors
    /// [`Unsound`] where the volume is not a number from nothing up.
    pub fn level_for_volume(&self, volume: f64) -> Result<f64, Unsound> {
        if !(volume.is_finite() && volume >= 0.0) {
            return Err(Unsound::new(format!(
                "a volume of {volume} m3 fills no basin; give one from nothing up"
            )));
        }
        let highest = self.pieces.iter().map(Piece::highest).fold(f64::NEG_INFINITY, f64::max);
        let (mut low, mut high) = (self.lowest(), highest);
        let full = self.volume_below(highest);
        if volume >= full {
            return Ok(highest + (volume - full) / self.area_below(highest + SAME_LEVEL));
        }
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if self.volume_below(middle) < volume { low = middle } else { high = middle }
        }
        Ok(0.5 * (low + high))
    }
}

impl Piece {
    fn of(drawn: &[BedPiece], i: usize, rim: f64) -> Result<Self, Unsound> {
        let BedPiece { outline, level, edge } = &drawn[i];
        let level = finite("the level of a bed", *level)?;
        let Edge::Slope { run_per_rise } = *edge else {
            return Ok(Self { level, sight: Sight::of(drawn, i, 0.0), slope: None });
        };
        let run = positive("the run of a slope for one metre of height", run_per_rise)?;
        let corners = outline.sides().count();
        if corners > MOST_CORNERS {
            return Err(Unsound::new(format!(
                "the outline of a sloped piece of bed has {corners} corners, and slopes are worked for {MOST_CORNERS} at most; draw it with fewer"
            )));
        }
        let from = if i == 0 { rim } else { level_round(&drawn[..i], outline) };
        let whole = (level - from).abs() * run;
        // A slope that starts at its own level is none.
        let slope = (whole > 0.0).then(|| Slope { from, run, sums: OnceLock::new(), reach: OnceLock::new() });
        Ok(Self { level, sight: Sight::of(drawn, i, whole), slope })
    }

    fn area_below(&self, at: f64) -> f64 {
        let seen = || self.sight.seen();
        let Some(Slope { from, run, .. }) = self.slope else {
            return if at > self.level { seen() } else { 0.0 };
        };
        if at <= from.min(self.level) {
            0.0
        } else if at > from.max(self.level) {
            seen()
        } else if self.level < from {
            self.sight.sight((from - at) * run)
        } else {
            seen() - self.sight.sight((at - from) * run)
        }
    }

    fn volume_below(&self, at: f64) -> f64 {
        let Some(Slope { from, run, sums, .. }) = &self.slope else {
            return if at > self.level { self.sight.seen() * (at - self.level) } else { 0.0 };
        };
        if at <= from.min(self.level) {
            return 0.0;
        }
        let sight = &self.sight;
        let sampled = || sums.get_or_init(|| Sums::of(sight, sight.seen(), sight.known(), sight.far));
        let beyond = |far: f64| if far > sight.known() { sampled().to(far.min(sight.far)) } else { 0.0 };
        let sum = |far: f64| sight.sum_known(far) + beyond(far);
        let whole = (self.level - from).abs() * run;
        if self.level < *from {
            let dry = sum(((from - at) * run).clamp(0.0, whole));
            (sum(whole) - dry) / run + self.sight.seen() * (at - from).max(0.0)
        } else {
            let bank = sum(((at - from) * run).clamp(0.0, whole)) / run;
            self.sight.seen() * (at - from).max(0.0) - bank
        }
    }

    fn level_at(&self, place: Point) -> f64 {
        let Some(Slope { from, run, .. }) = &self.slope else { return self.level };
        let way = self.sight.outline.distance_to_side(place) / run;
        if self.level < *from { (from - way).max(self.level) } else { (from + way).min(self.level) }
    }

    fn lowest(&self) -> f64 {
        match &self.slope {
            Some(slope) if self.level < slope.from => {
                let reach = slope.reach.get_or_init(|| self.sight.reach());
                (slope.from - reach / slope.run).max(self.level)
            }
            Some(slope) => slope.from,
            None => self.level,
        }
    }

    fn not_below(&self) -> f64 {
        self.slope.as_ref().map_or(self.level, |slope| slope.from.min(self.level))
    }

    fn highest(&self) -> f64 {
        self.slope.as_ref().map_or(self.level, |slope| slope.from.max(self.level))
    }
}

/// Level of the smallest earlier zone that covers an outline, or else of the pool.
pub(super) fn level_round(earlier: &[BedPiece], outline: &Outline) -> f64 {
    let covering = earlier[1..].iter().filter(|piece| piece.outline.covers(outline));
    let smallest = covering.min_by(|a, b| a.outline.area().total_cmp(&b.outline.area()));
    smallest.unwrap_or(&earlier[0]).level
}
