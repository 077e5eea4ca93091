//! The reference page of scripts: everything that is registered, each with an example, and the scripts that run them.

use std::fmt::Write;

use haulout_figures::CATALOGUE;
use haulout_model::About;
use haulout_quantity::{Dimension, UNITS};
use haulout_register::{SPECIES, TRAITS};
use haulout_script::{FORMULAS, REFERENCE, Word};
use haulout_sheet::{AnyFormula, Catalogued};
use serde_json::{Map, Value, json};

use crate::evidence::table;

/// An entry of the page: what it is called there, and the text of a script that is its example.
pub struct Shown {
    /// Its name.
    pub name: String,
    /// The name of the rule in its example.
    pub id: String,
    /// The script.
    pub script: String,
}

/// The limits that the examples of words name.
fn limit(name: &str) -> Value {
    match name {
        "low" => of_limit(name, json!("0.5 m")),
        "high" => of_limit(name, json!("2 m")),
        _ => of_limit(name, json!(1)),
    }
}

fn of_limit(name: &str, value: Value) -> Value {
    json!({ "name": name, "what": name, "value": value, "tighter": "higher", "basis": "common practice",
        "source": "standard of the house, 2026" })
}

/// The text of a script: a card about something with these members, and the inside of its function.
fn script(id: &str, about: &str, members: Map<String, Value>, inside: &str) -> String {
    let mut card = json!({
        "id": id, "title": "An example", "chapter": "water", "demand": "should", "stage": "concept",
        "consequence": "harm", "about": about,
        "manual": { "asks": "a", "why": "b", "judged": "c", "cure": "d" },
        "examples": [
            { "shows": "enough", "design": {}, "subject": about, "expected": "met" },
            { "shows": "too little", "design": {}, "subject": about, "expected": "short" }
        ]
    });
    if let Some(card) = card.as_object_mut() {
        card.extend(members);
    }
    format!("/*\n{card:#}\n*/\n\nfn judge(it) {{\n{inside}\n}}\n")
}

/// The example of a word.
pub fn of_word(word: &Word) -> Shown {
    let mut members: Map<String, Value> =
        serde_json::from_str(&format!("{{ {} }}", word.lists)).unwrap_or_default();
    let about = members.get("about").and_then(Value::as_str).unwrap_or("pool").to_owned();
    let names: Vec<String> = members
        .get("limits")
        .and_then(Value::as_array)
        .map(|all| all.iter().filter_map(|n| n.as_str().map(str::to_owned)).collect())
        .unwrap_or_default();
    members.insert("limits".to_owned(), names.iter().map(|name| limit(name)).collect());
    let position = REFERENCE.iter().position(|w| w.name == word.name).unwrap_or_default();
    let id = format!("word-{position}");
    let script = script(&id, &about, members, word.example);
    Shown { name: word.name.to_owned(), id, script }
}

fn one(unit: &str) -> Value {
    if unit.is_empty() { json!(1) } else { json!(format!("1 {unit}")) }
}

fn asked(list: &str, name: &str) -> String {
    let word = if list == "register" { "register" } else { "figure" };
    format!("at_least(it.{word}(\"{name}\"), it.limit(\"least\"))")
}

fn of_list(list: &str, name: &str, about: &str, unit: &str) -> Shown {
    let members = json!({ list: [name], "limits": [of_limit("least", one(unit))] });
    let members = members.as_object().cloned().unwrap_or_default();
    let id = format!("{list}-{name}");
    let script = script(&id, about, members, &asked(list, name));
    Shown { name: name.to_owned(), id, script }
}

/// The example of a figure.
pub fn of_figure(figure: &dyn Catalogued) -> Shown {
    let card = figure.card();
    of_list("figures", card.id, card.about.name(), card.unit)
}

/// The unit of the values the register has under a name; none where it has no value yet.
fn register_unit(name: &str) -> Option<&'static str> {
    let found = TRAITS.iter().find(|t| t.name == name)?;
    SPECIES.iter().find_map(|s| (found.of)(s)).map(|value| value.unit)
}

/// The examples of the values of the register that a script can ask for.
pub fn of_register() -> Vec<Shown> {
    let known = TRAITS.iter().filter_map(|t| Some((t.name, register_unit(t.name)?)));
    known.map(|(name, unit)| of_list("register", name, "group", unit)).collect()
}

/// A unit of a dimension.
fn unit_of(dimension: Dimension) -> Option<&'static str> {
    if dimension == Dimension::NUMBER {
        return Some("");
    }
    UNITS.iter().find(|u| u.dimension == dimension).map(|u| u.symbol)
}

fn call(formula: &dyn AnyFormula) -> String {
    let card = formula.card();
    let arguments: Vec<String> = card.symbols.iter().map(|s| format!("it.limit(\"{s}\")")).collect();
    format!("it.formula(\"{}\", [{}])", card.name, arguments.join(", "))
}

/// The example of a formula; none where no unit is known of what it takes.
pub fn of_formula(formula: &dyn AnyFormula) -> Option<Shown> {
    let card = formula.card();
    let units: Vec<&str> = formula.takes().into_iter().map(unit_of).collect::<Option<_>>()?;
    let limits: Vec<Value> =
        card.symbols.iter().zip(units).map(|(symbol, unit)| of_limit(symbol, one(unit))).collect();
    let members = json!({ "limits": limits }).as_object().cloned().unwrap_or_default();
    let id = format!(
        "formula-{}",
        card.name.to_ascii_lowercase().replace(|c: char| !c.is_ascii_alphanumeric(), "-")
    );
    let inside = format!("let x = {};\nat_least(x, x)", call(formula));
    Some(Shown { name: card.name.to_owned(), script: script(&id, "whole", members, &inside), id })
}

const HEAD: &str = "# What a script can say

This page is generated from what is registered; a test compares it, and runs every example in it.
A script is a JSON card in a block comment, and one function `judge(it)` that gives back an answer. It cannot see a number:
it asks for values by name, computes with them and answers; the comparison is made elsewhere. Comparing in a script stops it.

In the examples of words, `low` is a limit of 0.5 m, `high` one of 2 m, `one` the number 1. A quantity is written on the
card, as a limit with its source; plain numbers such as `2` may stand in a script as factors.
";

fn words(page: &mut String) {
    for word in REFERENCE {
        let lists = word.lists;
        let inside = word.example.replace('\n', "\n    ");
        // Writing to a String cannot fail.
        let _ = write!(
            page,
            "\n### `{}`\n\n{}\n\n```\n/* {lists} */\nfn judge(it) {{\n    {inside}\n}}\n```\n",
            word.form, word.does
        );
    }
}

fn figures() -> String {
    let rows = CATALOGUE.iter().map(|figure| {
        let card = figure.card();
        let unit = if card.unit.is_empty() { "number" } else { card.unit };
        let example = format!("`{}`", asked("figures", card.id));
        vec![
            card.id.to_owned(),
            card.title.to_owned(),
            card.about.name().to_owned(),
            unit.to_owned(),
            example,
        ]
    });
    table(&["figure", "what it is", "about", "unit", "example"], rows)
}

fn register() -> String {
    let rows = TRAITS.iter().filter_map(|t| {
        let unit = register_unit(t.name)?;
        let unit = if unit.is_empty() { "number" } else { unit };
        Some(vec![t.name.to_owned(), unit.to_owned(), format!("`{}`", asked("register", t.name))])
    });
    table(&["value", "unit", "example"], rows)
}

fn formulas() -> String {
    let rows = FORMULAS.iter().map(|formula| {
        let card = formula.card();
        let takes: Vec<String> = formula.takes().iter().map(|d| d.name()).collect();
        let gives = formula.dimension(&formula.takes()).name();
        vec![
            card.name.to_owned(),
            format!("{} = {}", card.result, card.text),
            takes.join(", "),
            gives,
            card.range.to_owned(),
            format!("`{}`", call(*formula)),
        ]
    });
    table(&["formula", "text", "takes", "gives", "where it holds", "example"], rows)
}

fn kinds() -> String {
    let rows = About::all().map(|about| {
        let of = |belongs: &dyn Fn(About) -> bool| {
            let names: Vec<&str> = About::all().filter(|k| belongs(*k)).map(About::name).collect();
            names.join(", ")
        };
        let gathers = if about == About::Whole { "everything".to_owned() } else { of(&|k| about.gathers(k)) };
        vec![format!("`{}`", about.name()), of(&|k| about.holds(k)), gathers]
    });
    table(&["about", "figures about", "each of"], rows)
}

/// The page.
pub fn page() -> String {
    let mut page = HEAD.to_owned();
    page.push_str("\n## Words\n");
    words(&mut page);
    let sections = [
        (
            "What a rule is about",
            "The second column says whose figures such a rule may list under \"figures\", the third whose it may list under \"each\".",
            kinds(),
        ),
        (
            "Figures",
            "Each is listed on the card under \"figures\" or \"each\". `least` is a limit of one unit.",
            figures(),
        ),
        ("Values of the register", "Each is listed on the card under \"register\".", register()),
        (
            "Formulas",
            "Each takes values in this order; the examples hand in limits named after the symbols.",
            formulas(),
        ),
    ];
    for (title, says, table) in sections {
        // Writing to a String cannot fail.
        let _ = write!(page, "\n## {title}\n\n{says}\n\n{table}");
    }
    page
}
