//! Commissioning list, course and drawing of rooms varied by chance: never a panic, nothing that is no number, each site answered for.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_engine::review;
use haulout_report::course::{course_json, course_page, waters};
use haulout_report::drawing::{Subject, drawing};
use haulout_report::{commissioning, commissioning_json, commissioning_markdown, commissioning_page, tell};
use haulout_tests::vary::varied;
use haulout_tests::{examples, load, options, ruleset};
use rayon::prelude::*;

/// Rooms that are tried; each is reviewed and told whole.
const TRIED: u64 = 500;

/// Whether no word of a text is what is printed for no number.
fn is_plain(text: &str) -> bool {
    let mut words = text.split(|c: char| !c.is_alphanumeric());
    words.all(|word| !["NaN", "inf", "Infinity"].contains(&word))
}

#[test]
fn varied_rooms_are_listed_followed_and_drawn() {
    let (ruleset, rooms) = (ruleset(), examples());
    (0..TRIED).into_par_iter().for_each(|seed| {
        let text = varied(seed + 7_000, &rooms[seed as usize % rooms.len()].1);
        let loaded = load(&text).unwrap_or_else(|problems| panic!("seed {seed}: {problems:#?}"));
        let review = review(&loaded.design, &ruleset, &[], &options());
        let answers = tell(&review, &loaded.tree);
        let list = commissioning((&review.book, &loaded.tree), &ruleset, &answers, haulout_rules::TRIALS);
        let page = commissioning_page(&list, 80) + commissioning_markdown(&list).as_str();
        let waters = waters(&review.book, &loaded.tree);
        let told = course_page(&waters) + page.as_str();
        assert!(is_plain(&told), "seed {seed}: {told}");
        for water in &waters {
            assert!(water.course.as_ref().map_or_else(|gaps| !gaps.is_empty(), |_| true), "seed {seed}");
            if let Ok(started) = &water.course {
                let chart = haulout_report::drawing::course::chart(started);
                assert!(is_plain(&chart), "seed {seed}");
            }
        }
        let plan = drawing(&Subject {
            file: "room.json",
            digest: "",
            stage: review.stage.name(),
            on: "2026-11-25",
            book: &review.book,
            ruleset: &ruleset,
            answers: &answers,
        });
        assert!(plan.ends_with("</svg>\n") && is_plain(&plan), "seed {seed}");
        let numbers = course_json(&waters).to_string() + commissioning_json(&list).to_string().as_str();
        assert!(is_plain(&numbers), "seed {seed}");
    });
}
