//! Inputs that nobody should send: whatever stands in a file, there are problems or answers, never a panic.

use haulout_document::{Kind, Limits, Node, Tree};
use haulout_engine::{Ruleset, review};
use haulout_tests::generate::{Size, design};
use haulout_tests::{Loaded, examples, load, options, ruleset};
use rayon::prelude::*;

/// Reads as far as reading goes and reviews whatever came of it; whether it was accepted.
fn survives(text: &[u8], ruleset: &Ruleset) -> bool {
    let reading = haulout_document::read(text, &Limits::default());
    assert!(reading.tree.is_some() || !reading.problems.is_empty(), "neither a tree nor a problem");
    let mut accepted = reading.problems.is_empty();
    if let Some(tree) = reading.tree {
        let (design, problems) = haulout_model::read(&tree);
        accepted &= problems.is_empty();
        // A design with problems is not reviewed by the program; that it could be keeps the rooms honest.
        let review = review(&design, ruleset, &[], &options());
        assert!(review.answers.len() >= ruleset.rules.len(), "a rule gave no answer");
    }
    accepted
}

/// The text with what stands at a node replaced.
fn with(tree: &Tree, node: Node, value: &str) -> String {
    let span = tree.span(node);
    let text = tree.text();
    format!("{}{value}{}", &text[..span.start as usize], &text[span.end as usize..])
}

fn nodes(tree: &Tree) -> impl Iterator<Item = Node> {
    (0..tree.size() as u32).map(Node)
}

/// Every place of every example, on all cores; without optimisation every seventh, to stay under forty seconds.
fn tries(check: impl Fn(&str, &Loaded, Node) + Sync + Send) {
    let step = if cfg!(debug_assertions) { 7 } else { 1 };
    for (name, text) in examples() {
        let loaded = load(&text).expect("the examples are read without a problem");
        let nodes: Vec<Node> = nodes(&loaded.tree).step_by(step).collect();
        nodes.into_par_iter().for_each(|node| check(&name, &loaded, node));
    }
}

#[test]
fn texts_that_are_hardly_designs() {
    let ruleset = ruleset();
    let texts: [&[u8]; 14] = [
        b"",
        b" ",
        b"{}",
        b"[]",
        b"null",
        b"0",
        b"\"\"",
        b"{\"edition\": 0}",
        b"{\"edition\": 7}",
        b"{\"edition\": {}}",
        b"\xef\xbb\xbf{\"edition\": 0}",
        b"\xff\xfe{",
        b"{\"edition\": 0",
        b"{\"pools\": [{}, {}, {}], \"animals\": [{}]}",
    ];
    for text in texts {
        survives(text, &ruleset);
    }
    for deep in [63, 64, 65, 100_000] {
        let nested = format!("{{\"edition\": 0, \"pools\": {}{}}}", "[".repeat(deep), "]".repeat(deep));
        survives(nested.as_bytes(), &ruleset);
    }
}

#[test]
fn every_value_replaced_by_something_of_another_kind() {
    let ruleset = ruleset();
    tries(|_, loaded, node| {
        for value in
            ["null", "[]", "{}", "\"\"", "0", "true", "[[[[]]]]", "[{}, {}]", "{\"value\": {\"value\": 1}}"]
        {
            survives(with(&loaded.tree, node, value).as_bytes(), &ruleset);
        }
    });
}

/// Long and deep values at some places: at all of them this would take minutes and show no more.
#[test]
fn values_of_a_hundred_kilobytes_and_sixty_floors() {
    let ruleset = ruleset();
    let long = format!("\"{}\"", "9 m ".repeat(25_000));
    let digits = "9".repeat(100_000);
    let deep = format!("{}{}", "[".repeat(60), "]".repeat(60));
    let joins =
        format!("{}[[0,0],[1,0],[1,1]]{}", "{\"join\": [".repeat(28), ", [[0,0],[2,0],[2,2]]]}".repeat(28));
    let text = &examples().pop().expect("there are examples").1;
    let loaded = load(text).expect("the examples are read without a problem");
    for node in nodes(&loaded.tree).step_by(if cfg!(debug_assertions) { 25 } else { 5 }) {
        for value in [&long, &digits, &deep, &joins] {
            survives(with(&loaded.tree, node, value).as_bytes(), &ruleset);
        }
    }
}

#[test]
fn every_member_left_out_is_still_a_design() {
    let ruleset = ruleset();
    tries(|name, loaded, node| {
        let mut json: serde_json::Value =
            serde_json::from_str(loaded.tree.text()).expect("an accepted text is JSON");
        let at = loaded.tree.pointer(node).to_string();
        let parent = at.rsplit_once('/').map_or("", |(parent, _)| parent);
        let (Some(key), Some(serde_json::Value::Object(members))) =
            (loaded.tree.key(node), json.pointer_mut(parent))
        else {
            return;
        };
        members.shift_remove(&*key);
        survives(json.to_string().as_bytes(), &ruleset);
        // What is left out on the top level is not stated, and the rest is read as before.
        assert!(!parent.is_empty() || load(&json.to_string()).is_ok(), "{name}: without {at}");
    });
}

#[test]
fn every_number_replaced_by_one_out_of_this_world() {
    let ruleset = ruleset();
    let bare = ["0", "-1", "1e300", "-1e300", "1e-300", "\"NaN\"", "\"NaN m\"", "\"inf m\"", "-0"];
    let typed = ["0", "-1", "1e300", "-1e300", "1e-300", "NaN", "inf", "999999999999999999999"];
    tries(|_, loaded, node| {
        let word = loaded.tree.string(node).unwrap_or_default().into_owned();
        let values: Vec<String> = match (loaded.tree.kind(node), word.find(|c: char| c.is_ascii_digit())) {
            (Kind::Number, _) => bare.map(str::to_owned).to_vec(),
            (Kind::String, Some(from)) => {
                let to = word.rfind(|c: char| c.is_ascii_digit()).map_or(from, |at| at + 1);
                typed.map(|number| format!("\"{}{number}{}\"", &word[..from], &word[to..])).to_vec()
            }
            _ => Vec::new(),
        };
        for value in values {
            survives(with(&loaded.tree, node, &value).as_bytes(), &ruleset);
        }
    });
}

#[test]
fn drawings_that_cannot_be() {
    let ruleset = ruleset();
    let outlines = [
        "[]",
        "[[0,0]]",
        "[[0,0],[1,1]]",
        "[[0,0],[0,0],[0,0]]",
        "[[0,0],[2,2],[2,0],[0,2]]",
        "[[0,0],[1,0],[2,0]]",
        "[[0,0],[1e300,0],[0,1e300]]",
        "{\"rect\": {\"corner\": [0,0], \"size\": [0,0]}}",
        "{\"rect\": {\"corner\": [0,0], \"size\": [-1,2], \"round\": 9}}",
        "{\"circle\": {\"centre\": [0,0], \"radius\": -1}}",
        "{\"circle\": {\"centre\": [0,0], \"radius\": 1e9}}",
        "{\"ellipse\": {\"centre\": [0,0], \"radii\": [0,1]}}",
        "{\"smooth\": {\"through\": [[0,0],[0,0],[1,1]]}}",
        "{\"strip\": {\"line\": [[0,0],[0,0]], \"width\": 1}}",
        "{\"inset\": {\"of\": \"p\", \"by\": \"1 m\"}}",
        "{\"inset\": {\"of\": \"hall\", \"by\": \"99 m\"}}",
        "{\"copy\": {\"of\": \"p\"}}",
        "{\"join\": [[[0,0],[1,0],[1,1]], {\"copy\": {\"of\": \"p\"}}]}",
        "{\"less\": [[[0,0],[1,0],[1,1]], [[0,0],[1,0],[1,1]]]}",
        "{\"rect\": 1, \"circle\": 2}",
    ];
    for outline in outlines {
        let text = format!(
            "{{\"edition\": 0, \"hall\": {{\"outline\": [[0,0],[9,0],[9,9],[0,9]]}}, \"animals\": [], \"circuits\": \"none\", \
             \"pools\": [{{\"id\": \"p\", \"outline\": {outline}, \"depth\": \"1 m\", \"edge\": \"1 in 2\", \
             \"levels\": {{\"water\": {{\"above\": \"p.water\", \"by\": \"1 m\"}}, \"low\": {{\"below\": \"p.rim\", \"by\": \"1 m\"}}}}, \
             \"zones\": [{{\"id\": \"z\", \"outline\": {outline}, \"depth\": \"2 m\", \"edge\": \"1 in 1\"}}]}}]}}"
        );
        survives(text.as_bytes(), &ruleset);
        survives(text.replace("\"above\": \"p.water\", \"by\"", "\"value\"").as_bytes(), &ruleset);
    }
}

#[test]
fn a_hundred_generated_designs_with_a_piece_torn_out() {
    let ruleset = ruleset();
    for seed in 0..100_u64 {
        let text = design(seed, Size::Tiny);
        let at = (seed as usize * 7_919) % text.len();
        let end = (at + 1 + seed as usize % 40).min(text.len());
        // Torn at bytes: half a character may be left.
        let torn = [&text.as_bytes()[..at], &text.as_bytes()[end..]].concat();
        survives(&torn, &ruleset);
    }
}
