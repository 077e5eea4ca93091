//! The card of a rule: what a reader has to know of it before reading its work.

use std::borrow::Cow;

use haulout_model::{About, Stage};
use haulout_register::Matter;
use haulout_sheet::Case;

/// Words of a card: written in the program, or read from a script's head.
pub type Words = Cow<'static, str>;

/// Words written in the program.
pub const fn words(text: &'static str) -> Words {
    Cow::Borrowed(text)
}

/// How binding a rule is (ISO/IEC Directives Part 2).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Demand {
    /// A requirement.
    Shall,
    /// A recommendation.
    Should,
}

impl Demand {
    /// The word.
    pub const fn name(self) -> &'static str {
        match self {
            Demand::Shall => "shall",
            Demand::Should => "should",
        }
    }
}

/// What a rule guards, gravest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Consequence {
    /// Life of people.
    LifeOfPeople,
    /// Life of animals.
    LifeOfAnimals,
    /// Flood.
    Flood,
    /// Harm short of death.
    Harm,
    /// Money.
    Money,
    /// Embarrassment.
    Embarrassment,
}

impl Consequence {
    /// All of them, gravest first.
    pub const ALL: &'static [Consequence] = &[
        Consequence::LifeOfPeople,
        Consequence::LifeOfAnimals,
        Consequence::Flood,
        Consequence::Harm,
        Consequence::Money,
        Consequence::Embarrassment,
    ];

    /// The words.
    pub const fn name(self) -> &'static str {
        match self {
            Consequence::LifeOfPeople => "life of people",
            Consequence::LifeOfAnimals => "life of animals",
            Consequence::Flood => "flood",
            Consequence::Harm => "harm",
            Consequence::Money => "money",
            Consequence::Embarrassment => "embarrassment",
        }
    }
}

/// The manual page of a rule.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Manual {
    /// What it asks.
    pub asks: Words,
    /// Why.
    pub why: Words,
    /// How it is judged.
    pub judged: Words,
    /// What usually cures it.
    pub cure: Words,
}

/// The card of a rule.
#[derive(Debug, Clone, PartialEq)]
pub struct Card {
    /// A bare name that reads well in a sentence; never used again for anything else.
    pub id: Words,
    /// What has happened when it falls short, in a few words.
    pub title: Words,
    /// Its chapter.
    pub chapter: Words,
    /// Shall or should.
    pub demand: Demand,
    /// The stage from which it is owed.
    pub stage: Stage,
    /// The matter whose authorities it answers to, one answer each; none for practice.
    pub matter: Option<Matter>,
    /// What it guards.
    pub consequence: Consequence,
    /// The states it is judged in.
    pub case: Case,
    /// What it is about.
    pub about: About,
    /// A word of caution where the matter can hurt someone.
    pub caution: Option<Words>,
    /// Its manual page.
    pub manual: Manual,
}

/// What an example must give.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Expected {
    /// The rule is met.
    Met,
    /// It falls short.
    Short,
    /// Something is missing.
    NotAssessed,
    /// It does not apply.
    DoesNotApply,
}

/// A small design with what the rule must say about it and the place it must name.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Example {
    /// What it shows.
    pub shows: Words,
    /// The design, as JSON.
    pub design: Words,
    /// The key of the subject in question.
    pub subject: Words,
    /// What the rule must say.
    pub expected: Expected,
    /// JSON Pointer of a place the answer must name; empty when none is asked for.
    pub place: Words,
}
