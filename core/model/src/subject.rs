//! What a rule can be about, and the subjects of each kind in a design. They come from ids and references only: a
//! changed value can never change which subjects there are.

use crate::design::Design;
use crate::field::Missing;
use crate::kinds::{PAIRS, Pair, SINGLES, Single};

/// Kinds of subject.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum About {
    /// The design as a whole.
    Whole,
    /// Each space of the hall.
    Space,
    /// Each pool.
    Pool,
    /// Each animal group.
    Group,
    /// Each water circuit.
    Circuit,
    /// Each intake of a circuit.
    Intake,
    /// Each basking site.
    Basking,
    /// Each barrier.
    Barrier,
    /// Each door.
    Door,
    /// Each guard for visitors.
    Guard,
    /// Each viewing panel.
    Panel,
    /// Each viewing position.
    Position,
    /// Each electrical item.
    Item,
    /// Each zone of each pool.
    Zone,
    /// Each way out of the water.
    Exit,
    /// Each ledge in the water.
    Ledge,
    /// Each opening an animal may get into.
    Opening,
    /// Each material that the water of a pool touches.
    Material,
    /// Each overflow.
    Overflow,
    /// Each stream or fall.
    Stream,
    /// Each filter.
    Filter,
    /// Each heater of the water.
    Heater,
    /// Each pipe run.
    Run,
    /// Each device in line.
    Device,
    /// Each return of a circuit.
    Return,
    /// Each feed of a group.
    Feed,
    /// Each alarm.
    Alarm,
    /// Each stocking step.
    Stocking,
    /// Each arrival.
    Arrival,
    /// Each outline that is drawn: of the hall, a space, a pool, a zone, a filter, a site, a feature, a ledge.
    Outline,
    /// Each name that points to something else in the file.
    Reference,
    /// Each kind.
    Kind,
    /// Each part of the file that states numbers: the outermost thing with an id, or a member of the top level.
    Part,
    /// Each two pools.
    PoolPair,
    /// Each pool with each group that lives in its space.
    PoolGroup,
    /// Each basking site with each group that uses it.
    BaskingGroup,
    /// Each barrier with each group it keeps in.
    BarrierGroup,
    /// Each door with each group that lives behind it.
    DoorGroup,
    /// Each viewing position with each pool looked into from it.
    PositionPool,
    /// Each electrical item with each pool.
    ItemPool,
    /// Each exit with each group that lives in the space of its pool.
    ExitGroup,
    /// Each ledge with each group that lives in the space of its pool.
    LedgeGroup,
    /// Each opening with each group that lives in the space of its pool.
    OpeningGroup,
    /// Each overflow with each group that lives in the space of its pool.
    OverflowGroup,
    /// Each intake with each group that lives in the space of its pool.
    IntakeGroup,
    /// Each stream with each group that lives in its space.
    StreamGroup,
    /// Each circuit with each pool it joins.
    CircuitPool,
    /// Each heater with the pool it heats.
    HeaterPool,
}

impl About {
    /// All of them.
    pub fn all() -> impl Iterator<Item = About> {
        let whole = std::iter::once(About::Whole);
        whole.chain(SINGLES.iter().map(|s| s.about)).chain(PAIRS.iter().map(|p| p.about))
    }

    /// The tables stand in the order of the kinds, the whole before them.
    fn single(self) -> Option<&'static Single> {
        SINGLES.get((self as usize).wrapping_sub(1))
    }

    fn pair(self) -> Option<&'static Pair> {
        PAIRS.get((self as usize).wrapping_sub(1 + SINGLES.len()))
    }

    /// The word for it, as on a script's card and in a subject's key.
    pub fn name(self) -> &'static str {
        self.single().map(|s| s.name).or(self.pair().map(|p| p.name)).unwrap_or("whole")
    }

    /// The kind of a word.
    pub fn of(word: &str) -> Option<Self> {
        About::all().find(|a| a.name() == word)
    }

    /// Whether a subject of this kind has a part of the kind `part`: a pool-group has a pool.
    pub fn holds(self, part: About) -> bool {
        let pair = self.pair().is_some_and(|p| p.first == part || p.second == part);
        part == About::Whole || self == part || pair
    }

    /// The subject of this kind made of the things at two positions, where they belong together.
    pub fn of_two(self, design: &Design, first: usize, second: usize) -> Option<Subject> {
        let pair = self.pair()?;
        let there = |about: About, at| about.single().is_some_and(|s| at < (s.count)(design));
        let both = there(pair.first, first) && there(pair.second, second);
        let subject = Subject { about: self, a: first as u16, b: second as u16 };
        (both && (pair.related)(design, first, second)).then_some(subject)
    }

    /// The subjects of this kind.
    pub fn walk(self, design: &Design) -> Walk {
        if let Some(single) = self.single() {
            let subjects = (0..(single.count)(design)).map(|i| Subject::nth(self, i)).collect();
            return Walk { subjects, missing: (single.missing)(design) };
        }
        match self.pair() {
            Some(pair) => pair_walk(self, pair, design),
            None => Walk { subjects: vec![Subject::nth(About::Whole, 0)], missing: Vec::new() },
        }
    }
}

fn pair_walk(about: About, pair: &Pair, design: &Design) -> Walk {
    let (first, second) = (pair.first.walk(design), pair.second.walk(design));
    let both =
        first.subjects.iter().flat_map(|a| second.subjects.iter().map(move |b| (a.index(), b.index())));
    let subjects = both
        .filter(|(a, b)| (pair.related)(design, *a, *b))
        .map(|(a, b)| Subject { about, a: a as u16, b: b as u16 })
        .collect();
    let mut missing: Vec<Missing> =
        first.missing.into_iter().chain(second.missing).chain((pair.missing)(design)).collect();
    missing.dedup();
    Walk { subjects, missing }
}

/// One subject: its kind and positions in the lists of the design.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Subject {
    about: About,
    a: u16,
    b: u16,
}

/// The subjects of a kind, and the lists that would have to be stated for there to be any.
#[derive(Debug, Clone)]
pub struct Walk {
    /// The subjects, in the order of the file.
    pub subjects: Vec<Subject>,
    /// The lists they come from that hold nothing; looked at only when there are no subjects.
    pub missing: Vec<Missing>,
}

impl Subject {
    /// Its kind.
    pub const fn about(self) -> About {
        self.about
    }

    /// Its part of a kind: the pool of a pool-group; itself when it is of that kind.
    pub fn part(self, part: About) -> Option<Subject> {
        if self.about == part {
            return Some(self);
        }
        if part == About::Whole {
            return Some(Subject::nth(part, 0));
        }
        let pair = self.about.pair()?;
        let index = if pair.first == part { self.a } else { self.b };
        (pair.first == part || pair.second == part).then(|| Subject::nth(part, usize::from(index)))
    }

    /// The subject as one number; different subjects have different ones.
    pub const fn packed(self) -> u64 {
        (self.about as u64) << 32 | (self.a as u64) << 16 | self.b as u64
    }

    /// Its position in the list of its kind.
    pub const fn index(self) -> usize {
        self.a as usize
    }

    /// The position of the second of a pair in the list of its kind.
    pub const fn second(self) -> usize {
        self.b as usize
    }

    /// The subject of a single kind at a position.
    pub const fn nth(about: About, index: usize) -> Subject {
        Subject { about, a: index as u16, b: 0 }
    }

    /// Its key: `pool:main`, `pool:main+group:sliders`, `whole`.
    pub fn key(self, design: &Design) -> String {
        if let Some(single) = self.about.single() {
            return format!("{}:{}", single.name, (single.id)(design, self.index()));
        }
        match self.about.pair() {
            // Not by part: the two of a pair may be of one kind.
            Some(pair) => {
                let (a, b) =
                    (Subject::nth(pair.first, self.index()), Subject::nth(pair.second, self.second()));
                format!("{}+{}", a.key(design), b.key(design))
            }
            None => "whole".to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{About, PAIRS, SINGLES};

    #[test]
    fn the_tables_stand_in_the_order_of_the_kinds() {
        assert!(SINGLES.iter().all(|s| s.about.single().is_some_and(|found| found.about == s.about)));
        assert!(PAIRS.iter().all(|p| p.about.pair().is_some_and(|found| found.about == p.about)));
        assert!(About::Whole.single().is_none() && About::Whole.pair().is_none());
        assert!(PAIRS.iter().all(|p| p.about.single().is_none()));
    }
}
