//! The plan itself: hall, spaces, water by depth, things, lines, symbols, the zones round water, dimensions.

use haulout_calc::geometry::{Outline, parallel};
use haulout_quantity::System;

use super::frame::{Frame, PLAN};
use super::plan::{Basin, Piece, Plan, RegionKind, Spot, SpotKind, TrackKind};
use super::style::{Fill, Stroke, TINTS};
use super::svg::{Anchor, Mm, Svg, Weight, closed_path, open_path, width};
use super::words::Tongue;

/// Depths at which the tint changes, metres: a hand, a forearm, an arm, a child's chest. Our own choice, in round figures.
const METRIC: [f64; 4] = [0.15, 0.30, 0.60, 1.00];
/// The same in round feet and inches: 6 in, 1 ft, 2 ft, 3 ft.
const US: [f64; 4] = [0.1524, 0.3048, 0.6096, 0.9144];

/// The depths at which the tint changes, in the designer's unit.
pub(super) fn depths(tongue: Tongue) -> &'static [f64; 4] {
    if tongue.system() == System::Us { &US } else { &METRIC }
}

/// The tint of a depth; what is just at a border belongs to the shallower side.
fn tint(depth: f64, tongue: Tongue) -> Fill {
    let deeper = depths(tongue).iter().filter(|d| depth > **d + 1e-9).count();
    TINTS[deeper.min(TINTS.len() - 1)]
}

/// Draws everything but letters.
pub(super) fn scene(plan: &Plan, frame: &Frame, tongue: Tongue, svg: &mut Svg) {
    let [a, b] = [PLAN.from, PLAN.to];
    svg.clip("plan-area", &closed_path(&[vec![a, [b[0], a[1]], b, [a[0], b[1]]]]));
    svg.clipped("plan-area");
    svg.group("plan");
    if let Some(hall) = &plan.hall {
        svg.clip("hall-inside", &closed_path(&frame.rings(hall)));
    }
    regions(plan, frame, RegionKind::Space, svg);
    regions(plan, frame, RegionKind::Feature, svg);
    for (at, basin) in plan.basins.iter().enumerate() {
        water(at, basin, frame, tongue, svg);
    }
    // What stands in the water must show over it.
    features_in_water(plan, frame, svg);
    regions(plan, frame, RegionKind::Basking, svg);
    zones(plan, frame, svg);
    if let Some(hall) = &plan.hall {
        svg.path(&closed_path(&frame.rings(hall)), Fill::NONE, Stroke::HALL, "hall");
    }
    for track in &plan.tracks {
        let line: Vec<Mm> = track.line.iter().map(|p| frame.at(*p)).collect();
        svg.path(&open_path(&line), Fill::NONE, track_stroke(track.kind), &track.id);
    }
    for spot in plan.spots.iter().filter(|s| frame.shows(s.at)) {
        symbol(spot, frame, svg);
    }
    svg.end();
    svg.end();
    if let Some(hall) = &plan.hall {
        dimensions(hall, frame, tongue, svg);
    }
}

fn regions(plan: &Plan, frame: &Frame, kind: RegionKind, svg: &mut Svg) {
    let (fill, stroke) = match kind {
        RegionKind::Space => (Fill::NONE, Stroke::SPACE),
        RegionKind::Feature => (Fill::FEATURE, Stroke::FEATURE),
        RegionKind::Basking => (Fill::BASKING, Stroke::BASKING),
    };
    for region in plan.regions.iter().filter(|r| r.kind == kind) {
        svg.path(&closed_path(&frame.rings(&region.outline)), fill, stroke, &region.id);
    }
}

fn features_in_water(plan: &Plan, frame: &Frame, svg: &mut Svg) {
    let wet = |outline: &Outline| plan.basins.iter().any(|b| b.outline.covers(outline));
    let small = |outline: &&Outline| outline.sides().count() <= 200 && plan.basins.len() <= 24;
    let features = plan.regions.iter().filter(|r| r.kind == RegionKind::Feature);
    for outline in features.map(|r| &r.outline).filter(small).filter(|o| wet(o)) {
        let path = closed_path(&frame.rings(outline));
        svg.path(&path, Fill::PAPER, Stroke::NONE, "");
        svg.path(&path, Fill::FEATURE, Stroke::FEATURE, "");
    }
}

fn water(at: usize, basin: &Basin, frame: &Frame, tongue: Tongue, svg: &mut Svg) {
    let (clip, path) = (format!("water-{at}"), closed_path(&frame.rings(&basin.outline)));
    svg.clip(&clip, &path);
    svg.clipped(&clip);
    if basin.pieces.first().is_none_or(|p| p.depth.is_none()) {
        svg.path(&path, Fill::PAPER, Stroke::NONE, "");
    }
    for piece in &basin.pieces {
        bed(piece, frame, tongue, svg);
    }
    svg.end();
    svg.path(&path, Fill::NONE, Stroke::POOL, &basin.id);
}

/// A piece of bed in the tint of its depth; one with sloped sides by its contours.
fn bed(piece: &Piece, frame: &Frame, tongue: Tongue, svg: &mut Svg) {
    let path = closed_path(&frame.rings(&piece.outline));
    let stroke = if piece.id.is_empty() { Stroke::NONE } else { Stroke::STEP };
    let Some(depth) = piece.depth else {
        svg.path(&path, Fill::NONE, stroke, &piece.id);
        return;
    };
    let Some((from, run)) = piece.slope else {
        svg.path(&path, tint(depth, tongue), stroke, &piece.id);
        return;
    };
    let down = depth > from;
    let first = if down { from.max(0.0) + 1e-6 } else { from };
    svg.path(&path, tint(first, tongue), stroke, &piece.id);
    for (contour, line) in contours(piece, from, depth, run, tongue) {
        // On the way down the tint of what lies beyond the contour; on the way up likewise.
        let beyond = if down { contour + 1e-6 } else { contour - 1e-6 };
        let beyond = if contour == depth { depth } else { beyond };
        svg.path(&closed_path(&frame.rings(&line)), tint(beyond, tongue), Stroke::CONTOUR, "");
        let foot =
            line.rings().flatten().copied().min_by(|a, b| a[1].total_cmp(&b[1]).then(a[0].total_cmp(&b[0])));
        if let (Some(foot), true) = (foot, contour != depth) {
            let [x, y] = frame.at(foot);
            let words = tongue.length(contour);
            svg.rectangle([x + 1.0, y - 1.1], [width(&words, 1.8), 2.0], Fill::PAPER, Stroke::NONE);
            svg.text([x + 1.0, y + 0.6], 1.8, Anchor::Start, Weight::Plain, &words);
        }
    }
}

/// The contours at the depths where the tint changes, the foot (or head) of the slope last.
fn contours(piece: &Piece, from: f64, depth: f64, run: f64, tongue: Tongue) -> Vec<(f64, Outline)> {
    if piece.outline.sides().count() > 400 {
        return Vec::new();
    }
    let (low, high) = (from.min(depth), from.max(depth));
    let mut at: Vec<f64> =
        depths(tongue).iter().copied().filter(|d| *d > low && *d < high && *d > 0.0).collect();
    if from > depth {
        at.reverse();
    }
    at.push(depth);
    let line = |d: f64| Some((d, parallel(&piece.outline, -(d - from).abs() * run).ok()?));
    at.into_iter().map_while(line).collect()
}

fn zones(plan: &Plan, frame: &Frame, svg: &mut Svg) {
    svg.group("zones-round-water");
    if plan.hall.is_some() {
        svg.clipped("hall-inside");
    }
    for offset in &plan.offsets {
        let stroke = Stroke::ZONES[offset.rank.min(3)];
        for outline in &offset.outlines {
            svg.path(&closed_path(&frame.rings(outline)), Fill::NONE, stroke, &offset.words);
        }
    }
    if plan.hall.is_some() {
        svg.end();
    }
    svg.end();
}

pub(super) fn track_stroke(kind: TrackKind) -> Stroke {
    match kind {
        TrackKind::Barrier => Stroke::BARRIER,
        TrackKind::Panel => Stroke::PANEL,
        TrackKind::Guard => Stroke::GUARD,
        TrackKind::Partition => Stroke::PARTITION,
        TrackKind::Stream => Stroke::STREAM,
    }
}

fn symbol(spot: &Spot, frame: &Frame, svg: &mut Svg) {
    let at = frame.at(spot.at);
    if let Some(reach) = spot.reach {
        svg.circle(at, frame.mm(reach).min(1_000.0), Fill::NONE, Stroke::REACH);
    }
    sign(spot.kind, at, svg);
}

/// The symbol of a kind.
pub(super) fn sign(kind: SpotKind, [x, y]: Mm, svg: &mut Svg) {
    match kind {
        SpotKind::Item(letters) => {
            svg.rectangle([x - 1.6, y - 1.6], [3.2, 3.2], Fill::PAPER, Stroke { width: 0.3, ..Stroke::THIN });
            svg.text([x, y + 0.9], 2.5, Anchor::Middle, Weight::Bold, letters);
        }
        SpotKind::Intake => {
            svg.circle([x, y], 1.5, Fill::PAPER, Stroke { width: 0.3, ..Stroke::THIN });
            svg.line([x - 1.06, y - 1.06], [x + 1.06, y + 1.06], Stroke::THIN);
            svg.line([x - 1.06, y + 1.06], [x + 1.06, y - 1.06], Stroke::THIN);
        }
        // The tail of an arrow that goes away, above, and the tip of one that comes.
        SpotKind::Return => {
            svg.circle([x, y], 1.5, Fill::PAPER, Stroke { width: 0.3, ..Stroke::THIN });
            svg.circle([x, y], 0.5, Fill::INK, Stroke::NONE);
        }
        SpotKind::Overflow => {
            svg.circle([x, y], 1.5, Fill::PAPER, Stroke { width: 0.3, ..Stroke::THIN });
            svg.line([x - 1.5, y], [x + 1.5, y], Stroke { width: 0.3, ..Stroke::THIN });
        }
        SpotKind::Exit => {
            svg.rectangle([x - 1.8, y - 1.2], [3.6, 2.4], Fill::PAPER, Stroke { width: 0.3, ..Stroke::THIN });
            let rise = [
                [x - 1.4, y + 0.9],
                [x - 0.4, y + 0.9],
                [x - 0.4, y + 0.1],
                [x + 0.6, y + 0.1],
                [x + 0.6, y - 0.7],
                [x + 1.4, y - 0.7],
            ];
            svg.path(&open_path(&rise), Fill::NONE, Stroke { width: 0.3, ..Stroke::THIN }, "");
        }
        SpotKind::Position => {
            let corners = vec![[x - 1.8, y + 1.3], [x + 1.8, y + 1.3], [x, y - 1.8]];
            svg.path(&closed_path(&[corners]), Fill::PAPER, Stroke { width: 0.3, ..Stroke::THIN }, "");
            svg.circle([x, y + 0.3], 0.5, Fill::INK, Stroke::NONE);
        }
        SpotKind::Door => {
            let corners = vec![[x - 1.8, y], [x, y - 1.8], [x + 1.8, y], [x, y + 1.8]];
            svg.path(&closed_path(&[corners]), Fill::PAPER, Stroke { width: 0.3, ..Stroke::THIN }, "");
        }
    }
}

/// Width and depth of the hall, on dimension lines outside it.
fn dimensions(hall: &Outline, frame: &Frame, tongue: Tongue, svg: &mut Svg) {
    let bounds = hall.bounds();
    let ([x0, y0], [x1, y1]) = (frame.at(bounds.low), frame.at(bounds.high));
    let [wide, high] = [0, 1].map(|i| bounds.high[i] - bounds.low[i]);
    let (low, side) = (y0 + 8.0, x0 - 8.0);
    svg.group("dimensions");
    svg.line([x0, low], [x1, low], Stroke::THIN);
    svg.line([side, y0], [side, y1], Stroke::THIN);
    for x in [x0, x1] {
        svg.line([x, y0 + 2.0], [x, low + 1.5], Stroke::THIN);
        svg.line([x - 1.0, low + 1.0], [x + 1.0, low - 1.0], Stroke::STEP);
    }
    for y in [y0, y1] {
        svg.line([x0 - 2.0, y], [side - 1.5, y], Stroke::THIN);
        svg.line([side - 1.0, y + 1.0], [side + 1.0, y - 1.0], Stroke::STEP);
    }
    svg.text([0.5 * (x0 + x1), low - 1.0], 2.5, Anchor::Middle, Weight::Plain, &tongue.length(wide));
    let middle = 0.5 * (y0 + y1);
    let turn = format!(
        "<g transform=\"rotate(-90 {} {})\">\n",
        super::svg::number(side - 1.0),
        super::svg::number(middle)
    );
    svg.put(&turn);
    svg.text([side - 1.0, middle], 2.5, Anchor::Middle, Weight::Plain, &tongue.length(high));
    svg.end();
    svg.end();
}
