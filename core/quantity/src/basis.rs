//! How well a value is founded: the four steps of basis, and the words of its source.

use std::fmt;

/// How well a value is founded, strong to weak: `max` of several is the weakest.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Basis {
    /// Read in its own text.
    Published,
    /// Read where another document quotes it; the source names both.
    Reported,
    /// Usual in the trade, without a source.
    CommonPractice,
    /// From memory.
    Recalled,
}

impl Basis {
    /// All four, strong to weak.
    pub const ALL: [Basis; 4] = [Basis::Published, Basis::Reported, Basis::CommonPractice, Basis::Recalled];

    /// The word for it on a page: "published", "reported", "common practice", "recalled".
    pub const fn name(self) -> &'static str {
        match self {
            Basis::Published => "published",
            Basis::Reported => "reported",
            Basis::CommonPractice => "common practice",
            Basis::Recalled => "recalled",
        }
    }
}

impl fmt::Display for Basis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

/// Where a value comes from, in words a reader can look up: document, table, edition, or library, version and call.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Source {
    /// The words.
    pub text: &'static str,
}

#[cfg(test)]
mod tests {
    use super::Basis;

    #[test]
    fn the_greatest_basis_is_the_weakest() {
        assert_eq!(Basis::Published.max(Basis::Recalled), Basis::Recalled);
        assert_eq!(Basis::Reported.max(Basis::Published), Basis::Reported);
        assert!(Basis::ALL.is_sorted());
        assert_eq!(Basis::ALL.map(Basis::name), ["published", "reported", "common practice", "recalled"]);
    }
}
