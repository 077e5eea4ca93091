//! Lines and what they hold.

use std::any::Any;
use std::marker::PhantomData;
use std::sync::Arc;

use haulout_model::{Default, FieldCard, Origin, Standing, Word};
use haulout_quantity::{Dimension, Measure, Unit};
use haulout_register::Value;
use uom::si::{Quantity, SI};

use crate::formula::AnyFormula;
use crate::limit::{Limit, LimitValue};

/// The number of a line on its sheet.
pub type LineId = u32;

/// What a line holds.
#[derive(Clone)]
pub enum Datum {
    /// A number in SI; yes is 1 and no is 0, a choice is the number of its option.
    Number(f64),
    /// Something made of many numbers: an outline, a curve, a bed.
    Thing(Arc<dyn Any + Send + Sync>),
}

impl Datum {
    /// The number, if it is one.
    pub fn number(&self) -> Option<f64> {
        match self {
            Datum::Number(n) => Some(*n),
            Datum::Thing(_) => None,
        }
    }
}

/// What a typed line can hold: any quantity, a yes or no, a choice, or a shared thing.
pub trait Entry: Sized + 'static {
    /// Dimension of the number; a thing counts as a number without dimension.
    const DIMENSION: Dimension;
    /// Whether it is a difference of temperatures.
    fn is_difference() -> bool {
        false
    }
    /// Out of a datum; the types of lines make sure that it fits.
    fn take(datum: &Datum) -> Self;
    /// Into a datum.
    fn put(self) -> Datum;
}

impl<D> Entry for Quantity<D, SI<f64>, f64>
where
    D: uom::si::Dimension + ?Sized + 'static,
    Self: Measure,
{
    const DIMENSION: Dimension = <Self as Measure>::DIMENSION;
    fn is_difference() -> bool {
        <Self as Measure>::is_difference()
    }
    fn take(datum: &Datum) -> Self {
        Self::from_si(datum.number().unwrap_or(f64::NAN))
    }
    fn put(self) -> Datum {
        Datum::Number(self.si())
    }
}

impl Entry for bool {
    const DIMENSION: Dimension = Dimension::NUMBER;
    fn take(datum: &Datum) -> Self {
        datum.number().is_some_and(|n| n > 0.5)
    }
    fn put(self) -> Datum {
        Datum::Number(f64::from(u8::from(self)))
    }
}

impl Entry for u16 {
    const DIMENSION: Dimension = Dimension::NUMBER;
    fn take(datum: &Datum) -> Self {
        datum.number().map_or(u16::MAX, |n| n as u16)
    }
    fn put(self) -> Datum {
        Datum::Number(f64::from(self))
    }
}

impl<T: Any + Send + Sync> Entry for Arc<T> {
    const DIMENSION: Dimension = Dimension::NUMBER;
    fn take(datum: &Datum) -> Self {
        let Datum::Thing(thing) = datum else { unreachable!("a line of a thing holds a thing") };
        Arc::clone(thing).downcast().expect("the type of the line is the type it was put in with")
    }
    fn put(self) -> Datum {
        Datum::Thing(self)
    }
}

/// A typed handle on a line.
pub struct Line<T> {
    pub(crate) id: LineId,
    kind: PhantomData<fn() -> T>,
}

impl<T> Clone for Line<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Line<T> {}

impl<T> Line<T> {
    pub(crate) const fn new(id: LineId) -> Self {
        Line { id, kind: PhantomData }
    }

    /// The number of the line on its sheet.
    pub const fn id(self) -> LineId {
        self.id
    }
}

impl Line<Word> {
    /// A choice as the number of its option, to work with.
    pub const fn option(self) -> Line<u16> {
        Line::new(self.id)
    }
}

/// How a line came to be.
#[derive(Clone, Copy)]
pub enum Made {
    /// Stated in the design.
    Stated {
        /// Where.
        origin: Origin,
        /// How far to be trusted.
        standing: Standing,
        /// Its card; none for choices, words, drawings and tables.
        card: Option<&'static FieldCard>,
    },
    /// A value of a register, looked up by a line (the species).
    Register(&'static Value, Option<LineId>),
    /// A default in place of a field that is not stated.
    Default(Origin, &'static FieldCard, &'static Default),
    /// A limit of a rule.
    Limit(&'static Limit, LimitValue),
    /// Worked by a formula from other lines.
    Worked(&'static dyn AnyFormula),
}

/// A line as the book keeps it.
#[derive(Clone)]
pub struct Record {
    /// What it holds.
    pub datum: Datum,
    /// Its dimension.
    pub dimension: Dimension,
    /// The unit the designer wrote, if it was stated with one.
    pub unit: Option<&'static Unit>,
    /// How it came to be.
    pub made: Made,
    /// The lines it was worked from: a stretch of the book's list of arguments.
    pub(crate) args: (u32, u32),
    /// Two lines that must be equal if a search found the right thing.
    pub(crate) check: Option<(LineId, LineId)>,
}
