//! Every key the reading code asks for stands in the schema with its card, and the schema knows no other.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_model::circuit::FITTING_NAMES;
use haulout_model::{ChoiceCard, Described, FieldCard, Form, describe};
use haulout_quantity::Dimension;
use serde_json::Value;

use super::places::{body, form, members, published};

/// Known to the schema alone: the editor's key, what the reader takes itself, and words for people.
const OWN: [&str; 4] = ["$schema", "edition", "kinds", "note"];
/// The one place with a height; all others are in plan.
const IN_SPACE: &str = "/electrical/items/at";

fn compare(body: &Value, described: &[Described], at: &str, faults: &mut Vec<String>) {
    let known = members(body);
    for key in known.keys() {
        let own = if at.is_empty() { OWN.contains(&key.as_str()) } else { key == "note" };
        if !own && described.iter().all(|d| d.key != key) {
            faults.push(format!("{at}/{key}: in the schema, not in the reading code"));
        }
    }
    if body["additionalProperties"] != Value::Bool(false) || body.pointer("/patternProperties/^x-").is_none()
    {
        faults.push(format!("{at}: not strict, or without keys of one's own"));
    }
    if !known.contains_key("note") {
        faults.push(format!("{at}: has no note"));
    }
    for one in described {
        let at = format!("{at}/{}", one.key);
        match known.get(one.key) {
            Some(place) => place_of(place, one, &at, faults),
            None => faults.push(format!("{at}: in the reading code, not in the schema")),
        }
    }
}

fn place_of(place: &Value, one: &Described, at: &str, faults: &mut Vec<String>) {
    let mut expect = |what: &str, right: bool| {
        if !right {
            faults.push(format!("{at}: {what}"));
        }
    };
    expect("title", one.form == "id" || place["title"] == one.what);
    expect(
        "description",
        one.form == "id"
            || place["description"].as_str().is_some_and(|d| d.ends_with('.') || d.ends_with('"')),
    );
    expect("form", shared(one, at).is_none_or(|name| form(place) == name));
    let role = one.role.or(one.choice.map(|c| c.role)).or(one.card.map(|c| c.role));
    expect("role", place["role"].as_str() == role.map(|r| r.name()));
    if let Some(card) = one.card {
        expect("dimension", place["dimension"].as_str() == Some(bare_name(card.dimension).as_str()));
        expect(
            "range",
            range(place, card).is_some_and(|r| near(r.0, card.range.0) && near(r.1, card.range.1)),
        );
        expect("step", step(&place["step"], card).is_some_and(|s| near(s, card.step)));
        let default = (!place["default"].is_null()).then(|| value(&place["default"], card));
        expect(
            "default",
            match (default.flatten(), card.default) {
                (Some(said), Some(taken)) => near(said, taken.value),
                (None, None) => place["default"].is_null(),
                _ => false,
            },
        );
    } else {
        expect("annotation of a number", ["dimension", "range", "step"].iter().all(|k| place[*k].is_null()));
    }
    if let Some(card) = one.choice {
        expect("options", options(place, card));
    }
    if matches!(one.form, "object" | "list") {
        match body(place) {
            Some(inner) => {
                if one.form == "list" {
                    let has_id = one.members.iter().any(|m| m.form == "id");
                    let required = inner["required"].as_array().is_some_and(|r| r.contains(&"id".into()));
                    expect("id required", has_id == required);
                    expect("list", place.pointer("/else/type") == Some(&"array".into()));
                }
                compare(inner, &one.members, at, faults);
            }
            None => expect("members", false),
        }
    }
}

/// The shared shape a form is written as; none for objects and lists.
fn shared(one: &Described, at: &str) -> Option<&'static str> {
    Some(match (one.form, one.card.map(|c| c.form)) {
        ("object" | "list", _) => return None,
        ("number", Some(Form::Quantity)) => "quantity",
        ("number", Some(Form::Band)) => "band",
        ("number", Some(Form::Difference)) => "difference",
        ("number", Some(Form::Slope)) => "slope",
        ("number", Some(Form::Plain)) => "number",
        ("number", Some(Form::Share)) => "share",
        ("number", Some(Form::Count)) => "count",
        ("point", _) if at == IN_SPACE => "point-3d",
        (form, _) => form,
    })
}

fn bare_name(dimension: Dimension) -> String {
    let name = dimension.name();
    name.strip_prefix("an ").or(name.strip_prefix("a ")).unwrap_or(&name).to_owned()
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * b.abs().max(1e-3)
}

/// An annotation as a number in SI: a string in the form of its card, a bare number where the card has no unit.
fn value(said: &Value, card: &FieldCard) -> Option<f64> {
    let text = match (card.form, said) {
        (Form::Plain | Form::Share | Form::Count, Value::Number(number)) => return number.as_f64(),
        (Form::Quantity | Form::Band | Form::Difference | Form::Slope, Value::String(text)) => text,
        _ => return None,
    };
    let read = match card.form {
        Form::Slope => haulout_quantity::read_slope(text),
        Form::Difference => haulout_quantity::read_difference(text),
        _ => haulout_quantity::read(text, card.dimension),
    };
    Some(read.ok()?.parts.value())
}

fn range(place: &Value, card: &FieldCard) -> Option<(f64, f64)> {
    let [low, high] = place["range"].as_array()?.as_slice() else { return None };
    Some((value(low, card)?, value(high, card)?))
}

/// A step is a difference: of a temperature it is written in kelvin.
fn step(said: &Value, card: &FieldCard) -> Option<f64> {
    match said {
        Value::String(text) if card.dimension == Dimension::TEMPERATURE => {
            Some(haulout_quantity::read_difference(text).ok()?.parts.value())
        }
        _ => value(said, card),
    }
}

/// The words of the card and the two for nothing, bare and within a standing.
fn options(place: &Value, card: &ChoiceCard) -> bool {
    let words: Vec<&str> = card.options.iter().copied().chain(["none", "to be decided"]).collect();
    let said = |pointer: &str| place.pointer(pointer).is_some_and(|said| *said == Value::from(words.clone()));
    said("/then/enum")
        && said("/properties/value/enum")
        && place.pointer("/if/type") == Some(&"string".into())
}

fn faults(schema: &Value) -> Vec<String> {
    let mut faults = Vec::new();
    compare(schema, &describe(), "", &mut faults);
    kinds(schema, &mut faults);
    faults
}

/// What may stand in a kind: all that its users read but their id and the kind itself, said in the same words.
fn kinds(schema: &Value, faults: &mut Vec<String>) {
    let users = [
        ("pumps", "/properties/circuits/else/items/properties/pump/else/properties"),
        ("pipes", "/properties/circuits/else/items/properties/runs/else/items/properties"),
    ];
    for (family, pointer) in users {
        let kind = schema.pointer(&format!("/properties/kinds/properties/{family}/additionalProperties"));
        let user = schema.pointer(pointer).and_then(Value::as_object);
        let (Some(kind), Some(user)) = (kind, user) else {
            faults.push(format!("/kinds/{family}: not found"));
            continue;
        };
        let mut user = user.clone();
        user.retain(|key, _| key != "id" && key != "kind");
        if *members(kind) != user || kind["additionalProperties"] != Value::Bool(false) {
            faults.push(format!("/kinds/{family}: differs from what its users read"));
        }
    }
}

#[test]
fn schema_and_reading_code_know_the_same() {
    assert_eq!(faults(&published()), Vec::<String>::new());
}

#[test]
fn the_fittings_are_those_of_the_reading_code() {
    let schema = published();
    let counts =
        schema.pointer("/$defs/counts-value/else").expect("counts are an object or a word for nothing");
    let named: Vec<&str> = members(counts).keys().map(String::as_str).filter(|k| *k != "note").collect();
    assert_eq!(named, FITTING_NAMES);
}

/// Each spoils one annotation; the comparison has to tell which.
#[test]
fn a_wrong_annotation_is_told() {
    let pool = "/properties/pools/else/items/properties";
    let spoilt = [
        (format!("{pool}/depth/title"), Value::from("deepness"), "/pools/depth: title"),
        (format!("{pool}/depth/dimension"), "area".into(), "/pools/depth: dimension"),
        (format!("{pool}/depth/role"), "given".into(), "/pools/depth: role"),
        (format!("{pool}/depth/range/1"), "3.001 m".into(), "/pools/depth: range"),
        (format!("{pool}/depth/step"), "11 mm".into(), "/pools/depth: step"),
        (format!("{pool}/depth/$ref"), "#/$defs/band".into(), "/pools/depth: form"),
        (format!("{pool}/edge/range/0"), "1 in 21".into(), "/pools/edge: range"),
        (format!("{pool}/water/else/properties/swing/range/1"), "9 K".into(), "/pools/water/swing: range"),
        (
            format!("{pool}/solids/else/items/properties/kind/then/enum/0"),
            "stone".into(),
            "/pools/solids/kind: options",
        ),
        (
            format!("{pool}/solids/else/items/properties/kind/properties/value/enum/0"),
            "stone".into(),
            "/pools/solids/kind: options",
        ),
        (
            format!("{pool}/solids/else/items/additionalProperties"),
            true.into(),
            "/pools/solids: not strict, or without keys of one's own",
        ),
        ("/properties/pools/else/items/required".to_owned(), Value::Array(Vec::new()), "/pools: id required"),
    ];
    for (pointer, wrong, told) in spoilt {
        let mut schema = published();
        *schema.pointer_mut(&pointer).unwrap_or_else(|| panic!("{pointer} stands in the schema")) = wrong;
        assert_eq!(faults(&schema), [told], "{pointer}");
    }
}

#[test]
fn a_key_too_many_and_a_key_too_few_are_told() {
    let mut schema = published();
    let pool =
        schema.pointer_mut("/properties/pools/else/items/properties").expect("pools are a list of objects");
    let depth = pool.as_object_mut().and_then(|p| p.remove("depth")).expect("a pool has a depth");
    pool["deepness"] = depth;
    assert_eq!(
        faults(&schema),
        [
            "/pools/deepness: in the schema, not in the reading code",
            "/pools/depth: in the reading code, not in the schema"
        ]
    );
}
