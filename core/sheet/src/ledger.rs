//! The sheet as the ledger of the model: stated values come in here, substitutions happen here.

use std::sync::Arc;

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::{ChoiceRoot, FieldCard, Ledger, Missing, NumberRoot, Origin, Patch, Standing};
use haulout_quantity::si::{Length, Ratio};
use haulout_quantity::{Basis, Dimension, Measure};

use crate::book::Sheet;
use crate::gap::{Gap, Gaps};
use crate::line::{Datum, Line, Made};
use crate::substitution::Substitution;

static COPIED: Formula<(Length, Length, Ratio), Length> = Formula {
    card: &FormulaCard {
        name: "place of a copy",
        result: "x",
        text: "x_1 + n × s",
        symbols: &["x_1", "s", "n"],
        kind: Kind::Closed,
        basis: Basis::Published,
        source: "arithmetic: the first place and the step so many times",
        range: "any",
    },
    run: |(first, step, times)| Ok(first + step * times),
};

impl Ledger for Sheet<'_> {
    type Line<T: 'static> = Line<T>;
    type Gap = Gaps;

    fn number<Q: Measure>(self, root: NumberRoot) -> Line<Q> {
        Line::new(self.book.root(root.origin, || {
            let value = self.book.substituted(root.origin).unwrap_or(root.value);
            let made = Made::Stated { origin: root.origin, standing: root.standing, card: Some(root.card) };
            (Datum::Number(value), Q::DIMENSION, root.unit, made)
        }))
    }

    fn moved<Q: Measure>(
        self,
        root: NumberRoot,
        step: NumberRoot,
        times: NumberRoot,
    ) -> Result<Line<Q>, Gaps> {
        // Only places are repeated, so the kind asked for is a length.
        let (here, step, times) = (self.number(root), self.number(step), self.number(times));
        self.work(&COPIED, (here, step, times)).map(|line: Line<Length>| Line::new(line.id()))
    }

    fn default<Q: Measure>(self, origin: Origin, card: &'static FieldCard) -> Line<Q> {
        let default = card.default.as_ref().expect("a number asks for a default only when its card has one");
        Line::new(self.book.root(origin, || {
            (Datum::Number(default.value), Q::DIMENSION, None, Made::Default(origin, card, default))
        }))
    }

    fn choice<T: 'static>(self, root: ChoiceRoot) -> Line<T> {
        Line::new(self.book.root(root.origin, || {
            let option = self.book.substituted(root.origin).unwrap_or(f64::from(root.option));
            let made = Made::Stated { origin: root.origin, standing: root.standing, card: None };
            (Datum::Number(option), Dimension::NUMBER, None, made)
        }))
    }

    fn thing<T: Send + Sync + 'static>(
        self,
        origin: Origin,
        end: u32,
        standing: Standing,
        make: impl FnOnce(Patch<'_>) -> T,
    ) -> Line<Arc<T>> {
        Line::new(self.book.root(origin, || {
            let inside = |s: &&Substitution| (origin.node..end).contains(&s.node);
            let patch = |node: u32| {
                self.book.substitutions.iter().filter(inside).find(|s| s.node == node).map(|s| s.value)
            };
            let made = Made::Stated { origin, standing, card: None };
            (Datum::Thing(Arc::new(make(&patch))), Dimension::NUMBER, None, made)
        }))
    }

    fn missing(self, missing: Missing) -> Gaps {
        Gap::from(missing).into()
    }
}
