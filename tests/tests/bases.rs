//! Every limit and every value of a register that is used names its source; what is published names the place in it.

use haulout_quantity::Basis;
use haulout_register::{SPECIES, TRAITS, Value};
use haulout_rules::built_in;
use haulout_tests::evidence::moved::played;
use haulout_tests::evidence::registered::drawn;

/// Words after which the place within a source follows, and definitions that have none.
const PLACES: &[&str] = &[
    "annex",
    "article",
    "art.",
    "clause",
    "table",
    "section",
    "diagram",
    "paragraph",
    "chapter",
    "§",
    "page",
    "p. ",
    "pp.",
    "eq.",
    "figure",
    "fig.",
    "appendix",
    "schedule",
    "performance",
    "order",
    "definition",
];

/// Whether a source says where in it the value stands: by one of the words, by a numbered clause, or by an article of
/// a journal with its volume.
fn names_a_place(source: &str) -> bool {
    let low = source.to_lowercase();
    let clause = source.split([' ', ',', ';', '(', ')']).any(|word| {
        let numbers: Vec<&str> = word.trim_end_matches(':').split(['.', ':']).collect();
        numbers.len() > 1 && numbers.iter().all(|n| !n.is_empty() && n.chars().all(|c| c.is_ascii_digit()))
    });
    clause || PLACES.iter().any(|word| low.contains(word))
}

fn wanting(what: &str, basis: Basis, source: &str) -> Option<String> {
    if source.trim().len() < 10 {
        return Some(format!("{what} names no source: \"{source}\""));
    }
    let placed = basis != Basis::Published || names_a_place(source);
    (!placed).then(|| format!("{what} is published and names no place in \"{source}\""))
}

#[test]
fn limits_name_their_sources() {
    let all = built_in();
    let limits: Vec<_> = all.iter().flat_map(|rule| rule.limits.iter()).collect();
    let wrong: Vec<String> = limits
        .iter()
        .filter_map(|l| wanting(&format!("{}, {} {}", l.rule, l.name, l.row), l.basis, l.source))
        .collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(limits.len() > 50, "only {} limits were looked at", limits.len());
}

#[test]
fn values_of_registers_name_their_sources() {
    let traits = SPECIES.iter().flat_map(|s| TRAITS.iter().filter_map(|t| (t.of)(s)));
    let rules = built_in();
    let used = drawn(&played(&rules), &rules).into_iter().map(|d| d.value);
    let values: Vec<&'static Value> = traits.chain(used).collect();
    let mut wrong: Vec<String> = values.iter().filter_map(|v| wanting(v.what, v.basis, v.source)).collect();
    wrong.sort();
    wrong.dedup();
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert!(values.len() > 50, "only {} values were looked at", values.len());
}

#[test]
fn a_source_without_a_place_is_noticed() {
    assert!(wanting("a limit", Basis::Published, "").is_some());
    assert!(wanting("a limit", Basis::Published, "a book about turtles").is_some());
    assert!(wanting("a limit", Basis::CommonPractice, "keepers' practice").is_none());
    assert!(wanting("a limit", Basis::Published, "NFPA 70 (2020) 680.22(A), as in a copy").is_none());
}
