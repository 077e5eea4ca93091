//! Held to `serde_json` 1.0 on generated and mutated texts; the known differences are listed and tested one by one.

use haulout_document::{Kind, Limits, Node, Tree, read};
use serde_json::Value;

/// Marsaglia, Xorshift RNGs, Journal of Statistical Software 8(14), 2003: the triple 13, 7, 17.
struct Dice(u64);

impl Dice {
    fn below(&mut self, n: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 % n as u64) as usize
    }

    fn of<'w>(&mut self, words: &[&'w str]) -> &'w str {
        words[self.below(words.len())]
    }
}

const SCALARS: &[&str] = &[
    "null",
    "true",
    "false",
    "0",
    "-0",
    "7",
    "-12",
    "1.5",
    "1e3",
    "2E-7",
    "0.1",
    "18446744073709551615",
    "9223372036854775808",
    "-9223372036854775809",
    "123456789012345678901234567890",
    "1e308",
    "1e-400",
    "\"\"",
    "\"a\"",
    "\"0.6 m\"",
    "\"28 °C\"",
    "\"\\u00b0\"",
    "\"\\ud834\\udd1e\"",
    "\"\\\\\\\"\\/\\b\\f\\n\\r\\t\"",
    "\"𝄞\"",
];
const KEYS: &[&str] = &["a", "b", "c", "depth", "\\u0061b", "é", "", "x-1", "~", "/"];
const BLANKS: &[&str] = &["", "", "", " ", "\n", "\t", "\r\n  "];

fn text(dice: &mut Dice, depth: usize, out: &mut String) {
    out.push_str(dice.of(BLANKS));
    match dice.below(if depth == 0 { 1 } else { 3 }) {
        0 => out.push_str(dice.of(SCALARS)),
        1 => {
            out.push('[');
            for i in 0..dice.below(5) {
                out.push_str(if i > 0 { "," } else { "" });
                text(dice, depth - 1, out);
            }
            out.push(']');
        }
        _ => {
            out.push('{');
            let from = dice.below(KEYS.len());
            for i in 0..dice.below(5) {
                out.push_str(if i > 0 { "," } else { "" });
                out.push_str(&format!("\"{}\"{}:", KEYS[(from + i) % KEYS.len()], dice.of(BLANKS)));
                text(dice, depth - 1, out);
            }
            out.push('}');
        }
    }
    out.push_str(dice.of(BLANKS));
}

const BYTES: &[u8] = b"{}[],:\"'\\/ \n\t0159-+.eEuntfalsrbNI\x01\x7f\x80\xc3\xed\xff";

fn mutate(dice: &mut Dice, bytes: &mut Vec<u8>) {
    for _ in 0..=dice.below(3) {
        let at = dice.below(bytes.len() + 1);
        let byte = BYTES[dice.below(BYTES.len())];
        match dice.below(3) {
            0 => bytes.insert(at, byte),
            1 if at < bytes.len() => drop(bytes.remove(at)),
            _ if at < bytes.len() => bytes[at] = byte,
            _ => bytes.push(byte),
        }
    }
}

fn only_repeated_keys(problems: &[haulout_document::Problem]) -> bool {
    problems.iter().all(|p| p.message.contains("stands twice"))
}

/// Every text: the same verdict and the same value, repeated keys excepted (`serde_json` lets the last one win).
fn compare(bytes: &[u8]) -> bool {
    let ours = read(bytes, &Limits::default());
    let shown = String::from_utf8_lossy(bytes);
    let accepted = ours.problems.is_empty();
    assert!(ours.tree.is_some() || !accepted, "neither tree nor problem: {shown}");
    match serde_json::from_slice::<Value>(bytes) {
        Ok(value) if accepted => {
            let tree = ours.tree.expect("asserted above");
            assert_eq!(tree.to_value(tree.root()), value, "{shown}");
            spans_hold(&tree);
        }
        Ok(_) => assert!(only_repeated_keys(&ours.problems), "refused: {shown}\n{:?}", ours.problems),
        Err(e) => assert!(!accepted, "accepted: {shown}\n{e}"),
    }
    accepted
}

/// The text at every span re-parses to the value, and every pointer leads back.
fn spans_hold(tree: &Tree) {
    for node in (0..tree.size() as u32).map(Node) {
        let again: Value = serde_json::from_str(tree.typed(node)).expect("a value's span is a JSON text");
        assert_eq!(again, tree.to_value(node));
        if let Some(span) = tree.key_span(node) {
            let key: String =
                serde_json::from_str(span.of(tree.text())).expect("a key's span is a JSON string");
            assert_eq!(Some(key.as_str()), tree.key(node).as_deref());
        }
        assert_eq!(tree.find(&tree.pointer(node)), Some(node));
        let children: Vec<Node> = tree.children(node).collect();
        assert_eq!(children.len(), tree.len(node));
        for (i, child) in children.iter().enumerate() {
            assert_eq!((tree.parent(*child), tree.index_in_parent(*child)), (Some(node), Some(i)));
            assert!(tree.holds(node, *child) && !tree.holds(*child, node));
        }
    }
}

#[test]
fn thirty_thousand_texts_agree_with_serde_json() {
    let mut dice = Dice(0x5eed_1234_abcd_0001);
    let (mut accepted, mut refused) = (0, 0);
    for i in 0..30_000 {
        let mut out = String::new();
        text(&mut dice, 4, &mut out);
        let mut bytes = out.into_bytes();
        if i % 3 != 0 {
            mutate(&mut dice, &mut bytes);
        }
        if compare(&bytes) { accepted += 1 } else { refused += 1 }
    }
    // Both verdicts have to be met often, or the comparison says little.
    assert!(accepted > 8_000 && refused > 8_000, "{accepted} accepted, {refused} refused");
}

#[test]
fn the_known_differences_are_these() {
    let limits = Limits::default();
    let deep = format!("{}{}", "[".repeat(65), "]".repeat(65));
    for text in [r#"{"a":1,"a":2}"#, r#"{"a":1,"\u0061":2}"#, &deep] {
        assert!(serde_json::from_str::<Value>(text).is_ok());
        assert!(!read(text.as_bytes(), &limits).problems.is_empty(), "{text}");
    }
    let small = Limits { bytes: 3, ..limits };
    assert!(read(b"[1]", &small).problems.is_empty());
    assert!(!read(b"[12]", &small).problems.is_empty());
    let whole = read(&deep.as_bytes()[1..129], &limits);
    assert!(whole.problems.is_empty());
    // On these `serde_json` agrees that they are refused.
    for text in ["1e999", "-1e999", r#""\ud800""#, r#""\udc00\ud800""#, "\u{feff}1"] {
        assert!(serde_json::from_str::<Value>(text).is_err());
        assert!(!read(text.as_bytes(), &limits).problems.is_empty(), "{text}");
    }
}

#[test]
fn kinds_are_told_apart() {
    let tree = read(br#"[null,false,true,1,"",[],{}]"#, &Limits::default()).accepted().expect("it is JSON");
    let kinds: Vec<Kind> = tree.children(tree.root()).map(|n| tree.kind(n)).collect();
    assert_eq!(
        kinds,
        [Kind::Null, Kind::False, Kind::True, Kind::Number, Kind::String, Kind::Array, Kind::Object]
    );
}
