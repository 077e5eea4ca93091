//! Authorities that an annex adds to the table.

use haulout_document::Node;
use haulout_engine::Ruleset;
use haulout_register::{Authority, Matter};

use crate::page::{Page, leaked};

/// The matter of a word.
pub(crate) fn matter(word: &str) -> Option<Matter> {
    [Matter::Welfare, Matter::Electrical, Matter::Guards].into_iter().find(|m| m.name() == word)
}

/// Adds every authority the card lists.
pub(crate) fn authorities(page: &mut Page, ruleset: &mut Ruleset) {
    for entry in page.list(page.tree.root(), "authorities") {
        let Some(authority) = authority(page, entry) else { continue };
        let register = ruleset.limits.register_mut();
        if register.position(authority.matter, authority.id).is_some() {
            let of = authority.matter.name();
            let message = format!("there is an authority \"{}\" for {of} already", authority.id);
            page.tell(page.member(entry, "id").unwrap_or(entry), message);
        } else {
            register.add_authority(authority);
        }
    }
}

fn authority(page: &Page, entry: Node) -> Option<Authority> {
    let words = |key: &str| page.words(entry, key).map(|(words, _)| leaked(&words));
    let year = page.member(entry, "year").and_then(|at| page.tree.number(at))?;
    Some(Authority {
        id: words("id")?,
        matter: matter(words("matter")?)?,
        title: words("title")?,
        edition: words("edition")?,
        year: year as u16,
        scope: words("scope")?,
    })
}
