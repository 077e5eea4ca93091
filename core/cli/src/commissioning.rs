//! The job `commissioning`: what is tried and measured before the first animal comes.

use std::path::{Path, PathBuf};

use haulout_engine::{Options, review};
use haulout_report::page::problem_page;
use haulout_report::{
    annexed_page, commissioning, commissioning_json, commissioning_markdown, commissioning_page, tell,
};

use crate::annex;
use crate::args::ReviewForm;
use crate::document::Document;
use crate::files::{read, today};
use crate::lookalike::looks_like;
use crate::run::{Outcome, layout, printed, schema, with_annexes};

/// Makes the list of a design.
pub(crate) fn commission(path: &Path, annexes: &[PathBuf], form: ReviewForm) -> Outcome {
    let ruleset = match annex::ruleset(annexes) {
        Ok(ruleset) => ruleset,
        Err(faults) => return Outcome::impossible(faults.join("\n")),
    };
    let file = read(path);
    let bytes = match file.bytes.and_then(|bytes| looks_like(&bytes).map_or(Ok(bytes), Err)) {
        Ok(bytes) => bytes,
        Err(why) => return Outcome::impossible(format!("{}: {why}", file.name)),
    };
    let document = Document::of(&bytes, &schema());
    let Some((tree, design)) = document.sound() else {
        let page = problem_page(&file.name, document.written(), &document.problems, layout());
        return Outcome::impossible(page.trim_end());
    };
    // The list asks what rests on what, never what is accepted until when: the day only feeds the variances.
    let review = review(design, &ruleset, &[], &Options { stage: None, on: today() });
    let answers = tell(&review, tree);
    let list = commissioning((&review.book, tree), &ruleset, &answers, haulout_rules::TRIALS);
    Outcome::of(match form {
        ReviewForm::Json => printed(&with_annexes(commissioning_json(&list), &ruleset)),
        ReviewForm::Markdown => commissioning_markdown(&list),
        ReviewForm::Terminal => {
            annexed_page(&ruleset, layout().width) + commissioning_page(&list, layout().width).as_str()
        }
    })
}
