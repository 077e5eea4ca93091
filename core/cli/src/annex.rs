//! House annexes: folders of scripts that become rules beside the built-in ones.

use std::path::{Path, PathBuf};

use haulout_engine::{Annex, Rule, Ruleset};
use haulout_place::LineIndex;

use crate::files::{File, digest, read};

/// The built-in rules and those of some annexes, in the order given.
///
/// # Errors
/// Every fault of every annex: a review that left out a house's rule would look better than it is.
pub(crate) fn ruleset(folders: &[PathBuf]) -> Result<Ruleset, Vec<String>> {
    let mut ruleset = Ruleset::new(haulout_rules::built_in());
    let mut faults = Vec::new();
    for folder in folders {
        let scripts = scripts(folder, &mut faults);
        let position = ruleset.annexes.len() as u16;
        ruleset.annexes.push(card(folder, &scripts));
        for script in &scripts {
            match rule(script) {
                Ok(rule) if ruleset.position(&rule.card.id).is_some() => faults.push(taken(script, &rule)),
                Ok(rule) => ruleset.rules.push(Rule { annex: Some(position), ..rule }),
                Err(more) => faults.extend(more),
            }
        }
    }
    if faults.is_empty() { Ok(ruleset) } else { Err(faults) }
}

fn taken(script: &File, rule: &Rule) -> String {
    format!(
        "{}: there is a rule \"{}\" already; a rule of a house needs a name of its own",
        script.name, rule.card.id
    )
}

/// The annex is named after its folder; its digest changes with every byte of its scripts.
fn card(folder: &Path, scripts: &[File]) -> Annex {
    let name = folder.file_name().unwrap_or(folder.as_os_str()).to_string_lossy().into_owned();
    let bytes: Vec<u8> = scripts.iter().filter_map(|s| s.bytes.as_deref().ok()).flatten().copied().collect();
    Annex { name, version: String::new(), digest: digest(&bytes) }
}

/// The scripts of a folder, sorted by name.
fn scripts(folder: &Path, faults: &mut Vec<String>) -> Vec<File> {
    let entries = match std::fs::read_dir(folder) {
        Ok(entries) => entries,
        Err(error) => {
            faults.push(format!("{}: the annex cannot be opened as a folder: {error}", folder.display()));
            return Vec::new();
        }
    };
    let mut paths: Vec<PathBuf> = entries.filter_map(Result::ok).map(|entry| entry.path()).collect();
    paths.retain(|path| path.extension().is_some_and(|e| e == "rhai"));
    paths.sort();
    if paths.is_empty() {
        faults.push(format!("{}: the annex holds no rule, which would be a .rhai file", folder.display()));
    }
    paths.iter().map(|path| read(path)).collect()
}

fn rule(script: &File) -> Result<Rule, Vec<String>> {
    let alone = |why: String| vec![format!("{}: {why}", script.name)];
    let bytes = script.bytes.as_deref().map_err(|why| alone(why.clone()))?;
    let text = std::str::from_utf8(bytes).map_err(|error| {
        alone(format!("byte {} does not belong to any character in UTF-8", error.valid_up_to()))
    })?;
    let name =
        Path::new(&script.name).file_name().map_or_else(String::new, |n| n.to_string_lossy().into_owned());
    haulout_script::compile(&name, text, haulout_figures::CATALOGUE).map_err(|faults| {
        let lines = LineIndex::new(text);
        let told = |fault: haulout_script::ScriptFault| {
            let at = lines.position(text, fault.span.start);
            format!("{}, line {}, column {}: {}", script.name, at.line, at.column, fault.message)
        };
        faults.into_iter().map(told).collect()
    })
}
