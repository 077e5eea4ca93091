//! The text of a design as miette's protocol wants it: lines looked up in the index the tree has already.

use std::borrow::Cow;

use haulout_document::Tree;
use haulout_place::{LineIndex, Position};
use miette::{MietteError, MietteSpanContents, SourceCode, SourceSpan, SpanContents};

/// More bytes of one line than this are never looked at.
const WIDEST: usize = 480;

/// A text with its line index.
pub(crate) struct Text<'t> {
    text: &'t str,
    lines: Cow<'t, LineIndex>,
}

impl<'t> Text<'t> {
    /// The text of a tree.
    pub(crate) fn of(tree: &'t Tree) -> Self {
        Text { text: tree.text(), lines: Cow::Borrowed(tree.lines()) }
    }

    /// A text that could not be read to its end.
    pub(crate) fn unread(text: &'t str) -> Self {
        Text { text, lines: Cow::Owned(LineIndex::new(text)) }
    }

    /// Line and column of a byte.
    pub(crate) fn position(&self, byte: u32) -> Position {
        self.lines.position(self.text, byte)
    }
}

/// The text of a document, as far as it was read.
#[derive(Debug, Clone, Copy)]
pub enum Written<'t> {
    /// Read to its end.
    Read(&'t Tree),
    /// Not read to its end: the part that is text.
    Part(&'t str),
}

impl<'t> Written<'t> {
    pub(crate) fn source(self) -> Text<'t> {
        match self {
            Written::Read(tree) => Text::of(tree),
            Written::Part(text) => Text::unread(text),
        }
    }
}

impl SourceCode for Text<'_> {
    fn read_span<'a>(
        &'a self,
        span: &SourceSpan,
        _before: usize,
        _after: usize,
    ) -> Result<Box<dyn SpanContents<'a> + 'a>, MietteError> {
        if span.offset() > self.text.len() {
            return Err(MietteError::OutOfBounds);
        }
        let position = self.lines.position(self.text, span.offset() as u32);
        let line = self.lines.line(self.text, position.line);
        let start = self.lines.start(position.line).unwrap_or(0) as usize;
        let (from, shown) = window(line, span.offset() - start);
        let whole = SourceSpan::from((start + from, shown.len()));
        let contents = MietteSpanContents::new(
            shown.as_bytes(),
            whole,
            position.line as usize - 1,
            0,
            self.lines.lines() as usize,
        );
        Ok(Box::new(contents))
    }
}

/// The part of a line that is shown: all of it, or a window about a byte.
fn window(line: &str, at: usize) -> (usize, &str) {
    if line.len() <= WIDEST {
        return (0, line);
    }
    let mut from = at.saturating_sub(WIDEST / 4).min(line.len());
    while !line.is_char_boundary(from) {
        from -= 1;
    }
    let mut to = (from + WIDEST).min(line.len());
    while !line.is_char_boundary(to) {
        to -= 1;
    }
    (from, &line[from..to])
}

/// What is left of a line in `room` characters: all of it without its indentation, or a stretch that holds the bytes from
/// `at` to `end`, or at least their beginning; an ellipsis stands where something is cut off.
pub(crate) fn excerpt(line: &str, at: usize, end: usize, room: usize) -> String {
    let bare = line.trim();
    if bare.chars().count() <= room {
        return bare.to_owned();
    }
    let before = |byte: usize| line.char_indices().take_while(|(i, _)| *i < byte).count();
    let indent = line.chars().take_while(|c| c.is_whitespace()).count();
    let characters: Vec<char> = line.trim_end().chars().collect();
    let (first, last) = (before(at), before(end).min(characters.len()));
    // The key in front of a value tells more than what follows it.
    let wanted = (last + 1).saturating_sub(room).min(first.saturating_sub(2)).max(indent);
    let from = if last < indent + room { indent } else { wanted };
    let to = (from + room).min(characters.len());
    let mut shown: Vec<char> = characters[from.min(to)..to].to_vec();
    if from > indent && !shown.is_empty() {
        shown[0] = '…';
    }
    if let (true, Some(end)) = (to < characters.len(), shown.last_mut()) {
        *end = '…';
    }
    shown.into_iter().collect()
}

#[cfg(test)]
mod tests {
    use haulout_document::{Limits, read};
    use miette::SourceCode;

    use super::{Text, excerpt};

    #[test]
    fn a_line_is_cut_so_that_the_value_stays_in_sight() {
        let line = "  { \"id\": \"main\", \"space\": \"island-room\", \"depth\": \"0.12 m\" }";
        let at = line.find("\"0.12 m\"").expect("it stands in the line above");
        assert_eq!(excerpt(line, at, at + 8, 30), "…and-room\", \"depth\": \"0.12 m\"…");
        assert_eq!(excerpt(line, 2, 3, 20), "{ \"id\": \"main\", \"sp…");
        assert_eq!(excerpt("  \"low\": 1", 9, 10, 30), "\"low\": 1");
    }

    #[test]
    fn a_line_of_megabytes_is_looked_at_through_a_window() {
        let text = format!("{{\n\"a\": \"{}\", \"ö\": 1 }}", "é".repeat(200_000));
        let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("it is sound");
        let at = text.find("\"ö\"").expect("it stands in the text above");
        let source = Text::of(&tree);
        let contents = source.read_span(&(at, 4).into(), 0, 0).expect("it lies in the text");
        assert_eq!(contents.line(), 1);
        assert!(contents.data().len() <= 480);
        assert!(String::from_utf8_lossy(contents.data()).contains("\"ö\": 1 }"));
    }
}
