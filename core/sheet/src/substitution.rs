//! What a book is opened with in the place of stated values.

/// Another value at one place of the document: the *what if*.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Substitution {
    /// The node of the value.
    pub node: u32,
    /// Which of its numbers, as [`haulout_model::Origin::part`] counts them.
    pub part: u8,
    /// The value in SI; an option of a choice by its number, yes as 1.
    pub value: f64,
}
