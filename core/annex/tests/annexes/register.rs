//! Species, values and authorities of annexes reach figures and rules through the register of the run.

use haulout_engine::Outcome;
use haulout_sheet::{Book, Case, GapKind, Made, Roots};

use super::common::{annex, answer, design, file, folder, joined, reviewed};

const BAND: &str = include_str!("../../../../rules/annexes/house-model/water-within-species-band.rhai");

const POOL: &str = r#"{ "animals": [{ "id": "terrapins", "species": "SPECIES" }],
    "pools": [{ "id": "main", "water": { "temperature": "25 °C" } }] }"#;

fn with_rule(name: &str, members: &str) -> haulout_annex::Folder {
    let card = file("annex.json", &super::common::card(name, members));
    folder(name, vec![card, file("water-within-species-band.rhai", BAND)])
}

const COOL: &str = r#""register": [{ "species": "Emys orbicularis", "values": {
    "water-high": { "value": "24 °C", "basis": "reported", "source": "studbook of the house, 2025" } } }]"#;

/// 25 °C lies within 20 to 28 °C (Austria, 2. THV, Annex 3), not within a band that ends at 24 °C.
#[test]
fn a_value_of_the_house_decides_and_the_answer_names_the_annex() {
    let pool = design(&POOL.replace("SPECIES", "emys-orbicularis"));
    let plain = joined(&[with_rule("house", "")]).expect("sound");
    assert_eq!(answer(&reviewed(&pool, &plain), "water-within-species-band").outcome, Outcome::Met);
    let cool = joined(&[with_rule("house", COOL)]).expect("sound");
    let review = reviewed(&pool, &cool);
    let found = answer(&review, "water-within-species-band");
    assert_eq!(found.outcome, Outcome::Short);
    let came = |line| match review.book.record(line).made {
        Made::Register(value, _) => review.book.register().annex_of(value),
        _ => None,
    };
    let annexes: Vec<u16> = Roots::of(&review.book, &found.lines).0.into_iter().filter_map(came).collect();
    assert_eq!(annexes, [0], "one value of the two ends came from the annex");
    assert_eq!((cool.given.len(), cool.given[0].from, cool.given[0].to), (1, Some(301.15), 297.15));
    // Another run in the same process is as it was.
    assert_eq!(answer(&reviewed(&pool, &plain), "water-within-species-band").outcome, Outcome::Met);
}

const NEW: &str = r#""species": [{ "key": "terrapin-nova", "latin": "Terrapene nova", "common": "new terrapin", "values": {
    "body-length": { "value": "30 cm", "basis": "reported", "source": "studbook of the house, 2025" },
    "water-low": { "value": "20 °C", "basis": "common practice", "source": "the keepers of the house" },
    "water-high": { "value": "27 °C", "basis": "common practice", "source": "the keepers of the house" },
    "body": { "value": "turtle", "basis": "published", "source": "zoological order" },
    "climbs": { "value": true, "basis": "recalled", "source": "the keepers of the house" },
    "jumps": { "value": false, "basis": "recalled", "source": "the keepers of the house" },
    "digs": { "value": false, "basis": "recalled", "source": "the keepers of the house" },
    "hazardous": { "value": false, "basis": "recalled", "source": "the keepers of the house" } } }]"#;

#[test]
fn a_species_of_the_house_is_known_to_figures_and_scripts() {
    let pool = design(&POOL.replace("SPECIES", "Terrapene nova"));
    let ruleset = joined(&[with_rule("house", NEW)]).expect("sound");
    let review = reviewed(&pool, &ruleset);
    assert_eq!(answer(&review, "water-within-species-band").outcome, Outcome::Met);
    // A turtle reaches one shell length and rights itself in one (keepers' practice, as the figures cite it).
    for (figure, si) in [("body-length", 0.30), ("reach", 0.30), ("righting-depth", 0.30)] {
        let book = Book::new(&pool, &ruleset.limits, &[]);
        let found = haulout_figures::CATALOGUE.iter().find(|f| f.card().id == figure).expect("a figure");
        let group = found.card().about.walk(&pool).subjects[0];
        let line = found.line(book.sheet(Case::default()), group).expect("the annex gives it");
        assert_eq!(book.record(line).datum.number(), Some(si), "{figure}");
    }
    let without = joined(&[with_rule("other", "")]).expect("sound");
    let review = reviewed(&pool, &without);
    assert_eq!(answer(&review, "water-within-species-band").gaps[0].kind, GapKind::Unknown);
}

const SCHEME: &str = r#""authorities": [{ "id": "house-2026", "matter": "welfare", "title": "Standard of the house",
    "edition": "first", "year": 2026, "scope": "turtles of the house" }]"#;

/// A built-in rule has no table of a scheme that came with an annex: it leaves open, it does not judge by another one's.
#[test]
fn an_authority_of_the_house_is_known_and_no_built_in_table_stands_in_for_it() {
    let text = POOL.replace("SPECIES", "emys-orbicularis");
    let held = text.replacen('{', r#"{ "project": { "held-to": { "welfare": ["house-2026"] } }, "#, 1);
    let pool = design(&held);
    let ruleset = joined(&[annex("house", SCHEME)]).expect("sound");
    let review = reviewed(&pool, &ruleset);
    let found = answer(&review, "depth-of-the-scheme");
    assert_eq!((found.outcome, found.gaps[0].kind), (Outcome::NotAssessed, GapKind::NoAuthority));
    assert_eq!(
        found.authority.and_then(|at| review.book.register().authority(at)).map(|a| a.id),
        Some("house-2026")
    );
    assert!(found.gaps[0].what.contains("came with an annex"), "{}", found.gaps[0].what);
}
