//! The quick yes of the published schema against the library: the same answer for sound designs and for spoilt ones.

use haulout_document::{Limits, Node, Schema, Tree, read};

/// What is put in the place of a value, one after another.
const INSTEAD: &[&str] = &[
    "null",
    "true",
    "3",
    "-1",
    "0.5",
    "1e9",
    "1.0",
    "\"none\"",
    "\"to be decided\"",
    "\"\"",
    "\"Words 2\"",
    "{}",
    "[]",
    "[[0, 0], [1, 0], [1, 1]]",
    "[1, 2]",
    "[\"a\"]",
    "{\"value\": \"1 m\", \"status\": \"maker\"}",
    "{\"x-own\": 1}",
    "{\"value\": 1, \"status\": \"said\"}",
    "{\"above\": \"main.water\", \"by\": \"1 m\"}",
    "\"1.2.3\"",
    "\"½ in\"",
    "{\"circle\": {\"centre\": [0, 0], \"radius\": 1}}",
    "{\"rect\": {\"corner\": [0, 0], \"size\": [1, 1]}, \"note\": \"n\"}",
];

/// What is put in the place of a key.
const KEYS: &[&str] =
    &["\"x-own\"", "\"note\"", "\"value\"", "\"unknown\"", "\"id\"", "\"by\"", "\"inset\"", "\"A\\u0062\""];

#[allow(clippy::disallowed_methods, reason = "the examples are read from the repository")]
fn example(name: &str) -> String {
    let path = format!("{}/../../example-designs/{name}", env!("CARGO_MANIFEST_DIR"));
    std::fs::read_to_string(path).expect("the examples are there")
}

fn with(text: &str, span: haulout_place::Span, new: &str) -> String {
    format!("{}{new}{}", &text[..span.start as usize], &text[span.end as usize..])
}

/// One value changed, one key changed; every node in turn, the changes in turn.
fn spoilt(text: &str, tree: &Tree, node: Node, turn: usize) -> Vec<String> {
    let value = with(text, tree.span(node), INSTEAD[turn % INSTEAD.len()]);
    let key = tree.key_span(node).map(|key| with(text, key, KEYS[turn % KEYS.len()]));
    std::iter::once(value).chain(key).collect()
}

#[test]
fn the_quick_yes_is_the_yes_of_the_library() {
    let schema = Schema::in_short(haulout_schemas::DESIGN, haulout_schemas::DESIGN_IN_SHORT);
    let agree = |text: &str| {
        // A key that comes to stand twice is no matter of the schema.
        let tree = read(text.as_bytes(), &Limits::default()).accepted().ok()?;
        let quick = schema.surely_fits(&tree).expect("the published schema has a quick way");
        assert_eq!(quick, schema.check_in_full(&tree).is_empty(), "{text}");
        Some(quick)
    };
    let mut told = [0, 0];
    for (name, step) in [("small-pool.json", 1), ("reedwater-sound.json", 5), ("bayou-porch-us.json", 5)] {
        let text = example(name);
        let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("the examples are sound");
        assert_eq!(agree(&text), Some(true), "{name}");
        for at in (0..tree.size()).step_by(step) {
            for turn in [at, at * 7 + 3] {
                for text in spoilt(&text, &tree, Node(at as u32), turn) {
                    told[usize::from(agree(&text).unwrap_or(false))] += 1;
                }
            }
        }
    }
    assert!(told[0] > 500 && told[1] > 100, "{told:?}");
}

/// A slip in the words of a shape, a table or a standing is told, once and at its place.
#[test]
fn what_the_reading_code_passes_over_the_schema_tells() {
    let schema = Schema::in_short(haulout_schemas::DESIGN, haulout_schemas::DESIGN_IN_SHORT);
    let corner = r#""corner": [0, 0], "size": [1, 1]"#;
    let outlines = [
        (format!(r#"{{"rect": {{{corner}}}, "circle": {{"centre": [0, 0], "radius": 1}}}}"#), "\"circle\""),
        (r#"{"copy": {"of": "hall", "mirror": "z"}}"#.to_owned(), "\"z\""),
        (r#"{"strip": {"line": [[0, 0], [1, 0]], "width": 1, "face": "middle"}}"#.to_owned(), "\"middle\""),
        ("[[0, 0], [1, 0]]".to_owned(), "[[0, 0], [1, 0]]"),
    ];
    let mut slips: Vec<(String, &str)> =
        outlines.map(|(outline, place)| (format!(r#""hall": {{"outline": {outline}}}"#), place)).into();
    let hung = r#"{"above": "a.water", "by": "1 m", "bye": "1 m"}"#;
    slips.extend([
        (r#""circuits": [{"id": "c", "runs": [{"id": "r", "fittings": []}]}]"#.to_owned(), "[]"),
        (r#""hall": {"clear-height": {"value": "3 m", "status": "guessed"}}"#.to_owned(), "\"guessed\""),
        (format!(r#""pools": [{{"id": "a", "levels": {{"rim": {hung}}}}}]"#), "\"bye\""),
    ]);
    for (slip, place) in slips {
        let text = format!(r#"{{"edition": 0, "project": {{"title": "t", "stage": "concept"}}, {slip}}}"#);
        let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("the test writes JSON");
        let told = schema.check(&tree);
        let places: Vec<&str> = told.iter().map(|p| p.span.of(&text)).collect();
        assert_eq!(places, [place], "{told:?}");
    }
}

#[test]
fn a_level_to_be_decided_stays_undecided_and_a_share_lies_below_one() {
    let model = |pool: &str| {
        let text = format!(r#"{{"edition": 0, "pools": [{{"id": "a", {pool}}}]}}"#);
        let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("the test writes JSON");
        haulout_model::read(&tree)
    };
    let (design, problems) = model(r#""levels": {"water": "to be decided"}"#);
    assert!(problems.is_empty(), "{problems:?}");
    let level = design.level("a.water").expect("every pool has that level");
    assert!(matches!(level.state(), haulout_model::State::Undecided), "{level:?}");
    for (share, words) in [("\"40\"", "\"40 %\""), ("40", "\"40 %\""), ("\"4000 %\"", "between 0 and 1")] {
        let (_, problems) = model(&format!(r#""solids": [{{"id": "s", "voids": {share}}}]"#));
        assert!(matches!(&problems[..], [one] if one.message.contains(words)), "{problems:?}");
    }
    let (_, problems) = model(r#""solids": [{"id": "s", "voids": "40 %"}]"#);
    assert!(problems.is_empty(), "{problems:?}");
}
