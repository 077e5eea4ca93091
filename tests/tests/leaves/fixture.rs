//! A design that states every leaf the reading code knows, made from its description.

use haulout_model::{Described, FieldCard, Form};
use haulout_quantity::{Dimension, System};
use serde_json::{Map, Value, json};

/// What the names under a key lead to, where the list has another name than the key or its plural.
const LEADS: &[(&str, &str)] = &[
    ("groups", "animals"),
    ("group", "animals"),
    ("serves", "pools"),
    ("from", "pools"),
    ("to", "filters"),
    ("into", "pools"),
    ("after", "runs"),
    ("partner", "intakes"),
    ("collected-by", "intakes"),
    ("pre-treatment", "filters"),
    ("welfare", "eu-2010-63"),
    ("electrical", "iec-702"),
    ("guards", "uk-ad-k"),
];

/// The design as text.
pub(super) fn full() -> String {
    let mut members = object(&haulout_model::describe());
    members.insert("edition".to_owned(), json!(0));
    let mut design = Value::Object(members);
    // The one kind of place with a height; all others are in plan.
    design["electrical"]["items"][0]["at"] = json!([1, 1, 1]);
    design.to_string()
}

fn object(described: &[Described]) -> Map<String, Value> {
    let stated = described.iter().filter(|d| !matches!(d.form, "kind" | "repeat"));
    stated.map(|d| (d.key.to_owned(), value(d))).collect()
}

fn value(one: &Described) -> Value {
    match one.form {
        "object" => Value::Object(object(&one.members)),
        "list" => {
            let mut item = object(&one.members);
            if item.contains_key("id") {
                item.insert("id".to_owned(), json!(format!("{}-1", one.key)));
            }
            json!([item])
        }
        "choice" => json!(one.choice.and_then(|c| c.options.first())),
        "flag" => json!(true),
        "text" => json!(if one.key == "species" { "emys-orbicularis" } else { "words" }),
        "reference" => json!(name(one.key)),
        "references" => json!([name(one.key)]),
        "shape" => json!({ "rect": { "corner": [1, 1], "size": [4, 3] } }),
        "track" => json!([[1, 1], [4, 1]]),
        "level" => json!("+0.5 m"),
        "curve" => json!({ "flow": "m3/h", "head": "m", "points": [[0, 4], [2, 3.5], [4, 2.5], [6, 1]] }),
        "point" => json!([1, 1]),
        "sexes" => json!("1.2.1"),
        "counts" => json!({ "elbow-90": 2 }),
        _ => one.card.map_or(Value::Null, number),
    }
}

fn name(key: &str) -> String {
    let lists = LEADS.iter().find(|(k, _)| *k == key).map(|(_, list)| *list);
    let list = lists.map_or_else(|| format!("{}s", key.trim_end_matches('s')), str::to_owned);
    if list.contains("-") { list } else { format!("{list}-1") }
}

/// A number in the middle of what is plausible, as its form is written.
fn number(card: &'static FieldCard) -> Value {
    let (low, high) = card.range;
    let middle = if low > 0.0 { low + 0.2 * (high - low) } else { 0.1 * high };
    let unit = match (card.dimension, card.what) {
        (Dimension::NUMBER, what) if what.contains("turbidity") => "NTU",
        (Dimension::NUMBER, _) => "rad",
        (dimension, _) => haulout_quantity::unit_for(dimension, System::Metric).symbol,
    };
    match card.form {
        Form::Quantity | Form::Band if card.dimension == Dimension::TEMPERATURE => {
            json!(format!("{} K", low + 0.6 * (high - low)))
        }
        Form::Quantity | Form::Band => {
            let factor = haulout_quantity::unit(unit).map_or(1.0, |u| u.factor);
            json!(format!("{} {unit}", middle / factor))
        }
        Form::Difference => json!("1 K"),
        Form::Slope => json!("1 in 3"),
        Form::Plain => json!(middle),
        Form::Share => json!(0.5),
        Form::Count => json!(2),
    }
}
