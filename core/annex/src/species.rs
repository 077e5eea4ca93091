//! Species that an annex adds to the register, and values it puts in the place of built-in ones.

use haulout_document::Node;
use haulout_engine::{Given, Ruleset};
use haulout_quantity::{Basis, Dimension, unit};
use haulout_register::{Build, Species, TRAITS, Trait, Value};

use crate::limit::number;
use crate::page::{Page, leaked};
use haulout_script::nearest;

/// Adds every species the card lists.
pub(crate) fn species(page: &mut Page, ruleset: &mut Ruleset, annex: u16) {
    for entry in page.list(page.tree.root(), "species") {
        let (Some((key, at)), Some((latin, latin_at))) =
            (page.words(entry, "key"), page.words(entry, "latin"))
        else {
            continue;
        };
        let register = ruleset.limits.register();
        let taken =
            [(&key, at), (&latin, latin_at)].into_iter().find(|(name, _)| register.find(name).is_some());
        if let Some((name, at)) = taken {
            let message = format!(
                "the register knows \"{name}\" already; other values for it stand under \"register\", not under \"species\""
            );
            page.tell(at, message);
            continue;
        }
        let new = Species::new(leaked(&key), leaked(&latin), leaked(&page.text(entry, "common")));
        put(page, ruleset, annex, entry, &new);
    }
}

/// Puts every value the card gives in the place of the one the register has.
pub(crate) fn overrides(page: &mut Page, ruleset: &mut Ruleset, annex: u16) {
    for entry in page.list(page.tree.root(), "register") {
        let Some((name, at)) = page.words(entry, "species") else { continue };
        match ruleset.limits.register().find(&name) {
            Some(known) => put(page, ruleset, annex, entry, known),
            None => {
                let near = ruleset.limits.register().nearest(&name);
                page.tell(
                    at,
                    format!("the register knows no species \"{name}\"; the nearest is \"{near}\", and a new one stands under \"species\""),
                );
            }
        }
    }
}

fn put(page: &mut Page, ruleset: &mut Ruleset, annex: u16, entry: Node, base: &Species) {
    let mut values: Vec<(&'static str, Value)> = Vec::new();
    for (name, at) in page.members(entry, "values") {
        let Some(found) = TRAITS.iter().find(|t| t.name == name) else {
            let near = nearest(&name, TRAITS.iter().map(|t| t.name));
            page.tell(at, format!("the register has no place for \"{name}\"{near}"));
            continue;
        };
        values.extend(value(page, at, found).map(|value| (found.name, value)));
    }
    let at = page.member(entry, "values").unwrap_or(entry);
    let before: Vec<Option<f64>> = values.iter().map(|(name, _)| known(ruleset, base.key, name)).collect();
    match ruleset.limits.register_mut().put_species(base, &values, annex) {
        Err(missing) => {
            let message = format!(
                "beside the values given, these have to be given too: {}; the habits of a species are known together or not at all",
                missing.join(", ")
            );
            page.tell(at, message);
        }
        Ok(species) => {
            in_order(page, at, species);
            let by = ruleset.annex_name(Some(annex));
            ruleset.given.extend(values.iter().zip(before).map(|((name, value), from)| Given {
                species: species.key,
                name,
                from,
                to: value.value,
                unit: value.unit,
                source: value.source,
                annex: by.clone(),
            }));
        }
    }
}

/// What the register has under a name so far, in SI.
fn known(ruleset: &Ruleset, key: &str, name: &str) -> Option<f64> {
    let species = ruleset.limits.register().find(key)?;
    let found = TRAITS.iter().find(|t| t.name == name)?;
    (found.of)(species).map(|value| value.value)
}

/// Bands are asked for by both their ends.
const BANDS: &[(&str, &str)] =
    &[("water-low", "water-high"), ("bask-low", "bask-high"), ("uv-low", "uv-high")];

fn in_order(page: &mut Page, at: Node, species: &'static Species) {
    let of =
        |name: &str| TRAITS.iter().find(|t| t.name == name).and_then(|t| (t.of)(species)).map(|v| v.value);
    for (low, high) in BANDS {
        if let (Some(least), Some(most)) = (of(low), of(high))
            && least > most
        {
            page.tell(at, format!("{} of {} lies above its {}", low, species.key, high));
        }
    }
}

/// A value that some species of the built-in register has, for its dimension, its unit and its words.
fn sample(of: &Trait) -> Option<&'static Value> {
    haulout_register::SPECIES.iter().find_map(|s| (of.of)(s))
}

/// Whether every built-in value is a yes or a no.
fn is_flag(of: &Trait) -> bool {
    let mut values = haulout_register::SPECIES.iter().filter_map(|s| (of.of)(s));
    of.name != BODY && values.all(|v| v.unit.is_empty() && (v.value == 0.0 || v.value == 1.0))
}

const BODY: &str = "body";

fn value(page: &mut Page, at: Node, of: &'static Trait) -> Option<Value> {
    let sample = sample(of)?;
    let typed = page.member(at, "value")?;
    let si = if of.name == BODY {
        body(page, typed)
    } else if is_flag(of) {
        flag(page, typed, of.name)
    } else {
        measured(page, typed, sample)
    };
    let basis = page.words(at, "basis")?.0;
    let what = page.words(at, "what").map_or_else(|| of.name.replace('-', " "), |(what, _)| what);
    Some(Value {
        what: leaked(&what),
        value: si?,
        unit: written_unit(page, typed, sample),
        dimension: sample.dimension,
        basis: Basis::ALL.into_iter().find(|b| b.name() == basis)?,
        source: leaked(&page.words(at, "source")?.0),
    })
}

fn body(page: &mut Page, at: Node) -> Option<f64> {
    let word = page.tree.string(at).map(|w| w.into_owned()).unwrap_or_default();
    let found = Build::WORDS.iter().find(|(known, _)| *known == word).map(|(_, build)| *build as u8 as f64);
    if found.is_none() {
        let words: Vec<&str> = Build::WORDS.iter().map(|(word, _)| *word).collect();
        page.tell(at, format!("a body is one of {}", words.join(", ")));
    }
    found
}

fn flag(page: &mut Page, at: Node, name: &str) -> Option<f64> {
    let yes = page.tree.boolean(at).map(|yes| if yes { 1.0 } else { 0.0 });
    if yes.is_none() {
        page.tell(at, format!("\"{name}\" is a yes or a no: write true or false"));
    }
    yes
}

fn measured(page: &mut Page, at: Node, sample: &Value) -> Option<f64> {
    let si = number(page, at, sample.dimension, sample.unit)?;
    if si <= 0.0 && [Dimension::LENGTH, Dimension::MASS, Dimension::TEMPERATURE].contains(&sample.dimension) {
        page.tell(at, "this has to be more than nothing");
        return None;
    }
    Some(si)
}

/// The unit the house wrote; that of the register where it wrote none.
fn written_unit(page: &Page, at: Node, sample: &Value) -> &'static str {
    let text = page.tree.string(at).unwrap_or_default();
    let stated = haulout_quantity::read(&text, sample.dimension).ok().map(|stated| stated.unit.symbol);
    stated.filter(|symbol| unit(symbol).is_some()).unwrap_or(sample.unit)
}
