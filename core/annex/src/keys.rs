//! The keys of the two cards as the reading code knows them; a test holds them to the published schemas, both ways.

use haulout_quantity::Dimension;

/// What stands under a key.
#[derive(Debug, Clone, Copy)]
pub enum Shape {
    /// Words.
    Words,
    /// One of some words.
    Word(&'static [&'static str]),
    /// A whole number.
    Count,
    /// A quantity as text, a number without unit, or a yes or no.
    Value,
    /// An object of these keys.
    Object(&'static [Key]),
    /// A list of such things.
    List(&'static Shape),
    /// An object of names of one's own, each with such a thing.
    Map(&'static Shape),
    /// A list of words, or the word "none".
    Held,
}

/// A key.
#[derive(Debug, Clone, Copy)]
pub struct Key {
    /// Its name.
    pub name: &'static str,
    /// What stands there.
    pub shape: Shape,
    /// Whether it has to be there.
    pub needed: bool,
}

const fn needed(name: &'static str, shape: Shape) -> Key {
    Key { name, shape, needed: true }
}

const fn free(name: &'static str, shape: Shape) -> Key {
    Key { name, shape, needed: false }
}

/// The words of a basis.
pub(crate) const BASES: &[&str] = &["published", "reported", "common practice", "recalled"];
/// The matters that authorities are for.
pub(crate) const MATTERS: &[&str] = &["welfare", "electrical", "guards"];
/// The words an answer may be marked with.
pub(crate) const OUTCOMES: &[&str] = &["met", "short", "not-assessed", "does-not-apply"];
const STAGES: &[&str] = &["concept", "detailed", "as-built"];

const LIMIT: &[Key] = &[
    needed("rule", Shape::Words),
    needed("limit", Shape::Words),
    free("row", Shape::Words),
    needed("value", Shape::Value),
    free("reason", Shape::Words),
];
const DEMAND: &[Key] = &[needed("rule", Shape::Words), needed("demand", Shape::Word(&["shall"]))];
const AUTHORITY: &[Key] = &[
    needed("id", Shape::Words),
    needed("matter", Shape::Word(MATTERS)),
    needed("title", Shape::Words),
    needed("edition", Shape::Words),
    needed("year", Shape::Count),
    needed("scope", Shape::Words),
];
const VALUE: &[Key] = &[
    free("what", Shape::Words),
    needed("value", Shape::Value),
    needed("basis", Shape::Word(BASES)),
    needed("source", Shape::Words),
];
const SPECIES: &[Key] = &[
    needed("key", Shape::Words),
    needed("latin", Shape::Words),
    needed("common", Shape::Words),
    needed("values", Shape::Map(&Shape::Object(VALUE))),
];
const REGISTER: &[Key] =
    &[needed("species", Shape::Words), needed("values", Shape::Map(&Shape::Object(VALUE)))];

/// The card of an annex.
pub const ANNEX: &[Key] = &[
    free("$schema", Shape::Words),
    needed("name", Shape::Words),
    needed("version", Shape::Words),
    needed("licence", Shape::Words),
    needed("authors", Shape::List(&Shape::Words)),
    free("limits", Shape::List(&Shape::Object(LIMIT))),
    free("demands", Shape::List(&Shape::Object(DEMAND))),
    free("authorities", Shape::List(&Shape::Object(AUTHORITY))),
    free("species", Shape::List(&Shape::Object(SPECIES))),
    free("register", Shape::List(&Shape::Object(REGISTER))),
];

const HELD: &[Key] =
    &[free("welfare", Shape::Held), free("electrical", Shape::Held), free("guards", Shape::Held)];

/// What a plus or minus may be stated for.
pub(crate) const MEASURES: &[(&str, Dimension)] = &[
    ("length", Dimension::LENGTH),
    ("area", Dimension::AREA),
    ("volume", Dimension::VOLUME),
    ("flow", Dimension::FLOW),
    ("mass", Dimension::MASS),
    ("temperature", Dimension::TEMPERATURE),
];
const PLUS_MINUS: &[Key] = &[
    free("length", Shape::Words),
    free("area", Shape::Words),
    free("volume", Shape::Words),
    free("flow", Shape::Words),
    free("mass", Shape::Words),
    free("temperature", Shape::Words),
];

/// A specification.
pub const SPECIFICATION: &[Key] = &[
    free("$schema", Shape::Words),
    free("title", Shape::Words),
    free("designs", Shape::List(&Shape::Words)),
    free("held-to", Shape::Object(HELD)),
    free("stage", Shape::Word(STAGES)),
    free("plus-minus", Shape::Object(PLUS_MINUS)),
    free("annexes", Shape::List(&Shape::Words)),
];

const MARKED: &[Key] = &[
    needed("rule", Shape::Words),
    needed("subject", Shape::Words),
    needed("expected", Shape::Word(OUTCOMES)),
    free("place", Shape::Words),
];

/// What a rehearsal design must give.
pub const EXPECTED: &[Key] =
    &[free("$schema", Shape::Words), needed("answers", Shape::List(&Shape::Object(MARKED)))];
