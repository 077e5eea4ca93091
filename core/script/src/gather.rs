//! What a script makes of a list of values: a sum, how many, the least, the nearest; each one line of the sheet.

use std::sync::{Mutex, PoisonError};

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_engine::compare;
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{AnyFormula, Datum};

/// What is asked of a list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum End {
    Total,
    Count,
    Least,
    Greatest,
    Nearest,
    Duplicates,
}

/// Which limits stand before the values, and choose among them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Sieve {
    All,
    AtLeast,
    AtMost,
    Between,
}

/// The work on the list, of which the limits of the sieve are the first arguments and the value to be near to the next.
pub(crate) struct Gather {
    card: FormulaCard,
    end: End,
    sieve: Sieve,
    dimension: Dimension,
}

/// A formula is static. There are a few kinds of each dimension, leaked once in a process.
static KNOWN: Mutex<Vec<&'static Gather>> = Mutex::new(Vec::new());

/// The formula for an end of a list of values of a dimension.
pub(crate) fn gather(end: End, sieve: Sieve, dimension: Dimension) -> &'static Gather {
    let mut known = KNOWN.lock().unwrap_or_else(PoisonError::into_inner);
    let found = known.iter().find(|g| (g.end, g.sieve, g.dimension) == (end, sieve, dimension));
    if let Some(found) = found {
        return found;
    }
    let made: &'static Gather = Box::leak(Box::new(Gather { card: card(end, sieve), end, sieve, dimension }));
    known.push(made);
    made
}

fn card(end: End, sieve: Sieve) -> FormulaCard {
    let (name, result, text) = match end {
        End::Total => ("total", "total", "+"),
        End::Count => ("count", "count", "how many they are"),
        End::Least => ("least of several", "least", "min"),
        End::Greatest => ("greatest of several", "greatest", "max"),
        End::Nearest => ("nearest of several", "nearest", "the one nearest to the value asked for"),
        End::Duplicates => ("duplicates", "duplicates", "how many are as another one before them"),
    };
    let alone = sieve == Sieve::All && matches!(end, End::Total | End::Least | End::Greatest);
    let text = match (alone, end) {
        (true, _) => text,
        (false, End::Total) => "the sum of those chosen",
        (false, End::Least) => "the least of those chosen",
        (false, End::Greatest) => "the greatest of those chosen",
        (false, _) => text,
    };
    FormulaCard {
        name,
        result,
        text,
        symbols: &[],
        kind: if alone { Kind::Closed } else { Kind::Pick },
        basis: Basis::Published,
        source: "arithmetic",
        range: "values of one dimension",
    }
}

impl Gather {
    /// The values the sieve leaves, and the value asked for.
    fn chosen(&self, numbers: &[f64]) -> (Vec<f64>, f64) {
        let limits = match self.sieve {
            Sieve::All => 0,
            Sieve::AtLeast | Sieve::AtMost => 1,
            Sieve::Between => 2,
        };
        let (limits, rest) = numbers.split_at(limits.min(numbers.len()));
        let (to, values) = match (self.end, rest.split_first()) {
            (End::Nearest, Some((to, values))) => (*to, values),
            _ => (f64::NAN, rest),
        };
        let passes = |value: f64| match (self.sieve, limits) {
            (Sieve::AtLeast, [low]) => compare(value, *low) >= 0.0,
            (Sieve::AtMost, [high]) => compare(*high, value) >= 0.0,
            (Sieve::Between, [low, high]) => compare(value, *low) >= 0.0 && compare(*high, value) >= 0.0,
            _ => true,
        };
        (values.iter().copied().filter(|v| passes(*v)).collect(), to)
    }
}

/// How many values are equal to one before them.
fn duplicates(values: &[f64]) -> f64 {
    let again = |at: usize| values[..at].iter().any(|before| compare(*before, values[at]) == 0.0);
    (0..values.len()).filter(|at| again(*at)).count() as f64
}

impl AnyFormula for Gather {
    fn card(&self) -> &FormulaCard {
        &self.card
    }

    fn again(&self, data: &[Datum]) -> Result<Datum, Refusal> {
        let numbers: Vec<f64> = data.iter().map(|d| d.number().unwrap_or(f64::NAN)).collect();
        let (values, to) = self.chosen(&numbers);
        let one = match self.end {
            End::Total => Some(values.iter().sum()),
            End::Count => Some(values.len() as f64),
            End::Duplicates => Some(duplicates(&values)),
            End::Least => values.iter().copied().reduce(f64::min),
            End::Greatest => values.iter().copied().reduce(f64::max),
            End::Nearest => values.iter().copied().min_by(|a, b| (a - to).abs().total_cmp(&(b - to).abs())),
        };
        let refusal = || Refusal::new(format!("{}: there is nothing to choose from", self.card.name));
        one.map(Datum::Number).ok_or_else(refusal)
    }

    fn dimension(&self, _arguments: &[Dimension]) -> Dimension {
        match self.end {
            End::Count | End::Duplicates => Dimension::NUMBER,
            _ => self.dimension,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{End, Sieve, gather};
    use haulout_quantity::Dimension;
    use haulout_sheet::{AnyFormula, Datum};

    fn of(end: End, sieve: Sieve, numbers: &[f64]) -> Option<f64> {
        let data: Vec<Datum> = numbers.iter().map(|n| Datum::Number(*n)).collect();
        gather(end, sieve, Dimension::LENGTH).again(&data).ok().and_then(|d| d.number())
    }

    /// By hand from 3, 1, 4, 1, 5: sum 14, five of them, one 1 again; from 3 on 3, 4, 5; to 3 1, 3, 1; between 2 and 4
    /// 3 and 4.
    #[test]
    fn a_list_gives_what_counting_on_fingers_gives() {
        let list = [3.0, 1.0, 4.0, 1.0, 5.0];
        let with = |before: &[f64]| [before, &list].concat();
        assert_eq!(of(End::Total, Sieve::All, &list), Some(14.0));
        assert_eq!(of(End::Count, Sieve::All, &list), Some(5.0));
        assert_eq!(of(End::Duplicates, Sieve::All, &list), Some(1.0));
        assert_eq!(of(End::Least, Sieve::All, &list), Some(1.0));
        assert_eq!(of(End::Greatest, Sieve::All, &list), Some(5.0));
        assert_eq!(of(End::Nearest, Sieve::All, &with(&[3.8])), Some(4.0));
        assert_eq!(of(End::Total, Sieve::AtLeast, &with(&[3.0])), Some(12.0));
        assert_eq!(of(End::Count, Sieve::AtMost, &with(&[3.0])), Some(3.0));
        assert_eq!(of(End::Total, Sieve::Between, &with(&[2.0, 4.0])), Some(7.0));
        assert_eq!(of(End::Nearest, Sieve::AtMost, &with(&[3.0, 9.0])), Some(3.0));
    }

    /// Nothing counts as none and sums up to nothing, but has no least.
    #[test]
    fn nothing_has_no_least() {
        assert_eq!(of(End::Total, Sieve::All, &[]), Some(0.0));
        assert_eq!(of(End::Count, Sieve::All, &[]), Some(0.0));
        assert_eq!(of(End::Least, Sieve::All, &[]), None);
        assert_eq!(of(End::Nearest, Sieve::All, &[2.0]), None);
    }

    /// 3 ft is 0.9144 m and not a hair less, whichever way it was worked: the edge belongs to what is chosen.
    #[test]
    fn the_edge_is_chosen() {
        assert_eq!(of(End::Count, Sieve::AtLeast, &[0.914_4, 3.0 * 0.304_8]), Some(1.0));
        assert_eq!(of(End::Duplicates, Sieve::All, &[0.3, 0.1 + 0.2]), Some(1.0));
    }
}
