//! Hostile and broken scripts as data: their classes, what each must be told, and where.

use serde_json::Value;

use crate::common::{CARD, LISTS, script, with_card};

/// The data.
const DATA: &str = include_str!("../../../../tests/annexes/hostile.json");

/// What is promised against.
pub(crate) const CLASSES: [&str; 12] = [
    "time",
    "memory",
    "nesting",
    "strings",
    "recursion",
    "card",
    "types",
    "dimension",
    "missing figure",
    "wrong answer",
    "output flood",
    "escape",
];

/// A sound answer.
pub(crate) const ANSWER: &str =
    "at_least(it.figure(\"depth\"), it.register(\"body-length\") + it.limit(\"spare\"))";

/// A hostile or broken script.
pub(crate) struct Trial {
    /// Its class.
    pub(crate) class: String,
    /// What makes it one.
    pub(crate) what: String,
    /// All of it.
    pub(crate) text: String,
    /// A part of the sentence it must be told.
    pub(crate) told: String,
    /// The text that is pointed at; empty where several places are right.
    pub(crate) at: String,
}

/// All of them.
pub(crate) fn trials() -> Vec<Trial> {
    let data: Vec<Value> = serde_json::from_str(DATA).expect("the data is JSON");
    let word = |entry: &Value, key: &str| entry[key].as_str().map(str::to_owned);
    let one = |entry: &Value| {
        let text = match word(entry, "body") {
            Some(raw) => script(LISTS, &body(&raw)),
            None => changed(&entry["from"], &entry["to"]),
        };
        Trial {
            class: word(entry, "class").expect("a trial has a class"),
            what: word(entry, "body").or(word(entry, "to")).expect("a trial changes something"),
            text,
            told: word(entry, "told").expect("a trial is told something"),
            at: word(entry, "at").unwrap_or_default(),
        }
    };
    data.iter().map(one).collect()
}

/// A sound script with something in its card replaced.
fn changed(from: &Value, to: &Value) -> String {
    let card = CARD.replace("LISTS", LISTS);
    let (from, to) = (from.as_str().expect("what goes"), to.as_str().expect("what comes"));
    assert!(card.contains(from), "{from} stands in the card");
    with_card(&card.replacen(from, to, 1), &body("ANSWER"))
}

/// The function of a trial: words in capitals stand for what is too long to write down.
pub(crate) fn body(raw: &str) -> String {
    let inner = match raw.strip_prefix("REPEAT|").map(|rest| rest.split('|').collect::<Vec<_>>()) {
        Some(parts) => format!("let x = {}{}{};", parts[0].repeat(5_000), parts[1], parts[2].repeat(5_000)),
        None => longer(raw),
    };
    let first = if raw.contains("MANY") { "let v = it.figure(\"depth\");" } else { "" };
    format!("fn judge(it) {{\n    {first}{inner}\n}}")
}

fn longer(raw: &str) -> String {
    match raw {
        "DEEP" => format!("let x = {}1{};", "(".repeat(20_000), ")".repeat(20_000)),
        "LISTS_IN_LISTS" => format!("let x = {}{};", "[".repeat(20_000), "]".repeat(20_000)),
        other => other
            .replace("MANY", &"v, ".repeat(200))
            .replace("LONG", &"a".repeat(20_000))
            .replace("ANSWER", ANSWER),
    }
}
