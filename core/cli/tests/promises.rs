//! Promises about house scripts that only whole processes can keep: the same bytes wherever and however they are run.
#![allow(clippy::disallowed_methods, reason = "these tests write the files that the binary is run on")]

use std::path::{Path, PathBuf};
use std::process::Command;

const ANNEXES: [&str; 3] = ["hazardous-animals", "childrens-visits", "house-model"];

fn repository() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// A review with all bundled annexes, to be run from the top of the repository.
fn review(form: &str) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_haulout"));
    command.current_dir(repository());
    command.args(["review", "example-designs/reedwater-sound.json", "--on", "2026-11-25", "--as", form]);
    for annex in ANNEXES {
        command.args(["--annex", &format!("rules/annexes/{annex}")]);
    }
    command
}

fn printed(command: &mut Command) -> Vec<u8> {
    let done = command.output().expect("the binary was built");
    assert!(done.status.code() != Some(2), "{}", String::from_utf8_lossy(&done.stderr));
    assert!(done.stdout.len() > 1_000, "something was printed");
    done.stdout
}

#[test]
fn the_same_bytes_come_from_every_process() {
    for form in ["json", "markdown"] {
        let first = printed(&mut review(form));
        for _ in 0..4 {
            assert!(printed(&mut review(form)) == first, "{form}: another process prints something else");
        }
    }
}

#[test]
fn the_environment_decides_nothing() {
    let usual = printed(&mut review("json"));
    let other = [
        ("TZ", "Pacific/Chatham"),
        ("LANG", "de_DE.UTF-8"),
        ("LC_ALL", "tr_TR.UTF-8"),
        ("HOME", "/nowhere"),
        ("HAULOUT_WRITE", "1"),
        ("RAYON_NUM_THREADS", "1"),
    ];
    assert!(printed(review("json").env_clear()) == usual, "nothing is taken from the environment");
    assert!(printed(review("json").envs(other)) == usual, "nothing in it changes anything");
}

/// The same files, made in the other order and beside others that are no part of an annex.
#[test]
fn the_order_of_a_folder_decides_nothing() {
    let rehearsed = |folder: &Path| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_haulout"));
        let done = command.arg("rulebook").arg("--annex").arg(folder).output().expect("the binary was built");
        assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
        done.stdout
    };
    let from = repository().join("rules/annexes/childrens-visits");
    let entries = std::fs::read_dir(&from).expect("it is bundled").filter_map(|e| e.ok().map(|e| e.path()));
    let mut files: Vec<PathBuf> = entries.filter(|path| path.is_file()).collect();
    files.sort();
    let copied = |name: &str, files: &[PathBuf]| {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("promises").join(name);
        // It may be left over from an earlier run.
        let _ = std::fs::remove_dir_all(&folder);
        std::fs::create_dir_all(&folder).expect("the folder for tests can be written to");
        for file in files {
            let to = folder.join(file.file_name().expect("a file has a name"));
            std::fs::copy(file, to).expect("the folder for tests can be written to");
        }
        folder
    };
    let forth = copied("forth", &files);
    files.reverse();
    let back = copied("back", &files);
    std::fs::write(back.join("notes.txt"), "for ourselves").expect("the folder for tests can be written to");
    assert!(rehearsed(&forth) == rehearsed(&back), "another order prints something else");
}
