//! The machine formats: `review`, `sheet` and `rulebook` as JSON.

use haulout_document::Problem;
use haulout_engine::{Overridden, Rule, Ruleset};
use haulout_place::{Pointer, Span};
use haulout_quantity::Basis;
use serde_json::{Value, json};

use crate::annexed::{annexed_json, specification};
use crate::figured::Figured;
use crate::numbers::rounded;
use crate::place::Place;
use crate::source::Written;
use crate::told::{Numbers, Told, ToldGap};

/// One design of a review.
pub struct Reviewed<'r> {
    /// The file as it was named.
    pub file: String,
    /// SHA-256 of its bytes, hexadecimal; empty when it could not be read.
    pub digest: String,
    /// The stage it was held to.
    pub stage: Option<&'static str>,
    /// What it says and was overridden.
    pub overridden: Vec<Overridden>,
    /// The text as far as it was read; none when the file could not be read at all.
    pub text: Option<Written<'r>>,
    /// Problems of the document; with any there are no answers.
    pub problems: &'r [Problem],
    /// The answers.
    pub answers: &'r [Told],
}

/// What a run was made with.
pub struct Run<'r> {
    /// The day, `2026-11-25`.
    pub on: &'r str,
    /// The rules.
    pub ruleset: &'r Ruleset,
    /// SHA-256 of the ruleset's substance, hexadecimal.
    pub digest: &'r str,
}

/// Name and version of the program.
fn tool() -> Value {
    json!({ "name": "haulout", "version": env!("CARGO_PKG_VERSION") })
}

/// The JSON of `review`, designs in the order given.
pub fn review(run: &Run<'_>, designs: &[Reviewed<'_>]) -> Value {
    json!({
        "tool": tool(),
        "on": run.on,
        "ruleset": ruleset(run),
        "designs": designs.iter().map(|d| design(run.ruleset, d)).collect::<Vec<_>>(),
    })
}

fn ruleset(run: &Run<'_>) -> Value {
    let mut whole = json!({ "digest": run.digest });
    let annexed = annexed_json(run.ruleset);
    for (key, value) in annexed.as_object().into_iter().flatten() {
        whole[key.as_str()] = value.clone();
    }
    whole["specification"] = specification(run.ruleset);
    whole
}

/// One design of the list.
pub fn design(ruleset: &Ruleset, design: &Reviewed<'_>) -> Value {
    json!({
        "file": design.file,
        "digest": design.digest,
        "stage": design.stage,
        "overridden": design.overridden.iter().map(|o| json!({
            "what": o.what, "from": o.from, "to": o.to, "by": o.by,
        })).collect::<Vec<_>>(),
        "problems": design.problems.iter().map(|p| problem(design.text, p)).collect::<Vec<_>>(),
        "answers": design.answers.iter().map(|a| answer(ruleset, a)).collect::<Vec<_>>(),
    })
}

/// A problem with its place; a file that could not be read at all has none.
fn problem(text: Option<Written<'_>>, problem: &Problem) -> Value {
    json!({ "message": problem.message, "place": text.map(|text| span(text, problem.span)) })
}

fn span(text: Written<'_>, span: Span) -> Value {
    let position = text.source().position(span.start);
    let pointer = match text {
        Written::Read(tree) => tree.innermost(span).unwrap_or_default(),
        // A text that breaks off has no tree to point into.
        Written::Part(_) => Pointer::root(),
    };
    json!({
        "pointer": pointer.as_str(), "line": position.line, "column": position.column,
        "start": span.start, "end": span.end,
    })
}

pub(crate) fn place(place: &Place) -> Value {
    let mut value = json!({
        "pointer": place.pointer.as_str(), "line": place.line, "column": place.column,
        "start": place.start, "end": place.end,
    });
    if let Some(through) = &place.through {
        value["through"] = json!(through.as_str());
    }
    value
}

pub(crate) fn gap(gap: &ToldGap) -> Value {
    json!({
        "kind": gap.kind, "what": gap.what, "places": gap.places.iter().map(place).collect::<Vec<_>>(),
    })
}

fn answer(ruleset: &Ruleset, told: &Told) -> Value {
    let card = &ruleset.rules[told.rule].card;
    let numbers = told.numbers.as_ref();
    json!({
        "rule": card.id,
        "chapter": card.chapter,
        "subject": told.subject,
        "authority": told.authority,
        "case": told.case.words(),
        "outcome": told.outcome.name(),
        "owed": told.owed,
        "demand": card.demand.name(),
        "consequence": card.consequence.name(),
        "have": numbers.map(|n| rounded(n.have)),
        "limit": numbers.map(limit),
        "margin": numbers.and_then(|n| n.margin).map(rounded),
        "unit": numbers.map(|n| n.unit.symbol),
        "basis": told.basis.map(Basis::name),
        "standing": told.standing.map(haulout_model::Standing::name),
        "working": told.working,
        "beside": told.beside,
        "places": told.places.iter().map(place).collect::<Vec<_>>(),
        "roots": told.roots.iter().map(|r| json!({
            "kind": r.kind, "what": r.what, "value": r.value, "basis": r.basis.name(), "source": r.source,
            "annex": r.annex.map(|by| ruleset.annex_name(Some(by))),
        })).collect::<Vec<_>>(),
        "gaps": told.gaps.iter().map(gap).collect::<Vec<_>>(),
        "caution": card.caution,
    })
}

fn limit(numbers: &Numbers) -> Value {
    match (numbers.low, numbers.high) {
        (Some(low), Some(high)) => json!({ "low": rounded(low), "high": rounded(high) }),
        (one, other) => one.or(other).map_or(Value::Null, rounded),
    }
}

/// The JSON of `sheet`.
pub fn sheet(figures: &[Figured]) -> Value {
    let one = |f: &Figured| {
        json!({
            "id": f.id,
            "subject": f.subject,
            "case": f.case,
            "value": f.value.map(rounded),
            "unit": f.unit,
            "working": f.working,
            "places": f.places.iter().map(place).collect::<Vec<_>>(),
            "gaps": f.gaps.iter().map(gap).collect::<Vec<_>>(),
        })
    };
    json!({ "figures": figures.iter().map(one).collect::<Vec<_>>() })
}

/// The JSON of `rulebook`.
pub fn rulebook(rules: &[Rule]) -> Value {
    json!({ "rules": rules.iter().map(rule).collect::<Vec<_>>() })
}

fn rule(rule: &Rule) -> Value {
    let card = &rule.card;
    let mut sources: Vec<&str> = Vec::new();
    for limit in &rule.limits {
        if !sources.contains(&limit.source) {
            sources.push(limit.source);
        }
    }
    json!({
        "id": card.id,
        "title": card.title,
        "chapter": card.chapter,
        "demand": card.demand.name(),
        "stage": card.stage.name(),
        "authority": card.matter.map_or("practice", haulout_register::Matter::name),
        "consequence": card.consequence.name(),
        "case": card.case.words(),
        "basis": rule.limits.iter().map(|l| l.basis).max().map(Basis::name),
        "sources": sources,
        "caution": card.caution,
        "about": card.about.name(),
    })
}
