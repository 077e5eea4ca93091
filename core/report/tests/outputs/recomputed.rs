//! Every closed working of every figure and answer of the examples, worked again from its own printed text.

use haulout_quantity::{print, unit};
use haulout_report::{figured, tell};
use haulout_sheet::Book;

use crate::common::{EXAMPLES, built_in, load, reviewed};

/// A reader of printed lines: numbers with their units become SI.
struct Reader<'a>(&'a str);

impl<'a> Reader<'a> {
    fn take(&mut self, sign: &str) -> bool {
        let rest = self.0.trim_start();
        let found = rest.strip_prefix(sign);
        self.0 = found.unwrap_or(rest);
        found.is_some()
    }

    fn sum(&mut self) -> Option<f64> {
        let mut total = self.product()?;
        loop {
            if self.take("+") {
                total += self.product()?;
            } else if self.take("-") {
                total -= self.product()?;
            } else {
                return Some(total);
            }
        }
    }

    fn product(&mut self) -> Option<f64> {
        let mut total = self.power()?;
        loop {
            if self.take("×") {
                total *= self.power()?;
            } else if self.take("/") {
                total /= self.power()?;
            } else {
                return Some(total);
            }
        }
    }

    fn power(&mut self) -> Option<f64> {
        if self.take("-") {
            return Some(-self.power()?);
        }
        let base = self.atom()?;
        if self.take("^") { Some(libm::pow(base, self.power()?)) } else { Some(base) }
    }

    fn atom(&mut self) -> Option<f64> {
        if self.take("pi") {
            return Some(std::f64::consts::PI);
        }
        for (name, work) in FUNCTIONS {
            if self.take(name) {
                let mut all = vec![self.sum()?];
                while self.take(",") {
                    all.push(self.sum()?);
                }
                return self.take(")").then(|| work(&all));
            }
        }
        self.quantity()
    }

    fn quantity(&mut self) -> Option<f64> {
        let text = self.0.trim_start();
        let bare = text.trim_start_matches('-');
        let digits = bare.find(|c: char| !(c.is_ascii_digit() || c == '.')).unwrap_or(bare.len());
        let mut end = text.len() - bare.len() + digits;
        let power = text[end..].strip_prefix('e').map(|p| p.trim_start_matches('-'));
        if let Some(rest) = power {
            end = text.len() - rest.trim_start_matches(|c: char| c.is_ascii_digit()).len();
        }
        let number: f64 = text[..end].parse().ok()?;
        let rest = &text[end..];
        let ends = (1..=rest.len().min(24)).rev().filter(|i| rest.is_char_boundary(*i));
        let border = |i: usize| rest[i..].chars().next().is_none_or(|c| " ),^".contains(c));
        let found = ends.filter(|i| border(*i)).find_map(|i| {
            let symbol = rest[..i].trim();
            // A unit is read with signs of multiplication in it; here they belong to the sum.
            Some((i, unit(symbol).filter(|unit| !unit.symbol.is_empty() && !symbol.contains('×'))?))
        });
        match found {
            Some((length, unit)) => {
                self.0 = &rest[length..];
                Some(unit.to_si(number))
            }
            None => {
                self.0 = rest;
                Some(number)
            }
        }
    }
}

type Work = fn(&[f64]) -> f64;

const FUNCTIONS: &[(&str, Work)] = &[
    ("sqrt(", |a| a[0].sqrt()),
    ("log10(", |a| libm::log10(a[0])),
    ("ln(", |a| libm::log(a[0])),
    ("exp(", |a| libm::exp(a[0])),
    ("min(", |a| a.iter().copied().fold(f64::INFINITY, f64::min)),
    ("max(", |a| a.iter().copied().fold(f64::NEG_INFINITY, f64::max)),
    ("(", |a| a[0]),
];

/// Holds a step `symbol = expression = result` to its own numbers; steps of other kinds have no second equals sign
/// or say `where`, and are passed over.
fn again(step: &str) -> Option<(String, String)> {
    let parts: Vec<&str> = step.split(" = ").collect();
    let [_, text, result] = parts.as_slice() else { return None };
    if step.contains(", where ") || step.contains(": ") || step.contains("the drawing") {
        return None;
    }
    let mut reader = Reader(text);
    let value = reader.sum();
    assert!(value.is_some(), "{step}: it cannot be read at \"{}\"", reader.0);
    assert_eq!(reader.0.trim(), "", "{step}: something is left over");
    let (number, symbol) = result.split_once(' ').unwrap_or((result, ""));
    let digits = number.split('e').next().map_or("", |n| n.trim_start_matches(['-', '0', '.']));
    let significant = digits.bytes().filter(u8::is_ascii_digit).count().max(1) as u32;
    let unit = unit(symbol);
    assert!(unit.is_some(), "{step}: \"{symbol}\" is no unit");
    let (value, unit, most) = (value?, unit?, significant.max(4));
    // A nought at the end of a whole number may be a digit or only hold a place.
    let of = |digits| print(value, unit, digits);
    let worked = (4..=most).map(of).find(|worked| worked == result).unwrap_or_else(|| of(most));
    Some((worked, (*result).to_owned()))
}

#[test]
fn every_closed_working_recomputes_from_its_text() {
    let ruleset = built_in();
    let mut count = 0;
    for (name, text) in EXAMPLES {
        let (tree, design) = load(text);
        let limits = haulout_sheet::Limits::default();
        let book = Book::new(&design, &limits, &[]);
        let figures = figured(&book, &tree, haulout_figures::CATALOGUE, &|_, _| true);
        let answers = tell(&reviewed(&design, &ruleset), &tree);
        let steps = figures.iter().flat_map(|f| &f.working).chain(answers.iter().flat_map(|a| &a.working));
        for step in steps {
            let Some((worked, printed)) = again(step) else { continue };
            assert_eq!(worked, printed, "{name}: {step}");
            count += 1;
        }
    }
    assert!(count > 100, "only {count} closed workings were found");
}

/// The reader itself, on sums done by hand.
#[test]
fn the_reader_of_this_test_reads() {
    assert_eq!(Reader("2 × (1.5 m - 50 cm) / 4").sum(), Some(0.5));
    assert_eq!(Reader("max(1 ft, 30 cm)").sum(), Some(0.3048));
    assert_eq!(Reader("(0.5 m)^2 / 1e-3").sum(), Some(250.0));
}
