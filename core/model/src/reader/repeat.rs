//! Items typed once and used many times with a step: each copy is read from the one item, its places moved.

use haulout_document::{Kind, Node, Tree};

use super::tree::{Slot, TreeReader};
use crate::card::{FieldCard, Form, Role};
use crate::compound::List;
use crate::field::{Origin, Seat, Standing, State};
use crate::ledger::NumberRoot;
use crate::shape::{Coordinate, Moved};
use crate::standing_in::ancestors;
use haulout_quantity::Dimension;

/// No item is repeated more often than this.
const MOST: f64 = 100.0;

static STEP: FieldCard =
    FieldCard::quantity("step of the repeat", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.01);
static COPY: FieldCard =
    FieldCard::plain("steps to the copy", Role::Decision, (0.0, MOST), 1.0).form(Form::Count);

/// One copy of a repeated item.
#[derive(Clone, Copy)]
pub(crate) struct Copy {
    item: Node,
    count: Node,
    steps: [Option<(Node, f64)>; 2],
    /// How often the step is taken: 0 for the first.
    times: u16,
}

impl Copy {
    /// The id of the copy: `lamp-1` of `lamp`.
    pub(crate) fn name(self, id: &str) -> String {
        copy_name(id, self.times)
    }
}

/// The id of a copy, the first being 1.
fn copy_name(id: &str, times: u16) -> String {
    format!("{id}-{}", times + 1)
}

/// How many there are of an item that may be repeated; none where it is not.
fn repeated(tree: &Tree, item: Node) -> Option<u16> {
    let count = tree.member(item, "repeat").and_then(|repeat| tree.member(repeat, "count"))?;
    tree.number(count).map(|n| n.clamp(1.0, MOST) as u16)
}

/// The names an id stands for: itself, or its copies where the item is repeated or stands in one that is.
pub(crate) fn names(tree: &Tree, id: Node, name: String) -> Vec<String> {
    match ancestors(tree, id).find_map(|n| repeated(tree, n)) {
        Some(copies) => (0..copies).map(|times| copy_name(&name, times)).collect(),
        None => vec![name],
    }
}

impl TreeReader<'_> {
    /// A list; each of its objects is read to one item or several.
    pub(super) fn list_by<T>(
        &mut self,
        key: &'static str,
        what: &'static str,
        each: impl Fn(&mut Self, Node, &mut Vec<T>),
    ) -> List<T> {
        let (origin, state) = match self.slot(key) {
            Slot::Missing(origin, kind) => (origin, Slot::state(kind)),
            Slot::Value(node, origin, _) if self.tree.kind(node) != Kind::Array => {
                self.wrong(node, what, "a list");
                (origin, State::Absent)
            }
            Slot::Value(node, origin, _) => {
                let tree = self.tree;
                let objects = tree.children(node).filter(|n| tree.kind(*n) == Kind::Object);
                let mut items: Vec<T> = Vec::with_capacity(tree.len(node));
                objects.for_each(|object| each(self, object, &mut items));
                (origin, if items.is_empty() { State::None } else { State::Given(items) })
            }
        };
        List { seat: Seat { origin, what }, state }
    }

    /// The item as often as it is repeated; once, by its own name, where it is not.
    pub(super) fn copies<T>(&mut self, item: Node, read: fn(&mut Self) -> T) -> Vec<T> {
        let repeat = self.tree.member(item, "repeat");
        let count = repeat.and_then(|r| self.tree.member(r, "count"));
        let (Some(repeat), Some(count), Some(times)) = (repeat, count, repeated(self.tree, item)) else {
            return vec![self.inside(item, read)];
        };
        let step: Vec<Node> =
            self.tree.member(repeat, "step").map_or_else(Vec::new, |s| self.tree.children(s).collect());
        let steps = [0, 1].map(|i| {
            let node: Node = *step.get(i)?;
            self.coordinate(node, STEP.what).map(|stated| (node, stated))
        });
        let outer = self.copy;
        let mut copies = Vec::new();
        for times in 0..times {
            self.copy = Some(Copy { item, count, steps, times });
            copies.push(self.inside(item, read));
        }
        self.copy = outer;
        copies
    }

    /// Whether what is read is a copy that has to be moved.
    pub(super) fn moves(&self) -> bool {
        self.copy.is_some_and(|copy| copy.times > 0)
    }

    /// A place in plan, moved with its copy.
    pub(super) fn placed(&self, pair: [Coordinate; 2]) -> [Coordinate; 2] {
        let Some(copy) = self.copy.filter(|copy| copy.times > 0) else { return pair };
        let moved = |axis: usize| {
            let (node, step) = copy.steps[axis]?;
            Some(Moved { node: node.0, step, times: f64::from(copy.times) })
        };
        let [x, y] = pair;
        [Coordinate { moved: moved(0), ..x }, Coordinate { moved: moved(1), ..y }]
    }

    /// What a drawing is worked from: its own nodes, or the whole item where the step of a repeat moves it.
    pub(super) fn span_of(&self, node: Node, origin: Origin) -> (Origin, u32) {
        match self.copy.filter(|copy| copy.times > 0) {
            // The parts tell the copies apart; an item that may be repeated has one drawing at most.
            Some(copy) => {
                let origin = Origin::at(copy.item.0).part(copy.times as u8);
                (origin, self.tree.subtree_end(copy.item).0)
            }
            None => (origin, self.tree.subtree_end(node).0),
        }
    }

    /// The step along x (0) or y (1) and how often it is taken, for a place that is read as numbers.
    pub(super) fn moved_along(&self, axis: usize) -> Option<[NumberRoot; 2]> {
        let copy = self.copy.filter(|copy| copy.times > 0)?;
        let (node, step) = (*copy.steps.get(axis)?)?;
        let root =
            |origin, value, card| NumberRoot { origin, value, unit: None, standing: Standing::Settled, card };
        let times = f64::from(copy.times);
        let counted = Origin::at(copy.count.0).part(copy.times as u8);
        Some([root(Origin::at(node.0), step, &STEP), root(counted, times, &COPY)])
    }
}

#[cfg(test)]
mod tests {
    use haulout_document::{Limits, read};

    #[test]
    fn copies_are_named_by_their_number_and_clash_with_what_has_that_name() {
        let text = r#"{ "edition": 0, "features": [ { "id": "rock", "repeat": { "count": 3, "step": [0.9, 0] },
            "outline": { "circle": { "centre": [1, 1], "radius": 0.2 } } } ],
            "basking": [ { "id": "rock-2", "level": { "above": "rock-3.top", "by": "1 cm" } } ] }"#;
        let tree = read(text.as_bytes(), &Limits::default()).accepted().expect("it is read");
        let (design, problems) = crate::read(&tree);
        let ids: Vec<&str> = design.features.items().iter().map(|f| f.id.as_str()).collect();
        assert_eq!(ids, ["rock-1", "rock-2", "rock-3"]);
        assert!(design.level("rock-3.top").is_some() && design.level("rock.top").is_none());
        let told: Vec<&str> = problems.iter().map(|p| p.message.as_str()).collect();
        assert!(told.len() == 1 && told[0].contains("\"rock-2\" is taken"), "{told:?}");
    }
}
