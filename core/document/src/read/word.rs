//! Words outside quotes: the three of JSON, and those of other notations.

use super::number::no_number;
use super::reader::{Reader, Stop};
use crate::tree::Kind;

impl Reader<'_> {
    /// Reads `true`, `false`, `null`, or a word known from elsewhere (a slip).
    pub(super) fn word(&mut self) -> Result<Kind, Stop> {
        let start = self.at;
        let rest = &self.text[start..];
        let length = rest.find(|c: char| !(c.is_alphanumeric() || c == '_')).unwrap_or(rest.len());
        let word = &rest[..length];
        let end = start + length;
        let (kind, right) = match word {
            "true" => (Kind::True, ""),
            "false" => (Kind::False, ""),
            "null" => (Kind::Null, ""),
            "True" => (Kind::True, "true"),
            "False" => (Kind::False, "false"),
            "None" => (Kind::Null, "null"),
            "NaN" | "Infinity" => (Kind::Number, ""),
            "" => return Err(self.no_value()),
            _ => return Err(self.stop(start, end, unknown(word))),
        };
        self.at = end;
        if kind == Kind::Number {
            self.slip(start, end, no_number(word))?;
        } else if !right.is_empty() {
            self.slip(start, end, format!("{word} is written {right} in JSON."))?;
        }
        Ok(kind)
    }
}

fn unknown(word: &str) -> String {
    match word.to_ascii_lowercase().as_str() {
        small @ ("true" | "false" | "null") => format!("{word} is written {small} in JSON."),
        _ => format!("{word} stands here without quotes; a text is written \"{word}\"."),
    }
}
