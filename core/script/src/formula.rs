//! Arithmetic of scripts as formulas of the sheet: two lines of any dimension, the text of which can be worked again.

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_quantity::{Amount, Basis, Dimension, DimensionClash};
use haulout_sheet::{AnyFormula, Datum};

/// An operation on two values.
pub struct Operation {
    card: FormulaCard,
    pub(crate) run: fn(Amount, Amount) -> Result<Amount, DimensionClash>,
}

const fn card(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    range: &'static str,
) -> FormulaCard {
    let source = "arithmetic";
    let symbols = &["a", "b"];
    FormulaCard { name, result, text, symbols, kind: Kind::Closed, basis: Basis::Published, source, range }
}

const ALIKE: &str = "two values of one dimension";
const ANY: &str = "any two values";

/// The sum.
pub static SUM: Operation = Operation { card: card("sum", "sum", "a + b", ALIKE), run: Amount::checked_add };
/// The difference.
pub static DIFFERENCE: Operation =
    Operation { card: card("difference", "difference", "a - b", ALIKE), run: Amount::checked_sub };
/// The product.
pub static PRODUCT: Operation =
    Operation { card: card("product", "product", "a × b", ANY), run: Amount::checked_mul };
/// The quotient.
pub static QUOTIENT: Operation = Operation {
    card: card("quotient", "quotient", "a / b", "any two values, the second not zero"),
    run: Amount::checked_div,
};
/// The lesser.
pub static MIN: Operation = Operation { card: card("lesser", "least", "min(a, b)", ALIKE), run: Amount::min };
/// The greater.
pub static MAX: Operation =
    Operation { card: card("greater", "greatest", "max(a, b)", ALIKE), run: Amount::max };

impl Operation {
    /// The dimension of the result.
    ///
    /// # Errors
    /// When the dimensions do not go together.
    pub(crate) fn of(&self, a: Dimension, b: Dimension) -> Result<Dimension, DimensionClash> {
        (self.run)(Amount::new(1.0, a), Amount::new(1.0, b)).map(|amount| amount.dimension)
    }
}

impl AnyFormula for Operation {
    fn card(&self) -> &FormulaCard {
        &self.card
    }

    /// Dimensions were found to go together when the script was compiled, so numbers are enough here.
    fn again(&self, data: &[Datum]) -> Result<Datum, Refusal> {
        let number = |at: usize| Amount::number(data.get(at).and_then(Datum::number).unwrap_or(f64::NAN));
        let result = (self.run)(number(0), number(1)).map_err(|clash| Refusal::new(clash.message))?;
        Ok(Datum::Number(result.si))
    }

    fn dimension(&self, arguments: &[Dimension]) -> Dimension {
        match arguments {
            [a, b] => self.of(*a, *b).unwrap_or(Dimension::NUMBER),
            _ => Dimension::NUMBER,
        }
    }
}
