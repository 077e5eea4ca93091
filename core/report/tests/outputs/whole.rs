//! Whole pages of two of the example designs, on paper of 80 and of 120 columns.

use haulout_document::Tree;
use haulout_engine::Review;
use haulout_report::page::{Layout, Subject, page};
use haulout_report::{Told, markdown, tell, tell_for_page, tell_for_table};

use crate::common::{EXAMPLES, built_in, load, reviewed};

const LAYOUT: Layout = Layout { width: 80, colour: false };

fn whole(at: usize, width: usize) -> String {
    pages(at, tell_for_page, |subject| page(subject, Layout { width, ..LAYOUT })).0
}

/// Some of all that can be told of a review.
type Telling = for<'r, 'd, 't> fn(&'r Review<'d>, &'t Tree) -> Vec<Told>;

/// What is made of all that can be told, and of what is told for it.
fn pages(at: usize, telling: Telling, made: impl Fn(&Subject<'_>) -> String) -> (String, String) {
    let (name, text) = EXAMPLES[at];
    let (tree, design) = load(text);
    let ruleset = built_in();
    let review = reviewed(&design, &ruleset);
    let (all, brief) = (tell(&review, &tree), telling(&review, &tree));
    let subject = Subject {
        file: name,
        tree: &tree,
        design: &design,
        stage: design.project.stage().name(),
        on: "2026-11-25",
        ruleset: &ruleset,
        answers: &all,
    };
    (made(&subject), made(&Subject { answers: &brief, ..subject }))
}

#[test]
fn what_is_told_for_a_page_is_all_that_a_page_shows() {
    for at in 0..EXAMPLES.len() {
        let (all, brief) = pages(at, tell_for_page, |subject| page(subject, LAYOUT));
        assert_eq!(all, brief);
        let (all, brief) = pages(at, tell_for_table, markdown);
        assert_eq!(all, brief);
    }
}

#[test]
fn no_line_is_longer_than_the_paper() {
    for (at, width) in (0..EXAMPLES.len()).flat_map(|at| [(at, 80), (at, 120)]) {
        for line in whole(at, width).lines() {
            assert!(line.chars().count() <= width, "{width}: {line}");
        }
    }
}

#[test]
fn the_small_pool_on_80_columns() {
    insta::assert_snapshot!(whole(2, 80));
}

#[test]
fn the_small_pool_on_120_columns() {
    insta::assert_snapshot!(whole(2, 120));
}

#[test]
fn the_porch_in_feet_on_80_columns() {
    insta::assert_snapshot!(whole(0, 80));
}

#[test]
fn the_porch_in_feet_on_120_columns() {
    insta::assert_snapshot!(whole(0, 120));
}

/// Widening the bore raises the flow by more than its square; the static head is a tenth of what the pump pushes against.
#[test]
fn the_line_pointed_at_is_the_decision_that_helps_most() {
    let page = whole(2, 80);
    assert!(page.contains("circuits, loop, runs, delivery: \"bore\": \"12 mm\""), "{page}");
}
