//! Reading a slope, which the trade writes in four ways, as rise over run.

use super::scan::Scan;
use super::{Parts, Slip, Stated, read, scan_of};
use crate::{Dimension, Kind, unit};

/// Reads a slope as rise over run: "1 in 4" and "25 %" are 0.25, "14 deg" is its tangent, 0.25 is itself.
///
/// The unit of "1 in 4" is that of a bare number.
///
/// # Errors
/// A [`Slip`]; "1:4" and "1/4" are refused, since rise to run and run to rise are both written so.
pub fn read_slope(text: &str) -> Result<Stated, Slip> {
    let mut scan = scan_of(text)?;
    let whole = 0..text.len();
    if let Some(stated) = one_in(&mut scan)? {
        return Ok(stated);
    }
    if text.contains([':', '/']) && !text.contains("+/") {
        let parts: Vec<_> = text.trim().splitn(2, [':', '/']).map(str::trim).collect();
        let message = format!(
            "{:?} may be rise to run or run to rise: write the rise first, as \"{} in {}\"",
            text.trim(),
            parts[0],
            parts.get(1).unwrap_or(&"4")
        );
        return Err(Slip::new(whole, message));
    }
    let stated = read(text, Dimension::NUMBER)?;
    let upright = || {
        Slip::new(
            whole.clone(),
            format!("{:?} is no slope: it lies between 0 and less than 90 deg", text.trim()),
        )
    };
    match stated.unit.kind {
        Kind::Angle => {
            let right = std::f64::consts::FRAC_PI_2;
            if stated.parts.low() <= -right || stated.parts.high() >= right {
                return Err(upright());
            }
            Ok(Stated { parts: tangents(stated.parts), ..stated })
        }
        Kind::Plain => Ok(stated),
        Kind::Turbidity | Kind::Difference => Err(upright()),
    }
}

/// A spread becomes the wider half of its tangents, so that no end of it is lost.
fn tangents(parts: Parts) -> Parts {
    match parts {
        Parts::Spread { value, tolerance } => {
            let middle = libm::tan(value);
            let (low, high) = (libm::tan(value - tolerance), libm::tan(value + tolerance));
            Parts::Spread { value: middle, tolerance: (middle - low).max(high - middle) }
        }
        other => other.map(libm::tan),
    }
}

fn one_in(scan: &mut Scan<'_>) -> Result<Option<Stated>, Slip> {
    let start = scan.at;
    let Some(rise) = number_then(scan, "in") else {
        return Ok(None);
    };
    let run = scan.number()?;
    let at = start..scan.at;
    scan.skip_spaces();
    if !scan.rest().is_empty() {
        return Ok(None);
    }
    let ratio = rise / (run.top / run.bottom);
    if !ratio.is_finite() {
        let typed = scan.text[at.clone()].trim();
        return Err(Slip::new(at, format!("{typed:?} has no run; write a slope as \"1 in 4\"")));
    }
    Ok(unit("").map(|unit| Stated { parts: Parts::One(ratio), unit, prefix: None }))
}

/// The number before the word; `None` leaves the text to the other readings.
fn number_then(scan: &mut Scan<'_>, word: &str) -> Option<f64> {
    let mut ahead = *scan;
    let negative = ahead.negative();
    let number = ahead.number().ok()?;
    ahead.skip_spaces();
    if !ahead.take(&[word]) {
        return None;
    }
    ahead.skip_spaces();
    if !ahead.rest().starts_with(|c: char| c.is_ascii_digit() || c == '.') {
        return None;
    }
    *scan = ahead;
    let value = number.top / number.bottom;
    Some(if negative { -value } else { value })
}
