//! Digests that anybody can work again: of one file, and of the files of an annex.

use sha2::{Digest, Sha256};

/// SHA-256, hexadecimal.
pub fn digest(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// The digest of some files, whatever order they come in: SHA-256 of the lines `<digest>  <name>`, sorted by name, which
/// are those that `sha256sum` prints.
pub fn digest_of_files(files: &[(&str, &[u8])]) -> String {
    let mut lines: Vec<(&str, String)> =
        files.iter().map(|(name, bytes)| (*name, format!("{}  {name}\n", digest(bytes)))).collect();
    lines.sort();
    let list: String = lines.into_iter().map(|(_, line)| line).collect();
    digest(list.as_bytes())
}

#[cfg(test)]
mod tests {
    use super::{digest, digest_of_files};

    /// FIPS 180-2, appendix B.1: the digest of "abc". The second was printed by sha256sum (GNU coreutils 9) twice:
    /// `printf abc > a.rhai; printf '' > annex.json; sha256sum a.rhai annex.json | sha256sum`.
    #[test]
    fn digests_are_those_of_the_standard_and_of_the_usual_tool() {
        assert_eq!(digest(b"abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        let (a, card) = (("a.rhai", b"abc".as_slice()), ("annex.json", b"".as_slice()));
        assert_eq!(
            digest_of_files(&[a, card]),
            "d944e5ce6930e2676c4ed7e494cdf8cb882fc995f92870fd33751dc52f924267"
        );
        assert_eq!(digest_of_files(&[card, a]), digest_of_files(&[a, card]));
    }
}
