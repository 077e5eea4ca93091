//! A reader of printed expressions: numbers with units, + - × / ^, brackets, and a few functions; gives SI.
#![allow(
    clippy::disallowed_methods,
    reason = "the second reader works with other functions than the program"
)]

/// The value of an expression in SI.
///
/// # Errors
/// Where it cannot be read.
pub(crate) fn value(text: &str) -> Result<f64, String> {
    let mut reader = Reader { rest: text.trim() };
    let value = reader.sum()?;
    if reader.rest.is_empty() { Ok(value) } else { Err(format!("\"{}\" is left over", reader.rest)) }
}

struct Reader<'t> {
    rest: &'t str,
}

impl Reader<'_> {
    fn take(&mut self, token: &str) -> bool {
        match self.rest.strip_prefix(token) {
            Some(rest) => {
                self.rest = rest;
                true
            }
            None => false,
        }
    }

    fn sum(&mut self) -> Result<f64, String> {
        let mut value = self.product()?;
        loop {
            if self.take(" + ") {
                value += self.product()?;
            } else if self.take(" - ") {
                value -= self.product()?;
            } else {
                return Ok(value);
            }
        }
    }

    fn product(&mut self) -> Result<f64, String> {
        let mut value = self.power()?;
        loop {
            if self.take(" × ") {
                value *= self.power()?;
            } else if self.take(" / ") {
                value /= self.power()?;
            } else {
                return Ok(value);
            }
        }
    }

    fn power(&mut self) -> Result<f64, String> {
        let base = self.atom()?;
        if self.take("^") { Ok(base.powf(self.atom()?)) } else { Ok(base) }
    }

    fn atom(&mut self) -> Result<f64, String> {
        if self.take("(") {
            let value = self.sum()?;
            return if self.take(")") {
                Ok(value)
            } else {
                Err(format!("a bracket is open before \"{}\"", self.rest))
            };
        }
        for (name, function) in FUNCTIONS {
            if self.take(&format!("{name}(")) {
                return self.call(*function);
            }
        }
        if self.take("pi") {
            return Ok(std::f64::consts::PI);
        }
        self.quantity()
    }

    fn call(&mut self, function: Function) -> Result<f64, String> {
        let mut arguments = vec![self.sum()?];
        while self.take(", ") {
            arguments.push(self.sum()?);
        }
        if self.take(")") {
            Ok(function(&arguments))
        } else {
            Err(format!("a call is open before \"{}\"", self.rest))
        }
    }

    /// A number and the longest unit that follows it.
    fn quantity(&mut self) -> Result<f64, String> {
        let mut end = self
            .rest
            .find(|c: char| !(c.is_ascii_digit() || c == '.' || c == '-'))
            .unwrap_or(self.rest.len());
        if let Some(exponent) = self.rest[end..].strip_prefix('e') {
            let digits = exponent.find(|c: char| !(c.is_ascii_digit() || c == '-')).unwrap_or(exponent.len());
            end += 1 + digits;
        }
        let number: f64 = self.rest[..end].parse().map_err(|_| format!("\"{}\" is no number", self.rest))?;
        self.rest = &self.rest[end..];
        let Some(after) = self.rest.strip_prefix(' ') else { return Ok(number) };
        // Units hold no " + ", " - ", " × ", " / ", no comma and no closing bracket of the expression.
        for end in (1..=after.len()).rev().filter(|e| after.is_char_boundary(*e)) {
            let candidate = &after[..end];
            if OPERATORS.iter().any(|operator| candidate.contains(operator)) {
                continue;
            }
            let follows = &after[end..];
            let whole = follows.is_empty() || follows.starts_with([' ', ',', ')', '^']);
            if let Some(unit) = haulout_quantity::unit(candidate).filter(|u| whole && !u.symbol.is_empty()) {
                self.rest = follows;
                return Ok(unit.to_si(number));
            }
        }
        Ok(number)
    }
}

/// What no unit holds.
const OPERATORS: &[&str] = &[" /", " ×", " +", " -", ","];

type Function = fn(&[f64]) -> f64;

const FUNCTIONS: &[(&str, Function)] = &[
    ("sqrt", |a| a[0].sqrt()),
    ("log10", |a| a[0].log10()),
    ("ln", |a| a[0].ln()),
    ("exp", |a| a[0].exp()),
    ("min", |a| a.iter().copied().fold(f64::INFINITY, f64::min)),
    ("max", |a| a.iter().copied().fold(f64::NEG_INFINITY, f64::max)),
];
