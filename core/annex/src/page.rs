//! A card being read: its tree, and the problems found so far. What the schema has spoken of is not spoken of again.

use std::borrow::Cow;

use haulout_document::{Kind, Limits, Node, Problem, Schema, Tree, read};
use haulout_place::Span;
use haulout_quantity::Slip;

/// A card and what is wrong with it.
pub(crate) struct Page {
    pub(crate) tree: Tree,
    pub(crate) problems: Vec<Problem>,
}

impl Page {
    /// Reads bytes and holds them to a published schema. Faults of shape do not end the reading: what is sound beside
    /// them is looked at too.
    ///
    /// # Errors
    /// The problems of a text that cannot be read as JSON.
    pub(crate) fn of(bytes: &[u8], schema: &'static str) -> Result<Self, Vec<Problem>> {
        Self::held_to(bytes, &Schema::trusted(schema))
    }

    /// The same with a schema made ready before.
    pub(crate) fn held_to(bytes: &[u8], schema: &Schema) -> Result<Self, Vec<Problem>> {
        let tree = read(bytes, &Limits::default()).accepted()?;
        let problems = schema.check(&tree);
        Ok(Page { tree, problems })
    }

    /// Notes a problem of a value, unless the place has one already.
    pub(crate) fn tell(&mut self, node: Node, message: impl Into<String>) {
        self.note(self.tree.span(node), message.into());
    }

    /// Notes a slip in a string at its place in the string.
    pub(crate) fn slip(&mut self, node: Node, slip: &Slip) {
        let whole = self.tree.span(node);
        let (start, end) = (whole.start + 1 + slip.at.start as u32, whole.start + 1 + slip.at.end as u32);
        // With an escape in the string its bytes are not those of the text.
        let plain = self.tree.string(node).is_some_and(|s| matches!(s, Cow::Borrowed(_)));
        let inside = plain && start < end && end < whole.end;
        self.note(if inside { Span::new(start, end) } else { whole }, slip.message.clone());
    }

    fn note(&mut self, span: Span, message: String) {
        if self.problems.iter().all(|p| p.span != span && !(self.is_string(p.span) && p.span.holds(span))) {
            self.problems.push(Problem::new(span, message));
        }
    }

    fn is_string(&self, span: Span) -> bool {
        span.of(self.tree.text()).starts_with('"')
    }

    /// The value under a key.
    pub(crate) fn member(&self, node: Node, key: &str) -> Option<Node> {
        self.tree.member(node, key)
    }

    /// The words under a key, with their place; none where no string stands.
    pub(crate) fn words(&self, node: Node, key: &str) -> Option<(String, Node)> {
        let at = self.member(node, key)?;
        Some((self.tree.string(at)?.into_owned(), at))
    }

    /// The words under a key; empty where there are none.
    pub(crate) fn text(&self, node: Node, key: &str) -> String {
        self.words(node, key).map(|(words, _)| words).unwrap_or_default()
    }

    /// The entries of the list under a key.
    pub(crate) fn list(&self, node: Node, key: &str) -> Vec<Node> {
        let list = self.member(node, key).filter(|at| self.tree.kind(*at) == Kind::Array);
        list.map(|at| self.tree.children(at).collect()).unwrap_or_default()
    }

    /// The words of the list under a key.
    pub(crate) fn strings(&self, node: Node, key: &str) -> Vec<String> {
        let entries = self.list(node, key).into_iter();
        entries.filter_map(|at| self.tree.string(at).map(Cow::into_owned)).collect()
    }

    /// The members of the object under a key: their names, and their values.
    pub(crate) fn members(&self, node: Node, key: &str) -> Vec<(String, Node)> {
        let object = self.member(node, key).filter(|at| self.tree.kind(*at) == Kind::Object);
        let children = object.map(|at| self.tree.children(at).collect::<Vec<_>>()).unwrap_or_default();
        children.into_iter().filter_map(|at| Some((self.tree.key(at)?.into_owned(), at))).collect()
    }
}

/// Text that lives as long as the process: lines of the sheet point at it, and an annex is read once in a run.
pub(crate) fn leaked(text: &str) -> &'static str {
    Box::leak(text.to_owned().into_boxed_str())
}
