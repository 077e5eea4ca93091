//! A problem of a document: a sentence, the place it speaks of, and any second place it names.

use haulout_place::Span;

/// Something that keeps a text from being accepted, said in a sentence.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// A plain sentence: what was typed, what is expected, a way out.
    pub message: String,
    /// The bytes it speaks of.
    pub span: Span,
    /// Further places with a few words each, such as the first of two equal keys.
    pub also: Vec<(Span, String)>,
}

impl Problem {
    /// A problem with one place.
    pub fn new(span: Span, message: impl Into<String>) -> Self {
        Problem { message: message.into(), span, also: Vec::new() }
    }

    /// The same problem, naming a second place.
    #[must_use]
    pub fn with(mut self, span: Span, label: impl Into<String>) -> Self {
        self.also.push((span, label.into()));
        self
    }
}
