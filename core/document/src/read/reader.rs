//! The reader itself: one pass over the text with a stack of the objects and arrays that are open.

use std::sync::Arc;

use haulout_place::Span;

use super::keys::Seen;
use super::{Limits, Reading};
use crate::Problem;
use crate::tree::{Kind, NONE, Node, Record, Tree};

/// The problem that ends the reading of a text.
pub(super) struct Stop(pub(super) Problem);

/// An object or array whose end has not been read yet.
pub(super) struct Open {
    pub(super) node: u32,
    pub(super) seen: Seen,
}

/// What may stand next.
#[derive(Clone, Copy)]
enum Next {
    /// A value: the root, one after a colon, or an element.
    Value,
    /// After an opening bracket.
    First,
    /// After a value: a comma or the end of what is open.
    Comma,
    /// After a comma: a member or an element.
    Another,
}

pub(super) struct Reader<'t> {
    pub(super) text: &'t str,
    pub(super) bytes: &'t [u8],
    pub(super) at: usize,
    pub(super) nodes: Vec<Record>,
    pub(super) open: Vec<Open>,
    pub(super) problems: Vec<Problem>,
    limits: Limits,
    /// Key of the value that comes next, and whether it is a plain one.
    key: Option<(Span, bool)>,
    /// Whether the string read last stands in double quotes without an escape.
    pub(super) plain: bool,
}

pub(super) fn read(text: &Arc<str>, limits: &Limits) -> Reading {
    let mut reader = Reader {
        text,
        bytes: text.as_bytes(),
        at: 0,
        nodes: Vec::with_capacity(text.len() / 16 + 1),
        open: Vec::new(),
        problems: Vec::new(),
        limits: *limits,
        key: None,
        plain: false,
    };
    let outcome = reader.document();
    let mut problems = reader.problems;
    let tree = match outcome {
        Ok(()) => Some(Tree::new(Arc::clone(text), reader.nodes)),
        Err(Stop(last)) => {
            problems.push(last);
            None
        }
    };
    problems.sort_by_key(|p| p.span);
    Reading { tree, problems }
}

impl Reader<'_> {
    fn document(&mut self) -> Result<(), Stop> {
        self.byte_order_mark()?;
        self.blank()?;
        if self.at == self.bytes.len() {
            return Err(self.stop(
                0,
                self.at,
                "There is nothing in this file; a JSON value is expected, such as { }.",
            ));
        }
        let mut next = Next::Value;
        loop {
            next = match next {
                Next::Value => self.value()?,
                Next::First => self.first()?,
                Next::Comma => match self.comma()? {
                    Some(next) => next,
                    None => return Ok(()),
                },
                Next::Another => self.another()?,
            };
        }
    }

    fn byte_order_mark(&mut self) -> Result<(), Stop> {
        if self.text.starts_with('\u{feff}') {
            self.at = 3;
            let message = "The file begins with a byte-order mark (bytes EF BB BF), which JSON does not allow; \
                           please save it as UTF-8 without one.";
            self.note(Problem::new(Span::new(0, 3), message))?;
        }
        Ok(())
    }

    /// Notes a slip; reading goes on until there are too many of them.
    pub(super) fn note(&mut self, problem: Problem) -> Result<(), Stop> {
        if self.problems.len() + 1 < self.limits.problems {
            self.problems.push(problem);
            return Ok(());
        }
        let message =
            format!("{} Reading stops here, after {} problems.", problem.message, self.limits.problems);
        Err(Stop(Problem { message, ..problem }))
    }

    pub(super) fn slip(&mut self, start: usize, end: usize, message: impl Into<String>) -> Result<(), Stop> {
        self.note(Problem::new(span(start, end), message))
    }

    pub(super) fn stop(&self, start: usize, end: usize, message: impl Into<String>) -> Stop {
        Stop(Problem::new(span(start, end), message))
    }

    pub(super) fn peek(&self) -> Option<u8> {
        self.bytes.get(self.at).copied()
    }

    fn inside(&self) -> Option<(Node, Kind)> {
        let node = Node(self.open.last()?.node);
        Some((node, self.nodes[node.0 as usize].kind))
    }

    /// Reads one value, or the opening bracket of one.
    fn value(&mut self) -> Result<Next, Stop> {
        let start = self.at;
        let kind = match self.peek() {
            Some(b'{') => return self.enter(Kind::Object),
            Some(b'[') => return self.enter(Kind::Array),
            Some(b'"' | b'\'') => self.string().map(|()| Kind::String)?,
            Some(b'0'..=b'9' | b'-' | b'+' | b'.') => self.number().map(|()| Kind::Number)?,
            Some(c) if c.is_ascii_alphabetic() || c == b'_' || c >= 0x80 => self.word()?,
            _ => return Err(self.no_value()),
        };
        let after = self.nodes.len() as u32 + 1;
        self.push(start, kind, after);
        Ok(Next::Comma)
    }

    fn push(&mut self, start: usize, kind: Kind, after: u32) {
        let parent = self.open.last().map_or(NONE, |open| open.node);
        let mut position = 0;
        let (key, plain_key) = self.key.take().map_or((None, false), |(key, plain)| (Some(key), plain));
        if let Some(whole) = self.nodes.get_mut(parent as usize) {
            position = whole.count;
            whole.count += 1;
        }
        self.nodes.push(Record {
            span: span(start, self.at),
            key: key.unwrap_or(Span::new(position, 0)),
            parent,
            after,
            count: 0,
            kind,
            plain: kind == Kind::String && self.plain,
            plain_key,
        });
    }

    fn enter(&mut self, kind: Kind) -> Result<Next, Stop> {
        let start = self.at;
        self.at += 1;
        if self.open.len() >= self.limits.depth {
            let message = format!(
                "Objects and arrays are nested more than {} deep here, which is the limit; nothing below is read.",
                self.limits.depth
            );
            return Err(self.stop(start, self.at, message));
        }
        let node = self.nodes.len() as u32;
        self.push(start, kind, 0);
        self.open.push(Open { node, seen: Seen::default() });
        Ok(Next::First)
    }

    fn leave(&mut self) {
        self.at += 1;
        let after = self.nodes.len() as u32;
        if let Some(open) = self.open.pop() {
            let record = &mut self.nodes[open.node as usize];
            record.span.end = self.at as u32;
            record.after = after;
        }
    }

    fn closes(&self) -> bool {
        match self.inside() {
            Some((_, Kind::Object)) => self.peek() == Some(b'}'),
            Some(_) => self.peek() == Some(b']'),
            None => false,
        }
    }

    fn first(&mut self) -> Result<Next, Stop> {
        self.blank()?;
        if self.closes() {
            self.leave();
            return Ok(Next::Comma);
        }
        self.member_or_element()
    }

    fn another(&mut self) -> Result<Next, Stop> {
        self.blank()?;
        self.member_or_element()
    }

    fn member_or_element(&mut self) -> Result<Next, Stop> {
        if matches!(self.inside(), Some((_, Kind::Object))) {
            self.key_and_colon()?;
        }
        Ok(Next::Value)
    }

    fn key_and_colon(&mut self) -> Result<(), Stop> {
        let (key, plain) = (self.member_key()?, self.plain);
        self.blank()?;
        if self.peek() != Some(b':') {
            return Err(self.no_colon(key));
        }
        self.at += 1;
        self.blank()?;
        self.unrepeated(key, plain)?;
        self.key = Some((key, plain));
        Ok(())
    }

    fn member_key(&mut self) -> Result<Span, Stop> {
        let start = self.at;
        match self.peek() {
            Some(b'"' | b'\'') => self.string()?,
            Some(c) if c.is_ascii_alphanumeric() || matches!(c, b'_' | b'$') || c >= 0x80 => {
                self.plain = false;
                self.bare_key()?
            }
            _ => return Err(self.no_key()),
        }
        Ok(span(start, self.at))
    }

    /// A comma and what follows it, the end of what is open, or `None` at the end of the text.
    fn comma(&mut self) -> Result<Option<Next>, Stop> {
        let value_end = self.at;
        self.blank()?;
        if self.open.is_empty() {
            return match self.peek() {
                None => Ok(None),
                Some(_) => Err(self.goes_on()),
            };
        }
        if self.closes() {
            self.leave();
            return Ok(Some(Next::Comma));
        }
        if self.peek() == Some(b',') {
            return self.after_comma().map(Some);
        }
        self.missing_comma(value_end)?;
        Ok(Some(Next::Another))
    }

    fn after_comma(&mut self) -> Result<Next, Stop> {
        let comma = self.at;
        self.at += 1;
        self.blank()?;
        if !self.closes() {
            return Ok(Next::Another);
        }
        self.slip(
            comma,
            comma + 1,
            "A comma stands after the last entry; JSON has commas between entries only, so take it out.",
        )?;
        self.leave();
        Ok(Next::Comma)
    }

    fn missing_comma(&mut self, value_end: usize) -> Result<(), Stop> {
        let starts = match self.peek() {
            Some(b'"' | b'\'' | b'-' | b'+' | b'.' | b'{' | b'[' | b'_' | b'$') => true,
            Some(c) => c.is_ascii_alphanumeric() || c >= 0x80,
            None => false,
        };
        if !starts {
            return Err(self.no_comma());
        }
        let message = "A comma is missing between this entry and the next one.";
        self.slip(value_end.saturating_sub(1), value_end, message)
    }
}

/// Offsets fit 32 bits because longer texts are refused before reading begins.
pub(super) fn span(start: usize, end: usize) -> Span {
    Span::new(start as u32, end as u32)
}
