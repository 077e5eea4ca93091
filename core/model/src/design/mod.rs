//! The parts of a design, one file a part; each file reads its part key by key.

pub mod air;
pub mod animal;
pub mod barrier;
pub mod basking;
pub mod circuit;
pub mod electrical;
pub mod exit;
pub mod feed;
pub mod fill;
pub mod filter;
pub mod hall;
pub mod heater;
pub mod keeper;
pub mod overflow;
pub mod panel;
pub mod pool;
pub mod project;
pub mod returns;
pub mod stage;
pub mod start_up;
pub mod stream;
pub mod variance;
pub mod visitor;
pub mod weir;

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
    /// Streams and falls.
    pub streams: List<stream::Stream>,
    /// Filters.
    pub filters: List<filter::Filter>,
    /// Heaters of the water.
    pub heaters: List<heater::Heater>,
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
    /// What the keepers undertake.
    pub keepers: keeper::Keepers,
    /// How the animals come in.
    pub start_up: start_up::StartUp,
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
            streams: r.list("streams", "streams and falls", stream::Stream::read),
            filters: r.list("filters", "filters", filter::Filter::read),
            heaters: r.list("heaters", "heaters", heater::Heater::read),
            basking: r.repeats("basking", "basking sites", basking::Basking::read),
            features: r.repeats("features", "features", barrier::Feature::read),
            barriers: r.list("barriers", "barriers", barrier::Barrier::read),
            doors: r.list("doors", "doors", barrier::Door::read),
            panels: r.list("panels", "viewing panels", panel::Panel::read),
            electrical: r.object("electrical", "electrical matters", electrical::Electrical::read),
            visitors: r.object("visitors", "visitors", visitor::Visitors::read),
            keepers: r.object("keepers", "keepers", keeper::Keepers::read),
            start_up: r.object("start-up", "start-up", start_up::StartUp::read),
            variances: r.list("variances", "variances", variance::Variance::read),
            directory: crate::directory::Directory::default(),
        }
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
        for id in crate::reader::names(tree, *node, id.into_owned()) {
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
    }
    problems
}
