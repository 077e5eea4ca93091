//! What a worked line needs of its formula once the types are gone: the card, and working it again on other numbers.

use haulout_calc::formula::{Formula, FormulaCard, Refusal};
use haulout_quantity::Dimension;

use crate::line::{Datum, Entry, Line, LineId};

/// A formula seen from a line that was worked by it.
pub trait AnyFormula: Sync {
    /// Its card.
    fn card(&self) -> &FormulaCard;
    /// Works it on data in the order of the card's symbols; the printer uses this to find out how many digits the
    /// operands need.
    ///
    /// # Errors
    /// The formula's own refusal.
    fn again(&self, data: &[Datum]) -> Result<Datum, Refusal>;
    /// Dimension of the result, from those of the arguments where the formula leaves it open.
    fn dimension(&self, arguments: &[Dimension]) -> Dimension;
    /// Whether the result is a difference of temperatures.
    fn is_difference(&self) -> bool {
        false
    }
    /// Dimensions of its arguments in the order of the card's symbols; empty where any number of lines will do.
    fn takes(&self) -> Vec<Dimension> {
        Vec::new()
    }
}

/// A tuple of lines that fits a tuple of arguments.
pub trait Lines<A> {
    /// As many numbers as there are lines.
    type Ids: AsRef<[LineId]>;
    /// Their numbers on the sheet, in order.
    fn ids(&self) -> Self::Ids;
}

/// A tuple of arguments, taken out of data in order.
pub trait Arguments: Sized {
    /// Out of data.
    fn take(data: &[Datum]) -> Self;
    /// Their dimensions.
    fn dimensions() -> Vec<Dimension>;
}

macro_rules! tuples {
    ($count:literal: $($name:ident $at:tt),+) => {
        impl<$($name: Entry),+> Arguments for ($($name,)+) {
            fn take(data: &[Datum]) -> Self {
                ($($name::take(&data[$at]),)+)
            }
            fn dimensions() -> Vec<Dimension> {
                vec![$($name::DIMENSION),+]
            }
        }
        impl<$($name: Entry),+> Lines<($($name,)+)> for ($(Line<$name>,)+) {
            type Ids = [LineId; $count];
            fn ids(&self) -> Self::Ids {
                [$(self.$at.id()),+]
            }
        }
    };
}

// One implementation an arity is all that differs; a macro here saves nine copies of the same two lines.
tuples!(1: A 0);
tuples!(2: A 0, B 1);
tuples!(3: A 0, B 1, C 2);
tuples!(4: A 0, B 1, C 2, D 3);
tuples!(5: A 0, B 1, C 2, D 3, E 4);
tuples!(6: A 0, B 1, C 2, D 3, E 4, F 5);
tuples!(7: A 0, B 1, C 2, D 3, E 4, F 5, G 6);
tuples!(8: A 0, B 1, C 2, D 3, E 4, F 5, G 6, H 7);

impl<A: Arguments + 'static, R: Entry> AnyFormula for Formula<A, R> {
    fn card(&self) -> &FormulaCard {
        self.card
    }
    fn again(&self, data: &[Datum]) -> Result<Datum, Refusal> {
        self.work(A::take(data)).map(R::put)
    }
    fn dimension(&self, _arguments: &[Dimension]) -> Dimension {
        R::DIMENSION
    }
    fn is_difference(&self) -> bool {
        R::is_difference()
    }
    fn takes(&self) -> Vec<Dimension> {
        A::dimensions()
    }
}

/// A formula of any number of lines of one type: a sum, the least, the largest.
pub struct Many<A, R> {
    /// Its card; of [`haulout_calc::formula::Kind::Closed`] the text is `+`, `min` or `max` and is spread over the lines.
    pub card: &'static FormulaCard,
    /// The work.
    pub run: fn(&[A]) -> Result<R, Refusal>,
}

impl<A: Entry, R: Entry> AnyFormula for Many<A, R> {
    fn card(&self) -> &FormulaCard {
        self.card
    }
    fn again(&self, data: &[Datum]) -> Result<Datum, Refusal> {
        let arguments: Vec<A> = data.iter().map(A::take).collect();
        (self.run)(&arguments).map(R::put)
    }
    fn dimension(&self, _arguments: &[Dimension]) -> Dimension {
        R::DIMENSION
    }
    fn is_difference(&self) -> bool {
        R::is_difference()
    }
}

/// A formula that puts something together from lines of several types: a bed from outlines, levels and slopes.
pub struct Assembly<R> {
    /// Its card.
    pub card: &'static FormulaCard,
    /// The work, on the data in the order in which the lines are given.
    pub run: fn(&[Datum]) -> Result<R, Refusal>,
}

impl<R: Entry> AnyFormula for Assembly<R> {
    fn card(&self) -> &FormulaCard {
        self.card
    }
    fn again(&self, data: &[Datum]) -> Result<Datum, Refusal> {
        (self.run)(data).map(R::put)
    }
    fn dimension(&self, _arguments: &[Dimension]) -> Dimension {
        R::DIMENSION
    }
    fn is_difference(&self) -> bool {
        R::is_difference()
    }
}
