//! A formula of the trade: a plain function together with the card that says what it is and where it comes from.

use std::fmt;

use haulout_quantity::Basis;

/// A function of typed quantities with its card.
///
/// `A` is a tuple of quantities, ratios or shared things such as a pump curve; `R` is a quantity. The function is a
/// plain pointer, so it cannot draw on anything that is not among its arguments.
pub struct Formula<A, R> {
    /// What the formula is, its source and its range.
    pub card: &'static FormulaCard,
    /// The work itself; a [`Refusal`] where the arguments lie outside the method's range.
    pub run: fn(A) -> Result<R, Refusal>,
}

impl<A, R> Formula<A, R> {
    /// Works the formula.
    ///
    /// # Errors
    /// A [`Refusal`] where the arguments lie outside the range of the method.
    pub fn work(&self, arguments: A) -> Result<R, Refusal> {
        (self.run)(arguments)
    }
}

// Derived copies would ask `A` and `R` to be `Copy`, which a shared pump curve is not.
impl<A, R> Clone for Formula<A, R> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<A, R> Copy for Formula<A, R> {}

impl<A, R> fmt::Debug for Formula<A, R> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Formula").field("card", self.card).finish_non_exhaustive()
    }
}

/// What stands on paper about a formula.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FormulaCard {
    /// Name in words, e.g. `friction head of a pipe`.
    pub name: &'static str,
    /// Symbol of the result, e.g. `h_f`.
    pub result: &'static str,
    /// The right-hand side, e.g. `f × L / D × v^2 / (2 × 9.80665 m/s2)`.
    ///
    /// Of [`Kind::Closed`] it holds nothing but numbers (a unit may follow one), the symbols, `+ - × / ^ ( ) ,`,
    /// `sqrt log10 ln exp min max` and `pi`, so that the printed line can be worked again from its own text.
    pub text: &'static str,
    /// Symbols in the order of the arguments.
    pub symbols: &'static [&'static str],
    /// How the result comes about.
    pub kind: Kind,
    /// How well the formula is founded.
    pub basis: Basis,
    /// Where it stands: author, title, year, equation.
    pub source: &'static str,
    /// Where it holds, in words.
    pub range: &'static str,
}

/// How a result comes about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Kind {
    /// An expression over the symbols: the text can be recomputed.
    Closed,
    /// Found by a search; the text says what was solved.
    Search,
    /// One of several values: the least, the largest, the one that fits.
    Pick,
    /// Drawn rather than calculated.
    Construction,
}

/// The arguments lie outside the range of a method; the answer is *not assessed*, never a guess.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refusal {
    /// A plain sentence: what was given, what the method needs, and a way out.
    pub why: String,
}

impl Refusal {
    /// A refusal with its sentence.
    pub fn new(why: impl Into<String>) -> Self {
        Refusal { why: why.into() }
    }
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.why)
    }
}

impl std::error::Error for Refusal {}
