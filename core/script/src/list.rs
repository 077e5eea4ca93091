//! Lists of a script: a figure about each of several subjects, which can be narrowed and asked for one value.

use haulout_quantity::Dimension;
use rhai::{Dynamic, Engine};

use crate::gather::{End, Sieve, gather};
use crate::tape::{Shared, open};
use crate::value::{Given, Value, kind_of, value};

/// A list: a root on the tape and the limits it is narrowed by. How many values it holds nothing in a script can tell.
#[derive(Clone)]
pub(crate) struct List {
    pub(crate) tape: Shared,
    pub(crate) root: usize,
    pub(crate) low: Option<usize>,
    pub(crate) high: Option<usize>,
}

/// Lets a script work with lists.
pub(crate) fn register(engine: &mut Engine) {
    engine.register_type_with_name::<List>("list of values");
    engine.register_fn("where_at_least", |given: Dynamic, limit: Dynamic| {
        let (list, limit) = pair(given, limit, "where_at_least")?;
        let narrower = List { low: Some(limit.step), ..list.clone() };
        if list.low.is_none() { Ok(narrower) } else { Err(twice("where_at_least", "max")) }
    });
    engine.register_fn("where_at_most", |given: Dynamic, limit: Dynamic| {
        let (list, limit) = pair(given, limit, "where_at_most")?;
        let narrower = List { high: Some(limit.step), ..list.clone() };
        if list.high.is_none() { Ok(narrower) } else { Err(twice("where_at_most", "min")) }
    });
    engine.register_fn("total", |given: Dynamic| {
        let list = list(given, "total")?;
        if list.dimension() == Dimension::TEMPERATURE {
            return Err("temperatures are not added up: take the least or the greatest".into());
        }
        list.end(End::Total, None)
    });
    engine.register_fn("count", |given: Dynamic| list(given, "count")?.end(End::Count, None));
    engine.register_fn("least", |given: Dynamic| list(given, "least")?.end(End::Least, None));
    engine.register_fn("greatest", |given: Dynamic| list(given, "greatest")?.end(End::Greatest, None));
    engine.register_fn("duplicates", |given: Dynamic| list(given, "duplicates")?.end(End::Duplicates, None));
    engine.register_fn("nearest", |given: Dynamic, to: Dynamic| {
        let (list, to) = pair(given, to, "nearest")?;
        list.end(End::Nearest, Some(to.step))
    });
}

fn twice(word: &str, end: &str) -> Box<rhai::EvalAltResult> {
    format!("the list is narrowed by {word} already: take the {end} of the two limits").into()
}

fn list(given: Dynamic, word: &str) -> Given<List> {
    let kind = kind_of(&given);
    given.try_cast::<List>().ok_or_else(|| {
        let way = "put the figure on the card under \"each\" and ask for it with it.each";
        format!("{word} is given {kind}, expected is a list of values: {way}").into()
    })
}

/// A list and a value of one dimension.
fn pair(given: Dynamic, with: Dynamic, word: &str) -> Given<(List, Value)> {
    let (list, with) = (list(given, word)?, value(with, "what the list is held against")?);
    let (of, its) = (list.dimension(), with.dimension());
    if of != its {
        let message = format!("a list of which each is {} cannot be held against {}", of.name(), its.name());
        return Err(message.into());
    }
    Ok((list, with))
}

impl List {
    fn dimension(&self) -> Dimension {
        open(&self.tape).steps[self.root].1
    }

    fn end(&self, end: End, to: Option<usize>) -> Given<Value> {
        let sieve = match (self.low, self.high) {
            (None, None) => Sieve::All,
            (Some(_), None) => Sieve::AtLeast,
            (None, Some(_)) => Sieve::AtMost,
            (Some(_), Some(_)) => Sieve::Between,
        };
        let formula = gather(end, sieve, self.dimension());
        let step = open(&self.tape).gather(formula, self.root, [self.low, self.high, to])?;
        Ok(Value { tape: self.tape.clone(), step })
    }
}
