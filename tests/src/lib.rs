//! What the end-to-end tests share: reading the example designs, reviewing them, naming places.

pub mod bundled;
pub mod draft;
pub mod evidence;
pub mod generate;
pub mod outside;
pub mod reference;
pub mod vary;
pub mod worked;

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use haulout_document::{Limits, Node, Tree};
use haulout_engine::{Answer, Options, Review, Ruleset, review};
use haulout_model::{Described, Design, Origin};
use haulout_sheet::{Book, Gap, LineId, Made, Roots, Substitution};

/// The top of the repository.
pub fn repository() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// The example designs: file name and text, in the order of their names.
#[allow(clippy::disallowed_methods, reason = "tests read the example designs from the repository")]
pub fn examples() -> Vec<(String, String)> {
    let folder = repository().join("example-designs");
    let entries = std::fs::read_dir(&folder).expect("the repository has example designs");
    let mut found: Vec<(String, String)> = entries
        .filter_map(|entry| entry.ok().map(|e| e.path()))
        .filter(|path| path.extension().is_some_and(|e| e == "json"))
        .map(|path| {
            let name = path.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
            (name, std::fs::read_to_string(&path).expect("an example is a text"))
        })
        .collect();
    found.sort();
    found
}

/// A design with its tree.
pub struct Loaded {
    /// The tree.
    pub tree: Tree,
    /// The design.
    pub design: Design,
}

/// Reads a text without any problem.
///
/// # Errors
/// The messages of the problems.
pub fn load(text: &str) -> Result<Loaded, Vec<String>> {
    let reading = haulout_document::read(text.as_bytes(), &Limits::default());
    let tree = reading.accepted().map_err(|p| p.into_iter().map(|p| p.message).collect::<Vec<_>>())?;
    let (design, problems) = haulout_model::read(&tree);
    if problems.is_empty() {
        Ok(Loaded { tree, design })
    } else {
        Err(problems.into_iter().map(|p| p.message).collect())
    }
}

/// The day the tests review on.
pub fn options() -> Options {
    Options { stage: None, on: "2026-11-25".to_owned() }
}

/// The ruleset of the compiled rules.
pub fn ruleset() -> Ruleset {
    Ruleset::new(haulout_rules::built_in())
}

/// An answer in numbers: outcome, what it has, what it is held against.
#[derive(Debug, Clone, PartialEq)]
pub struct Said {
    /// The word of the outcome.
    pub outcome: &'static str,
    /// What the design has, and the limits, unrounded in SI.
    pub numbers: Vec<f64>,
    /// The pointers it names.
    pub places: BTreeSet<String>,
}

/// Everything a review says, by rule, subject and authority.
pub fn said(loaded: &Loaded, ruleset: &Ruleset, substitutions: &[Substitution]) -> BTreeMap<String, Said> {
    let review = review(&loaded.design, ruleset, substitutions, &options());
    let key = |a: &Answer| {
        let subject = a.subject.map_or_else(String::new, |s| s.key(&loaded.design));
        format!("{} {} {:?}", ruleset.rules[a.rule].card.id, subject, a.authority)
    };
    let one = |a: &Answer| Said {
        outcome: a.outcome.name(),
        numbers: a
            .deciding
            .map(|d| d.lines().iter().map(|l| number(&review.book, *l)).collect())
            .unwrap_or_default(),
        places: places(&review, &loaded.tree, a),
    };
    review.answers.iter().map(|a| (key(a), one(a))).collect()
}

/// The number of a line; NaN when it holds a thing.
pub fn number(book: &Book<'_>, line: LineId) -> f64 {
    book.record(line).datum.number().unwrap_or(f64::NAN)
}

fn places(review: &Review<'_>, tree: &Tree, answer: &Answer) -> BTreeSet<String> {
    let mut places = line_places(&review.book, tree, &answer.lines);
    places.extend(gap_places(&review.book, tree, &answer.gaps));
    places
}

/// The pointers of the roots below some lines.
pub fn line_places(book: &Book<'_>, tree: &Tree, lines: &[LineId]) -> BTreeSet<String> {
    let origin = |id: LineId| match book.record(id).made {
        Made::Stated { origin, .. } | Made::Default(origin, ..) => Some(pointer(tree, origin)),
        _ => None,
    };
    Roots::of(book, lines).0.into_iter().filter_map(origin).collect()
}

/// The pointers that gaps name.
pub fn gap_places(book: &Book<'_>, tree: &Tree, gaps: &[Gap]) -> BTreeSet<String> {
    let own = gaps.iter().filter_map(|g| g.origin).map(|o| pointer(tree, o));
    let below = gaps.iter().flat_map(|g| line_places(book, tree, &g.lines));
    own.chain(below).collect()
}

/// The pointer of an origin, missing keys appended.
pub fn pointer(tree: &Tree, origin: Origin) -> String {
    let node = tree.pointer(haulout_document::Node(origin.node));
    origin.tail.iter().filter(|t| !t.is_empty()).fold(node, |p, key| p.key(key)).to_string()
}

/// What stands at a node according to the reading code; what lies inside a drawing, a level, a curve or a standing
/// belongs to the key that holds it.
pub fn described_at(tree: &Tree, node: Node) -> Option<Described> {
    let tokens: Vec<String> = tree.pointer(node).tokens().collect();
    let (mut members, mut found) = (haulout_model::describe(), None);
    // A kind holds what an item of its family holds.
    let family = match (tokens.first().map(String::as_str), tokens.get(1).map(String::as_str)) {
        (Some("kinds"), Some("pumps")) => Some(["circuits", "pump"]),
        (Some("kinds"), Some("pipes")) => Some(["circuits", "runs"]),
        _ => None,
    };
    let path: Vec<String> = match family {
        Some(path) => path.iter().map(|s| (*s).to_owned()).chain(tokens.into_iter().skip(3)).collect(),
        None => tokens,
    };
    for token in path {
        let Some(at) = members.iter().position(|m| m.key == token) else {
            // A position in a list, or a key inside a value.
            continue;
        };
        let next = members.swap_remove(at);
        members = next.members.clone();
        found = Some(next);
    }
    found
}
