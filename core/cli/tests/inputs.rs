//! Inputs that are no designs: each has its own words and status 2, and a good file of the same run is still reviewed.
#![allow(clippy::disallowed_methods, reason = "these tests write the files that the binary is run on")]

use std::path::{Path, PathBuf};
use std::process::Command;

const SMALL: &str = include_str!("../../../example-designs/small-pool.json");

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    // It may be left over from an earlier run.
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("the folder for tests can be written to");
    folder
}

/// Output, remarks and status of a run.
fn run<A: AsRef<std::ffi::OsStr>>(arguments: &[A]) -> (String, String, Option<i32>) {
    let done =
        Command::new(env!("CARGO_BIN_EXE_haulout")).args(arguments).output().expect("the binary was built");
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).into_owned();
    (text(&done.stdout), text(&done.stderr), done.status.code())
}

/// Reviews a good file and a bad one together; gives everything that was said.
fn beside_a_good_one(folder: &Path, bad: &Path) -> String {
    let good = folder.join("good.json");
    std::fs::write(&good, SMALL).expect("the folder for tests can be written to");
    let (output, remarks, status) = run(&[Path::new("review"), &good, bad]);
    assert_eq!(status, Some(2), "{}: {remarks}", bad.display());
    assert!(output.contains("Pond turtle pool"), "{}: {output}", bad.display());
    format!("{output}{remarks}")
}

#[test]
fn what_is_no_json_is_named_for_what_it_looks_like() {
    let folder = folder("lookalikes");
    let wide: Vec<u8> = SMALL.encode_utf16().flat_map(u16::to_le_bytes).collect();
    let marked = [&b"\xff\xfe"[..], &wide].concat();
    let deep = format!("{{ \"edition\": 0, \"x-a\": {}{} }}", "[".repeat(100), "]".repeat(100));
    let bom = format!("\u{feff}{SMALL}");
    for (name, bytes, words) in [
        ("a.json", &b""[..], "the file is empty"),
        ("b.json", b"  \n", "nothing but blanks"),
        ("c.json", b"\x1f\x8b\x08\x00rest", "it looks like a gzip archive"),
        ("d.json", b"%PDF-1.7", "it looks like a PDF"),
        ("e.json", b"\x89PNG\r\n", "it looks like a PNG image"),
        ("f.json", b"\xff\xd8\xff\xe0", "it looks like a JPEG image"),
        ("g.json", &wide, "it looks like UTF-16 text"),
        ("h.json", &marked, "it looks like UTF-16 text"),
        ("i.json", b"<html></html>", "it looks like XML or HTML"),
        ("j.json", b"{ \"edition\": \"\xfc\" }", "UTF-8"),
        ("k.json", bom.as_bytes(), "byte-order mark"),
        ("l.json", deep.as_bytes(), "64"),
    ] {
        let path = folder.join(name);
        std::fs::write(&path, bytes).expect("the folder for tests can be written to");
        let said = beside_a_good_one(&folder, &path);
        let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(said.contains(words), "{name}: {said}");
    }
}

#[test]
fn what_cannot_be_read_says_why() {
    let folder = folder("unread");
    assert!(beside_a_good_one(&folder, &folder.join("gone.json")).contains("there is no such file"));
    let empty = folder.join("empty");
    std::fs::create_dir_all(&empty).expect("the folder for tests can be written to");
    assert!(beside_a_good_one(&folder, &empty).contains("the folder holds no design"));
    let large = folder.join("large.json");
    let file = std::fs::File::create(&large).expect("the folder for tests can be written to");
    file.set_len(65 << 20).expect("a file with a hole takes no room");
    assert!(beside_a_good_one(&folder, &large).contains("no design is that large"));
    let (_, remarks, status) = run(&[Path::new("sheet"), &empty]);
    assert_eq!(status, Some(2));
    assert!(remarks.contains("this is a folder, and one file is wanted"), "{remarks}");
}

#[cfg(unix)]
#[test]
fn names_pipes_and_rights_of_this_system() {
    use std::os::unix::ffi::OsStrExt;
    use std::os::unix::fs::PermissionsExt;
    let folder = folder("unix");
    let strange = folder.join(std::ffi::OsStr::from_bytes(b"caf\xe9.json"));
    std::fs::write(&strange, SMALL).expect("the folder for tests can be written to");
    assert!(beside_a_good_one(&folder, &strange).contains("the name of the file is not UTF-8"));
    assert!(beside_a_good_one(&folder, Path::new("/dev/null")).contains("neither a file nor a folder"));
    let pipe = folder.join("pipe.json");
    let made = Command::new("mkfifo").arg(&pipe).status().is_ok_and(|status| status.success());
    assert!(!made || beside_a_good_one(&folder, &pipe).contains("neither a file nor a folder"));
    let closed = folder.join("closed.json");
    std::fs::write(&closed, SMALL).expect("the folder for tests can be written to");
    std::fs::set_permissions(&closed, std::fs::Permissions::from_mode(0o000)).expect("it is ours");
    // Whoever may read everything cannot be refused.
    if std::fs::read(&closed).is_err() {
        assert!(beside_a_good_one(&folder, &closed).contains("the file may not be read"));
    }
}

#[test]
fn other_files_of_a_folder_are_counted_and_broken_designs_are_not_passed_over() {
    let folder = folder("counted");
    for (name, text) in [
        ("a.json", SMALL),
        ("b.json", "{ \"note\": 1 }"),
        ("c.json", "{ \"edition\": 0,"),
        ("d.json", ""),
        ("e.txt", "x"),
    ] {
        std::fs::write(folder.join(name), text).expect("the folder for tests can be written to");
    }
    let (output, remarks, status) = run(&[Path::new("review"), &folder]);
    assert_eq!(status, Some(2));
    assert!(output.contains("3 designs: 1 clear, 0 open, 2 not reviewed"), "{output}");
    assert!(remarks.contains("1 other .json file is no design"), "{remarks}");
    assert!(remarks.contains("d.json: the file is empty"), "{remarks}");
}

/// More files than are worked on at once, in any order of the paths: the same bytes, and one JSON text.
#[test]
fn many_designs_are_streamed_in_the_order_of_their_names() {
    let folder = folder("many");
    for at in 0..70 {
        let name = format!("design-{at:02}.json");
        std::fs::write(folder.join(name), "{ \"edition\": 0 }")
            .expect("the folder for tests can be written to");
    }
    let paths: Vec<PathBuf> = (0..70).rev().map(|at| folder.join(format!("design-{at:02}.json"))).collect();
    let options = ["--as", "json", "--on", "2026-11-25"].map(PathBuf::from);
    let (named, ..) = run(&[&[PathBuf::from("review")], &paths[..], &options].concat());
    let (walked, remarks, _) = run(&[&[PathBuf::from("review"), folder], &options[..]].concat());
    assert_eq!(named, walked);
    assert_eq!(remarks, "");
    let json: serde_json::Value = serde_json::from_str(&walked).expect("it is one JSON text");
    let designs = json["designs"].as_array().expect("it lists designs");
    assert_eq!(designs.len(), 70);
    assert!(designs[69]["file"].as_str().is_some_and(|file| file.ends_with("design-69.json")));
    assert_eq!(serde_json::to_string_pretty(&json).expect("it is JSON") + "\n", walked);
}
