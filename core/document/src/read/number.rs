//! Numbers (RFC 8259 section 6) and the usual ways of misspelling them.

use super::reader::{Reader, Stop};

impl Reader<'_> {
    /// Reads a number; every value it lets pass is one `f64` can parse.
    pub(super) fn number(&mut self) -> Result<(), Stop> {
        let start = self.at;
        if let Some(length) = self.short_number() {
            self.at += length;
            return Ok(());
        }
        let token = token(&self.text[start..]);
        let end = start + token.len();
        self.at = end;
        if is_plain(token) {
            return match token.parse::<f64>() {
                Ok(value) if value.is_finite() => Ok(()),
                _ => self.slip(
                    start,
                    end,
                    format!("The number {token} is too large; numbers here go up to about 1.8e308."),
                ),
            };
        }
        if matches!(token, "-Infinity" | "+Infinity" | "-NaN" | "+NaN") {
            return self.slip(start, end, no_number(token));
        }
        match misspelt(token) {
            Some((fault, better)) => {
                self.slip(start, end, format!("The number {token} {fault}; write {better}."))
            }
            None => Err(self.stop(start, end, not_a_number(token))),
        }
    }
}

impl Reader<'_> {
    /// The length of a number without exponent and of few digits, which f64 holds without a look; anything else is
    /// left to the careful way.
    fn short_number(&self) -> Option<usize> {
        const FEW: usize = 40;
        let rest = &self.bytes[self.at..];
        let digits = |from: usize| rest[from..].iter().take_while(|c| c.is_ascii_digit()).count();
        let sign = usize::from(rest.first() == Some(&b'-'));
        let whole = digits(sign);
        let mut length = sign + whole;
        if whole == 0 || (whole > 1 && rest[sign] == b'0') {
            return None;
        }
        if rest.get(length) == Some(&b'.') {
            let fraction = digits(length + 1);
            length += 1 + fraction;
            if fraction == 0 {
                return None;
            }
        }
        let ends = matches!(rest.get(length), None | Some(b',' | b']' | b'}' | b' ' | b'\n' | b'\r' | b'\t'));
        (ends && length < FEW).then_some(length)
    }
}

/// For `NaN` and `Infinity`, which the standard leaves out on purpose.
pub(super) fn no_number(word: &str) -> String {
    format!("JSON has no {word}; leave the value out, or say in words what is meant.")
}

/// A number typed with its unit is the usual case.
fn not_a_number(token: &str) -> String {
    format!("{token} is not a number; if it is meant as a text, it stands in double quotes: \"{token}\".")
}

/// Everything that hangs together with a number, so that a message shows all of it.
fn token(rest: &str) -> &str {
    let belongs = |c: char| c.is_alphanumeric() || matches!(c, '+' | '-' | '.' | '_');
    &rest[..rest.find(|c| !belongs(c)).unwrap_or(rest.len())]
}

/// Whether the token is `[ minus ] int [ frac ] [ exp ]` with at least one digit where the grammar wants one.
fn is_plain(token: &str) -> bool {
    let unsigned = token.strip_prefix('-').unwrap_or(token);
    let (whole, rest) = digits(unsigned);
    if whole.is_empty() || (whole.len() > 1 && whole.starts_with('0')) {
        return false;
    }
    let rest = match rest.strip_prefix('.').map(digits) {
        Some(("", _)) => return false,
        Some((_, after)) => after,
        None => rest,
    };
    let Some(exponent) = rest.strip_prefix(['e', 'E']) else {
        return rest.is_empty();
    };
    let (power, left) = digits(exponent.strip_prefix(['+', '-']).unwrap_or(exponent));
    !power.is_empty() && left.is_empty()
}

fn digits(text: &str) -> (&str, &str) {
    text.split_at(text.bytes().take_while(u8::is_ascii_digit).count())
}

/// What is wrong with a number whose meaning is clear, and its right spelling.
fn misspelt(token: &str) -> Option<(&'static str, String)> {
    let (sign, unsigned) = match token.strip_prefix('-') {
        Some(rest) => ("-", rest),
        None => ("", token.strip_prefix('+').unwrap_or(token)),
    };
    let (whole, rest) = digits(unsigned);
    let (fraction, power) = match rest.strip_prefix('.') {
        Some(after) => digits(after),
        None => ("", rest),
    };
    if whole.is_empty() && fraction.is_empty() {
        return None;
    }
    let trimmed = whole.trim_start_matches('0');
    let whole_right = if trimmed.is_empty() { "0" } else { trimmed };
    let point = if fraction.is_empty() { "" } else { "." };
    let better = format!("{sign}{whole_right}{point}{fraction}{power}");
    let fault = if token.starts_with('+') {
        "has a plus sign in front"
    } else if whole.is_empty() {
        "begins with its decimal point"
    } else if whole.len() > 1 && whole.starts_with('0') {
        "begins with a zero that does not count"
    } else {
        "ends with its decimal point"
    };
    is_plain(&better).then_some((fault, better))
}

#[cfg(test)]
mod tests {
    use super::{is_plain, misspelt};

    /// The grammar of RFC 8259 section 6, taken apart by hand.
    #[test]
    fn the_grammar_is_kept() {
        for good in ["0", "-0", "10", "1.5", "0.5", "1e5", "1E+5", "1.25e-10"] {
            assert!(is_plain(good), "{good}");
        }
        for bad in ["", "-", "01", "-01", "1.", ".5", "+1", "1e", "1e+", "1.e5", "1x", "0x10", "--1"] {
            assert!(!is_plain(bad), "{bad}");
        }
    }

    #[test]
    fn a_slip_is_told_its_right_spelling() {
        for (typed, better) in
            [("+1.5", "1.5"), ("007", "7"), (".5", "0.5"), ("5.", "5"), ("-.5e3", "-0.5e3"), ("00", "0")]
        {
            assert_eq!(misspelt(typed).map(|(_, b)| b).as_deref(), Some(better));
        }
        for none in ["1e", "0x10", "1-2", "3m", ".", "+", "1.2.3"] {
            assert!(misspelt(none).is_none(), "{none}");
        }
    }
}
