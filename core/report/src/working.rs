//! The working of a line: its formula with the numbers in it, printed so that the printed line can be worked again.

use haulout_calc::formula::{FormulaCard, Kind};
use haulout_quantity::{Dimension, System, Unit, print};
use haulout_sheet::{AnyFormula, Book, Datum, LineId, Made};

use crate::units::unit_of;

/// Significant digits of a result, unless more are needed to tell it from what it is held against.
pub(crate) const DIGITS: u32 = 4;

/// More digits than this are never printed.
const MOST_DIGITS: u32 = 15;

/// Steps of a working at the most; what lies deeper is in the sheet.
const MOST_STEPS: usize = 25;

/// How a result is shown: as it is said beside the working.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Shown {
    /// Significant digits.
    pub(crate) digits: u32,
    /// The unit; the usual one where none is said.
    pub(crate) unit: Option<&'static Unit>,
}

impl Shown {
    /// As what lies below.
    pub(crate) const USUAL: Shown = Shown { digits: DIGITS, unit: None };
}

/// The steps of the working of some lines, from the top down, each step once. The results of the lines themselves are shown
/// so, what lies below them as usual.
pub(crate) fn working(book: &Book<'_>, lines: &[LineId], shown: Shown, system: System) -> Vec<String> {
    let (mut steps, mut seen) = (Vec::<String>::new(), Vec::new());
    let mut open: Vec<LineId> = lines.iter().rev().copied().collect();
    while let Some(next) = open.pop() {
        if seen.contains(&next) || steps.len() >= MOST_STEPS {
            continue;
        }
        seen.push(next);
        let top = Shown { digits: shown.digits.max(DIGITS), ..shown };
        let shown = if lines.contains(&next) { top } else { Shown::USUAL };
        if let Some(step) = step(book, next, shown, system).filter(|step| !steps.contains(step)) {
            steps.push(step);
        }
        open.extend(book.arguments(next).into_iter().rev());
        open.extend(book.check_of(next).into_iter().flat_map(|(left, right)| [right, left]));
    }
    steps
}

/// One step, its result shown so; none for a root.
pub(crate) fn step(book: &Book<'_>, line: LineId, shown: Shown, system: System) -> Option<String> {
    let record = book.record(line).clone();
    let Made::Worked(formula) = record.made else { return None };
    let card = formula.card();
    let arguments = book.arguments(line);
    let Datum::Number(value) = record.datum else { return None };
    // The largest, the least or the sum of one thing is that thing.
    if let ([only], true) = (arguments.as_slice(), card.symbols.is_empty())
        && book.record(*only).datum.number() == Some(value)
    {
        return step(book, *only, shown, system);
    }
    let said = shown.unit.filter(|unit| unit.dimension == record.dimension);
    let unit = said.unwrap_or_else(|| unit_of(book, line, system));
    if card.kind == Kind::Closed {
        return Some(closed(book, formula, &arguments, value, (unit, shown.digits), system));
    }
    let result = print(value, unit, shown.digits);
    Some(match book.check_of(line) {
        Some(check) => format!("{} = {result}, where {}", card.result, balance(book, check, system)),
        None => {
            format!("{} = {result} ({}: {})", card.result, card.name, inputs(book, card, &arguments, system))
        }
    })
}

/// The two sides of a check with as many digits as they agree in.
fn balance(book: &Book<'_>, (left, right): (LineId, LineId), system: System) -> String {
    let side = |line: LineId| {
        let record = book.record(line).clone();
        let name = match record.made {
            Made::Worked(formula) => formula.card().result,
            _ => "",
        };
        let value = record.datum.number().unwrap_or(f64::NAN);
        (name, print(value, unit_of(book, line, system), DIGITS + 2))
    };
    let ((a, x), (b, y)) = (side(left), side(right));
    format!("{a} = {x} and {b} = {y}")
}

fn inputs(book: &Book<'_>, card: &FormulaCard, arguments: &[LineId], system: System) -> String {
    let given: Vec<String> = arguments
        .iter()
        .enumerate()
        .filter_map(|(at, line)| {
            let value = book.record(*line).datum.number()?;
            let printed = print(value, unit_of(book, *line, system), DIGITS + 1);
            Some(card.symbols.get(at).map_or(printed.clone(), |symbol| format!("{symbol} {printed}")))
        })
        .collect();
    if given.is_empty() { card.text.to_owned() } else { format!("{}; {}", card.text, given.join(", ")) }
}

/// Digits that operands get beyond those of the result before the result gets one more: a result that lies on the edge
/// between two printed ones is told apart sooner by its own next digit than by fifteen of an operand.
const BEYOND: u32 = 5;

/// A closed formula. The operands get more digits until working with the printed ones prints the same result.
fn closed(
    book: &Book<'_>,
    formula: &dyn AnyFormula,
    arguments: &[LineId],
    value: f64,
    (unit, wanted): (&'static Unit, u32),
    system: System,
) -> String {
    let card = formula.card();
    let ratio = card.text.contains(['×', '/', '^']);
    let tries = (wanted..wanted + 3).flat_map(|result| (result..=result + BEYOND).map(move |d| (result, d)));
    let last = std::iter::once((wanted, MOST_DIGITS));
    let worked = tries.chain(last).map(|(wanted, digits)| {
        let operands: Vec<Operand> =
            arguments.iter().map(|line| Operand::of(book, *line, system, digits, ratio)).collect();
        let data: Vec<Datum> = operands.iter().map(|o| o.datum.clone()).collect();
        let again = formula.again(&data).ok().and_then(|d| d.number());
        let result = print(value, unit, wanted);
        let same = again.is_some_and(|again| print(again, unit, wanted) == result);
        let printed: Vec<String> = operands.into_iter().map(|o| o.printed).collect();
        (same, format!("{} = {} = {result}", card.result, spread(card, &printed)))
    });
    let mut text = String::new();
    for (same, line) in worked {
        text = line;
        if same {
            break;
        }
    }
    text
}

/// An operand as printed, and what the printed text is worth.
struct Operand {
    printed: String,
    datum: Datum,
}

impl Operand {
    fn of(book: &Book<'_>, line: LineId, system: System, digits: u32, ratio: bool) -> Self {
        let record = book.record(line).clone();
        let Datum::Number(value) = record.datum else {
            return Operand { printed: "the drawing".to_owned(), datum: record.datum };
        };
        let unit = absolute(unit_of(book, line, system), ratio);
        let printed = print(value, unit, digits);
        let number = printed.strip_suffix(unit.symbol).unwrap_or(&printed).trim();
        let number = if matches!(record.made, Made::Worked(_)) { number } else { bare(number) };
        let datum = Datum::Number(number.parse().map_or(value, |n| unit.to_si(n)));
        Operand { printed: format!("{number} {}", unit.symbol).trim_end().to_owned(), datum }
    }
}

/// A temperature that is multiplied or divided is one above absolute zero, and is printed so.
fn absolute(unit: &'static Unit, ratio: bool) -> &'static Unit {
    let kelvin = || haulout_quantity::unit("K").unwrap_or(unit);
    if ratio && unit.dimension == Dimension::TEMPERATURE { kelvin() } else { unit }
}

/// What was typed or stands in a table is printed as such: zeros behind its last digit were added by printing.
fn bare(number: &str) -> &str {
    let plain = number.contains('.') && !number.contains('e');
    if plain { number.trim_end_matches('0').trim_end_matches('.') } else { number }
}

/// The text of a formula with the operands in the places of its symbols.
fn spread(card: &FormulaCard, operands: &[String]) -> String {
    match (card.symbols.is_empty(), card.text) {
        (true, "+") if operands.is_empty() => "0".to_owned(),
        (true, "+") => operands.join(" + "),
        (true, name @ ("min" | "max")) => format!("{name}({})", operands.join(", ")),
        _ => substitute(card, operands),
    }
}

fn substitute(card: &FormulaCard, operands: &[String]) -> String {
    let mut out = String::new();
    let mut rest = card.text;
    while let Some(first) = rest.chars().next() {
        let word = if first.is_alphabetic() || first == '_' {
            rest.find(|c: char| !c.is_alphanumeric() && c != '_').unwrap_or(rest.len())
        } else {
            first.len_utf8()
        };
        let (token, after) = rest.split_at(word);
        match card.symbols.iter().position(|s| *s == token).and_then(|at| operands.get(at)) {
            // A power binds tighter than the unit of what it is taken of, a minus sign than what stands before it.
            Some(operand) if after.starts_with('^') || operand.starts_with('-') => {
                out.push('(');
                out.push_str(operand);
                out.push(')');
            }
            Some(operand) => out.push_str(operand),
            None => out.push_str(token),
        }
        rest = after;
    }
    out
}
