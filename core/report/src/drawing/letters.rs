//! Letters and balloons: every id beside what it names, every shortfall's number at the place of its subject.

use haulout_calc::geometry::Outline;

use super::frame::Frame;
use super::ground::{Ground, Led, Shore, Spread, Wish, short_of};
use super::keynotes::Balloon;
use super::labels::{LINE, Label, SIZE, SYMBOL, labels};
use super::plan::Plan;
use super::style::{Fill, Stroke};
use super::svg::{Anchor, Mm, Svg, Weight};

/// Radius of a balloon and distance of the next, millimetres.
const BALLOON: f64 = 2.7;
const NEXT: f64 = 5.9;
const IN_A_ROW: usize = 6;

impl Label {
    fn draw(&self, spread: Spread, led: Led, svg: &mut Svg) {
        if led == Led::Yes {
            let from = spread.nearest(self.at);
            let end = short_of(from, self.at, self.clear);
            svg.line(from, end, Stroke::LEADER);
            if self.clear == 0.0 {
                svg.circle(end, 0.35, Fill::INK, Stroke::NONE);
            }
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
    let mut labels = labels(plan, frame);
    // What is a point has letters and symbol close together; balloons may stand a little off; the rest is larger.
    let rest = labels.split_off(plan.spots.len().min(labels.len()));
    svg.group("letters");
    place(&labels, &mut ground, &mut crowded, svg);
    svg.end();
    svg.group("balloons");
    for balloon in balloons.iter().filter(|b| frame.shows(b.at)) {
        let clear = if plan.spots.iter().any(|s| s.at == balloon.at) { SYMBOL } else { 0.0 };
        if !draw_balloon(balloon, clear, frame, &mut ground, svg) {
            let numbers: Vec<String> = balloon.numbers.iter().map(usize::to_string).collect();
            crowded.push(format!("keynotes {}", numbers.join(", ")));
        }
    }
    svg.end();
    svg.group("more-letters");
    place(&rest, &mut ground, &mut crowded, svg);
    svg.end();
    crowded
}

fn place(labels: &[Label], ground: &mut Ground, crowded: &mut Vec<String>, svg: &mut Svg) {
    for label in labels {
        match ground.room(&label.wish()) {
            Some((spread, led)) => label.draw(spread, led, svg),
            None => crowded.push(label.lines[0].clone()),
        }
    }
}

/// False where there is no room for it.
fn draw_balloon(balloon: &Balloon, clear: f64, frame: &Frame, ground: &mut Ground, svg: &mut Svg) -> bool {
    let count = balloon.numbers.len();
    let (columns, rows) = (count.min(IN_A_ROW), count.div_ceil(IN_A_ROW));
    let size = [NEXT * columns as f64, NEXT * rows as f64];
    let at = frame.at(balloon.at);
    let Some((spread, _)) =
        ground.room(&Wish { at, size, within: &[], least: 5.0, shore: Shore::Wet, clear })
    else {
        return false;
    };
    let end = short_of(spread.nearest(at), at, clear);
    svg.line(spread.nearest(at), end, Stroke { width: 0.35, ..Stroke::LEADER });
    if clear == 0.0 {
        svg.circle(at, 0.7, Fill::INK, Stroke::NONE);
    }
    let corner = spread.corner();
    for (k, number) in balloon.numbers.iter().enumerate() {
        let (column, row) = ((k % IN_A_ROW) as f64 + 0.5, (k / IN_A_ROW) as f64 + 0.5);
        draw_number([corner[0] + NEXT * column, corner[1] + NEXT * row], *number, svg);
    }
    true
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
    for basin in plan.basins.iter().filter(|b| b.outline.sides().count() <= 400).take(24) {
        let bounds = basin.outline.bounds();
        ground.flood(frame.at(bounds.low), frame.at(bounds.high), |mm| {
            basin.outline.contains(frame.metres(mm))
        });
    }
    for spot in plan.spots.iter().filter(|s| frame.shows(s.at)) {
        ground.take(Spread { middle: frame.at(spot.at), size: [3.6, 3.6] });
    }
    ground
}
