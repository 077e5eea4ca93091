//! Sentences for what a schema does not allow.

use jsonschema::error::{TypeKind, ValidationErrorKind};
use jsonschema::{JsonType, ValidationError};
use serde_json::Value;

use super::known::nearest;
use super::trail::Trail;
use crate::tree::{Kind, Node, Tree};

/// Characters of a value quoted in a message.
const QUOTED: usize = 60;
/// Words listed when none comes near.
const LISTED: usize = 12;

/// What a value is called in a sentence.
fn name(tree: &Tree, node: Node) -> String {
    match (tree.key_span(node), tree.index_in_parent(node)) {
        (Some(key), _) => key.of(tree.text()).to_owned(),
        (None, Some(at)) => match tree.parent(node).and_then(|list| tree.key_span(list)) {
            Some(key) => format!("entry {} of {}", at + 1, key.of(tree.text())),
            None => format!("entry {} of the list", at + 1),
        },
        (None, None) => "the document".to_owned(),
    }
}

fn capital(sentence: String) -> String {
    let mut chars = sentence.chars();
    chars.next().map_or_else(String::new, |c| c.to_uppercase().chain(chars).collect())
}

/// The value as typed; an object or array by its kind and size.
fn typed(tree: &Tree, node: Node) -> String {
    let count = tree.len(node);
    match tree.kind(node) {
        Kind::Array if count == 0 => "an empty list".to_owned(),
        Kind::Array => format!("a list of {count}"),
        Kind::Object if count == 0 => "an empty object".to_owned(),
        Kind::Object => format!("an object with {count} member{}", if count == 1 { "" } else { "s" }),
        _ => short(tree.typed(node)),
    }
}

fn short(text: &str) -> String {
    match text.char_indices().nth(QUOTED) {
        Some((end, _)) => format!("{}…", &text[..end]),
        None => text.to_owned(),
    }
}

fn kind_word(kind: JsonType) -> &'static str {
    match kind {
        JsonType::Null => "null",
        JsonType::Boolean => "true or false",
        JsonType::Integer => "a whole number",
        JsonType::Number => "a number",
        JsonType::String => "a text in double quotes",
        JsonType::Array => "a list in [ ]",
        JsonType::Object => "an object in { }",
    }
}

fn kinds(kind: &TypeKind) -> Vec<JsonType> {
    match kind {
        TypeKind::Single(one) => vec![*one],
        TypeKind::Multiple(set) => set.iter().collect(),
    }
}

fn either(words: &[String]) -> String {
    match words {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => format!("{} or {last}", first.join(", ")),
    }
}

/// The sentence for a keyword that was not met.
pub(super) fn said(tree: &Tree, node: Node, kind: &ValidationErrorKind) -> String {
    let subject = name(tree, node);
    let value = typed(tree, node);
    capital(sentence(tree, node, kind, &subject, &value))
}

fn sentence(tree: &Tree, node: Node, kind: &ValidationErrorKind, subject: &str, value: &str) -> String {
    use ValidationErrorKind as K;
    match kind {
        K::Type { kind } => wrong_kind(subject, value, &kinds(kind)),
        K::Required { property } => format!("{subject} lacks the key {property}, which has to be there."),
        K::Enum { options } => not_a_choice(tree, node, subject, value, options),
        K::Constant { expected_value } => format!("{subject} is {value}; {expected_value} is expected."),
        K::Pattern { .. } => format!("{subject} is {value}, which does not have the form expected here."),
        K::Minimum { limit } => format!("{subject} is {value}; it has to be at least {limit}."),
        K::Maximum { limit } => format!("{subject} is {value}; it may be {limit} at most."),
        K::ExclusiveMinimum { limit } => format!("{subject} is {value}; it has to be more than {limit}."),
        K::ExclusiveMaximum { limit } => format!("{subject} is {value}; it has to be less than {limit}."),
        K::MultipleOf { multiple_of } => {
            format!("{subject} is {value}; it has to be a multiple of {multiple_of}.")
        }
        K::MinItems { limit } => format!("{subject} is {value}; at least {limit} entries are expected."),
        _ => size(kind, subject, value),
    }
}

fn size(kind: &ValidationErrorKind, subject: &str, value: &str) -> String {
    use ValidationErrorKind as K;
    match kind {
        K::MaxItems { limit } => format!("{subject} is {value}; {limit} entries are allowed at most."),
        K::AdditionalItems { limit } => format!("{subject} is {value}; {limit} entries are allowed at most."),
        K::MinProperties { limit } => format!("{subject} is {value}; at least {limit} are expected."),
        K::MaxProperties { limit } => format!("{subject} is {value}; {limit} are allowed at most."),
        K::MinLength { limit } => {
            format!("{subject} is {value}; at least {limit} character(s) are expected.")
        }
        K::MaxLength { limit } => format!("{subject} is {value}; it may be {limit} characters long at most."),
        K::UniqueItems => format!("{subject} holds the same entry twice; each may stand once."),
        K::Contains => {
            format!("{subject} is {value}, and none of its entries is of the kind that has to be there.")
        }
        K::Format { format } => format!("{subject} is {value}, which does not have the form \"{format}\"."),
        K::UnevaluatedItems { .. } => format!("{subject} has more entries than are expected here."),
        K::OneOfMultipleValid { .. } => format!("{subject} can be read in two ways; leave one of them out."),
        _ => format!("{subject} is {value}, which is not allowed here."),
    }
}

fn wrong_kind(subject: &str, value: &str, expected: &[JsonType]) -> String {
    let words: Vec<String> = expected.iter().map(|k| kind_word(*k).to_owned()).collect();
    format!("{subject} is {value}; {} is expected.", either(&words))
}

fn not_a_choice(tree: &Tree, node: Node, subject: &str, value: &str, options: &Value) -> String {
    let options = options.as_array().map(Vec::as_slice).unwrap_or_default();
    let words: Vec<&str> = options.iter().filter_map(Value::as_str).collect();
    let near = tree.string(node).and_then(|s| nearest(&s, &words));
    match near {
        Some(word) => format!(
            "{subject} is {value}, which is not among the words allowed here; \"{word}\" comes nearest."
        ),
        None => {
            let all: Vec<String> = options.iter().take(LISTED).map(Value::to_string).collect();
            format!("{subject} is {value}; {} is expected.", either(&all))
        }
    }
}

/// Where a value may take several forms and fits none of them even in kind.
pub(super) fn no_form(
    tree: &Tree,
    node: Node,
    forms: &[Vec<ValidationError<'static>>],
    trail: &Trail<'_>,
) -> String {
    let mut expected = Vec::new();
    for error in forms.iter().flatten() {
        if let ValidationErrorKind::Type { kind } = error.kind() {
            expected.extend(kinds(kind));
        }
    }
    expected.sort_by_key(|k| std::cmp::Reverse(*k));
    expected.dedup();
    expected.reverse();
    trail.with_hint(capital(wrong_kind(&name(tree, node), &typed(tree, node), &expected)))
}

/// A key the schema does not know at this place.
pub(super) fn unknown_key(tree: &Tree, object: Node, key: &str, known: &[&str], trail: &Trail<'_>) -> String {
    let place = name(tree, object);
    let own = trail
        .object
        .pointer("/patternProperties/^x-")
        .map_or("", |_| " A key of your own begins with \"x-\".");
    if known.contains(&key) {
        return trail.with_hint(format!("The key \"{key}\" is not used with what else is said in {place}."));
    }
    let way_out = match nearest(key, known) {
        Some(near) => format!("\"{near}\" comes nearest."),
        None if known.is_empty() => "No keys are known there.".to_owned(),
        None => {
            let listed: Vec<String> = known.iter().take(LISTED).map(|k| format!("\"{k}\"")).collect();
            let more = if known.len() > LISTED { " and more" } else { "" };
            format!("Known there: {}{more}.", listed.join(", "))
        }
    };
    trail.with_hint(format!("The key \"{}\" is not known in {place}. {way_out}{own}", short(key)))
}
