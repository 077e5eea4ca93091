//! Levels, sums and what else is worked by the rules of arithmetic, by hand.

use haulout_quantity::Basis::{self, Published};

use super::{Row, sheet};

const HAND: (&str, Basis) = ("by hand", Published);
const VOIDS: (&str, Basis) = (
    "by hand; 40 % of voids in a loose bed of round gravel is a figure to reckon with, not a source",
    Published,
);

const fn m(formula: &'static str, what: &'static str, given: &'static [f64], expected: f64) -> Row {
    sheet(formula, what, HAND, given, (expected, "m", 1e-12))
}

const fn yes(formula: &'static str, what: &'static str, given: &'static [f64], expected: f64) -> Row {
    sheet(formula, what, HAND, given, (expected, "", 0.0))
}

pub(super) const ROWS: &[Row] = &[
    m("level above another", "0.80 m and 0.05 m", &[0.80, 0.05], 0.85),
    m("level below another", "0.80 m less 0.03 m", &[0.80, 0.03], 0.77),
    m("difference of levels", "0.80 m less 0.20 m", &[0.80, 0.20], 0.60),
    m("height of one level over another", "1.10 m over -0.20 m", &[1.10, -0.20], 1.30),
    m("height over a level", "2.50 m over 0.95 m", &[2.50, 0.95], 1.55),
    m("the higher of rim and floor", "rim lower", &[0.30, 0.45], 0.45),
    m("lowest point of an item", "case 0.1 m, cord 1 m", &[2.5, 0.1, 1.0], 1.4),
    m("depth of the top of an item", "water 0.80 m, item 0.20 m, case 0.1 m", &[0.80, 0.20, 0.1], 0.50),
    m(
        "difference between depth and bed level",
        "0.40 m below 0.80 m, bed at 0.30 m",
        &[0.80, 0.40, 0.30],
        0.10,
    ),
    m("difference between depth and bed level", "the other way", &[0.80, 0.40, 0.50], 0.10),
    m("nothing, as the file says", "none", &[1.0], 0.0),
    m("largest of lengths", "of three", &[0.2, 0.7, 0.3], 0.7),
    m("least of lengths", "of three", &[0.2, 0.7, 0.3], 0.2),
    m("widest opening of a barrier of its kind and face", "8 mm", &[0.008, 0.0, 0.0], 0.008),
    m("what is left of a path when case and cord are taken off", "2.4 m less 1.1 m", &[2.4, 0.1, 1.0], 1.3),
    m("what is left of a path when case and cord are taken off", "nothing left", &[0.4, 0.1, 1.0], 0.0),
    sheet("product", "1 + 2 animals, 4 each", HAND, &[3.0, 4.0], (12.0, "", 0.0)),
    sheet("sum", "1.2.0", HAND, &[1.0, 2.0, 0.0], (3.0, "", 0.0)),
    sheet("sum of areas", "of three", HAND, &[1.5, 2.25, 0.25], (4.0, "m2", 1e-12)),
    sheet("sum of volumes", "of two", HAND, &[1.5, 2.25], (3.75, "m3", 1e-12)),
    sheet("bulk of a layer", "4 m2, 50 mm", HAND, &[4.0, 0.05], (0.2, "m3", 1e-12)),
    sheet("volume displaced", "0.5 m3 with 40 % of voids", VOIDS, &[0.5, 0.4, 0.0], (0.3, "m3", 1e-12)),
    sheet("volume displaced by something without voids", "0.5 m3", HAND, &[0.5, 0.0], (0.5, "m3", 1e-12)),
    sheet("net water volume", "4.8 m3 less 0.3 m3", HAND, &[4.8, 0.3], (4.5, "m3", 1e-12)),
    sheet("mean depth", "12.8 m3 over 16 m2", HAND, &[12.8, 16.0], (0.8, "m", 1e-12)),
    sheet("share of an area", "6 m2 of 24 m2", HAND, &[6.0, 24.0], (0.25, "", 1e-12)),
    yes("not so", "of yes", &[1.0], 0.0),
    yes("one if yes", "of yes", &[1.0], 1.0),
    yes("one if yes", "of no", &[0.0], 0.0),
    yes("more than", "0.5 m and 0.4 m", &[0.5, 0.4], 1.0),
    yes("more than", "3 ft in metres and 3 ft", &[0.914_400_000_000_000_1, 0.9144], 0.0),
    yes("the space is for visitors or animals", "for keepers", &[2.0], 0.0),
    sheet("coolest water", "28 °C less 2 K", HAND, &[301.15, 2.0], (299.15, "K", 1e-12)),
    sheet("warmest water", "28 °C and 2 K", HAND, &[301.15, 2.0], (303.15, "K", 1e-12)),
];
