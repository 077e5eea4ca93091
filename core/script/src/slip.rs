//! What the reader of JSON says of a card, in the words of the trade and at the words it speaks of.

use crate::fault::{ScriptFault, nearest};
use crate::head::Head;

/// The fault behind an error of reading.
pub(crate) fn slip(head: &Head<'_>, error: &serde_json::Error) -> ScriptFault {
    let told = error.to_string();
    // The library counts lines from the comment on; the span says it better.
    let told = told.split(" at line ").next().unwrap_or(&told);
    let at = head.place_at(error.line(), error.column());
    let quoted: Vec<&str> = told.split('`').skip(1).step_by(2).collect();
    let Some((word, known)) = quoted.split_first() else {
        let hint = if error.is_eof() { " (\"*/\" ends the card, also inside a string)" } else { "" };
        return ScriptFault::new(at, format!("the card cannot be read: {told}{hint}"));
    };
    if told.starts_with("missing field") {
        return ScriptFault::new(at, format!("the card lacks \"{word}\" here"));
    }
    let there = head.last_before(word, error.line(), error.column()).unwrap_or(at);
    if told.starts_with("unknown field") {
        let near = nearest(word, known.iter().copied());
        return ScriptFault::new(there, format!("the card has no place for \"{word}\" here{near}"));
    }
    if told.starts_with("unknown variant") {
        let message = format!("\"{word}\" is not among the words that may stand here: {}", known.join(", "));
        return ScriptFault::new(there, message);
    }
    if told.starts_with("duplicate field") {
        return ScriptFault::new(there, format!("\"{word}\" stands in the card twice"));
    }
    ScriptFault::new(at, format!("the card cannot be read: {told}"))
}
