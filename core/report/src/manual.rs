//! The rulebook and the calculation sheet as pages for a person.

use std::fmt::Write;

use haulout_engine::{Rule, Ruleset};
use haulout_quantity::{print, unit};

use crate::figured::Figured;
use crate::wrap::{row, wrap};

const INDENT: usize = 12;

/// The list of rules by chapter.
pub fn rule_list(rules: &[Rule], width: usize) -> String {
    let mut out = String::new();
    let mut chapter = String::new();
    for rule in rules {
        if rule.card.chapter != chapter {
            chapter = rule.card.chapter.to_string();
            // Writing to a String cannot fail.
            let _ = writeln!(out, "{}{}", if out.is_empty() { "" } else { "\n" }, chapter.to_uppercase());
        }
        let _ = write!(out, "  {}", row(rule.card.demand.name(), &rule.card.id, 8, width));
        out.push_str(&row("", &rule.card.manual.asks, 10, width));
    }
    out
}

/// The manual page of a rule, its limits as the ruleset has them.
pub fn manual_page(ruleset: &Ruleset, rule: &Rule, width: usize) -> String {
    let card = &rule.card;
    let mut out = format!("{}\n\n", card.id);
    let heading = format!("{}, {}, guards {}", card.chapter, card.demand.name(), card.consequence.name());
    let _ = writeln!(out, "{}", wrap(&heading, width).join("\n"));
    let authority =
        card.matter.map_or("practice".to_owned(), |m| format!("the authorities chosen for {}", m.name()));
    let case = card.case.words().join(", ");
    let rows = [
        ("about", card.about.name().to_owned()),
        ("owed from", format!("{} stage", card.stage.name())),
        ("authority", authority),
        ("state", if case.is_empty() { "normal".to_owned() } else { case }),
        ("asks", card.manual.asks.to_string()),
        ("why", card.manual.why.to_string()),
        ("judged", card.manual.judged.to_string()),
        ("cure", card.manual.cure.to_string()),
        ("caution", card.caution.as_ref().map(ToString::to_string).unwrap_or_default()),
    ];
    for (word, text) in rows.iter().filter(|(_, text)| !text.is_empty()) {
        out.push_str(&row(word, text, INDENT, width));
    }
    for limit in &rule.limits {
        let said = |si: f64| unit(limit.unit).map_or_else(String::new, |u| print(si, u, 4));
        let now = ruleset.limits.value(limit);
        let value = match now.by {
            None => said(now.value),
            by => {
                format!("{} instead of {}, by {}", said(now.value), said(limit.value), ruleset.annex_name(by))
            }
        };
        let of = if limit.row.is_empty() { String::new() } else { format!(" ({})", limit.row) };
        let text = format!("{}{of} {value}; {}; {}", limit.what, limit.basis.name(), limit.source);
        out.push_str(&row("limit", &text, INDENT, width));
    }
    out
}

/// The sheet: subject by subject, figure by figure.
pub fn sheet_page(figures: &[Figured], width: usize) -> String {
    let mut out = String::new();
    for figure in figures {
        let states =
            if figure.case.is_empty() { String::new() } else { format!(" ({})", figure.case.join(", ")) };
        let heading = format!("{}, {}{states}", figure.subject, figure.title);
        let value = if figure.value.is_some() { figure.printed.clone() } else { "not assessed".to_owned() };
        let pad = width.saturating_sub(heading.chars().count() + value.chars().count()).max(2);
        let _ = writeln!(out, "{heading}{}{value}", " ".repeat(pad));
        let _ = writeln!(out, "  {}", figure.id);
        for step in &figure.working {
            out.push_str(&row("", step, 4, width));
        }
        for gap in &figure.gaps {
            let at = gap.places.first().map_or_else(String::new, |p| format!("{}: ", p.pointer));
            out.push_str(&row("", &format!("{at}{}, {}", gap.what, gap.kind), 4, width));
        }
        out.push('\n');
    }
    out
}
