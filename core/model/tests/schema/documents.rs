//! Small documents held against the schema: what it takes, and where it finds what it refuses.

use std::sync::LazyLock;

use jsonschema::Validator;
use serde_json::{Value, json};

use super::places::published;

static VALIDATOR: LazyLock<Validator> = LazyLock::new(|| {
    jsonschema::draft202012::new(&published()).expect("the schema is one: another test says so")
});

fn with(key: &str, value: Value) -> Value {
    let mut document = json!({ "edition": 0, "project": { "title": "Pond", "stage": "concept" } });
    document[key] = value;
    document
}

/// The places of what is refused in a document of this top-level member.
fn refused(key: &str, value: Value) -> Vec<String> {
    places(&with(key, value))
}

fn places(document: &Value) -> Vec<String> {
    let mut places: Vec<String> =
        VALIDATOR.iter_errors(document).map(|e| e.instance_path().to_string()).collect();
    places.dedup();
    places
}

fn slips_of_reading(document: &Value) -> Vec<String> {
    let reading =
        haulout_document::read(document.to_string().as_bytes(), &haulout_document::Limits::default());
    let tree = reading.accepted().expect("what serde_json writes is JSON");
    let (_, problems) = haulout_model::read(&tree);
    problems.into_iter().map(|p| p.message).collect()
}

fn pool(key: &str, value: Value) -> (&'static str, Value) {
    ("pools", json!([{ "id": "main", key: value }]))
}

fn circuit(key: &str, value: Value) -> (&'static str, Value) {
    ("circuits", json!([{ "id": "c", key: value }]))
}

#[test]
fn the_schema_is_one_of_the_draft() {
    let schema = published();
    assert_eq!(schema["$schema"], "https://json-schema.org/draft/2020-12/schema");
    assert!(jsonschema::draft202012::meta::is_valid(&schema));
    assert!(jsonschema::draft202012::new(&schema).is_ok());
}

fn taken() -> Vec<(&'static str, Value)> {
    vec![
        pool("depth", json!("0.6 m")),
        pool("depth", json!("2 ft 6 in")),
        pool("depth", json!("none")),
        pool("depth", json!({ "value": "0.6 m", "status": "measured", "by": "A. Ross", "on": "2026-05-31" })),
        pool("edge", json!("step")),
        pool("levels", json!({ "water": "+0.92 m", "rim": { "above": "main.water", "by": "120 mm" } })),
        pool(
            "levels",
            json!({ "low": { "value": { "below": "main.water", "by": "5 cm" }, "status": "declared" } }),
        ),
        pool("outline", json!([[0, 0], [3, 0], ["3 ft", 2]])),
        pool("outline", json!({ "rect": { "corner": [0, 0], "size": [3, 2], "turn": "15 deg" } })),
        pool(
            "outline",
            json!({ "less": [{ "circle": { "centre": [0, 0], "radius": 2 } }, [[0, 0], [1, 0], [0, 1]]] }),
        ),
        pool(
            "outline",
            json!({ "note": "ring", "inset": { "of": "hall", "by": "to be decided", "sides": [1, 2] } }),
        ),
        pool("zones", json!([])),
        pool("zones", json!("none")),
        pool(
            "solids",
            json!([{ "id": "gravel", "kind": "gravel", "voids": "40 %" }, { "id": "log", "voids": 0 }]),
        ),
        pool("solids", json!([{ "id": "r", "kind": { "value": "rock", "status": "maker" } }])),
        pool("water", json!({ "temperature": "24 to 27 °C", "swing": "2 K", "x-log": [1, null] })),
        circuit(
            "pump",
            json!({ "kind": "large", "curve": { "flow": "m3/h", "head": "m", "points": [[0, 4.2], [2, 3]] } }),
        ),
        circuit(
            "runs",
            json!([{ "id": "r", "loss-coefficients": 1.5, "fittings": { "elbow-90": 6, "union": "to be decided" } }]),
        ),
        ("animals", json!([{ "id": "g", "sexes": "1.3.0", "eggs-removed": true, "mass": "3 lb" }])),
        (
            "basking",
            json!([{ "id": "b", "float": "none", "uv-index": { "value": 3.5, "status": "measured" } }]),
        ),
        (
            "kinds",
            json!({ "pumps": { "large": { "note": "spare kept" } }, "pipes": { "dn50": { "bore": "44 mm" } } }),
        ),
        (
            "electrical",
            json!({ "items": [{ "id": "lamp", "at": [1, 2, "2.4 m"], "residual-current": "none" }] }),
        ),
        ("variances", json!([{ "id": "v", "rule": "r", "reason": "listed wall" }])),
        ("$schema", json!("design.json")),
        ("x-office", json!(7)),
    ]
}

#[test]
fn sensible_documents_are_taken() {
    for (key, value) in taken() {
        assert_eq!(refused(key, value.clone()), Vec::<String>::new(), "{value}");
    }
}

/// A document both take is one that an editor and the program agree about.
#[test]
fn what_the_schema_takes_the_reading_code_reads() {
    for (key, value) in taken() {
        assert_eq!(slips_of_reading(&with(key, value.clone())), Vec::<String>::new(), "{value}");
    }
}

/// The number of coordinates is not described by the reading code; it is asked itself.
#[test]
fn both_want_two_coordinates_in_plan_and_three_in_space() {
    let lamp = |at: Value| with("electrical", json!({ "items": [{ "id": "l", "at": at }] }));
    let eye = |at: Value| with("visitors", json!({ "positions": [{ "id": "e", "at": at }] }));
    let intake = |at: Value| with("circuits", json!([{ "id": "c", "intakes": [{ "id": "i", "at": at }] }]));
    for (two, document) in [(false, lamp as fn(Value) -> Value), (true, eye), (true, intake)] {
        for (at, right) in [(json!([1, 2]), two), (json!([1, 2, 3]), !two)] {
            let document = document(at);
            assert_eq!(places(&document).is_empty(), right, "{document}");
            assert_eq!(slips_of_reading(&document).is_empty(), right, "{document}");
        }
    }
}

#[test]
fn slips_are_found_at_their_place() {
    let outline = |value| pool("outline", value);
    let slips = [
        (pool("depth", json!(0.6)), "/pools/0/depth"),
        (pool("depth", json!(null)), "/pools/0/depth"),
        (pool("depth", json!({ "value": 0.6, "status": "maker" })), "/pools/0/depth/value"),
        (pool("depth", json!({ "value": "0.6 m", "status": "guessed" })), "/pools/0/depth/status"),
        (pool("depth", json!({ "value": "0.6 m" })), "/pools/0/depth"),
        (pool("deph", json!("0.6 m")), "/pools/0"),
        (pool("zones", json!("many")), "/pools/0/zones"),
        (pool("zones", json!([{ "depth": "1 m" }])), "/pools/0/zones/0"),
        (pool("solids", json!([{ "id": "s", "kind": "stone" }])), "/pools/0/solids/0/kind"),
        (
            pool("solids", json!([{ "id": "s", "kind": { "value": "stone", "status": "maker" } }])),
            "/pools/0/solids/0/kind/value",
        ),
        (pool("solids", json!([{ "id": "s", "voids": 40 }])), "/pools/0/solids/0/voids"),
        (pool("levels", json!({ "rim": { "above": "main.water" } })), "/pools/0/levels/rim"),
        (
            pool("levels", json!({ "rim": { "above": "a.rim", "below": "b.rim", "by": "1 cm" } })),
            "/pools/0/levels/rim",
        ),
        (pool("levels", json!({ "rim": { "by": "1 cm" } })), "/pools/0/levels/rim"),
        (outline(json!([[0, 0], [1, 0]])), "/pools/0/outline"),
        (outline(json!([[0, 0], [1, 0, 2], [1, 1]])), "/pools/0/outline/1"),
        (outline(json!({ "rectangle": {} })), "/pools/0/outline"),
        (outline(json!({})), "/pools/0/outline"),
        (
            outline(
                json!({ "circle": { "centre": [0, 0], "radius": 1 }, "rect": { "corner": [0, 0], "size": [1, 1] } }),
            ),
            "/pools/0/outline",
        ),
        (outline(json!({ "circle": { "centre": [0, 0] } })), "/pools/0/outline/circle"),
        (outline(json!({ "join": [[[0, 0], [1, 0], [0, 1]]] })), "/pools/0/outline/join"),
        (
            circuit("runs", json!([{ "id": "r", "fittings": { "elbow-91": 6 } }])),
            "/circuits/0/runs/0/fittings",
        ),
        (
            circuit("runs", json!([{ "id": "r", "fittings": { "union": 1.5 } }])),
            "/circuits/0/runs/0/fittings/union",
        ),
        (
            circuit("runs", json!([{ "id": "r", "loss-coefficients": "1.5" }])),
            "/circuits/0/runs/0/loss-coefficients",
        ),
        (
            circuit("pump", json!({ "curve": { "flow": "m3/h", "head": "m", "points": [[0, "4 m"]] } })),
            "/circuits/0/pump/curve/points/0/1",
        ),
        (circuit("serves", json!("main")), "/circuits/0/serves"),
        (("animals", json!([{ "id": "g", "sexes": "1.3" }])), "/animals/0/sexes"),
        (("animals", json!([{ "id": "G 1" }])), "/animals/0/id"),
        (("animals", json!([{ "id": "g", "eggs-removed": "yes" }])), "/animals/0/eggs-removed"),
        (("electrical", json!({ "items": [{ "id": "l", "at": [1, 2] }] })), "/electrical/items/0/at"),
        (("barriers", json!([{ "id": "b", "line": [[0, 0]] }])), "/barriers/0/line"),
        (("kinds", json!({ "lamps": {} })), "/kinds"),
        (("kinds", json!({ "pipes": { "dn50": { "id": "p" } } })), "/kinds/pipes/dn50"),
        (("hall", json!([])), "/hall"),
        (("edition", json!(1)), "/edition"),
        (("project", json!({ "title": "Pond" })), "/project"),
    ];
    for ((key, value), place) in slips {
        assert_eq!(refused(key, value.clone()), [place], "{value}");
    }
    assert_eq!(places(&json!({ "edition": 0 })), [""]);
}
