//! The page of promises about house scripts: the tests it names exist, its numbers are those of the source, and what no
//! other test holds is held here.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]
#![allow(clippy::disallowed_methods, reason = "this test reads the sources and the page of the repository")]

use haulout_engine::review;
use haulout_model::Design;
use haulout_tests::{bundled, examples, load, options, repository};

const PAGE: &str = "rules/annexes/PROMISES.md";

fn text(path: &str) -> String {
    std::fs::read_to_string(repository().join(path)).unwrap_or_else(|error| panic!("{path}: {error}"))
}

/// Promise, and the tests it names: file and function.
fn promises() -> Vec<(String, Vec<(String, String)>)> {
    let page = text(PAGE);
    let rows = page.lines().filter(|line| line.starts_with("| ")).skip(1);
    rows.map(|row| {
        let (promise, held) = row.rsplit_once(" | ").unwrap_or_else(|| panic!("no second column: {row}"));
        let (mut file, mut tests) = (String::new(), Vec::new());
        for name in held.split('`').skip(1).step_by(2) {
            if name.ends_with(".rs") {
                file = name.to_owned();
            } else {
                tests.push((file.clone(), name.to_owned()));
            }
        }
        (promise.trim_start_matches("| ").to_owned(), tests)
    })
    .collect()
}

#[test]
fn every_promise_names_tests_that_are_there() {
    let all = promises();
    assert!(all.len() >= 12, "only {} promises", all.len());
    for (promise, tests) in all {
        assert!(!tests.is_empty(), "nothing holds: {promise}");
        for (file, test) in tests {
            let source = text(&file);
            let at = source.find(&format!("fn {test}()")).unwrap_or_else(|| panic!("{file} has no {test}"));
            let before = source[..at].trim_end().lines().rev().take(4).collect::<Vec<_>>();
            assert!(before.iter().any(|line| line.trim() == "#[test]"), "{file}: {test} is no test");
            assert!(
                !before.iter().any(|line| line.contains("#[ignore")),
                "{file}: {test} is left out of the runs"
            );
        }
    }
}

/// The page says numbers; here is where each stands in the source.
#[test]
fn the_numbers_of_the_page_are_those_of_the_source() {
    let page = text(PAGE);
    for (file, declared, said) in [
        ("engine.rs", "MOST_OPERATIONS: u64 = 100_000;", "100000 operations"),
        ("tape.rs", "MOST_STEPS: usize = 4_096;", "4096 lines of working"),
        ("tape.rs", "MOST_CHECKS: usize = 1_024;", "1024 checks"),
        ("tape.rs", "DEEPEST: usize = 32;", "expressions and answers 32 deep"),
        ("engine.rs", "DEEPEST_EXPRESSION: usize = 32;", "expressions and answers 32 deep"),
        ("engine.rs", "MOST_ELEMENTS: usize = 256;", "256 things"),
        ("engine.rs", "LONGEST_STRING: usize = 16 * 1024;", "text of 16384 bytes"),
        ("head.rs", "LONGEST: usize = 60_000;", "a script of 60000 bytes"),
    ] {
        let source = text(&format!("core/script/src/{file}"));
        assert!(source.contains(declared), "{file} declares no {declared}");
        assert!(page.contains(said), "the page does not say {said}");
    }
}

/// Words by which a source reaches files, other machines, processes, the clock, chance or the environment.
const WORLD: &[&str] = &[
    "std::fs",
    "std::net",
    "std::env",
    "std::process",
    "std::thread",
    "std::time",
    "std::io",
    "Instant",
    "SystemTime",
    "RandomState",
    "HashMap",
    "HashSet",
    "rand::",
    "getrandom",
    "println!",
    "eprintln!",
    "include_str!",
    "static mut",
];

#[test]
fn the_script_room_knows_nothing_of_the_world() {
    let folder = repository().join("core/script/src");
    for file in std::fs::read_dir(folder).expect("the room has sources") {
        let path = file.expect("it can be listed").path();
        let source = std::fs::read_to_string(&path).expect("a source is a text");
        for word in WORLD {
            assert!(!source.contains(word), "{} has {word}", path.display());
        }
    }
    let manifest = text("Cargo.toml");
    let rhai =
        manifest.lines().find(|line| line.starts_with("rhai = ")).expect("the engine of scripts is listed");
    for needed in ["default-features = false", "no_time", "no_module", "no_custom_syntax", "no_closure"] {
        assert!(rhai.contains(needed), "{rhai} lacks {needed}");
    }
    // Without a package of functions an engine can do nothing but what is registered.
    assert!(text("core/script/src/engine.rs").contains("Engine::new_raw()"));
}

#[test]
fn arithmetic_that_differs_between_machines_is_banned() {
    let bans = text(".clippy.toml");
    for method in ["f64::powf", "f64::exp", "f64::ln", "f64::sin", "f64::cos", "f64::tan"] {
        assert!(bans.contains(&format!("\"{method}\"")), "{method} may be called");
    }
    let engine = text("core/script/src/engine.rs");
    for sign in ["\"**\"", "\"**=\"", "\"%\"", "\"%=\""] {
        assert!(engine.contains(sign), "{sign} is not switched off");
    }
}

/// As many answers as there are subjects; one where there is none.
#[test]
fn a_script_adds_one_answer_a_subject() {
    let ruleset = bundled::scripts();
    let subjects =
        |design: &Design, rule: usize| ruleset.rules[rule].card.about.walk(design).subjects.len().max(1);
    for (name, text) in examples() {
        let loaded = load(&text).unwrap_or_else(|problems| panic!("{problems:#?}"));
        let review = review(&loaded.design, &ruleset, &[], &options());
        for (position, rule) in ruleset.rules.iter().enumerate() {
            let answers = review.answers.iter().filter(|a| a.rule == position).count();
            assert_eq!(answers, subjects(&loaded.design, position), "{name}: {}", rule.card.id);
        }
    }
}
