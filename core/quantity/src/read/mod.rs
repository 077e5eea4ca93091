//! Reading a quantity: "0.6 m", "2 ft 6 in", "24 to 27 °C", "0.60 m ± 20 mm", "1 in 4".

mod parts;
mod say;
mod scan;
mod slope;
mod term;
#[cfg(test)]
mod tests;

pub use parts::{Parts, Slip, Stated};
pub use slope::read_slope;

use crate::{Dimension, Kind, Unit, unit};
use scan::Scan;
use term::{Reading, Term};

/// The longest text that is read, in bytes.
const LONGEST: usize = 200;

/// Measure words that may stand before a length: carapace, plastron, snout-vent, total and other lengths, widths.
const MEASURE_WORDS: &[&str] =
    &["SCL", "CCL", "SPL", "SVL", "SCW", "CCW", "CL", "PL", "TL", "SL", "FL", "CW", "Ø", "OD", "ID"];

const PLUS_MINUS: &[&str] = &["±", "+/-", "+-", "+/\u{2212}"];

/// Reads a quantity of the expected dimension, into SI.
///
/// One value, "a to b", or "a ± b"; feet and inches (hours and minutes, pounds and ounces) together; fractions.
/// Among numbers a bare one is a number, "65 %" is 0.65, "14 deg" is in radians, and NTU stay NTU: where only one
/// of these will do, use [`read_share`], [`read_angle`] or [`read_turbidity`].
///
/// # Errors
/// A [`Slip`] that quotes what was typed, says what was expected and what to write instead.
pub fn read(text: &str, expect: Dimension) -> Result<Stated, Slip> {
    Reading { dimension: expect, difference: false }.all(text)
}

/// Reads a difference of temperatures: "2 K", "2 °C" and "3.6 °F" are all 2 K. The unit is that of a difference.
///
/// # Errors
/// As [`read`].
pub fn read_difference(text: &str) -> Result<Stated, Slip> {
    let stated = Reading { dimension: Dimension::TEMPERATURE, difference: true }.all(text)?;
    let unit =
        if stated.unit.shift == 0.0 { stated.unit } else { crate::difference_unit(stated.unit.system) };
    Ok(Stated { unit, ..stated })
}

/// Reads an angle, "90 deg" or "1.57 rad", in radians.
///
/// # Errors
/// As [`read`]; also for a bare number, a share or a turbidity.
pub fn read_angle(text: &str) -> Result<Stated, Slip> {
    of_kind(text, Kind::Angle, "an angle such as \"90 deg\"")
}

/// Reads a share or a plain number: "65 %" or "0.65".
///
/// # Errors
/// As [`read`]; also for an angle or a turbidity.
pub fn read_share(text: &str) -> Result<Stated, Slip> {
    of_kind(text, Kind::Plain, "a share such as \"65 %\" or \"0.65\"")
}

/// Reads a turbidity, "2 NTU".
///
/// # Errors
/// As [`read`]; also for a bare number, a share or an angle.
pub fn read_turbidity(text: &str) -> Result<Stated, Slip> {
    of_kind(text, Kind::Turbidity, "a turbidity such as \"2 NTU\"")
}

fn of_kind(text: &str, kind: Kind, expected: &str) -> Result<Stated, Slip> {
    let stated = read(text, Dimension::NUMBER)?;
    if stated.unit.kind == kind {
        return Ok(stated);
    }
    Err(Slip::new(0..text.len(), format!("{:?} was typed, expected is {expected}", text.trim())))
}

fn scan_of(text: &str) -> Result<Scan<'_>, Slip> {
    if text.len() > LONGEST {
        let message = format!("{} bytes are too long for a quantity; at most {LONGEST} are read", text.len());
        return Err(Slip::new(0..text.len(), message));
    }
    let mut scan = Scan { text, at: 0 };
    scan.skip_spaces();
    Ok(scan)
}

impl Reading {
    fn all(self, text: &str) -> Result<Stated, Slip> {
        match self.usual(text) {
            Some(stated) => Ok(stated),
            None => self.any(text),
        }
    }

    /// The usual spelling, one decimal number and a unit in its one form: "0.6 m". Whatever else is written, and all
    /// that is wrong, is left to the careful way.
    fn usual(self, text: &str) -> Option<Stated> {
        let bytes = text.as_bytes();
        let digits = |from: usize| bytes[from..].iter().take_while(|c| c.is_ascii_digit()).count();
        let start = usize::from(matches!(bytes.first(), Some(b'-' | b'+')));
        let mut end = start + digits(start);
        if end == start || text.len() > LONGEST {
            return None;
        }
        if bytes.get(end) == Some(&b'.') && bytes.get(end + 1).is_some_and(u8::is_ascii_digit) {
            end += 1 + digits(end + 1);
        }
        let typed = text[end..].strip_prefix(' ').unwrap_or(&text[end..]);
        let more = |c: &u8| matches!(c, b'-' | b'+' | b',' | b':' | b';');
        if typed.is_empty() || typed.as_bytes()[0].is_ascii_digit() || typed.bytes().any(|c| more(&c)) {
            return None;
        }
        let unit = crate::lookup::find(typed.as_bytes())?;
        let fits = unit.dimension == self.dimension && (unit.kind != Kind::Difference || self.difference);
        let top: f64 = text[start..end].parse().ok()?;
        let term = Term::of_number(bytes[0] == b'-', top, unit);
        let value = self.si(&term, unit);
        let parts = Parts::One(value);
        let sound = fits && top.is_finite() && self.check(text, parts).is_ok();
        sound.then(|| Stated { parts: parts.map(|value| value + 0.0), unit, prefix: None })
    }

    fn any(self, text: &str) -> Result<Stated, Slip> {
        let mut scan = scan_of(text)?;
        if scan.rest().is_empty() {
            return Err(Slip::new(
                0..text.len(),
                format!("nothing is written; expected is {}", say::expected(self.dimension)),
            ));
        }
        let prefix = self.measure_word(&mut scan);
        let give_or_take = scan.take(PLUS_MINUS);
        scan.skip_spaces();
        let first = self.term(&mut scan)?;
        scan.skip_spaces();
        let (parts, unit) = if scan.take_to() {
            self.range(&mut scan, &first)?
        } else if scan.take(PLUS_MINUS) {
            self.spread(&mut scan, &first)?
        } else if !scan.rest().is_empty() {
            return Err(say::left_over(&scan, self.dimension));
        } else {
            let unit = self.unit_of(&first, text)?;
            (Parts::One(self.si(&first, unit)), unit)
        };
        scan.skip_spaces();
        if !scan.rest().is_empty() {
            return Err(say::left_over(&scan, self.dimension));
        }
        self.check(text, parts)?;
        if give_or_take && (parts != Parts::One(0.0) && parts != Parts::One(-0.0)) {
            let message = format!(
                "{:?} gives a tolerance without a value; write it as \"0.60 m ± 20 mm\"",
                text.trim()
            );
            return Err(Slip::new(0..text.len(), message));
        }
        Ok(Stated { parts: parts.map(|value| value + 0.0), unit, prefix })
    }

    fn measure_word(self, scan: &mut Scan<'_>) -> Option<&'static str> {
        if self.dimension != Dimension::LENGTH {
            return None;
        }
        let word = *MEASURE_WORDS.iter().find(|word| {
            let behind = scan.rest().strip_prefix(**word);
            behind.is_some_and(|rest| !rest.starts_with(char::is_alphabetic))
        })?;
        scan.at += word.len();
        scan.skip_spaces();
        Some(word)
    }

    /// "24 to 27 °C": the unit behind serves both ends unless the first has its own.
    fn range(self, scan: &mut Scan<'_>, first: &Term) -> Result<(Parts, &'static Unit), Slip> {
        scan.skip_spaces();
        let last = self.term(scan)?;
        let high_unit = self.unit_of(&last, scan.text)?;
        let unit = first.unit.unwrap_or(high_unit);
        let (low, high) = (self.si(first, unit), self.si(&last, high_unit));
        if low > high {
            let typed = scan.text[first.at.start..scan.at].trim();
            return Err(Slip::new(
                first.at.start..scan.at,
                format!("{typed:?} runs downwards: write the lower end first"),
            ));
        }
        Ok((Parts::Range { low, high }, unit))
    }

    /// "0.60 m ± 20 mm", "28 ± 2 °C", "12 m3/h ± 5 %".
    fn spread(self, scan: &mut Scan<'_>, first: &Term) -> Result<(Parts, &'static Unit), Slip> {
        scan.skip_spaces();
        let start = scan.at;
        let share = Reading { dimension: Dimension::NUMBER, difference: false };
        let percent = scan.rest().trim_end().ends_with('%') && !self.dimension.is_number();
        let last = if percent { share.term(scan)? } else { self.term(scan)? };
        let at = start..scan.at;
        let unit = match (first.unit, last.unit) {
            (Some(unit), _) => unit,
            (None, Some(unit)) if !percent => unit,
            _ => self.unit_of(first, scan.text)?,
        };
        if unit.shift != 0.0 && percent {
            return Err(Slip::new(
                at,
                "a share of a temperature has no meaning; write the tolerance as \"2 K\"",
            ));
        }
        let value = self.si(first, unit);
        let tolerance = if percent {
            last.difference(last.unit.unwrap_or(unit)) * value.abs()
        } else {
            last.difference(self.unit_of(&last, scan.text)?)
        };
        if tolerance < 0.0 {
            return Err(Slip::new(at, "a tolerance is written without a sign, such as \"± 20 mm\""));
        }
        Ok((Parts::Spread { value, tolerance }, unit))
    }

    fn unit_of(self, term: &Term, text: &str) -> Result<&'static Unit, Slip> {
        match term.unit {
            Some(unit) => Ok(unit),
            None if self.dimension.is_number() => Ok(unit("").unwrap_or(&crate::UNITS[0])),
            None => Err(say::no_unit(term.at.clone(), text, self.dimension)),
        }
    }

    fn si(self, term: &Term, unit: &Unit) -> f64 {
        if self.difference { term.difference(unit) } else { term.value(unit) }
    }

    fn check(self, text: &str, parts: Parts) -> Result<(), Slip> {
        let whole = 0..text.len();
        if !parts.is_finite() {
            return Err(Slip::new(whole, format!("{:?} is beyond what can be computed with", text.trim())));
        }
        if self.dimension == Dimension::TEMPERATURE && !self.difference && parts.low() < 0.0 {
            return Err(Slip::new(whole, format!("{:?} is below absolute zero, -273.15 °C", text.trim())));
        }
        Ok(())
    }
}
