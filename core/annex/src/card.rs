//! The head of the card of an annex: name, version, licence, authors.

use haulout_document::Problem;
use haulout_engine::{Annex, Ruleset};
use haulout_place::Span;

use crate::CARD;
use crate::join::Folder;
use crate::page::Page;

/// What to say of a folder without a card.
pub(crate) fn missing(folder: &Folder) -> Problem {
    let message = format!(
        "the annex has no card; write a file {CARD} beside its scripts, at the least \
{{ \"name\": \"{}\", \"version\": \"1.0.0\", \"licence\": \"CC0-1.0\", \"authors\": [\"who wrote it\"] }}; \
haulout schema annex prints what else it may hold",
        folder.name()
    );
    Problem::new(Span::default(), message)
}

/// The annex as its card names it; where there is no sound card, after its folder.
pub(crate) fn annex(folder: &Folder, page: Option<&mut Page>, before: &Ruleset) -> Annex {
    let digest = folder.digest();
    let Some(page) = page else {
        return Annex { name: folder.name().to_owned(), digest, ..Annex::default() };
    };
    let root = page.tree.root();
    let named = page.words(root, "name");
    if let Some((name, at)) = &named
        && before.annexes.iter().any(|a| a.name == *name)
    {
        let message =
            format!("there is an annex \"{name}\" already; two of one name could not be told apart");
        page.tell(*at, message);
    }
    Annex {
        name: named.map_or_else(|| folder.name().to_owned(), |(name, _)| name),
        version: page.text(root, "version"),
        licence: page.text(root, "licence"),
        authors: page.strings(root, "authors"),
        digest,
    }
}
