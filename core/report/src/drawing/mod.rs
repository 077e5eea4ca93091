//! The plan of an enclosure to scale, as one sheet of SVG 1.1: what the design draws, letters, keynotes, title block.
//!
//! Nothing on it comes from outside the file: no fonts, no pictures, no scripts, no clock.

mod column;
pub mod course;
mod frame;
mod gather;
mod ground;
mod keynotes;
mod labels;
mod letters;
mod near_water;
mod plan;
mod pools;
mod scene;
mod spots;
mod strip;
mod style;
mod svg;
mod title;
mod words;

use std::collections::BTreeSet;

use haulout_engine::Ruleset;
use haulout_model::Design;
use haulout_sheet::Book;

use crate::told::Told;
use column::Listed;
use frame::{BORDER, Frame, SHEET};
use gather::Gathering;
use plan::{Plan, middle};
use style::{Fill, PATTERNS, Stroke};
pub(crate) use svg::number;
use svg::{Anchor, Svg, Weight};
use words::Tongue;

/// What one sheet is about.
pub struct Subject<'p> {
    /// The file as it was named.
    pub file: &'p str,
    /// SHA-256 of its bytes, hexadecimal; empty where there is none.
    pub digest: &'p str,
    /// The stage it was held to.
    pub stage: &'p str,
    /// The day it was reviewed on.
    pub on: &'p str,
    /// The lines of its review.
    pub book: &'p Book<'p>,
    /// The rules.
    pub ruleset: &'p Ruleset,
    /// The answers.
    pub answers: &'p [Told],
}

/// The sheet: ISO A3 landscape in millimetres, the same bytes for the same subject on every machine.
pub fn drawing(subject: &Subject<'_>) -> String {
    let design = subject.book.design();
    let tongue = Tongue::of(design);
    let mut plan = gathered(subject, tongue);
    let frame = Frame::fitting(plan.bounds());
    beyond(&mut plan, &frame);
    let keynotes = keynotes::keynotes(&plan, subject.ruleset, subject.answers);
    let balloons = keynotes::balloons(&keynotes);
    let title = design.project.title.words().unwrap_or(subject.file);
    let told = format!("Plan to scale 1:{}. Screening result, not a construction drawing.", frame.scale);
    let mut svg = Svg::open(SHEET, title, &told);
    svg.put(&format!("<defs>\n{PATTERNS}</defs>\n"));
    svg.rectangle([0.0, 0.0], SHEET, Fill::PAPER, Stroke::NONE);
    scene::scene(&plan, &frame, tongue, &mut svg);
    let crowded = letters::letter(&plan, &balloons, &frame, &mut svg);
    plan.not_drawn.extend(crowded.iter().map(|id| format!("letters of {id}: no room")));
    if plan.is_empty() {
        let middle = [
            0.5 * (frame::PLAN.from[0] + frame::PLAN.to[0]),
            0.5 * (frame::PLAN.from[1] + frame::PLAN.to[1]),
        ];
        svg.text(
            middle,
            5.0,
            Anchor::Middle,
            Weight::Plain,
            "The design draws nothing: no hall, no pool, no line, no place.",
        );
    }
    column::column(&keynotes, &lists(subject, design, &plan), &mut svg);
    strip::strip(&plan, &frame, design, tongue, &mut svg);
    title::title(subject, &frame, &mut svg);
    svg.rectangle(BORDER.from, BORDER.size(), Fill::NONE, Stroke::FRAME);
    svg.close()
}

fn gathered(subject: &Subject<'_>, tongue: Tongue) -> Plan {
    let mut gathering = Gathering::of(subject.book, tongue);
    gathering.regions();
    gathering.pools();
    gathering.tracks();
    gathering.spots();
    gathering.near_water(subject.ruleset);
    gathering.plan
}

/// What lies off the sheet is said, not left to be missed.
fn beyond(plan: &mut Plan, frame: &Frame) {
    let mut off: Vec<String> = Vec::new();
    let mut look = |id: &str, at| {
        if !frame.shows(at) {
            off.push(format!("{id}: lies off the sheet, far outside the hall"));
        }
    };
    plan.regions.iter().for_each(|r| look(&r.id, plan::inner(&r.outline)));
    plan.basins.iter().for_each(|b| look(&b.id, plan::inner(&b.outline)));
    plan.tracks.iter().for_each(|t| look(&t.id, middle(&t.line)));
    plan.spots.iter().for_each(|s| look(&s.id, s.at));
    plan.not_drawn.extend(off);
}

/// Annexes, a specification and what they changed.
fn annexed(subject: &Subject<'_>) -> Vec<String> {
    let overridden = subject.ruleset.overridden(subject.book.design(), subject.stage).into_iter();
    let overridden = overridden.map(|o| format!("{}: {} instead of {}, by {}", o.what, o.to, o.from, o.by));
    let rows = crate::annexed::rows(subject.ruleset).into_iter();
    rows.map(|(word, text)| format!("{word}: {text}")).chain(overridden).collect()
}

/// What the plan cannot show: things without a place, and things that could not be drawn.
fn lists(subject: &Subject<'_>, design: &Design, plan: &Plan) -> Vec<Listed> {
    let places = plan.places();
    let placed: BTreeSet<&str> =
        places.keys().map(String::as_str).filter(|id| !plan.aliases.contains_key(*id)).collect();
    let mut families: Vec<(&str, Vec<&str>)> = Vec::new();
    for entry in design.directory.ids.iter().filter(|e| !placed.contains(e.name())).take(2_000) {
        match families.iter_mut().find(|(list, _)| *list == entry.list()) {
            Some((_, ids)) => ids.push(entry.name()),
            None => families.push((entry.list(), vec![entry.name()])),
        }
    }
    let items = families.into_iter().map(|(list, ids)| format!("{list}: {}", ids.join(", "))).collect();
    let not_drawn = plan.not_drawn.iter().map(|line| format!("not drawn: {line}")).collect();
    vec![
        Listed { heading: "Without a place in plan", items },
        Listed { heading: "Left off", items: not_drawn },
        Listed { heading: "Annexes and specification", items: annexed(subject) },
    ]
}
