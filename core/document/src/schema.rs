//! The schema step: a JSON Schema (draft 2020-12) held against the flat tree, its faults said in sentences of our own.
//!
//! Everything of the `jsonschema` library stays behind this module: its interface moves between minor versions.

mod bridge;
mod known;
mod message;
mod patterns;
mod quick;
mod trail;

use std::borrow::Cow;
use std::collections::{BTreeMap, HashSet};
use std::fmt;
use std::sync::OnceLock;

use haulout_place::{Pointer, Span};
use jsonschema::error::ValidationErrorKind;
use jsonschema::{ValidationError, Validator};
use serde_json::Value;

use crate::Problem;
use crate::tree::{Node, Tree};
use crate::{Limits, read};
use bridge::{Flat, Handle};
use quick::Quick;
use trail::Trail;

/// Faults looked at in one document: beyond that a list helps nobody.
const MOST: usize = 500;

/// A schema ready to be held against documents.
///
/// Besides the keywords of the draft it knows an annotation of ours: `"hint"`, a sentence that is added to the
/// message wherever a value falls foul of the schema object the hint stands in.
///
/// Where the whole schema is written in the part of the language that a table of our own reads, documents that fit are
/// let through by that table, and the validator of the library is made for the first one that is not.
pub struct Schema {
    text: Cow<'static, str>,
    quick: Option<Quick>,
    full: OnceLock<Result<Full, SchemaFault>>,
}

/// The schema as the library holds it, which alone finds faults.
struct Full {
    validator: Validator<Flat>,
    source: Value,
}

/// A schema that cannot be used.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum SchemaFault {
    /// The text is no JSON; the sentence says where.
    Text(String),
    /// The JSON is no schema of the draft, or points to something outside itself.
    Meaning(String),
}

impl fmt::Display for SchemaFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            SchemaFault::Text(why) => write!(f, "The schema is not readable as JSON: {why}."),
            SchemaFault::Meaning(why) => write!(f, "The schema cannot be used: {why}."),
        }
    }
}

impl std::error::Error for SchemaFault {}

impl fmt::Debug for Schema {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Schema").field("text", &self.text).finish_non_exhaustive()
    }
}

impl Schema {
    /// Makes a schema ready from its text, and looks at all of it.
    ///
    /// # Errors
    /// Where the text is no JSON, no schema, or refers to another file: nothing is ever fetched.
    pub fn compile(text: &str) -> Result<Schema, SchemaFault> {
        let schema = Schema { text: Cow::Owned(text.to_owned()), quick: quick(text), full: OnceLock::new() };
        schema.full().map_err(Clone::clone)?;
        Ok(schema)
    }

    /// Makes a schema ready as far as documents that fit it need: for a published one, which tests have compiled. A fault of
    /// the schema is told in the place of the problems of a document that does not surely fit.
    pub fn trusted(text: &'static str) -> Schema {
        Schema::in_short(text, text)
    }

    /// The same for a schema that is also there `in_short`, without its annotations: quicker to make ready.
    pub fn in_short(text: &'static str, in_short: &str) -> Schema {
        Schema { text: Cow::Borrowed(text), quick: quick(in_short), full: OnceLock::new() }
    }

    fn full(&self) -> Result<&Full, &SchemaFault> {
        self.full.get_or_init(|| Full::of(&self.text)).as_ref()
    }

    /// Whether the document surely fits; `None` where the schema has no quick way. What it does not let through may
    /// fit all the same.
    pub fn surely_fits(&self, tree: &Tree) -> Option<bool> {
        self.quick.as_ref().map(|quick| quick.accepts(tree))
    }

    /// What in the document does not fit the schema, one problem a place, in the order of the text.
    pub fn check(&self, tree: &Tree) -> Vec<Problem> {
        match self.surely_fits(tree) {
            Some(true) => Vec::new(),
            _ => self.check_in_full(tree),
        }
    }

    /// As [`Schema::check`], by the library alone: what the quick way is held to.
    pub fn check_in_full(&self, tree: &Tree) -> Vec<Problem> {
        match self.full() {
            Ok(full) => full.check(tree),
            Err(fault) => vec![Problem::new(tree.span(tree.root()), fault.to_string())],
        }
    }
}

fn quick(text: &str) -> Option<Quick> {
    let tree = read(text.as_bytes(), &Limits::default()).accepted().ok();
    tree.as_ref().and_then(Quick::of)
}

impl Full {
    fn of(text: &str) -> Result<Full, SchemaFault> {
        let source: Value = serde_json::from_str(text).map_err(|e| SchemaFault::Text(e.to_string()))?;
        let options = jsonschema::options_for::<Flat>().offline();
        let validator = options.build(&source).map_err(|e| SchemaFault::Meaning(e.to_string()))?;
        Ok(Full { validator, source })
    }

    fn check(&self, tree: &Tree) -> Vec<Problem> {
        let root = Handle::value(tree, tree.root());
        if self.validator.is_valid(root) {
            return Vec::new();
        }
        let mut faults = Vec::new();
        for error in self.validator.iter_errors(root).take(MOST) {
            self.gather(tree, &error, &mut faults);
        }
        let problems = one_a_place(tree, faults);
        if problems.is_empty() {
            // Refused without a fault we can place: never to be taken for accepted.
            let message = "The document does not fit its schema, and the place could not be told.";
            return vec![Problem::new(tree.span(tree.root()), message)];
        }
        problems
    }

    /// Turns one error of the library into faults; a choice between forms is followed into the form that comes nearest.
    fn gather(&self, tree: &Tree, error: &ValidationError<'_>, faults: &mut Vec<Fault>) {
        let mut waiting = vec![error];
        while let Some(error) = waiting.pop() {
            let Some(node) = place(tree, error) else { continue };
            let trail = Trail::of(&self.source, error);
            match error.kind() {
                ValidationErrorKind::AnyOf { context } | ValidationErrorKind::OneOfNotValid { context } => {
                    match nearest_form(tree, node, context) {
                        Some(form) => waiting.extend(form.iter().rev()),
                        None => faults.push(Fault::new(
                            tree,
                            node,
                            Rank::Type,
                            message::no_form(tree, node, context, &trail),
                        )),
                    }
                }
                ValidationErrorKind::AdditionalProperties { unexpected } => {
                    faults.extend(
                        unexpected.iter().filter_map(|key| unknown(tree, node, key, &trail, Rank::Key)),
                    );
                }
                ValidationErrorKind::UnevaluatedProperties { unexpected } => {
                    faults.extend(
                        unexpected.iter().filter_map(|key| unknown(tree, node, key, &trail, Rank::Leftover)),
                    );
                }
                ValidationErrorKind::PropertyNames { error: inner } => {
                    let name = inner.instance().as_str().unwrap_or_default();
                    faults.extend(unfit_name(tree, node, name, &trail));
                }
                kind => {
                    let fault = Fault::new(tree, node, rank(kind), message::said(tree, node, kind));
                    faults.push(Fault { hint: trail.hint().map(str::to_owned), ..fault });
                }
            }
        }
    }
}

/// How telling a fault is; of several at one place the first is said.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Rank {
    Type,
    Key,
    Required,
    Choice,
    Pattern,
    Bound,
    Other,
    /// A key no part of the schema took up; often only because the part that knows it failed for another reason.
    Leftover,
}

struct Fault {
    node: Node,
    span: Span,
    rank: Rank,
    message: String,
    /// A sentence that is said once behind those of its place.
    hint: Option<String>,
    /// Whether the key is known somewhere in the schema object.
    known: bool,
}

impl Fault {
    fn new(tree: &Tree, node: Node, rank: Rank, message: String) -> Self {
        Fault { node, span: tree.span(node), rank, message, hint: None, known: false }
    }
}

fn rank(kind: &ValidationErrorKind) -> Rank {
    use ValidationErrorKind as K;
    match kind {
        K::Type { .. } => Rank::Type,
        K::Required { .. } => Rank::Required,
        K::Enum { .. } | K::Constant { .. } => Rank::Choice,
        K::Pattern { .. } => Rank::Pattern,
        K::Minimum { .. } | K::Maximum { .. } | K::ExclusiveMinimum { .. } | K::ExclusiveMaximum { .. } => {
            Rank::Bound
        }
        K::MinItems { .. } | K::MaxItems { .. } | K::MinLength { .. } | K::MaxLength { .. } => Rank::Bound,
        _ => Rank::Other,
    }
}

fn place(tree: &Tree, error: &ValidationError<'_>) -> Option<Node> {
    let pointer = Pointer::parse(error.instance_path().as_str()).ok()?;
    tree.find(&pointer)
}

fn unknown(tree: &Tree, object: Node, key: &str, trail: &Trail<'_>, rank: Rank) -> Option<Fault> {
    let node = tree.member(object, key)?;
    let known = known::keys(trail);
    Some(Fault {
        node,
        span: tree.key_span(node)?,
        rank,
        message: message::unknown_key(tree, object, key, &known, trail),
        hint: None,
        known: known.contains(&key),
    })
}

fn unfit_name(tree: &Tree, object: Node, name: &str, trail: &Trail<'_>) -> Option<Fault> {
    let node = tree.member(object, name)?;
    let span = tree.key_span(node)?;
    let message =
        trail.with_hint(format!("The key {} does not have the form of a key here.", span.of(tree.text())));
    Some(Fault { span, ..Fault::new(tree, node, Rank::Key, message) })
}

/// The form whose kind of value fits and whose faults lie deepest or are fewest; `None` if none fits in kind.
fn nearest_form<'e>(
    tree: &Tree,
    node: Node,
    forms: &'e [Vec<ValidationError<'static>>],
) -> Option<&'e [ValidationError<'static>]> {
    let here = |e: &&ValidationError<'_>| place(tree, e) == Some(node);
    let wrong_kind = |form: &[ValidationError<'_>]| {
        form.iter().filter(here).any(|e| matches!(e.kind(), ValidationErrorKind::Type { .. }))
    };
    let wrong_choice =
        |form: &[ValidationError<'_>]| form.iter().filter(|e| rank(e.kind()) == Rank::Choice).count();
    let candidates = forms.iter().filter(|form| !form.is_empty() && !wrong_kind(form));
    candidates.map(Vec::as_slice).min_by_key(|form| (wrong_choice(form), form.len()))
}

/// One place, one problem: missing keys of one object are told together, and of the rest the most telling is kept.
fn one_a_place(tree: &Tree, mut faults: Vec<Fault>) -> Vec<Problem> {
    let real: Vec<Node> = faults.iter().filter(|f| f.rank != Rank::Leftover).map(|f| f.node).collect();
    faults.retain(|f| f.rank != Rank::Leftover || !f.known || !explained(tree, f.node, &real));
    faults.sort_by_key(|f| (f.span.start, f.rank));
    let mut by_place: BTreeMap<(u32, u32), Vec<Fault>> = BTreeMap::new();
    for fault in faults {
        by_place.entry((fault.span.start, fault.span.end)).or_default().push(fault);
    }
    // A key that is not known here needs no second complaint about the value under it.
    let unknown: HashSet<Node> = by_place
        .values()
        .flatten()
        .filter(|f| matches!(f.rank, Rank::Key | Rank::Leftover))
        .map(|f| f.node)
        .collect();
    by_place
        .into_values()
        .filter(|here| here.iter().any(|f| is_key(f) || !unknown.contains(&f.node)))
        .map(joined)
        .collect()
}

fn is_key(fault: &Fault) -> bool {
    matches!(fault.rank, Rank::Key | Rank::Leftover)
}

/// Whether a key was left over only because something else in its object is wrong.
fn explained(tree: &Tree, node: Node, real: &[Node]) -> bool {
    tree.parent(node).is_some_and(|object| real.iter().any(|n| tree.holds(object, *n)))
}

fn joined(here: Vec<Fault>) -> Problem {
    let span = here.first().map_or_else(Span::default, |f| f.span);
    let best = here.first().map(|f| f.rank);
    let (mut sentences, mut hints): (Vec<String>, Vec<String>) = (Vec::new(), Vec::new());
    for fault in here.into_iter().filter(|f| Some(f.rank) == best) {
        let first_only = fault.rank != Rank::Required && !sentences.is_empty();
        if !first_only && !sentences.contains(&fault.message) {
            sentences.push(fault.message);
            hints.extend(fault.hint);
        }
    }
    hints.dedup();
    sentences.extend(hints);
    Problem::new(span, sentences.join(" "))
}
