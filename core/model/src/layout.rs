//! Words of the document that the engine has to understand: the stages of a project.

/// How far a design has got. A rule is owed from its stage on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Stage {
    /// Outlines, species, counts.
    Concept,
    /// Everything that is built is drawn and sized.
    Detailed,
    /// Built: what was declared is measured.
    AsBuilt,
}

impl Stage {
    /// The words the document uses, in order.
    pub const WORDS: &'static [&'static str] = &["concept", "detailed", "as-built"];

    /// The word.
    pub const fn name(self) -> &'static str {
        match self {
            Stage::Concept => "concept",
            Stage::Detailed => "detailed",
            Stage::AsBuilt => "as-built",
        }
    }

    /// The stage of a word.
    pub fn of(word: &str) -> Option<Self> {
        [Stage::Concept, Stage::Detailed, Stage::AsBuilt].into_iter().find(|stage| stage.name() == word)
    }
}
