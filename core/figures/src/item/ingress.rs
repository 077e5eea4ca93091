//! What a marking of protection against water proves: jets on one scale, immersion on another.

use haulout_calc::formula::Formula;
use haulout_model::Subject;
use haulout_quantity::Measure;
use haulout_quantity::si::Ratio;
use haulout_sheet::{All, Known, Line, Sheet};

use super::{item, pick};

/// Highest numeral proved against drops and jets (to 6), and against immersion (7 or 8), in the order of the markings.
/// IPX7 or IPX8 alone stands for splashing (4) and below, not for jets.
const PROVED: [(f64, f64); 11] = [
    (0.0, 0.0),
    (2.0, 0.0),
    (4.0, 0.0),
    (5.0, 0.0),
    (6.0, 0.0),
    (4.0, 7.0),
    (4.0, 8.0),
    (4.0, 7.0),
    (5.0, 7.0),
    (5.0, 8.0),
    (6.0, 8.0),
];

static NUMERAL: Formula<(u16, Ratio), Ratio> = Formula {
    card: &pick(
        "numeral a marking proves on the scale asked for",
        "X_have",
        "up to 6 the numeral against jets, beyond 6 that against immersion",
        &["marking", "X"],
        "IEC 60529: numerals up to 6 include the lower ones, as reported by a published table of the code; that 7 and 8 do not include 5 and 6 is common knowledge of the code",
    ),
    run: |(marking, asked)| {
        let (jets, immersion) = PROVED.get(usize::from(marking)).copied().unwrap_or((0.0, 0.0));
        Ok(Ratio::from_si(if asked.value > 6.0 { immersion } else { jets }))
    },
};

/// The numeral the item's marking proves where so much is asked.
///
/// # Errors
/// A gap when no marking is stated.
pub fn numeral_proved(sheet: Sheet<'_>, at: Subject, asked: Known<Line<Ratio>>) -> Known<Line<Ratio>> {
    let (marking, asked) = (item(sheet, at).ingress.on(sheet), asked).all()?;
    sheet.work(&NUMERAL, (marking.option(), asked))
}
