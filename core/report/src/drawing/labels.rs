//! What is lettered on the plan, in which words, and where the letters may stand.

use haulout_calc::geometry::{Outline, Point};

use super::frame::Frame;
use super::ground::{Shore, Wish};
use super::plan::{Basin, Offset, Plan, RegionKind, along, inner};
use super::svg::{Mm, cut, width};

/// Height of letters and of a line of them, millimetres.
pub(super) const SIZE: f64 = 2.5;
pub(super) const LINE: f64 = 3.0;
/// Longer letters are cut; more words than this begin a new line.
const WIDEST: f64 = 62.0;
const BROAD: f64 = 31.0;
/// Half the size of a symbol: a leader ends there.
pub(super) const SYMBOL: f64 = 1.9;
/// Places that are tried within an outline, each way.
const GRID: usize = 16;

/// Letters that look for room.
pub(super) struct Label {
    pub(super) lines: Vec<String>,
    /// What they are about.
    pub(super) at: Mm,
    /// Where they need no leader.
    pub(super) within: Vec<Mm>,
    /// Nearer than this they may not stand, unless they need no leader.
    pub(super) least: f64,
    /// Whether they may stand on water.
    pub(super) shore: Shore,
    /// A leader ends so far from the place.
    pub(super) clear: f64,
}

impl Label {
    fn new(id: &str, words: &[String], at: Mm) -> Self {
        let mut lines = vec![cut(id, SIZE, WIDEST)];
        for word in words {
            let word = cut(word, SIZE, WIDEST);
            let several = lines.len() > 1;
            match lines.last_mut() {
                Some(last) if several && width(last, SIZE) + width(&word, SIZE) < BROAD => {
                    last.push_str(", ");
                    last.push_str(&word);
                }
                _ => lines.push(word),
            }
        }
        Label { lines, at, within: Vec::new(), least: 3.0, shore: Shore::Wet, clear: 0.0 }
    }

    /// What they ask of the ground.
    pub(super) fn wish(&self) -> Wish<'_> {
        let (size, within) = (self.size(), self.within.as_slice());
        Wish { at: self.at, size, within, least: self.least, shore: self.shore, clear: self.clear }
    }

    pub(super) fn size(&self) -> Mm {
        let wide = self.lines.iter().map(|l| width(l, SIZE)).fold(0.0, f64::max);
        [wide + 1.2, LINE * self.lines.len() as f64 + 0.8]
    }
}

/// What is small is lettered before what is large: it has less room.
pub(super) fn labels(plan: &Plan, frame: &Frame) -> Vec<Label> {
    let spot = |s: &super::plan::Spot| Label { clear: SYMBOL, ..Label::new(&s.id, &s.words, frame.at(s.at)) };
    let mut labels: Vec<Label> = plan.spots.iter().map(spot).collect();
    labels.extend(plan.offsets.iter().filter_map(|o| of_offset(o, plan, frame)));
    let mut areas = small_areas(plan, frame);
    areas.sort_by(|a, b| a.0.total_cmp(&b.0));
    labels.extend(areas.into_iter().map(|(_, label)| label));
    let track = |t: &super::plan::Track| {
        let label = Label::new(&t.id, &t.words, frame.at(along(&t.line, 0.5)));
        Label { shore: Shore::Dry, ..label }
    };
    labels.extend(plan.tracks.iter().map(track));
    labels.extend(plan.basins.iter().map(|b| of_basin(b, plan, frame)));
    let over: Vec<&Outline> = inside_spaces(plan);
    let spaces = plan.regions.iter().filter(|r| r.kind == RegionKind::Space);
    labels.extend(spaces.map(|r| area(&r.id, &r.words, &r.outline, &over, frame).1));
    labels.retain(|label| label.at.iter().all(|c| c.is_finite()));
    labels
}

/// Features, basking sites, zones, with their areas.
fn small_areas(plan: &Plan, frame: &Frame) -> Vec<(f64, Label)> {
    let regions = plan.regions.iter().filter(|r| r.kind != RegionKind::Space);
    let mut areas: Vec<(f64, Label)> =
        regions.map(|r| area(&r.id, &r.words, &r.outline, &[], frame)).collect();
    for basin in &plan.basins {
        for (at, piece) in basin.pieces.iter().enumerate().filter(|(_, p)| !p.id.is_empty()) {
            let over: Vec<&Outline> = basin.pieces[at + 1..].iter().map(|p| &p.outline).take(40).collect();
            areas.push(area(&piece.id, &piece.words, &piece.outline, &over, frame));
        }
    }
    areas
}

/// What lies over the floor of a space and has letters of its own.
fn inside_spaces(plan: &Plan) -> Vec<&Outline> {
    let regions = plan.regions.iter().filter(|r| r.kind == RegionKind::Basking).map(|r| &r.outline);
    plan.basins
        .iter()
        .map(|b| &b.outline)
        .chain(regions)
        .filter(|o| o.sides().count() <= 1_000)
        .take(60)
        .collect()
}

fn of_basin(basin: &Basin, plan: &Plan, frame: &Frame) -> Label {
    let own = basin.pieces.iter().find(|p| p.id.is_empty());
    let bed = own.map(|piece| format!("bed {}", piece.words.join(", ")));
    let words: Vec<String> = basin.words.iter().cloned().chain(bed).collect();
    let zones = basin.pieces.iter().filter(|p| !p.id.is_empty()).map(|p| &p.outline).take(40);
    let sites = plan.regions.iter().filter(|r| r.kind == RegionKind::Basking).map(|r| &r.outline).take(40);
    let over: Vec<&Outline> = zones.chain(sites).collect();
    area(&basin.id, &words, &basin.outline, &over, frame).1
}

/// Letters of an area stand in what shows of it where they can.
fn area(id: &str, words: &[String], outline: &Outline, over: &[&Outline], frame: &Frame) -> (f64, Label) {
    let hidden = |p: Point| over.iter().any(|o| o.contains(p));
    let centre = inner(outline);
    if outline.sides().count() > 1_000 {
        return (outline.area(), Label::new(id, words, frame.at(centre)));
    }
    let places: Vec<Point> = grid(outline).filter(|p| outline.contains(*p) && !hidden(*p)).collect();
    let depth =
        |p: &Point| over.iter().map(|o| o.distance_to(*p)).fold(outline.distance_to_side(*p), f64::min);
    let shown = || places.iter().copied().max_by(|a, b| depth(a).total_cmp(&depth(b)));
    let anchor = if hidden(centre) { shown().unwrap_or(centre) } else { centre };
    let mut label = Label::new(id, words, frame.at(anchor));
    let half = label.size().map(|s| s / 1000.0 * frame.scale * 0.5);
    let samples = (0..9).map(|k| [f64::from(k % 3) - 1.0, f64::from(k / 3) - 1.0]);
    let offsets: Vec<Point> = samples.map(|s| [s[0] * half[0], s[1] * half[1]]).collect();
    let free = |p: &Point| {
        offsets.iter().map(|d| [p[0] + d[0], p[1] + d[1]]).all(|q| outline.contains(q) && !hidden(q))
    };
    label.within =
        std::iter::once(anchor).chain(places.iter().copied()).filter(free).map(|p| frame.at(p)).collect();
    (outline.area(), label)
}

fn grid(outline: &Outline) -> impl Iterator<Item = Point> {
    let bounds = outline.bounds();
    let step = move |i: usize, k: usize| {
        bounds.low[i] + (bounds.high[i] - bounds.low[i]) * (k as f64 + 0.5) / GRID as f64
    };
    (0..GRID).flat_map(move |x| (0..GRID).map(move |y| [step(0, x), step(1, y)]))
}

/// The distance of a line round water stands on the line, where it runs within the hall.
fn of_offset(offset: &Offset, plan: &Plan, frame: &Frame) -> Option<Label> {
    let mut label = Label::new(&offset.letters, &[], [0.0; 2]);
    let room = label.size()[0] * 0.5 / 1000.0 * frame.scale;
    let inside = |p: &Point| {
        frame.shows(*p) && plan.hall.as_ref().is_none_or(|h| h.contains(*p) && h.distance_to_side(*p) > room)
    };
    let sides = offset.outlines.iter().flat_map(Outline::sides);
    let places = sides.flat_map(|(a, b)| (0..4).map(move |k| along(&[a, b], 0.125 + 0.25 * f64::from(k))));
    label.within = places.filter(inside).take(1_000).map(|p| frame.at(p)).collect();
    label.at =
        label.within.iter().copied().max_by(|a, b| a[0].total_cmp(&b[0]).then(a[1].total_cmp(&b[1])))?;
    label.least = f64::INFINITY;
    Some(label)
}
