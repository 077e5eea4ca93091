//! Whether a name leads to something, what may yet come to stand there, and the nearest name that would do.

use super::{Awaited, Entry, LEVELS, Leads, Pointing};
use crate::design::Design;
use crate::field::Missing;

impl Design {
    /// Whether a name leads to something in this file.
    pub fn leads(&self, pointing: &Pointing) -> bool {
        let (name, directory) = (pointing.reference.name(), &self.directory);
        match pointing.leads {
            Leads::Lists(lists) => directory.with_id(name).any(|e| lists.contains(&e.list())),
            Leads::Outline => self.outline(name).is_some(),
            Leads::Level => self.level(name).is_some(),
            Leads::Kind(family) => directory.kinds_named(name).any(|e| e.list == family),
            Leads::Anything => directory.with_id(name).next().is_some(),
        }
    }

    /// The list to be decided in which the thing with this name may yet come to stand.
    pub fn awaited(&self, pointing: &Pointing) -> Option<Missing> {
        let lists: &[&str] = match pointing.leads {
            Leads::Lists(lists) => lists,
            Leads::Kind(_) => &["kinds"],
            Leads::Outline | Leads::Level => &["spaces", "pools", "filters"],
            Leads::Anything => &["spaces", "pools", "animals", "barriers"],
        };
        let here = |a: &&Awaited| a.list.is_some_and(|list| lists.contains(&list));
        self.directory.awaited.iter().find(here).map(|a| a.missing)
    }

    /// The name nearest to one that leads nowhere, among those that would do in its place.
    pub fn nearest(&self, pointing: &Pointing) -> Option<String> {
        let name = pointing.reference.name();
        let steps = |other: &String| strsim::osa_distance(name, other);
        self.candidates(pointing.leads).into_iter().min_by_key(steps)
    }

    fn candidates(&self, leads: Leads) -> Vec<String> {
        let (ids, kinds) = (self.directory.ids.iter(), self.directory.kinds.iter());
        let names = |entries: Vec<&Entry>| entries.into_iter().map(|e| e.name.clone()).collect();
        match leads {
            Leads::Lists(lists) => names(ids.filter(|e| lists.contains(&e.list())).collect()),
            Leads::Kind(family) => names(kinds.filter(|e| e.list == family).collect()),
            Leads::Anything => names(ids.collect()),
            Leads::Outline => self.directory.outlines.clone(),
            Leads::Level => ids
                .flat_map(|e| LEVELS.iter().map(move |level| format!("{}.{level}", e.name)))
                .filter(|name| self.level(name).is_some())
                .collect(),
        }
    }
}
