//! The tutorial for house annexes is run as it is written: its commands, its files, its changes, what they print.
#![allow(
    clippy::disallowed_methods,
    reason = "this test writes the files that the tutorial has a reader write"
)]
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::path::{Path, PathBuf};
use std::process::Command;

/// A stretch of the page.
enum Part {
    /// Text for people, with its line ends.
    Prose(String),
    /// Something between fences: what it is, and its lines.
    Block(String, Vec<String>),
}

fn page() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../rules/annexes/TUTORIAL.md")
}

fn parts(text: &str) -> Vec<Part> {
    let mut parts = vec![Part::Prose(String::new())];
    let mut inside = false;
    for line in text.lines() {
        let fence = line.strip_prefix("```");
        match (fence, inside, parts.last_mut()) {
            (Some(what), false, _) => parts.push(Part::Block(what.to_owned(), Vec::new())),
            (Some(_), true, _) => parts.push(Part::Prose(String::new())),
            (None, _, Some(Part::Block(_, lines))) => lines.push(line.to_owned()),
            (None, _, Some(Part::Prose(prose))) => *prose += &format!("{line}\n"),
            (None, _, None) => unreachable!("there is a part from the beginning"),
        }
        inside ^= fence.is_some();
    }
    parts
}

/// The file a block is about: the last name between backticks before it.
fn file_named(prose: &str) -> &str {
    let quoted = prose.split('`').skip(1).step_by(2);
    quoted.last().unwrap_or_else(|| panic!("no file is named before a block: {prose}"))
}

/// A reader in an empty folder.
struct Reader {
    folder: PathBuf,
}

impl Reader {
    fn new() -> Self {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("tutorial");
        // It may be left over from an earlier run.
        let _ = std::fs::remove_dir_all(&folder);
        std::fs::create_dir_all(&folder).expect("the folder for tests can be written to");
        Reader { folder }
    }

    fn write(&self, file: &str, lines: &[String]) {
        let path = self.folder.join(file);
        std::fs::create_dir_all(path.parent().expect("it lies in the folder")).expect("it can be written to");
        std::fs::write(path, lines.join("\n") + "\n").expect("it can be written to");
    }

    /// Lines that go and lines that come, each run of lines that go standing once in the file.
    fn change(&self, file: &str, lines: &[String]) {
        let path = self.folder.join(file);
        let text = std::fs::read_to_string(&path).expect("the file was written before");
        let signed = |sign: char| {
            let lines = lines.iter().filter_map(|l| l.strip_prefix(sign)).map(|l| format!("{l}\n"));
            lines.collect::<String>()
        };
        let (old, new) = (signed('-'), signed('+'));
        assert_eq!(text.matches(&old).count(), 1, "{file} holds once:\n{old}\nin\n{text}");
        std::fs::write(path, text.replace(&old, &new)).expect("it can be written to");
    }

    /// What a command prints, remarks before the page, times as dots.
    fn run(&self, command: &str) -> String {
        let mut words = command.split_whitespace();
        assert_eq!(words.next(), Some("haulout"), "the reader runs nothing else: {command}");
        let done = Command::new(env!("CARGO_BIN_EXE_haulout")).args(words).current_dir(&self.folder).output();
        let done = done.expect("the binary was built");
        let printed = [done.stderr, done.stdout].concat();
        timeless(&String::from_utf8_lossy(&printed))
    }

    /// The lines of a block as they should stand: each command with what it printed.
    fn console(&self, lines: &[String]) -> Vec<String> {
        let mut said: Vec<(&String, Vec<&String>)> = Vec::new();
        for line in lines {
            match (line.starts_with("$ "), said.last_mut()) {
                (false, Some((_, printed))) => printed.push(line),
                _ => said.push((line, Vec::new())),
            }
        }
        let mut right = Vec::new();
        for (command, written) in said {
            let printed = self.run(command.trim_start_matches("$ "));
            right.push(command.clone());
            if written.iter().any(|line| *line == "…") {
                in_order(command, &written, &printed);
                right.extend(written.into_iter().cloned());
            } else {
                right.extend(printed.trim_end().lines().map(|line| line.trim_end().to_owned()));
            }
        }
        right
    }
}

/// A number before "µs" is the machine's, and so is the space it takes.
fn timeless(text: &str) -> String {
    let mut pieces: Vec<&str> = text.split(" µs").collect();
    let last = pieces.pop().unwrap_or_default();
    let number = |c: char| c.is_ascii_digit() || c == '.';
    let masked = pieces.iter().map(|p| p.trim_end_matches(number).trim_end().to_owned() + "      · µs");
    masked.collect::<String>() + last
}

/// What stands between dots must come in this order.
fn in_order(command: &str, written: &[&String], printed: &str) {
    let mut rest = printed;
    for wanted in written.split(|line| *line == "…").filter(|lines| !lines.is_empty()) {
        let wanted = wanted.iter().map(|line| format!("{line}\n")).collect::<String>();
        let at =
            rest.find(&wanted).unwrap_or_else(|| panic!("{command} prints no\n{wanted}\nbut\n{printed}"));
        rest = &rest[at + wanted.len()..];
    }
}

#[test]
fn the_tutorial_runs_as_it_is_written() {
    let text = std::fs::read_to_string(page()).expect("there is a tutorial");
    let (reader, mut right, mut before, mut commands) = (Reader::new(), String::new(), String::new(), 0);
    for part in parts(&text) {
        match part {
            Part::Prose(prose) => {
                right += &prose;
                before += &prose;
            }
            Part::Block(what, lines) => {
                let lines = match what.as_str() {
                    "console" => {
                        commands += lines.iter().filter(|line| line.starts_with("$ ")).count();
                        reader.console(&lines)
                    }
                    "diff" => {
                        reader.change(file_named(&before), &lines);
                        lines
                    }
                    _ => {
                        reader.write(file_named(&before), &lines);
                        lines
                    }
                };
                right += &format!("```{what}\n{}\n```\n", lines.join("\n"));
            }
        }
    }
    assert!(commands >= 8, "only {commands} commands");
    if std::env::var_os("HAULOUT_WRITE").is_some() {
        return std::fs::write(page(), &right).expect("the tutorial can be written");
    }
    assert_eq!(text, right, "HAULOUT_WRITE=1 writes what the commands print into the tutorial");
}
