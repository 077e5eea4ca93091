//! The pages as they stand.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_document::{Limits, read};
use haulout_report::page::{Layout, Subject, page, problem_page};
use haulout_report::{Written, figured, manual_page, rule_list, sheet_page, tell};
use haulout_sheet::Book;

use crate::common::{POOL, house, load, reviewed};

const PLAIN: Layout = Layout { width: 80, colour: false };

fn review_page(layout: Layout) -> String {
    let (tree, design) = load(POOL);
    let ruleset = house();
    let answers = tell(&reviewed(&design, &ruleset), &tree);
    let subject = Subject {
        file: "pool.json",
        tree: &tree,
        design: &design,
        stage: "detailed",
        on: "2026-11-25",
        ruleset: &ruleset,
        answers: &answers,
    };
    page(&subject, layout)
}

#[test]
fn the_page_of_a_review() {
    insta::assert_snapshot!(review_page(PLAIN));
}

#[test]
fn nothing_is_wider_than_the_page_and_nothing_is_said_to_comply() {
    for width in [60, 80, 120] {
        let page = review_page(Layout { width, colour: false });
        for line in page.lines() {
            assert!(line.chars().count() <= width, "{width}: {line}");
        }
        for word in
            ["complies", "compliant", "safe ", "passed", "failed", "error", "warning", "✓", "✗", "^", "-->"]
        {
            assert!(!page.to_lowercase().contains(word), "{word}");
        }
        assert!(page.contains("Screening results."));
    }
}

#[test]
fn colour_adds_nothing_but_colour() {
    let coloured = review_page(Layout { width: 80, colour: true });
    let bare = coloured.replace("\u{1b}[1m", "").replace("\u{1b}[0m", "");
    assert_ne!(coloured, bare);
    assert_eq!(bare, review_page(PLAIN));
}

/// Life of animals comes before money, although the depth is missed by more (1.5 K of 28 °C, 17 % of the depth).
#[test]
fn consequence_ranks_first() {
    let page = review_page(PLAIN);
    let at = |words: &str| page.find(words).unwrap_or_else(|| panic!("{words} is missing:\n{page}"));
    assert!(at("LIFE OF ANIMALS") < at("1  The water is too warm"));
    assert!(at("1  The water is too warm") < at("MONEY"));
    assert!(at("MONEY") < at("2  The pool is not deep enough"));
    assert!(page.contains("short by 1.5 K"));
    assert!(page.contains("short by 0.10 m"));
    assert!(page.contains("Water drowns people."));
}

#[test]
fn the_page_of_a_document_that_cannot_be_read() {
    let broken = "{ \"edition\": 0,\n  \"pools\": [],\n  \"pools\": [\n";
    let problems = read(broken.as_bytes(), &Limits::default()).problems;
    insta::assert_snapshot!(problem_page("broken.json", Written::Part(broken), &problems, PLAIN));
}

#[test]
fn the_page_of_a_sheet() {
    let (tree, design) = load(POOL);
    let limits = haulout_sheet::Limits::default();
    let book = Book::new(&design, &limits, &[]);
    let wanted = |id: &str, key: &str| ["net-volume", "greatest-depth"].contains(&id) && key == "pool:main";
    insta::assert_snapshot!(sheet_page(&figured(&book, &tree, haulout_figures::CATALOGUE, &wanted), 80));
}

#[test]
fn the_rulebook_and_a_manual_page() {
    let rules = house().rules;
    insta::assert_snapshot!(format!(
        "{}\n----\n{}",
        rule_list(&rules, 80),
        manual_page(&crate::common::built_in(), &rules[0], 80)
    ));
}
