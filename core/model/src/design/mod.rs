//! The parts of a design, one file a part; each file reads its part key by key.

pub mod animal;
pub mod barrier;
pub mod basking;
pub mod circuit;
pub mod electrical;
pub mod hall;
pub mod panel;
pub mod pool;
pub mod project;
pub mod variance;
pub mod visitor;

use std::collections::HashMap;
use std::collections::hash_map::Entry;

use haulout_document::{Node, Problem, Tree};

use crate::compound::List;
use crate::reader::{Reader, TreeReader};
use crate::standing_in::Places;

/// One enclosure, as its file states it.
#[derive(Debug, Clone)]
pub struct Design {
    /// Title, revision, stage, what it is held to.
    pub project: project::Project,
    /// Unit and orientation of the drawing.
    pub drawing: project::DrawingCard,
    /// The existing room and its spaces.
    pub hall: hall::Hall,
    /// The animals by group.
    pub animals: List<animal::Group>,
    /// The pools.
    pub pools: List<pool::Pool>,
    /// The water circuits.
    pub circuits: List<circuit::Circuit>,
    /// Where animals bask.
    pub basking: List<basking::Basking>,
    /// Things to stand on and climb.
    pub features: List<barrier::Feature>,
    /// What keeps animals in.
    pub barriers: List<barrier::Barrier>,
    /// Doors.
    pub doors: List<barrier::Door>,
    /// Viewing panels.
    pub panels: List<panel::Panel>,
    /// Electrical matters.
    pub electrical: electrical::Electrical,
    /// The visitors.
    pub visitors: visitor::Visitors,
    /// Shortfalls somebody has accepted.
    pub variances: List<variance::Variance>,
    /// Everything that has a name, every name that points to something, every stated number by its card.
    pub directory: crate::directory::Directory,
}

impl Design {
    /// Asks a reader for every member of the top level. `edition`, `kinds` and `$schema` are the reader's own.
    pub(crate) fn members<R: Reader>(r: &mut R) -> Self {
        Design {
            project: r.object("project", "project", project::Project::read),
            drawing: r.object("drawing", "drawing", project::DrawingCard::read),
            hall: r.object("hall", "hall", hall::Hall::read),
            animals: r.list("animals", "animals", animal::Group::read),
            pools: r.list("pools", "pools", pool::Pool::read),
            circuits: r.list("circuits", "water circuits", circuit::Circuit::read),
            basking: r.list("basking", "basking sites", basking::Basking::read),
            features: r.list("features", "features", barrier::Feature::read),
            barriers: r.list("barriers", "barriers", barrier::Barrier::read),
            doors: r.list("doors", "doors", barrier::Door::read),
            panels: r.list("panels", "viewing panels", panel::Panel::read),
            electrical: r.object("electrical", "electrical matters", electrical::Electrical::read),
            visitors: r.object("visitors", "visitors", visitor::Visitors::read),
            variances: r.list("variances", "variances", variance::Variance::read),
            directory: crate::directory::Directory::default(),
        }
    }
}

impl Design {
    /// The circuit an intake belongs to, by the intake's position in the order of the file.
    pub fn circuit_of_intake(&self, intake: usize) -> Option<usize> {
        let owners = self.circuits.items().iter().enumerate();
        owners.flat_map(|(at, c)| c.intakes.items().iter().map(move |_| at)).nth(intake)
    }

    /// Every intake of every circuit, in the order of the file.
    pub fn intakes(&self) -> impl Iterator<Item = &circuit::Intake> {
        self.circuits.items().iter().flat_map(|c| c.intakes.items())
    }

    /// The level of a name such as `main.water` or `gallery.floor`.
    pub fn level(&self, name: &str) -> Option<&crate::compound::Level> {
        let (owner, level) = name.split_once('.')?;
        let pool = self.pools.items().iter().find(|p| p.id == owner);
        let zone = || self.pools.items().iter().flat_map(|p| p.zones.items()).find(|z| z.id == owner);
        let space = || self.hall.spaces.items().iter().find(|s| s.id == owner);
        match (pool, level) {
            (Some(pool), "bed") => Some(&pool.bed),
            (Some(pool), named) => pool.levels.named(named),
            (None, "bed") => zone().map(|z| &z.bed),
            (None, "floor") => space().map(|s| &s.floor_level),
            _ => None,
        }
    }

    /// The outline of what has this id: the hall, a space, a pool, a zone.
    pub fn outline(&self, name: &str) -> Option<&crate::shape::ShapeField> {
        if name == "hall" {
            return Some(&self.hall.outline);
        }
        let space = self.hall.spaces.items().iter().find(|s| s.id == name).map(|s| &s.outline);
        let pool = || self.pools.items().iter().find(|p| p.id == name).map(|p| &p.outline);
        let zone = || {
            self.pools.items().iter().flat_map(|p| p.zones.items()).find(|z| z.id == name).map(|z| &z.outline)
        };
        space.or_else(pool).or_else(zone)
    }
}

/// Reads a tree into a design. Problems are of units, references within quantities and ids; the schema step speaks of
/// shape and keys. The design is there whatever the problems, so that all of them come out at once.
pub fn read(tree: &Tree) -> (Design, Vec<Problem>) {
    let places = Places::of(tree);
    let mut reader = TreeReader::new(tree).with_drawing_unit();
    let mut design = Design::members(&mut reader);
    design.directory = crate::directory::Directory::of(tree, reader.noted(), &design, &places);
    let mut problems = reader.into_problems();
    problems.extend(duplicate_ids(tree, &places.ids));
    problems.sort_by_key(|p| p.span);
    (design, problems)
}

/// An id that stands twice: its second place, with the first beside it.
fn duplicate_ids(tree: &Tree, ids: &[Node]) -> Vec<Problem> {
    let mut first = HashMap::with_capacity(ids.len());
    let mut problems = Vec::new();
    for node in ids {
        let Some(id) = tree.string(*node) else { continue };
        match first.entry(id) {
            Entry::Vacant(free) => {
                free.insert(*node);
            }
            Entry::Occupied(taken) => problems.push(Problem {
                message: format!(
                    "the id \"{}\" is taken already; every id stands for one thing in the file",
                    taken.key()
                ),
                span: tree.span(*node),
                also: vec![(tree.span(*taken.get()), "it stands here first".to_owned())],
            }),
        }
    }
    problems
}
