//! Arithmetic that every subject uses: sums, differences, products, with cards that a reader can recompute.

use haulout_calc::formula::{Formula, FormulaCard, Kind, Refusal};
use haulout_quantity::Basis;
use haulout_quantity::si::{Area, Length, Ratio, Volume};
use haulout_sheet::Many;

pub(crate) const fn arithmetic(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic",
        range: "any numbers",
    }
}

/// A sum of volumes.
pub(crate) static VOLUMES: Many<Volume, Volume> =
    Many { card: &arithmetic("sum of volumes", "V", "+", &[]), run: |v| Ok(v.iter().copied().sum()) };

/// A sum of numbers.
pub(crate) static NUMBERS: Many<Ratio, Ratio> =
    Many { card: &arithmetic("sum", "n", "+", &[]), run: |n| Ok(n.iter().copied().sum()) };

/// A level as so much above another.
pub(crate) static ABOVE: Formula<(Length, Length), Length> = Formula {
    card: &arithmetic("level above another", "z", "z_0 + by", &["z_0", "by"]),
    run: |(z, by)| Ok(z + by),
};

/// A level as so much below another.
pub(crate) static BELOW: Formula<(Length, Length), Length> = Formula {
    card: &arithmetic("level below another", "z", "z_0 - by", &["z_0", "by"]),
    run: |(z, by)| Ok(z - by),
};

/// The difference of two levels.
pub(crate) static DIFFERENCE: Formula<(Length, Length), Length> = Formula {
    card: &arithmetic("difference of levels", "d", "z_1 - z_2", &["z_1", "z_2"]),
    run: |(a, b)| Ok(a - b),
};

/// A product of two numbers.
pub(crate) static TIMES: Formula<(Ratio, Ratio), Ratio> =
    Formula { card: &arithmetic("product", "n", "a × b", &["a", "b"]), run: |(a, b)| Ok(a * b) };

/// A share of an area.
pub(crate) static SHARE: Formula<(Area, Area), Ratio> = Formula {
    card: &arithmetic("share of an area", "s", "A_part / A", &["A_part", "A"]),
    run: |(part, whole)| {
        if whole.value > 0.0 {
            Ok(part / whole)
        } else {
            Err(Refusal::new("there is no water surface at this level"))
        }
    },
};
