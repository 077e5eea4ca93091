//! Line and column of a byte, looked up in an index of line starts made once a text.

/// A place as a person counts it: both from 1, the column in Unicode scalar values.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Position {
    /// Line, from 1.
    pub line: u32,
    /// Column, from 1.
    pub column: u32,
}

/// The byte at which every line begins. A line ends after `\n`; a lone `\r` is part of its line.
#[derive(Debug, Clone)]
pub struct LineIndex {
    starts: Vec<u32>,
}

impl LineIndex {
    /// Reads the text once.
    pub fn new(text: &str) -> Self {
        let after_breaks = text.bytes().enumerate().filter(|(_, b)| *b == b'\n').map(|(i, _)| i as u32 + 1);
        LineIndex { starts: std::iter::once(0).chain(after_breaks).collect() }
    }

    /// Line and column of `byte`; a byte past the end is taken as the end, one inside a character as its beginning.
    pub fn position(&self, text: &str, byte: u32) -> Position {
        let mut byte = (byte as usize).min(text.len());
        while !text.is_char_boundary(byte) {
            byte -= 1;
        }
        let line = self.starts.partition_point(|s| *s as usize <= byte) - 1;
        let column = text[self.starts[line] as usize..byte].chars().count() as u32 + 1;
        Position { line: line as u32 + 1, column }
    }

    /// First byte of `line` (from 1), if the text has so many lines.
    pub fn start(&self, line: u32) -> Option<u32> {
        self.starts.get((line as usize).checked_sub(1)?).copied()
    }

    /// The text of `line` (from 1) without its line break; empty past the end.
    pub fn line<'t>(&self, text: &'t str, line: u32) -> &'t str {
        let Some(start) = self.start(line) else { return "" };
        let end = self.start(line + 1).map_or(text.len(), |next| next as usize);
        text[start as usize..end].trim_end_matches(['\n', '\r'])
    }

    /// How many lines there are; a text that ends in a line break has an empty last one.
    pub fn lines(&self) -> u32 {
        self.starts.len() as u32
    }
}

#[cfg(test)]
mod tests {
    use super::{LineIndex, Position};

    #[test]
    fn columns_count_characters_and_lines_count_breaks() {
        let text = "{\r\n  \"höhe\": 1\n}";
        let index = LineIndex::new(text);
        let at = |s: &str| index.position(text, text.find(s).expect("it stands in the text above") as u32);
        assert_eq!(at("{"), Position { line: 1, column: 1 });
        assert_eq!(at("he\""), Position { line: 2, column: 6 });
        assert_eq!(at("}"), Position { line: 3, column: 1 });
        assert_eq!(index.line(text, 1), "{");
        assert_eq!(index.line(text, 9), "");
    }

    #[test]
    fn a_byte_inside_a_character_or_past_the_end_does_not_panic() {
        let text = "é";
        let index = LineIndex::new(text);
        assert_eq!(index.position(text, 1), Position { line: 1, column: 1 });
        assert_eq!(index.position(text, 99), Position { line: 1, column: 2 });
    }
}
