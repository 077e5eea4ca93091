//! Sites and depth bands worked by hand: plain rectangles and a 3-4-5 triangle.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_figures::basking::site::{DRY_AREA, NEAREST_SITE};
use haulout_figures::window::shares::{REFUGE_SHARE, REST_SHARE};
use haulout_sheet::{Book, Case, Figure, Limits, Line};
use haulout_tests::{load, number};

/// What a figure gives for every subject in the order of the file.
fn worked<T: Clone + Send + Sync + 'static>(text: &str, figure: &'static Figure<Line<T>>) -> Vec<f64> {
    let loaded = load(text).unwrap_or_else(|p| panic!("{p:#?}\n{text}"));
    let limits = Limits::default();
    let book = Book::new(&loaded.design, &limits, &[]);
    let subjects = figure.card.about.walk(&loaded.design).subjects;
    let lines = subjects.iter().map(|at| figure.of(book.sheet(Case::NORMAL), *at));
    lines.map(|line| number(&book, line.unwrap_or_else(|g| panic!("{g:#?}")).id())).collect()
}

fn near(found: &[f64], by_hand: &[f64]) {
    assert_eq!(found.len(), by_hand.len());
    for (a, b) in found.iter().zip(by_hand) {
        assert!((a - b).abs() <= 1e-9, "{found:?}, by hand {by_hand:?}");
    }
}

/// ```text
///   0.7  . . . +------+     stump 0.5 by 0.5, its corner 0.3 across and 0.4 up from the log's: 0.5 m apart
///              |stump |
///   0.3 +----+ . . . .  +--+
///       |log |          |plank, 1.2 m from the log, 0.4 m from the stump's right, 0.4 m under it
///   0   +----+          +--+
///       0   1.2  1.5  2.0  2.4  3.0
/// ```
/// Plank to stump: 0.4 m across (2.0 to 2.4) and 0.4 m up (0.3 to 0.7): 0.4 × sqrt(2) = 0.565685425 m, so its nearest is
/// the stump; the stump's and the log's nearest is the other, 0.5 m away. Areas 1.2 × 0.3, 0.5 × 0.5, 0.6 × 0.3.
#[test]
fn two_logs_and_a_stump() {
    let site = |id: &str, corner: &str, size: &str| {
        format!(
            r#"{{ "id": "{id}", "space": "side", "pool": "main", "level": "+0.50 m", "outline": {{ "rect": {{ "corner": {corner}, "size": {size} }} }} }}"#
        )
    };
    let sites = [
        site("log", "[0, 0]", "[1.2, 0.3]"),
        site("stump", "[1.5, 0.7]", "[0.5, 0.5]"),
        site("plank", "[2.4, 0]", "[0.6, 0.3]"),
    ];
    let text = room("0.40 m", "\"none\"", &format!("[{}]", sites.join(", ")));
    near(&worked(&text, &NEAREST_SITE), &[0.5, 0.5, 0.565_685_424_949_238]);
    near(&worked(&text, &DRY_AREA), &[0.36, 0.25, 0.18]);
}

/// Of 4 by 3 m a shelf 4 by 0.6 m lies 0.10 m deep and a pit 1 by 0.9 m 0.60 m deep, the rest 0.25 m. Turtles of 20 cm rest
/// under up to min(1.2 × 0.20, 0.20) = 0.20 m: on the shelf, 2.4 of 12 m², 0.2. They get away in 1.5 × 0.20 = 0.30 m: in the
/// pit, 0.9 of 12 m², 0.075.
#[test]
fn a_shelf_and_a_pit() {
    let zones = r#"[
        { "id": "shelf", "depth": "0.10 m", "outline": { "rect": { "corner": [0.5, 0.5], "size": [4, 0.6] } } },
        { "id": "pit", "depth": "0.60 m", "outline": { "rect": { "corner": [2, 2], "size": [1, 0.9] } } } ]"#;
    let text = room("0.25 m", zones, "\"none\"");
    near(&worked(&text, &REST_SHARE), &[0.2]);
    near(&worked(&text, &REFUGE_SHARE), &[0.075]);
}

fn room(depth: &str, zones: &str, basking: &str) -> String {
    format!(
        r#"{{ "edition": 0, "project": {{ "title": "Side" }},
  "hall": {{ "spaces": [ {{ "id": "side", "for": "animals", "floor-level": "+0.00 m", "outline": {{ "rect": {{ "corner": [0, 0], "size": [5, 4] }} }} }} ] }},
  "animals": [ {{ "id": "sliders", "species": "trachemys-scripta", "sexes": "1.3.0", "spaces": ["side"],
    "body-length": {{ "grown": "20 cm" }}, "body-height": {{ "grown": "9 cm" }} }} ],
  "pools": [ {{ "id": "main", "space": "side", "outline": {{ "rect": {{ "corner": [0.5, 0.5], "size": [4, 3] }} }},
    "levels": {{ "low": "+0.36 m", "water": "+0.40 m" }}, "depth": "{depth}", "zones": {zones} }} ],
  "basking": {basking} }}"#
    )
}
