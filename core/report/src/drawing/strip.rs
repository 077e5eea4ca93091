//! The strip under the plan: scale bar, orientation, and the legend of what the sheet really shows.

use haulout_model::Design;
use haulout_quantity::System;

use super::frame::{Frame, STRIP};
use super::plan::{Plan, RegionKind, SpotKind, TrackKind};
use super::scene::{depths, sign, track_stroke};
use super::style::{Fill, Stroke, TINTS};
use super::svg::{Anchor, Svg, Weight, cut};
use super::words::Tongue;

const SIZE: f64 = 2.2;
const ROW: f64 = 4.1;
/// Where the legend begins, and how wide its columns are.
const LEGEND: f64 = STRIP.from[0] + 66.0;
const COLUMN: f64 = 48.0;
const ROWS: usize = 9;

/// What stands before an entry of the legend.
enum Swatch {
    Area(Fill, Stroke),
    Line(Stroke),
    Sign(SpotKind),
}

/// Draws the strip.
pub(super) fn strip(plan: &Plan, frame: &Frame, design: &Design, tongue: Tongue, svg: &mut Svg) {
    svg.group("strip");
    svg.rectangle(STRIP.from, STRIP.size(), Fill::NONE, Stroke { width: 0.35, ..Stroke::FRAME });
    scale_bar(frame, tongue, svg);
    orientation(design, svg);
    svg.end();
    svg.group("legend");
    for (at, (swatch, words)) in legend(plan, tongue).iter().take(3 * ROWS).enumerate() {
        let x = LEGEND + COLUMN * (at / ROWS) as f64;
        let y = STRIP.from[1] + 5.0 + ROW * (at % ROWS) as f64;
        match swatch {
            Swatch::Area(fill, stroke) => {
                svg.rectangle([x, y - 1.5], [8.0, 3.0], Fill::PAPER, Stroke::NONE);
                svg.rectangle([x, y - 1.5], [8.0, 3.0], *fill, *stroke);
            }
            Swatch::Line(stroke) => svg.line([x, y], [x + 9.0, y], *stroke),
            Swatch::Sign(kind) => sign(*kind, [x + 4.0, y], svg),
        }
        svg.text([x + 10.5, y + 0.8], SIZE, Anchor::Start, Weight::Plain, &cut(words, SIZE, COLUMN - 11.0));
    }
    svg.end();
}

fn scale_bar(frame: &Frame, tongue: Tongue, svg: &mut Svg) {
    let unit = if tongue.system() == System::Us { 0.3048 } else { 1.0 };
    // The longest of 1, 2, 5 times a power of ten that leaves the bar within 45 mm, in four parts.
    let parts = (-2..8).flat_map(|power| [1.0, 2.0, 5.0].map(|m| m * tens(power)));
    let part = parts.filter(|p| frame.mm(p * unit) * 4.0 <= 45.0).fold(0.01, f64::max);
    let (x, y, step) = (STRIP.from[0] + 5.0, STRIP.from[1] + 9.0, frame.mm(part * unit));
    svg.text(
        [x, y - 3.6],
        2.5,
        Anchor::Start,
        Weight::Bold,
        &format!("Scale 1:{}", super::svg::number_of_scale(frame.scale)),
    );
    for k in 0..4 {
        let fill = if k % 2 == 0 { Fill::INK } else { Fill::PAPER };
        svg.rectangle([x + step * f64::from(k), y], [step, 1.6], fill, Stroke::THIN);
    }
    let symbol = if unit == 1.0 { "m" } else { "ft" };
    for k in [0, 1, 2, 4] {
        let value = super::svg::number(part * f64::from(k));
        let words = if k == 4 { format!("{value} {symbol}") } else { value };
        svg.text([x + step * f64::from(k), y + 4.4], SIZE, Anchor::Middle, Weight::Plain, &words);
    }
}

fn tens(power: i32) -> f64 {
    let all = (0..power.abs()).fold(1.0, |all, _| all * 10.0);
    if power < 0 { 1.0 / all } else { all }
}

/// The axes of the drawing in words of the file. It does not say where north is, and neither does the sheet.
fn orientation(design: &Design, svg: &mut Svg) {
    let ([x, y], wide) = ([STRIP.from[0] + 6.0, STRIP.from[1] + 35.5], 44.0);
    for (dx, dy, letter) in [(8.0, 0.0, "x"), (0.0, -8.0, "y")] {
        svg.line([x, y], [x + dx, y + dy], Stroke::STEP);
        let (ux, uy) = (dx / 8.0, dy / 8.0);
        let head = vec![
            [x + dx, y + dy],
            [x + dx - 2.0 * ux + 0.7 * uy, y + dy - 2.0 * uy + 0.7 * ux],
            [x + dx - 2.0 * ux - 0.7 * uy, y + dy - 2.0 * uy - 0.7 * ux],
        ];
        svg.path(&super::svg::closed_path(&[head]), Fill::INK, Stroke::NONE, "");
        svg.text([x + dx * 1.2 + 1.0 * -uy, y + dy * 1.2 + 0.8], SIZE, Anchor::Middle, Weight::Bold, letter);
    }
    let said = |what: &str, text: Option<&str>| format!("{what} {}", text.unwrap_or("not stated"));
    let lines =
        [said("Origin:", design.drawing.origin.words()), said("Levels over:", design.drawing.datum.words())];
    let mut lines: Vec<String> = lines.iter().flat_map(|l| super::column::broken(l, wide)).take(5).collect();
    lines.push("North: not stated in the file".to_owned());
    for (at, line) in lines.iter().enumerate() {
        let place = [x + 13.0, y - 12.5 + 3.0 * at as f64];
        svg.text(place, SIZE, Anchor::Start, Weight::Plain, &cut(line, SIZE, wide + 2.0));
    }
}

fn legend(plan: &Plan, tongue: Tongue) -> Vec<(Swatch, String)> {
    let mut entries: Vec<(Swatch, String)> = Vec::new();
    if plan.hall.is_some() {
        entries.push((Swatch::Line(Stroke::HALL), "hall, inside face of walls".to_owned()));
    }
    let region = |kind| plan.regions.iter().any(|r| r.kind == kind);
    if region(RegionKind::Space) {
        entries.push((Swatch::Line(Stroke::SPACE), "space".to_owned()));
    }
    entries.extend(tracks(plan));
    if region(RegionKind::Feature) {
        entries.push((Swatch::Area(Fill::FEATURE, Stroke::FEATURE), "feature, can be stood on".to_owned()));
    }
    if region(RegionKind::Basking) {
        entries.push((Swatch::Area(Fill::BASKING, Stroke::BASKING), "basking site".to_owned()));
    }
    entries.extend(depth_entries(plan, tongue));
    let zones = plan.offsets.iter().map(|o| (Swatch::Line(Stroke::ZONES[o.rank.min(3)]), o.words.clone()));
    entries.extend(zones);
    entries.extend(signs(plan));
    entries
}

fn tracks(plan: &Plan) -> impl Iterator<Item = (Swatch, String)> {
    let kinds = [
        (TrackKind::Barrier, "barrier, with its top"),
        (TrackKind::Panel, "viewing panel, sill to head"),
        (TrackKind::Guard, "guard for visitors"),
        (TrackKind::Partition, "partition (electrical)"),
        (TrackKind::Stream, "stream or fall"),
    ];
    let shown = |kind| plan.tracks.iter().any(|t| t.kind == kind);
    kinds
        .into_iter()
        .filter(move |(k, _)| shown(*k))
        .map(|(k, w)| (Swatch::Line(track_stroke(k)), w.to_owned()))
}

fn depth_entries(plan: &Plan, tongue: Tongue) -> Vec<(Swatch, String)> {
    if plan.basins.is_empty() {
        return Vec::new();
    }
    let at = depths(tongue);
    let words = |k: usize| match k {
        0 => format!("water to {}", tongue.length(at[0])),
        4 => format!("deeper than {}", tongue.length(at[3])),
        k => format!("to {}", tongue.length(at[k])),
    };
    let tints = (0..5).map(|k| (Swatch::Area(TINTS[k], Stroke::STEP), words(k)));
    let sloped = plan.basins.iter().flat_map(|b| &b.pieces).any(|p| p.slope.is_some());
    let contour = sloped.then(|| (Swatch::Line(Stroke::CONTOUR), "contour of a slope".to_owned()));
    tints.chain(contour).collect()
}

fn signs(plan: &Plan) -> Vec<(Swatch, String)> {
    let kinds = [
        (SpotKind::Intake, "intake"),
        (SpotKind::Return, "return"),
        (SpotKind::Overflow, "overflow"),
        (SpotKind::Exit, "way out of the water"),
        (SpotKind::Position, "viewing position, eye"),
        (SpotKind::Door, "door (place not stated)"),
        (SpotKind::Item("S"), "socket"),
        (SpotKind::Item("W"), "switch"),
        (SpotKind::Item("L"), "lamp, luminaire"),
        (SpotKind::Item("H"), "heater"),
        (SpotKind::Item("P"), "pump"),
        (SpotKind::Item("C"), "control gear"),
        (SpotKind::Item("T"), "transformer"),
        (SpotKind::Item("E"), "other electrical item"),
    ];
    let shown = |kind: &SpotKind| plan.spots.iter().any(|s| s.kind == *kind);
    let signs = kinds.into_iter().filter(|(k, _)| shown(k)).map(|(k, w)| (Swatch::Sign(k), w.to_owned()));
    let cords = plan.spots.iter().any(|s| s.reach.is_some());
    signs.chain(cords.then(|| (Swatch::Line(Stroke::REACH), "reach of a cord".to_owned()))).collect()
}
