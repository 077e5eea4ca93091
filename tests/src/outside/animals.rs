//! Animals, what holds them, and how far one sees them.

use haulout_quantity::Basis::{self, Published, Recalled, Reported};

use super::{Row, sheet};

const TABLE: (&str, Basis) = (
    "Directive 2010/63/EU, Annex III, Section B, Table 10.1 (aquatic chelonians), as reproduced on legislation.gov.uk",
    Published,
);
const KEEPERS: (&str, Basis) =
    ("keepers' guides (jiyushe.com; thatbiz.org): twice the shell length; 0.1 m added, by hand", Reported);
const WOLTZ: (&str, Basis) =
    ("Woltz, Gibbs & Ducey 2008, Biol. Conserv. 141:2745 (abstract): 0.3 m held painted turtles", Reported);
const ORDERS: (&str, Basis) =
    ("kinds of body: 0 turtle, 1 lizard, 2 snake, 3 crocodilian, by zoology", Published);
const HAND: (&str, Basis) = ("by hand", Published);
const DISC: (&str, Basis) =
    ("0.7 of the depth at which a Secchi disc goes out of sight; the factor is recalled", Recalled);

/// The six rows of the table, upper ends and depths in metres, behind a length.
macro_rules! in_table {
    ($length:expr) => {
        &[$length, 0.05, 0.10, 0.10, 0.15, 0.15, 0.20, 0.20, 0.30, 0.30, 0.35, 3.0, 0.40]
    };
}

const fn depth(what: &'static str, given: &'static [f64], expected: f64) -> Row {
    sheet("row of a table by size", what, TABLE, given, (expected, "m", 0.0))
}

const fn m(
    formula: &'static str,
    what: &'static str,
    source: (&'static str, Basis),
    given: &'static [f64],
    e: f64,
) -> Row {
    sheet(formula, what, source, given, (e, "m", 1e-12))
}

const fn yes(
    formula: &'static str,
    what: &'static str,
    source: (&'static str, Basis),
    given: &'static [f64],
    e: f64,
) -> Row {
    sheet(formula, what, source, given, (e, "", 0.0))
}

pub(super) const ROWS: &[Row] = &[
    depth("depth for 4 cm", in_table!(0.04), 0.10),
    depth("depth for 10 cm", in_table!(0.10), 0.15),
    depth("depth for 12 cm", in_table!(0.12), 0.20),
    depth("depth for 20 cm", in_table!(0.20), 0.30),
    depth("depth for 24 cm", in_table!(0.24), 0.35),
    depth("depth for 31 cm", in_table!(0.31), 0.40),
    m("barrier height that holds a turtle", "24 cm", KEEPERS, &[2.0, 0.24, 0.1, 0.3, 0.0], 0.58),
    m("barrier height that holds a turtle", "5 cm", WOLTZ, &[2.0, 0.05, 0.1, 0.3, 0.0], 0.30),
    m("barrier height by the kind of body", "1.2 m for a caiman", HAND, &[1.2, 3.0], 1.2),
    m("depth that covers the animal", "10 cm and 50 mm", HAND, &[0.10, 0.05], 0.15),
    m("level of a tank-mate's back", "10 cm on a rock at 0.30 m", HAND, &[0.30, 0.10], 0.40),
    m("reach sideways", "1.5 of 1.4 m", HAND, &[1.5, 1.4, 3.0], 2.1),
    m("share of a length", "half of 40 mm", HAND, &[0.5, 0.040], 0.020),
    m(
        "height of a smooth barrier above the highest footing",
        "1.10 m over 0.40 m",
        HAND,
        &[1.10, 0.40, 0.0],
        0.70,
    ),
    m(
        "height of the smooth part of a barrier above the highest footing",
        "smooth from 0.60 m",
        HAND,
        &[1.10, 0.40, 0.60],
        0.50,
    ),
    m(
        "height of the smooth part of a barrier above the highest footing",
        "footing over it",
        HAND,
        &[1.10, 0.80, 0.60],
        0.30,
    ),
    m(
        "height of a rough barrier above the highest footing",
        "for one that climbs",
        HAND,
        &[1.10, 0.40, 1.0, 1.0],
        0.0,
    ),
    m(
        "height of a rough barrier above the highest footing",
        "for one that does not",
        HAND,
        &[1.10, 0.40, 1.0, 0.0],
        0.70,
    ),
    m("height of a rough barrier above the highest footing", "mesh", HAND, &[1.10, 0.40, 2.0, 0.0], 0.0),
    m("sight path in water", "clarity 0.9 m", DISC, &[0.7, 0.9], 0.63),
    yes("held by the height of a wall", "turtle", ORDERS, &[0.0], 1.0),
    yes("held by the height of a wall", "snake", ORDERS, &[2.0], 0.0),
    yes("held by the height of a wall", "crocodilian", ORDERS, &[3.0], 1.0),
    yes("held by a closed top only", "a lizard that jumps", ORDERS, &[1.0, 0.0, 1.0], 1.0),
    yes("held by a closed top only", "a turtle that climbs", ORDERS, &[0.0, 1.0, 0.0], 0.0),
    yes("has the habit", "yes", HAND, &[1.0], 1.0),
    yes("a space for animals", "the option animals", HAND, &[1.0], 1.0),
    yes("open at the top", "open", HAND, &[0.0], 1.0),
    yes("closed at the top", "lid", HAND, &[1.0], 1.0),
];
