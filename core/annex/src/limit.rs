//! Limits that an annex tightens or loosens, and recommendations it makes requirements.

use haulout_document::{Kind, Node};
use haulout_engine::Ruleset;
use haulout_quantity::{Dimension, Parts, Slip, Unit, difference_unit, print, read, read_difference, unit};
use haulout_script::nearest;
use haulout_sheet::{Limit, LimitValue, Tighter};

use crate::page::Page;

/// Changes every limit the card lists.
pub(crate) fn limits(page: &mut Page, ruleset: &mut Ruleset, annex: u16) {
    let mut seen: Vec<(String, String, String)> = Vec::new();
    for entry in page.list(page.tree.root(), "limits") {
        let Some(limit) = limit(page, ruleset, entry) else { continue };
        let key = (limit.rule.to_owned(), limit.name.to_owned(), limit.row.to_owned());
        if seen.contains(&key) {
            page.tell(entry, format!("{}, {}: this limit stands in the list twice", limit.rule, limit.name));
            continue;
        }
        seen.push(key);
        change(page, ruleset, annex, (entry, limit));
    }
}

fn change(page: &mut Page, ruleset: &mut Ruleset, annex: u16, (entry, limit): (Node, &'static Limit)) {
    let Some(at) = page.member(entry, "value") else { return };
    let Some(value) = number(page, at, limit.dimension, limit.unit) else { return };
    let reason = page.words(entry, "reason").map(|(reason, _)| reason);
    let new = LimitValue { value, by: Some(annex) };
    let set = ruleset.set_limit(limit.rule, limit.name, limit.row, new, reason.as_deref());
    if set.is_err() {
        let said = |si: f64| unit(limit.unit).map_or_else(String::new, |u| print(si, u, 4));
        let (more, less) = match limit.tighter {
            Tighter::Higher => ("at least", said(value)),
            Tighter::Lower => ("at most", said(value)),
        };
        let message = format!(
            "the rule asks {more} {} and this asks less, {less}; a limit is loosened only with a \"reason\" beside \
its value, which every output repeats",
            said(limit.value)
        );
        page.tell(at, message);
    }
}

/// The limit an entry names; what does not exist is told with what does.
fn limit(page: &mut Page, ruleset: &Ruleset, entry: Node) -> Option<&'static Limit> {
    let (rule, at) = page.words(entry, "rule")?;
    let Some(position) = ruleset.position(&rule) else {
        let near = nearest(&rule, ruleset.rules.iter().map(|r| &*r.card.id));
        page.tell(at, format!("there is no rule \"{rule}\"{near}"));
        return None;
    };
    let limits = &ruleset.rules[position].limits;
    let (name, at) = page.words(entry, "limit")?;
    let of_name: Vec<&'static Limit> = limits.iter().copied().filter(|l| l.name == name).collect();
    if of_name.is_empty() {
        let message = if limits.is_empty() {
            format!("the rule \"{rule}\" has no limits of its own")
        } else {
            format!(
                "the rule \"{rule}\" has no limit \"{name}\"{}",
                nearest(&name, limits.iter().map(|l| l.name))
            )
        };
        page.tell(at, message);
        return None;
    }
    row(page, &of_name, entry, at)
}

fn row(page: &mut Page, limits: &[&'static Limit], entry: Node, name: Node) -> Option<&'static Limit> {
    let rows = || limits.iter().map(|l| l.row);
    match page.words(entry, "row") {
        None => {
            let found = limits.iter().copied().find(|l| l.row.is_empty());
            if found.is_none() {
                let all: Vec<String> = rows().map(|row| format!("\"{row}\"")).collect();
                page.tell(
                    name,
                    format!("this limit is a table: say which \"row\", one of {}", all.join(", ")),
                );
            }
            found
        }
        Some((row, at)) => {
            let found = limits.iter().copied().find(|l| l.row == row);
            if found.is_none() {
                let message = if rows().all(str::is_empty) {
                    format!("this limit has no rows; leave \"{row}\" out")
                } else {
                    format!("the table has no row \"{row}\"{}", nearest(&row, rows()))
                };
                page.tell(at, message);
            }
            found
        }
    }
}

/// A number in SI out of a quantity as text, or out of a bare number where there is no unit.
pub(crate) fn number(page: &mut Page, at: Node, dimension: Dimension, symbol: &str) -> Option<f64> {
    if page.tree.kind(at) == Kind::Number && dimension == Dimension::NUMBER && symbol.is_empty() {
        return page.tree.number(at);
    }
    let Some(text) = page.tree.string(at).map(|t| t.into_owned()) else {
        let message = match unit(symbol) {
            Some(unit) if !symbol.is_empty() => {
                format!(
                    "a quantity with its unit is expected here, as text, such as \"{}\"",
                    print(unit.to_si(1.0), unit, 2)
                )
            }
            _ => "a number is expected here".to_owned(),
        };
        page.tell(at, message);
        return None;
    };
    match stated(&text, dimension, symbol) {
        Ok(value) => Some(value),
        Err(slip) => {
            page.slip(at, &slip);
            None
        }
    }
}

fn stated(text: &str, dimension: Dimension, symbol: &str) -> Result<f64, Slip> {
    let difference = unit(symbol).is_some_and(is_difference);
    let stated = if difference { read_difference(text)? } else { read(text, dimension)? };
    match stated.parts {
        Parts::One(value) => Ok(value),
        _ => Err(Slip {
            message: format!("\"{text}\" holds several numbers, and one is expected"),
            at: 0..text.len(),
        }),
    }
}

fn is_difference(of: &'static Unit) -> bool {
    use haulout_quantity::System::{Metric, Us};
    [Metric, Us].into_iter().any(|system| std::ptr::eq(difference_unit(system), of))
}

/// Makes every recommendation the card lists a requirement.
pub(crate) fn demands(page: &mut Page, ruleset: &mut Ruleset, annex: u16) {
    for entry in page.list(page.tree.root(), "demands") {
        let Some((rule, at)) = page.words(entry, "rule") else { continue };
        if page.words(entry, "demand").is_none_or(|(demand, _)| demand != "shall") {
            continue;
        }
        if ruleset.raise(&rule, annex).is_err() {
            let near = nearest(&rule, ruleset.rules.iter().map(|r| &*r.card.id));
            page.tell(at, format!("there is no rule \"{rule}\"{near}"));
        }
    }
}
