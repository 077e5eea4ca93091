//! Ways through the schema: the members of an object or of the items of a list, past the words for nothing.

use serde_json::{Map, Value};

/// The published schema.
pub(super) fn published() -> Value {
    serde_json::from_str(haulout_schemas::DESIGN)
        .expect("the published schema is JSON: it is part of this build")
}

/// The schema object that lists the members of what stands at a place; none for a leaf.
pub(super) fn body(place: &Value) -> Option<&Value> {
    let inner = place.get("else").unwrap_or(place);
    let inner = inner.get("items").unwrap_or(inner);
    (place.get("$ref").is_none() && inner.get("properties").is_some()).then_some(inner)
}

/// The members of such an object.
pub(super) fn members(body: &Value) -> &Map<String, Value> {
    body["properties"].as_object().expect("an object of the schema lists its members")
}

/// The name of the shared shape a place refers to.
pub(super) fn form(place: &Value) -> &str {
    place["$ref"].as_str().and_then(|r| r.strip_prefix("#/$defs/")).unwrap_or("")
}
