//! JSON Pointer (RFC 6901): a place in a document by names and positions.

use std::fmt;

/// A pointer in its string form, already escaped: `/pools/0/levels/water`. The empty pointer is the whole document.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Pointer(String);

impl Pointer {
    /// The whole document.
    pub const fn root() -> Self {
        Pointer(String::new())
    }

    /// Takes over a string that is a pointer: empty or beginning with `/`, with `~` followed by `0` or `1` only.
    ///
    /// # Errors
    /// Gives the string back when it is none.
    pub fn parse(text: &str) -> Result<Self, String> {
        let escapes_hold = text.split('~').skip(1).all(|rest| rest.starts_with(['0', '1']));
        if (text.is_empty() || text.starts_with('/')) && escapes_hold {
            Ok(Pointer(text.to_owned()))
        } else {
            Err(text.to_owned())
        }
    }

    /// The member `key` below this place; `~` and `/` in the key are escaped (RFC 6901 section 3).
    pub fn key(mut self, key: &str) -> Self {
        self.0.push('/');
        for c in key.chars() {
            match c {
                '~' => self.0.push_str("~0"),
                '/' => self.0.push_str("~1"),
                other => self.0.push(other),
            }
        }
        self
    }

    /// The element `at` (from 0) below this place.
    pub fn at(mut self, at: usize) -> Self {
        use fmt::Write;
        // Writing to a String cannot fail.
        let _ = write!(self.0, "/{at}");
        self
    }

    /// The string form.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// The reference tokens, unescaped, in order.
    pub fn tokens(&self) -> impl Iterator<Item = String> + '_ {
        self.0.split('/').skip(1).map(|t| t.replace("~1", "/").replace("~0", "~"))
    }

    /// Whether `inner` is this place or lies below it.
    pub fn contains(&self, inner: &Pointer) -> bool {
        inner.0 == self.0
            || (inner.0.starts_with(&self.0) && inner.0.as_bytes().get(self.0.len()) == Some(&b'/'))
    }
}

impl fmt::Display for Pointer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::Pointer;

    /// The examples of RFC 6901 section 5 that need escaping, built and taken apart again.
    #[test]
    fn escapes_as_the_rfc_prints_them() {
        for (keys, printed) in [
            (vec!["a/b"], "/a~1b"),
            (vec!["m~n"], "/m~0n"),
            (vec![""], "/"),
            (vec![" "], "/ "),
            (vec!["c%d", "k\"l"], "/c%d/k\"l"),
        ] {
            let built = keys.iter().fold(Pointer::root(), |p, k| p.key(k));
            assert_eq!(built.as_str(), printed);
            assert_eq!(built.tokens().collect::<Vec<_>>(), keys);
        }
    }

    #[test]
    fn containment_stops_at_whole_tokens() {
        let pool = Pointer::root().key("pools").at(1);
        assert!(pool.contains(&pool.clone().key("levels")));
        assert!(!pool.contains(&Pointer::root().key("pools").at(10)));
        assert!(Pointer::root().contains(&pool));
    }

    #[test]
    fn a_string_that_is_no_pointer_is_given_back() {
        assert_eq!(Pointer::parse("pools"), Err("pools".to_owned()));
        assert_eq!(Pointer::parse("/a~2"), Err("/a~2".to_owned()));
        assert_eq!(Pointer::parse("/a~1b").map(|p| p.to_string()), Ok("/a~1b".to_owned()));
    }
}
