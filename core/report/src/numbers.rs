//! Numbers in machine formats: nine significant digits, the same bytes on every machine.

use serde_json::Value;

/// A number rounded to nine significant digits; null for what is no number.
pub(crate) fn rounded(value: f64) -> Value {
    if !value.is_finite() {
        return Value::Null;
    }
    let text = format!("{value:.8e}");
    text.parse::<f64>().ok().and_then(serde_json::Number::from_f64).map_or(Value::Null, Value::Number)
}

#[cfg(test)]
mod tests {
    use super::rounded;

    #[test]
    fn nine_digits_are_kept() {
        assert_eq!(rounded(1.0 / 3.0).to_string(), "0.333333333");
        assert_eq!(rounded(7200.0).to_string(), "7200.0");
        assert_eq!(rounded(f64::NAN).to_string(), "null");
    }
}
