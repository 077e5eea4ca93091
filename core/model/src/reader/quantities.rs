//! Reading numbers in each of the forms a card allows, with a sentence for every slip.

use haulout_document::{Kind, Node, Problem};
use haulout_place::Span;
use haulout_quantity::si::{Length, Ratio};
use haulout_quantity::{Dimension, Parts, Slip};

use super::tree::{Slot, TreeReader, own_standing};
use crate::card::{FieldCard, Form};
use crate::compound::{Level, LevelExpr};
use crate::field::{Number, Origin, Seat, Standing, State, Value};

impl TreeReader<'_> {
    pub(super) fn quantity(
        &mut self,
        node: Node,
        card: &'static FieldCard,
        standing: Option<Standing>,
    ) -> Option<Value> {
        let standing = standing.unwrap_or(own_standing(card.role));
        let plain = |value| Some(Value { parts: Parts::One(value), unit: None, standing });
        match (card.form, self.tree.kind(node)) {
            (Form::Plain, Kind::Number) => plain(self.tree.number(node)?),
            (Form::Share, Kind::Number) => {
                let value = self.tree.number(node)?;
                self.is_share(node, card, value).then(|| plain(value)).flatten()
            }
            (Form::Count, Kind::Number) => self.whole(node, card).and_then(plain),
            (Form::Quantity | Form::Band | Form::Difference | Form::Slope | Form::Share, Kind::String) => {
                let tree = self.tree;
                let text = tree.string(node)?;
                let read = match card.form {
                    Form::Slope => haulout_quantity::read_slope(&text),
                    Form::Share => haulout_quantity::read_share(&text),
                    Form::Difference => haulout_quantity::read_difference(&text),
                    _ => haulout_quantity::read(&text, card.dimension),
                };
                let read = self.or_problem(node, card.what, read)?;
                if matches!(read.parts, Parts::Range { .. }) && card.form != Form::Band {
                    self.wrong(node, card.what, "one value, not a range,");
                    return None;
                }
                if card.form == Form::Share && !self.is_share(node, card, read.parts.value()) {
                    return None;
                }
                Some(Value { parts: read.parts, unit: Some(read.unit), standing })
            }
            (Form::Quantity | Form::Band | Form::Difference, Kind::Number) => {
                let typed = self.tree.span(node).of(self.tree.text()).to_owned();
                let message = format!(
                    "{}: {typed} has no unit; write it as a string with one, such as \"{typed} {}\"",
                    card.what,
                    haulout_quantity::unit_for(card.dimension, haulout_quantity::System::Metric).symbol
                );
                self.problem(node, message);
                None
            }
            (form, _) => {
                self.wrong(node, card.what, expected(form));
                None
            }
        }
    }

    /// A share of more than the whole is most likely one in hundredths without its sign.
    fn is_share(&mut self, node: Node, card: &'static FieldCard, value: f64) -> bool {
        if (0.0..=1.0).contains(&value) {
            return true;
        }
        let typed = self.tree.typed(node).trim_matches('"').trim().to_owned();
        let way_out = match value > 1.0 && value <= 100.0 && !typed.contains('%') {
            true => format!(" If {typed} hundredths are meant, write \"{typed} %\"."),
            false => String::new(),
        };
        self.problem(
            node,
            format!("{}: a share lies between 0 and 1, and {typed} does not.{way_out}", card.what),
        );
        false
    }

    fn whole(&mut self, node: Node, card: &'static FieldCard) -> Option<f64> {
        let value = self.tree.number(node)?;
        if value >= 0.0 && value.fract() == 0.0 && value <= 1e9 {
            return Some(value);
        }
        self.wrong(node, card.what, "a whole number, 0 or more,");
        None
    }

    /// A slip of a quantity becomes a problem at the very characters of the string it is about.
    fn or_problem<T>(&mut self, node: Node, what: &str, read: Result<T, Slip>) -> Option<T> {
        match read {
            Ok(value) => Some(value),
            Err(slip) => {
                let whole = self.tree.span(node);
                let inner = whole.of(self.tree.text());
                // Escapes shift offsets; then the whole string is pointed at.
                let exact = !inner.contains('\\') && whole.start + 1 + slip.at.end as u32 <= whole.end;
                let span = if exact && slip.at.start < slip.at.end {
                    Span::new(whole.start + 1 + slip.at.start as u32, whole.start + 1 + slip.at.end as u32)
                } else {
                    whole
                };
                self.problems.push(Problem {
                    message: format!("{what}: {}", slip.message),
                    span,
                    also: Vec::new(),
                });
                None
            }
        }
    }

    /// A length inside a drawing: a bare number in the drawing's unit, or a quantity. In metres.
    pub(super) fn coordinate(&mut self, node: Node, what: &'static str) -> Option<f64> {
        match self.tree.kind(node) {
            Kind::Number => self.tree.number(node).map(|n| n * self.drawing_unit),
            Kind::String => {
                let tree = self.tree;
                let text = tree.string(node)?;
                let read = haulout_quantity::read(&text, Dimension::LENGTH);
                self.or_problem(node, what, read).map(|read| read.parts.value())
            }
            _ => {
                self.wrong(node, what, "a number in the unit of the drawing or a length");
                None
            }
        }
    }

    /// An angle inside a drawing, in radians.
    pub(super) fn angle(&mut self, node: Node, what: &'static str) -> Option<f64> {
        let Some(text) = self.tree.string(node).map(std::borrow::Cow::into_owned) else {
            self.wrong(node, what, "an angle such as \"30 deg\"");
            return None;
        };
        let read = haulout_quantity::read_angle(&text);
        self.or_problem(node, what, read).map(|read| read.parts.value())
    }

    pub(super) fn point_at<const N: usize>(
        &mut self,
        slot: Slot,
        cards: [&'static FieldCard; N],
    ) -> [Number<Length>; N] {
        let tree = self.tree;
        let items: Vec<Node> = match slot {
            Slot::Value(node, ..) if tree.kind(node) == Kind::Array && tree.len(node) == N => {
                tree.children(node).collect()
            }
            Slot::Value(node, ..) => {
                self.wrong(node, cards[0].what, if N == 2 { "a place [x, y]" } else { "a place [x, y, z]" });
                Vec::new()
            }
            Slot::Missing(..) => Vec::new(),
        };
        let (Slot::Value(_, origin, _) | Slot::Missing(origin, _)) = slot;
        let mut at = 0;
        cards.map(|card| {
            let node = items.get(at).copied();
            at += 1;
            let value = node.and_then(|n| self.coordinate(n, card.what));
            let state = match (value, slot) {
                (Some(value), _) => State::Given(Value {
                    parts: Parts::One(value),
                    unit: None,
                    standing: own_standing(card.role),
                }),
                (None, Slot::Missing(_, kind)) => Slot::state(kind),
                (None, Slot::Value(..)) => State::Absent,
            };
            let origin = node.map_or(origin, |n| Origin { through: origin.through, ..Origin::at(n.0) });
            let number = self.number_of(Seat { origin, what: card.what }, card, state);
            Number { moved: self.moved_along(at - 1).map(Box::new), ..number }
        })
    }

    pub(super) fn sexes_at(&mut self, slot: Slot, card: &'static FieldCard) -> [Number<Ratio>; 3] {
        let (origin, counts) = match slot {
            Slot::Missing(origin, kind) => (origin, Err(Some(kind))),
            Slot::Value(node, origin, _) => {
                let text = self.tree.string(node).unwrap_or_default().into_owned();
                let counts: Vec<f64> =
                    text.split('.').filter_map(|part| part.parse::<u16>().ok().map(f64::from)).collect();
                if counts.len() == 3 && text.split('.').count() == 3 {
                    (origin, Ok(counts))
                } else {
                    self.wrong(node, card.what, "males, females and unsexed animals as \"1.3.0\"");
                    (origin, Err(None))
                }
            }
        };
        [0_u8, 1, 2].map(|i| {
            let state = match &counts {
                Ok(counts) => State::Given(Value {
                    parts: Parts::One(counts[usize::from(i)]),
                    unit: None,
                    standing: own_standing(card.role),
                }),
                Err(Some(kind)) => Slot::state(*kind),
                Err(None) => State::Absent,
            };
            let seat = Seat { origin: origin.part(if counts.is_ok() { i + 1 } else { 0 }), what: card.what };
            self.number_of(seat, card, state)
        })
    }

    pub(super) fn option(
        &mut self,
        node: Node,
        card: &'static crate::card::ChoiceCard,
        standing: Option<Standing>,
    ) -> State<(u16, Standing)> {
        let tree = self.tree;
        let word = tree.string(node).unwrap_or_default();
        let standing = standing.unwrap_or(own_standing(card.role));
        match card.options.iter().position(|o| **o == *word) {
            Some(at) => State::Given((at as u16, standing)),
            None => {
                let expected = format!("one of {}", card.options.join(", "));
                self.wrong(node, card.what, &expected);
                State::Absent
            }
        }
    }

    pub(super) fn level_at(&mut self, slot: Slot, card: &'static FieldCard) -> Level {
        let (origin, state) = match slot {
            Slot::Missing(origin, kind) => (origin, Slot::state(kind)),
            Slot::Value(node, origin, _) if self.tree.kind(node) == Kind::Object => {
                (origin, self.hung_level(node, card))
            }
            Slot::Value(..) => {
                let number: Number<Length> = self.number_at(slot, card);
                let origin = number.seat.origin;
                let state = match number.state {
                    State::Given(_) => State::Given(LevelExpr::At(number)),
                    State::Undecided => State::Undecided,
                    State::None => State::None,
                    State::Absent => State::Absent,
                };
                (origin, state)
            }
        };
        Level { seat: Seat { origin, what: card.what }, state }
    }

    fn hung_level(&mut self, node: Node, card: &'static FieldCard) -> State<LevelExpr> {
        let above = self.tree.member(node, "above");
        let below = self.tree.member(node, "below");
        let (of, up) = match (above, below) {
            (Some(of), None) => (of, true),
            (None, Some(of)) => (of, false),
            _ => {
                self.wrong(
                    node,
                    card.what,
                    "{\"above\": a level, \"by\": a length} or {\"below\": …, \"by\": …}",
                );
                return State::Absent;
            }
        };
        let Some(by) = self.tree.member(node, "by") else {
            self.wrong(node, card.what, "\"by\": a length beside \"above\" or \"below\"");
            return State::Absent;
        };
        let slot = self.value(by, None);
        let by = self.number_at(slot, card);
        match self.reference_at(of, None, card.what) {
            Some(of) => State::Given(LevelExpr::From { of, above: up, by }),
            None => State::Absent,
        }
    }
}

const fn expected(form: Form) -> &'static str {
    match form {
        Form::Quantity | Form::Difference => "a string with a unit",
        Form::Band => "a string with a unit, one value or a range such as \"24 to 27 °C\",",
        Form::Slope => "a slope such as \"1 in 4\" or \"14 deg\"",
        Form::Plain => "a number without unit",
        Form::Share => "a number between 0 and 1 or a string such as \"40 %\"",
        Form::Count => "a whole number",
    }
}
