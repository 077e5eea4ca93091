//! What a script is given: the subject, of which it can ask what its card lists, by name.

use std::sync::Arc;

use haulout_quantity::Dimension;
use rhai::{Engine, EvalAltResult, ImmutableString};

use crate::fault::nearest;
use crate::list::List;
use crate::tape::{Shared, Step, Tape};
use crate::value::{Given, Value};

/// Something the card lists: its name and its dimension.
pub(crate) type Listed = (String, Dimension);

/// Everything the card lists.
#[derive(Debug, Clone, Default)]
pub(crate) struct Lists {
    pub(crate) figures: Vec<Listed>,
    pub(crate) register: Vec<Listed>,
    pub(crate) limits: Vec<Listed>,
    pub(crate) each: Vec<Listed>,
}

impl Lists {
    /// How many roots there are: the first steps of every tape, figures first, then register values, limits and lists.
    pub(crate) fn len(&self) -> usize {
        self.figures.len() + self.register.len() + self.limits.len() + self.each.len()
    }

    /// A tape that begins with the roots.
    pub(crate) fn tape(&self) -> Result<Tape, String> {
        let mut tape = Tape::default();
        for (at, (_, dimension)) in self.figures.iter().enumerate() {
            tape.step(Step::Figure(at), *dimension)?;
        }
        for (at, (_, dimension)) in self.register.iter().enumerate() {
            tape.step(Step::Register(at), *dimension)?;
        }
        for (at, (_, dimension)) in self.limits.iter().enumerate() {
            tape.step(Step::Limit(at), *dimension)?;
        }
        for (at, (_, dimension)) in self.each.iter().enumerate() {
            tape.step(Step::Each(at), *dimension)?;
        }
        Ok(tape)
    }

    /// What a root is called, and in which list of the card it stands.
    pub(crate) fn name(&self, root: usize) -> (&'static str, &str) {
        let register = self.figures.len();
        let limits = register + self.register.len();
        let each = limits + self.limits.len();
        if root < register {
            ("figures", &self.figures[root].0)
        } else if root < limits {
            ("register", &self.register[root - register].0)
        } else if root < each {
            ("limits", &self.limits[root - limits].0)
        } else {
            ("each", &self.each[root - each].0)
        }
    }
}

/// The subject as a script holds it.
#[derive(Clone)]
pub(crate) struct Asked {
    pub(crate) tape: Shared,
    pub(crate) lists: Arc<Lists>,
}

impl Asked {
    fn value(&self, step: usize) -> Value {
        Value { tape: self.tape.clone(), step }
    }

    fn find(&self, list: &[Listed], before: usize, word: &str, name: &str) -> Given<usize> {
        if let Some(at) = list.iter().position(|(known, _)| known == name) {
            return Ok(before + at);
        }
        let near = nearest(name, list.iter().map(|(known, _)| known.as_str()));
        Err(format!("the card lists no \"{name}\" under \"{word}\"{near}").into())
    }
}

/// Lets a script ask.
pub(crate) fn register(engine: &mut Engine) {
    engine.register_type_with_name::<Asked>("subject");
    engine.register_fn("figure", |it: &mut Asked, name: ImmutableString| {
        it.find(&it.lists.figures, 0, "figures", &name).map(|step| it.value(step))
    });
    engine.register_fn("register", |it: &mut Asked, name: ImmutableString| {
        let before = it.lists.figures.len();
        it.find(&it.lists.register, before, "register", &name).map(|step| it.value(step))
    });
    engine.register_fn("limit", |it: &mut Asked, name: ImmutableString| {
        let before = it.lists.figures.len() + it.lists.register.len();
        it.find(&it.lists.limits, before, "limits", &name).map(|step| it.value(step))
    });
    engine.register_fn("each", |it: &mut Asked, name: ImmutableString| {
        let before = it.lists.len() - it.lists.each.len();
        let root = it.find(&it.lists.each, before, "each", &name)?;
        Ok::<List, Box<EvalAltResult>>(List { tape: it.tape.clone(), root, low: None, high: None })
    });
}
