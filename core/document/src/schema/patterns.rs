//! The patterns of the published schema, each as a look at the characters.

/// Whether a text has a form.
pub(super) type Look = fn(&str) -> bool;

/// The forms of strings whose patterns are known here; each is held against the library by a test.
pub(super) const PATTERNS: &[(&str, Look)] = &[
    ("^[a-z][a-z0-9-]*$", is_id),
    ("^([0-9]{1,4}\\.[0-9]{1,4}\\.[0-9]{1,4}|none|to be decided)$", is_sexes),
    ("[0-9½¼¾⅛⅜⅝⅞]", has_digit),
    ("^(note$|x-)", is_beside),
    ("^x-", is_own),
];

fn is_id(text: &str) -> bool {
    let rest = |b: u8| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-';
    text.bytes().next().is_some_and(|b| b.is_ascii_lowercase()) && text.bytes().all(rest)
}

fn is_sexes(text: &str) -> bool {
    let count = |part: &str| (1..=4).contains(&part.len()) && part.bytes().all(|b| b.is_ascii_digit());
    let counts = || text.split('.').count() == 3 && text.split('.').all(count);
    matches!(text, "none" | "to be decided") || counts()
}

fn has_digit(text: &str) -> bool {
    text.chars().any(|c| matches!(c, '0'..='9' | '½' | '¼' | '¾' | '⅛' | '⅜' | '⅝' | '⅞'))
}

fn is_beside(text: &str) -> bool {
    text == "note" || is_own(text)
}

pub(super) fn is_own(text: &str) -> bool {
    text.starts_with("x-")
}

#[cfg(test)]
mod tests {
    use super::PATTERNS;
    use crate::{Limits, Schema, read};

    #[test]
    fn patterns_mean_what_the_library_takes_them_for() {
        let texts = [
            "",
            "a",
            "a-1",
            "A",
            "1a",
            "a b",
            "a\\n",
            "note",
            "notes",
            "x-",
            "x-y",
            "ax-",
            "1.2.3",
            "1.2",
            "1.2.3.4",
            "12345.1.1",
            "none",
            "none ",
            "to be decided",
            "one",
            "½ in",
            "٣",
            "a.b",
            "1.٣.3",
            "-a",
            "é",
        ];
        for (pattern, _) in PATTERNS {
            let schema = serde_json::json!({ "pattern": pattern }).to_string();
            let schema = Schema::compile(&schema).expect("it is a schema");
            for text in texts {
                let tree =
                    read(format!("\"{text}\"").as_bytes(), &Limits::default()).accepted().expect("JSON");
                let quick = schema.surely_fits(&tree);
                assert_eq!(quick, Some(schema.check_in_full(&tree).is_empty()), "{pattern}: {text}");
            }
        }
    }
}
