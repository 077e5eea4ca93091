//! One term of a quantity: a number with its unit, or two that belong together ("2 ft 6 in").

use std::ops::Range;

use super::scan::{Number, Scan};
use super::{Slip, say};
use crate::{Dimension, Kind, Unit, unit};

/// What is being read.
#[derive(Debug, Clone, Copy)]
pub(super) struct Reading {
    pub(super) dimension: Dimension,
    pub(super) difference: bool,
}

#[derive(Debug, Clone)]
pub(super) struct Term {
    negative: bool,
    number: Number,
    pub(super) unit: Option<&'static Unit>,
    lesser: Option<(Number, &'static Unit)>,
    pub(super) at: Range<usize>,
}

impl Term {
    /// A number with its unit.
    pub(super) fn of_number(negative: bool, top: f64, unit: &'static Unit) -> Self {
        Term { negative, number: Number { top, bottom: 1.0 }, unit: Some(unit), lesser: None, at: 0..0 }
    }

    /// In SI, with the shift of °C and °F.
    pub(super) fn value(&self, unit: &Unit) -> f64 {
        if unit.shift == 0.0 {
            return self.difference(unit);
        }
        unit.to_si(self.signed(self.number.top) / self.number.bottom)
    }

    /// In SI, without the shift. Kept as one quotient, so that "2 ft 6 in" is "30 in" to the last bit.
    pub(super) fn difference(&self, unit: &Unit) -> f64 {
        let (mut top, mut bottom) = (self.number.top * unit.times, self.number.bottom * unit.over);
        if let Some((number, lesser)) = self.lesser {
            let (its_top, its_bottom) = (number.top * lesser.times, number.bottom * lesser.over);
            if its_bottom == bottom {
                top += its_top;
            } else {
                top = top * its_bottom + its_top * bottom;
                bottom *= its_bottom;
            }
        }
        self.signed(top) / bottom
    }

    fn signed(&self, value: f64) -> f64 {
        if self.negative { -value } else { value }
    }
}

impl Reading {
    pub(super) fn term(self, scan: &mut Scan<'_>) -> Result<Term, Slip> {
        let start = scan.at;
        let negative = scan.negative();
        let number = scan.number()?;
        let mut term = Term { negative, number, unit: None, lesser: None, at: start..scan.at };
        term.unit = self.unit(scan, start)?;
        if let Some(unit) = term.unit {
            term.lesser = self.lesser(scan, &term, unit)?;
            term.at.end = scan.at;
        }
        Ok(term)
    }

    fn unit(self, scan: &mut Scan<'_>, start: usize) -> Result<Option<&'static Unit>, Slip> {
        let (at, typed) = scan.unit_text();
        if typed.is_empty() {
            return Ok(None);
        }
        let number = scan.text[start..at].trim();
        let span = at..at + typed.len();
        let found = unit(typed).ok_or_else(|| say::unknown(span.clone(), number, typed, self.dimension))?;
        if found.dimension != self.dimension {
            return Err(say::wrong_dimension(span, number, found, self.dimension));
        }
        if found.kind == Kind::Difference && !self.difference {
            return Err(Slip::new(
                span,
                format!("{number} {typed} is a difference, expected is a temperature such as \"82 °F\""),
            ));
        }
        Ok(Some(found))
    }

    /// The inches after the feet: a smaller unit of the same dimension, less than one of the greater.
    fn lesser(
        self,
        scan: &mut Scan<'_>,
        term: &Term,
        greater: &'static Unit,
    ) -> Result<Option<(Number, &'static Unit)>, Slip> {
        let may = [Dimension::LENGTH, Dimension::TIME, Dimension::MASS].contains(&self.dimension);
        let mut ahead = *scan;
        let marked = scan.text[..scan.at].ends_with(['\'', '′', '’']);
        ahead.skip_spaces();
        if marked && ahead.take(&["-"]) {
            ahead.skip_spaces();
        }
        if !may || !ahead.rest().starts_with(|c: char| c.is_ascii_digit() || "½¼¾⅛⅜⅝⅞".contains(c))
        {
            return Ok(None);
        }
        let start = ahead.at;
        let number = ahead.number()?;
        let Some(unit) = self.unit(&mut ahead, start)? else {
            return Err(say::two_numbers(term.at.start..ahead.at, scan.text));
        };
        *scan = ahead;
        let whole = (term.number.top / term.number.bottom).fract() == 0.0;
        let less = number.top / number.bottom * unit.factor < greater.factor;
        if whole && less && unit.factor < greater.factor {
            return Ok(Some((number, unit)));
        }
        let typed = &scan.text[term.at.start..scan.at];
        let message = format!(
            "{typed:?} does not add up: write a whole number of {} and less than one in {}",
            greater.symbol, unit.symbol
        );
        Err(Slip::new(term.at.start..scan.at, message))
    }
}
