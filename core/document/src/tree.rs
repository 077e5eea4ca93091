//! A flat tree of one JSON text: its nodes in the order of the text, strings and numbers left where they stand.

use std::borrow::Cow;
use std::sync::{Arc, OnceLock};

use haulout_place::{LineIndex, Span};

use crate::escape::unescaped;

/// A value of a tree, by its number in the order of the text. It means something only to the tree it came from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Node(pub u32);

/// What a value is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[repr(u8)]
pub enum Kind {
    /// `null`.
    Null,
    /// `false`.
    False,
    /// `true`.
    True,
    /// A number.
    Number,
    /// A string.
    String,
    /// An array.
    Array,
    /// An object.
    Object,
}

/// The parent of the root.
pub(crate) const NONE: u32 = u32::MAX;

/// One value. 32 bytes, so that two share a cache line.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Record {
    pub(crate) span: Span,
    /// The key with its quotes. For a value without a key the end is 0 and the start is its position in the array.
    pub(crate) key: Span,
    pub(crate) parent: u32,
    /// The first node after this subtree; it is the next sibling when the parent's subtree has not ended there.
    pub(crate) after: u32,
    /// How many children it has.
    pub(crate) count: u32,
    pub(crate) kind: Kind,
    /// Whether the value, if it is a string, stands in double quotes without an escape.
    pub(crate) plain: bool,
    /// Whether the key does.
    pub(crate) plain_key: bool,
}

const _: () = assert!(size_of::<Record>() == 32);

/// One JSON text and where everything in it stands.
///
/// Methods that take a [`Node`] panic on one that is not of this tree; every other miss is a `None`.
#[derive(Debug, Clone)]
pub struct Tree {
    text: Arc<str>,
    pub(crate) nodes: Vec<Record>,
    lines: OnceLock<LineIndex>,
}

impl Tree {
    /// `nodes` holds at least the root.
    pub(crate) fn new(text: Arc<str>, nodes: Vec<Record>) -> Self {
        Tree { text, nodes, lines: OnceLock::new() }
    }

    pub(crate) fn record(&self, node: Node) -> &Record {
        &self.nodes[node.0 as usize]
    }

    /// The whole text as it was read.
    pub fn text(&self) -> &str {
        &self.text
    }

    /// The whole text, to be kept beside the tree.
    pub fn shared_text(&self) -> Arc<str> {
        Arc::clone(&self.text)
    }

    /// Line starts of the text, looked up once at the first call.
    pub fn lines(&self) -> &LineIndex {
        self.lines.get_or_init(|| LineIndex::new(&self.text))
    }

    /// The value that is the whole document.
    pub fn root(&self) -> Node {
        Node(0)
    }

    /// How many values the tree holds, the root included.
    pub fn size(&self) -> usize {
        self.nodes.len()
    }

    /// What the value is.
    pub fn kind(&self, node: Node) -> Kind {
        self.record(node).kind
    }

    /// The bytes of the value, quotes and brackets included.
    pub fn span(&self, node: Node) -> Span {
        self.record(node).span
    }

    /// The value as typed.
    pub fn typed(&self, node: Node) -> &str {
        self.span(node).of(&self.text)
    }

    /// The bytes of the key the value stands under, quotes included; `None` for the root and in an array.
    pub fn key_span(&self, node: Node) -> Option<Span> {
        let key = self.record(node).key;
        (key.end != 0).then_some(key)
    }

    /// The key the value stands under, escapes resolved.
    pub fn key(&self, node: Node) -> Option<Cow<'_, str>> {
        let record = self.record(node);
        if record.plain_key {
            return self
                .text
                .get(record.key.start as usize + 1..record.key.end as usize - 1)
                .map(Cow::Borrowed);
        }
        Some(unescaped(self.key_span(node)?.of(&self.text)))
    }

    /// The string, escapes resolved; `None` for any other kind.
    pub fn string(&self, node: Node) -> Option<Cow<'_, str>> {
        let record = self.record(node);
        if record.plain {
            return self
                .text
                .get(record.span.start as usize + 1..record.span.end as usize - 1)
                .map(Cow::Borrowed);
        }
        (record.kind == Kind::String).then(|| unescaped(self.typed(node)))
    }

    /// Whether the value is this string.
    pub fn says(&self, node: Node, words: &str) -> bool {
        let record = self.record(node);
        let short = ((record.span.end - record.span.start) as usize) < words.len() + 2;
        record.kind == Kind::String && !short && self.string(node).is_some_and(|s| s == words)
    }

    /// The number nearest to what was typed; `None` for any other kind and for a number that f64 does not hold.
    pub fn number(&self, node: Node) -> Option<f64> {
        if self.kind(node) != Kind::Number {
            return None;
        }
        let value: f64 = self.typed(node).parse().ok()?;
        value.is_finite().then_some(value)
    }

    /// `true` or `false`; `None` for any other kind.
    pub fn boolean(&self, node: Node) -> Option<bool> {
        match self.kind(node) {
            Kind::True => Some(true),
            Kind::False => Some(false),
            _ => None,
        }
    }

    /// How many children the value has: members of an object, elements of an array, else 0.
    pub fn len(&self, node: Node) -> usize {
        self.record(node).count as usize
    }

    /// Whether the value has no children.
    pub fn is_empty(&self, node: Node) -> bool {
        self.len(node) == 0
    }

    /// The object or array the value stands in.
    pub fn parent(&self, node: Node) -> Option<Node> {
        let parent = self.record(node).parent;
        (parent != NONE).then_some(Node(parent))
    }

    /// The first node after the subtree: `x` lies in it exactly if `node.0 <= x.0 && x.0 < end.0`.
    pub fn subtree_end(&self, node: Node) -> Node {
        Node(self.record(node).after)
    }

    /// Whether `inner` is `node` or lies below it.
    pub fn holds(&self, node: Node, inner: Node) -> bool {
        node <= inner && inner < self.subtree_end(node)
    }
}
