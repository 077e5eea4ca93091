//! A pump and its pipes that meet nowhere, several times, or past the last point of the curve: nothing is assumed, both sides are shown.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]
#![allow(clippy::disallowed_methods, reason = "these tests write the files that the binary is run on")]

use std::process::{Command, Stdio};

use serde_json::Value;

const SOUND: &str = include_str!("../../../example-designs/reedwater-sound.json");
/// The curve of the second circuit of the sound room, which lifts 0.35 m before any loss.
const CURVE: &str = "[[0, 3.2], [2, 2.8], [4, 2.1], [6, 0.9], [7, 0.2]]";

fn run(design: &std::path::Path, arguments: &[&str]) -> (String, Option<i32>) {
    let mut command = Command::new(env!("CARGO_BIN_EXE_haulout"));
    let done = command.arg(arguments[0]).arg(design).args(&arguments[1..]).stdin(Stdio::null()).output();
    let done = done.expect("the binary was built");
    (String::from_utf8_lossy(&done.stdout).into_owned(), done.status.code())
}

/// What the sheet says of the delivered flow, and the page of the review, in one line each.
fn said(name: &str, points: &str) -> (Value, String) {
    assert_eq!(SOUND.matches(CURVE).count(), 1, "the example has changed");
    let file = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::write(&file, SOUND.replace(CURVE, points)).expect("it is written");
    let (sheet, _) =
        run(&file, &["sheet", "delivered-flow", "--subject", "circuit:basin-loop", "--as", "json"]);
    let sheet: Value = serde_json::from_str(&sheet).expect("the sheet is JSON");
    let (page, status) = run(&file, &["review", "--on", "2026-11-25"]);
    assert_eq!(status, Some(1), "a required check is open:\n{page}");
    (sheet["figures"].clone(), page.split_whitespace().collect::<Vec<_>>().join(" "))
}

fn shown(name: &str, points: &str, words: &[&str]) {
    let (figures, page) = said(name, points);
    let figures = figures.as_array().expect("a list");
    assert!(!figures.is_empty());
    for figure in figures {
        assert!(figure["value"].is_null(), "{figure:#}");
        let gap = &figure["gaps"][0];
        let text = gap["what"].as_str().expect("it says what");
        assert!(words.iter().all(|word| text.contains(word)), "{text}");
        let places = gap["places"].as_array().expect("it says where");
        assert!(places.iter().any(|place| place["pointer"] == "/circuits/1/pump/curve"), "{places:#?}");
    }
    let waiting = format!("circuits, basin-loop, pump, curve ({}", words[0]);
    assert!(page.contains(&waiting), "{waiting}\n{page}");
}

#[test]
fn a_pump_too_weak_for_the_lift() {
    // At no flow at all it gives 0.30 m of the 0.35 m; its curve falls from there and the losses rise.
    let points = "[[0, 0.30], [1, 0.28], [2, 0.2], [4, 0.1]]";
    shown(
        "weak.json",
        points,
        &["the pump is too weak", "at 0.00 m3/h the pump gives 0.30 m and the system asks 0.35 m"],
    );
}

#[test]
fn a_curve_that_rises_first_and_is_met_twice() {
    // The lift is met on the way up: 0.2 m + 1.3 m h/m3 x Q = 0.35 m at Q = 0.115 m3/h, a little later with the losses.
    let points = "[[0, 0.2], [1, 1.5], [6, 0.9], [7, 0.2]]";
    shown("twice.json", points, &["pump and system meet at several flows", "(0.12 m3/h at 0.35 m and "]);
}

#[test]
fn a_curve_that_ends_before_the_flow() {
    let points = "[[0, 3.2], [1, 3.1], [1.5, 3.0], [2, 2.9]]";
    shown(
        "beyond.json",
        points,
        &["the flow lies beyond the last point of the pump curve", "at 2.00 m3/h the pump gives 2.90 m"],
    );
}
