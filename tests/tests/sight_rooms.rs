//! Three rooms worked by hand: over a rail, through a panel, behind a blind front. A narrow trough keeps every ray in one
//! upright plane, so that plain triangles do.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_figures::sight::bed::{
    BED_SEEN, CLARITY_NEEDED, FARTHEST_WAY, NEAREST_WAY, SEEN_DEPTH, WAY_TO_THE_DEEP,
};
use haulout_figures::sight::panel::DEEP_SEEN_THROUGH;
use haulout_figures::sight::pool::OUT_OF_SIGHT;
use haulout_sheet::{Book, Case, Figure, Limits, Line};
use haulout_tests::{load, number};

/// A trough 0.2 m wide and 2 m long, water +0.80, bed +0.20, rim +0.90; the visitor stands at y = -0.5.
fn trough(eye: &str, around: &str) -> String {
    format!(
        r#"{{ "edition": 0, "project": {{ "title": "Trough" }},
  "hall": {{ "spaces": [ {{ "id": "gallery", "for": "public", "floor-level": "+0.00 m", "outline": [[0, -3], [4, -3], [4, 0], [0, 0]] }} ] }},
  "pools": [ {{ "id": "trough", "outline": [[1.9, 0], [2.1, 0], [2.1, 2], [1.9, 2]], "depth": "0.60 m",
    "levels": {{ "water": "+0.80 m", "rim": "+0.90 m" }}, "water": {{ "secchi": "10 m" }} }} ],
  {around},
  "visitors": {{ "guards": GUARDS, "positions": [ {{ "id": "eye", "at": [2, -0.5], "eye": "{eye}", "space": "gallery", "pools": ["trough"] }} ] }} }}"#
    )
}

fn worked<T: Clone + Send + Sync + 'static>(text: &str, figure: &'static Figure<Line<T>>) -> f64 {
    let text = text.replace("GUARDS", "\"none\"");
    let loaded = load(&text).unwrap_or_else(|p| panic!("{p:#?}\n{text}"));
    let limits = Limits::default();
    let book = Book::new(&loaded.design, &limits, &[]);
    let subjects = figure.card.about.walk(&loaded.design).subjects;
    let line = figure.of(book.sheet(Case::NORMAL), subjects[0]).unwrap_or_else(|g| panic!("{g:#?}"));
    number(&book, line.id())
}

fn near(found: f64, by_hand: f64, within: f64) {
    assert!((found - by_hand).abs() <= within, "{found}, by hand {by_hand}");
}

/// Rows of places stand 0.052 m apart along 2 m: a share is good to one row in 38.
const ROW: f64 = 0.027;

/// ```text
///  eye +1.60 o
///             \         1.25 down for 1 along: over the rail's +1.10 at 0.4 m
///        rail |\
///      +1.10  | \   rim +0.90
///  -----------+--|~\~~~~~~~~~~~~~~~~~ +0.80
///    y -0.5 -0.1 0 |\  0.14
///                  | \_______________ +0.20
///                      0.458         2.0
/// ```
/// Down 0.80 m to the water: 0.80 / 1.25 = 0.64 m from the eye, y = 0.14. Tangent above 0.8, sine 0.8 / sqrt(1.64) =
/// 0.6247; below 0.6247 / 1.333 = 0.4686, cosine 0.8834, tangent 0.5305; 0.6 m deep: 0.3183 m on, y = 0.4583. Seen:
/// (2 - 0.4583) / 2 = 0.771 of the bed, so that nobody sees 0.229 of it. Nearest way in water 0.6 / 0.8834 = 0.679 m.
/// To the far end, 2.5 m away: 0.8 tan 67.3° + 0.6 tan 43.8° = 1.9125 + 0.5763 = 2.49, sines 0.9226 = 1.333 × 0.6921; way
/// 0.6 / cos 43.8° = 0.831 m. Half of the bed are the 1.0 m from y = 0.4583 on: to y = 1.4583, 1.9583 m away: 0.8 tan 60.7° +
/// 0.6 tan 40.8° = 1.9425, 0.8 tan 60.9° + 0.6 tan 40.95° = 1.958; way 0.6 / cos 40.95° = 0.7945 m, over 0.7: 1.135 m.
#[test]
fn over_a_rail_through_the_surface() {
    let rail = r#"[ { "id": "rail", "line": [[0, -0.1], [4, -0.1]], "top": "+1.10 m" } ]"#;
    let text = trough("1.60 m", r#""panels": "none", "barriers": "none""#).replace("GUARDS", rail);
    near(worked(&text, &BED_SEEN), 0.771, ROW);
    near(worked(&text, &NEAREST_WAY), 0.679, 0.02);
    near(worked(&text, &FARTHEST_WAY), 0.832, 0.01);
    near(worked(&text, &WAY_TO_THE_DEEP), 0.832, 0.01);
    near(worked(&text, &CLARITY_NEEDED), 1.135, 0.02);
    near(worked(&text, &OUT_OF_SIGHT), 0.229, ROW);
}

/// Under water a 3-4-5 triangle: sine 0.6, above 1.333 × 0.6 = 0.7998, cosine sqrt(1 - 0.63968) = 0.60027, tangent 1.3324.
/// With 0.7 m of way (0.7 of a clarity of 1 m) the ray runs 0.42 m on and 0.56 m down. From an eye 0.5 m over the water it
/// first runs 0.5 × 1.3324 = 0.6662 m: the middle of the trough, y = 1, is 1.0862 m away from an eye at y = -0.0862.
#[test]
fn how_deep_the_middle_may_be() {
    let text = trough("1.30 m", r#""panels": "none", "barriers": "none""#)
        .replace("[2, -0.5]", "[2, -0.0862]")
        .replace("10 m", "1.0 m");
    near(worked(&text, &SEEN_DEPTH), 0.56, 2e-5);
}

fn panel(sill: &str, more: &str) -> String {
    format!(
        r#""panels": [ {{ "id": "window", "pool": "trough", "line": [[1.9, 0], [2.1, 0]], "sill": "{sill}", "head": "+1.50 m" {more} }} ]"#
    )
}

/// ```text
///  eye +1.00 o--_      panel
///                -_    |
///                  -_  |~~~~~~~~~~~~~~~~ +0.80
///   0.6 down for     -_|
///   0.5 along          |\_   sill +0.40
///                      |  \_____________ +0.20
///           y -0.5     0  0.284         2.0
/// ```
/// At the sill: tangent to the level 0.6 / 0.5 = 1.2, sine 0.7682; in water 0.5763, cosine 0.8172, tangent 0.7052; the
/// last 0.20 m down take 0.20 / 0.7052 = 0.2836 m. At the waterline: tangent 0.4, sine 0.3714, in water 0.2786, tangent
/// 0.2901; 0.6 m down take 2.07 m, beyond the far end. Seen: (2 - 0.2836) / 2 = 0.858 of the bed.
#[test]
fn a_child_looks_through_a_panel() {
    let text = trough("1.00 m", &format!(r#"{}, "barriers": "none""#, panel("+0.40 m", "")));
    near(worked(&text, &BED_SEEN), 0.858, ROW);
    near(worked(&text, &DEEP_SEEN_THROUGH), 0.858, ROW);
}

/// Sill +0.95: down 0.05 m on 0.5 m, so 0.20 m on 2.0 m: the ray meets the water at y = 1.5 at the earliest. Tangent
/// above 10, sine 0.9950; below 0.7465, tangent 1.1218; 0.6 m deep it is 0.67 m on, y = 2.17, behind the end: nothing.
#[test]
fn a_sill_over_the_water_shows_nothing() {
    let text = trough("1.00 m", &format!(r#"{}, "barriers": "none""#, panel("+0.95 m", "")));
    near(worked(&text, &BED_SEEN), 0.0, 0.0);
}

/// ```text
///  eye +1.00 o   # boards to +1.20, y = -0.2
///                #     | panel, y = 0
///                #     |~~~~~~~
/// ```
/// The child's eye lies 0.20 m under the top of the boards: every ray that falls is stopped. Let into them, the panel shows
/// what it shows without them; behind glass of the same height too.
#[test]
fn a_blind_front_and_the_panel_let_into_it() {
    let front = |kind: &str| {
        format!(
            r#""barriers": [ {{ "id": "front", "line": [[0, -0.2], [4, -0.2]], "top": "+1.20 m", "kind": "{kind}" }} ]"#
        )
    };
    let seen = |more: &str, kind: &str| {
        worked(&trough("1.00 m", &format!("{}, {}", panel("+0.40 m", more), front(kind))), &BED_SEEN)
    };
    near(seen("", "boards"), 0.0, 0.0);
    near(seen(r#", "let-into": ["front"]"#, "boards"), 0.858, ROW);
    near(seen("", "glass"), 0.858, ROW);
}
