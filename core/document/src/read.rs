//! Strict reading: bytes to a tree, and every slip on the way noted.

mod blank;
mod keys;
mod number;
mod reader;
mod string;
mod word;

use std::sync::Arc;

use haulout_place::Span;

use crate::{Problem, Tree};

/// How much of a text is read before it is refused.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Limits {
    /// Objects and arrays inside one another.
    pub depth: usize,
    /// Bytes of the text. Spans hold 32 bits, so nothing over 4 GiB is read whatever stands here.
    pub bytes: usize,
    /// Slips noted before reading stops.
    pub problems: usize,
}

impl Default for Limits {
    fn default() -> Self {
        Limits { depth: 64, bytes: 32 << 20, problems: 500 }
    }
}

/// What came of reading a text.
#[derive(Debug, Clone)]
pub struct Reading {
    /// The tree, if the text was read to its end; with problems it is there to look for more of them only.
    pub tree: Option<Tree>,
    /// Everything that keeps the text from being accepted, in the order of the text.
    pub problems: Vec<Problem>,
}

impl Reading {
    /// The tree of a text without a problem.
    ///
    /// # Errors
    /// The problems, where there is one.
    pub fn accepted(self) -> Result<Tree, Vec<Problem>> {
        match self.tree {
            Some(tree) if self.problems.is_empty() => Ok(tree),
            _ => Err(self.problems),
        }
    }

    fn stopped(problem: Problem) -> Self {
        Reading { tree: None, problems: vec![problem] }
    }
}

/// Reads one JSON text by RFC 8259, more strictly than it asks: a key stands once in its object, numbers fit f64,
/// surrogates come in pairs, there is no byte-order mark, depth and size stay under `limits`.
///
/// Well-known slips (a trailing comma, a comment, single quotes and the like) are noted and reading goes on; anything
/// else stops it. Any problem means that the text is not accepted. Time grows with the length of the text.
pub fn read(bytes: &[u8], limits: &Limits) -> Reading {
    let most = limits.bytes.min(u32::MAX as usize - 1);
    if bytes.len() > most {
        return Reading::stopped(too_long(bytes.len(), most));
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => reader::read(&Arc::from(text), limits),
        Err(error) => Reading::stopped(not_utf8(bytes, error.valid_up_to())),
    }
}

fn too_long(length: usize, most: usize) -> Problem {
    let message = format!(
        "This file has {length} bytes and at most {most} are read. Divide it, or look for what has swollen it."
    );
    Problem::new(Span::new(0, 0), message)
}

fn not_utf8(bytes: &[u8], at: usize) -> Problem {
    let here = at as u32;
    let span = Span::new(here, here + 1);
    if bytes.starts_with(&[0xff, 0xfe]) || bytes.starts_with(&[0xfe, 0xff]) {
        return Problem::new(span, "This file is written in UTF-16; please save it again as UTF-8.");
    }
    let message = format!(
        "Byte {at} of the file (0x{:02x}) does not belong to any character in UTF-8; please save the file again as UTF-8.",
        bytes.get(at).copied().unwrap_or(0)
    );
    Problem::new(span, message)
}
