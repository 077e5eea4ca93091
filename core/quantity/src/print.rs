//! Printing a quantity in a unit: plain decimals, rounded the same on every machine.

use crate::Unit;

/// Most digits that are printed: what tells two f64 apart.
const MOST_DIGITS: u32 = 17;

/// Beyond this a number is printed with a power of ten.
const COUNTED: f64 = 1e7;

/// A value in SI, in a unit, with so many significant digits (1 to 17).
///
/// Plain decimals from 1e-4 to 1e7, otherwise "1.2e-7". Trailing zeros are digits and are kept. The decimal
/// expansion of the f64 itself is rounded, so that a tie is a tie of the stored number and goes to the even digit.
///
/// A whole number without a unit is a count, or as good as one, and needs no decimals.
pub fn print(si: f64, unit: &Unit, digits: u32) -> String {
    let value = unit.of_si(si);
    if unit.symbol.is_empty() && value.fract() == 0.0 && value.abs() < COUNTED {
        return without_minus_zero(format!("{value:.0}"));
    }
    with_symbol(significant(value, digits), unit)
}

/// A value in SI, in a unit, with so many decimals (0 to 17).
pub fn print_fixed(si: f64, unit: &Unit, decimals: u32) -> String {
    let places = decimals.min(MOST_DIGITS) as usize;
    with_symbol(without_minus_zero(format!("{:.places$}", unit.of_si(si))), unit)
}

/// A length in m, in feet and inches to the nearest sixteenth, which is where a tape ends: "2 ft 6 1/2 in".
///
/// Lengths beyond 1e7 ft, and what is no number, are printed in feet with six digits.
pub fn print_feet_and_inches(si: f64) -> String {
    let sixteenths = (si.abs() * 160_000.0 / 254.0).round();
    if sixteenths.is_nan() || sixteenths > 192e7 {
        return format!("{} ft", significant(si / 0.3048, 6));
    }
    let all = sixteenths as u64;
    let (feet, inches, parts) = (all / 192, all % 192 / 16, all % 16);
    let sign = if si < 0.0 && all > 0 { "-" } else { "" };
    let feet = if feet == 0 { String::new() } else { format!("{feet} ft ") };
    let shift = parts.trailing_zeros().min(4);
    let (top, bottom) = (parts >> shift, 16 >> shift);
    match (inches, parts) {
        (0, 0) if !feet.is_empty() => format!("{sign}{}", feet.trim_end()),
        (_, 0) => format!("{sign}{feet}{inches} in"),
        (0, _) => format!("{sign}{feet}{top}/{bottom} in"),
        _ => format!("{sign}{feet}{inches} {top}/{bottom} in"),
    }
}

fn with_symbol(number: String, unit: &Unit) -> String {
    if unit.symbol.is_empty() { number } else { format!("{number} {}", unit.symbol) }
}

fn significant(value: f64, digits: u32) -> String {
    let digits = digits.clamp(1, MOST_DIGITS) as usize;
    if value == 0.0 || !value.is_finite() {
        return without_minus_zero(format!("{value}"));
    }
    // Rounding comes first: 9.996 with three digits is 10.0, not 10.00.
    let scientific = format!("{value:.*e}", digits - 1);
    let exponent = scientific.rsplit('e').next().and_then(|power| power.parse::<i32>().ok()).unwrap_or(0);
    if !(-4..7).contains(&exponent) {
        return scientific;
    }
    let decimals = digits as i32 - 1 - exponent;
    if decimals >= 0 {
        return format!("{value:.*}", decimals as usize);
    }
    // Fewer digits than the whole part has: the rest are zeros.
    scientific.parse::<f64>().map_or(scientific, |rounded| format!("{rounded:.0}"))
}

/// "-0.00" is printed as "0.00".
fn without_minus_zero(text: String) -> String {
    let zero = text.starts_with('-') && text.bytes().all(|b| matches!(b, b'-' | b'0' | b'.'));
    if zero { text[1..].to_owned() } else { text }
}

#[cfg(test)]
mod tests {
    use super::{print, print_feet_and_inches, print_fixed};
    use crate::unit;

    fn shown(si: f64, symbol: &str, digits: u32) -> String {
        print(si, unit(symbol).expect("known"), digits)
    }

    #[test]
    fn significant_digits_in_plain_decimals() {
        assert_eq!(shown(0.6, "mm", 3), "600 mm");
        assert_eq!(shown(9.996, "m", 3), "10.0 m");
        assert_eq!(shown(12.0 / 3600.0, "m3/h", 4), "12.00 m3/h");
        assert_eq!(shown(301.15, "°C", 3), "28.0 °C");
        assert_eq!(shown(0.65, "%", 2), "65 %");
        assert_eq!(shown(123_456.0, "m", 2), "120000 m");
        assert_eq!(shown(0.25, "", 2), "0.25");
        assert_eq!(shown(4.0, "", 3), "4");
        assert_eq!(shown(4.004, "", 3), "4.00");
        assert_eq!(shown(1.2e-7, "m", 2), "1.2e-7 m");
        assert_eq!(shown(0.0001, "m", 1), "0.0001 m");
        assert_eq!(shown(1.0e7, "m", 2), "1.0e7 m");
        assert_eq!(shown(9_999_999.0, "m", 7), "9999999 m");
        assert_eq!(shown(-0.0, "m", 3), "0 m");
    }

    #[test]
    fn fixed_decimals_lose_the_sign_of_nothing() {
        let metre = unit("m").expect("known");
        assert_eq!(print_fixed(0.92, metre, 2), "0.92 m");
        assert_eq!(print_fixed(-0.001, metre, 2), "0.00 m");
        assert_eq!(print_fixed(-0.1, metre, 1), "-0.1 m");
        // Ties of numbers f64 holds exactly go to the even digit.
        assert_eq!(print_fixed(0.125, metre, 2), "0.12 m");
        assert_eq!(print_fixed(0.375, metre, 2), "0.38 m");
    }

    #[test]
    fn feet_and_inches() {
        for (si, text) in [
            (0.762, "2 ft 6 in"),
            (0.3048, "1 ft"),
            (0.0127, "1/2 in"),
            (0.7747, "2 ft 6 1/2 in"),
            (-0.762, "-2 ft 6 in"),
            (0.0, "0 in"),
            (0.304_799_9, "1 ft"),
        ] {
            assert_eq!(print_feet_and_inches(si), text);
        }
    }
}
