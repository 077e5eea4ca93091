//! The roots of a script: the figures, register values and limits its card lists, looked up by their names.

use haulout_model::About;
use haulout_quantity::Dimension;
use haulout_register::{SPECIES, TRAITS, Trait};
use haulout_sheet::{Catalogued, Limit};

use crate::card::ScriptCard;
use crate::compile::Catalogue;
use crate::fault::{ScriptFault, nearest};
use crate::head::Head;
use crate::limit::leaked;
use crate::subject::Lists;

/// What the card lists, found.
#[derive(Default)]
pub(crate) struct Roots {
    pub(crate) lists: Lists,
    pub(crate) figures: Vec<&'static dyn Catalogued>,
    pub(crate) register: Vec<&'static Trait>,
    pub(crate) limits: Vec<&'static Limit>,
    pub(crate) each: Vec<&'static dyn Catalogued>,
}

impl Roots {
    /// What a card lists; what cannot be found goes to the faults.
    pub(crate) fn of(
        script: &ScriptCard,
        head: &Head<'_>,
        about: Option<About>,
        catalogue: Catalogue,
        faults: &mut Vec<ScriptFault>,
    ) -> Self {
        let mut roots = Roots::default();
        let lists = [("figures", &script.figures), ("register", &script.register), ("each", &script.each)];
        for (list, names) in lists {
            for (at, name) in names.iter().enumerate().filter(|(at, name)| names[..*at].contains(name)) {
                let message = format!("\"{name}\" stands {} under \"{list}\"; once is enough", ordinal(at));
                faults.push(ScriptFault::new(head.place(&[list, name, name]), message));
            }
        }
        for name in &script.figures {
            match figure(name, about, catalogue) {
                Ok(figure) => roots.add_figure(name, figure),
                Err(message) => faults.push(ScriptFault::new(head.place(&["figures", name]), message)),
            }
        }
        for name in &script.register {
            match species_value(name, about) {
                Ok((found, dimension)) => roots.add_register(name, found, dimension),
                Err(message) => faults.push(ScriptFault::new(head.place(&["register", name]), message)),
            }
        }
        roots.add_limits(script, head, faults);
        for name in &script.each {
            match of_each(name, about, catalogue) {
                Ok(figure) => roots.add_each(name, figure),
                Err(message) => faults.push(ScriptFault::new(head.place(&["each", name]), message)),
            }
        }
        roots
    }

    fn add_figure(&mut self, name: &str, figure: &'static dyn Catalogued) {
        self.lists.figures.push((name.to_owned(), figure.dimension()));
        self.figures.push(figure);
    }

    fn add_register(&mut self, name: &str, found: &'static Trait, dimension: Dimension) {
        self.lists.register.push((name.to_owned(), dimension));
        self.register.push(found);
    }

    fn add_each(&mut self, name: &str, figure: &'static dyn Catalogued) {
        self.lists.each.push((name.to_owned(), figure.dimension()));
        self.each.push(figure);
    }

    fn add_limits(&mut self, script: &ScriptCard, head: &Head<'_>, faults: &mut Vec<ScriptFault>) {
        let rule = leaked(&script.id);
        for limit in &script.limits {
            let place =
                |word: Option<&str>| head.place(&["limits", &limit.name, word.unwrap_or(&limit.name)]);
            if self.lists.limits.iter().any(|(known, _)| *known == limit.name) {
                let message =
                    format!("there are two limits called \"{}\": each has a name of its own", limit.name);
                faults.push(ScriptFault::new(
                    head.place(&["limits", &limit.name, "name", &limit.name]),
                    message,
                ));
            }
            match limit.card(rule) {
                Ok(card) => {
                    self.lists.limits.push((limit.name.clone(), card.dimension));
                    self.limits.push(card);
                }
                Err(message) => {
                    let message = format!("limit \"{}\": {message}", limit.name);
                    faults.push(ScriptFault::new(place(limit.written()), message));
                }
            }
        }
    }
}

fn ordinal(at: usize) -> &'static str {
    if at == 1 { "twice" } else { "more than once" }
}

fn figure(name: &str, about: Option<About>, catalogue: Catalogue) -> Result<&'static dyn Catalogued, String> {
    let figure = known(name, catalogue)?;
    let owner = figure.card().about;
    match about {
        Some(about) if !about.holds(owner) => Err(format!(
            "the figure \"{name}\" is about \"{}\", which \"{}\" has none of: make the rule about something that has",
            owner.name(),
            about.name()
        )),
        _ => Ok(figure),
    }
}

fn known(name: &str, catalogue: Catalogue) -> Result<&'static dyn Catalogued, String> {
    let found = catalogue.iter().copied().find(|f| f.card().id == name);
    found.ok_or_else(|| {
        format!("there is no figure \"{name}\"{}", nearest(name, catalogue.iter().map(|f| f.card().id)))
    })
}

fn of_each(
    name: &str,
    about: Option<About>,
    catalogue: Catalogue,
) -> Result<&'static dyn Catalogued, String> {
    let figure = known(name, catalogue)?;
    let owner = figure.card().about;
    let Some(about) = about.filter(|about| !about.gathers(owner)) else { return Ok(figure) };
    let (owner, about) = (owner.name(), about.name());
    Err(format!(
        "the figure \"{name}\" is about \"{owner}\", of which not several belong to \"{about}\": \
ask for it under \"figures\", or make the rule about \"whole\""
    ))
}

fn species_value(name: &str, about: Option<About>) -> Result<(&'static Trait, Dimension), String> {
    let Some(found) = TRAITS.iter().find(|t| t.name == name) else {
        return Err(format!(
            "the register holds no \"{name}\"{}",
            nearest(name, TRAITS.iter().map(|t| t.name))
        ));
    };
    if let Some(about) = about.filter(|a| !a.holds(About::Group)) {
        let about = about.name();
        return Err(format!(
            "\"{name}\" is a value of a species, and \"{about}\" has no group: make the rule about \"group\" or \"pool-group\""
        ));
    }
    let value = SPECIES.iter().find_map(|s| (found.of)(s));
    value
        .map(|value| (found, value.dimension))
        .ok_or_else(|| format!("the register holds \"{name}\" of no species yet, so no rule can ask for it"))
}
