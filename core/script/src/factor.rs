//! Plain numbers in a script: each becomes a line of its own, worked from nothing.

use std::collections::BTreeMap;
use std::sync::{Mutex, PoisonError};

use haulout_calc::formula::{FormulaCard, Kind, Refusal};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{AnyFormula, Datum};

/// A number as a formula without arguments.
pub(crate) struct Factor {
    card: FormulaCard,
    value: f64,
}

/// A formula is static. Every number is leaked once in a process, however many scripts and runs use it.
static KNOWN: Mutex<BTreeMap<u64, &'static Factor>> = Mutex::new(BTreeMap::new());

/// The formula of a number.
pub(crate) fn factor(value: f64) -> &'static Factor {
    let mut known = KNOWN.lock().unwrap_or_else(PoisonError::into_inner);
    known.entry(value.to_bits()).or_insert_with(|| {
        let text = Box::leak(value.to_string().into_boxed_str());
        Box::leak(Box::new(Factor {
            card: FormulaCard {
                name: "number written in the script",
                result: "n",
                text,
                symbols: &[],
                kind: Kind::Closed,
                // Without a source it is no better than this; with one it belongs on the card as a limit.
                basis: Basis::CommonPractice,
                source: "the script; a number with a source of its own is a limit of the card",
                range: "",
            },
            value,
        }))
    })
}

impl AnyFormula for Factor {
    fn card(&self) -> &FormulaCard {
        &self.card
    }
    fn again(&self, _data: &[Datum]) -> Result<Datum, Refusal> {
        Ok(Datum::Number(self.value))
    }
    fn dimension(&self, _arguments: &[Dimension]) -> Dimension {
        Dimension::NUMBER
    }
}
