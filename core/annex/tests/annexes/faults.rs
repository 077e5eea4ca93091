//! What is wrong with an annex is told at its place, and one broken part never silences the rest.

use haulout_annex::Source;

use super::common::{annex, card, file, folder, joined, told};

const SCRIPT: &str = include_str!("../../../../rules/annexes/house-model/resting-shallows.rhai");

/// Members of a card, a part of the sentence, the words it points at.
const WRONG: &[(&str, &str, &str)] = &[
    (
        r#""limits": [{ "rule": "depth-of-the-skeme", "limit": "depth", "value": "1 m" }]"#,
        "nearest there is is \"depth-of-the-scheme\"",
        "\"depth-of-the-skeme\"",
    ),
    (
        r#""limits": [{ "rule": "depth-of-the-scheme", "limit": "dept", "value": "1 m" }]"#,
        "nearest there is is \"depth\"",
        "\"dept\"",
    ),
    (
        r#""limits": [{ "rule": "depth-of-the-scheme", "limit": "depth", "value": "1 m" }]"#,
        "say which \"row\"",
        "\"depth\"",
    ),
    (
        r#""limits": [{ "rule": "depth-of-the-scheme", "limit": "depth", "row": "to 21 cm", "value": "1 m" }]"#,
        "no row \"to 21 cm\"",
        "\"to 21 cm\"",
    ),
    (
        r#""limits": [{ "rule": "depth-of-the-scheme", "limit": "depth", "row": "to 20 cm", "value": "1 kg" }]"#,
        "kg",
        "kg",
    ),
    (
        r#""limits": [{ "rule": "depth-of-the-scheme", "limit": "depth", "row": "to 20 cm", "value": 1 }]"#,
        "with its unit",
        "1",
    ),
    (
        r#""limits": [{ "rule": "depth-of-the-scheme", "limit": "depth", "row": "to 20 cm" }]"#,
        "lacks the key \"value\"",
        "",
    ),
    (
        r#""demands": [{ "rule": "depth-of-the-scheme", "demand": "should" }]"#,
        "what is a shall stays one",
        "\"should\"",
    ),
    (
        r#""demands": [{ "rule": "nothing-of-the-kind", "demand": "shall" }]"#,
        "there is no rule",
        "\"nothing-of-the-kind\"",
    ),
    (
        r#""register": [{ "species": "emys-orbiculars", "values": { "water-high": { "value": "26 °C", "basis": "reported", "source": "us" } } }]"#,
        "\"emys-orbicularis\"",
        "\"emys-orbiculars\"",
    ),
    (
        r#""register": [{ "species": "emys-orbicularis", "values": { "water-hihg": { "value": "26 °C", "basis": "reported", "source": "us" } } }]"#,
        "nearest there is is \"water-high\"",
        "{ \"value\": \"26 °C\", \"basis\": \"reported\", \"source\": \"us\" }",
    ),
    (
        r#""register": [{ "species": "emys-orbicularis", "values": { "water-high": { "value": "12 °C", "basis": "reported", "source": "us" } } }]"#,
        "water-low of emys-orbicularis lies above its water-high",
        "",
    ),
    (
        r#""register": [{ "species": "emys-orbicularis", "values": { "basks": { "value": 2, "basis": "reported", "source": "us" } } }]"#,
        "true or false",
        "2",
    ),
    (
        r#""species": [{ "key": "emys-orbicularis", "latin": "Emys nova", "common": "x", "values": { "mass": { "value": "1 kg", "basis": "reported", "source": "us" } } }]"#,
        "knows \"emys-orbicularis\" already",
        "\"emys-orbicularis\"",
    ),
    (
        r#""species": [{ "key": "testudo-nova", "latin": "Testudo nova", "common": "x", "values": { "climbs": { "value": true, "basis": "reported", "source": "us" } } }]"#,
        "body, jumps, digs, hazardous",
        "",
    ),
    (
        r#""authorities": [{ "id": "eu-2010-63", "matter": "welfare", "title": "t", "edition": "e", "year": 2026, "scope": "s" }]"#,
        "already",
        "\"eu-2010-63\"",
    ),
    (r#""limit": []"#, "limits", "\"limit\""),
];

#[test]
fn every_mistake_is_told_at_its_place() {
    for (members, sentence, place) in WRONG {
        let said = told(&joined(&[annex("house", members)]).err().unwrap_or_default());
        assert_eq!(said.len(), 1, "{members}: {said:#?}");
        assert!(said[0].0.contains(sentence), "{members}: {said:#?}");
        assert!(place.is_empty() || said[0].1 == *place, "{members}: {said:#?}");
    }
}

#[test]
fn an_annex_without_a_card_says_how_to_write_one() {
    let said =
        told(&joined(&[folder("rules/house", vec![file("resting-shallows.rhai", SCRIPT)])]).err().unwrap());
    assert_eq!(said.len(), 1);
    assert!(said[0].0.contains("annex.json") && said[0].0.contains("\"name\": \"house\""), "{said:?}");
    // What it says to write is enough.
    let start = said[0].0.find('{').expect("it shows a card");
    let shown = &said[0].0[start..=said[0].0.find('}').expect("to its end")];
    assert!(joined(&[folder("house", vec![file("annex.json", shown)])]).is_ok(), "{shown}");
}

#[test]
fn one_broken_part_never_silences_the_rest() {
    let broken = card(
        "first",
        r#""limits": [{ "rule": "depth-of-the-scheme" }, { "rule": "no-such-rule", "limit": "x", "value": "1 m" }], "colour": 1"#,
    );
    let wrong = SCRIPT.replace("\"resting-share\"]", "\"resting-shore\"]");
    let first = folder("first", vec![file("annex.json", &broken), file("resting-shallows.rhai", &wrong)]);
    let second =
        folder("second", vec![file("annex.json", "{ \"name\": "), file("x.rhai", "fn judge(it) { }")]);
    let troubles = joined(&[first, second]).err().expect("nothing of it can be used");
    let files: Vec<&str> = troubles.iter().map(|t| t.file.as_str()).collect();
    assert_eq!(
        files,
        ["first/annex.json", "first/resting-shallows.rhai", "second/annex.json", "second/x.rhai"]
    );
    let said = told(&troubles);
    for sentence in ["lacks the key \"limit\"", "no-such-rule", "colour", "resting-share", "its card"] {
        assert!(said.iter().any(|(message, _)| message.contains(sentence)), "{sentence}: {said:#?}");
    }
}

#[test]
fn a_name_of_a_rule_is_given_once() {
    let twice = |name: &str| {
        folder(name, vec![file("annex.json", &card(name, "")), file("resting-shallows.rhai", SCRIPT)])
    };
    let said = told(&joined(&[twice("first"), twice("second")]).err().expect("the second repeats the first"));
    assert!(said[0].0.contains("in the annex first"), "{said:?}");
    assert_eq!(said[0].1, "\"resting-shallows\"");
    let built_in = SCRIPT.replace("\"resting-shallows\"", "\"depth-of-the-scheme\"");
    let house =
        folder("h", vec![file("annex.json", &card("h", "")), file("depth-of-the-scheme.rhai", &built_in)]);
    let said = told(&joined(&[house]).err().expect("it is built in"));
    assert!(said[0].0.contains("among the built-in rules"), "{said:?}");
    let said = told(&joined(&[annex("same", ""), annex("same", "")]).err().expect("two of one name"));
    assert_eq!((said.len(), said[0].1.as_str()), (1, "\"same\""));
}

/// A text that is no card, a part of the sentence.
#[test]
fn a_text_that_is_no_card_is_refused_and_names_what_it_lacks() {
    for (text, sentence) in [
        ("", "nothing in this file"),
        ("   \n", "nothing in this file"),
        ("{}", "\"name\""),
        ("[]", "object"),
        ("\"house\"", "object"),
        ("name: house", ""),
        ("{ \"name\": \"a\", \"name\": \"b\" }", "twice"),
        ("{ \"name\": \"a\" } }", ""),
        ("{ \"name\": 7, \"version\": \"1\", \"licence\": \"MIT\", \"authors\": [\"us\"] }", "7"),
    ] {
        let files = vec![file("annex.json", text), file("x.rhai", "fn judge(it) { }")];
        let troubles = joined(&[folder("house", files)]).err().expect("it is no card");
        let said: Vec<String> = troubles[0].problems.iter().map(|p| p.message.clone()).collect();
        assert!(said.iter().any(|s| s.contains(sentence)), "{text:?}: {said:?}");
        assert_eq!(troubles.len(), 2, "{text:?}: the script beside it is looked at too");
        for problem in &troubles[0].problems {
            let range = problem.span.start as usize..problem.span.end as usize;
            assert!(text.get(range).is_some(), "{text:?}: {problem:?}");
        }
    }
    let bytes = |bytes: Vec<u8>| vec![Source { name: "annex.json".to_owned(), bytes: Ok(bytes) }];
    assert!(joined(&[folder("house", bytes(vec![b'{', 0xff, 0xfe]))]).is_err());
    let unreadable =
        vec![Source { name: "annex.json".to_owned(), bytes: Err("permission denied".to_owned()) }];
    let said = told(&joined(&[folder("house", unreadable)]).err().expect("it cannot be read"));
    assert_eq!(said[0].0, "permission denied");
}

/// Values that are no limit: each is refused, whatever the direction.
#[test]
fn a_limit_is_one_finite_quantity_of_its_dimension() {
    for value in [
        "\"\"",
        "\"30\"",
        "\"30 cm to 40 cm\"",
        "\"30 cm2\"",
        "\"NaN cm\"",
        "\"inf cm\"",
        "\"1e999 cm\"",
        "0.3",
        "true",
        "null",
        "[]",
        "{}",
    ] {
        let members = format!(
            "\"limits\": [{{ \"rule\": \"depth-of-the-scheme\", \"limit\": \"depth\", \"row\": \"to 20 cm\", \"value\": {value}, \"reason\": \"r\" }}]"
        );
        assert!(joined(&[annex("house", &members)]).is_err(), "{value}");
    }
    for reason in ["\"\"", "\"  \"", "7", "null"] {
        let members = format!(
            "\"limits\": [{{ \"rule\": \"depth-of-the-scheme\", \"limit\": \"depth\", \"row\": \"to 20 cm\", \"value\": \"1 cm\", \"reason\": {reason} }}]"
        );
        assert!(joined(&[annex("house", &members)]).is_err(), "a reason of {reason}");
    }
}
