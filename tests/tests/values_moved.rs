//! Every value of a register that a rule draws on is moved a little both ways; a marked example must notice each.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_register::Value;
use haulout_rules::built_in;
use haulout_tests::evidence::bands::at_the_ends;
use haulout_tests::evidence::moved::played;
use haulout_tests::evidence::registered::{Drawn, drawn, moved, noticed};
use haulout_tests::evidence::{held, table};
use rayon::prelude::*;

/// Yes or no of a species that need not decide anything alone: an animal that climbs is held by a closed top whether it
/// jumps or not, and a kind of body beyond the last is none. A depth that stands for no bound is not meant to bind, and an animal
/// walks on the bed to no end where the water is shallow anyway.
const NOT_ALONE: &[&str] = &["climbs", "jumps", "kind of body", "deeper than any pool", "walks on the bed"];

/// Values that no example notices yet, as `what value, direction`; the list may only shrink.
const NOT_YET: &[&str] = &[];

fn printed(value: &Value, si: f64) -> String {
    let unit = haulout_quantity::unit(value.unit);
    unit.map_or_else(|| si.to_string(), |unit| haulout_quantity::print(si, unit, 4))
}

fn called(value: &Value) -> String {
    format!("{} {}", value.what, printed(value, value.value))
}

#[test]
fn an_example_notices_every_value_moved_either_way() {
    let rules = built_in();
    let mut played = played(&rules);
    played.extend(at_the_ends(&rules));
    let all = drawn(&played, &rules);
    let look = |drawn: &Drawn| {
        [true, false].map(|up| {
            noticed(drawn, &played, &rules, up).map(|p| match &p.rule {
                Some(rule) => format!("{rule}: {}", p.name),
                None => p.name.clone(),
            })
        })
    };
    let found: Vec<[Option<String>; 2]> = all.par_iter().map(look).collect();
    let (mut unnoticed, mut rows) = (Vec::new(), Vec::new());
    for (drawn, found) in all.iter().zip(found) {
        let value = drawn.value;
        let mut row = vec![value.what.to_owned(), printed(value, value.value), value.source.to_owned()];
        for (up, found) in [true, false].into_iter().zip(found) {
            if found.is_none() && !NOT_ALONE.contains(&value.what) {
                unnoticed.push(format!("{}, {}", called(value), if up { "up" } else { "down" }));
            }
            let by = found.unwrap_or_else(|| "nothing".to_owned());
            row.push(format!("{}: {by}", printed(value, moved(value, up))));
        }
        rows.push(row);
    }
    assert_eq!(unnoticed, NOT_YET, "what no example notices: {unnoticed:#?}");
    let heads = ["value", "is", "source", "moved up", "moved down"];
    let intro = "Each value of a register that a rule draws on for its own examples is moved by 5 % (a yes becomes a no), one at a time. \
                 Beside the moved value stands the first marked example whose outcome changes, \
                 or the design at the end of a band of its species.";
    held("register-values.md", &format!("# Register values moved\n\n{intro}\n\n{}", table(&heads, rows)))
        .unwrap_or_else(|why| panic!("{why}"));
}
