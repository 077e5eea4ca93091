//! Writes the schema of designs once more without what only people read, which is three quarters of it.
#![allow(
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "a build script reads and writes files and speaks to cargo by printing"
)]

use std::path::Path;
use std::{env, fs};

use serde_json::Value;

/// Keywords that say nothing about whether a document fits.
const FOR_PEOPLE: &[&str] =
    &["title", "description", "default", "hint", "role", "dimension", "range", "step"];
/// Keywords whose members are named by us, not by the draft.
const NAMED: &[&str] = &["$defs", "properties", "patternProperties"];

fn main() -> Result<(), Box<dyn std::error::Error>> {
    println!("cargo:rerun-if-changed=build.rs");
    println!("cargo:rerun-if-changed=design.json");
    let mut design: Value = serde_json::from_str(&fs::read_to_string("design.json")?)?;
    strip(&mut design);
    let folder = env::var_os("OUT_DIR").ok_or("cargo names no folder to write to")?;
    Ok(fs::write(Path::new(&folder).join("design.json"), design.to_string())?)
}

fn strip(schema: &mut Value) {
    let Value::Object(members) = schema else { return };
    members.retain(|key, _| !FOR_PEOPLE.contains(&key.as_str()));
    for (key, member) in members {
        match member {
            Value::Object(named) if NAMED.contains(&key.as_str()) => named.values_mut().for_each(strip),
            _ => strip(member),
        }
    }
}
