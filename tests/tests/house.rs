//! Habits of the house: sizes of files and functions, the first sentence of a file, paths that the guide names.

use std::path::{Path, PathBuf};

use haulout_tests::repository;

/// Files that may be longer than 400 lines, each with its reason.
const LONG_FILES: &[(&str, &str)] = &[];
/// Functions that may be longer than 100 lines, each with its reason.
const LONG_FUNCTIONS: &[(&str, &str)] = &[];

#[allow(clippy::disallowed_methods, reason = "this test reads the sources of the repository")]
fn sources() -> Vec<(PathBuf, String)> {
    let mut open: Vec<PathBuf> =
        ["core", "rules", "schemas", "tests"].iter().map(|d| repository().join(d)).collect();
    let mut found = Vec::new();
    while let Some(folder) = open.pop() {
        for entry in std::fs::read_dir(&folder).expect("the folder is there").filter_map(Result::ok) {
            let path = entry.path();
            if path.is_dir() && !path.ends_with("target") {
                open.push(path);
            } else if path.extension().is_some_and(|e| e == "rs") {
                let text = std::fs::read_to_string(&path).expect("a source is a text");
                found.push((path, text));
            }
        }
    }
    found.sort();
    found
}

fn short(path: &Path) -> String {
    let top = repository();
    path.strip_prefix(&top).unwrap_or(path).display().to_string()
}

#[test]
fn every_file_opens_with_a_sentence_and_keeps_its_size() {
    for (path, text) in sources() {
        let name = short(&path);
        assert!(text.starts_with("//! "), "{name} does not open with a sentence about itself");
        let lines = text.lines().count();
        let excused = LONG_FILES.iter().any(|(file, _)| *file == name);
        assert!(lines <= 400 || excused, "{name} has {lines} lines");
    }
}

#[test]
fn functions_stay_small() {
    let mut lengths = Vec::new();
    for (path, text) in sources() {
        for (name, length) in functions(&text) {
            let at = format!("{}: {name}", short(&path));
            let excused = LONG_FUNCTIONS.iter().any(|(function, _)| at.ends_with(function));
            assert!(length <= 100 || excused, "{at} has {length} lines");
            lengths.push(length);
        }
    }
    lengths.sort_unstable();
    let at = |share: f64| lengths[(lengths.len() as f64 * share) as usize];
    assert!(lengths.len() > 300, "only {} functions were found", lengths.len());
    assert!(at(0.9) <= 40, "one function in ten has more than {} lines", at(0.9));
}

/// Name and length of every function, by the indentation rustfmt gives it.
fn functions(text: &str) -> Vec<(String, usize)> {
    let lines: Vec<&str> = text.lines().collect();
    let mut found = Vec::new();
    for (start, line) in lines.iter().enumerate() {
        let bare = line.trim_start();
        let indent = line.len() - bare.len();
        let Some(name) = declared(bare) else { continue };
        let closing = format!("{}}}", " ".repeat(indent));
        let one_line = bare.ends_with('}') || bare.ends_with(';');
        let end = if one_line {
            start
        } else {
            start + lines[start..].iter().position(|l| *l == closing).unwrap_or(0)
        };
        found.push((name, end - start + 1));
    }
    found
}

fn declared(line: &str) -> Option<String> {
    let words = ["pub", "pub(crate)", "pub(super)", "const", "async"];
    let mut rest = line;
    while let Some(word) = words.iter().find(|w| rest.strip_prefix(**w).is_some_and(|r| r.starts_with(' '))) {
        rest = rest[word.len()..].trim_start();
    }
    let name = rest.strip_prefix("fn ")?;
    Some(name.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect())
}

#[test]
fn no_number_leaves_the_sheet_before_the_engine() {
    for (path, text) in sources() {
        let name = short(&path);
        let decides = name.starts_with("rules/") || name.starts_with("core/figures/");
        assert!(!decides || !text.contains(".record("), "{name} looks at a number of the sheet");
    }
}

#[test]
#[allow(clippy::disallowed_methods, reason = "this test reads the guide of the repository")]
fn every_path_the_guide_names_is_there() {
    let guide = std::fs::read_to_string(repository().join("DEVELOPERS.md")).expect("the guide is there");
    let named = guide
        .split('`')
        .skip(1)
        .step_by(2)
        .filter(|w| w.contains('/') && !w.contains(' ') && !w.contains('<'));
    let mut checked = 0;
    for path in named {
        assert!(repository().join(path).exists(), "DEVELOPERS.md names {path}, which is not there");
        checked += 1;
    }
    assert!(checked >= 10, "the guide names only {checked} paths");
}
