//! The decision to look at first: the one whose small change brings a shortfall furthest, found by asking *what if*.

use haulout_document::Tree;
use haulout_engine::{Options, again};
use haulout_model::Role;
use haulout_sheet::{Book, LineId, Made, Roots, Substitution};

use crate::page::Subject;
use crate::place::{Place, place};
use crate::told::Told;

/// More decisions than this are not tried; what stands nearest to the shortfall is pointed at instead.
const MOST: usize = 40;

/// Of a rule that takes milliseconds no more than these are tried, the ones that stand nearest to the shortfall.
const MOST_OF_A_HEAVY_RULE: usize = 12;

/// The share by which a value is changed; a level, whose zero means nothing, moves by so many of its steps instead.
const SHARE: f64 = 0.05;
const STEPS: f64 = 10.0;

/// A decision a shortfall rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Lever {
    node: u32,
    part: u8,
    value: f64,
    change: f64,
    /// Where it stands.
    pub place: Place,
}

/// The decisions below some lines.
pub(crate) fn levers(book: &Book<'_>, tree: &Tree, lines: &[LineId]) -> Vec<Lever> {
    let one = |line: LineId| {
        let record = book.record(line);
        let Made::Stated { origin, card: Some(card), .. } = record.made else { return None };
        let value = record.datum.number().filter(|_| card.role == Role::Decision && !origin.is_absent())?;
        let change =
            if card.range.0 < 0.0 { STEPS * card.step } else { (SHARE * value.abs()).max(card.step) };
        Some(Lever { node: origin.node, part: origin.part, value, change, place: place(tree, origin) })
    };
    Roots::met(book, lines).into_iter().filter_map(one).collect()
}

/// The place of the strongest; among equals the one that stands nearest to the shortfall.
pub(crate) fn strongest(subject: &Subject<'_>, told: &Told) -> Option<Place> {
    let mut levers: Vec<&Lever> = told.levers.iter().collect();
    levers.sort_by_key(|lever| Some(&lever.place) != told.governing.as_ref());
    if subject.ruleset.rules[told.rule].heavy {
        levers.truncate(MOST_OF_A_HEAVY_RULE);
    }
    let base = margin(subject, told, &[]);
    let (Some(base), 2..=MOST) = (base, levers.len()) else { return told.governing.clone() };
    let gain = |lever: &&Lever| {
        let try_out = |value: f64| {
            let changed = [Substitution { node: lever.node, part: lever.part, value }];
            margin(subject, told, &changed).map_or(0.0, |margin| margin - base)
        };
        try_out(lever.value + lever.change).max(try_out(lever.value - lever.change))
    };
    let mut best: Option<(f64, &Lever)> = None;
    for lever in levers {
        let gain = gain(&lever);
        let more = best.map_or(gain > 0.0, |(most, _)| gain > most * (1.0 + 1e-6));
        best = if more { Some((gain, lever)) } else { best };
    }
    best.map(|(_, lever)| lever.place.clone()).or_else(|| told.governing.clone())
}

/// The margin of the same answer with something changed, SI.
fn margin(subject: &Subject<'_>, told: &Told, changed: &[Substitution]) -> Option<f64> {
    let options = Options { stage: None, on: subject.on.to_owned() };
    let answer = (told.rule, told.about?, told.authority);
    again(subject.design, subject.ruleset, changed, &options, answer)?.margin
}
