//! Mistakes planted together in the sound room: each is found at its place, and nothing else is.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::BTreeSet;

use haulout_tests::{examples, load, ruleset, said};
use serde_json::{Value, json};

fn sound() -> Value {
    let found =
        examples().into_iter().find(|(name, _)| name == "reedwater-sound.json").expect("the room is there");
    serde_json::from_str(&found.1).expect("it is JSON")
}

/// Rules that fall short, each with the places it names.
fn short(design: &Value) -> Vec<(String, BTreeSet<String>)> {
    let loaded = load(&design.to_string()).unwrap_or_else(|problems| panic!("{problems:#?}"));
    let said = said(&loaded, &ruleset(), &[]).into_iter().filter(|(_, said)| said.outcome == "short");
    said.map(|(key, said)| (key.split(' ').next().unwrap_or_default().to_owned(), said.places)).collect()
}

/// The sound room with some places changed.
fn planted(changes: &[(&str, Value)]) -> Value {
    let mut room = sound();
    for (pointer, value) in changes {
        *room.pointer_mut(pointer).unwrap_or_else(|| panic!("{pointer} is not in the room")) = value.clone();
    }
    room
}

/// Each rule falls short and names its pointer; no rule falls short that is not on the list.
fn found(changes: &[(&str, Value)], wanted: &[(&str, &str)], also: &[&str]) {
    let short = short(&planted(changes));
    for (rule, pointer) in wanted {
        let names =
            short.iter().any(|(id, places)| id == rule && places.iter().any(|p| p.starts_with(pointer)));
        assert!(names, "{rule} does not name {pointer}: {short:#?}");
    }
    for (rule, places) in &short {
        let told = wanted.iter().any(|(id, _)| id == rule) || also.contains(&rule.as_str());
        assert!(told, "{rule} falls short too: {places:#?}");
    }
}

#[test]
fn nothing_falls_short_in_the_room_as_it_is() {
    assert_eq!(short(&sound()), []);
}

/// The return draws the filter down the pipe when the pump stops, into a pool whose liner ends 40 mm over the water.
#[test]
fn a_return_without_a_siphon_break_and_a_low_liner() {
    let changes = [
        ("/circuits/0/returns/0/siphon-break", json!("none")),
        ("/pools/0/levels/liner-top", json!("+0.84 m")),
    ];
    let wanted = [
        ("siphon-broken-at-the-return", "/circuits/0/returns/0/siphon-break"),
        ("freeboard-with-pumps-off", "/pools/0/levels/liner-top"),
    ];
    // The overflow lies 10 mm under the liner, and what the fill brings, stuck open, goes over it; what the siphon brings back runs down the
    // overflow and is missing when the pump starts again.
    let also = [
        "freeboard-over-the-overflow",
        "fill-stuck-open",
        "pumps-off-under-the-overflow",
        "lowest-level-reckoned-with",
    ];
    found(&changes, &wanted, &also);
}

/// A limit that lets the water boil away from the turtles, and nobody within reach of the pool before that.
#[test]
fn a_heater_limit_of_sixty_degrees() {
    found(&[("/heaters/0/limit", json!("60 °C"))], &[("heater-stuck-on", "/heaters/0/limit")], &[]);
}

/// A screen nobody cleans before a pump that was bought by its label.
#[test]
fn a_clogged_screen_before_a_small_pump() {
    let curve = json!({ "flow": "m3/h", "head": "m", "points": [[0, 2.0], [1, 1.7], [2, 1.2], [3, 0.4]] });
    let changes =
        [("/circuits/0/devices/0/dirty-loss", json!("6 m")), ("/kinds/pumps/corridor-large/curve", curve)];
    found(&changes, &[("turnover-by-delivered-flow", "/circuits/0/devices/0/dirty-loss")], &[]);
}

/// A strainer before a pump that stands on a shelf.
#[test]
fn a_pump_on_a_shelf_behind_a_thin_suction_pipe() {
    let changes = [
        ("/circuits/1/pump-level", json!("+5.50 m")),
        ("/circuits/1/pump/npsh", json!("4.0 m")),
        ("/circuits/1/runs/1/bore", json!("38 mm")),
    ];
    found(&changes, &[("suction-head-enough", "/circuits/1/pump-level")], &[]);
}
