//! Whole pages of two of the example designs, on paper of 80 and of 120 columns.

use haulout_report::page::{Layout, Subject, page};
use haulout_report::tell;

use crate::common::{EXAMPLES, built_in, load, reviewed};

fn whole(at: usize, width: usize) -> String {
    let (name, text) = EXAMPLES[at];
    let (tree, design) = load(text);
    let ruleset = built_in();
    let answers = tell(&reviewed(&design, &ruleset), &tree);
    let subject = Subject {
        file: name,
        tree: &tree,
        design: &design,
        stage: design.project.stage().name(),
        on: "2026-11-25",
        ruleset: &ruleset,
        answers: &answers,
    };
    let page = page(&subject, Layout { width, colour: false });
    for line in page.lines() {
        assert!(line.chars().count() <= width, "{width}: {line}");
    }
    page
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
