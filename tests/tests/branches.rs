//! Of several branches that fall short the worst decides; metres and kelvins are compared as shares of what is asked.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Manual, Rule, Ruleset, review, words};
use haulout_figures::pool::depth::GREATEST_DEPTH;
use haulout_figures::pool::water::WARMEST;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};
use haulout_tests::{load, options};

/// 0.50 m deep with water at 29.5 °C.
const POOL: &str = r#"{
  "edition": 0,
  "project": { "title": "Branches", "revision": "A", "stage": "detailed" },
  "pools": [
    { "id": "main", "outline": { "rect": { "corner": [0, 0], "size": [3, 2] } },
      "levels": { "water": "+0.80 m" }, "depth": "0.50 m", "edge": "step", "water": { "temperature": "28 to 29.5 °C" } }
  ]
}"#;

const fn limit(name: &'static str, value: f64, unit: &'static str, dimension: Dimension) -> Limit {
    Limit {
        rule: "deep-and-cool",
        name,
        row: "",
        what: "an edge",
        value,
        unit,
        dimension,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "made for this test",
    }
}

static DEEP: Limit = limit("deep", 0.60, "m", Dimension::LENGTH);
/// 28.15 °C.
static COOL: Limit = limit("cool", 301.30, "K", Dimension::TEMPERATURE);

static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("deep-and-cool"),
        title: words("The pool is too shallow or too warm"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words("Deep and cool water."),
            why: words("For the sake of the test."),
            judged: words("As it stands."),
            cure: words("another value"),
        },
    },
    limits: &[&DEEP, &COOL],
    examples: &[],
    judge: |sheet, at| {
        let deep = GREATEST_DEPTH.of(sheet, at).map(|depth| Check::at_least(depth, sheet.limit(&DEEP)));
        let cool = WARMEST.of(sheet, at).map(|warm| Check::at_most(warm, sheet.limit(&COOL)));
        Ok(Check::AllOf(vec![cool, deep]))
    },
};

/// 0.10 m of 0.60 m is a sixth; 1.35 K of 301.30 K is less than a hundredth, though the larger number.
#[test]
fn the_worst_branch_is_that_with_the_largest_share() {
    let loaded = load(POOL).expect("the text is a design");
    let ruleset = Ruleset::new(vec![Rule::compiled(&RULE)]);
    let review = review(&loaded.design, &ruleset, &[], &options());
    let margin = review.answers[0].margin.expect("both branches compare numbers");
    assert!((margin + 0.10).abs() < 1e-9, "the depth decides, not {margin}");
}
