//! A ruleset of three rules, a small design they answer to, and the example designs.

use haulout_document::{Limits, Tree, read};
use haulout_engine::{
    Card, Check, CompiledRule, Consequence, Demand, Manual, Options, Review, Rule, Ruleset, review, words,
};
use haulout_figures::pool::depth::GREATEST_DEPTH;
use haulout_figures::pool::water::WARMEST;
use haulout_model::{About, Design, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

/// A pool 0.50 m deep with water at 29.5 °C and a variance; it has no circuits.
pub(crate) const POOL: &str = r#"{
  "edition": 0,
  "project": { "title": "Wärmebecken", "revision": "B", "stage": "detailed" },
  "pools": [
    { "id": "main", "outline": { "rect": { "corner": [0, 0], "size": [3, 2] } },
      "levels": { "water": "+0.80 m" }, "depth": "0.50 m", "edge": "step",
      "water": { "temperature": "28 to 29.5 °C" } },
    { "id": "spare", "outline": { "rect": { "corner": [4, 0], "size": [1, 1] } }, "depth": "0.50 m", "edge": "step",
      "levels": { "water": "+0.80 m" }, "water": { "temperature": "26 °C" } }
  ],
  "variances": [
    { "id": "spare-depth", "rule": "deep-enough", "subject": "pool:spare", "reason": "holding only", "accepted-by": "the curator", "until": "2027-03-31" }
  ]
}
"#;

const fn limit(
    rule: &'static str,
    what: &'static str,
    value: f64,
    unit: &'static str,
    dimension: Dimension,
) -> Limit {
    Limit {
        rule,
        name: "edge",
        row: "",
        what,
        value,
        unit,
        dimension,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "a rule of the house, for this test",
    }
}

static DEEP: Limit = limit("deep-enough", "greatest depth", 0.60, "m", Dimension::LENGTH);
static WARM: Limit = limit("not-too-warm", "warmest water", 301.15, "°C", Dimension::TEMPERATURE);

const fn card(id: &'static str, title: &'static str, about: About, consequence: Consequence) -> Card {
    Card {
        id: words(id),
        title: words(title),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence,
        case: Case::NORMAL,
        about,
        caution: Some(words("Water drowns people.")),
        manual: Manual {
            asks: words("What the house asks for."),
            why: words("For the sake of the test."),
            judged: words("As it stands."),
            cure: words("another value"),
        },
    }
}

static DEEP_ENOUGH: CompiledRule = CompiledRule {
    card: card("deep-enough", "The pool is not deep enough", About::Pool, Consequence::Money),
    limits: &[&DEEP],
    examples: &[],
    judge: |sheet, at| Ok(Check::at_least(GREATEST_DEPTH.of(sheet, at)?, sheet.limit(&DEEP))),
};

static NOT_TOO_WARM: CompiledRule = CompiledRule {
    card: card("not-too-warm", "The water is too warm", About::Pool, Consequence::LifeOfAnimals),
    limits: &[&WARM],
    examples: &[],
    judge: |sheet, at| Ok(Check::at_most(WARMEST.of(sheet, at)?, sheet.limit(&WARM))),
};

static OF_CIRCUITS: CompiledRule = CompiledRule {
    card: card("water-moves", "Nothing moves the water", About::Circuit, Consequence::Harm),
    limits: &[],
    examples: &[],
    judge: |_, _| Ok(Check::AllOf(Vec::new())),
};

pub(crate) fn house() -> Ruleset {
    Ruleset::new([&DEEP_ENOUGH, &NOT_TOO_WARM, &OF_CIRCUITS].into_iter().map(Rule::compiled).collect())
}

pub(crate) fn built_in() -> Ruleset {
    Ruleset::new(haulout_rules::built_in())
}

pub(crate) fn load(text: &str) -> (Tree, Design) {
    let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("the text is sound JSON");
    let (design, problems) = haulout_model::read(&tree);
    assert!(problems.is_empty(), "{problems:?}");
    (tree, design)
}

pub(crate) fn reviewed<'d>(design: &'d Design, ruleset: &'d Ruleset) -> Review<'d> {
    review(design, ruleset, &[], &Options { stage: None, on: "2026-11-25".to_owned() })
}

pub(crate) const EXAMPLES: &[(&str, &str)] = &[
    ("bayou-porch-us", include_str!("../../../../example-designs/bayou-porch-us.json")),
    ("reedwater-sound", include_str!("../../../../example-designs/reedwater-sound.json")),
    ("small-pool", include_str!("../../../../example-designs/small-pool.json")),
];
