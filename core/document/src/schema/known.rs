//! The keys and words a schema knows at a place, and which of them comes nearest to what was typed.

use serde_json::Value;

use super::trail::{Trail, referred};

/// Below this likeness (1 is the same word) a suggestion would mislead more often than help; found by trying pairs.
const ALIKE: f64 = 0.6;

/// Keys of the schema object and of everything it applies to the same value.
pub(super) fn keys<'s>(trail: &Trail<'s>) -> Vec<&'s str> {
    let mut found = Vec::new();
    let mut seen: Vec<&Value> = Vec::new();
    let mut waiting = vec![trail.object];
    while let Some(schema) = waiting.pop() {
        if seen.iter().any(|s| std::ptr::eq(*s, schema)) {
            continue;
        }
        seen.push(schema);
        found.extend(own(schema).filter(|key| !key.is_empty()));
        waiting.extend(beside(trail.root, schema));
    }
    let mut unique = Vec::new();
    for key in found {
        if !unique.contains(&key) {
            unique.push(key);
        }
    }
    unique
}

fn own(schema: &Value) -> impl Iterator<Item = &str> {
    schema.get("properties").and_then(Value::as_object).into_iter().flatten().map(|(key, _)| key.as_str())
}

fn beside<'s>(root: &'s Value, schema: &'s Value) -> Vec<&'s Value> {
    let lists = ["allOf", "anyOf", "oneOf"].into_iter().filter_map(|k| schema.get(k)?.as_array()).flatten();
    let single = ["if", "then", "else"].into_iter().filter_map(|k| schema.get(k));
    let reference = schema.get("$ref").and_then(|r| referred(root, r));
    let mut all: Vec<&Value> = lists.chain(single).chain(reference).collect();
    all.reverse();
    all
}

/// The word most like the typed one, if any is like enough; the first of equals.
pub(super) fn nearest<'w>(typed: &str, words: &[&'w str]) -> Option<&'w str> {
    let typed = plain(typed);
    let mut best = None;
    let mut likeness = ALIKE;
    for word in words {
        let this = strsim::normalized_damerau_levenshtein(&typed, &plain(word));
        if this > likeness || (this >= ALIKE && best.is_none()) {
            (best, likeness) = (Some(*word), this);
        }
    }
    best
}

/// Case and the ways of joining words do not count.
fn plain(word: &str) -> String {
    word.chars().filter(|c| !matches!(c, '-' | '_' | ' ')).take(80).flat_map(char::to_lowercase).collect()
}
