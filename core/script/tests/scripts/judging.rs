//! What sound scripts answer, the lines they leave on the sheet, and what is missing.

use haulout_calc::formula::Kind;
use haulout_engine::{Consequence, Demand, Options, Outcome, Review, Rule, Ruleset, Side};
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{Case, GapKind, LevelState, LimitValue, LineId, Made, Roots, Substitution};

use crate::common::{CATALOGUE, LISTS, design, reviewed, rule, script};

const POOL: &str = r#"{ "animals": [{ "id": "sliders", "species": "trachemys-scripta", "sexes": "2.3.0" }],
    "pools": [{ "id": "main", "depth": "0.70 m", "water": { "temperature": "25 °C" } }] }"#;

fn only(rule: Rule) -> Ruleset {
    Ruleset::new(vec![rule])
}

fn number(review: &Review<'_>, line: LineId) -> f64 {
    review.book.record(line).datum.number().expect("a line of a script holds a number")
}

fn limit_of(side: Side) -> LineId {
    match side {
        Side::AtLeast(limit) | Side::AtMost(limit) | Side::Within(limit, _) => limit,
        Side::Holds => unreachable!("these answers compare"),
    }
}

/// 0.70 m deep against a shell of 0.264 m (ReptTraits) and 0.4 m: 0.664 m asked, 0.036 m to spare.
#[test]
fn a_sum_is_worked_on_the_sheet() {
    let body =
        "fn judge(it) { at_least(it.figure(\"depth\"), it.register(\"body-length\") + it.limit(\"spare\")) }";
    let (design, ruleset) = (design(POOL), only(rule(&script(LISTS, body))));
    let review = reviewed(&design, &ruleset);
    let answer = &review.answers[0];
    assert_eq!(answer.outcome, Outcome::Met);
    assert!((answer.margin.expect("it was compared") - 0.036).abs() < 1e-12);
    let limit = limit_of(answer.deciding.expect("it was compared").side);
    let record = review.book.record(limit).clone();
    assert_eq!(record.dimension, Dimension::LENGTH);
    let Made::Worked(formula) = record.made else { unreachable!("a sum is worked") };
    assert_eq!((formula.card().text, formula.card().kind), ("a + b", Kind::Closed));
    // Depth, species, shell length, limit.
    assert_eq!(Roots::of(&review.book, &answer.lines).0.len(), 4);
    assert_eq!(review.book.basis(&answer.lines), Basis::CommonPractice);
}

/// By hand from 0.70 m and 0.4 m: 1.1, 0.3, 0.28, 1.75, the lesser and the greater; with plain numbers 1.4, 2 − 1.75.
#[test]
fn all_arithmetic_gives_what_paper_gives() {
    for (expression, value) in [
        ("d + s", 1.1),
        ("d - s", 0.3),
        ("d * s", 0.28),
        ("d / s", 1.75),
        ("min(d, s)", 0.4),
        ("max(d, s)", 0.7),
        ("2 * d", 1.4),
        ("d * 0.5", 0.35),
        ("d * (1 / 2)", 0.35),
        ("d * (3 / 2)", 1.05),
        ("2 - d / s", 0.25),
        ("1.5 / d", 1.5 / 0.7),
        ("min(1, d / s)", 1.0),
        ("max(d / s, 2.5)", 2.5),
    ] {
        let lists = LISTS.replace("\"register\": [\"body-length\"],", "");
        let body = format!(
            "fn judge(it) {{ let d = it.figure(\"depth\"); let s = it.limit(\"spare\"); let x = {expression}; at_least(x, x) }}"
        );
        // Not every expression rests on both; the rest of the answer does.
        let body = body.replace("at_least(x, x)", "all_of([at_least(x, x), at_least(d, s)])");
        let (design, ruleset) = (design(POOL), only(rule(&script(&lists, &body))));
        let review = reviewed(&design, &ruleset);
        let found = review.answers[0].lines.iter().any(|line| (number(&review, *line) - value).abs() < 1e-12);
        assert!(found, "{expression} is {value}: {:?}", review.answers[0].lines);
    }
}

/// The text of every formula of a script, with its arguments put in, gives its line again.
#[test]
fn the_text_of_a_line_can_be_worked_again() {
    let body = "fn judge(it) { let d = it.figure(\"depth\"); let s = it.limit(\"spare\") * 1.25;
        all_of([at_least(max(d - s, min(d, s)), s / 4 + it.limit(\"spare\") * 0.0)]) }";
    let lists = LISTS.replace("\"register\": [\"body-length\"],", "");
    let (design, ruleset) = (design(POOL), only(rule(&script(&lists, body))));
    let review = reviewed(&design, &ruleset);
    let mut worked = 0;
    for line in Roots::below(&review.book, &review.answers[0].lines) {
        let record = review.book.record(line).clone();
        let Made::Worked(formula) = record.made else { continue };
        let n: Vec<f64> = review.book.arguments(line).into_iter().map(|a| number(&review, a)).collect();
        let again = match (formula.card().text, n.as_slice()) {
            ("a + b", [a, b]) => a + b,
            ("a - b", [a, b]) => a - b,
            ("a × b", [a, b]) => a * b,
            ("a / b", [a, b]) => a / b,
            ("min(a, b)", [a, b]) => f64::min(*a, *b),
            ("max(a, b)", [a, b]) => f64::max(*a, *b),
            (text, []) => text.parse().expect("a plain number"),
            (text, _) => unreachable!("{text}"),
        };
        assert_eq!(again.to_bits(), number(&review, line).to_bits(), "{}", formula.card().text);
        worked += 1;
    }
    // Three numbers, two products, a difference, a quotient, a sum, a lesser, a greater.
    assert_eq!(worked, 10);
}

/// Only what the answer rests on is written: depth, limit, and nothing of what was worked beside it.
#[test]
fn what_the_answer_does_not_need_is_not_written() {
    let body = "fn judge(it) { let d = it.figure(\"depth\"); for n in 1..50 { let beside = d * n; }
        at_least(d, it.limit(\"spare\")) }";
    let lists = LISTS.replace("\"register\": [\"body-length\"],", "");
    let (design, ruleset) = (design(POOL), only(rule(&script(&lists, body))));
    assert_eq!(reviewed(&design, &ruleset).book.len(), 2);
}

#[test]
fn all_that_is_missing_comes_out_at_once() {
    let body =
        "fn judge(it) { at_least(it.figure(\"depth\"), it.register(\"body-length\") + it.limit(\"spare\")) }";
    let bare = design(
        r#"{ "animals": [{ "id": "a" }, { "id": "b", "species": "Testudo ignota" }], "pools": [{ "id": "main" }] }"#,
    );
    let ruleset = only(rule(&script(LISTS, body)));
    let review = reviewed(&bare, &ruleset);
    let kinds = |at: usize| review.answers[at].gaps.iter().map(|g| g.kind).collect::<Vec<_>>();
    assert_eq!(review.answers.len(), 2);
    assert_eq!(kinds(0), [GapKind::Absent, GapKind::Absent]);
    assert_eq!(kinds(1), [GapKind::Absent, GapKind::Unknown]);
    assert!(review.answers.iter().all(|a| a.outcome == Outcome::NotAssessed));
}

/// No males: the depth for each is no number. It is a gap of that branch, and the other branch still answers.
#[test]
fn a_quotient_by_zero_is_a_gap_of_its_branch() {
    let lists = r#""figures": ["depth", "males"],
        "limits": [{ "name": "spare", "what": "depth", "value": "0.4 m", "tighter": "higher", "basis": "recalled", "source": "memory" }],"#;
    let none = design(&POOL.replace("2.3.0", "0.3.0"));
    let judged = |answer: &str| {
        let body = format!(
            "fn judge(it) {{ let d = it.figure(\"depth\"); let s = it.limit(\"spare\"); let each = at_least(d / it.figure(\"males\"), s); {answer} }}"
        );
        let ruleset = only(rule(&script(lists, &body)));
        reviewed(&none, &ruleset).answers[0].clone()
    };
    let alone = judged("each");
    assert_eq!((alone.outcome, alone.gaps[0].kind), (Outcome::NotAssessed, GapKind::OutOfRange));
    assert_eq!(judged("any_of([each, at_least(d, s)])").outcome, Outcome::Met);
    assert_eq!(judged("all_of([each, at_most(d, s)])").outcome, Outcome::Short);
    assert_eq!(judged("only_if(at_most(d, s), each)").outcome, Outcome::DoesNotApply);
}

/// A script's limit is a limit as any other: the ruleset may tighten it.
#[test]
fn the_ruleset_sets_the_limits_of_a_script() {
    let body = "fn judge(it) { at_least(it.figure(\"depth\"), it.limit(\"spare\")) }";
    let lists = LISTS.replace("\"register\": [\"body-length\"],", "");
    let (design, mut ruleset) = (design(POOL), only(rule(&script(&lists, body))));
    assert_eq!(reviewed(&design, &ruleset).answers[0].outcome, Outcome::Met);
    let tighter = LimitValue { value: 0.8, by: None };
    assert_eq!(ruleset.set_limit("trial", "spare", "", tighter, None), Ok(()));
    assert_eq!(reviewed(&design, &ruleset).answers[0].outcome, Outcome::Short);
}

/// Sliders 22 to 30 °C, painted turtles 22 to 28 °C (Austria, BGBl. II 486/2004, Annex 3): 29 °C is 1 K too warm.
#[test]
fn the_bundled_band_rule_compiles_and_judges() {
    let text = include_str!("../../../../rules/annexes/house-model/water-within-species-band.rhai");
    let rule = match haulout_script::compile("water-within-species-band.rhai", text, CATALOGUE) {
        Ok(rule) => rule,
        Err(faults) => unreachable!("{faults:?}"),
    };
    assert_eq!(rule.examples.len(), 5);
    let warm = design(
        r#"{ "animals": [{ "id": "s", "species": "trachemys-scripta" }, { "id": "p", "species": "Chrysemys picta" }],
             "pools": [{ "id": "main", "water": { "temperature": "29 °C" } }] }"#,
    );
    let ruleset = only(rule);
    let review = reviewed(&warm, &ruleset);
    let outcomes: Vec<Outcome> = review.answers.iter().map(|a| a.outcome).collect();
    assert_eq!(outcomes, [Outcome::Met, Outcome::Short]);
    assert!((review.answers[1].margin.expect("it was compared") + 1.0).abs() < 1e-9);
}

/// A what if reaches a script's answer through the sheet: 0.3 m in place of the stated 0.70 m, 0.4 m asked.
#[test]
fn a_substitution_changes_what_a_script_answers() {
    let body = "fn judge(it) { at_least(it.figure(\"depth\"), it.limit(\"spare\")) }";
    let lists = LISTS.replace("\"register\": [\"body-length\"],", "");
    let (design, ruleset) = (design(POOL), only(rule(&script(&lists, body))));
    let first = reviewed(&design, &ruleset);
    let depth = first.answers[0].deciding.expect("it was compared").have;
    let Made::Stated { origin, .. } = first.book.record(depth).made else {
        unreachable!("the depth is stated")
    };
    let what_if = [Substitution { node: origin.node, part: origin.part, value: 0.3 }];
    let options = Options { stage: None, on: "2026-11-25".into() };
    let second = haulout_engine::review(&design, &ruleset, &what_if, &options);
    assert_eq!((first.answers[0].outcome, second.answers[0].outcome), (Outcome::Met, Outcome::Short));
}

/// A card may name another case, a matter and a caution; they arrive on the card of the rule.
#[test]
fn the_card_arrives_whole() {
    let lists = LISTS.replace("\"register\": [\"body-length\"],", "")
        + r#""case": { "filter": "dirty", "level": "low" }, "matter": "electrical", "caution": "mind the step","#;
    let card =
        rule(&script(&lists, "fn judge(it) { at_least(it.figure(\"depth\"), it.limit(\"spare\")) }")).card;
    assert_eq!(card.case, Case::NORMAL.dirty().level(LevelState::Low));
    assert_eq!((card.matter, card.caution.as_deref()), (Some(Matter::Electrical), Some("mind the step")));
    assert_eq!(
        (card.demand, card.stage, card.consequence),
        (Demand::Shall, Stage::Concept, Consequence::Harm)
    );
    assert_eq!((card.about, &*card.id, &*card.manual.cure), (About::PoolGroup, "trial", "d"));
}

/// The depth is missing; what does not ask for it, or is decided without it, says what a compiled rule would say.
#[test]
fn what_is_missing_is_missed_in_its_branch_only() {
    let bare = design(
        r#"{ "animals": [{ "id": "sliders", "species": "trachemys-scripta" }], "pools": [{ "id": "main" }] }"#,
    );
    // A shell of 0.264 m (ReptTraits) against 0.4 m: at most holds, at least does not.
    for (answer, outcome) in [
        ("any_of([at_most(s, l), at_least(d, l)])", Outcome::Met),
        ("any_of([at_least(s, l), at_least(d, l)])", Outcome::NotAssessed),
        ("all_of([at_least(s, l), at_least(d, l)])", Outcome::Short),
        ("only_if(at_least(s, l), at_least(d, l))", Outcome::DoesNotApply),
        ("only_if(at_most(s, l), at_least(d, l))", Outcome::NotAssessed),
        ("at_least(d + s, l)", Outcome::NotAssessed),
    ] {
        let names = "let d = it.figure(\"depth\"); let s = it.register(\"body-length\"); let l = it.limit(\"spare\");";
        let text = script(LISTS, &format!("fn judge(it) {{ {names} {answer} }}"));
        let ruleset = only(rule(&text));
        assert_eq!(reviewed(&bare, &ruleset).answers[0].outcome, outcome, "{answer}");
    }
}
