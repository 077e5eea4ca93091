//! Every limit of every compiled rule is moved a little both ways; a marked example must notice each.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use std::collections::{BTreeMap, BTreeSet};
use std::sync::OnceLock;

use haulout_engine::{Rule, Ruleset};
use haulout_rules::built_in;
use haulout_sheet::Limit;
use haulout_tests::evidence::moved::{Played, heard, limits_drawn, moved, noticed, played, through_the_door};
use haulout_tests::evidence::{held, table};
use rayon::prelude::*;

/// Limits that no example notices in a direction, as `rule, limit, row, direction`; the list may only shrink.
const NOT_YET: &[&str] = &[
    // No marking a design may state lies between IPX0 and IPX2.
    "ingress-degree-for-the-zone, zone-2, down",
];

/// A limit with the rules that read it, its own first.
struct Asked {
    limit: &'static Limit,
    rules: Vec<Rule>,
}

fn asked() -> Vec<Asked> {
    let all = built_in();
    let mut seen: BTreeMap<(&str, &str, &str), ()> = BTreeMap::new();
    let listed = all.iter().flat_map(|rule| rule.limits.iter().copied());
    let new: Vec<&'static Limit> =
        listed.filter(|l| seen.insert((l.rule, l.name, l.row), ()).is_none()).collect();
    new.into_iter().map(|limit| Asked { limit, rules: readers(&all, limit) }).collect()
}

/// The rules that list a limit or draw on it for one of their own examples, its own rule first.
fn readers(all: &[Rule], limit: &'static Limit) -> Vec<Rule> {
    static DRAWN: OnceLock<Vec<BTreeSet<usize>>> = OnceLock::new();
    let drawn = DRAWN.get_or_init(|| all.par_iter().map(limits_drawn).collect());
    let same = |l: &Limit| (l.rule, l.name, l.row) == (limit.rule, limit.name, limit.row);
    let reads = |(rule, drawn): &(&Rule, &BTreeSet<usize>)| {
        rule.limits.iter().any(|l| same(l)) || drawn.contains(&(std::ptr::from_ref(limit) as usize))
    };
    let mut rules: Vec<Rule> = all.iter().zip(drawn).filter(reads).map(|(rule, _)| rule.clone()).collect();
    rules.sort_by_key(|rule| rule.card.id != limit.rule);
    rules
}

/// Which example notices the limit moved up, and which down.
fn notices(asked: &Asked, played: &[Played]) -> [Option<String>; 2] {
    let before: Vec<_> = {
        let ruleset = Ruleset::new(asked.rules.clone());
        played.iter().map(|p| heard(p, &ruleset)).collect()
    };
    [true, false].map(|up| {
        let ruleset = through_the_door(&asked.rules, asked.limit, moved(asked.limit, up))
            .unwrap_or_else(|why| panic!("{why}"));
        noticed(played, &before, &ruleset).map(|p| match &p.rule {
            Some(rule) if *rule != asked.limit.rule => format!("{rule}: {}", p.name),
            _ => p.name.clone(),
        })
    })
}

fn called(limit: &Limit) -> String {
    if limit.row.is_empty() { limit.name.to_owned() } else { format!("{}, {}", limit.name, limit.row) }
}

fn printed(limit: &Limit, si: f64) -> String {
    let unit = haulout_quantity::unit(limit.unit);
    unit.map_or_else(|| si.to_string(), |unit| haulout_quantity::print(si, unit, 5))
}

#[test]
fn an_example_notices_every_limit_moved_either_way() {
    let all = asked();
    let found: Vec<_> = all.par_iter().map(|asked| notices(asked, &played(&asked.rules))).collect();
    let mut unnoticed: Vec<String> = Vec::new();
    let mut rows = Vec::new();
    for (asked, [up, down]) in all.iter().zip(found) {
        let limit = asked.limit;
        for (way, found) in [("up", &up), ("down", &down)] {
            if found.is_none() {
                unnoticed.push(format!("{}, {}, {way}", limit.rule, called(limit)));
            }
        }
        let cell = |way: bool, found: Option<String>| {
            format!(
                "{}: {}",
                printed(limit, moved(limit, way)),
                found.unwrap_or_else(|| "nothing".to_owned())
            )
        };
        let (up, down) = (cell(true, up), cell(false, down));
        rows.push(vec![limit.rule.to_owned(), called(limit), printed(limit, limit.value), up, down]);
    }
    let (limits, heads) = (rows.len(), ["rule", "limit", "value", "moved up", "moved down"]);
    let page = format!(
        "# Limits moved\n\nEach of the {limits} limits of the compiled rules is moved by 5 % (a whole number without a unit by one, nothing by one of its unit), one at a time, \
         through the door that annexes use. Beside the moved value stands the first marked example whose outcome changes; where an example belongs \
         to another rule that reads the limit, that rule is named.\n\n{}",
        table(&heads, rows)
    );
    let known: Vec<String> = NOT_YET.iter().map(|s| (*s).to_owned()).collect();
    assert_eq!(unnoticed, known, "what no example notices: {unnoticed:#?}");
    held("limits.md", &page).unwrap_or_else(|why| panic!("{why}"));
}
