//! Strings (RFC 8259 section 7): where they end, and what may not stand in them.

use super::reader::{Reader, Stop, span};
use crate::Problem;
use crate::escape::code_unit;

/// The bytes at which the run through a string has to look: quotes, the backslash, control characters.
const LOOKED_AT: [bool; 256] = {
    let mut table = [false; 256];
    let mut c = 0;
    while c < 0x20 {
        table[c] = true;
        c += 1;
    }
    table[b'"' as usize] = true;
    table[b'\'' as usize] = true;
    table[b'\\' as usize] = true;
    table
};

impl Reader<'_> {
    /// Reads a string in double quotes, or in single ones (a slip).
    pub(super) fn string(&mut self) -> Result<(), Stop> {
        let start = self.at;
        let quote = self.bytes[start];
        let mut control = None;
        self.at += 1;
        self.plain = quote == b'"';
        loop {
            let run = self.bytes[self.at..].iter().position(|c| LOOKED_AT[usize::from(*c)]);
            self.at = run.map_or(self.bytes.len(), |run| self.at + run);
            match self.peek() {
                None => return Err(self.unclosed(start, control)),
                Some(b'\\') => {
                    self.plain = false;
                    self.escape(quote)?;
                }
                Some(c) if c == quote => break,
                Some(c) => {
                    if c < 0x20 && control.is_none() {
                        control = Some(self.at);
                    }
                    self.at += 1;
                }
            }
        }
        self.at += 1;
        if let Some(at) = control {
            self.raw_control(at)?;
        }
        if quote == b'\'' {
            let message = "A text stands in double quotes (\"), not in single ones.";
            self.slip(start, self.at, message)?;
        }
        Ok(())
    }

    fn unclosed(&self, start: usize, control: Option<usize>) -> Stop {
        let line_end = control.filter(|at| matches!(self.bytes[*at], b'\n' | b'\r')).unwrap_or(self.at);
        let message = "The text that begins here is never closed; put the closing quote where it ends.";
        Stop(Problem::new(span(start, line_end), message))
    }

    /// One note a string is enough: a forgotten quote would otherwise bring one a line.
    fn raw_control(&mut self, at: usize) -> Result<(), Stop> {
        let message = match self.bytes[at] {
            b'\n' | b'\r' => {
                "A line ends inside this text: either its closing quote is missing on this line, or the line break is meant and is written \\n.".to_owned()
            }
            b'\t' => "A tab stands inside this text; it is written \\t there.".to_owned(),
            c => format!("The control character U+{c:04X} stands inside this text; it is written \\u{c:04x} there."),
        };
        self.slip(at, at + 1, message)
    }

    fn escape(&mut self, quote: u8) -> Result<(), Stop> {
        let start = self.at;
        match self.bytes.get(start + 1) {
            Some(b'"' | b'\\' | b'/' | b'b' | b'f' | b'n' | b'r' | b't') => self.at += 2,
            Some(b'\'') if quote == b'\'' => self.at += 2,
            Some(b'u') => return self.numbered(),
            _ => return Err(self.unknown_escape()),
        }
        Ok(())
    }

    fn unknown_escape(&self) -> Stop {
        let start = self.at;
        let next = self.text[start + 1..].chars().next();
        let end = start + 1 + next.map_or(0, char::len_utf8);
        let typed = match next {
            Some(c) if !c.is_control() => format!("\\{c}"),
            _ => "\\".to_owned(),
        };
        let message = format!(
            "{typed} means nothing in a text; a backslash itself is written \\\\, and it goes before one of \" \\ / b f n r t u."
        );
        self.stop(start, end, message)
    }

    /// `\u` with its four hexadecimal digits; the halves of a character beyond the first 65 536 come in pairs.
    fn numbered(&mut self) -> Result<(), Stop> {
        let start = self.at;
        let Some(unit) = code_unit(&self.text[start..]) else {
            return Err(self.stop(
                start,
                start + 2,
                "After \\u four hexadecimal digits are expected, as in \\u00b0.",
            ));
        };
        let second = code_unit(&self.text[start + 6..]);
        let pair = matches!(unit, 0xd800..=0xdbff) && matches!(second, Some(0xdc00..=0xdfff));
        self.at += if pair { 12 } else { 6 };
        if !pair && matches!(unit, 0xd800..=0xdfff) {
            let message = format!(
                "{} is half of a character and its other half is not beside it; type the character itself.",
                &self.text[start..start + 6]
            );
            self.slip(start, start + 6, message)?;
        }
        Ok(())
    }
}
