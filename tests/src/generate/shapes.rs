//! Outlines by chance, inside a given box of the drawing.

use serde_json::{Value, json};

use super::pen::Pen;
use super::{Outlines, Site};

/// A box to draw in: lower left corner and size, in metres.
#[derive(Clone, Copy)]
pub(super) struct Frame {
    pub(super) corner: [f64; 2],
    pub(super) size: [f64; 2],
}

impl Frame {
    /// A point inside, as shares of the size.
    pub(super) fn at(self, x: f64, y: f64) -> [f64; 2] {
        [self.corner[0] + x * self.size[0], self.corner[1] + y * self.size[1]]
    }

    fn radius(self) -> f64 {
        0.5 * self.size[0].min(self.size[1])
    }
}

/// The shapes of the document that need no other outline.
type Draw = fn(&mut Pen, Frame) -> Value;
const STRAIGHT: [Draw; 4] = [corners, rectangle, strip, joined];
const CURVED: [Draw; 5] = [rounded, circle, ellipse, smooth, pierced];

/// An outline of its own numbers, or made of some.
pub(super) fn some(pen: &mut Pen, frame: Frame) -> Value {
    let at = match pen.manner.outlines {
        Outlines::All => pen.below(STRAIGHT.len() + CURVED.len()),
        Outlines::Straight => pen.below(STRAIGHT.len()),
    };
    match STRAIGHT.get(at) {
        Some(draw) => draw(pen, frame),
        None => CURVED[at - STRAIGHT.len()](pen, frame),
    }
}

/// A polygon of six to ten corners round an oval, in either winding.
pub(super) fn corners(pen: &mut Pen, frame: Frame) -> Value {
    let mut round = oval(pen, frame);
    if pen.once_in(2) {
        round.reverse();
    }
    pen.places(&round)
}

fn oval(pen: &mut Pen, frame: Frame) -> Vec<[f64; 2]> {
    let count = 6 + pen.below(5);
    let point = |at: usize, pull: f64| {
        let angle = std::f64::consts::TAU * at as f64 / count as f64;
        let [x, y] = frame.at(0.5 + 0.5 * pull * libm::cos(angle), 0.5 + 0.5 * pull * libm::sin(angle));
        // To the centimetre: nobody draws finer.
        [(x * 100.0).round() / 100.0, (y * 100.0).round() / 100.0]
    };
    (0..count).map(|at| point(at, pen.between(0.82, 1.0, 0.01))).collect()
}

/// A sharp rectangle, sometimes turned a little.
pub(super) fn rectangle(pen: &mut Pen, frame: Frame) -> Value {
    let turn = if pen.once_in(3) { pen.between(-4.0, 4.0, 0.5) } else { 0.0 };
    rect(pen, frame, turn)
}

/// A sharp rectangle that fills its box.
pub(super) fn rect(pen: &Pen, frame: Frame, turn: f64) -> Value {
    let [x, y] = frame.corner;
    let mut rect = json!({ "corner": pen.place(x, y), "size": pen.spans(frame.size[0], frame.size[1]) });
    if turn + pen.manner.placing.turn != 0.0 {
        rect["turn"] = json!(pen.turn(turn, 1.0));
    }
    json!({ "rect": rect })
}

fn rounded(pen: &mut Pen, frame: Frame) -> Value {
    let mut shape = rectangle(pen, frame);
    let radius = 0.4 * frame.radius();
    shape["rect"]["round"] = if pen.once_in(2) { json!(pen.length(radius)) } else { pen.span(radius) };
    shape
}

/// A circle in the middle.
pub(super) fn circle(pen: &mut Pen, frame: Frame) -> Value {
    let [x, y] = frame.at(0.5, 0.5);
    json!({ "circle": { "centre": pen.place(x, y), "radius": pen.span(frame.radius()) } })
}

fn ellipse(pen: &mut Pen, frame: Frame) -> Value {
    let [x, y] = frame.at(0.5, 0.5);
    let turn = pen.between(-8.0, 8.0, 1.0);
    let radii = pen.spans(0.46 * frame.size[0], 0.46 * frame.size[1]);
    json!({ "ellipse": { "centre": pen.place(x, y), "radii": radii, "turn": pen.turn(turn, 1.0) } })
}

fn smooth(pen: &mut Pen, frame: Frame) -> Value {
    let inner = Frame { corner: frame.at(0.05, 0.05), size: frame.size.map(|s| 0.9 * s) };
    let round = oval(pen, inner);
    json!({ "smooth": { "through": pen.places(&round) } })
}

fn strip(pen: &mut Pen, frame: Frame) -> Value {
    let line = [frame.at(0.1, 0.4), frame.at(0.5, 0.5), frame.at(0.9, 0.45)];
    let face = *pen.pick(&["centre", "left", "right"]);
    let width = 0.3 * frame.size[1];
    json!({ "strip": { "line": pen.places(&line), "width": pen.span(width), "face": face } })
}

fn joined(pen: &mut Pen, frame: Frame) -> Value {
    let foot = Frame { corner: frame.corner, size: [frame.size[0], 0.6 * frame.size[1]] };
    let tower = Frame { corner: frame.at(0.3, 0.4), size: [0.4 * frame.size[0], 0.6 * frame.size[1]] };
    json!({ "join": [rect(pen, foot, 0.0), rect(pen, tower, 0.0)] })
}

fn pierced(pen: &mut Pen, frame: Frame) -> Value {
    let island = Frame { corner: frame.at(0.35, 0.35), size: frame.size.map(|s| 0.3 * s) };
    json!({ "less": [rect(pen, frame, 0.0), circle(pen, island)] })
}

/// The outline of another pool again, some rooms away; a mirrored copy turns the other way with its drawing.
pub(super) fn copy(pen: &mut Pen, of: &str, site: Site, from: usize, to: usize) -> Value {
    let ([x0, y0], [x1, y1]) = (site.corner(from), site.corner(to));
    let mirror = pen.once_in(3);
    let turn = if mirror { pen.turn(0.0, 2.0) } else { "0 deg".to_owned() };
    // Mirrored about its first corner a pool swings out of its room: it is moved back by the width of the box.
    let mut copy = json!({ "of": of, "move": pen.way(x1 - x0, y1 - y0), "turn": turn });
    if mirror {
        copy["mirror"] = json!("x");
    }
    json!({ "copy": copy })
}
