//! Files that are no JSON: what they look like by their first bytes, and what to do instead.

/// The first bytes of kinds of file that get taken for a design, and what they are.
const BEGINNINGS: &[(&[u8], &str)] = &[
    (b"\x1f\x8b", "a gzip archive; unpack it first"),
    (b"PK\x03\x04", "a zip archive or an office document; unpack it, or save the design as JSON"),
    (b"%PDF", "a PDF; a design is a JSON text that was written, not a print of it"),
    (b"\x89PNG", "a PNG image; a drawing cannot be read, its measures have to be written into a design"),
    (
        b"\xff\xd8\xff",
        "a JPEG image; a drawing cannot be read, its measures have to be written into a design",
    ),
    (b"GIF8", "a GIF image; a drawing cannot be read, its measures have to be written into a design"),
    (b"AC10", "a DWG drawing; its measures have to be written into a design"),
    (b"\xff\xfe", "UTF-16 text; save it as UTF-8 without a byte-order mark"),
    (b"\xfe\xff", "UTF-16 text; save it as UTF-8 without a byte-order mark"),
    (b"<", "XML or HTML; a design is a JSON text and begins with {"),
];

/// Why some bytes cannot be a design, where their beginning says so.
pub(crate) fn looks_like(bytes: &[u8]) -> Option<String> {
    let bare = bytes.trim_ascii_start();
    if bytes.is_empty() {
        return Some("the file is empty; a design begins with { \"edition\": 0".to_owned());
    }
    if bare.is_empty() {
        return Some(
            "there is nothing but blanks in the file; a design begins with { \"edition\": 0".to_owned(),
        );
    }
    let known = BEGINNINGS.iter().find(|(first, _)| bare.starts_with(first)).map(|(_, what)| *what);
    // Without a mark, every other byte of plain text in UTF-16 is zero.
    let wide = bytes.len() >= 4 && (bytes[0] == 0 || bytes[1] == 0) && (bytes[2] == 0 || bytes[3] == 0);
    let what = known.or(wide.then_some("UTF-16 text; save it as UTF-8 without a byte-order mark"))?;
    Some(format!("this is no JSON, it looks like {what}"))
}

#[cfg(test)]
mod tests {
    use super::looks_like;

    #[test]
    fn the_beginning_tells_what_a_file_is() {
        for (bytes, word) in [
            (&b""[..], "empty"),
            (b" \n", "blanks"),
            (b"\x1f\x8b\x08\x00", "gzip"),
            (b"{\0\"\0", "UTF-16"),
            (b"\0{\0\"", "UTF-16"),
            (b"<!doctype html>", "HTML"),
        ] {
            let said = looks_like(bytes).unwrap_or_default();
            assert!(said.contains(word), "{bytes:?}: {said}");
        }
        assert_eq!(looks_like(b"{ \"edition\": 0 }"), None);
        assert_eq!(looks_like(b"\xef\xbb\xbf{}"), None);
    }
}
