//! A quantity whose dimension is known only when it is met: what scripts compute with.

use std::fmt;

use crate::{Dimension, System, print, unit_for};

/// A value in SI with its dimension.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Amount {
    /// The value, in SI.
    pub si: f64,
    /// Its dimension.
    pub dimension: Dimension,
}

/// Two dimensions that do not go together, or one that an operation does not have.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DimensionClash {
    /// What was attempted, both dimensions, and what would do, in a sentence without the final stop.
    pub message: String,
}

impl fmt::Display for DimensionClash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.message)
    }
}

impl std::error::Error for DimensionClash {}

impl Amount {
    /// A value in SI of a dimension.
    pub const fn new(si: f64, dimension: Dimension) -> Self {
        Amount { si, dimension }
    }

    /// A number.
    pub const fn number(value: f64) -> Self {
        Amount::new(value, Dimension::NUMBER)
    }

    /// The sum.
    ///
    /// # Errors
    /// Unless both have one dimension.
    pub fn checked_add(self, other: Self) -> Result<Self, DimensionClash> {
        self.alike(other, "cannot be added to", f64_add)
    }

    /// The difference.
    ///
    /// # Errors
    /// Unless both have one dimension.
    pub fn checked_sub(self, other: Self) -> Result<Self, DimensionClash> {
        self.alike(other, "cannot have subtracted from it", f64_sub)
    }

    /// The lesser; a NaN on either side gives NaN, so that it is not lost.
    ///
    /// # Errors
    /// Unless both have one dimension.
    pub fn min(self, other: Self) -> Result<Self, DimensionClash> {
        self.alike(other, "cannot be compared with", |a, b| if a.is_nan() || a < b { a } else { b })
    }

    /// The greater; a NaN on either side gives NaN.
    ///
    /// # Errors
    /// Unless both have one dimension.
    pub fn max(self, other: Self) -> Result<Self, DimensionClash> {
        self.alike(other, "cannot be compared with", |a, b| if a.is_nan() || a > b { a } else { b })
    }

    /// Which is greater; `None` beside a NaN.
    ///
    /// # Errors
    /// Unless both have one dimension.
    pub fn compare(self, other: Self) -> Result<Option<std::cmp::Ordering>, DimensionClash> {
        self.alike(other, "cannot be compared with", f64_sub)?;
        Ok(self.si.partial_cmp(&other.si))
    }

    /// The product.
    ///
    /// # Errors
    /// When an exponent leaves ±127.
    pub fn checked_mul(self, other: Self) -> Result<Self, DimensionClash> {
        let dimension = self.dimension.times(other.dimension);
        self.within_bounds(dimension, |i| i16::from(self.dimension.0[i]) + i16::from(other.dimension.0[i]))?;
        Ok(Amount::new(self.si * other.si, dimension))
    }

    /// The quotient; by zero it is infinite or NaN, which is for the caller to refuse.
    ///
    /// # Errors
    /// When an exponent leaves ±127.
    pub fn checked_div(self, other: Self) -> Result<Self, DimensionClash> {
        let dimension = self.dimension.over(other.dimension);
        self.within_bounds(dimension, |i| i16::from(self.dimension.0[i]) - i16::from(other.dimension.0[i]))?;
        Ok(Amount::new(self.si / other.si, dimension))
    }

    /// A whole power.
    ///
    /// # Errors
    /// When an exponent leaves ±127.
    pub fn pow(self, exponent: i8) -> Result<Self, DimensionClash> {
        let dimension = self.dimension.power(exponent);
        self.within_bounds(dimension, |i| i16::from(self.dimension.0[i]) * i16::from(exponent))?;
        Ok(Amount::new(libm::pow(self.si, f64::from(exponent)), dimension))
    }

    /// The square root.
    ///
    /// # Errors
    /// When an exponent of the dimension is odd.
    pub fn sqrt(self) -> Result<Self, DimensionClash> {
        let dimension = self.dimension.root(2).ok_or_else(|| DimensionClash {
            message: format!("{} has no square root: {} is no square", self.dimension.name(), self.dimension),
        })?;
        Ok(Amount::new(self.si.sqrt(), dimension))
    }

    fn alike(self, other: Self, verb: &str, of: impl Fn(f64, f64) -> f64) -> Result<Self, DimensionClash> {
        if self.dimension == other.dimension {
            return Ok(Amount::new(of(self.si, other.si), self.dimension));
        }
        let (mine, its) = (self.dimension.name(), other.dimension.name());
        let message = format!(
            "{mine} {verb} {its}: both must be of one dimension, here {} and {}",
            self.dimension, other.dimension
        );
        Err(DimensionClash { message })
    }

    fn within_bounds(self, got: Dimension, exact: impl Fn(usize) -> i16) -> Result<(), DimensionClash> {
        if (0..got.0.len()).all(|i| i16::from(got.0[i]) == exact(i)) {
            return Ok(());
        }
        let message = format!("the powers of {} grow beyond ±127: check the exponent", self.dimension.name());
        Err(DimensionClash { message })
    }
}

fn f64_add(a: f64, b: f64) -> f64 {
    a + b
}

fn f64_sub(a: f64, b: f64) -> f64 {
    a - b
}

/// Six significant digits in the metric trade unit, or in SI where the trade has none.
impl fmt::Display for Amount {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&print(self.si, unit_for(self.dimension, System::Metric), 6))
    }
}

#[cfg(test)]
mod tests {
    use super::{Amount, Dimension};

    const SIDE: Amount = Amount::new(3.0, Dimension::LENGTH);
    const HOUR: Amount = Amount::new(3600.0, Dimension::TIME);

    #[test]
    fn like_goes_with_like() {
        assert_eq!(SIDE.checked_add(SIDE), Ok(Amount::new(6.0, Dimension::LENGTH)));
        assert_eq!(SIDE.checked_sub(SIDE), Ok(Amount::new(0.0, Dimension::LENGTH)));
        assert_eq!(SIDE.min(Amount::new(2.0, Dimension::LENGTH)), Ok(Amount::new(2.0, Dimension::LENGTH)));
        assert_eq!(SIDE.max(Amount::new(2.0, Dimension::LENGTH)), Ok(SIDE));
        assert_eq!(SIDE.compare(SIDE), Ok(Some(std::cmp::Ordering::Equal)));
    }

    #[test]
    fn a_clash_names_both_dimensions() {
        let clash = SIDE.checked_add(HOUR).expect_err("a length and a time");
        assert_eq!(
            clash.message,
            "a length cannot be added to a time: both must be of one dimension, here m and s"
        );
        assert!(SIDE.max(HOUR).is_err() && SIDE.min(HOUR).is_err() && SIDE.compare(HOUR).is_err());
    }

    #[test]
    fn products_and_powers_carry_the_dimension() {
        let volume = SIDE.pow(3).expect("a cube");
        assert_eq!(volume, Amount::new(27.0, Dimension::VOLUME));
        assert_eq!(volume.checked_div(HOUR), Ok(Amount::new(0.0075, Dimension::FLOW)));
        assert_eq!(SIDE.checked_mul(SIDE).and_then(Amount::sqrt), Ok(SIDE));
        assert_eq!(volume.sqrt().expect_err("odd").message, "a volume has no square root: m³ is no square");
        assert_eq!(SIDE.pow(-1), Ok(Amount::new(1.0 / 3.0, Dimension::AREA_PER_VOLUME)));
    }

    #[test]
    fn powers_that_run_away_are_refused() {
        let far = SIDE.pow(100).expect("within bounds");
        assert!(far.checked_mul(far).is_err());
        assert!(far.pow(2).is_err());
        assert!(far.checked_div(SIDE.pow(-100).expect("within bounds")).is_err());
    }

    #[test]
    fn nan_is_not_lost() {
        let nan = Amount::number(f64::NAN);
        let one = Amount::number(1.0);
        for both in [nan.min(one), one.min(nan), nan.max(one), one.max(nan)] {
            assert!(both.expect("numbers").si.is_nan());
        }
    }
}
