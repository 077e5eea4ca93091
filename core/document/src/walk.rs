//! Ways through a tree: children, members, pointers, and the value for comparison with other libraries.

use haulout_place::Pointer;
use serde_json::{Map, Number, Value};

use crate::tree::{Kind, Node, Tree};

/// The children of one value in the order of the text.
#[derive(Debug, Clone)]
pub struct Children<'t> {
    tree: &'t Tree,
    next: u32,
    end: u32,
}

impl Iterator for Children<'_> {
    type Item = Node;

    fn next(&mut self) -> Option<Node> {
        if self.next >= self.end {
            return None;
        }
        let node = Node(self.next);
        self.next = self.tree.subtree_end(node).0;
        Some(node)
    }
}

impl Tree {
    /// The children of a value in the order of the text; none for a scalar.
    pub fn children(&self, node: Node) -> Children<'_> {
        Children { tree: self, next: node.0 + 1, end: self.subtree_end(node).0 }
    }

    /// The member of that name; the first where a (refused) text repeats it. `None` where `node` is no object.
    pub fn member(&self, node: Node, key: &str) -> Option<Node> {
        if self.kind(node) != Kind::Object {
            return None;
        }
        self.children(node).find(|child| self.is_called(*child, key))
    }

    /// Whether the value stands under this key.
    pub fn is_called(&self, node: Node, key: &str) -> bool {
        let record = self.record(node);
        if !record.plain_key {
            return self.key(node).is_some_and(|k| k == key);
        }
        let (start, end) = (record.key.start as usize + 1, record.key.end as usize - 1);
        end - start == key.len() && self.text().as_bytes().get(start..end) == Some(key.as_bytes())
    }

    /// The element at a position from 0; `None` past the end and where `node` is no array.
    pub fn at(&self, node: Node, position: usize) -> Option<Node> {
        if self.kind(node) != Kind::Array {
            return None;
        }
        self.children(node).nth(position)
    }

    /// The position among the children of the parent, from 0; `None` for the root.
    pub fn index_in_parent(&self, node: Node) -> Option<usize> {
        let parent = self.parent(node)?;
        match self.kind(parent) {
            Kind::Array => Some(self.record(node).key.start as usize),
            _ => self.children(parent).position(|child| child == node),
        }
    }

    /// Where the value stands, by names and positions.
    pub fn pointer(&self, node: Node) -> Pointer {
        let mut path: Vec<Node> = std::iter::successors(Some(node), |n| self.parent(*n)).collect();
        path.pop();
        path.iter().rev().fold(Pointer::root(), |pointer, n| match self.key(*n) {
            Some(key) => pointer.key(&key),
            None => pointer.at(self.record(*n).key.start as usize),
        })
    }

    /// The value a pointer leads to. Positions are written without leading zeros (RFC 6901 section 4).
    pub fn find(&self, pointer: &Pointer) -> Option<Node> {
        let mut node = self.root();
        for token in pointer.tokens() {
            node = match self.kind(node) {
                Kind::Object => self.member(node, &token)?,
                Kind::Array => self.at(node, position(&token)?)?,
                _ => return None,
            };
        }
        Some(node)
    }

    /// The innermost value that holds a span, its key included.
    pub fn innermost(&self, span: haulout_place::Span) -> Option<Pointer> {
        let holds = |node: &Node| {
            let key = self.key_span(*node).is_some_and(|key| key.holds(span));
            key || self.span(*node).holds(span)
        };
        // In preorder the last one that holds it lies deepest.
        (0..self.size() as u32).map(Node).filter(holds).last().map(|node| self.pointer(node))
    }

    /// The value as `serde_json` holds it, the first of repeated keys winning; a number outside f64 becomes null.
    /// It copies everything: meant for tests and for small parts.
    pub fn to_value(&self, node: Node) -> Value {
        // A stack of unfinished containers instead of recursion: a tree may be as deep as its limit was set.
        let mut open: Vec<(Node, Value)> = Vec::new();
        let mut at = node;
        loop {
            let mut done = match self.kind(at) {
                Kind::Array => Value::Array(Vec::with_capacity(self.len(at))),
                Kind::Object => Value::Object(Map::with_capacity(self.len(at))),
                _ => self.scalar(at),
            };
            if !self.is_empty(at) {
                open.push((at, done));
                at = Node(at.0 + 1);
                continue;
            }
            let mut finished = at;
            loop {
                let Some((parent, mut whole)) = open.pop() else {
                    return done;
                };
                self.put(&mut whole, finished, done);
                let next = self.subtree_end(finished);
                if next < self.subtree_end(parent) {
                    open.push((parent, whole));
                    at = next;
                    break;
                }
                (finished, done) = (parent, whole);
            }
        }
    }

    fn put(&self, whole: &mut Value, child: Node, value: Value) {
        match whole {
            Value::Array(elements) => elements.push(value),
            Value::Object(members) => {
                let key = self.key(child).unwrap_or_default().into_owned();
                members.entry(key).or_insert(value);
            }
            _ => {}
        }
    }

    fn scalar(&self, node: Node) -> Value {
        match self.kind(node) {
            Kind::True => Value::Bool(true),
            Kind::False => Value::Bool(false),
            Kind::String => Value::String(self.string(node).unwrap_or_default().into_owned()),
            Kind::Number => self.whole_or_real(node).map_or(Value::Null, Value::Number),
            _ => Value::Null,
        }
    }

    /// The number, whole ones in the range of i64 and u64 kept exactly. `-0` is a real number, as its sign says.
    pub(crate) fn whole_or_real(&self, node: Node) -> Option<Number> {
        let typed = self.typed(node);
        if typed != "-0" {
            if let Ok(whole) = typed.parse::<i64>() {
                return Some(whole.into());
            }
            if let Ok(whole) = typed.parse::<u64>() {
                return Some(whole.into());
            }
        }
        Number::from_f64(self.number(node)?)
    }
}

fn position(token: &str) -> Option<usize> {
    let plain = token.bytes().all(|b| b.is_ascii_digit()) && (token == "0" || !token.starts_with('0'));
    plain.then(|| token.parse().ok()).flatten()
}
