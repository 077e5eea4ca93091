//! What house annexes and a specification did to a run, in rows of a word and its text: every output repeats them.

use haulout_engine::{Annex, Ruleset};
use haulout_quantity::{print, unit};
use haulout_sheet::Limit;
use serde_json::{Value, json};

use crate::numbers::rounded;
use crate::page::Subject;
use crate::wrap::row;

const INDENT: usize = 13;
const DIGITS: u32 = 4;

/// A value in the unit of its card.
fn said(si: f64, symbol: &str) -> String {
    unit(symbol).map_or_else(String::new, |unit| print(si, unit, DIGITS))
}

/// A value in its unit, for a program.
fn number(si: f64, symbol: &str) -> Value {
    rounded(unit(symbol).map_or(si, |unit| unit.of_si(si)))
}

/// The limits that differ from their cards, with the annex that changed each.
fn changed(ruleset: &Ruleset) -> impl Iterator<Item = (&'static Limit, f64, &Annex)> + '_ {
    ruleset.rules.iter().flat_map(|r| r.limits.iter().copied()).filter_map(|limit| {
        let value = ruleset.limits.value(limit);
        let annex = ruleset.annexes.get(usize::from(value.by?))?;
        Some((limit, value.value, annex))
    })
}

fn name_of(limit: &Limit) -> String {
    let of = if limit.row.is_empty() { String::new() } else { format!(", {}", limit.row) };
    format!("{}, {}{of}", limit.rule, limit.name)
}

fn annex(annex: &Annex) -> String {
    let licence = if annex.licence.is_empty() { String::new() } else { format!(", {}", annex.licence) };
    let by =
        if annex.authors.is_empty() { String::new() } else { format!(", by {}", annex.authors.join(", ")) };
    format!("{} {}{licence}{by}; SHA-256 {}", annex.name, annex.version, annex.digest)
}

/// The rows; none for a run without annexes and specification.
pub(crate) fn rows(ruleset: &Ruleset) -> Vec<(&'static str, String)> {
    let mut rows: Vec<(&'static str, String)> = Vec::new();
    if let Some(by) = &ruleset.specification {
        let title = if by.title.is_empty() { String::new() } else { format!("{}, ", by.title) };
        rows.push(("by", format!("{title}{}; SHA-256 {}", by.file, by.digest)));
        let plus_minus = by.plus_minus.iter().map(|(what, text)| {
            format!("{text} for every {what} that states none; read and kept, the comparison takes the value itself")
        });
        rows.extend(plus_minus.map(|text| ("plus-minus", text)));
    }
    rows.extend(ruleset.annexes.iter().map(|a| ("annex", annex(a))));
    rows.extend(ruleset.loosened.iter().map(|l| {
        let (from, to) = (said(l.from, l.unit), said(l.to, l.unit));
        ("loosened", format!("{}, {}: {to} instead of {from}, by {}: {}", l.rule, l.limit, l.annex, l.reason))
    }));
    rows.extend(changed(ruleset).filter(|(limit, ..)| !is_loosened(ruleset, limit)).map(
        |(limit, value, annex)| {
            let (from, to) = (said(limit.value, limit.unit), said(value, limit.unit));
            ("tightened", format!("{}: {to} instead of {from}, by {}", name_of(limit), annex.name))
        },
    ));
    let raised = ruleset.raised.iter();
    rows.extend(
        raised
            .map(|r| ("required", format!("{}, a recommendation made a requirement by {}", r.rule, r.annex))),
    );
    rows.extend(ruleset.given.iter().map(|g| {
        let before = g.from.map_or_else(String::new, |from| format!(" instead of {}", said(from, g.unit)));
        (
            "register",
            format!(
                "{}, {}: {}{before}, by {}: {}",
                g.species,
                g.name,
                said(g.to, g.unit),
                g.annex,
                g.source
            ),
        )
    }));
    rows
}

fn is_loosened(ruleset: &Ruleset, limit: &Limit) -> bool {
    let name =
        if limit.row.is_empty() { limit.name.to_owned() } else { format!("{}, {}", limit.name, limit.row) };
    ruleset.loosened.iter().any(|l| l.rule == limit.rule && l.limit == name)
}

/// What of one design was overridden.
pub(crate) fn overridden(subject: &Subject<'_>) -> Vec<(&'static str, String)> {
    let found = subject.ruleset.overridden(subject.design, subject.stage).into_iter();
    found
        .map(|o| ("overridden", format!("{}: {} instead of {}, by {}", o.what, o.to, o.from, o.by)))
        .collect()
}

/// Rows as lines of a page, an empty line behind them; nothing at all without rows.
pub(crate) fn lines(rows: &[(&'static str, String)], width: usize) -> String {
    let mut out: String = rows.iter().map(|(word, text)| row(word, text, INDENT, width)).collect();
    if !rows.is_empty() {
        out.push('\n');
    }
    out
}

/// What the annexes and the specification of a run did, for the top of a page that is not a review.
pub fn annexed_page(ruleset: &Ruleset, width: usize) -> String {
    lines(&rows(ruleset), width)
}

/// The same for programs: the members `annexes`, `loosened`, `limits`, `raised` and `register`.
pub fn annexed_json(ruleset: &Ruleset) -> Value {
    let annexes = ruleset.annexes.iter().map(|a| {
        json!({ "name": a.name, "version": a.version, "licence": a.licence, "authors": a.authors, "digest": a.digest })
    });
    let loosened = ruleset.loosened.iter().map(|l| {
        json!({
            "rule": l.rule, "limit": l.limit, "from": number(l.from, l.unit), "to": number(l.to, l.unit),
            "unit": l.unit, "reason": l.reason, "annex": l.annex,
        })
    });
    let limits = changed(ruleset).map(|(limit, value, annex)| {
        json!({
            "rule": limit.rule, "limit": limit.name, "row": limit.row,
            "value": number(value, limit.unit), "unit": limit.unit, "annex": annex.name,
        })
    });
    let given = ruleset.given.iter().map(|g| {
        json!({
            "species": g.species, "name": g.name, "from": g.from.map(|from| number(from, g.unit)),
            "to": number(g.to, g.unit), "unit": g.unit, "source": g.source, "annex": g.annex,
        })
    });
    json!({
        "annexes": annexes.collect::<Vec<_>>(),
        "loosened": loosened.collect::<Vec<_>>(),
        "limits": limits.collect::<Vec<_>>(),
        "raised": ruleset.raised.iter().map(|r| json!({ "rule": r.rule, "annex": r.annex })).collect::<Vec<_>>(),
        "register": given.collect::<Vec<_>>(),
    })
}

/// The specification of a run for programs; null when there is none.
pub(crate) fn specification(ruleset: &Ruleset) -> Value {
    let Some(by) = &ruleset.specification else { return Value::Null };
    let held = by.held_to.iter().map(|(matter, ids)| (matter.name().to_owned(), json!(ids)));
    let plus_minus = by.plus_minus.iter().map(|(what, text)| (what.clone(), json!(text)));
    json!({
        "file": by.file, "digest": by.digest, "title": by.title,
        "stage": by.stage.map(haulout_model::Stage::name),
        "held-to": held.collect::<serde_json::Map<_, _>>(),
        "plus-minus": plus_minus.collect::<serde_json::Map<_, _>>(),
    })
}
