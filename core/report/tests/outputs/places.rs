//! Places: what is missing is named where it would stand, what stands in a kind says who uses it.

use haulout_model::Origin;
use haulout_report::{place, tell};

use crate::common::{POOL, built_in, house, load, reviewed};

#[test]
fn what_is_missing_is_named_where_it_would_stand() {
    let (tree, _) = load(POOL);
    let told = place(&tree, Origin { tail: ["levels", "low/est", ""], ..Origin::at(0) });
    assert_eq!(told.pointer.as_str(), "/levels/low~1est");
    assert_eq!((told.line, told.column, told.start, told.end as usize), (1, 1, 0, POOL.trim_end().len()));
    assert!(told.absent);
}

/// Columns count characters, bytes count bytes: the ä of the title takes two.
#[test]
fn a_stated_value_is_where_it_stands() {
    let (tree, design) = load(POOL);
    let ruleset = house();
    let answers = tell(&reviewed(&design, &ruleset), &tree);
    let warm = answers[2].governing.as_ref().expect("the temperature is stated");
    let start = POOL.find("\"28 to").expect("it stands in the text");
    assert_eq!(warm.pointer.as_str(), "/pools/0/water/temperature");
    assert_eq!((warm.start as usize, warm.end as usize), (start, start + "\"28 to 29.5 °C\"".len()));
    assert_eq!((warm.line, warm.column), (7, 33));
    let deep = answers[0].governing.as_ref().expect("the depth is stated");
    assert!(deep.pointer.as_str().starts_with("/pools/0/"), "{}", deep.pointer);
}

#[test]
fn a_value_of_a_kind_says_who_uses_it() {
    let (tree, design) = load(crate::common::EXAMPLES[1].1);
    let ruleset = built_in();
    let answers = tell(&reviewed(&design, &ruleset), &tree);
    let places = answers.iter().flat_map(|a| &a.places);
    let users: Vec<(String, String)> =
        places.filter_map(|p| Some((p.pointer.to_string(), p.through.as_ref()?.to_string()))).collect();
    assert!(
        users.contains(&("/kinds/pipes/pe-63/bore".to_owned(), "/circuits/0/runs/0".to_owned())),
        "{users:?}"
    );
    assert!(users.iter().all(|(place, user)| place.starts_with("/kinds/") && user.starts_with("/circuits/")));
}
