//! The bundled annexes: their folders, the ruleset they make, and the designs they are rehearsed on.

use std::path::PathBuf;

use haulout_annex::{Folder, Source, join};
use haulout_engine::Ruleset;

use crate::repository;

/// The files of one folder, as the binary would read them.
#[allow(clippy::disallowed_methods, reason = "tests read the annexes of the repository")]
pub fn folder(path: &std::path::Path) -> Folder {
    let entries = std::fs::read_dir(path).expect("an annex is a folder");
    let files = entries.filter_map(|e| e.ok().map(|e| e.path())).filter(|p| p.is_file());
    let mut files: Vec<Source> = files
        .map(|p| Source {
            name: p.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default(),
            bytes: std::fs::read(&p).map_err(|e| e.to_string()),
        })
        .collect();
    files.sort_by(|a, b| a.name.cmp(&b.name));
    Folder { path: path.to_string_lossy().into_owned(), files }
}

/// Where the bundled annexes lie, by name.
#[allow(clippy::disallowed_methods, reason = "tests read the annexes of the repository")]
pub fn paths() -> Vec<PathBuf> {
    let entries = std::fs::read_dir(repository().join("rules/annexes")).expect("there are annexes");
    // Pages for people lie beside them.
    let mut paths: Vec<PathBuf> =
        entries.filter_map(|e| e.ok().map(|e| e.path())).filter(|p| p.is_dir()).collect();
    paths.sort();
    paths
}

/// The bundled annexes.
pub fn annexes() -> Vec<Folder> {
    paths().iter().map(|path| folder(path)).collect()
}

/// The built-in rules with those of all bundled annexes.
pub fn with_built_in() -> Ruleset {
    match join(haulout_rules::built_in(), &annexes(), haulout_figures::CATALOGUE) {
        Ok(ruleset) => ruleset,
        Err(troubles) => unreachable!("the bundled annexes are sound: {troubles:#?}"),
    }
}

/// The scripts of the bundled annexes alone.
pub fn scripts() -> Ruleset {
    match join(Vec::new(), &annexes(), haulout_figures::CATALOGUE) {
        Ok(ruleset) => ruleset,
        Err(troubles) => unreachable!("the bundled annexes need no built-in rule: {troubles:#?}"),
    }
}

/// The designs the bundled annexes are rehearsed on: name and text.
#[allow(clippy::disallowed_methods, reason = "tests read the annexes of the repository")]
pub fn designs() -> Vec<(String, String)> {
    let folders = paths().into_iter().map(|path| path.join("rehearsal"));
    let mut files: Vec<PathBuf> = folders
        .filter_map(|folder| std::fs::read_dir(folder).ok())
        .flat_map(|entries| entries.filter_map(|e| e.ok().map(|e| e.path())))
        .filter(|path| path.extension().is_some_and(|e| e == "json"))
        .filter(|path| !path.to_string_lossy().ends_with(haulout_annex::EXPECTED_ENDING))
        .collect();
    files.sort();
    let name =
        |path: &PathBuf| path.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
    files
        .iter()
        .map(|path| (name(path), std::fs::read_to_string(path).expect("a rehearsal design is a text")))
        .collect()
}

/// Every design the scripts of the bundled annexes are tried on: the example designs, the rehearsal designs, and the
/// marked examples of the scripts themselves.
pub fn trials() -> Vec<(String, String)> {
    let marked = scripts().rules.into_iter().flat_map(|rule| {
        let id = rule.card.id.clone();
        rule.examples.into_iter().map(move |e| (format!("{id}, {}", e.shows), e.design.to_string()))
    });
    crate::examples().into_iter().chain(designs()).chain(marked).collect()
}
