//! The way through a schema to the keyword that was not met: the object it stands in, and the nearest hint.

use haulout_place::Pointer;
use jsonschema::ValidationError;
use serde_json::Value;

/// Where in the schema a keyword stands.
pub(super) struct Trail<'s> {
    /// The whole schema, for references into it.
    pub(super) root: &'s Value,
    /// The schema object that holds the keyword.
    pub(super) object: &'s Value,
    hint: Option<&'s str>,
}

impl<'s> Trail<'s> {
    pub(super) fn of(root: &'s Value, error: &ValidationError<'_>) -> Self {
        let path = tokens(error.evaluation_path().as_str());
        let object = root.pointer(holder(error.schema_path().as_str())).unwrap_or(root);
        let own = object.get("hint").and_then(Value::as_str);
        Trail { root, object, hint: own.or_else(|| hint_along(root, &path)) }
    }

    pub(super) const fn hint(&self) -> Option<&'s str> {
        self.hint
    }

    /// The sentence, followed by the hint if there is one.
    pub(super) fn with_hint(&self, sentence: String) -> String {
        match self.hint {
            Some(hint) => format!("{sentence} {hint}"),
            None => sentence,
        }
    }
}

/// The path without its last token, which is the keyword.
fn holder(path: &str) -> &str {
    path.rfind('/').map_or("", |slash| &path[..slash])
}

fn tokens(path: &str) -> Vec<String> {
    Pointer::parse(path).map(|p| p.tokens().collect()).unwrap_or_default()
}

/// The innermost hint among the schema objects that speak of the same value; one about the value around it is dropped.
fn hint_along<'s>(root: &'s Value, path: &[String]) -> Option<&'s str> {
    let mut at = root;
    let mut hint = hint_of(at);
    let mut steps = path.iter();
    while let Some(step) = steps.next() {
        let Some(below) = at.get(step) else { return hint };
        at = match step.as_str() {
            "$ref" => referred(root, below)?,
            _ => below,
        };
        let descends = matches!(
            step.as_str(),
            "properties"
                | "patternProperties"
                | "additionalProperties"
                | "items"
                | "prefixItems"
                | "contains"
                | "unevaluatedProperties"
                | "unevaluatedItems"
        );
        if descends {
            hint = None;
        }
        if matches!(
            step.as_str(),
            "properties"
                | "patternProperties"
                | "prefixItems"
                | "allOf"
                | "anyOf"
                | "oneOf"
                | "dependentSchemas"
        ) {
            let Some(inner) = steps.next().and_then(|s| child(at, s)) else {
                return hint;
            };
            at = inner;
        }
        hint = hint_of(at).or(hint);
    }
    hint
}

fn hint_of(schema: &Value) -> Option<&str> {
    schema.get("hint").and_then(Value::as_str)
}

fn child<'s>(at: &'s Value, token: &str) -> Option<&'s Value> {
    match at {
        Value::Array(list) => list.get(token.parse::<usize>().ok()?),
        other => other.get(token),
    }
}

/// What a reference inside the schema leads to.
pub(super) fn referred<'s>(root: &'s Value, reference: &Value) -> Option<&'s Value> {
    root.pointer(reference.as_str()?.strip_prefix('#')?)
}
