//! The head of a script: the JSON card in its leading block comment, cut off without running anything.

use haulout_place::Span;

use crate::fault::ScriptFault;

/// The longest script that is read, in bytes. Positions in Rhai count lines in 16 bits; no text this long can have
/// more lines than that.
const LONGEST: usize = 60_000;

/// A script in its two parts.
pub(crate) struct Head<'t> {
    /// The card as JSON.
    pub(crate) json: &'t str,
    /// The byte at which the card begins.
    pub(crate) start: usize,
    /// The whole text with its head blanked out, so that places in the body stay what they are.
    pub(crate) body: String,
}

impl<'t> Head<'t> {
    /// Cuts a text.
    pub(crate) fn of(text: &'t str) -> Result<Self, ScriptFault> {
        let whole = first(text);
        if text.len() > LONGEST {
            let message = format!(
                "the script has {} bytes and at most {LONGEST} are read: divide the rule",
                text.len()
            );
            return Err(ScriptFault::new(whole, message));
        }
        let open = text.len() - text.trim_start().len();
        if !text[open..].starts_with("/*") {
            let message =
                "a script begins with its card, a JSON object in a block comment: \"/* { \"id\": … } */\"";
            return Err(ScriptFault::new(whole, message));
        }
        let start = open + 2;
        let Some(length) = text[start..].find("*/") else {
            let span = Span::new(open as u32, start as u32);
            return Err(ScriptFault::new(
                span,
                "the block comment with the card is not closed: write \"*/\" behind it",
            ));
        };
        let end = start + length + 2;
        let blank = text[..end].chars().map(|c| if c == '\n' { '\n' } else { ' ' });
        let body = blank.chain(text[end..].chars()).collect();
        Ok(Head { json: &text[start..start + length], start, body })
    }

    /// The span of the last of some quoted words that follow one another in the card: `limits`, `spare` finds the
    /// first `"spare"` after `"limits"`. What does not stand there leaves the place at the word before it.
    pub(crate) fn place(&self, words: &[&str]) -> Span {
        let mut from = 0;
        let mut span = Span::new(self.start as u32, self.start as u32 + 1);
        for word in words {
            // Writing a string as JSON cannot fail.
            let quoted = serde_json::to_string(word).unwrap_or_default();
            let Some(at) = self.json[from..].find(&quoted) else { break };
            let start = self.start + from + at;
            span = Span::new(start as u32, (start + quoted.len()) as u32);
            from += at + quoted.len();
        }
        span
    }

    /// The span of the last of some quoted words up to a line and column as `serde_json` counts them.
    pub(crate) fn last_before(&self, word: &str, line: usize, column: usize) -> Option<Span> {
        // Writing a string as JSON cannot fail.
        let quoted = serde_json::to_string(word).unwrap_or_default();
        let end = self.place_at(line, column).end as usize - self.start;
        let start = self.start + self.json[..end].rfind(&quoted)?;
        Some(Span::new(start as u32, (start + quoted.len()) as u32))
    }

    /// The place of a line and column as `serde_json` counts them: both from 1, columns in bytes.
    pub(crate) fn place_at(&self, line: usize, column: usize) -> Span {
        let before: usize = self.json.split_inclusive('\n').take(line.saturating_sub(1)).map(str::len).sum();
        let mut at = (before + column.saturating_sub(1)).min(self.json.len());
        while !self.json.is_char_boundary(at) {
            at -= 1;
        }
        let length = self.json[at..].chars().next().map_or(0, char::len_utf8);
        Span::new((self.start + at) as u32, (self.start + at + length) as u32)
    }
}

/// The first character of a text.
pub(crate) fn first(text: &str) -> Span {
    Span::new(0, text.chars().next().map_or(0, char::len_utf8) as u32)
}

/// Signs that stand together as one.
const SIGNS: &str = "?*<>=!&|+-/%";

/// The span of a place in the body by line and column, both from 1, columns in characters. Without a line, the end
/// of the text.
pub(crate) fn span_at(text: &str, line: Option<usize>, column: Option<usize>) -> Span {
    let Some(line) = line else {
        let end = text.trim_end().len();
        let last = text[..end].chars().next_back().map_or(0, char::len_utf8);
        return Span::new((end - last) as u32, end as u32);
    };
    let before: usize = text.split_inclusive('\n').take(line - 1).map(str::len).sum();
    let ahead = column.unwrap_or(1).saturating_sub(1);
    let inside: usize = text[before..].chars().take(ahead).map(char::len_utf8).sum();
    span_from(text, before + inside)
}

/// The span of what begins at a byte of the text: a name and a sign of several characters are taken whole.
fn span_from(text: &str, start: usize) -> Span {
    let rest = &text[start..];
    let run = |belongs: &dyn Fn(char) -> bool| rest.find(|c| !belongs(c)).unwrap_or(rest.len());
    let name = run(&|c| c.is_alphanumeric() || c == '_').max(run(&|c| SIGNS.contains(c)));
    let length = if name > 0 { name } else { rest.chars().next().map_or(0, char::len_utf8) };
    Span::new(start as u32, (start + length) as u32)
}

/// The span in the text of what begins at a byte of its body: both have the same number of characters before it.
pub(crate) fn span_in(text: &str, body: &str, at: usize) -> Span {
    let characters = body[..at].chars().count();
    span_from(text, text.chars().take(characters).map(char::len_utf8).sum())
}
