//! Lists of values: which subjects belong to a subject, what is missing, and mistakes at their place.

use haulout_engine::{Outcome, Ruleset};
use haulout_sheet::GapKind;

use crate::common::{CARD, design, faults, reviewed, rule, with_card};

/// Two spaces, a pool in each; two groups live in the first and one in the second.
const ROOM: &str = r#"{
  "hall": { "spaces": [{ "id": "east", "for": "animals" }, { "id": "west", "for": "animals" }] },
  "animals": [
    { "id": "sliders", "spaces": ["east"], "sexes": "2.3.0" },
    { "id": "cooters", "spaces": ["east"], "sexes": "1.1.0" },
    { "id": "necks", "spaces": ["west"], "sexes": "4.0.0" } ],
  "pools": [{ "id": "main", "space": "east", "depth": "0.70 m" }, { "id": "side", "space": "west", "depth": "0.30 m" }] }"#;

fn card(about: &str, lists: &str) -> String {
    CARD.replace("\"about\": \"pool-group\"", &format!("\"about\": \"{about}\"")).replace("LISTS", lists)
}

const MALES: &str = r#""each": ["males"], "limits": [{ "name": "most", "what": "males together", "value": 3, "tighter": "lower",
    "basis": "common practice", "source": "house standard" }],"#;
const DEPTHS: &str = r#""each": ["depth"], "limits": [{ "name": "low", "what": "depth", "value": "0.5 m", "tighter": "higher",
    "basis": "common practice", "source": "house standard" }],"#;

fn outcomes(about: &str, lists: &str, answer: &str, room: &str) -> Vec<Outcome> {
    let text = with_card(&card(about, lists), &format!("fn judge(it) {{ {answer} }}"));
    let (room, ruleset) = (design(room), Ruleset::new(vec![rule(&text)]));
    reviewed(&room, &ruleset).answers.iter().map(|a| a.outcome).collect()
}

/// Males: two and one in the first space, four in the second; seven in all.
#[test]
fn what_belongs_to_a_subject_is_handed_in_and_nothing_else() {
    let total = "at_most(total(it.each(\"males\")), it.limit(\"most\"))";
    assert_eq!(outcomes("pool", MALES, total, ROOM), [Outcome::Met, Outcome::Short]);
    assert_eq!(outcomes("whole", MALES, total, ROOM), [Outcome::Short]);
    let count = "at_most(count(it.each(\"males\")), it.limit(\"most\"))";
    assert_eq!(outcomes("whole", MALES, count, ROOM), [Outcome::Met]);
    let some = "at_most(total(where_at_most(it.each(\"males\"), it.limit(\"most\"))), it.limit(\"most\"))";
    assert_eq!(outcomes("whole", MALES, some, ROOM), [Outcome::Met]);
}

/// Depths 0.70 m and 0.30 m: the nearest to 0.5 m is the first one met with, the greatest is 0.70 m.
#[test]
fn ends_of_a_list_are_values_like_others() {
    for (answer, outcome) in [
        ("at_least(least(it.each(\"depth\")), it.limit(\"low\"))", Outcome::Short),
        ("at_least(greatest(it.each(\"depth\")), it.limit(\"low\"))", Outcome::Met),
        (
            "at_least(least(where_at_least(it.each(\"depth\"), it.limit(\"low\"))), it.limit(\"low\"))",
            Outcome::Met,
        ),
        ("at_least(nearest(it.each(\"depth\"), it.limit(\"low\") * 2), it.limit(\"low\"))", Outcome::Met),
        ("at_least(total(it.each(\"depth\")) / count(it.each(\"depth\")), it.limit(\"low\"))", Outcome::Met),
        (
            "at_least(least(where_at_least(it.each(\"depth\"), it.limit(\"low\") * 9)), it.limit(\"low\"))",
            Outcome::NotAssessed,
        ),
    ] {
        assert_eq!(outcomes("whole", DEPTHS, answer, ROOM), [outcome], "{answer}");
    }
}

#[test]
fn one_missing_value_of_a_list_leaves_it_open_and_says_which() {
    let total = "at_most(total(it.each(\"males\")), it.limit(\"most\"))";
    let text = with_card(&card("pool", MALES), &format!("fn judge(it) {{ {total} }}"));
    let room = design(&ROOM.replace(", \"sexes\": \"1.1.0\"", ""));
    let ruleset = Ruleset::new(vec![rule(&text)]);
    let review = reviewed(&room, &ruleset);
    assert_eq!(review.answers[0].outcome, Outcome::NotAssessed);
    assert_eq!(review.answers[0].gaps.iter().map(|g| g.kind).collect::<Vec<_>>(), [GapKind::Absent]);
    assert_eq!(review.answers[1].outcome, Outcome::Short, "the other pool is judged");
    let none = outcomes("whole", MALES, total, r#"{ "pools": [] }"#);
    assert_eq!(none, [Outcome::NotAssessed], "no list of animals is stated");
    let none = outcomes("whole", MALES, total, r#"{ "animals": [] }"#);
    assert_eq!(none, [Outcome::Met], "nobody is no male");
}

/// What is asked of a list, a part of the sentence, the words it points at.
#[test]
fn mistakes_with_lists_and_formulas_are_told_at_their_place() {
    let list = "it.each(\"depth\")";
    for (answer, told, at) in [
        (
            format!("at_least({list}, it.limit(\"low\"))"),
            "what the design has is a list of values",
            "at_least",
        ),
        ("total(it.limit(\"low\"))".to_owned(), "expected is a list of values", "total"),
        ("total([it.limit(\"low\")])".to_owned(), "it.each", "total"),
        (
            "it.each(\"depths\")".to_owned(),
            "no \"depths\" under \"each\"; the nearest there is is \"depth\"",
            "each",
        ),
        (format!("nearest({list}, count({list}))"), "cannot be held against a number", "nearest"),
        (
            format!(
                "let l = where_at_least({list}, it.limit(\"low\")); where_at_least(l, it.limit(\"low\"))"
            ),
            "narrowed by where_at_least already",
            "where_at_least",
        ),
        (format!("let b = {list} == {list};"), "not compared", "=="),
        (format!("let b = {list} > it.limit(\"low\");"), "not compared", ">"),
        (format!("totl({list})"), "nearest there is is \"total\"", "totl"),
        (format!("for x in {list} {{ }}"), "", ""),
        (format!("{list}[0]"), "", ""),
        (
            "it.formula(\"share of a lenght\", [])".to_owned(),
            "nearest there is is \"share of a length\"",
            "formula",
        ),
        (
            "it.formula(\"share of a length\", [it.limit(\"low\")])".to_owned(),
            "takes [k, b], which are a number, a length; given are a length",
            "formula",
        ),
        (
            "it.formula(\"share of a length\", [1, 2])".to_owned(),
            "an argument of the formula is a number",
            "formula",
        ),
    ] {
        let found = faults(&with_card(&card("whole", DEPTHS), &format!("fn judge(it) {{ {answer} }}")));
        let hit =
            found.iter().any(|(message, place)| message.contains(told) && (at.is_empty() || place == at));
        assert!(hit, "{answer}\n  expected {told:?} at {at:?}, found {found:?}");
    }
    for (about, lists, told) in [
        ("pool", DEPTHS, "not several belong to \"pool\""),
        ("circuit", MALES, "not several belong to \"circuit\""),
    ] {
        let found = faults(&with_card(&card(about, lists), "fn judge(it) { 1 }"));
        assert!(found.iter().any(|(message, _)| message.contains(told)), "{about}: {found:?}");
    }
}

/// Ten thousand lists of lists, and sums of sums, end at the same bounds as everything else.
#[test]
fn lists_do_not_get_round_the_bounds() {
    let endless =
        "let l = it.each(\"depth\"); let t = total(l); loop { t = t + total(where_at_least(l, t)); }";
    let found = faults(&with_card(&card("whole", DEPTHS), &format!("fn judge(it) {{ {endless} }}")));
    assert!(found.len() == 1 && found[0].0.contains("more than 4096 lines"), "{found:?}");
}
