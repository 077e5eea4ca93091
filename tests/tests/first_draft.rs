//! The first draft is the sound room with the listed mistakes, and each mistake is found where it stands.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_place::Pointer;
use haulout_tests::draft::{draft_of, mistakes};
use haulout_tests::{Said, examples, load, repository, ruleset, said};

fn example(name: &str) -> String {
    let found = examples().into_iter().find(|(file, _)| file == name);
    found.unwrap_or_else(|| panic!("{name} is not among the examples")).1
}

/// With `HAULOUT_WRITE=1` the draft is written anew from the sound design and the list.
#[test]
#[allow(clippy::disallowed_methods, reason = "the draft is written beside the list it follows from")]
fn the_draft_is_the_sound_room_with_the_listed_mistakes() {
    let draft = draft_of(&example("reedwater-sound.json"));
    let path = repository().join("example-designs/reedwater-first-draft.json");
    if std::env::var_os("HAULOUT_WRITE").is_some() {
        std::fs::write(&path, &draft).expect("the repository can be written");
    }
    let stands = std::fs::read_to_string(&path).expect("the draft is there");
    assert!(
        stands == draft,
        "the draft is not the sound room with the listed mistakes: HAULOUT_WRITE=1 writes it"
    );
}

/// Whether a rule falls short somewhere, and names a place that is or holds the pointer, or lies inside it.
fn finds(rule: &str, says: &[(String, Said)], pointer: &str) -> bool {
    let wanted = Pointer::parse(pointer).expect("the list holds pointers");
    let short =
        says.iter().filter(|(key, said)| key.split(' ').next() == Some(rule) && said.outcome == "short");
    let mut places = short.flat_map(|(_, said)| &said.places).filter_map(|place| Pointer::parse(place).ok());
    places.any(|place| place.contains(&wanted) || wanted.contains(&place))
}

#[test]
fn every_mistake_of_a_judged_chapter_is_found_where_it_stands() {
    let ruleset = ruleset();
    let says = |text: &str| -> Vec<(String, Said)> {
        let loaded = load(text).unwrap_or_else(|problems| panic!("{problems:#?}"));
        said(&loaded, &ruleset, &[]).into_iter().collect()
    };
    let sound = example("reedwater-sound.json");
    let (draft, sound) = (says(&draft_of(&sound)), says(&sound));
    let mut found = 0;
    for mistake in mistakes() {
        let Some(rule) = &mistake.found_by else { continue };
        assert!(
            finds(rule, &draft, &mistake.pointer),
            "{rule} does not find {} in the draft",
            mistake.pointer
        );
        assert!(!finds(rule, &sound, &mistake.pointer), "{rule} finds {} in the sound room", mistake.pointer);
        found += 1;
    }
    assert!(found >= 7, "only {found} mistakes are looked for");
}
