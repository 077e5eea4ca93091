//! What is wrong with a script, at its place in the text.

use std::fmt;

use haulout_place::Span;

/// Something that keeps a script from being used, said in a sentence.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ScriptFault {
    /// A plain sentence: what was written, what is expected, a way out.
    pub message: String,
    /// The bytes of the script it speaks of.
    pub span: Span,
}

impl ScriptFault {
    /// A fault at a place.
    pub fn new(span: Span, message: impl Into<String>) -> Self {
        ScriptFault { message: message.into(), span }
    }
}

impl fmt::Display for ScriptFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.message)
    }
}

impl std::error::Error for ScriptFault {}

/// The known name nearest to a wrong one, ready to be put behind a sentence; empty when there is none at all.
pub fn nearest<'n>(wrong: &str, known: impl Iterator<Item = &'n str>) -> String {
    known
        .min_by_key(|name| strsim::damerau_levenshtein(wrong, name))
        .map_or_else(String::new, |name| format!("; the nearest there is is \"{name}\""))
}

/// As [`nearest`], but silent when nothing is near: at most every third character may differ.
pub(crate) fn near<'n>(wrong: &str, known: impl Iterator<Item = &'n str>) -> String {
    let allowed = (wrong.chars().count() / 3).max(1);
    nearest(wrong, known.filter(|name| strsim::damerau_levenshtein(wrong, name) <= allowed))
}
