//! The job `begin annex`: a folder with a card and one rule that can be rehearsed at once.

use std::io::Write;
use std::path::Path;

use haulout_annex::CARD;

use crate::run::Outcome;

/// The rule that is written first: short, complete, and of some use as it is.
const RULE: &str = include_str!("first_annex/water-to-wade-in.rhai");
const RULE_FILE: &str = "water-to-wade-in.rhai";

/// Writes it into a folder that is new or empty.
pub(crate) fn begin_annex(folder: &Path) -> Outcome {
    let name = folder.display();
    let taken =
        std::fs::read_dir(folder).is_ok_and(|mut entries| entries.next().is_some()) || folder.is_file();
    if taken {
        return Outcome::impossible(format!("{name} is there already and not empty; choose another name"));
    }
    let card = card(folder);
    let written = std::fs::create_dir_all(folder)
        .and_then(|()| new_file(&folder.join(CARD), &card))
        .and_then(|()| new_file(&folder.join(RULE_FILE), RULE));
    match written {
        Ok(()) => Outcome::of(format!(
            "{name} is written: its card {CARD} and one rule, {RULE_FILE}. Put your own name on the card.\n\
haulout rehearse {name} tries the rule on its examples; haulout review pond.json --annex {name} asks for it.\n"
        )),
        Err(error) => Outcome::impossible(format!("{name}: it cannot be written: {error}")),
    }
}

/// What came into being meanwhile is not written over.
fn new_file(path: &Path, text: &str) -> std::io::Result<()> {
    let mut file = std::fs::OpenOptions::new().write(true).create_new(true).open(path)?;
    file.write_all(text.as_bytes())
}

/// The card, named after the folder.
fn card(folder: &Path) -> String {
    let last = folder.file_name().map(|n| n.to_string_lossy().to_lowercase()).unwrap_or_default();
    let plain: String = last.chars().map(|c| if c.is_ascii_alphanumeric() { c } else { '-' }).collect();
    let plain = plain.trim_matches(|c: char| !c.is_ascii_lowercase());
    let name = if plain.is_empty() { "house" } else { plain };
    format!(
        "{{\n  \"name\": \"{name}\",\n  \"version\": \"0.1.0\",\n  \"licence\": \"CC0-1.0\",\n  \"authors\": [\"to be named\"]\n}}\n"
    )
}

#[cfg(test)]
mod tests {
    use std::path::Path;

    use super::card;

    #[test]
    fn a_card_is_named_after_its_folder_in_plain_letters() {
        for (folder, name) in
            [("reed", "reed"), ("a/Our House 2", "our-house"), ("..", "house"), ("7", "house")]
        {
            assert!(card(Path::new(folder)).contains(&format!("\"name\": \"{name}\"")), "{folder}");
        }
    }
}
