//! What a rule can be about, and the subjects of each kind in a design. They come from ids and references only: a
//! changed value can never change which subjects there are.

use crate::design::Design;
use crate::field::{Missing, State};

/// Kinds of subject.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum About {
    /// The design as a whole.
    Whole,
    /// Each pool.
    Pool,
    /// Each animal group.
    Group,
    /// Each water circuit.
    Circuit,
    /// Each viewing position.
    Position,
    /// Each pool with each group that lives in its space.
    PoolGroup,
    /// Each viewing position with each pool looked into from it.
    PositionPool,
}

impl About {
    /// All of them.
    pub const ALL: &'static [About] = &[
        About::Whole,
        About::Pool,
        About::Group,
        About::Circuit,
        About::Position,
        About::PoolGroup,
        About::PositionPool,
    ];

    /// The word for it, as on a script's card and in a subject's key.
    pub const fn name(self) -> &'static str {
        match self {
            About::Whole => "whole",
            About::Pool => "pool",
            About::Group => "group",
            About::Circuit => "circuit",
            About::Position => "position",
            About::PoolGroup => "pool-group",
            About::PositionPool => "position-pool",
        }
    }

    /// The kind of a word.
    pub fn of(word: &str) -> Option<Self> {
        About::ALL.iter().copied().find(|a| a.name() == word)
    }

    /// Whether a subject of this kind has a part of the kind `part`: a pool-group has a pool.
    pub const fn holds(self, part: About) -> bool {
        matches!(
            (self, part),
            (About::PoolGroup, About::Pool | About::Group)
                | (About::PositionPool, About::Position | About::Pool)
        ) || matches!(part, About::Whole)
            || self as u8 == part as u8
    }

    /// The subjects of this kind.
    pub fn walk(self, design: &Design) -> Walk {
        let single = |count: usize, missing: Option<Missing>| Walk {
            subjects: (0..count)
                .map(|i| Subject {
                    about: self,
                    a: i as u16,
                    b: 0,
                })
                .collect(),
            missing: missing.into_iter().collect(),
        };
        match self {
            About::Whole => Walk {
                subjects: vec![Subject {
                    about: self,
                    a: 0,
                    b: 0,
                }],
                missing: Vec::new(),
            },
            About::Pool => single(design.pools.items().len(), design.pools.missing()),
            About::Group => single(design.animals.items().len(), design.animals.missing()),
            About::Circuit => single(design.circuits.items().len(), design.circuits.missing()),
            About::Position => single(
                design.visitors.positions.items().len(),
                design.visitors.positions.missing(),
            ),
            About::PoolGroup => pool_groups(design),
            About::PositionPool => position_pools(design),
        }
    }
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
    /// The lists they come from, as they would be missing; looked at only when there are no subjects.
    pub missing: Vec<Missing>,
}

impl Subject {
    /// Its kind.
    pub const fn about(self) -> About {
        self.about
    }

    /// Its part of a kind: the pool of a pool-group; itself when it is of that kind.
    pub fn part(self, part: About) -> Option<Subject> {
        let at = |a: u16| Some(Subject { about: part, a, b: 0 });
        match (self.about, part) {
            (own, wanted) if own == wanted => Some(self),
            (_, About::Whole) => at(0),
            (About::PoolGroup, About::Pool) | (About::PositionPool, About::Position) => at(self.a),
            (About::PoolGroup, About::Group) | (About::PositionPool, About::Pool) => at(self.b),
            _ => None,
        }
    }

    /// Its position in the list of its kind.
    pub const fn index(self) -> usize {
        self.a as usize
    }

    /// The subject of a kind at a position.
    pub const fn nth(about: About, index: usize) -> Subject {
        Subject {
            about,
            a: index as u16,
            b: 0,
        }
    }

    /// Its key: `pool:main`, `pool:main+group:sliders`, `whole`.
    pub fn key(self, design: &Design) -> String {
        let name = |about: About, index: u16| format!("{}:{}", about.name(), id(design, about, index));
        match self.about {
            About::Whole => "whole".to_owned(),
            About::PoolGroup => format!("{}+{}", name(About::Pool, self.a), name(About::Group, self.b)),
            About::PositionPool => format!("{}+{}", name(About::Position, self.a), name(About::Pool, self.b)),
            single => name(single, self.a),
        }
    }
}

fn id(design: &Design, about: About, index: u16) -> &str {
    let index = usize::from(index);
    let id = match about {
        About::Pool => design.pools.items().get(index).map(|p| &p.id),
        About::Group => design.animals.items().get(index).map(|g| &g.id),
        About::Circuit => design.circuits.items().get(index).map(|c| &c.id),
        About::Position => design.visitors.positions.items().get(index).map(|p| &p.id),
        About::Whole | About::PoolGroup | About::PositionPool => None,
    };
    id.map_or("", String::as_str)
}

fn pool_groups(design: &Design) -> Walk {
    let mut subjects = Vec::new();
    for (a, pool) in design.pools.items().iter().enumerate() {
        for (b, group) in design.animals.items().iter().enumerate() {
            let here = pool.space.as_ref().map(|s| s.name());
            // A group that names no space is taken to reach every pool: leaving the key out must not hide a check.
            let lives_here = match group.spaces.state() {
                State::Given(spaces) => spaces.iter().any(|s| here.is_none() || Some(s.name()) == here),
                _ => true,
            };
            if lives_here {
                subjects.push(Subject {
                    about: About::PoolGroup,
                    a: a as u16,
                    b: b as u16,
                });
            }
        }
    }
    let missing = [design.pools.missing(), design.animals.missing()]
        .into_iter()
        .flatten()
        .collect();
    Walk { subjects, missing }
}

fn position_pools(design: &Design) -> Walk {
    let mut subjects = Vec::new();
    for (a, position) in design.visitors.positions.items().iter().enumerate() {
        for (b, pool) in design.pools.items().iter().enumerate() {
            if position.pools.items().iter().any(|r| r.name() == pool.id) {
                subjects.push(Subject {
                    about: About::PositionPool,
                    a: a as u16,
                    b: b as u16,
                });
            }
        }
    }
    let pools_of = design
        .visitors
        .positions
        .items()
        .iter()
        .map(|p| p.pools.missing());
    let lists = [design.visitors.positions.missing(), design.pools.missing()];
    let missing = lists.into_iter().chain(pools_of).flatten().collect();
    Walk { subjects, missing }
}
