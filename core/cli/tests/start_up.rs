//! The start-up of a water as columns, as numbers for programs and as a chart, and every way to ask for it wrongly.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::process::{Command, Stdio};

const SOUND: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../example-designs/reedwater-sound.json");
const SMALL: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../example-designs/small-pool.json");

fn run(arguments: &[&str]) -> (String, String, Option<i32>) {
    let done = Command::new(env!("CARGO_BIN_EXE_haulout"))
        .args(arguments)
        .stdin(Stdio::null())
        .output()
        .expect("the binary was built");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    (text(&done.stdout), text(&done.stderr), done.status.code())
}

fn courses(design: &str) -> serde_json::Value {
    let (text, _, status) = run(&["sheet", design, "course", "--as", "json"]);
    assert_eq!(status, Some(0));
    let schema: serde_json::Value = serde_json::from_str(haulout_schemas::SHEET).expect("a schema is JSON");
    let value: serde_json::Value = serde_json::from_str(&text).expect("the output is JSON");
    let validator = jsonschema::validator_for(&schema).expect("a published schema is one");
    let wrong: Vec<String> = validator.iter_errors(&value).map(|error| error.to_string()).collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
    value
}

#[test]
fn page_numbers_and_chart_tell_of_the_same_water() {
    let told = courses(SOUND);
    let course = &told["courses"][0]["course"];
    // 70 days until the last step and 90 after it, and the first day itself.
    for what in ["total-ammonia", "nitrite", "nitrate"] {
        for pace in ["slow", "middle", "fast"] {
            assert_eq!(course[what][pace].as_array().map(Vec::len), Some(161), "{what} {pace}");
        }
    }
    let (page, _, status) = run(&["sheet", SOUND, "course"]);
    assert_eq!(status, Some(0));
    assert!(page.lines().all(|line| line.chars().count() <= 80), "{page}");
    let at = |pace: &str| course["total-ammonia"][pace][14].as_f64().expect("a number a day");
    let each = ["slow", "middle", "fast"].map(at);
    let [low, high] = [each.into_iter().fold(f64::INFINITY, f64::min), each.into_iter().fold(0.0, f64::max)];
    let row = page.lines().find(|line| line.starts_with("   14")).expect("each week is told");
    assert!(row.contains(&format!("{low:.2} to {high:.2}")), "{row}");
    let (chart, remarks, status) = run(&["sheet", SOUND, "course", "--as", "svg"]);
    assert_eq!((remarks.as_str(), status), ("", Some(0)));
    assert!(chart.starts_with("<?xml") && chart.trim_end().ends_with("</svg>"));
    assert!(chart.contains("day 7: 4 pond") && chart.contains("target 0.3"));
}

#[test]
fn what_cannot_be_told_is_said() {
    let gaps = &courses(SMALL)["courses"][0];
    assert!(gaps["course"].is_null() && gaps["gaps"][0]["places"][0]["pointer"] == "/animals/0/feeds");
    let wrong = [
        (vec![SMALL, "course", "--as", "svg"], "/animals/0/feeds: feed, not stated"),
        (vec![SOUND, "net-volume", "--as", "svg"], "only the start-up is drawn as a chart"),
        (vec![SOUND, "--as", "svg"], "only the start-up is drawn as a chart"),
        (vec![SOUND, "course", "--subject", "pool:none"], "here pool:main"),
        (vec![SOUND, "cours"], "there is no figure \"cours\""),
    ];
    for (arguments, why) in wrong {
        let (out, remarks, status) = run(&[&["sheet"][..], &arguments].concat());
        assert_eq!((out.as_str(), status), ("", Some(2)), "{arguments:?}");
        assert!(remarks.contains(why), "{arguments:?}: {remarks}");
    }
}
