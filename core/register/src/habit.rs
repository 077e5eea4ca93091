//! Habits of species that decide how they are kept in: body, climbing, jumping, digging, danger to people.

use haulout_quantity::Basis::{self, Published, Recalled, Reported};

use crate::species::Species;
use crate::value::Value;

/// How an animal is built, as far as getting over a wall goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Build {
    /// Shell: it reaches about a shell length.
    Turtle,
    /// Lizards and monitors: they climb and many jump.
    Lizard,
    /// Snakes: only a closed top holds them.
    Snake,
    /// Crocodiles, alligators, caimans: held by height, counted by total length.
    Crocodilian,
}

impl Build {
    /// All of them with their words, in the order of their numbers.
    pub const WORDS: &'static [(&'static str, Build)] = &[
        ("turtle", Build::Turtle),
        ("lizard", Build::Lizard),
        ("snake", Build::Snake),
        ("crocodilian", Build::Crocodilian),
    ];

    /// The build of a number; what is no build counts as a lizard, which is the hardest to keep in by a wall.
    pub(crate) fn of(number: f64) -> Self {
        Self::WORDS
            .iter()
            .find(|(_, build)| *build as u8 as f64 == number)
            .map_or(Build::Lizard, |(_, build)| *build)
    }
}

/// The habits of one species; yes is 1, no is 0.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Habit {
    /// Key of the species.
    pub key: &'static str,
    /// How it is built.
    pub build: Build,
    /// The same as a number: 0 turtle, 1 lizard, 2 snake, 3 crocodilian.
    pub body: Value,
    /// Climbs mesh, rough faces and corners.
    pub climbs: Value,
    /// Jumps: a wall's height says nothing.
    pub jumps: Value,
    /// Digs under what it meets, nesting aside.
    pub digs: Value,
    /// Listed as dangerous to people.
    pub hazardous: Value,
}

const KEEPERS: &str = "keepers' usage, from memory";
const SLOVAK: &str = "Slovakia, decree 143/2012 Z. z., § 3(4): Chelydridae, all Crocodylia, lizards over 1 m and non-venomous snakes over 3 m of total length, venomous reptiles";

const fn flag(what: &'static str, yes: bool, basis: Basis, source: &'static str) -> Value {
    Value::number(what, if yes { 1.0 } else { 0.0 }, basis, source)
}

/// A species of a build, with no habit of getting out but walking.
const fn quiet(key: &'static str, build: Build) -> Habit {
    Habit {
        key,
        build,
        body: Value::number("kind of body", build as u8 as f64, Published, "zoological order"),
        climbs: flag("climbs", false, Recalled, KEEPERS),
        jumps: flag("jumps", false, Recalled, KEEPERS),
        digs: flag("digs", false, Recalled, KEEPERS),
        hazardous: flag("dangerous to people", false, Published, SLOVAK),
    }
}

impl Habit {
    const fn climbs(mut self, basis: Basis, source: &'static str) -> Self {
        self.climbs = flag("climbs", true, basis, source);
        self
    }

    const fn jumps(mut self) -> Self {
        self.jumps = flag("jumps", true, Recalled, KEEPERS);
        self
    }

    const fn digs(mut self) -> Self {
        self.digs = flag("digs", true, Recalled, KEEPERS);
        self
    }

    const fn hazardous(mut self) -> Self {
        self.hazardous = flag("dangerous to people", true, Published, SLOVAK);
        self
    }
}

/// The habits the program knows, in the order of the species.
pub static HABITS: &[Habit] = &[
    quiet("emys-orbicularis", Build::Turtle).climbs(Recalled, KEEPERS).digs(),
    quiet("mauremys-reevesii", Build::Turtle).climbs(Recalled, KEEPERS),
    quiet("trachemys-scripta", Build::Turtle).climbs(
        Reported,
        "Turtle rescue practice (turtlerescue.co.nz): a fence of 1 m has been climbed",
    ),
    quiet("chrysemys-picta", Build::Turtle).climbs(
        Reported,
        "Field trial of low fencing with metal flashing (eScholarship 9783s2tf, abstract): 3.8 % got over mesh of 0.457 m within an hour",
    ),
    quiet("pseudemys-concinna", Build::Turtle),
    quiet("graptemys-pseudogeographica", Build::Turtle),
    quiet("sternotherus-odoratus", Build::Turtle).climbs(Recalled, KEEPERS),
    quiet("pelodiscus-sinensis", Build::Turtle).digs(),
    quiet("chelydra-serpentina", Build::Turtle)
        .climbs(Reported, "press report, 13 April 2023: one climbed a chain-link fence of 2.4 m")
        .hazardous(),
    quiet("cuora-amboinensis", Build::Turtle).climbs(Recalled, KEEPERS),
    quiet("chelodina-longicollis", Build::Turtle).climbs(Recalled, KEEPERS),
    quiet("physignathus-cocincinus", Build::Lizard).climbs(Recalled, KEEPERS).jumps(),
    quiet("paleosuchus-palpebrosus", Build::Crocodilian).climbs(Recalled, KEEPERS).hazardous(),
    quiet("nerodia-fasciata", Build::Snake).climbs(Recalled, KEEPERS),
    quiet("mauremys-sinensis", Build::Turtle).climbs(Recalled, KEEPERS),
    quiet("mauremys-leprosa", Build::Turtle).climbs(Recalled, KEEPERS),
    quiet("pseudemys-nelsoni", Build::Turtle),
    quiet("graptemys-ouachitensis", Build::Turtle),
    quiet("malaclemys-terrapin", Build::Turtle),
    quiet("siebenrockiella-crassicollis", Build::Turtle).climbs(Recalled, KEEPERS),
    quiet("apalone-spinifera", Build::Turtle).digs(),
    quiet("podocnemis-unifilis", Build::Turtle),
    quiet("chelodina-expansa", Build::Turtle),
    quiet("varanus-salvator", Build::Lizard).climbs(Recalled, KEEPERS).digs().hazardous(),
    // Total length just over a metre, two and a half times the greatest snout-vent length on record.
    quiet("varanus-mertensi", Build::Lizard).climbs(Recalled, KEEPERS).digs().hazardous(),
    quiet("basiliscus-plumifrons", Build::Lizard).climbs(Recalled, KEEPERS).jumps(),
    quiet("hydrosaurus-amboinensis", Build::Lizard).climbs(Recalled, KEEPERS).jumps(),
    quiet("intellagama-lesueurii", Build::Lizard).climbs(Recalled, KEEPERS).jumps(),
    quiet("shinisaurus-crocodilurus", Build::Lizard).climbs(Recalled, KEEPERS),
    quiet("caiman-crocodilus", Build::Crocodilian).climbs(Recalled, KEEPERS).hazardous(),
    quiet("natrix-tessellata", Build::Snake).climbs(Recalled, KEEPERS),
];

impl Species {
    /// Its habits, where somebody has written them down.
    pub fn habit(&self) -> Option<&'static Habit> {
        let own = self.own.and_then(|own| own.habit.as_ref());
        own.or_else(|| HABITS.iter().find(|h| h.key == self.key))
    }
}

#[cfg(test)]
mod tests {
    use super::HABITS;
    use crate::find;

    #[test]
    fn every_habit_belongs_to_a_species_and_says_where_it_comes_from() {
        for habit in HABITS {
            let species = find(habit.key).expect("a habit belongs to a species of the register");
            assert_eq!(species.habit(), Some(habit), "{} stands twice", habit.key);
            for value in [habit.body, habit.climbs, habit.jumps, habit.digs, habit.hazardous] {
                assert!(value.source.len() > 10, "{}: {}", habit.key, value.what);
            }
        }
    }
}
