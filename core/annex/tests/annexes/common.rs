//! Annexes made of a few words, and reviews with them.

use haulout_annex::{Folder, Source, Trouble, join};
use haulout_document::{Limits, read};
use haulout_engine::{Answer, Options, Review, Ruleset, review};
use haulout_model::Design;

/// A card with some members beside those that have to be there.
pub(crate) fn card(name: &str, members: &str) -> String {
    let comma = if members.is_empty() { "" } else { ",\n  " };
    format!(
        "{{\n  \"name\": \"{name}\", \"version\": \"1.0.0\", \"licence\": \"CC0-1.0\", \"authors\": [\"the keepers\"]{comma}{members}\n}}"
    )
}

pub(crate) fn file(name: &str, text: &str) -> Source {
    Source { name: name.to_owned(), bytes: Ok(text.as_bytes().to_vec()) }
}

pub(crate) fn folder(path: &str, files: Vec<Source>) -> Folder {
    Folder { path: path.to_owned(), files }
}

/// An annex of a card alone.
pub(crate) fn annex(name: &str, members: &str) -> Folder {
    folder(name, vec![file("annex.json", &card(name, members))])
}

pub(crate) fn joined(folders: &[Folder]) -> Result<Ruleset, Vec<Trouble>> {
    join(haulout_rules::built_in(), folders, haulout_figures::CATALOGUE)
}

/// Every message with the words it points at.
pub(crate) fn told(troubles: &[Trouble]) -> Vec<(String, String)> {
    let one = |t: &Trouble| {
        let text = t.text.clone().unwrap_or_default();
        t.problems.iter().map(move |p| (p.message.clone(), p.span.of(&text).to_owned())).collect::<Vec<_>>()
    };
    troubles.iter().flat_map(one).collect()
}

pub(crate) fn design(text: &str) -> Design {
    let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("the design of the test is JSON");
    let (design, problems) = haulout_model::read(&tree);
    assert!(problems.is_empty(), "{problems:#?}");
    design
}

pub(crate) fn reviewed<'d>(design: &'d Design, ruleset: &'d Ruleset) -> Review<'d> {
    review(design, ruleset, &[], &Options { stage: None, on: "2026-11-25".to_owned() })
}

/// The first answer of a rule.
pub(crate) fn answer<'r>(review: &'r Review<'_>, rule: &str) -> &'r Answer {
    let of_rule = |a: &&Answer| review.ruleset.rules[a.rule].card.id == rule;
    review.answers.iter().find(of_rule).expect("every rule answers")
}
