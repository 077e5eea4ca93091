//! The job `drawing`: the plan of one design as SVG, printed or written to a file.

use std::path::{Path, PathBuf};

use haulout_annex::digest;
use haulout_engine::{Options, Ruleset, review};
use haulout_report::drawing::{Subject, drawing};
use haulout_report::page::problem_page;
use haulout_report::tell;

use crate::annex;
use crate::document::Document;
use crate::files::read;
use crate::run::{Outcome, layout, schema};

/// Draws a design.
pub(crate) fn draw(path: &Path, out: Option<&Path>, annexes: &[PathBuf], options: &Options) -> Outcome {
    let ruleset = match annex::ruleset(annexes) {
        Ok(ruleset) => ruleset,
        Err(faults) => return Outcome::impossible(faults.join("\n")),
    };
    let file = read(path);
    let bytes = match file.bytes {
        Ok(bytes) => bytes,
        Err(why) => return Outcome::impossible(format!("{}: {why}", file.name)),
    };
    match (sheet(&file.name, &bytes, &ruleset, options), out) {
        (Err(page), _) => Outcome::impossible(page),
        (Ok(text), None) => Outcome::of(text),
        (Ok(text), Some(out)) => written(path, out, &text),
    }
}

fn sheet(name: &str, bytes: &[u8], ruleset: &Ruleset, options: &Options) -> Result<String, String> {
    let document = Document::of(bytes, &schema());
    let Some((tree, design)) = document.sound() else {
        let page = problem_page(name, document.written(), &document.problems, layout());
        return Err(page.trim_end().to_owned());
    };
    let review = review(design, ruleset, &[], options);
    let answers = tell(&review, tree);
    Ok(drawing(&Subject {
        file: name,
        digest: &digest(bytes),
        stage: review.stage.name(),
        on: &options.on,
        book: &review.book,
        ruleset,
        answers: &answers,
    }))
}

/// A drawing takes the place of an older one, never that of the design.
fn written(design: &Path, out: &Path, text: &str) -> Outcome {
    let name = out.display();
    let same = |a: &Path, b: &Path| {
        std::fs::canonicalize(a).ok().is_some_and(|a| std::fs::canonicalize(b).ok() == Some(a))
    };
    if same(design, out) {
        return Outcome::impossible(format!("{name}: this is the design; name another file for its drawing"));
    }
    let verb = if out.exists() { "drawn anew" } else { "drawn" };
    match std::fs::write(out, text) {
        Ok(()) => Outcome {
            remarks: format!("{name}: {verb}, {} bytes\n", text.len()),
            ..Outcome::of(String::new())
        },
        Err(error) => Outcome::impossible(format!("{name}: the drawing could not be written: {error}")),
    }
}
