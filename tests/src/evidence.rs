//! Generated pages of evidence: each is written again on request and compared otherwise.

pub mod bands;
pub mod moved;
pub mod registered;

use std::fmt::Write;

use crate::repository;

/// Compares a generated page with the one that is committed under `tests/evidence`; with `HAULOUT_WRITE=1` in the
/// environment it is written instead.
///
/// # Errors
/// The first line that differs, and how to write the page again.
#[allow(clippy::disallowed_methods, reason = "generated pages live in the repository")]
pub fn held(name: &str, generated: &str) -> Result<(), String> {
    let path = repository().join("tests/evidence").join(name);
    if std::env::var("HAULOUT_WRITE").is_ok_and(|v| v == "1") {
        return std::fs::write(&path, generated).map_err(|e| format!("{name}: {e}"));
    }
    let committed = std::fs::read_to_string(&path).unwrap_or_default();
    if committed == generated {
        return Ok(());
    }
    let differs = generated.lines().zip(committed.lines()).position(|(new, old)| new != old);
    let at = differs.unwrap_or_else(|| generated.lines().count().min(committed.lines().count()));
    let line = |text: &str| text.lines().nth(at).unwrap_or("(no more lines)").to_owned();
    Err(format!(
        "tests/evidence/{name}, line {}:\n  committed {}\n  now       {}\nHAULOUT_WRITE=1 cargo test -p haulout-tests writes it again",
        at + 1,
        line(&committed),
        line(generated)
    ))
}

/// A table of a page: its heads, then its rows, bars and line ends taken out of the cells.
pub fn table(heads: &[&str], rows: impl IntoIterator<Item = Vec<String>>) -> String {
    let mut text = format!("| {} |\n|{}\n", heads.join(" | "), "---|".repeat(heads.len()));
    for row in rows {
        let cells: Vec<String> = row.iter().map(|c| c.replace('|', "/").replace('\n', " ")).collect();
        // Writing to a String cannot fail.
        let _ = writeln!(text, "| {} |", cells.join(" | "));
    }
    text
}
