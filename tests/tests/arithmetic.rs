//! Every printed line of working is taken apart and worked again from its own text, by a reader of expressions that
//! knows nothing of the formulas, and must agree to the last printed digit.
#![allow(clippy::panic, reason = "a test that fails says so by a panic")]

mod expression;

use haulout_document::Tree;
use haulout_engine::{Ruleset, review};
use haulout_report::{figured, tell};
use haulout_sheet::Book;
use haulout_tests::{bundled, examples, load, options, ruleset};

#[test]
fn every_printed_line_can_be_worked_again() {
    let (closed, checks) = worked_again(all_lines());
    assert!(closed > 100 && checks > 5, "only {closed} closed lines and {checks} checks were found");
}

/// What a script works is printed and worked again like everything else.
#[test]
fn every_printed_line_of_a_script_can_be_worked_again() {
    let (closed, _) = worked_again(lines_of(bundled::trials(), &bundled::scripts()));
    assert!(closed > 40, "only {closed} closed lines were found");
}

/// How many closed lines and checks were taken apart.
fn worked_again(lines: Vec<String>) -> (usize, usize) {
    let (mut closed, mut checks) = (0, 0);
    for line in lines {
        if let Some((_, balance)) = line.split_once(", where ") {
            check_balance(balance, &line);
            checks += 1;
        } else if line.matches(" = ").count() == 2 {
            check_closed(&line);
            closed += 1;
        }
    }
    (closed, checks)
}

/// `result = expression = value`.
fn check_closed(line: &str) {
    let parts: Vec<&str> = line.split(" = ").collect();
    let (worked, printed) = (expression::value(parts[1]), expression::value(parts[2]));
    let worked = worked.unwrap_or_else(|why| panic!("{line}: {why}"));
    let printed_si = printed.unwrap_or_else(|why| panic!("{line}: {why}"));
    let step = last_digit(parts[2]).unwrap_or_else(|why| panic!("{line}: {why}"));
    // Half a unit of the last digit, and a hair for rounding of halves.
    assert!(
        (worked - printed_si).abs() <= 0.5001 * step,
        "{line}: works out as {worked}, printed as {printed_si} (SI)"
    );
}

/// `a = x and b = y`: the two sides of a search agree in all digits printed.
fn check_balance(balance: &str, line: &str) {
    let sides: Vec<&str> = balance.split(" and ").filter_map(|s| s.split(" = ").nth(1)).collect();
    assert_eq!(sides.len(), 2, "{line}");
    assert_eq!(sides[0], sides[1], "{line}");
}

/// What one unit of the last printed digit is in SI.
fn last_digit(text: &str) -> Result<f64, String> {
    let number: String =
        text.chars().take_while(|c| c.is_ascii_digit() || matches!(c, '.' | '-' | 'e')).collect();
    let unit = text[number.len()..].trim();
    let mantissa = number.split('e').next().unwrap_or_default();
    let decimals = mantissa.split_once('.').map_or(0, |(_, d)| d.len() as i32);
    let exponent: i32 = number.split_once('e').and_then(|(_, e)| e.parse().ok()).unwrap_or(0);
    // Whole numbers with trailing zeros beyond the printed digits are good to four digits only.
    let whole = mantissa.trim_start_matches('-').len() as i32;
    let coarse = if decimals == 0 && whole > 4 { whole - 4 } else { 0 };
    let step = 10_f64.powi(exponent - decimals + coarse);
    let unit = haulout_quantity::unit(unit).ok_or_else(|| format!("unit {unit}"))?;
    Ok(unit.difference_to_si(step))
}

fn all_lines() -> Vec<String> {
    let mut lines = lines_of(examples(), &ruleset());
    for (_, text) in examples() {
        let loaded = load(&text).expect("the examples are read without a problem");
        lines.extend(of_figures(&loaded.design, &loaded.tree));
    }
    lines
}

/// The working of every answer about some designs.
fn lines_of(designs: Vec<(String, String)>, ruleset: &Ruleset) -> Vec<String> {
    let mut lines = Vec::new();
    for (_, text) in designs {
        let loaded = load(&text).expect("the examples are read without a problem");
        let review = review(&loaded.design, ruleset, &[], &options());
        lines.extend(tell(&review, &loaded.tree).into_iter().flat_map(|told| told.working));
    }
    lines
}

fn of_figures(design: &haulout_model::Design, tree: &Tree) -> Vec<String> {
    let limits = haulout_sheet::Limits::default();
    let book = Book::new(design, &limits, &[]);
    let figures = figured(&book, tree, haulout_figures::CATALOGUE, &|_, _| true);
    figures.into_iter().flat_map(|f| f.working).collect()
}
