//! The first draft of the Reedwater Room: the sound design with the listed mistakes written in.
#![allow(clippy::panic, reason = "a list that does not fit the design fails the test that reads it")]

use haulout_document::{Limits, Node, Tree};
use haulout_place::Pointer;

use crate::repository;

/// One mistake of the list in `example-designs/first-draft.md`.
#[derive(Debug, Clone)]
pub struct Mistake {
    /// Where it stands in the draft.
    pub pointer: String,
    /// The JSON text in the draft.
    pub draft: String,
    /// The JSON text in the sound design, `…` where it is long; nothing where the key is absent.
    pub sound: Option<String>,
    /// The rule that finds it, where the program judges its chapter.
    pub found_by: Option<String>,
}

/// The mistakes, in the order of the list.
#[allow(clippy::disallowed_methods, reason = "tests read the list from the repository")]
pub fn mistakes() -> Vec<Mistake> {
    let path = repository().join("example-designs/first-draft.md");
    let text = std::fs::read_to_string(path).expect("the list stands beside the examples");
    let rows = text.lines().filter(|line| line.starts_with("| ") && line.contains('`'));
    rows.map(mistake).collect()
}

fn mistake(row: &str) -> Mistake {
    let cells: Vec<&str> =
        row.trim().trim_matches('|').split('|').map(|cell| cell.trim().trim_matches('`')).collect();
    let cell = |at: usize| (*cells.get(at).expect("a row of the list has seven cells")).to_owned();
    Mistake {
        pointer: cell(2),
        draft: cell(3),
        sound: Some(cell(4)).filter(|text| text != "absent"),
        found_by: Some(cell(6)).filter(|rule| rule != "–"),
    }
}

/// The text of the draft that follows from the sound text.
///
/// # Panics
/// Where the sound design does not hold what the list says it holds.
pub fn draft_of(sound: &str) -> String {
    let mut text = sound
        .replacen("\"title\": \"The Reedwater Room\"", "\"title\": \"The Reedwater Room, first draft\"", 1)
        .replacen("\"revision\": \"C\"", "\"revision\": \"A\"", 1);
    for mistake in mistakes() {
        text = written_in(&text, &mistake);
    }
    text
}

fn written_in(text: &str, mistake: &Mistake) -> String {
    let tree = tree(text);
    let pointer = Pointer::parse(&mistake.pointer).expect("the list holds pointers");
    match (&mistake.sound, tree.find(&pointer)) {
        (Some(sound), Some(node)) => {
            let span = tree.span(node);
            let stands = span.of(text);
            assert!(sound == "…" || stands == sound, "{}: {stands} in the sound design", mistake.pointer);
            spliced(text, span.start as usize, span.end as usize, &mistake.draft)
        }
        (None, None) => with_member(text, &tree, mistake),
        _ => panic!("{} does not stand in the sound design as the list says", mistake.pointer),
    }
}

/// The text with one more member at the end of the object that the pointer leads into.
fn with_member(text: &str, tree: &Tree, mistake: &Mistake) -> String {
    let (owner, key) = mistake.pointer.rsplit_once('/').expect("a pointer has a slash");
    let owner = Pointer::parse(owner).expect("the list holds pointers");
    let object: Node = tree.find(&owner).unwrap_or_else(|| panic!("{owner:?} is not in the sound design"));
    let last = tree.children(object).last().expect("the object holds something");
    let end = tree.span(last).end as usize;
    spliced(text, end, end, &format!(", \"{key}\": {}", mistake.draft))
}

fn spliced(text: &str, start: usize, end: usize, with: &str) -> String {
    format!("{}{with}{}", &text[..start], &text[end..])
}

fn tree(text: &str) -> Tree {
    haulout_document::read(text.as_bytes(), &Limits::default())
        .accepted()
        .unwrap_or_else(|problems| panic!("{problems:#?}"))
}
