//! The option `--specification`: which designs and annexes it names, seen from where it lies.

use std::path::{Path, PathBuf};

use haulout_annex::specification;
use haulout_engine::{Ruleset, Specification};

use crate::annex;
use crate::files::read;

/// What a review is asked for by the command line and a specification together.
#[derive(Default)]
pub(crate) struct Asked {
    /// Files and folders of designs: those of the command line, else those of the specification.
    pub(crate) paths: Vec<PathBuf>,
    /// Annexes: those of the specification, then those of the command line.
    annexes: Vec<PathBuf>,
    by: Option<Specification>,
}

impl Asked {
    /// Joins the two.
    ///
    /// # Errors
    /// A page of everything that is wrong with the specification, or a sentence when no design is named.
    pub(crate) fn of(paths: &[PathBuf], annexes: &[PathBuf], file: Option<&Path>) -> Result<Self, String> {
        let Some(file) = file else {
            return Ok(Asked { paths: paths.to_vec(), annexes: annexes.to_vec(), by: None });
        };
        let source = read(file);
        let found = specification(&source.name, &source.bytes).map_err(|trouble| annex::told(&trouble))?;
        let beside = |names: &[String]| names.iter().map(|name| seen_from(file, name)).collect::<Vec<_>>();
        let paths = if paths.is_empty() { beside(&found.designs) } else { paths.to_vec() };
        if paths.is_empty() {
            let name = source.name;
            return Err(format!("{name}: it names no \"designs\", and neither does the command line"));
        }
        let annexes = beside(&found.annexes).into_iter().chain(annexes.iter().cloned()).collect();
        Ok(Asked { paths, annexes, by: Some(found.by) })
    }

    /// The rules to hold the designs to.
    ///
    /// # Errors
    /// A page for every file of an annex that something is wrong with.
    pub(crate) fn ruleset(&self) -> Result<Ruleset, Vec<String>> {
        annex::ruleset(&self.annexes).map(|ruleset| Ruleset { specification: self.by.clone(), ..ruleset })
    }
}

/// A path of a specification, seen from where the program runs.
fn seen_from(file: &Path, name: &str) -> PathBuf {
    match file.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder.join(name),
        _ => PathBuf::from(name),
    }
}
