//! What a slip says: what was typed, what was expected, and a way out.

use std::ops::Range;

use super::Slip;
use super::scan::Scan;
use crate::lookup::{nearest, refused};
use crate::{Dimension, System, Unit, unit_for};

/// "a length such as "1 m" or "1 ft"".
pub(super) fn expected(dimension: Dimension) -> String {
    let (metric, us) = (unit_for(dimension, System::Metric), unit_for(dimension, System::Us));
    let name = dimension.name();
    match (metric.symbol, us.symbol) {
        ("", _) if dimension.is_number() => format!("{name} such as \"0.65\" or \"65 %\""),
        ("", _) => name,
        ("°C", _) => format!("{name} such as \"28 °C\" or \"82 °F\""),
        (one, other) if one == other => format!("{name} such as \"1 {one}\""),
        (one, other) => format!("{name} such as \"1 {one}\" or \"1 {other}\""),
    }
}

pub(super) fn no_unit(at: Range<usize>, text: &str, dimension: Dimension) -> Slip {
    let typed = text[at.clone()].trim();
    let (metric, us) = (unit_for(dimension, System::Metric).symbol, unit_for(dimension, System::Us).symbol);
    let other = if us == metric { String::new() } else { format!(" or \"{typed} {us}\"") };
    Slip::new(
        at,
        format!("{typed} has no unit; expected is {}: write \"{typed} {metric}\"{other}", dimension.name()),
    )
}

pub(super) fn wrong_dimension(at: Range<usize>, number: &str, found: &Unit, dimension: Dimension) -> Slip {
    let typed =
        if found.symbol.is_empty() { number.to_owned() } else { format!("{number} {}", found.symbol) };
    Slip::new(at, format!("{typed} is {}, expected is {}", found.dimension.name(), expected(dimension)))
}

pub(super) fn unknown(at: Range<usize>, number: &str, typed: &str, dimension: Dimension) -> Slip {
    if let Some(entry) = refused(typed) {
        let offers: Vec<_> = entry.instead.iter().map(|offer| format!("\"{number} {offer}\"")).collect();
        let message =
            format!("{typed} can be read in more than one way: {}; write {}", entry.why, offers.join(" or "));
        return Slip::new(at, message);
    }
    let way_out = match nearest(typed, dimension) {
        Some(symbol) => format!("the nearest is {symbol:?}"),
        None => format!("expected is {}", expected(dimension)),
    };
    Slip::new(at, format!("{typed:?} is no unit that is known here; {way_out}"))
}

pub(super) fn two_numbers(at: Range<usize>, text: &str) -> Slip {
    let typed = text[at.clone()].trim();
    Slip::new(
        at,
        format!(
            "{typed:?} holds two numbers with one unit: write a number without spaces, and its unit once"
        ),
    )
}

/// What stands behind a complete quantity.
pub(super) fn left_over(scan: &Scan<'_>, dimension: Dimension) -> Slip {
    let rest = scan.rest().trim_end();
    let at = scan.at..scan.at + rest.len();
    if rest.starts_with(|c: char| c.is_ascii_digit()) {
        return two_numbers(0..at.end, scan.text);
    }
    let dash = rest.starts_with(['-', '\u{2013}', '\u{2212}']);
    let message = if dash {
        let behind = rest.trim_start_matches(['-', '\u{2013}', '\u{2212}', ' ']);
        let range = format!("{} to {behind}", scan.text[..scan.at].trim());
        format!("a dash may be a minus or a range: write \"{range}\"")
    } else {
        format!(
            "{rest:?} is left over behind the quantity; expected is {} and nothing more",
            expected(dimension)
        )
    };
    Slip::new(at, message)
}
