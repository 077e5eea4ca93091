//! What a rehearsal design of an annex must give, as written in the file beside it.

use haulout_document::Problem;
use haulout_engine::{Example, Expected, words};
use haulout_place::Span;

use crate::join::{Trouble, readable};
use crate::keys::OUTCOMES;
use crate::page::Page;

/// One answer that a rehearsal design must give.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Marked {
    /// Id of the rule.
    pub rule: String,
    /// Subject, outcome and place; there is no design in it.
    pub example: Example,
    /// Where the outcome stands in the text.
    pub span: Span,
}

/// Reads such a file.
///
/// # Errors
/// Everything that is wrong with it.
pub fn expected(file: &str, bytes: &Result<Vec<u8>, String>) -> Result<Vec<Marked>, Trouble> {
    let wrong =
        |text: Option<String>, problems: Vec<Problem>| Trouble { file: file.to_owned(), text, problems };
    let bytes =
        bytes.as_ref().map_err(|why| wrong(None, vec![Problem::new(Span::default(), why.clone())]))?;
    let mut page = Page::of(bytes, haulout_schemas::EXPECTED)
        .map_err(|problems| wrong(Some(readable(bytes)), problems))?;
    let entries = page.list(page.tree.root(), "answers");
    let marked: Vec<Marked> = entries.into_iter().filter_map(|entry| one(&page, entry)).collect();
    for (at, mark) in marked.iter().enumerate() {
        let same = |other: &Marked| other.rule == mark.rule && other.example.subject == mark.example.subject;
        if marked[..at].iter().any(same) {
            let message = format!("what {} says about {} is marked twice", mark.rule, mark.example.subject);
            page.problems.push(Problem::new(mark.span, message));
        }
    }
    page.problems.sort_by_key(|p| p.span);
    if page.problems.is_empty() {
        Ok(marked)
    } else {
        Err(wrong(Some(page.tree.text().to_owned()), page.problems))
    }
}

fn one(page: &Page, entry: haulout_document::Node) -> Option<Marked> {
    let (word, at) = page.words(entry, "expected")?;
    let outcomes = [Expected::Met, Expected::Short, Expected::NotAssessed, Expected::DoesNotApply];
    let position = OUTCOMES.iter().position(|known| *known == word)?;
    Some(Marked {
        rule: page.words(entry, "rule")?.0,
        example: Example {
            shows: words(""),
            design: words(""),
            subject: page.words(entry, "subject")?.0.into(),
            expected: outcomes[position],
            place: page.text(entry, "place").into(),
        },
        span: page.tree.span(at),
    })
}
