//! House annexes: folders read from the disk, joined to the built-in rules; what is wrong with them as pages.

use std::path::{Path, PathBuf};

use haulout_annex::{CARD, Folder, Source, Trouble, join};
use haulout_engine::Ruleset;
use haulout_report::Written;
use haulout_report::page::fault_page;

use crate::files::read;
use crate::run::layout;

/// The built-in rules and those of some annexes, in the order given, with everything their cards change.
///
/// # Errors
/// A page for every file that something is wrong with: a review that left out a house's rule would look better than it is.
pub(crate) fn ruleset(folders: &[PathBuf]) -> Result<Ruleset, Vec<String>> {
    let mut faults = Vec::new();
    let folders: Vec<Folder> = folders.iter().filter_map(|path| folder(path, &mut faults)).collect();
    match join(haulout_rules::built_in(), &folders, haulout_figures::CATALOGUE) {
        Ok(ruleset) if faults.is_empty() => return Ok(ruleset),
        Ok(_) => {}
        Err(troubles) => faults.extend(troubles.iter().map(told)),
    }
    Err(faults)
}

/// What is wrong with one file, with the lines of its text.
pub(crate) fn told(trouble: &Trouble) -> String {
    match &trouble.text {
        Some(text) => {
            let page = fault_page(&trouble.file, Written::Part(text), &trouble.problems, layout());
            page.trim_end().to_owned() + "\n"
        }
        None => {
            let why: Vec<String> =
                trouble.problems.iter().map(|p| format!("{}: {}", trouble.file, p.message)).collect();
            why.join("\n")
        }
    }
}

/// The card and the scripts of a folder.
fn folder(path: &Path, faults: &mut Vec<String>) -> Option<Folder> {
    let entries = match std::fs::read_dir(path) {
        Ok(entries) => entries,
        Err(error) => {
            faults.push(format!("{}: the annex cannot be opened as a folder: {error}", path.display()));
            return None;
        }
    };
    let belongs = |name: &str| name == CARD || name.ends_with(".rhai");
    let mut files = Vec::new();
    for entry in entries {
        match entry {
            Ok(entry) => {
                let name = entry.file_name().to_string_lossy().into_owned();
                if belongs(&name) {
                    files.push(Source { name, bytes: read(&entry.path()).bytes });
                }
            }
            // What cannot be listed may be a rule.
            Err(error) => faults.push(format!("{}: the annex cannot be read: {error}", path.display())),
        }
    }
    Some(Folder { path: path.to_string_lossy().into_owned(), files })
}
