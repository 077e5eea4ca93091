//! The commissioning list on paper: what is done, what is expected, and lines to sign.

use std::fmt::Write;

use haulout_quantity::{print, unit};

use crate::commissioning::{Commissioning, Site, Tried};
use crate::figured::Figured;
use crate::schedule::{CLOSING, counted};
use crate::wrap::{row, wrap};

const INDENT: usize = 9;

/// What can be read on site.
const DIGITS: u32 = 3;

/// The list, to be printed and taken on site.
pub fn commissioning_page(list: &Commissioning, width: usize) -> String {
    let mut out =
        format!("{}\nCommissioning list: made and signed before the first animal comes\n\n", list.title);
    for (at, trial) in list.trials.iter().enumerate() {
        tried(at + 1, trial, width, &mut out);
    }
    if list.trials.is_empty() {
        out.push_str("The design holds nothing that a trial is made on.\n\n");
    }
    out.push_str("DECLARED, NOT MEASURED\n");
    for declared in &list.declared {
        let rests = counted(declared.rules.len(), "rule");
        let what = if declared.what.is_empty() { String::new() } else { format!(" · {}", declared.what) };
        let text = format!("{}{what} · for {rests}", declared.written);
        out.push_str(&row(&format!("line {}", declared.place.line), &text, INDENT, width));
        out.push_str(&signed(width));
    }
    if list.declared.is_empty() {
        out.push_str("No check rests on a value that is only declared.\n");
    }
    out.push('\n');
    out.push_str(&wrap(CLOSING, width).join("\n"));
    out.push('\n');
    out
}

fn tried(number: usize, trial: &Tried, width: usize, out: &mut String) {
    // Writing to a String cannot fail.
    let heading = format!("{number:>2}  {}", trial.title);
    let pad = width.saturating_sub(heading.chars().count() + trial.guards.len()).max(2);
    let _ = writeln!(out, "{heading}{}{}", " ".repeat(pad), trial.guards);
    out.push_str(&row("    do", trial.does, INDENT, width));
    out.push_str(&row("    why", trial.why, INDENT, width));
    if let Some(caution) = trial.caution {
        out.push_str(&row("    mind", caution, INDENT, width));
    }
    for site in &trial.sites {
        expected(site, width, out);
    }
    out.push('\n');
}

fn expected(site: &Site, width: usize, out: &mut String) {
    let _ = writeln!(out, "  {}", site.named);
    for (what, figure) in &site.expects {
        let text = format!("{what}: {}", value(figure));
        out.push_str(&row("", &text, INDENT, width));
    }
    out.push_str(&signed(width));
}

/// What the figure is, or what it waits for.
pub(super) fn value(figure: &Figured) -> String {
    if let Some(value) = figure.value {
        return match unit(figure.unit) {
            Some(unit) => print(unit.to_si(value), unit, DIGITS),
            None => figure.printed.clone(),
        };
    }
    let gap = |gap: &crate::told::ToldGap| match gap.places.first() {
        Some(place) => format!("{} ({})", gap.what, place.pointer),
        None => gap.what.clone(),
    };
    let first = figure.gaps.first().map_or_else(String::new, gap);
    let more = match figure.gaps.len() {
        0 | 1 => String::new(),
        some => format!(" and {} more", some - 1),
    };
    format!("not assessed, waits for {first}{more}")
}

/// A line to write on.
fn signed(width: usize) -> String {
    let room = width.saturating_sub(INDENT + "found  on  by ".len());
    let [found, on, by] = [room / 2, room / 4, room / 4].map(|so_many| "_".repeat(so_many));
    format!("{}found {found} on {on} by {by}\n", " ".repeat(INDENT))
}
