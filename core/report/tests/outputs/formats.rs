//! The machine formats against their published schemas, and the numbers of an answer.

use haulout_document::{Limits, Problem, read};
use haulout_place::Span;
use haulout_report::json::{self, Reviewed, Run};
use haulout_report::{Told, Written, figured, tell};
use haulout_sheet::Book;
use serde_json::{Value, json};

use crate::common::{EXAMPLES, POOL, built_in, house, load, reviewed};

const DIGEST: &str = "0000000000000000000000000000000000000000000000000000000000000000";

fn held_to(schema: &str, value: &Value) {
    let schema: Value = serde_json::from_str(schema).expect("a published schema is JSON");
    let validator = jsonschema::validator_for(&schema).expect("a published schema is one");
    let wrong: Vec<String> =
        validator.iter_errors(value).map(|e| format!("{}: {e}", e.instance_path().as_str())).collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
}

fn design<'r>(text: Option<Written<'r>>, problems: &'r [Problem], answers: &'r [Told]) -> Reviewed<'r> {
    let stage = problems.is_empty().then_some("detailed");
    Reviewed {
        file: "a.json".to_owned(),
        digest: DIGEST.to_owned(),
        stage,
        overridden: Vec::new(),
        text,
        problems,
        answers,
    }
}

#[test]
fn review_fits_its_schema_for_every_example_and_for_files_that_cannot_be_reviewed() {
    let ruleset = built_in();
    let run = Run { on: "2026-11-25", ruleset: &ruleset, digest: DIGEST };
    for (_, text) in EXAMPLES {
        let (tree, sound) = load(text);
        let answers = tell(&reviewed(&sound, &ruleset), &tree);
        assert!(answers.len() > 20);
        held_to(
            haulout_schemas::REVIEW,
            &json::review(&run, &[design(Some(Written::Read(&tree)), &[], &answers)]),
        );
    }
    let broken = "{ \"edition\": 0,\n  \"pools\": [";
    let problems = read(broken.as_bytes(), &Limits::default()).problems;
    let unread = [Problem::new(Span::default(), "there is no such file")];
    let value = json::review(
        &run,
        &[design(Some(Written::Part(broken)), &problems, &[]), design(None, &unread, &[])],
    );
    held_to(haulout_schemas::REVIEW, &value);
    assert_eq!(value["designs"][0]["problems"][0]["place"]["line"], json!(2));
    assert_eq!(value["designs"][1]["problems"][0]["place"], Value::Null);
}

#[test]
fn sheet_and_rulebook_fit_their_schemas() {
    for (_, text) in EXAMPLES {
        let (tree, design) = load(text);
        let limits = haulout_sheet::Limits::default();
        let book = Book::new(&design, &limits, &[]);
        let figures = figured(&book, &tree, haulout_figures::CATALOGUE, &|_, _| true);
        assert!(figures.len() > 20);
        held_to(haulout_schemas::SHEET, &json::sheet(&figures));
    }
    held_to(haulout_schemas::RULEBOOK, &json::rulebook(&built_in().rules));
}

/// 29.5 °C against 28 °C is 1.5 K too much; 0.50 m against 0.60 m is 0.10 m too little (by hand).
#[test]
fn an_answer_states_its_numbers_in_its_unit_and_its_margin_as_a_difference() {
    let (tree, sound) = load(POOL);
    let ruleset = house();
    let answers = tell(&reviewed(&sound, &ruleset), &tree);
    let run = Run { on: "2026-11-25", ruleset: &ruleset, digest: DIGEST };
    let value = json::review(&run, &[design(Some(Written::Read(&tree)), &[], &answers)]);
    held_to(haulout_schemas::REVIEW, &value);
    let said = |at: usize, keys: &[&str]| -> Vec<Value> {
        keys.iter().map(|key| value["designs"][0]["answers"][at][*key].clone()).collect()
    };
    let keys = ["rule", "subject", "outcome", "have", "limit", "margin", "unit"];
    assert_eq!(
        said(0, &keys),
        [
            json!("deep-enough"),
            json!("pool:main"),
            json!("short"),
            json!(0.5),
            json!(0.6),
            json!(-0.1),
            json!("m")
        ]
    );
    assert_eq!(said(1, &keys[1..3]), [json!("pool:spare"), json!("variance")]);
    assert_eq!(said(2, &keys[2..]), [json!("short"), json!(29.5), json!(28.0), json!(-1.5), json!("°C")]);
    assert_eq!(
        said(4, &keys),
        [
            json!("water-moves"),
            json!("circuit"),
            json!("not-assessed"),
            Value::Null,
            Value::Null,
            Value::Null,
            Value::Null,
        ]
    );
    assert_eq!(value["designs"][0]["answers"][4]["gaps"][0]["places"][0]["pointer"], json!("/circuits"));
    assert_eq!(
        value["designs"][0]["answers"][2]["roots"],
        json!([{ "kind": "limit", "what": "warmest water", "value": "28.00 °C", "basis": "common practice",
                 "source": "a rule of the house, for this test", "annex": null }])
    );
}
