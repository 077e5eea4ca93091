//! A quick yes: the part of the schema language that the published schema of designs is written in, made into a table.
//!
//! It only ever says that a document surely fits. Where it does not say so, the library is asked, and the library alone
//! finds the words; a schema with any keyword that is not read here has no quick yes at all.

use rustc_hash::FxHashMap;

use super::patterns::{Look, PATTERNS, is_own};
use crate::tree::{Kind, Node, Tree};

/// Schemas inside one another, references included; beyond that there is no quick yes.
const DEEPEST: u32 = 400;

/// The draft whose meaning of the keywords is kept here.
const DRAFT: &str = "https://json-schema.org/draft/2020-12/schema";

/// Keywords that say nothing about whether a document fits: annotations of the draft and of ours.
const ANNOTATIONS: &[&str] =
    &["title", "description", "default", "hint", "role", "dimension", "range", "step"];

/// What a member with an unlisted key has to be.
#[derive(Debug, Clone, Copy)]
enum Others {
    Anything,
    Nothing,
    Fitting(u32),
}

/// One schema object, read.
#[derive(Debug)]
struct Part {
    /// A bit a kind; whole numbers apart.
    kinds: u8,
    whole: bool,
    reference: Option<u32>,
    members: FxHashMap<Box<str>, u32>,
    /// Whether keys `x-…` may stand beside the listed ones, with anything in them.
    own: bool,
    others: Others,
    required: Vec<Box<str>>,
    names: Option<Look>,
    items: Option<u32>,
    entries: (usize, usize),
    characters: usize,
    bounds: (f64, f64),
    words: Option<Vec<Box<str>>>,
    number: Option<f64>,
    pattern: Option<Look>,
    choice: Option<Choice>,
}

/// `if`, `then`, `else`.
#[derive(Debug, Clone, Copy)]
struct Choice {
    condition: u32,
    then: Option<u32>,
    otherwise: Option<u32>,
}

const ALL_KINDS: u8 = 0x7f;

/// A schema that can say a quick yes.
#[derive(Debug)]
pub(super) struct Quick {
    parts: Vec<Part>,
}

impl Quick {
    /// `None` where the schema says anything this does not know.
    pub(super) fn of(schema: &Tree) -> Option<Quick> {
        let draft = schema.member(schema.root(), "$schema");
        if draft.is_some_and(|draft| !schema.says(draft, DRAFT)) {
            return None;
        }
        let mut making =
            Making { schema, parts: Vec::new(), made: FxHashMap::default(), waiting: Vec::new() };
        making.part(schema.root());
        let mut done = 0;
        while let Some(node) = making.waiting.get(done).copied() {
            let part = making.read(node)?;
            making.parts.push(part);
            done += 1;
        }
        Some(Quick { parts: making.parts })
    }

    /// Whether the document surely fits.
    pub(super) fn accepts(&self, tree: &Tree) -> bool {
        self.fits(0, tree, tree.root(), 0)
    }

    fn fits(&self, at: u32, tree: &Tree, node: Node, deep: u32) -> bool {
        let part = &self.parts[at as usize];
        let kind = tree.kind(node);
        if deep > DEEPEST || (part.kinds >> kind as u8) & 1 == 0 {
            return false;
        }
        let inner = |at: u32, node: Node| self.fits(at, tree, node, deep + 1);
        let of_kind = match kind {
            Kind::Object => self.object(part, tree, node, deep),
            Kind::Array => {
                let (least, most) = part.entries;
                part.words.is_none()
                    && part.number.is_none()
                    && (least..=most).contains(&tree.len(node))
                    && part.items.is_none_or(|items| tree.children(node).all(|child| inner(items, child)))
            }
            Kind::String => part.string(tree, node),
            Kind::Number => part.number(tree, node),
            _ => part.words.is_none() && part.number.is_none(),
        };
        of_kind && part.reference.is_none_or(|other| inner(other, node)) && {
            part.choice.is_none_or(|choice| {
                let next = if inner(choice.condition, node) { choice.then } else { choice.otherwise };
                next.is_none_or(|next| inner(next, node))
            })
        }
    }

    fn object(&self, part: &Part, tree: &Tree, node: Node, deep: u32) -> bool {
        if part.words.is_some() || part.number.is_some() {
            return false;
        }
        if !part.required.iter().all(|key| tree.member(node, key).is_some()) {
            return false;
        }
        let open = part.members.is_empty() && matches!(part.others, Others::Anything);
        if open && part.names.is_none() {
            return true;
        }
        tree.children(node).all(|child| {
            let Some(key) = tree.key(child) else { return false };
            if part.names.is_some_and(|fits| !fits(&key)) {
                return false;
            }
            match (part.members.get(&*key), part.others) {
                (Some(member), _) => self.fits(*member, tree, child, deep + 1),
                (None, _) if part.own && is_own(&key) => true,
                (None, Others::Anything) => true,
                (None, Others::Nothing) => false,
                (None, Others::Fitting(other)) => self.fits(other, tree, child, deep + 1),
            }
        })
    }
}

impl Part {
    fn any() -> Part {
        Part {
            kinds: ALL_KINDS,
            whole: false,
            reference: None,
            members: FxHashMap::default(),
            own: false,
            others: Others::Anything,
            required: Vec::new(),
            names: None,
            items: None,
            entries: (0, usize::MAX),
            characters: 0,
            bounds: (f64::NEG_INFINITY, f64::INFINITY),
            words: None,
            number: None,
            pattern: None,
            choice: None,
        }
    }

    fn string(&self, tree: &Tree, node: Node) -> bool {
        let Some(text) = tree.string(node) else { return false };
        let long = self.characters == 0 || text.chars().take(self.characters).count() == self.characters;
        let listed = self.words.as_ref().is_none_or(|words| words.iter().any(|word| **word == *text));
        long && listed && self.number.is_none() && self.pattern.is_none_or(|fits| fits(&text))
    }

    fn number(&self, tree: &Tree, node: Node) -> bool {
        let bounded = self.bounds != (f64::NEG_INFINITY, f64::INFINITY);
        if self.words.is_some() {
            return false;
        }
        if !bounded && !self.whole && self.number.is_none() {
            return true;
        }
        tree.number(node).is_some_and(|value| {
            let fits = (self.bounds.0..=self.bounds.1).contains(&value);
            fits && (!self.whole || value.fract() == 0.0) && self.number.is_none_or(|only| only == value)
        })
    }
}

/// A schema on its way to a table.
struct Making<'s> {
    schema: &'s Tree,
    parts: Vec<Part>,
    made: FxHashMap<Node, u32>,
    waiting: Vec<Node>,
}

impl Making<'_> {
    /// The number of a schema object, which is read later.
    fn part(&mut self, node: Node) -> u32 {
        let next = self.waiting.len() as u32;
        let at = *self.made.entry(node).or_insert(next);
        if at == next {
            self.waiting.push(node);
        }
        at
    }

    fn read(&mut self, node: Node) -> Option<Part> {
        let tree = self.schema;
        let mut part = Part::any();
        if tree.kind(node) == Kind::True {
            return Some(part);
        }
        if tree.kind(node) != Kind::Object {
            return None;
        }
        for child in tree.children(node) {
            let key = tree.key(child)?;
            // Further in, these would change what a reference leads to.
            if node == tree.root() && matches!(&*key, "$schema" | "$id" | "$defs") {
                continue;
            }
            if !ANNOTATIONS.contains(&&*key) {
                self.keyword(&mut part, &key, child)?;
            }
        }
        let (then, otherwise) = (tree.member(node, "then"), tree.member(node, "else"));
        if let Some(condition) = tree.member(node, "if") {
            let condition = self.part(condition);
            let (then, otherwise) = (then.map(|n| self.part(n)), otherwise.map(|n| self.part(n)));
            part.choice = Some(Choice { condition, then, otherwise });
        }
        Some(part)
    }

    fn keyword(&mut self, part: &mut Part, key: &str, child: Node) -> Option<()> {
        let tree = self.schema;
        match key {
            "if" | "then" | "else" => {}
            "$ref" => part.reference = Some(self.referred(child)?),
            "type" => (part.kinds, part.whole) = self.kinds(child)?,
            "items" => part.items = Some(self.part(child)),
            "enum" => part.words = Some(self.strings(child)?),
            "const" => part.number = Some(tree.number(child)?),
            "pattern" => part.pattern = Some(self.pattern(child)?),
            "minItems" => part.entries.0 = self.size(child)?,
            "maxItems" => part.entries.1 = self.size(child)?,
            "minLength" => part.characters = self.size(child)?,
            "minimum" => part.bounds.0 = tree.number(child)?,
            "maximum" => part.bounds.1 = tree.number(child)?,
            _ => return self.object_keyword(part, key, child),
        }
        Some(())
    }

    fn object_keyword(&mut self, part: &mut Part, key: &str, child: Node) -> Option<()> {
        let tree = self.schema;
        match key {
            "required" => part.required = self.strings(child)?,
            "properties" => {
                for member in tree.children(child) {
                    part.members.insert(tree.key(member)?.into(), self.part(member));
                }
            }
            "patternProperties" => {
                let only = tree.member(child, "^x-").filter(|_| tree.len(child) == 1)?;
                part.own = (tree.kind(only) == Kind::True).then_some(true)?;
            }
            "additionalProperties" => {
                part.others = match tree.kind(child) {
                    Kind::False => Others::Nothing,
                    _ => Others::Fitting(self.part(child)),
                }
            }
            "propertyNames" => {
                let only = tree.member(child, "pattern").filter(|_| tree.len(child) == 1)?;
                part.names = Some(self.pattern(only)?);
            }
            _ => return None,
        }
        Some(())
    }

    /// References into the schema itself; the names of ours hold nothing that a pointer would escape.
    fn referred(&mut self, child: Node) -> Option<u32> {
        let name = self.schema.string(child)?;
        let name = name.strip_prefix("#/$defs/").filter(|name| !name.contains(['/', '~', '%']))?.to_owned();
        let definitions = self.schema.member(self.schema.root(), "$defs")?;
        let target = self.schema.member(definitions, &name)?;
        Some(self.part(target))
    }

    fn kinds(&self, child: Node) -> Option<(u8, bool)> {
        let one = |node: Node| {
            let kinds: &[Kind] = match &*self.schema.string(node)? {
                "null" => &[Kind::Null],
                "boolean" => &[Kind::False, Kind::True],
                "number" => &[Kind::Number],
                "string" => &[Kind::String],
                "array" => &[Kind::Array],
                "object" => &[Kind::Object],
                _ => return None,
            };
            Some(kinds.iter().fold(0, |sum, kind| sum | 1 << *kind as u8))
        };
        match self.schema.kind(child) {
            Kind::String if self.schema.says(child, "integer") => Some((1 << Kind::Number as u8, true)),
            Kind::String => Some((one(child)?, false)),
            Kind::Array => {
                let all: Option<Vec<u8>> = self.schema.children(child).map(one).collect();
                Some((all?.into_iter().fold(0, |sum, kinds| sum | kinds), false))
            }
            _ => None,
        }
    }

    fn strings(&self, child: Node) -> Option<Vec<Box<str>>> {
        let items = self.schema.children(child).map(|item| self.schema.string(item).map(Into::into));
        (self.schema.kind(child) == Kind::Array).then(|| items.collect()).flatten()
    }

    fn pattern(&self, child: Node) -> Option<Look> {
        let pattern = self.schema.string(child)?;
        PATTERNS.iter().find(|(known, _)| *known == pattern).map(|(_, fits)| *fits)
    }

    fn size(&self, child: Node) -> Option<usize> {
        let size = self.schema.number(child).filter(|n| *n >= 0.0 && n.fract() == 0.0)?;
        Some(size as usize)
    }
}
