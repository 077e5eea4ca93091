//! What a string or key stands for: its quotes taken off and its escapes resolved (RFC 8259 section 7).

use std::borrow::Cow;

/// The meaning of a string as typed: double-quoted, or (a noted slip) single-quoted or bare.
///
/// A lone surrogate, which the reader refuses, becomes U+FFFD so that the rest can still be looked at.
pub(crate) fn unescaped(typed: &str) -> Cow<'_, str> {
    let inner = match typed.as_bytes().first() {
        Some(b'"' | b'\'') => typed.get(1..typed.len().saturating_sub(1)).unwrap_or(""),
        _ => typed,
    };
    if inner.contains('\\') { Cow::Owned(resolve(inner)) } else { Cow::Borrowed(inner) }
}

fn resolve(inner: &str) -> String {
    let mut out = String::with_capacity(inner.len());
    let mut rest = inner;
    while let Some(slash) = rest.find('\\') {
        out.push_str(&rest[..slash]);
        let (c, length) = escape(&rest[slash..]);
        out.push(c);
        rest = rest.get(slash + length..).unwrap_or("");
    }
    out.push_str(rest);
    out
}

/// The character an escape stands for and how many bytes it takes.
fn escape(text: &str) -> (char, usize) {
    let simple = match text.as_bytes().get(1) {
        Some(b'b') => '\u{8}',
        Some(b'f') => '\u{c}',
        Some(b'n') => '\n',
        Some(b'r') => '\r',
        Some(b't') => '\t',
        Some(b'u') => return by_number(text),
        Some(other) => char::from(*other),
        None => '\u{fffd}',
    };
    (simple, 2)
}

fn by_number(text: &str) -> (char, usize) {
    match (code_unit(text), code_unit(text.get(6..).unwrap_or(""))) {
        (Some(high @ 0xd800..=0xdbff), Some(low @ 0xdc00..=0xdfff)) => {
            let scalar = 0x1_0000 + ((high - 0xd800) << 10) + (low - 0xdc00);
            (char::from_u32(scalar).unwrap_or('\u{fffd}'), 12)
        }
        (Some(unit), _) => (char::from_u32(unit).unwrap_or('\u{fffd}'), 6),
        (None, _) => ('\u{fffd}', 2),
    }
}

/// The number of a `\u` with its four hexadecimal digits, which stands at the beginning of `text`.
pub(crate) fn code_unit(text: &str) -> Option<u32> {
    let digits = text.strip_prefix("\\u")?.get(..4)?;
    let all_hex = digits.bytes().all(|b| b.is_ascii_hexdigit());
    all_hex.then(|| u32::from_str_radix(digits, 16).ok()).flatten()
}

#[cfg(test)]
mod tests {
    use super::unescaped;

    /// The G clef is the example of RFC 8259 section 7.
    #[test]
    fn escapes_stand_for_what_the_rfc_says() {
        assert_eq!(unescaped(r#""\uD834\uDD1E""#), "\u{1D11E}");
        assert_eq!(unescaped(r#""\"\\\/\b\f\n\r\t""#), "\"\\/\u{8}\u{c}\n\r\t");
        assert_eq!(unescaped(r#""a\u00e9b""#), "aéb");
    }

    #[test]
    fn slips_keep_their_meaning() {
        assert_eq!(unescaped("'it\\'s'"), "it's");
        assert_eq!(unescaped("width"), "width");
        assert_eq!(unescaped(r#""\ud800x""#), "\u{fffd}x");
    }
}
