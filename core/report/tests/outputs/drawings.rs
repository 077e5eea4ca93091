//! The plan as a sheet: well-formed, to scale, complete, legible in grey, the same every time, bounded on hostile designs.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::BTreeMap;

use haulout_engine::Ruleset;
use haulout_report::drawing::{Subject, drawing};
use haulout_report::page::{self, Layout, page};
use haulout_report::tell;
use roxmltree::{Document, Node};

use crate::common::{EXAMPLES, POOL, built_in, house, load, reviewed};

fn drawn_by(text: &str, ruleset: &Ruleset) -> String {
    let (tree, design) = load(text);
    let review = reviewed(&design, ruleset);
    let answers = tell(&review, &tree);
    drawing(&Subject {
        file: "design.json",
        digest: "00ff",
        stage: review.stage.name(),
        on: "2026-11-25",
        book: &review.book,
        ruleset,
        answers: &answers,
    })
}

fn drawn(text: &str) -> String {
    drawn_by(text, &built_in())
}

fn example(name: &str) -> &'static str {
    EXAMPLES.iter().find(|(n, _)| *n == name).map_or("", |(_, text)| text)
}

/// A design with nothing but a hall and what is put in.
fn with(hall: &str, rest: &str) -> String {
    format!("{{ \"edition\": 0, \"hall\": {{ \"outline\": {hall} }} {rest} }}")
}

/// The corners of the path with this title, millimetres.
fn path(svg: &str, title: &str) -> Vec<[f64; 2]> {
    let document = Document::parse(svg).expect("the sheet is XML");
    let named = |n: &Node| n.children().any(|c| c.tag_name().name() == "title" && c.text() == Some(title));
    let node = document.descendants().filter(|n| n.tag_name().name() == "path").find(named);
    let path =
        node.unwrap_or_else(|| panic!("{title} is not drawn")).attribute("d").expect("a path has a way");
    let corner = |part: &str| {
        let (x, y) = part.split_once(' ').expect("two numbers");
        [x, y].map(|n| n.parse().expect("a number"))
    };
    path.trim_end_matches('Z').split(['M', 'L']).filter(|p| !p.is_empty()).map(corner).collect()
}

fn span(corners: &[[f64; 2]], axis: usize) -> f64 {
    let all = || corners.iter().map(|c| c[axis]);
    all().fold(f64::MIN, f64::max) - all().fold(f64::MAX, f64::min)
}

#[test]
fn the_sheet_of_the_small_example() {
    insta::assert_snapshot!(drawn(example("small-pool")));
}

#[test]
fn every_id_of_every_example_stands_on_its_sheet() {
    for (name, text) in EXAMPLES {
        let svg = drawn(text);
        let document = Document::parse(&svg).unwrap_or_else(|error| panic!("{name}: {error}"));
        let texts: Vec<&str> = document
            .descendants()
            .filter(|n| n.tag_name().name() == "text")
            .filter_map(|n| n.text())
            .collect();
        let (_, design) = load(text);
        for entry in &design.directory.ids {
            let word = |t: &&str| t.split([' ', ',', ':']).any(|w| w == entry.name());
            assert!(texts.iter().any(|t| word(t)), "{name}: {} is not lettered", entry.name());
        }
        assert!(texts.iter().any(|t| t.contains("Screening result, not a construction drawing")));
        assert!(!svg.contains("no room"), "{name}: letters found no room");
    }
}

/// 12.00 m by 7.60 m at 1:50 are 240 mm by 152 mm; 6 m by 4 m at 1:25 are 240 mm by 160 mm; 36 ft by 22 ft at 1:50 are
/// 219.46 mm by 134.11 mm.
#[test]
fn distances_are_to_scale_in_real_millimetres() {
    let sizes = [
        ("reedwater-sound", 240.0, 152.0),
        ("small-pool", 240.0, 160.0),
        ("bayou-porch-us", 219.456, 134.112),
    ];
    for (name, wide, high) in sizes {
        let svg = drawn(example(name));
        assert!(svg.contains("width=\"420mm\" height=\"297mm\" viewBox=\"0 0 420 297\""));
        let hall = path(&svg, "hall");
        assert!(
            (span(&hall, 0) - wide).abs() < 0.011 && (span(&hall, 1) - high).abs() < 0.011,
            "{name}: {hall:?}"
        );
    }
    // The pool of the small example is 3.2 m by 1.8 m, its corner 0.5 m from both walls.
    let svg = drawn(example("small-pool"));
    let (hall, pool) = (path(&svg, "hall"), path(&svg, "main"));
    assert!((span(&pool, 0) - 128.0).abs() < 0.02 && (span(&pool, 1) - 72.0).abs() < 0.02);
    let west = |corners: &[[f64; 2]]| corners.iter().map(|c| c[0]).fold(f64::MAX, f64::min);
    assert!((west(&pool) - west(&hall) - 20.0).abs() < 0.02);
}

/// A circle of 1 m round the middle of a hall of 10 m by 10 m, at 1:50: zone 1 ends 2.0 m off its rim, so its line is
/// 2 x 3.0 m = 120 mm wide; zone 2 ends 1.5 m farther, 180 mm.
#[test]
fn zones_round_water_lie_where_the_rules_measure_them() {
    let project = ", \"project\": { \"held-to\": { \"electrical\": [\"iec-702\"] } }";
    let pool = ", \"pools\": [{ \"id\": \"main\", \"outline\": { \"circle\": { \"centre\": [5, 5], \"radius\": \"1 m\" } } }]";
    let water = |class: &str| format!(", \"electrical\": {{ \"classed\": \"{class}\" }}");
    let hall = "[[0, 0], [10, 0], [10, 10], [0, 10]]";
    let svg = drawn(&with(hall, &format!("{project}{pool}{}", water("swimming pool"))));
    for (title, wide) in [("zone 1, 2.00 m off rim", 120.0), ("zone 2, 3.50 m off rim", 180.0)] {
        let line = path(&svg, title);
        // Chords of both circles stand within 5 mm of them: 0.2 mm on paper.
        assert!((span(&line, 0) - wide).abs() < 0.25 && (span(&line, 1) - wide).abs() < 0.25, "{title}");
    }
    let fountain = drawn(&with(
        hall,
        &format!("{project}{pool}{}", water("fountain basin, nobody enters while energised")),
    ));
    assert!(fountain.contains("zone 1, 2.00 m") && !fountain.contains("zone 2, 3.50 m"));
    let other = drawn(&with(hall, &format!("{project}{pool}{}", water("other water"))));
    assert!(other.contains("not drawn: zones round water") && !other.contains("zone 1, 2.00 m"));
}

#[test]
fn the_same_design_gives_the_same_bytes() {
    for (name, text) in EXAMPLES {
        assert_eq!(drawn(text), drawn(text), "{name}");
    }
}

#[test]
fn nothing_comes_from_outside() {
    for (_, text) in EXAMPLES {
        let svg = drawn(text).replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
        for word in ["http", "href", "<script", "<image", "<style", "@", "foreignObject"] {
            assert!(!svg.contains(word), "{word}");
        }
    }
}

/// A hall of 6 m by 4 m turned by 30 degrees keeps its sides: at its scale, 6 m and 4 m.
#[test]
fn a_turned_hall_keeps_its_sides() {
    let hall = "{ \"rect\": { \"corner\": [3, 1], \"size\": [6, 4], \"turn\": \"30 deg\" } }";
    let svg = drawn(&with(hall, ""));
    let corners = path(&svg, "hall");
    let side = |i: usize| {
        let (a, b) = (corners[i], corners[(i + 1) % corners.len()]);
        ((a[0] - b[0]).powi(2) + (a[1] - b[1]).powi(2)).sqrt()
    };
    // 7.20 m by 6.46 m upright: 1:50.
    assert!(svg.contains("Scale 1:50"));
    let mut sides: Vec<f64> = (0..4).map(side).collect();
    sides.sort_by(f64::total_cmp);
    for (found, expected) in sides.iter().zip([80.0, 80.0, 120.0, 120.0]) {
        assert!((found - expected).abs() < 0.02, "{sides:?}");
    }
}

/// The white boxes under letters; balloons are circles.
fn boxes(svg: &str) -> Vec<[f64; 4]> {
    let document = Document::parse(svg).expect("the sheet is XML");
    let lettered =
        |n: &Node| n.ancestors().any(|a| matches!(a.attribute("id"), Some("letters" | "more-letters")));
    let number = |n: &Node, key| n.attribute(key).and_then(|v| v.parse::<f64>().ok()).unwrap_or(0.0);
    let rects = document.descendants().filter(|n| n.tag_name().name() == "rect" && lettered(n));
    rects.map(|n| ["x", "y", "width", "height"].map(|key| number(&n, key))).collect()
}

#[test]
fn no_letters_lie_on_others_or_off_the_plan() {
    for (name, text) in EXAMPLES {
        let boxes = boxes(&drawn(text));
        for (i, [x, y, w, h]) in boxes.iter().enumerate() {
            assert!(*x >= 20.0 && *y >= 10.0 && x + w <= 300.0 && y + h <= 243.0, "{name}: off the plan");
            for [ox, oy, ow, oh] in &boxes[i + 1..] {
                let apart =
                    x + w <= ox + 0.02 || ox + ow <= x + 0.02 || y + h <= oy + 0.02 || oy + oh <= y + 0.02;
                assert!(apart, "{name}: letters at {x} {y} and {ox} {oy}");
            }
        }
    }
}

/// The page ranks the water that is too warm (life of animals) before the depth (money).
#[test]
fn balloons_bear_the_numbers_of_the_page() {
    let (ruleset, (tree, design)) = (house(), load(POOL));
    let answers = tell(&reviewed(&design, &ruleset), &tree);
    let subject = page::Subject {
        file: "design.json",
        tree: &tree,
        design: &design,
        stage: "detailed",
        on: "2026-11-25",
        ruleset: &ruleset,
        answers: &answers,
    };
    let text = page(&subject, Layout { width: 80, colour: false });
    assert!(
        text.contains(" 1  The water is too warm") && text.contains(" 2  The pool is not deep enough"),
        "{text}"
    );
    let svg = drawn_by(POOL, &ruleset);
    let document = Document::parse(&svg).expect("the sheet is XML");
    let mut seen: BTreeMap<&str, usize> = BTreeMap::new();
    for node in document
        .descendants()
        .filter(|n| n.attribute("fill") == Some("#ffffff") && n.tag_name().name() == "text")
    {
        *seen.entry(node.text().unwrap_or_default()).or_default() += 1;
    }
    // Once at its place, once in the list.
    assert_eq!(seen, BTreeMap::from([("1", 2), ("2", 2)]));
    let words: Vec<&str> =
        document.descendants().filter(|n| n.tag_name().name() == "text").filter_map(|n| n.text()).collect();
    let after = |number: &str| {
        let at = words.iter().rposition(|w| *w == number).expect("it is listed");
        words[at + 1]
    };
    assert_eq!((after("1"), after("2")), ("The water is too warm", "The pool is not deep enough"));
}

#[test]
fn an_empty_design_gives_a_sheet_that_says_so() {
    let svg = drawn("{ \"edition\": 0 }");
    Document::parse(&svg).expect("the sheet is XML");
    assert!(svg.contains("The design draws nothing"));
    assert!(svg.contains("not drawn: hall"));
}

#[test]
fn what_cannot_be_drawn_is_listed() {
    let svg = drawn(
        r#"{ "edition": 0, "hall": { "outline": [[0, 0], [6, 0], [6, 4], [0, 4]] },
        "pools": [ { "id": "crossing", "outline": [[1, 1], [3, 3], [3, 1], [1, 3]], "depth": "1 m" },
                   { "id": "later", "outline": "to be decided" },
                   { "id": "afar", "outline": [[900, 900], [901, 900], [901, 901]], "depth": "1 m" } ],
        "doors": [ { "id": "gate", "barrier": "nowhere" } ] }"#,
    );
    Document::parse(&svg).expect("the sheet is XML");
    for lost in ["not drawn: crossing:", "not drawn: later:", "not drawn: afar:", "not drawn: gate:"] {
        assert!(svg.contains(lost), "{lost}");
    }
}

#[test]
fn hostile_texts_stay_texts() {
    let title = "</text><script>alert('x')</script>&amp;\\u0007\\u202e";
    let long = "W".repeat(40_000);
    let text = format!(
        "{{ \"edition\": 0, \"project\": {{ \"title\": \"{title}\", \"author\": \"{long}\", \"revision\": \"<b>\" }}, \
         \"drawing\": {{ \"origin\": \"{long} {long}\", \"datum\": \"]]>\" }}, \
         \"hall\": {{ \"outline\": [[0, 0], [6, 0], [6, 4], [0, 4]] }} }}"
    );
    let svg = drawn(&text);
    let document = Document::parse(&svg).expect("the sheet is XML");
    assert!(document.descendants().all(|n| n.tag_name().name() != "script"));
    assert!(svg.len() < 40_000, "{}", svg.len());
}

#[test]
fn hostile_sizes_stay_bounded() {
    let far = drawn(&with("[[-1e6, -1e6], [1e6, -1e6], [1e6, 1e6], [-1e6, 1e6]]", ""));
    assert!(far.contains("Scale 1:10000000"));
    let nothing = drawn(&with("[[0, 0], [0, 0], [0, 0]]", ""));
    assert!(nothing.contains("not drawn: hall"));
    let pool = |k: usize| {
        let (x, y) = (k % 100, k / 100);
        format!(
            "{{ \"id\": \"p{k}\", \"outline\": {{ \"rect\": {{ \"corner\": [{x}, {y}], \"size\": [0.8, 0.8] }} }} }}"
        )
    };
    let pools: Vec<String> = (0..1_200).map(pool).collect();
    let many = drawn_by(
        &with("[[0, 0], [100, 0], [100, 12], [0, 12]]", &format!(", \"pools\": [{}]", pools.join(","))),
        &house(),
    );
    assert!(many.contains("800 more pools"));
    assert!(many.len() < 1_000_000, "{}", many.len());
    for svg in [far, nothing, many] {
        Document::parse(&svg).expect("the sheet is XML");
    }
}
