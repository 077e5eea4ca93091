//! A specification: which designs, held to what, at which stage, with which annexes.

use haulout_document::{Kind, Node, Problem};
use haulout_engine::Specification;
use haulout_model::Stage;
use haulout_place::Span;
use haulout_quantity::{Dimension, Parts, read, read_difference};

use crate::authority::matter;
use crate::digest;
use crate::join::{Trouble, readable};
use crate::keys::{MATTERS, MEASURES};
use crate::page::Page;

/// A specification, read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Specified {
    /// What decides how designs are judged.
    pub by: Specification,
    /// Files and folders of designs, as written: from the folder of the specification on.
    pub designs: Vec<String>,
    /// Folders of annexes, likewise.
    pub annexes: Vec<String>,
}

/// Reads a specification.
///
/// # Errors
/// Everything that is wrong with it.
pub fn specification(file: &str, bytes: &Result<Vec<u8>, String>) -> Result<Specified, Trouble> {
    let wrong =
        |text: Option<String>, problems: Vec<Problem>| Trouble { file: file.to_owned(), text, problems };
    let bytes =
        bytes.as_ref().map_err(|why| wrong(None, vec![Problem::new(Span::default(), why.clone())]))?;
    let mut page = Page::of(bytes, haulout_schemas::SPECIFICATION)
        .map_err(|problems| wrong(Some(readable(bytes)), problems))?;
    let root = page.tree.root();
    let by = Specification {
        file: file.to_owned(),
        digest: digest(bytes),
        title: page.text(root, "title"),
        stage: Stage::of(&page.text(root, "stage")),
        held_to: held_to(&page, root),
        plus_minus: plus_minus(&mut page, root),
    };
    let (designs, annexes) = (page.strings(root, "designs"), page.strings(root, "annexes"));
    page.problems.sort_by_key(|p| p.span);
    if page.problems.is_empty() {
        Ok(Specified { by, designs, annexes })
    } else {
        Err(wrong(Some(page.tree.text().to_owned()), page.problems))
    }
}

/// The matters it speaks of; the word "none" is an empty list.
fn held_to(page: &Page, root: Node) -> Vec<(haulout_register::Matter, Vec<String>)> {
    let Some(held) = page.member(root, "held-to") else { return Vec::new() };
    let spoken = MATTERS.iter().filter(|word| {
        page.member(held, word).is_some_and(|at| matches!(page.tree.kind(at), Kind::Array | Kind::String))
    });
    spoken.filter_map(|word| Some((matter(word)?, page.strings(held, word)))).collect()
}

/// Read to be sure that they are quantities, kept as they are written.
fn plus_minus(page: &mut Page, root: Node) -> Vec<(String, String)> {
    let mut found = Vec::new();
    for (name, at) in page.members(root, "plus-minus") {
        let Some((_, dimension)) = MEASURES.iter().find(|(known, _)| *known == name) else { continue };
        let Some(text) = page.tree.string(at).map(|t| t.into_owned()) else { continue };
        let bare = text.trim_start_matches(['±', ' ']);
        let of_heat = *dimension == Dimension::TEMPERATURE;
        let stated = if of_heat { read_difference(bare) } else { read(bare, *dimension) };
        match stated {
            Ok(stated) if matches!(stated.parts, Parts::One(value) if value >= 0.0) => {
                found.push((name, format!("± {bare}")));
            }
            Ok(_) => {
                page.tell(at, "a plus or minus is one number, and not less than nothing, such as \"5 mm\"")
            }
            Err(slip) => page.tell(at, slip.message),
        }
    }
    found
}
