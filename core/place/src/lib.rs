//! Where something stands in a text: a JSON Pointer, a span of bytes, a line and a column.
//!
//! Nothing here knows what a design is. Results hold pointers and nodes; spans are looked up when text is printed.

mod index;
mod pointer;

pub use index::{LineIndex, Position};
pub use pointer::Pointer;

/// A stretch of bytes in a text: `start` inclusive, `end` exclusive, both counted from 0.
///
/// 32 bits are enough because the reader refuses files over its size limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Span {
    /// First byte.
    pub start: u32,
    /// First byte that no longer belongs to it.
    pub end: u32,
}

impl Span {
    /// A span from two byte offsets.
    pub const fn new(start: u32, end: u32) -> Self {
        Span { start, end }
    }

    /// The text the span covers; empty when it does not lie on character borders of `text`.
    pub fn of(self, text: &str) -> &str {
        text.get(self.start as usize..self.end as usize).unwrap_or("")
    }

    /// Whether `other` lies wholly inside.
    pub const fn holds(self, other: Span) -> bool {
        self.start <= other.start && other.end <= self.end
    }
}
