//! Texts that want to do harm, and slips that should come out all at once.

use haulout_document::{Limits, Problem, Schema, read};

const SAMPLE: &str = r#"{"edition": 0, "note": "a \"turtle\" \u00b0 𝄞 room", 'old': True, // slip
  "pools": [{"id": "main", "outline": [[0, 0], [2.5e0, -1]], depth: "0.6 m",}, {"id": "main", "id": "b"}],
  /* more */ "x-own": [NaN, +1, .5, 5., 007, None] "hall": null}"#;

fn problems(text: &str) -> Vec<Problem> {
    read(text.as_bytes(), &Limits::default()).problems
}

#[test]
fn all_slips_of_a_text_come_out_at_once() {
    let reading = read(SAMPLE.as_bytes(), &Limits::default());
    assert!(reading.tree.is_some());
    let places: Vec<&str> = reading.problems.iter().map(|p| p.span.of(SAMPLE)).collect();
    assert_eq!(
        places,
        [
            "'old'",
            "True",
            "// slip",
            "depth",
            ",",
            "\"id\"",
            "/* more */",
            "NaN",
            "+1",
            ".5",
            "5.",
            "007",
            "None",
            "]"
        ]
    );
}

#[test]
fn prefixes_deletions_and_wild_bytes_never_panic() {
    let schema = Schema::compile(r#"{"type":"object","properties":{"pools":{"items":{"required":["depth"],"additionalProperties":false}}},"additionalProperties":false}"#)
        .expect("it is a schema");
    let bytes = SAMPLE.as_bytes();
    let look = |bytes: &[u8]| {
        if let Some(tree) = read(bytes, &Limits::default()).tree {
            schema.check(&tree);
            tree.to_value(tree.root());
        }
    };
    for i in 0..bytes.len() {
        look(&bytes[..i]);
        look(&[&bytes[..i], &bytes[i + 1..]].concat());
        for wild in [0, b'"', b'\\', b'{', b']', 0xff] {
            look(&[&bytes[..i], &[wild], &bytes[i + 1..]].concat());
        }
    }
}

#[test]
fn a_hundred_thousand_nested_arrays_stop_at_the_limit() {
    let found = problems(&"[".repeat(100_000));
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].span.start, 64);
    assert!(found[0].message.contains("64 deep"));
}

#[test]
fn a_limit_set_high_needs_no_stack() {
    let deep = format!("{}{}", "[".repeat(100_000), "]".repeat(100_000));
    let limits = Limits { depth: 200_000, ..Limits::default() };
    let tree = read(deep.as_bytes(), &limits).accepted().expect("within its limit");
    assert_eq!(tree.size(), 100_000);
    // The value itself would recurse when dropped; the tree does not.
    assert_eq!(tree.subtree_end(tree.root()).0, 100_000);
}

#[test]
fn five_megabytes_read() {
    let one = r#"{"id": "rock-2", "outline": [[0.5, 1.25], [2, 3]], "top": "+1.10 m"}"#;
    let text = format!("[{}]", vec![one; 5_000_000 / one.len()].join(","));
    let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("it is JSON");
    assert_eq!(tree.len(tree.root()), 5_000_000 / one.len());
}

#[test]
fn a_hundred_thousand_keys_are_not_compared_pair_by_pair() {
    let members: Vec<String> = (0..100_000).map(|i| format!("\"k{i}\":{i}")).collect();
    let text = format!("{{{},\"k7\":0}}", members.join(","));
    let found = problems(&text);
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].span.of(&text), "\"k7\"");
    assert_eq!(found[0].also[0].0.start as usize, text.find("\"k7\"").expect("it stands there"));
}

#[test]
fn a_flood_of_slips_ends() {
    let found = problems(&format!("[{}1]", "[1,],".repeat(100_000)));
    assert_eq!(found.len(), Limits::default().problems);
}

#[test]
fn messages_name_what_was_typed_and_a_way_out() {
    for (text, part) in [
        ("\u{feff}{}", "byte-order mark"),
        ("{\"a\":1,}", "comma stands after the last"),
        ("[1 // x\n]", "no comments"),
        ("[True]", "True is written true"),
        ("{\"depth\": 3m}", "\"3m\""),
        ("{\"depth\": deep}", "\"deep\""),
        ("[1e999]", "1e999 is too large"),
        ("[.5]", "write 0.5"),
        ("[\"a\nb\"]", "line ends inside"),
        ("[1", "The file ends here"),
        ("{\"a\" 1}", "colon is expected after the key \"a\""),
        ("[1}", "a comma or the end of the list, ]"),
        ("[\"\\ud800\"]", "half of a character"),
        ("[] x", "is complete"),
        ("\"C:\\dir\"", "a backslash itself is written"),
    ] {
        let found = problems(text);
        assert!(found.iter().any(|p| p.message.contains(part)), "{text:?}: {found:?}");
    }
    assert_eq!(problems("[1").remove(0).also.len(), 1);
}
