//! Reading outlines: corners, or one shape by its key.

use haulout_document::{Kind, Node};
use haulout_quantity::Dimension;
use haulout_quantity::si::{Angle, Length};

use super::tree::{Slot, TreeReader};
use crate::card::{FieldCard, Form, Role};
use crate::compound::Track;
use crate::field::{Number, Origin, Seat, State};
use crate::shape::{Coordinate, Drawing, Drawn, DrawnShape, Mirror, Shape, ShapeField, Sides};

static INSET: FieldCard = FieldCard::quantity("inset", Dimension::LENGTH, Role::Decision, (-5.0, 5.0), 0.005);
static SHIFT: FieldCard =
    FieldCard::quantity("shift", Dimension::LENGTH, Role::Decision, (-100.0, 100.0), 0.005).or_else(
        0.0,
        haulout_quantity::Basis::CommonPractice,
        "a copy that is not moved stays where it is",
    );
static TURN: FieldCard =
    FieldCard { form: Form::Quantity, ..FieldCard::plain("turn", Role::Decision, (-7.0, 7.0), 0.001) }
        .or_else(0.0, haulout_quantity::Basis::CommonPractice, "what is not turned is not turned");

/// The shapes drawn in their own numbers and how their numbers become a drawing.
struct Recipe<'t> {
    key: &'static str,
    read: fn(&mut TreeReader<'t>, Node) -> Option<Drawn>,
}

const KNOWN: &str =
    "a list of corners [x, y] or one of rect, circle, ellipse, smooth, strip, inset, copy, join, less";

impl<'t> TreeReader<'t> {
    const RECIPES: [Recipe<'t>; 5] = [
        Recipe { key: "rect", read: Self::rectangle },
        Recipe { key: "circle", read: Self::circle },
        Recipe { key: "ellipse", read: Self::ellipse },
        Recipe { key: "smooth", read: Self::smooth },
        Recipe { key: "strip", read: Self::strip },
    ];

    pub(super) fn shape_at(&mut self, slot: Slot, what: &'static str) -> ShapeField {
        let (origin, state) = match slot {
            Slot::Missing(origin, kind) => (origin, Slot::state(kind)),
            Slot::Value(node, origin, _) => {
                let shape = self.shape_of(node, origin, what);
                (origin, shape.map_or(State::Absent, |s| State::Given(Box::new(s))))
            }
        };
        ShapeField { seat: Seat { origin, what }, state }
    }

    fn shape_of(&mut self, node: Node, origin: Origin, what: &'static str) -> Option<Shape> {
        let (origin, end) = self.span_of(node, origin);
        let seat = Seat { origin, what };
        if self.tree.kind(node) == Kind::Array {
            let numbers = self.points(node)?;
            let drawn = Drawn { numbers, build: |n, _| Drawing::Corners(pairs(n)), side: 0 };
            return Some(Shape::Drawn(DrawnShape { seat, end, drawn }));
        }
        let Some((recipe, inner)) =
            Self::RECIPES.into_iter().find_map(|r| self.tree.member(node, r.key).map(|n| (r, n)))
        else {
            return self.worked_shape(node, what);
        };
        let drawn = (recipe.read)(self, inner)?;
        Some(Shape::Drawn(DrawnShape { seat, end, drawn }))
    }

    fn worked_shape(&mut self, node: Node, what: &'static str) -> Option<Shape> {
        let member = |key: &str| self.tree.member(node, key);
        if self.moves() && member("inset").or(member("copy")).is_some() {
            let message = format!(
                "{what}: what is repeated is drawn in its own numbers, or it could not be moved by the step"
            );
            self.problem(node, message);
            return None;
        }
        if let Some(inset) = member("inset") {
            return self.inset(inset, what);
        }
        if let Some(copy) = member("copy") {
            return self.copy(copy, what);
        }
        let (join, less) = (member("join"), member("less"));
        if let Some(list) = join.or(less) {
            let parts: Vec<Node> = self.tree.children(list).collect();
            if parts.len() >= 2 {
                let fields = parts
                    .into_iter()
                    .map(|n| self.shape_at(Slot::Value(n, Origin::at(n.0), None), what))
                    .collect();
                return Some(if join.is_some() { Shape::Join(fields) } else { Shape::Less(fields) });
            }
        }
        self.wrong(node, what, KNOWN);
        None
    }

    pub(super) fn track_at(&mut self, slot: Slot, what: &'static str) -> Track {
        let (origin, end, state) = match slot {
            Slot::Missing(origin, kind) => (origin, origin.node, Slot::state(kind)),
            Slot::Value(node, origin, _) => {
                let points = self.points(node).filter(|p| p.len() >= 4);
                if points.is_none() {
                    self.wrong(node, what, "a line of two places [x, y] or more");
                }
                let pairs = |p: Vec<Coordinate>| p.chunks_exact(2).map(|c| [c[0], c[1]]).collect();
                let (origin, end) = self.span_of(node, origin);
                (origin, end, points.map_or(State::Absent, |p| State::Given(pairs(p))))
            }
        };
        Track { seat: Seat { origin, what }, end, state }
    }

    fn points(&mut self, node: Node) -> Option<Vec<Coordinate>> {
        let tree = self.tree;
        let mut numbers = Vec::with_capacity(tree.len(node) * 2);
        for row in tree.children(node) {
            let pair = self.pair(row)?;
            numbers.extend(self.placed(pair));
        }
        Some(numbers)
    }

    fn pair(&mut self, node: Node) -> Option<[Coordinate; 2]> {
        let mut items = self.tree.children(node);
        let (Some(x), Some(y), None) = (items.next(), items.next(), items.next()) else {
            self.wrong(node, "outline", "a place [x, y]");
            return None;
        };
        Some([self.length(x)?, self.length(y)?])
    }

    fn length(&mut self, node: Node) -> Option<Coordinate> {
        self.coordinate(node, "outline").map(|stated| Coordinate::at(node.0, stated))
    }

    fn member_pair(&mut self, node: Node, key: &str) -> Option<[Coordinate; 2]> {
        match self.tree.member(node, key) {
            Some(pair) => self.pair(pair),
            None => {
                self.wrong(node, "outline", &format!("\"{key}\": [x, y]"));
                None
            }
        }
    }

    fn member_place(&mut self, node: Node, key: &str) -> Option<[Coordinate; 2]> {
        self.member_pair(node, key).map(|pair| self.placed(pair))
    }

    fn member_length(&mut self, node: Node, key: &str, default: Option<f64>) -> Option<Coordinate> {
        match (self.tree.member(node, key), default) {
            (Some(length), _) => self.length(length),
            // What is not stated has no node of its own; the shape's node cannot be patched by a search.
            (None, Some(stated)) => Some(Coordinate::at(node.0, stated)),
            (None, None) => {
                self.wrong(node, "outline", &format!("\"{key}\": a length"));
                None
            }
        }
    }

    fn member_turn(&mut self, node: Node) -> Option<Coordinate> {
        match self.tree.member(node, "turn") {
            Some(turn) => self.angle(turn, "turn").map(|stated| Coordinate::at(turn.0, stated)),
            None => Some(Coordinate::at(node.0, 0.0)),
        }
    }

    fn rectangle(&mut self, node: Node) -> Option<Drawn> {
        let [x, y] = self.member_place(node, "corner")?;
        let [w, h] = self.member_pair(node, "size")?;
        let numbers =
            vec![x, y, w, h, self.member_turn(node)?, self.member_length(node, "round", Some(0.0))?];
        let build: fn(&[f64], u8) -> Drawing =
            |n, _| Drawing::Rectangle { corner: [n[0], n[1]], size: [n[2], n[3]], turn: n[4], round: n[5] };
        Some(Drawn { numbers, build, side: 0 })
    }

    fn circle(&mut self, node: Node) -> Option<Drawn> {
        let [x, y] = self.member_place(node, "centre")?;
        let numbers = vec![x, y, self.member_length(node, "radius", None)?];
        Some(Drawn { numbers, build: |n, _| Drawing::Circle { centre: [n[0], n[1]], radius: n[2] }, side: 0 })
    }

    fn ellipse(&mut self, node: Node) -> Option<Drawn> {
        let [x, y] = self.member_place(node, "centre")?;
        let [a, b] = self.member_pair(node, "radii")?;
        let numbers = vec![x, y, a, b, self.member_turn(node)?];
        let build: fn(&[f64], u8) -> Drawing =
            |n, _| Drawing::Ellipse { centre: [n[0], n[1]], radii: [n[2], n[3]], turn: n[4] };
        Some(Drawn { numbers, build, side: 0 })
    }

    fn smooth(&mut self, node: Node) -> Option<Drawn> {
        let Some(through) = self.tree.member(node, "through") else {
            self.wrong(node, "outline", "\"through\": a list of places [x, y]");
            return None;
        };
        Some(Drawn { numbers: self.points(through)?, build: |n, _| Drawing::Smooth(pairs(n)), side: 0 })
    }

    fn strip(&mut self, node: Node) -> Option<Drawn> {
        let Some(line) = self.tree.member(node, "line") else {
            self.wrong(node, "outline", "\"line\": a list of places [x, y]");
            return None;
        };
        let mut numbers = self.points(line)?;
        numbers.push(self.member_length(node, "width", None)?);
        let side = self.tree.member(node, "face").and_then(|s| self.tree.string(s));
        let side = match side.as_deref() {
            Some("left") => 1,
            Some("right") => 2,
            _ => 0,
        };
        let build: fn(&[f64], u8) -> Drawing = |n, side| {
            let (width, line) = n.split_last().map_or((0.0, n), |(w, l)| (*w, l));
            Drawing::Strip { line: pairs(line), width, side }
        };
        Some(Drawn { numbers, build, side })
    }

    fn outline_named(&mut self, node: Node, what: &'static str) -> Option<crate::compound::Reference> {
        match self.tree.member(node, "of") {
            Some(of) => self.reference_at(of, None, what),
            None => {
                self.wrong(node, what, "\"of\": the id of what has the outline");
                None
            }
        }
    }

    fn member_number<Q>(&mut self, node: Node, key: &'static str, card: &'static FieldCard) -> Number<Q> {
        let slot = match self.tree.member(node, key) {
            Some(found) => self.value(found, None),
            None => Slot::Missing(
                Origin { tail: [key, "", ""], ..Origin::at(node.0) },
                crate::field::MissingKind::Absent,
            ),
        };
        self.number_at(slot, card)
    }

    fn inset(&mut self, node: Node, what: &'static str) -> Option<Shape> {
        let of = self.outline_named(node, what)?;
        let by = self.member_number(node, "by", &INSET);
        let sides = self.tree.member(node, "sides").map(|s| {
            let sides = self.tree.children(s);
            let side = |n: Node| self.tree.number(n).map(|stated| Coordinate::at(n.0, stated));
            Sides {
                seat: Seat { origin: Origin::at(s.0), what: "sides that move" },
                end: self.tree.subtree_end(s).0,
                numbers: sides.filter_map(side).collect(),
            }
        });
        Some(Shape::Inset { of, by, sides })
    }

    fn copy(&mut self, node: Node, what: &'static str) -> Option<Shape> {
        let of = self.outline_named(node, what)?;
        let slot = match self.tree.member(node, "move") {
            Some(found) => self.value(found, None),
            None => Slot::Missing(
                Origin { tail: ["move", "", ""], ..Origin::at(node.0) },
                crate::field::MissingKind::Absent,
            ),
        };
        let shift: [Number<Length>; 2] = self.point_at(slot, [&SHIFT, &SHIFT]);
        let turn: Number<Angle> = self.member_number(node, "turn", &TURN);
        let mirror = self.tree.member(node, "mirror").and_then(|m| self.tree.string(m));
        let mirror = match mirror.as_deref() {
            Some("x") => Some(Mirror::X),
            Some("y") => Some(Mirror::Y),
            _ => None,
        };
        Some(Shape::Copy { of, shift, turn, mirror })
    }
}

fn pairs(numbers: &[f64]) -> Vec<[f64; 2]> {
    numbers.chunks_exact(2).map(|p| [p[0], p[1]]).collect()
}
