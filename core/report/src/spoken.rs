//! Places said aloud: `circuits, loop: "static-head": "0.40 m"` for `/circuits/0/static-head`.

use haulout_document::{Kind, Node, Tree};
use haulout_place::Pointer;

use crate::place::Place;
use crate::source::excerpt;

/// More characters of a value than this are not repeated on a page.
const LONGEST: usize = 60;

/// The way to a place: keys, and the ids of items where they have one.
pub(crate) fn way(tree: &Tree, pointer: &Pointer) -> Vec<String> {
    let (mut node, mut words) = (Some(tree.root()), Vec::new());
    for token in pointer.tokens() {
        let list = node.is_some_and(|node| tree.kind(node) == Kind::Array);
        node = node.and_then(|node| step(tree, node, &token));
        words.push(if list { item(tree, node, &token) } else { token });
    }
    words
}

fn step(tree: &Tree, node: Node, token: &str) -> Option<Node> {
    match tree.kind(node) {
        Kind::Array => tree.at(node, token.parse().ok()?),
        _ => tree.member(node, token),
    }
}

/// An item by its id, else by its position as a person counts.
fn item(tree: &Tree, node: Option<Node>, token: &str) -> String {
    let id = node.and_then(|node| tree.member(node, "id")).and_then(|id| tree.string(id));
    let position =
        || token.parse::<usize>().map_or_else(|_| token.to_owned(), |at| format!("no. {}", at + 1));
    id.map_or_else(position, std::borrow::Cow::into_owned)
}

/// The way in one line.
pub(crate) fn said(tree: &Tree, pointer: &Pointer) -> String {
    way(tree, pointer).join(", ")
}

/// The place with what is written there.
pub(crate) fn written(tree: &Tree, place: &Place) -> String {
    let mut words = way(tree, &place.pointer);
    let last = words.pop().unwrap_or_default();
    let lead = if words.is_empty() { String::new() } else { format!("{}: ", words.join(", ")) };
    let used =
        place.through.as_ref().map_or_else(String::new, |user| format!(" (used by {})", said(tree, user)));
    if place.absent {
        return format!("{lead}\"{last}\" would stand here{used}");
    }
    let text = tree.text().get(place.start as usize..place.end as usize).unwrap_or_default();
    let flat = text.split_whitespace().collect::<Vec<_>>().join(" ");
    format!("{lead}\"{last}\": {}{used}", excerpt(&flat, 0, flat.len(), LONGEST))
}

#[cfg(test)]
mod tests {
    use haulout_document::{Limits, read};
    use haulout_place::Pointer;

    use super::said;

    #[test]
    fn items_are_named_by_their_id_or_counted_from_one() {
        let text = r#"{ "pools": [{ "id": "main", "zones": [{ "depth": "1 m" }] }] }"#;
        let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("it is sound JSON");
        let at = |text: &str| said(&tree, &Pointer::parse(text).expect("it is a pointer"));
        assert_eq!(at("/pools/0/zones/0/depth"), "pools, main, zones, no. 1, depth");
        assert_eq!(at("/circuits/3"), "circuits, 3");
    }
}
