//! Reading tables: pump curves, and counts by name.

use haulout_document::Node;
use haulout_quantity::Dimension;
use haulout_quantity::si::Ratio;

use super::tree::{Slot, TreeReader};
use crate::card::FieldCard;
use crate::compound::{Curve, List};
use crate::field::{Number, Seat, Standing, State};

impl TreeReader<'_> {
    pub(super) fn curve_at(&mut self, slot: Slot, what: &'static str) -> Curve {
        let (origin, end, standing, state) = match slot {
            Slot::Missing(origin, kind) => (origin, origin.node, None, Slot::state(kind)),
            Slot::Value(node, origin, standing) => {
                let points = self.curve_points(node, what);
                (origin, self.tree.subtree_end(node).0, standing, points.map_or(State::Absent, State::Given))
            }
        };
        // A curve comes from a maker's sheet unless the file says that it was measured.
        Curve { seat: Seat { origin, what }, end, standing: standing.unwrap_or(Standing::Maker), state }
    }

    fn curve_points(&mut self, node: Node, what: &'static str) -> Option<Vec<[(u32, f64); 2]>> {
        let flow = self.unit_of(node, "flow", Dimension::FLOW, what)?;
        let head = self.unit_of(node, "head", Dimension::LENGTH, what)?;
        let Some(points) = self.tree.member(node, "points") else {
            self.wrong(node, what, "{\"flow\": a unit, \"head\": a unit, \"points\": [[flow, head], …]}");
            return None;
        };
        let rows: Vec<Node> = self.tree.children(points).collect();
        let mut read = Vec::with_capacity(rows.len());
        for row in rows {
            let pair: Vec<Node> = self.tree.children(row).collect();
            let numbers: Vec<f64> = pair.iter().filter_map(|n| self.tree.number(*n)).collect();
            let ([x, y], [q, h]) = (pair.as_slice(), numbers.as_slice()) else {
                self.wrong(row, what, "a point [flow, head] of two numbers");
                return None;
            };
            read.push([(x.0, q * flow), (y.0, h * head)]);
        }
        Some(read)
    }

    fn unit_of(
        &mut self,
        node: Node,
        key: &'static str,
        dimension: Dimension,
        what: &'static str,
    ) -> Option<f64> {
        let unit = self.tree.member(node, key);
        let found = unit.and_then(|n| self.tree.string(n)).as_deref().and_then(haulout_quantity::unit);
        match found {
            Some(unit) if unit.dimension == dimension => Some(unit.factor),
            _ => {
                self.wrong(
                    unit.unwrap_or(node),
                    what,
                    &format!("the unit of \"{key}\" ({})", dimension.name()),
                );
                None
            }
        }
    }

    pub(super) fn counts_at(
        &mut self,
        slot: Slot,
        card: &'static FieldCard,
        names: &'static [&'static str],
    ) -> List<(String, Number<Ratio>)> {
        let (origin, state) = match slot {
            Slot::Missing(origin, kind) => (origin, Slot::state(kind)),
            Slot::Value(node, origin, _) => (origin, self.count_members(node, card, names)),
        };
        List { seat: Seat { origin, what: card.what }, state }
    }

    fn count_members(
        &mut self,
        node: Node,
        card: &'static FieldCard,
        names: &'static [&'static str],
    ) -> State<Vec<(String, Number<Ratio>)>> {
        let members: Vec<(String, Node)> =
            self.tree.children(node).filter_map(|n| Some((self.tree.key(n)?.into_owned(), n))).collect();
        let mut read = Vec::new();
        for (name, member) in members {
            if name.starts_with("x-") || name == "note" {
                continue;
            }
            if !names.contains(&name.as_str()) {
                self.wrong(member, card.what, &format!("one of {}", names.join(", ")));
                continue;
            }
            let slot = self.value(member, None);
            read.push((name, self.number_at(slot, card)));
        }
        if read.is_empty() { State::None } else { State::Given(read) }
    }
}
