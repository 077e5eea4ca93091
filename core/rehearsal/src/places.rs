//! The places of an answer: the roots of its lines and of its gaps, as pointers into the design it is about.

use haulout_document::{Node, Tree};
use haulout_engine::Answer;
use haulout_model::Origin;
use haulout_place::Pointer;
use haulout_sheet::{Book, LineId, Made, Roots};

/// Every place the answer rests on or misses, each once; what is absent as the place where it would stand.
pub fn places(tree: &Tree, book: &Book<'_>, answer: &Answer) -> Vec<Pointer> {
    let of_gaps = answer.gaps.iter().flat_map(|gap| gap.lines.iter().copied());
    let lines: Vec<LineId> = answer.lines.iter().copied().chain(of_gaps).collect();
    let roots = Roots::of(book, &lines).0.into_iter().filter_map(|line| match book.record(line).made {
        Made::Stated { origin, .. } | Made::Default(origin, ..) => Some(origin),
        _ => None,
    });
    let missing = answer.gaps.iter().filter_map(|gap| gap.origin);
    let mut pointers = Vec::new();
    for pointer in roots.chain(missing).flat_map(|origin| of_origin(tree, origin)) {
        if !pointers.contains(&pointer) {
            pointers.push(pointer);
        }
    }
    pointers
}

/// Where it stands or would stand, and the place that uses it when the value stands in a kind.
fn of_origin(tree: &Tree, origin: Origin) -> impl Iterator<Item = Pointer> {
    let keys = origin.tail.into_iter().filter(|key| !key.is_empty());
    let own = keys.fold(tree.pointer(Node(origin.node)), Pointer::key);
    std::iter::once(own).chain(origin.through.map(|user| tree.pointer(Node(user))))
}
