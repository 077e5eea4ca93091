//! Keys of one object: each may stand once, and both places of a repeated one are named.

use std::collections::HashMap;

use haulout_place::Span;

use super::reader::{Reader, Stop, span};
use crate::Problem;
use crate::escape::unescaped;

/// Objects up to this size are searched; larger ones get a table, so that the time stays linear.
const SEARCHED: u32 = 32;

/// The keys of an open object that has grown large. The standard hasher is seeded, so a text cannot aim at it.
#[derive(Default)]
pub(super) struct Seen(Option<HashMap<String, Span>>);

impl Reader<'_> {
    /// Notes a key that already stands in the innermost open object.
    pub(super) fn unrepeated(&mut self, key: Span, plain: bool) -> Result<(), Stop> {
        let text = self.text;
        let found = if plain && self.open.last().is_some_and(|open| self.is_searched(open.node)) {
            self.first_plain(key)
        } else {
            self.first_place(&unescaped(key.of(text)), key)
        };
        let Some(first) = found else {
            return Ok(());
        };
        let message = format!("The key {} stands twice in this object; keep one of the two.", key.of(text));
        self.note(Problem::new(key, message).with(first, "it stands here first"))
    }

    fn is_searched(&self, node: u32) -> bool {
        self.nodes.get(node as usize).is_some_and(|record| record.count < SEARCHED)
    }

    /// As [`Reader::first_place`] in a small object, for a key without escapes: most keys are told apart by their length.
    fn first_plain(&self, key: Span) -> Option<Span> {
        let typed = key.of(self.text).as_bytes();
        let mut at = self.open.last()?.node as usize + 1;
        while let Some(record) = self.nodes.get(at) {
            let (start, end) = (record.key.start as usize, record.key.end as usize);
            let same = if record.plain_key {
                end - start == typed.len() && self.bytes.get(start..end) == Some(typed)
            } else {
                unescaped(record.key.of(self.text)) == unescaped(key.of(self.text))
            };
            if same {
                return Some(record.key);
            }
            at = record.after as usize;
        }
        None
    }

    fn first_place(&mut self, name: &str, key: Span) -> Option<Span> {
        let node = self.open.last()?.node;
        if self.is_searched(node) {
            return self.keys_of(node).find(|k| unescaped(k.of(self.text)) == name);
        }
        if self.open.last()?.seen.0.is_none() {
            let table = self.table(node);
            self.open.last_mut()?.seen.0 = Some(table);
        }
        let table = self.open.last_mut()?.seen.0.as_mut()?;
        if let Some(first) = table.get(name) {
            return Some(*first);
        }
        table.insert(name.to_owned(), key);
        None
    }

    fn keys_of(&self, node: u32) -> impl Iterator<Item = Span> + '_ {
        let first = self.nodes.get(node as usize + 1);
        std::iter::successors(first, |record| self.nodes.get(record.after as usize)).map(|record| record.key)
    }

    fn table(&self, node: u32) -> HashMap<String, Span> {
        let mut table = HashMap::new();
        for key in self.keys_of(node) {
            table.entry(unescaped(key.of(self.text)).into_owned()).or_insert(key);
        }
        table
    }

    /// A key without quotes: a slip if a colon follows, else nothing we know.
    pub(super) fn bare_key(&mut self) -> Result<(), Stop> {
        let start = self.at;
        let rest = &self.text[start..];
        let length =
            rest.find(|c: char| !(c.is_alphanumeric() || matches!(c, '_' | '$' | '-'))).unwrap_or(rest.len());
        let word = &rest[..length];
        if length == 0 || !rest[length..].trim_start_matches([' ', '\t', '\n', '\r']).starts_with(':') {
            return Err(self.no_key());
        }
        self.at += length;
        let place = span(start, self.at);
        self.note(Problem::new(place, format!("The key {word} stands without quotes; write \"{word}\".")))
    }
}
