//! Values of a script: opaque, with a dimension, computed with but never compared.

use haulout_quantity::Dimension;
use rhai::{Dynamic, Engine, EvalAltResult, FLOAT, INT};

use crate::formula::{DIFFERENCE, MAX, MIN, Operation, PRODUCT, QUOTIENT, SUM};
use crate::tape::{Shared, open};

/// What a host function gives back to a script.
pub(crate) type Given<T> = Result<T, Box<EvalAltResult>>;

/// A value: a step on the tape. It holds no number, so nothing in a script can depend on one.
#[derive(Clone)]
pub(crate) struct Value {
    pub(crate) tape: Shared,
    pub(crate) step: usize,
}

impl Value {
    /// Its dimension.
    pub(crate) fn dimension(&self) -> Dimension {
        open(&self.tape).steps[self.step].1
    }

    fn number(&self, value: f64) -> Given<Value> {
        let step = open(&self.tape).number(value)?;
        Ok(Value { tape: self.tape.clone(), step })
    }

    fn with(&self, operation: &'static Operation, other: &Value) -> Given<Value> {
        let step = open(&self.tape).work(operation, self.step, other.step)?;
        Ok(Value { tape: self.tape.clone(), step })
    }
}

/// Lets a script compute: value with value, and value with plain number on either side.
pub(crate) fn register(engine: &mut Engine) {
    engine.register_type_with_name::<Value>("value");
    let operations: [(&str, &'static Operation); 6] =
        [("+", &SUM), ("-", &DIFFERENCE), ("*", &PRODUCT), ("/", &QUOTIENT), ("min", &MIN), ("max", &MAX)];
    for (name, operation) in operations {
        engine.register_fn(name, move |a: Value, b: Value| a.with(operation, &b));
        engine.register_fn(name, move |a: Value, b: INT| a.with(operation, &a.number(b as FLOAT)?));
        engine.register_fn(name, move |a: INT, b: Value| b.number(a as FLOAT)?.with(operation, &b));
        engine.register_fn(name, move |a: Value, b: FLOAT| a.with(operation, &a.number(b)?));
        engine.register_fn(name, move |a: FLOAT, b: Value| b.number(a)?.with(operation, &b));
    }
}

/// The value a host function was given.
pub(crate) fn value(given: Dynamic, role: &str) -> Given<Value> {
    let kind = kind_of(&given);
    given.try_cast::<Value>().ok_or_else(|| {
        let way = if kind == "a number" {
            ": put it on the card as a limit and ask for it with it.limit"
        } else {
            ""
        };
        format!("{role} is {kind} here, expected is a value of the sheet{way}").into()
    })
}

/// What something is, in words of the trade.
pub(crate) fn kind_of(given: &Dynamic) -> &'static str {
    if given.is::<Value>() {
        return "a value";
    }
    if given.is::<crate::answer::Answer>() {
        return "an answer";
    }
    if given.is::<crate::list::List>() {
        return "a list of values";
    }
    if given.is_int() || given.is_float() {
        "a number"
    } else if given.is_string() {
        "text"
    } else if given.is_bool() {
        "a yes or no"
    } else if given.is_array() {
        "a list"
    } else if given.is_unit() {
        "nothing"
    } else {
        "something else"
    }
}
