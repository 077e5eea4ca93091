//! Rehearsals that hold, and one for everything that can be wrong with an example.

use haulout_engine::{
    Card, Check, CompiledRule, Consequence, Demand, Expected, Manual, Outcome, Rule, words,
};
use haulout_engine::{Example, Words};
use haulout_model::{About, Stage};
use haulout_quantity::si::{Length, ThermodynamicTemperature};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Catalogued, Figure, FigureCard, Limit, LimitValue, Limits, Line, Tighter};

use super::{Rehearsed, rehearse};

static LEAST: Limit = Limit {
    rule: "deep-enough",
    name: "least",
    row: "",
    what: "least depth",
    value: 0.4,
    unit: "m",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "a rule made up for this test",
};

const fn example(
    shows: &'static str,
    design: &'static str,
    expected: Expected,
    place: &'static str,
) -> Example {
    Example {
        shows: words(shows),
        design: words(design),
        subject: words("pool:main"),
        expected,
        place: words(place),
    }
}

const RULE_CARD: Card = Card {
    id: words("deep-enough"),
    title: words("A pool is too shallow"),
    chapter: words("water"),
    demand: Demand::Shall,
    stage: Stage::Concept,
    matter: None,
    consequence: Consequence::Harm,
    case: Case::NORMAL,
    about: About::Pool,
    caution: None,
    manual: Manual { asks: words(""), why: words(""), judged: words(""), cure: words("") },
};

static RULE: CompiledRule = CompiledRule {
    card: RULE_CARD,
    limits: &[&LEAST],
    examples: &[
        example("deep", r#"{"pools":[{"id":"main","depth":"0.7 m"}]}"#, Expected::Met, "/pools/0/depth"),
        example("shallow", r#"{"pools":[{"id":"main","depth":"0.3 m"}]}"#, Expected::Short, "/pools/0/depth"),
        example("the edge", r#"{"pools":[{"id":"main","depth":"40 cm"}]}"#, Expected::Met, ""),
        example("not stated", r#"{"pools":[{"id":"main"}]}"#, Expected::NotAssessed, "/pools/0/depth"),
    ],
    judge: |sheet, at| {
        let depth = sheet.design().pools.items()[at.index()].depth.on(sheet);
        (depth, Ok(sheet.limit::<Length>(&LEAST))).all().map(|(have, least)| Check::at_least(have, least))
    },
};

static BORE: CompiledRule = CompiledRule {
    card: RULE_CARD,
    limits: &[&LEAST],
    examples: &[],
    judge: |sheet, at| {
        let bore = sheet.design().circuits.items()[at.index()].runs.items()[0].bore.on(sheet);
        (bore, Ok(sheet.limit::<Length>(&LEAST))).all().map(|(have, least)| Check::at_least(have, least))
    },
};

fn changed(change: impl Fn(&mut Example)) -> Rehearsed {
    let mut rule = Rule::compiled(&RULE);
    rule.examples.truncate(1);
    change(&mut rule.examples[0]);
    rehearse(&rule, &Limits::default()).remove(0)
}

#[test]
fn a_sound_rule_does_what_its_examples_say() {
    let rehearsed = rehearse(&Rule::compiled(&RULE), &Limits::default());
    assert_eq!(rehearsed.len(), 4);
    for one in &rehearsed {
        assert!(one.holds(), "{one:?}");
    }
}

#[test]
fn a_changed_limit_is_noticed() {
    let mut limits = Limits::default();
    limits.set("deep-enough", "least", "", LimitValue { value: 0.42, by: None });
    let edge = &rehearse(&Rule::compiled(&RULE), &limits)[2];
    assert_eq!((edge.got, edge.holds()), (Some(Outcome::Short), false));
    assert_eq!(edge.problems, ["expected is met, the rule says short"]);
}

#[test]
fn what_is_wrong_with_an_example_is_said() {
    let wrong = |change: &dyn Fn(&mut Example), told: &str| {
        let one = changed(change);
        assert!(!one.holds() && one.problems.iter().any(|p| p.contains(told)), "{told}: {one:?}");
    };
    wrong(&|e| e.expected = Expected::Short, "expected is short, the rule says met");
    wrong(
        &|e| e.subject = words("pool:other"),
        "no answer about \"pool:other\"; the subjects of this example are pool:main",
    );
    wrong(&|e| e.place = words("/pools/0/edge"), "does not name /pools/0/edge; it names /pools/0/depth");
    wrong(&|e| e.place = words("pools/0/depth"), "no JSON Pointer");
    wrong(&|e| e.design = words("{,}"), "");
    wrong(&|e| e.design = words(r#"{"pools":[{"id":"main","depth":"0.7"}]}"#), "has no unit");
}

/// A part that holds the marked place is enough; a part of it is not.
#[test]
fn a_place_is_named_by_what_holds_it() {
    assert!(changed(|e| e.place = words("/pools/0/depth/value")).holds());
    assert!(!changed(|e| e.place = words("/pools/0")).place_named);
}

/// A bore out of a kind stands in the kind and is used by the run: both are places of the answer.
#[test]
fn a_value_from_a_kind_is_named_at_both_its_places() {
    let mut rule = Rule::compiled(&RULE);
    rule.card = std::sync::Arc::new(Card { about: About::Circuit, ..RULE.card.clone() });
    rule.judge = Rule::compiled(&BORE).judge;
    rule.examples.truncate(1);
    rule.examples[0].subject = words("circuit:one");
    rule.examples[0].design = words(
        r#"{"kinds":{"pipes":{"hose":{"bore":"0.5 m"}}},"circuits":[{"id":"one","runs":[{"id":"run","kind":"hose"}]}]}"#,
    );
    for place in ["/kinds/pipes/hose/bore", "/circuits/0/runs/0/bore"] {
        rule.examples[0].place = words(place);
        let one = rehearse(&rule, &Limits::default()).remove(0);
        assert!(one.holds(), "{one:?}");
    }
}

/// No pools: one answer, about the kind itself.
#[test]
fn an_example_may_show_that_there_is_nothing_to_judge() {
    for (design, expected) in [(r#"{"pools":[]}"#, Expected::DoesNotApply), ("{}", Expected::NotAssessed)] {
        let one = changed(|e| {
            e.design = Words::Borrowed(design);
            e.subject = words("pool");
            e.expected = expected;
            e.place = words(if expected == Expected::NotAssessed { "/pools" } else { "" });
        });
        assert!(one.holds(), "{one:?}");
    }
}

static TEMPERATURE: Figure<Line<ThermodynamicTemperature>> = Figure {
    card: &FigureCard {
        id: "water-temperature",
        title: "water temperature",
        about: About::Pool,
        axes: &[],
        unit: "°C",
        us_unit: "°F",
        resolution: None,
    },
    work: |sheet, at| sheet.design().pools.items()[at.index()].water.temperature.on(sheet),
};
static CATALOGUE: &[&dyn Catalogued] = &[&TEMPERATURE];

#[test]
fn a_house_rule_is_rehearsed_as_any_other() {
    let text = include_str!("../../../rules/annexes/house-model/water-within-species-band.rhai");
    let rule = match haulout_script::compile("water-within-species-band.rhai", text, CATALOGUE) {
        Ok(rule) => rule,
        Err(faults) => unreachable!("{faults:?}"),
    };
    let rehearsed = rehearse(&rule, &Limits::default());
    assert_eq!(rehearsed.len(), 5);
    for one in &rehearsed {
        assert!(one.holds(), "{one:?}");
    }
}
