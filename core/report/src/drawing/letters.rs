//! Letters and balloons: every id beside what it names, every shortfall's number at the place of its subject.

use haulout_calc::geometry::Outline;

use super::frame::Frame;
use super::ground::{Ground, Led, Spread};
use super::keynotes::Balloon;
use super::plan::{Plan, RegionKind, Track, inner};
use super::style::{Fill, Stroke};
use super::svg::{Anchor, Mm, Svg, Weight, cut, width};

const SIZE: f64 = 2.5;
const LINE: f64 = 3.0;
/// Longer letters are cut.
const WIDEST: f64 = 62.0;
/// Radius of a balloon and distance of the next, millimetres.
const BALLOON: f64 = 2.7;
const NEXT: f64 = 5.9;
const IN_A_ROW: usize = 6;

/// Letters that look for room.
struct Label {
    lines: Vec<String>,
    at: Mm,
    within: Vec<Mm>,
    least: f64,
}

impl Label {
    fn new(id: &str, words: &[String], at: Mm) -> Self {
        let mut lines = vec![cut(id, SIZE, WIDEST)];
        let rest = words.join(", ");
        if !rest.is_empty() {
            lines.push(cut(&rest, SIZE, WIDEST));
        }
        Label { lines, at, within: Vec::new(), least: 0.0 }
    }

    fn size(&self) -> Mm {
        let wide = self.lines.iter().map(|l| width(l, SIZE)).fold(0.0, f64::max);
        [wide + 1.2, LINE * self.lines.len() as f64 + 0.8]
    }

    fn draw(&self, spread: Spread, led: Led, svg: &mut Svg) {
        if led == Led::Yes {
            svg.line(spread.nearest(self.at), self.at, Stroke::LEADER);
            svg.circle(self.at, 0.35, Fill::INK, Stroke::NONE);
        }
        let corner = spread.corner();
        svg.put("<g fill-opacity=\"0.78\">");
        svg.rectangle(corner, spread.size, Fill::PAPER, Stroke::NONE);
        svg.put("</g>");
        for (at, line) in self.lines.iter().enumerate() {
            let weight = if at == 0 { Weight::Bold } else { Weight::Plain };
            let place = [spread.middle[0], corner[1] + LINE * (at as f64 + 1.0) - 0.5];
            svg.text(place, SIZE, Anchor::Middle, weight, line);
        }
    }
}

/// Letters everything; gives back what found no room.
pub(super) fn letter(plan: &Plan, balloons: &[Balloon], frame: &Frame, svg: &mut Svg) -> Vec<String> {
    let mut ground = ground(plan, frame);
    let mut crowded = Vec::new();
    svg.group("balloons");
    for balloon in balloons.iter().filter(|b| frame.shows(b.at)) {
        draw_balloon(balloon, frame, &mut ground, svg);
    }
    svg.end();
    svg.group("letters");
    for label in labels(plan, frame) {
        match ground.room(label.at, label.size(), &label.within, label.least) {
            Some((spread, led)) => label.draw(spread, led, svg),
            None => crowded.push(label.lines[0].clone()),
        }
    }
    svg.end();
    crowded
}

fn draw_balloon(balloon: &Balloon, frame: &Frame, ground: &mut Ground, svg: &mut Svg) {
    let count = balloon.numbers.len();
    let (columns, rows) = (count.min(IN_A_ROW), count.div_ceil(IN_A_ROW));
    let size = [NEXT * columns as f64, NEXT * rows as f64];
    let at = frame.at(balloon.at);
    let Some((spread, _)) = ground.room(at, size, &[], 7.0) else { return };
    svg.line(spread.nearest(at), at, Stroke { width: 0.35, ..Stroke::LEADER });
    svg.circle(at, 0.7, Fill::INK, Stroke::NONE);
    let corner = spread.corner();
    for (k, number) in balloon.numbers.iter().enumerate() {
        let (column, row) = ((k % IN_A_ROW) as f64 + 0.5, (k / IN_A_ROW) as f64 + 0.5);
        draw_number([corner[0] + NEXT * column, corner[1] + NEXT * row], *number, svg);
    }
}

/// A number in a black balloon.
pub(super) fn draw_number(at: Mm, number: usize, svg: &mut Svg) {
    svg.circle(at, BALLOON, Fill::INK, Stroke::NONE);
    let size = if number > 99 { 2.2 } else { 3.0 };
    svg.text([at[0], at[1] + 0.36 * size], size, Anchor::Middle, Weight::White, &number.to_string());
}

/// Lines weigh by how much a letter on them would hide.
fn ground(plan: &Plan, frame: &Frame) -> Ground {
    let mut ground = Ground::new();
    let mut ring = |outline: &Outline, weight: u32| {
        for (a, b) in outline.sides() {
            ground.line(frame.at(a), frame.at(b), weight);
        }
    };
    plan.hall.iter().for_each(|o| ring(o, 2));
    plan.regions.iter().for_each(|r| ring(&r.outline, 1));
    plan.basins.iter().for_each(|b| ring(&b.outline, 2));
    plan.basins.iter().flat_map(|b| &b.pieces).for_each(|p| ring(&p.outline, 1));
    plan.offsets.iter().flat_map(|o| &o.outlines).for_each(|o| ring(o, 1));
    for track in &plan.tracks {
        track.line.windows(2).for_each(|w| ground.line(frame.at(w[0]), frame.at(w[1]), 2));
    }
    for spot in plan.spots.iter().filter(|s| frame.shows(s.at)) {
        ground.take(Spread { middle: frame.at(spot.at), size: [3.6, 3.6] });
    }
    ground
}

/// What is small is lettered before what is large: it has less room.
fn labels(plan: &Plan, frame: &Frame) -> Vec<Label> {
    let mut labels = Vec::new();
    for spot in &plan.spots {
        labels.push(Label { least: 3.0, ..Label::new(&spot.id, &spot.words, frame.at(spot.at)) });
    }
    let mut areas: Vec<(f64, Label)> = Vec::new();
    for region in plan.regions.iter().filter(|r| r.kind != RegionKind::Space) {
        areas.push(area(&region.id, &region.words, &region.outline, frame));
    }
    for piece in plan.basins.iter().flat_map(|b| &b.pieces).filter(|p| !p.id.is_empty()) {
        areas.push(area(&piece.id, &piece.words, &piece.outline, frame));
    }
    areas.sort_by(|a, b| a.0.total_cmp(&b.0));
    labels.extend(areas.into_iter().map(|(_, label)| label));
    labels.extend(plan.tracks.iter().map(|track| of_track(track, frame)));
    let pools = plan.basins.iter().map(|b| {
        let own = b.pieces.iter().find(|p| p.id.is_empty()).and_then(|p| p.words.first());
        let bed = own.map(|depth| format!("bed {depth}"));
        let words: Vec<String> = b.words.iter().cloned().chain(bed).collect();
        area(&b.id, &words, &b.outline, frame).1
    });
    labels.extend(pools);
    let spaces = plan.regions.iter().filter(|r| r.kind == RegionKind::Space);
    labels.extend(spaces.map(|r| area(&r.id, &r.words, &r.outline, frame).1));
    labels.retain(|label| label.at.iter().all(|c| c.is_finite()));
    labels
}

/// Letters of an area stand in it where they can.
fn area(id: &str, words: &[String], outline: &Outline, frame: &Frame) -> (f64, Label) {
    let mut label = Label::new(id, words, frame.at(inner(outline)));
    let [wide, high] = label.size().map(|s| s / 1000.0 * frame.scale * 0.5);
    let holds = |p: &[f64; 2]| {
        [[-wide, -high], [wide, -high], [wide, high], [-wide, high]]
            .iter()
            .all(|d| outline.contains([p[0] + d[0], p[1] + d[1]]))
    };
    if outline.sides().count() <= 1_000 {
        let bounds = outline.bounds();
        let step =
            |i: usize, k: usize| bounds.low[i] + (bounds.high[i] - bounds.low[i]) * (k as f64 + 0.5) / 14.0;
        let grid = (0..14).flat_map(|x| (0..14).map(move |y| [step(0, x), step(1, y)]));
        let inside = std::iter::once(inner(outline)).chain(grid).filter(holds);
        label.within = inside.map(|p| frame.at(p)).collect();
    }
    (outline.area(), label)
}

/// Letters of a line stand beside it, pointed to where they find room: at its middle or nearer to an end.
fn of_track(track: &Track, frame: &Frame) -> Label {
    let at = frame.at(super::plan::along(&track.line, 0.5));
    Label { least: 3.0, ..Label::new(&track.id, &track.words, at) }
}
