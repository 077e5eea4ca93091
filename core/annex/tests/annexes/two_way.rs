//! Every key the reading code knows stands in the published schema, and the schema knows no other.

use haulout_annex::{ANNEX, EXPECTED, Key, SPECIFICATION, Shape};
use serde_json::Value;

fn compare(schema: &Value, keys: &[Key], at: &str, faults: &mut Vec<String>) {
    let none = serde_json::Map::new();
    let known = schema["properties"].as_object().unwrap_or(&none);
    for name in known.keys().filter(|name| keys.iter().all(|k| k.name != *name)) {
        faults.push(format!("{at}/{name}: in the schema, not in the reading code"));
    }
    if schema["additionalProperties"] != Value::Bool(false) || schema["type"] != "object" {
        faults.push(format!("{at}: not strict"));
    }
    for key in keys {
        let at = format!("{at}/{}", key.name);
        let Some(place) = known.get(key.name) else {
            faults.push(format!("{at}: in the reading code, not in the schema"));
            continue;
        };
        let needed = schema["required"].as_array().is_some_and(|r| r.iter().any(|n| n == key.name));
        if needed != key.needed {
            faults.push(format!("{at}: needed"));
        }
        if !place["description"].as_str().is_some_and(|d| d.ends_with('.')) {
            faults.push(format!("{at}: not described in a sentence"));
        }
        shape(place, &key.shape, &at, faults);
    }
}

fn shape(place: &Value, shape_of: &Shape, at: &str, faults: &mut Vec<String>) {
    let right = match shape_of {
        Shape::Words => place["type"] == "string",
        Shape::Word(words) => place["enum"] == serde_json::json!(words),
        Shape::Count => place["type"] == "integer",
        Shape::Value => place["type"] == serde_json::json!(["string", "number", "boolean"]),
        Shape::Held => place["then"]["const"] == "none" && place["else"]["items"]["type"] == "string",
        Shape::Object(keys) => {
            compare(place, keys, at, faults);
            true
        }
        Shape::List(of) => {
            shape(&place["items"], of, at, faults);
            place["type"] == "array"
        }
        Shape::Map(of) => {
            shape(&place["additionalProperties"], of, at, faults);
            place["type"] == "object"
        }
    };
    if !right {
        faults.push(format!("{at}: another shape"));
    }
}

#[test]
fn the_cards_and_their_schemas_know_the_same_keys() {
    for (text, keys) in [
        (haulout_schemas::ANNEX, ANNEX),
        (haulout_schemas::SPECIFICATION, SPECIFICATION),
        (haulout_schemas::EXPECTED, EXPECTED),
    ] {
        let schema: Value = serde_json::from_str(text).expect("a published schema is JSON");
        let mut faults = Vec::new();
        compare(&schema, keys, "", &mut faults);
        assert!(faults.is_empty(), "{faults:#?}");
    }
}
