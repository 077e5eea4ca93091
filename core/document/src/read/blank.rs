//! What stands between the parts of a text: white space, comments (a slip), and what should not be there at all.

use haulout_place::Span;

use super::reader::{Reader, Stop, span};
use crate::Problem;

impl Reader<'_> {
    /// Skips white space (RFC 8259 section 2) and notes comments.
    pub(super) fn blank(&mut self) -> Result<(), Stop> {
        loop {
            match self.peek() {
                Some(b' ' | b'\t' | b'\n' | b'\r') => self.at += 1,
                Some(b'/') => self.comment()?,
                _ => return Ok(()),
            }
        }
    }

    fn comment(&mut self) -> Result<(), Stop> {
        let start = self.at;
        let rest = &self.text[start..];
        let length = if rest.starts_with("//") {
            rest.find('\n').unwrap_or(rest.len())
        } else if let Some(inside) = rest.strip_prefix("/*") {
            let end = inside.find("*/");
            end.ok_or_else(|| {
                self.stop(start, start + 2, "This comment is never closed; and JSON has no comments.")
            })? + 4
        } else {
            return Err(self.stop(
                start,
                start + 1,
                "A \"/\" has no meaning here; in a text it stands between double quotes.",
            ));
        };
        self.at = start + length;
        let message = "JSON has no comments; take this one out, or keep it as a text under a key of its own.";
        self.slip(start, start + length, message)
    }

    /// The character that stands here, for a message; empty at the end of the text.
    fn here(&self) -> (Span, String) {
        match self.text.get(self.at..).and_then(|rest| rest.chars().next()) {
            Some(c) => (span(self.at, self.at + c.len_utf8()), shown(c)),
            None => (span(self.at, self.at), String::new()),
        }
    }

    /// One message for something unfit, another (with the opening bracket) for the end of the text.
    fn unfit(&self, expected: &str) -> Stop {
        let (place, found) = self.here();
        if !found.is_empty() {
            return Stop(Problem::new(place, format!("{found} stands here, where {expected}.")));
        }
        let mut problem = Problem::new(place, format!("The file ends here, where {expected}."));
        if let Some(open) = self.open.last() {
            let start = self.nodes[open.node as usize].span.start;
            problem = problem.with(Span::new(start, start + 1), "this is still open");
        }
        Stop(problem)
    }

    pub(super) fn no_value(&self) -> Stop {
        self.unfit(
            "a value is expected (a text in double quotes, a number, true, false, null, a list or an object)",
        )
    }

    pub(super) fn no_key(&self) -> Stop {
        self.unfit("the key of a member is expected, in double quotes")
    }

    pub(super) fn no_colon(&self, key: Span) -> Stop {
        self.unfit(&format!("a colon is expected after the key {}", key.of(self.text)))
    }

    pub(super) fn no_comma(&self) -> Stop {
        let last = self.open.last().map(|open| self.nodes[open.node as usize]);
        let (what, bracket) = match last.map(|record| bracket(record.span).of(self.text)) {
            Some("{") => ("object", "}"),
            _ => ("list", "]"),
        };
        let Stop(mut problem) =
            self.unfit(&format!("a comma or the end of the {what}, {bracket}, is expected"));
        if let (Some(record), true) = (last, problem.also.is_empty()) {
            let start = record.span.start;
            problem = problem.with(Span::new(start, start + 1), format!("the {what} begins here"));
        }
        Stop(problem)
    }

    pub(super) fn goes_on(&self) -> Stop {
        let (place, found) = self.here();
        let message =
            format!("The JSON value is complete, but {found} follows it; a file holds one value only.");
        Stop(Problem::new(place, message))
    }
}

/// The opening bracket of a container whose end is not known yet.
fn bracket(place: Span) -> Span {
    Span::new(place.start, place.start + 1)
}

/// A character in quotes, an invisible one by its number.
pub(super) fn shown(c: char) -> String {
    if c.is_control() || c == '\u{feff}' || (c.is_whitespace() && c != ' ') {
        format!("The character U+{:04X}", c as u32)
    } else {
        format!("\"{c}\"")
    }
}
