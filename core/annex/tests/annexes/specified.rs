//! What a specification asks, and what of a design it overrides.

use haulout_annex::{Specified, Trouble, specification};
use haulout_engine::{Options, Ruleset, review};
use haulout_model::Stage;

use super::common::{design, told};

fn read(text: &str) -> Result<Specified, Trouble> {
    specification("reedwater.json", &Ok(text.as_bytes().to_vec()))
}

const WHOLE: &str = r#"{
  "title": "Reedwater, second lot",
  "designs": ["rooms"],
  "held-to": { "guards": ["uk-ad-k"], "electrical": "none" },
  "stage": "detailed",
  "plus-minus": { "length": "5 mm", "temperature": "± 0.5 K" },
  "annexes": ["../house"]
}"#;

#[test]
fn a_specification_is_read_to_its_last_key() {
    let found = read(WHOLE).expect("it is sound");
    assert_eq!((found.designs, found.annexes), (vec!["rooms".to_owned()], vec!["../house".to_owned()]));
    assert_eq!((found.by.stage, found.by.title.as_str()), (Some(Stage::Detailed), "Reedwater, second lot"));
    let held: Vec<(&str, usize)> = found.by.held_to.iter().map(|(m, ids)| (m.name(), ids.len())).collect();
    assert_eq!(held, [("electrical", 0), ("guards", 1)]);
    let plus_minus: Vec<&str> = found.by.plus_minus.iter().map(|(_, text)| text.as_str()).collect();
    assert_eq!(plus_minus, ["± 5 mm", "± 0.5 K"]);
}

#[test]
fn mistakes_of_a_specification_are_told_at_their_place() {
    let wrong =
        r#"{ "stage": "detail", "plus-minus": { "length": "5 kg", "flow": "-1 L/s" }, "design": [] }"#;
    let said = told(&[read(wrong).expect_err("four mistakes")]);
    let places: Vec<&str> = said.iter().map(|(_, place)| place.as_str()).collect();
    assert_eq!(places, ["\"detail\"", "\"5 kg\"", "\"-1 L/s\"", "\"design\""], "{said:#?}");
    assert!(read("{ \"stage\": ").is_err());
}

const POOL: &str = r#"{ "project": { "title": "t", "stage": "concept", "held-to": { "guards": ["ibc-2021"] } },
    "pools": [{ "id": "main", "depth": "1 m" }] }"#;

#[test]
fn the_command_line_goes_before_the_specification_and_it_before_the_design() {
    let pool = design(POOL);
    let plain = Ruleset::new(haulout_rules::built_in());
    let by = read(WHOLE).expect("sound").by;
    let specified = Ruleset { specification: Some(by), ..plain.clone() };
    let stage = |ruleset: &Ruleset, stage: Option<Stage>| {
        review(&pool, ruleset, &[], &Options { stage, on: "2026-11-25".to_owned() }).stage
    };
    assert_eq!(stage(&plain, None), Stage::Concept);
    assert_eq!(stage(&specified, None), Stage::Detailed);
    assert_eq!(stage(&specified, Some(Stage::AsBuilt)), Stage::AsBuilt);
    assert_eq!(specified.held_to(&pool), ["uk-ad-k"]);
    assert_eq!(plain.held_to(&pool), ["ibc-2021"]);

    let told = |ruleset: &Ruleset, stage: &str| -> Vec<String> {
        let all = ruleset.overridden(&pool, stage).into_iter();
        all.map(|o| format!("{}: {} not {}, {}", o.what, o.to, o.from, o.by)).collect()
    };
    assert_eq!(told(&plain, "concept"), Vec::<String>::new());
    assert_eq!(told(&plain, "detailed"), ["stage: detailed not concept, the command line"]);
    assert_eq!(
        told(&specified, "detailed"),
        [
            "stage: detailed not concept, the specification",
            "held to for electrical: none not not stated, the specification",
            "held to for guards: uk-ad-k not ibc-2021, the specification",
        ]
    );
}
