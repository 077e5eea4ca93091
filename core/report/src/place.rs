//! Origins of lines made into places a person can find: pointer, line and column, bytes.

use haulout_document::{Node, Tree};
use haulout_model::Origin;
use haulout_place::Pointer;
use haulout_sheet::{Book, Gap, LineId, Made, Roots};

/// A place in the text of a design.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    /// Where it stands or would stand.
    pub pointer: Pointer,
    /// Line, from 1.
    pub line: u32,
    /// Column, from 1, in Unicode scalar values.
    pub column: u32,
    /// First byte, from 0.
    pub start: u32,
    /// First byte after it.
    pub end: u32,
    /// Whether something is missing there; then line and bytes are those of what it would stand in.
    pub absent: bool,
    /// The place that uses it, when the value stands in a kind.
    pub through: Option<Pointer>,
}

/// The place of an origin.
pub fn place(tree: &Tree, origin: Origin) -> Place {
    let node = Node(origin.node);
    let keys = origin.tail.iter().filter(|key| !key.is_empty());
    let pointer = keys.fold(tree.pointer(node), |pointer, key| pointer.key(key));
    at(tree, node, pointer, origin.is_absent(), origin.through.map(|user| tree.pointer(Node(user))))
}

fn at(tree: &Tree, node: Node, pointer: Pointer, absent: bool, through: Option<Pointer>) -> Place {
    let span = tree.span(node);
    let position = tree.lines().position(tree.text(), span.start);
    Place {
        pointer,
        line: position.line,
        column: position.column,
        start: span.start,
        end: span.end,
        absent,
        through,
    }
}

/// The places of the stated roots (and of the defaults in their place) below some lines, in the order of the file.
pub fn places_of(tree: &Tree, book: &Book<'_>, lines: &[LineId]) -> Vec<Place> {
    let origin = |line: LineId| match book.record(line).made {
        Made::Stated { origin, .. } | Made::Default(origin, ..) => Some(origin),
        _ => None,
    };
    sorted(Roots::of(book, lines).0.into_iter().filter_map(origin).map(|o| place(tree, o)).collect())
}

/// The places of a gap: its own and those of the lines that led to it.
pub fn places_of_gap(tree: &Tree, book: &Book<'_>, gap: &Gap) -> Vec<Place> {
    let own = gap.origin.map(|o| place(tree, o));
    sorted(own.into_iter().chain(places_of(tree, book, &gap.lines)).collect())
}

/// Where a person looks first to close a gap: its own place, or the first of what it was worked from.
pub(crate) fn first_place_of_gap(tree: &Tree, book: &Book<'_>, gap: &Gap) -> Option<Place> {
    let own = gap.origin.map(|o| place(tree, o));
    own.or_else(|| gap.lines.iter().find_map(|&line| places_of(tree, book, &[line]).into_iter().next()))
}

/// In the order of the file, each once.
pub(crate) fn sorted(mut places: Vec<Place>) -> Vec<Place> {
    places.sort_by(|a, b| (a.start, &a.pointer, &a.through).cmp(&(b.start, &b.pointer, &b.through)));
    places.dedup();
    places
}
