//! A snag: one entry of the list, as miette's protocol carries it from what was found to the page.

use std::fmt;

use miette::{Diagnostic, LabeledSpan, Severity, SourceCode};

use crate::source::Text;

/// One entry: what is wrong, the facts of it, and the place in the text.
pub(crate) struct Snag<'t> {
    /// What is wrong, by how much.
    pub(crate) title: String,
    /// What stands at the right edge of the title line: `short by 0.18 m`.
    pub(crate) by: String,
    /// Rows of a word and its text: has, asks, cure …
    pub(crate) rows: Vec<(&'static str, String)>,
    /// The bytes it is about, and the words for the place.
    pub(crate) place: Option<(usize, usize, String)>,
    /// Whether it is owed.
    pub(crate) owed: bool,
    /// The text it stands in.
    pub(crate) text: Option<Text<'t>>,
}

impl fmt::Debug for Snag<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Snag").field("title", &self.title).finish_non_exhaustive()
    }
}

impl fmt::Display for Snag<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.title)
    }
}

impl std::error::Error for Snag<'_> {}

impl Diagnostic for Snag<'_> {
    fn severity(&self) -> Option<Severity> {
        Some(if self.owed { Severity::Error } else { Severity::Warning })
    }

    fn code<'a>(&'a self) -> Option<Box<dyn fmt::Display + 'a>> {
        (!self.by.is_empty()).then(|| Box::new(&self.by) as Box<dyn fmt::Display>)
    }

    fn help<'a>(&'a self) -> Option<Box<dyn fmt::Display + 'a>> {
        let rows: Vec<String> = self.rows.iter().map(|(word, text)| format!("{word}\t{text}")).collect();
        (!rows.is_empty()).then(|| Box::new(rows.join("\n")) as Box<dyn fmt::Display>)
    }

    fn labels(&self) -> Option<Box<dyn Iterator<Item = LabeledSpan> + '_>> {
        let (start, end, words) = self.place.clone()?;
        Some(Box::new(std::iter::once(LabeledSpan::new(Some(words), start, end - start))))
    }

    fn source_code(&self) -> Option<&dyn SourceCode> {
        self.text.as_ref().map(|text| text as &dyn SourceCode)
    }
}
