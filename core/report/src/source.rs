//! The text of a design as miette's protocol wants it: lines looked up in the index the tree has already.

use std::borrow::Cow;

use haulout_document::Tree;
use haulout_place::{LineIndex, Position};
use miette::{MietteError, MietteSpanContents, SourceCode, SourceSpan, SpanContents};

/// More characters of one line than this are never shown.
const WIDEST: usize = 160;

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
        let contents =
            MietteSpanContents::new(shown.as_bytes(), whole, position.line as usize - 1, 0, self.lines.lines() as usize);
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
