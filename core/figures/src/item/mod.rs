//! Figures about an electrical item and the water near it.

pub mod height;
pub mod ingress;
pub mod kind;
pub mod path;
pub mod supply;
pub mod water;
pub mod zone;

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_model::electrical::Item;
use haulout_model::{About, ChoiceRoot, Ledger, Number, Standing, Subject};
use haulout_quantity::si::Length;
use haulout_quantity::{Basis, Measure};
use haulout_sheet::{FigureCard, Known, Line, Sheet};

/// A formula about items that picks or decides: none of them is an expression.
pub(crate) const fn pick(
    name: &'static str,
    result: &'static str,
    text: &'static str,
    symbols: &'static [&'static str],
    source: &'static str,
) -> FormulaCard {
    FormulaCard {
        name,
        result,
        text,
        symbols,
        kind: Kind::Pick,
        basis: Basis::Published,
        source,
        range: "any item",
    }
}

/// The card of a length about an item and a pool.
pub(crate) const fn length_card(
    id: &'static str,
    title: &'static str,
    axes: &'static [haulout_sheet::Axis],
) -> FigureCard {
    FigureCard { id, title, about: About::ItemPool, axes, unit: "m", us_unit: "ft", resolution: None }
}

/// The item of a subject.
pub(crate) fn item(sheet: Sheet<'_>, at: Subject) -> &Item {
    let part = at.part(About::Item).expect("figures of items are about items");
    &sheet.design().electrical.items.items()[part.index()]
}

/// The pool of a subject.
pub(crate) fn pool_of(at: Subject) -> Subject {
    at.part(About::Pool).expect("figures of an item near water are about a pool too")
}

static NOTHING: Formula<(bool,), Length> = Formula {
    card: &pick("nothing, as the file says", "l", "0 m where there is none", &["said"], "definition"),
    run: |(_said,)| Ok(Length::from_si(0.0)),
};

/// A line that says that the file says `"none"` here, as a no with its place.
pub(crate) fn said_none(sheet: Sheet<'_>, origin: haulout_model::Origin) -> Line<bool> {
    sheet.choice(ChoiceRoot { origin, option: 0, standing: Standing::Settled, card: None })
}

/// A length that may be said to be none: a fixed item has no cord.
fn length_or_none(sheet: Sheet<'_>, field: &Number<Length>) -> Known<Line<Length>> {
    if field.is_none() {
        return sheet.work(&NOTHING, (said_none(sheet, field.seat().origin),));
    }
    field.on(sheet)
}

/// How far the item's case reaches from its centre.
pub(crate) fn extent(sheet: Sheet<'_>, item: &Item) -> Known<Line<Length>> {
    length_or_none(sheet, &item.extent)
}

/// How far its cord lets it go.
pub(crate) fn cord(sheet: Sheet<'_>, item: &Item) -> Known<Line<Length>> {
    length_or_none(sheet, &item.cord)
}
