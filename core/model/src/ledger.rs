//! The ledger: the one exit of a stated value, which notes that it was read.
//!
//! The model defines it so that it need not know the calculation sheet; a substitution happens behind it, so that
//! nothing that reads a value can forget it.

use haulout_quantity::{Measure, Unit};

use crate::card::{ChoiceCard, FieldCard};
use crate::field::{Missing, Origin, Standing};

/// Asks whether a node of the document is substituted, and by what number in SI.
pub type Patch<'p> = &'p dyn Fn(u32) -> Option<f64>;

/// A number on its way to the ledger.
#[derive(Debug, Clone, Copy)]
pub struct NumberRoot {
    /// Where it stands.
    pub origin: Origin,
    /// In SI, as stated.
    pub value: f64,
    /// The unit the designer wrote; none for plain numbers.
    pub unit: Option<&'static Unit>,
    /// How far it can be trusted.
    pub standing: Standing,
    /// Its card.
    pub card: &'static FieldCard,
}

/// A choice on its way to the ledger.
#[derive(Debug, Clone, Copy)]
pub struct ChoiceRoot {
    /// Where it stands.
    pub origin: Origin,
    /// Which option, counted as on the card.
    pub option: u16,
    /// How far it can be trusted.
    pub standing: Standing,
    /// The words to choose from; none for a yes or no.
    pub card: Option<&'static ChoiceCard>,
}

/// What takes in stated values. Lines are what it hands out for them, gaps what it hands out for missing ones.
pub trait Ledger: Copy {
    /// A line that holds a `T`.
    type Line<T: 'static>;
    /// A note that something is missing.
    type Gap;

    /// Takes in a number.
    fn number<Q: Measure>(self, root: NumberRoot) -> Self::Line<Q>;
    /// Takes in a place of a repeated item: the number, and the step of the repeat so many times.
    ///
    /// # Errors
    /// A gap when the sum is no number.
    fn moved<Q: Measure>(
        self,
        root: NumberRoot,
        step: NumberRoot,
        times: NumberRoot,
    ) -> Result<Self::Line<Q>, Self::Gap>;
    /// Takes in a default in place of a number that is not stated.
    fn default<Q: Measure>(self, origin: Origin, card: &'static FieldCard) -> Self::Line<Q>;
    /// Takes in a choice or a yes or no, as the number of its option.
    fn choice<T: 'static>(self, root: ChoiceRoot) -> Self::Line<T>;
    /// Takes in something made of a whole subtree (nodes `origin.node..end`): a drawing, a curve, a word.
    fn thing<T: Send + Sync + 'static>(
        self,
        origin: Origin,
        end: u32,
        standing: Standing,
        make: impl FnOnce(Patch<'_>) -> T,
    ) -> Self::Line<std::sync::Arc<T>>;
    /// Notes that something is missing.
    fn missing(self, missing: Missing) -> Self::Gap;
}
