//! The same design in US units, coordinates too, gives the same outcomes and the same unrounded numbers.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

use haulout_document::{Kind, Node, Tree};
use haulout_quantity::{Parts, Unit, read, read_difference, unit};
use haulout_sheet::{Book, Case};
use haulout_tests::{Loaded, examples, load, number, ruleset, said};

/// Metric unit, its twin, and whether numbers of it are differences.
const TWINS: &[(&str, &str)] = &[
    ("m", "ft"),
    ("cm", "in"),
    ("mm", "in"),
    ("m3", "gal(US)"),
    ("m3/h", "gal(US)/min"),
    ("°C", "°F"),
    ("K", "°F difference"),
];

/// Lists of bare coordinates in the drawing's unit.
const DRAWN: &[&str] = &["outline", "corner", "size", "centre", "radii", "through", "line", "at", "move"];

#[test]
fn a_design_in_us_units_is_the_same_design() {
    let mut compared = 0;
    for (name, text) in examples() {
        let metric = load(&text).expect("the examples are read without a problem");
        if text.contains("\"unit\": \"ft\"") {
            continue;
        }
        let us = twin(&metric.tree);
        let us = load(&us).unwrap_or_else(|p| panic!("{name}: {p:#?}\n{us}"));
        compared += same_answers(&name, &metric, &us) + same_figures(&name, &metric, &us);
    }
    assert!(compared > 40, "only {compared} numbers were compared");
}

fn same_answers(name: &str, metric: &Loaded, us: &Loaded) -> usize {
    let ruleset = ruleset();
    let (metric, us) = (said(metric, &ruleset, &[]), said(us, &ruleset, &[]));
    assert_eq!(metric.len(), us.len());
    for (key, says) in &metric {
        let twin = &us[key];
        assert_eq!(says.outcome, twin.outcome, "{name}: {key}");
        for (a, b) in says.numbers.iter().zip(&twin.numbers) {
            close(a, b, &format!("{name}: {key}"));
        }
    }
    metric.len()
}

fn same_figures(name: &str, metric: &Loaded, us: &Loaded) -> usize {
    let ruleset = ruleset();
    let metric_book = Book::new(&metric.design, &ruleset.limits, &[]);
    let us_book = Book::new(&us.design, &ruleset.limits, &[]);
    let mut compared = 0;
    for figure in haulout_figures::CATALOGUE {
        for subject in figure.card().about.walk(&metric.design).subjects {
            for case in Case::each(figure.card().axes) {
                let at = format!("{name}: {} {:?}", figure.card().id, case.words());
                match (
                    figure.line(metric_book.sheet(case), subject),
                    figure.line(us_book.sheet(case), subject),
                ) {
                    (Ok(a), Ok(b)) => close(&number(&metric_book, a), &number(&us_book, b), &at),
                    (Err(a), Err(b)) => assert_eq!(a.0.len(), b.0.len(), "{at}"),
                    _ => panic!("{at}: one of the twins is not assessed"),
                }
                compared += 1;
            }
        }
    }
    compared
}

fn close(a: &f64, b: &f64, at: &str) {
    // A difference of two equal levels is nothing but rounding of the conversion: a picometre is none.
    let rounding = 1e-12;
    assert!((a - b).abs() <= 1e-9 * a.abs().max(b.abs()) + rounding, "{at}: {a} and {b}");
}

/// The text with every quantity, coordinate and curve unit replaced by its twin.
fn twin(tree: &Tree) -> String {
    let mut text = tree.text().to_owned();
    for node in (0..tree.size() as u32).map(Node).rev() {
        if let Some(other) = twin_of(tree, node) {
            let span = tree.span(node);
            text.replace_range(span.start as usize..span.end as usize, &other);
        }
    }
    text
}

fn twin_of(tree: &Tree, node: Node) -> Option<String> {
    match tree.kind(node) {
        Kind::Number => twin_number(tree, node),
        Kind::String => {
            let word = tree.string(node)?.into_owned();
            if tree.key(node).as_deref() == Some("unit") {
                return Some("\"ft\"".to_owned());
            }
            if let Some((_, us)) = TWINS.iter().find(|(metric, _)| *metric == word) {
                return Some(format!("\"{us}\""));
            }
            twin_quantity(tree.key(node).as_deref(), &word).map(|w| format!("\"{w}\""))
        }
        _ => None,
    }
}

fn twin_quantity(key: Option<&str>, word: &str) -> Option<String> {
    // The unit is what follows the last digit.
    let at = word.rfind(|c: char| c.is_ascii_digit())? + 1;
    let (metric, us) = TWINS.iter().find(|(metric, _)| word[at..].trim() == *metric)?;
    let (metric, us): (&Unit, &Unit) = (unit(metric)?, unit(us)?);
    let read = if key == Some("swing") { read_difference(word) } else { read(word, metric.dimension) };
    let of = |si: f64| {
        if key == Some("swing") { us.difference_of_si(si) } else { us.of_si(si) }
    };
    Some(match read.ok()?.parts {
        Parts::One(si) => format!("{} {}", of(si), us.symbol),
        Parts::Range { low, high } => format!("{} to {} {}", of(low), of(high), us.symbol),
        Parts::Spread { value, tolerance } => {
            format!("{} ± {} {}", of(value), us.difference_of_si(tolerance), us.symbol)
        }
    })
}

/// A coordinate, or a number of a curve's table.
fn twin_number(tree: &Tree, node: Node) -> Option<String> {
    let value = tree.number(node)?;
    if tree.key(node).as_deref() == Some("radius") {
        return Some(format!("{}", value / 0.3048));
    }
    let row = tree.parent(node)?;
    let chain: Vec<Node> = std::iter::successors(Some(row), |n| tree.parent(*n)).collect();
    let keys: Vec<String> =
        chain.iter().filter_map(|n| tree.key(*n)).map(std::borrow::Cow::into_owned).collect();
    let nearest = keys.first()?;
    if nearest == "points" {
        let us = if tree.at(row, 0) == Some(node) { ("m3/h", "gal(US)/min") } else { ("m", "ft") };
        return Some(format!("{}", unit(us.1)?.of_si(unit(us.0)?.to_si(value))));
    }
    let drawn = DRAWN.contains(&nearest.as_str()) && tree.kind(row) == Kind::Array;
    drawn.then(|| format!("{}", value / 0.3048))
}
