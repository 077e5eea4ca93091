//! The commissioning list for programs, and as Markdown for a ticket with boxes to tick.

use std::fmt::Write;

use serde_json::{Value, json};

use crate::commissioning::{Commissioning, Site};
use crate::json::{gap, place};
use crate::markdown::text;
use crate::numbers::rounded;
use crate::schedule::CLOSING;

/// The list for programs.
pub fn commissioning_json(list: &Commissioning) -> Value {
    let site = |site: &Site| {
        let expects = site.expects.iter().map(|(what, figure)| {
            json!({
                "what": what, "figure": figure.id, "case": figure.case, "value": figure.value.map(rounded),
                "unit": figure.unit, "working": figure.working,
                "places": figure.places.iter().map(place).collect::<Vec<_>>(),
                "gaps": figure.gaps.iter().map(gap).collect::<Vec<_>>(),
            })
        });
        json!({ "subject": site.subject, "expects": expects.collect::<Vec<_>>() })
    };
    let trials = list.trials.iter().map(|trial| {
        json!({
            "id": trial.id, "title": trial.title, "guards": trial.guards, "does": trial.does, "why": trial.why,
            "caution": trial.caution, "sites": trial.sites.iter().map(site).collect::<Vec<_>>(),
        })
    });
    let declared = list.declared.iter().map(
        |declared| json!({ "what": declared.what, "place": place(&declared.place), "rules": declared.rules }),
    );
    json!({
        "title": list.title, "trials": trials.collect::<Vec<_>>(), "declared": declared.collect::<Vec<_>>(),
        "caution": CLOSING,
    })
}

/// The list as Markdown, a box a site.
pub fn commissioning_markdown(list: &Commissioning) -> String {
    let mut out = format!("# Commissioning list: {}\n\n", text(&list.title));
    // Writing to a String cannot fail.
    for trial in &list.trials {
        let _ = writeln!(out, "## {} ({})\n\n{}\n\n{}\n", trial.title, trial.guards, trial.does, trial.why);
        if let Some(caution) = trial.caution {
            let _ = writeln!(out, "**{caution}**\n");
        }
        for site in &trial.sites {
            let expects =
                site.expects.iter().map(|(what, figure)| format!("{what} {}", super::page::value(figure)));
            let expects = expects.collect::<Vec<_>>().join("; ");
            let expects = if expects.is_empty() { expects } else { format!(": {}", text(&expects)) };
            let _ = writeln!(out, "- [ ] {}{expects}", text(&site.named));
        }
        out.push('\n');
    }
    out.push_str("## Declared, not measured\n\n");
    for declared in &list.declared {
        let rules: Vec<String> = declared.rules.iter().map(|rule| text(rule)).collect();
        let line = declared.place.line;
        let _ = writeln!(out, "- [ ] line {line}, {}; for {}", text(&declared.written), rules.join(", "));
    }
    if list.declared.is_empty() {
        out.push_str("No check rests on a value that is only declared.\n");
    }
    let _ = write!(out, "\n{CLOSING}\n");
    out
}
