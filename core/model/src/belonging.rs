//! Which subjects of another kind belong to a subject: by ids and references, as the subjects themselves.

use crate::design::Design;
use crate::kinds::{PAIRS, Pair};
use crate::subject::{About, Subject, Walk};

/// How subjects of one kind are found from one of another.
enum Way {
    /// All of them belong to the whole.
    All,
    /// They are pairs in which the subject, or a part of it, is one of the two.
    Within(&'static Pair),
    /// A relation of two joins them to the subject.
    Through(&'static Pair),
}

fn pair_of(about: About) -> Option<&'static Pair> {
    PAIRS.iter().find(|p| p.about == about)
}

fn way(from: About, kind: About) -> Option<Way> {
    if from == About::Whole {
        return Some(Way::All);
    }
    if from.holds(kind) {
        return None;
    }
    if let Some(pair) = pair_of(kind) {
        return (from.holds(pair.first) || from.holds(pair.second)).then_some(Way::Within(pair));
    }
    let joins = |p: &&Pair| (p.first, p.second) == (from, kind) || (p.second, p.first) == (from, kind);
    PAIRS.iter().find(joins).map(Way::Through)
}

impl About {
    /// Whether subjects of a kind can belong to one of this kind, several of them: to a pool the groups that live in
    /// its space, to the whole everything. What is a part of it is one and not several.
    pub fn gathers(self, kind: About) -> bool {
        way(self, kind).is_some()
    }
}

impl Subject {
    /// The subjects of a kind that belong to this one; none where [`About::gathers`] says that there can be none.
    pub fn gather(self, kind: About, design: &Design) -> Walk {
        match way(self.about(), kind) {
            None => Walk { subjects: Vec::new(), missing: Vec::new() },
            Some(Way::All) => kind.walk(design),
            Some(Way::Within(pair)) => {
                let walk = kind.walk(design);
                let ours = |s: &Subject| self.is_in(pair, *s);
                Walk { subjects: walk.subjects.into_iter().filter(ours).collect(), missing: walk.missing }
            }
            Some(Way::Through(pair)) => {
                let walk = pair.about.walk(design);
                let joined = walk.subjects.into_iter().filter(|s| self.is_in(pair, *s));
                let other = |s: Subject| if pair.first == kind { s.index() } else { s.second() };
                let subjects = joined.map(|s| Subject::nth(kind, other(s))).collect();
                Walk { subjects, missing: walk.missing }
            }
        }
    }

    /// Whether a pair agrees with this subject in every part that both have; two of one kind agree in either place.
    fn is_in(self, pair: &Pair, other: Subject) -> bool {
        let (first, second) = (self.part(pair.first), self.part(pair.second));
        if pair.first == pair.second {
            return first.is_none_or(|p| [other.index(), other.second()].contains(&p.index()));
        }
        first.is_none_or(|p| p.index() == other.index()) && second.is_none_or(|p| p.index() == other.second())
    }
}
