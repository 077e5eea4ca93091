//! The card of a field: what it is, its dimension, who may change it, what is plausible, in what steps.

use haulout_quantity::{Basis, Dimension};

/// Who answers for a value, and so who may change it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Role {
    /// The designer's to choose: a search may propose another value.
    Decision,
    /// The room, the slab, the promised animals: fixed from outside.
    Given,
    /// Something read off an instrument or a maker's sheet, or hoped for until it is.
    Reading,
    /// Something somebody undertakes: bonded, guarded, kept clear.
    Promise,
}

impl Role {
    /// The word the schema uses.
    pub const fn name(self) -> &'static str {
        match self {
            Role::Decision => "decision",
            Role::Given => "given",
            Role::Reading => "reading",
            Role::Promise => "promise",
        }
    }
}

/// How a number is written in the file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Form {
    /// A string with a unit.
    Quantity,
    /// A string with a unit that may also be a range: `"24 to 27 °C"`.
    Band,
    /// A difference of temperatures, with a unit.
    Difference,
    /// A slope: `"1 in 4"`, `"14 deg"`, `"25 %"`; held as rise over run.
    Slope,
    /// A JSON number without unit: pH, a loss coefficient.
    Plain,
    /// A JSON number between 0 and 1, or a string in per cent.
    Share,
    /// A whole number.
    Count,
}

/// A value taken when the file states none, shown wherever it is used.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Default {
    /// In SI.
    pub value: f64,
    /// Where it comes from.
    pub source: &'static str,
    /// How well it is known.
    pub basis: Basis,
}

/// The card of a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FieldCard {
    /// What it is, as in "water level".
    pub what: &'static str,
    /// Its dimension.
    pub dimension: Dimension,
    /// How it is written.
    pub form: Form,
    /// Who may change it.
    pub role: Role,
    /// Below and above these (SI) a slip is likely.
    pub range: (f64, f64),
    /// The step of the trade, SI: nobody sets a level to half a millimetre.
    pub step: f64,
    /// What is taken when it is not stated; most fields have none.
    pub default: Option<Default>,
}

impl FieldCard {
    /// A quantity with a unit; `range` and `step` in SI.
    pub const fn quantity(
        what: &'static str,
        dimension: Dimension,
        role: Role,
        range: (f64, f64),
        step: f64,
    ) -> Self {
        FieldCard { what, dimension, form: Form::Quantity, role, range, step, default: None }
    }

    /// A number without unit.
    pub const fn plain(what: &'static str, role: Role, range: (f64, f64), step: f64) -> Self {
        FieldCard { what, dimension: Dimension::NUMBER, form: Form::Plain, role, range, step, default: None }
    }

    /// The same card written in another form.
    pub const fn form(mut self, form: Form) -> Self {
        self.form = form;
        self
    }

    /// The same card with a default (SI).
    pub const fn or_else(mut self, value: f64, basis: Basis, source: &'static str) -> Self {
        self.default = Some(Default { value, source, basis });
        self
    }
}

/// The card of a choice between words.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChoiceCard {
    /// What it is.
    pub what: &'static str,
    /// Who may change it.
    pub role: Role,
    /// The words, in the order a line counts them.
    pub options: &'static [&'static str],
    /// The word taken when none is stated, and why.
    pub default: Option<(&'static str, &'static str)>,
}
