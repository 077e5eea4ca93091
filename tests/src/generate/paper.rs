//! Printing a design about as densely as people type one: short values on one line, long ones a line a member.

use serde_json::Value;

const WIDTH: usize = 110;

/// The text of a design.
pub(super) fn print(value: &Value) -> String {
    let mut text = String::new();
    write(value, 0, &mut text);
    text.push('\n');
    text
}

fn write(value: &Value, indent: usize, text: &mut String) {
    let dense = dense(value);
    if indent > 0 && dense.len() + indent <= WIDTH {
        text.push_str(&dense);
        return;
    }
    let (open, close, parts): (char, char, Vec<(Option<&String>, &Value)>) = match value {
        Value::Object(members) => ('{', '}', members.iter().map(|(k, v)| (Some(k), v)).collect()),
        Value::Array(items) => ('[', ']', items.iter().map(|v| (None, v)).collect()),
        _ => return text.push_str(&dense),
    };
    text.push(open);
    for (at, (key, part)) in parts.into_iter().enumerate() {
        text.push_str(if at == 0 { "\n" } else { ",\n" });
        text.extend(std::iter::repeat_n(' ', indent + 2));
        if let Some(key) = key {
            text.push_str(&format!("{}: ", Value::from(key.as_str())));
        }
        write(part, indent + 2, text);
    }
    text.push('\n');
    text.extend(std::iter::repeat_n(' ', indent));
    text.push(close);
}

fn dense(value: &Value) -> String {
    match value {
        Value::Object(members) => {
            let parts: Vec<String> =
                members.iter().map(|(k, v)| format!("{}: {}", Value::from(k.as_str()), dense(v))).collect();
            format!("{{ {} }}", parts.join(", "))
        }
        Value::Array(items) => format!("[{}]", items.iter().map(dense).collect::<Vec<_>>().join(", ")),
        other => other.to_string(),
    }
}
