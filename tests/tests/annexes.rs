//! Every script of the bundled annexes becomes a rule and gives on its marked examples what the marks say.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_annex::{Folder, Source, join};
use haulout_tests::repository;

#[test]
#[allow(clippy::disallowed_methods, reason = "this test reads the bundled annexes of the repository")]
fn bundled_scripts_keep_what_their_examples_promise() {
    let mut rehearsed = 0;
    for annex in std::fs::read_dir(repository().join("rules/annexes")).expect("there are annexes") {
        let annex = annex.expect("the folder can be read").path();
        // The reference page lies beside them.
        if !annex.is_dir() {
            continue;
        }
        for script in std::fs::read_dir(&annex).expect("an annex is a folder") {
            let path = script.expect("the folder can be read").path();
            if path.extension().is_none_or(|e| e != "rhai") {
                continue;
            }
            let name = path.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
            let text = std::fs::read_to_string(&path).expect("a script is a text");
            let rule = haulout_script::compile(&name, &text, haulout_figures::CATALOGUE)
                .unwrap_or_else(|faults| panic!("{name}: {faults:#?}"));
            for result in haulout_rehearsal::rehearse(&rule, &haulout_sheet::Limits::default()) {
                assert!(result.holds(), "{name}: {result:#?}");
                rehearsed += 1;
            }
        }
    }
    assert!(rehearsed >= 7, "only {rehearsed} examples were rehearsed");
}

/// The card of every bundled annex is sound, alone and with all the others.
#[test]
#[allow(clippy::disallowed_methods, reason = "this test reads the bundled annexes of the repository")]
fn bundled_annexes_have_cards_and_go_together() {
    let entries = std::fs::read_dir(repository().join("rules/annexes")).expect("there are annexes");
    let folders = entries.filter_map(|e| e.ok().map(|e| e.path())).filter(|path| path.is_dir());
    let annexes: Vec<Folder> = folders
        .map(|folder| Folder {
            path: folder.to_string_lossy().into_owned(),
            files: std::fs::read_dir(&folder)
                .expect("an annex is a folder")
                .filter_map(|e| e.ok().map(|e| e.path()))
                .filter(|p| p.is_file())
                .map(|p| Source {
                    name: p.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default(),
                    bytes: std::fs::read(&p).map_err(|e| e.to_string()),
                })
                .collect(),
        })
        .collect();
    let sound = |some: &[Folder]| {
        let joined = join(haulout_rules::built_in(), some, haulout_figures::CATALOGUE);
        joined.unwrap_or_else(|troubles| panic!("{troubles:#?}"))
    };
    for annex in &annexes {
        assert!(sound(std::slice::from_ref(annex)).annexes[0].name.len() > 1);
    }
    assert_eq!(sound(&annexes).annexes.len(), annexes.len());
}
