//! Taking a text apart: numbers, fractions, and how far a unit reaches.

use super::Slip;

/// A number without its sign as a quotient, so that thirds and eighths stay exact.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Number {
    pub(super) top: f64,
    pub(super) bottom: f64,
}

/// A position in a text.
#[derive(Debug, Clone, Copy)]
pub(super) struct Scan<'t> {
    pub(super) text: &'t str,
    pub(super) at: usize,
}

impl<'t> Scan<'t> {
    pub(super) fn rest(&self) -> &'t str {
        &self.text[self.at..]
    }

    pub(super) fn skip_spaces(&mut self) {
        self.at = self.text.len() - self.rest().trim_start().len();
    }

    pub(super) fn take(&mut self, tokens: &[&str]) -> bool {
        let found = tokens.iter().find(|token| self.rest().starts_with(**token));
        self.at += found.map_or(0, |token| token.len());
        found.is_some()
    }

    /// The word "to" between two values, with spaces around it or a number behind.
    pub(super) fn take_to(&mut self) -> bool {
        let behind = self.rest().strip_prefix("to");
        let found = behind.is_some_and(|rest| !rest.starts_with(char::is_alphabetic));
        self.at += if found { 2 } else { 0 };
        found
    }

    /// Minus, in ASCII or Unicode, or plus.
    pub(super) fn negative(&mut self) -> bool {
        let negative = self.take(&["-", "\u{2212}"]);
        if !negative {
            self.take(&["+"]);
        }
        self.skip_spaces();
        negative
    }

    pub(super) fn number(&mut self) -> Result<Number, Slip> {
        let start = self.at;
        let whole_only = self.decimal()?;
        let first = self.value(start)?;
        let mut number = Number { top: first, bottom: 1.0 };
        if let Some((top, bottom)) = self.vulgar() {
            number = Number { top: first * bottom + top, bottom };
        } else if whole_only && let Some(fraction) = self.fraction(start, first)? {
            number = fraction;
        }
        Ok(number)
    }

    /// Digits with a point and an exponent; whether there were only digits.
    fn decimal(&mut self) -> Result<bool, Slip> {
        let start = self.at;
        let digits = self.digits();
        let point =
            self.rest().strip_prefix('.').is_some_and(|rest| rest.starts_with(|c: char| c.is_ascii_digit()));
        if point {
            self.at += 1;
            self.digits();
        } else if digits == 0 && !self.rest().starts_with(['½', '¼', '¾', '⅛', '⅜', '⅝', '⅞']) {
            return Err(self.no_number());
        }
        if self.rest().strip_prefix(',').is_some_and(|rest| rest.starts_with(|c: char| c.is_ascii_digit())) {
            return Err(self.comma(start));
        }
        Ok(!self.exponent() && !point && digits > 0)
    }

    fn digits(&mut self) -> usize {
        let count = self.rest().bytes().take_while(u8::is_ascii_digit).count();
        self.at += count;
        count
    }

    fn exponent(&mut self) -> bool {
        let Some(rest) = self.rest().strip_prefix(['e', 'E']) else {
            return false;
        };
        let digits = rest.strip_prefix(['+', '-']).unwrap_or(rest);
        if !digits.starts_with(|c: char| c.is_ascii_digit()) {
            return false;
        }
        self.at += 1 + (rest.len() - digits.len());
        self.digits();
        true
    }

    fn value(&self, start: usize) -> Result<f64, Slip> {
        let typed = &self.text[start..self.at];
        if typed.is_empty() {
            return Ok(0.0);
        }
        let value = typed.parse::<f64>().ok().filter(|value| value.is_finite());
        value.ok_or_else(|| Slip::new(start..self.at, format!("{typed} is beyond what can be computed with")))
    }

    fn vulgar(&mut self) -> Option<(f64, f64)> {
        let c = self.rest().chars().next()?;
        let fraction = match c {
            '½' => (1.0, 2.0),
            '¼' => (1.0, 4.0),
            '¾' => (3.0, 4.0),
            '⅛' => (1.0, 8.0),
            '⅜' => (3.0, 8.0),
            '⅝' => (5.0, 8.0),
            '⅞' => (7.0, 8.0),
            _ => return None,
        };
        self.at += c.len_utf8();
        Some(fraction)
    }

    /// "1/2", "2 1/2", "2-1/2" after the whole number `first`.
    fn fraction(&mut self, start: usize, first: f64) -> Result<Option<Number>, Slip> {
        let mut ahead = *self;
        let mut top = Some(first);
        if ahead.take(&[" ", "-"]) {
            let at = ahead.at;
            top = if ahead.digits() > 0 { Some(ahead.value(at)?) } else { None };
        }
        let mixed = ahead.at > self.at;
        let slash = ahead.take(&["/"]);
        let at = ahead.at;
        let (Some(top), true, true) = (top, slash, ahead.digits() > 0) else {
            return Ok(None);
        };
        let bottom = ahead.value(at)?;
        self.at = ahead.at;
        if bottom == 0.0 {
            return Err(Slip::new(start..self.at, format!("{} divides by zero", &self.text[start..self.at])));
        }
        Ok(Some(Number { top: if mixed { first * bottom + top } else { top }, bottom }))
    }

    /// Where the unit that begins here ends: before the next number, sign, comma, colon, or the word "to".
    pub(super) fn unit_text(&mut self) -> (usize, &'t str) {
        self.skip_spaces();
        let start = self.at;
        let mut before = ' ';
        for (i, c) in self.rest().char_indices() {
            let here = Scan { text: self.text, at: start + i };
            if here.ends_unit(before, c) {
                break;
            }
            before = c;
            self.at = start + i + c.len_utf8();
        }
        let unit = self.text[start..self.at].trim_end();
        self.at = start + unit.len();
        (start, unit)
    }

    fn ends_unit(&self, before: char, c: char) -> bool {
        let mut to = *self;
        match c {
            '±' | ',' | ':' | ';' | '+' => true,
            '-' | '\u{2013}' | '\u{2212}' => true,
            '0'..='9' | '½' | '¼' | '¾' | '⅛' | '⅜' | '⅝' | '⅞' => {
                before.is_whitespace() || matches!(before, '\'' | '"' | '′' | '″' | '’' | '”')
            }
            't' => before.is_whitespace() && to.take_to(),
            _ => false,
        }
    }

    fn no_number(&self) -> Slip {
        let found = self.rest().trim_end();
        let message = if found.is_empty() {
            "a number is missing at the end".to_owned()
        } else {
            format!("{found:?} stands where a number is expected, such as 0.6")
        };
        Slip::new(self.at..self.at + found.len(), message)
    }

    fn comma(&self, start: usize) -> Slip {
        let reach =
            self.text[start..].bytes().take_while(|b| b.is_ascii_digit() || matches!(b, b',' | b'.')).count();
        let typed = &self.text[start..start + reach];
        let groups =
            typed.split('.').next().unwrap_or(typed).split(',').skip(1).all(|group| group.len() == 3);
        let (joined, pointed) = (typed.replace(',', ""), typed.replacen(',', ".", 1));
        let unit = self.text[start + reach..].trim();
        let with_unit = |number: &str| format!("{number} {unit}").trim_end().to_owned();
        let message = if typed.contains('.') || typed.matches(',').count() > 1 {
            format!("{typed} is written with commas: write \"{}\"", with_unit(&joined))
        } else if groups && !typed.starts_with('0') {
            let (thousands, point) = (with_unit(&joined), with_unit(&pointed));
            format!(
                "{typed} may be thousands or decimals: write \"{thousands}\", or \"{point}\" with a decimal point"
            )
        } else {
            format!("{typed} has a decimal comma: write \"{}\"", with_unit(&pointed))
        };
        Slip::new(start..start + reach, message)
    }
}
