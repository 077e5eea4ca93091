//! The README's screen is what the program prints, and its commands are commands of the program.

use std::process::Command;

use haulout_tests::repository;

#[test]
#[allow(clippy::disallowed_methods, reason = "this test reads the README of the repository")]
fn the_screen_of_the_readme_is_what_is_printed() {
    let readme = std::fs::read_to_string(repository().join("README.md")).expect("the README is there");
    let printed = Command::new(env!("CARGO"))
        .args(["run", "--quiet", "--offline", "--bin", "haulout", "--"])
        .args(["review", "example-designs/small-pool.json", "--on", "2026-11-25"])
        .current_dir(repository())
        .output()
        .expect("cargo is there: it runs this test");
    let printed = String::from_utf8(printed.stdout).expect("the page is text");
    assert!(printed.contains("SCHEDULE"), "{printed}");
    assert!(
        readme.contains(printed.trim_end()),
        "the README's screen is not what is printed now:\n{printed}"
    );
}

#[test]
#[allow(clippy::disallowed_methods, reason = "this test reads the README of the repository")]
fn the_readme_opens_with_one_paragraph_that_states_the_job() {
    let readme = std::fs::read_to_string(repository().join("README.md")).expect("the README is there");
    let first = readme.split("\n\n").next().unwrap_or_default();
    assert!(first.starts_with("haulout checks the design of an enclosure"), "{first}");
    for command in [
        "cargo run --release --bin haulout -- review example-designs/small-pool.json",
        "cargo test --workspace",
    ] {
        assert!(readme.contains(command), "the README does not name: {command}");
    }
}
