//! What a designer is told where a document does not fit its schema.

use haulout_document::{Limits, Schema, Tree, read};

const SCHEMA: &str = r##"{
  "$schema": "https://json-schema.org/draft/2020-12/schema",
  "type": "object",
  "required": ["edition", "project"],
  "properties": {
    "edition": {"const": 0},
    "project": {"type": "object", "properties": {"title": {"type": "string", "minLength": 1}, "stage": {"enum": ["concept", "detailed", "as built"]}},
      "required": ["title", "stage"], "additionalProperties": false, "patternProperties": {"^x-": true}},
    "people": {"type": "integer", "minimum": 0, "maximum": 500},
    "share": {"type": "number", "exclusiveMinimum": 0, "exclusiveMaximum": 1},
    "open": {"type": "boolean"},
    "ids": {"type": "array", "items": {"type": "string", "pattern": "^[a-z][a-z0-9-]*$", "hint": "An id is lower-case letters, digits and hyphens."}, "minItems": 1, "maxItems": 3, "uniqueItems": true},
    "depth": {"$ref": "#/$defs/length", "hint": "A depth reads \"0.6 m\"."},
    "width": {"anyOf": [{"type": "string", "pattern": "m$"}, {"type": "object", "required": ["value"], "properties": {"value": {"type": "string"}}, "additionalProperties": false}]},
    "shape": {"$ref": "#/$defs/shape"},
    "names": {"propertyNames": {"pattern": "^[a-z]+$"}}
  },
  "patternProperties": {"^x-": true},
  "additionalProperties": false,
  "$defs": {
    "length": {"type": "string"},
    "shape": {"type": "object", "properties": {"kind": {"enum": ["circle", "rectangle"]}}, "required": ["kind"],
      "allOf": [
        {"if": {"properties": {"kind": {"const": "circle"}}}, "then": {"properties": {"radius": {"type": "string"}}, "required": ["radius"]}},
        {"if": {"properties": {"kind": {"const": "rectangle"}}}, "then": {"properties": {"size": {"type": "array"}}, "required": ["size"]}}
      ], "unevaluatedProperties": false}
  }
}"##;

fn tree(rest: &str) -> Tree {
    let text = format!(r#"{{"edition": 0, "project": {{"title": "t", "stage": "concept"}}{rest}}}"#);
    read(text.as_bytes(), &Limits::default()).accepted().expect("the test writes JSON")
}

fn told(tree: &Tree) -> Vec<(String, String)> {
    let schema = Schema::compile(SCHEMA).expect("it is a schema");
    schema.check(tree).into_iter().map(|p| (p.span.of(tree.text()).to_owned(), p.message)).collect()
}

/// A hint stands once behind the sentences of its place, also behind that of an unknown key.
#[test]
fn a_hint_is_said_once() {
    let schema = r#"{"type": "object", "properties": {"by": true, "above": true}, "required": ["above", "by"],
        "additionalProperties": false, "hint": "A level hangs on another."}"#;
    let schema = Schema::compile(schema).expect("it is a schema");
    let said = |text: &str| {
        let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("the test writes JSON");
        schema.check(&tree).into_iter().map(|p| p.message).collect::<Vec<_>>()
    };
    let [both] = &said("{}")[..] else { panic!("one place, one problem") };
    assert!(both.contains("\"above\"") && both.contains("\"by\""), "{both}");
    assert_eq!(both.matches("A level hangs on another.").count(), 1, "{both}");
    let [unknown] = &said(r#"{"above": 1, "by": 2, "bye": 3}"#)[..] else { panic!("one place, one problem") };
    assert!(unknown.contains("not known") && unknown.ends_with("A level hangs on another."), "{unknown}");
}

/// Each: what is added to a sound document, the place of the one problem, and what the message says.
#[test]
fn one_fault_one_place_one_sentence() {
    for (rest, place, parts) in [
        (r#", "people": "ten""#, "\"ten\"", &["\"people\" is \"ten\"", "a whole number is expected"][..]),
        (r#", "people": 1.5"#, "1.5", &["a whole number"]),
        (r#", "people": -1"#, "-1", &["at least 0"]),
        (r#", "people": 501"#, "501", &["500 at most"]),
        (r#", "share": 0"#, "0", &["more than 0"]),
        (r#", "share": 1.0"#, "1.0", &["is 1.0", "less than 1"]),
        (r#", "open": "yes""#, "\"yes\"", &["true or false is expected"]),
        (r#", "ids": []"#, "[]", &["an empty list", "at least 1"]),
        (r#", "ids": ["a","b","c","d"]"#, r#"["a","b","c","d"]"#, &["a list of 4", "3 entries"]),
        (r#", "ids": ["a","a"]"#, r#"["a","a"]"#, &["the same entry twice"]),
        (r#", "ids": ["a","B 1"]"#, "\"B 1\"", &["Entry 2 of \"ids\"", "An id is lower-case letters"]),
        (
            r#", "depth": 0.6"#,
            "0.6",
            &["\"depth\" is 0.6", "a text in double quotes", "A depth reads \"0.6 m\"."],
        ),
        (r#", "width": 3"#, "3", &["a text in double quotes or an object"]),
        (r#", "width": "3 ft""#, "\"3 ft\"", &["does not have the form"]),
        (r#", "width": {"value": 3}"#, "3", &["\"value\" is 3"]),
        (r#", "width": {"valeu": "3"}"#, "\"valeu\"", &["\"value\" comes nearest"]),
        (r#", "shape": {"kind": "circel", "x": 1}"#, "\"circel\"", &["\"circle\" comes nearest"]),
        (
            r#", "shape": {"kind": "circle"}"#,
            r#"{"kind": "circle"}"#,
            &["\"shape\" lacks the key \"radius\""],
        ),
        (r#", "shape": {"kind": "circle", "radius": 2}"#, "2", &["\"radius\" is 2"]),
        (
            r#", "shape": {"kind": "circle", "radius": "2 m", "size": []}"#,
            "\"size\"",
            &["not used with what else"],
        ),
        (
            r#", "shape": {"kind": "circle", "radius": "2 m", "raduis": 1}"#,
            "\"raduis\"",
            &["\"radius\" comes nearest"],
        ),
        (r#", "names": {"B": 1}"#, "\"B\"", &["The key \"B\" does not have the form"]),
        (
            r#", "peopel": 3"#,
            "\"peopel\"",
            &["\"peopel\" is not known in the document", "\"people\" comes nearest", "begins with \"x-\""],
        ),
        (r#", "zzzz": 3"#, "\"zzzz\"", &["Known there: \"edition\""]),
    ] {
        let found = told(&tree(rest));
        let here: Vec<_> = found.iter().filter(|(at, _)| at == place).collect();
        assert_eq!(here.len(), 1, "{rest}: {found:?}");
        for part in parts {
            assert!(here[0].1.contains(part), "{rest}: {:?} lacks {part:?}", here[0].1);
        }
        assert!(!here[0].1.contains("any of"), "{:?}", here[0].1);
        // A misspelt key that is also missing, and a misspelt choice that leaves other keys unclaimed, have two places.
        let allowed = if rest.contains("circel") || rest.contains("valeu") { 2 } else { 1 };
        assert!(found.len() <= allowed, "{rest}: {found:?}");
    }
}

#[test]
fn sound_documents_pass_and_own_keys_are_free() {
    for rest in
        ["", r#", "x-mine": [1]"#, r#", "shape": {"kind": "circle", "radius": "2 m"}"#, r#", "people": 10.0"#]
    {
        assert_eq!(told(&tree(rest)), [], "{rest}");
    }
}

#[test]
fn missing_keys_of_one_object_are_told_together() {
    let tree = read(br#"{"edition": 1, "project": {}}"#, &Limits::default()).accepted().expect("it is JSON");
    let found = told(&tree);
    assert_eq!(found.len(), 2);
    assert!(found[0].1.contains("\"edition\" is 1; 0 is expected"));
    assert!(found[1].1.contains("\"title\"") && found[1].1.contains("\"stage\""), "{found:?}");
}

#[test]
fn a_schema_that_cannot_be_used_says_why() {
    for text in ["{", r#"{"type": "wood"}"#, r#"{"$ref": "https://example.org/other.json"}"#] {
        let fault = Schema::compile(text).expect_err("it is no schema");
        assert!(fault.to_string().starts_with("The schema "), "{fault}");
    }
}
