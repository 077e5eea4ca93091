//! The house has one direction: what each room may use. The table is the design; the crate graph is held to it.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::BTreeMap;
use std::process::Command;

/// Room and the rooms of ours it may use, dev-dependencies aside.
const MAY_USE: &[(&str, &[&str])] = &[
    ("place", &[]),
    ("quantity", &[]),
    ("schemas", &[]),
    ("document", &["place"]),
    ("calc", &["quantity"]),
    ("register", &["quantity"]),
    ("model", &["place", "quantity", "document"]),
    ("sheet", &["quantity", "calc", "register", "model"]),
    ("figures", &["quantity", "calc", "register", "model", "sheet"]),
    ("engine", &["quantity", "register", "model", "sheet"]),
    ("script", &["place", "quantity", "calc", "register", "model", "sheet", "figures", "engine"]),
    (
        "annex",
        &[
            "place", "quantity", "schemas", "document", "register", "model", "sheet", "figures", "engine",
            "script",
        ],
    ),
    ("rehearsal", &["place", "document", "model", "sheet", "engine"]),
    ("rules", &["quantity", "calc", "register", "model", "sheet", "figures", "engine"]),
    ("report", &["place", "document", "quantity", "calc", "register", "model", "sheet", "figures", "engine"]),
];

/// Outside packages that only one room may know.
const KEPT_BEHIND: &[(&str, &[&str])] = &[
    ("rhai", &["script"]),
    ("jsonschema", &["document"]),
    ("miette", &["report", "cli"]),
    ("geo", &["calc"]),
    ("clap", &["cli"]),
    ("rayon", &["cli"]),
    ("walkdir", &["cli"]),
];

fn graph() -> BTreeMap<String, Vec<String>> {
    let output = Command::new(env!("CARGO"))
        .args(["metadata", "--format-version", "1", "--no-deps", "--offline"])
        .current_dir(haulout_tests::repository())
        .output()
        .expect("cargo is there: it runs this test");
    let json: serde_json::Value = serde_json::from_slice(&output.stdout).expect("cargo prints JSON");
    let packages = json["packages"].as_array().expect("a workspace has packages");
    packages.iter().map(|package| (room(&package["name"]), dependencies(package))).collect()
}

fn room(name: &serde_json::Value) -> String {
    let name = name.as_str().unwrap_or_default();
    name.strip_prefix("haulout-").unwrap_or(name).to_owned()
}

fn dependencies(package: &serde_json::Value) -> Vec<String> {
    let all = package["dependencies"].as_array().expect("a package lists its dependencies");
    all.iter().filter(|d| d["kind"].is_null()).map(|d| room(&d["name"])).collect()
}

#[test]
fn no_room_uses_what_stands_above_it() {
    let graph = graph();
    for (name, may) in MAY_USE {
        let uses = graph.get(*name).unwrap_or_else(|| panic!("there is no room {name}"));
        let ours = uses.iter().filter(|used| graph.contains_key(*used));
        let forbidden: Vec<&String> = ours.filter(|used| !may.contains(&used.as_str())).collect();
        assert!(forbidden.is_empty(), "{name} may not use {forbidden:?}");
    }
    let known: Vec<&str> = MAY_USE.iter().map(|(n, _)| *n).chain(["cli", "tests"]).collect();
    let unknown: Vec<&String> = graph.keys().filter(|n| !known.contains(&n.as_str())).collect();
    assert!(unknown.is_empty(), "{unknown:?} has no line in the table");
}

#[test]
fn an_outside_package_stays_behind_its_room() {
    for (name, uses) in graph() {
        for (package, rooms) in KEPT_BEHIND {
            let allowed = rooms.contains(&name.as_str()) || name == "tests";
            assert!(allowed || !uses.iter().any(|u| u == package), "{name} may not use {package}");
        }
    }
}
