//! Yes and no as lines, so that what decides whether a rule applies is on the sheet too.

use haulout_calc::formula::{Formula, FormulaCard, Kind};
use haulout_quantity::si::{Length, Ratio};
use haulout_quantity::{Basis, Measure};

const fn pick(name: &'static str, text: &'static str, symbols: &'static [&'static str]) -> FormulaCard {
    FormulaCard {
        name,
        result: "yes",
        text,
        symbols,
        kind: Kind::Pick,
        basis: Basis::Published,
        source: "definition",
        range: "stated values",
    }
}

fn half(number: Ratio) -> bool {
    number.value > 0.5
}

/// Option numbers of the field "closure".
const LID: u16 = 1;

/// A habit that is 1 or 0.
pub(super) static HAS: Formula<(Ratio,), bool> =
    Formula { card: &pick("has the habit", "habit is yes", &["habit"]), run: |(habit,)| Ok(half(habit)) };

/// Turtles and crocodilians are held by height.
pub(super) static BY_HEIGHT: Formula<(Ratio,), bool> = Formula {
    card: &pick("held by the height of a wall", "body is turtle or crocodilian", &["body"]),
    run: |(body,)| Ok(!(0.5..2.5).contains(&body.value)),
};

/// Lizards and snakes that climb or jump are held by a closed top.
pub(super) static BY_ROOF: Formula<(Ratio, Ratio, Ratio), bool> = Formula {
    card: &pick(
        "held by a closed top only",
        "body is lizard or snake, and it climbs or jumps",
        &["body", "climbs", "jumps"],
    ),
    run: |(body, climbs, jumps)| Ok((0.5..2.5).contains(&body.value) && (half(climbs) || half(jumps))),
};

/// The top of the enclosure is open.
pub(super) static IS_OPEN: Formula<(u16,), bool> = Formula {
    card: &pick("open at the top", "closure is open", &["closure"]),
    run: |(closure,)| Ok(closure != LID),
};

/// The top of the enclosure is closed.
pub(super) static IS_LIDDED: Formula<(u16,), bool> = Formula {
    card: &pick("closed at the top", "closure is a lid", &["closure"]),
    run: |(closure,)| Ok(closure == LID),
};

/// The space is for animals.
pub(super) static FOR_ANIMALS: Formula<(u16,), bool> =
    Formula { card: &pick("a space for animals", "for is animals", &["for"]), run: |(whom,)| Ok(whom == 1) };

/// A yes as a number, so that it can be counted and asked for by a house.
pub(super) static ONE_IF: Formula<(bool,), Ratio> = Formula {
    card: &FormulaCard { result: "number", ..pick("one if yes", "1 if it is yes, 0 if it is no", &["it"]) },
    run: |(it,)| Ok(Ratio::from_si(f64::from(it))),
};

/// Not so.
pub(super) static NOT: Formula<(bool,), bool> =
    Formula { card: &pick("not so", "not it", &["it"]), run: |(it,)| Ok(!it) };

/// One length is more than another; the same, typed in other units, is not more.
pub(super) static MORE_THAN: Formula<(Length, Length), bool> = Formula {
    card: &pick("more than", "a is more than b", &["a", "b"]),
    run: |(a, b)| Ok(a.value > b.value + 1e-9 * b.value.abs()),
};
