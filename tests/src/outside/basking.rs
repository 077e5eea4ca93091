//! Room to lie dry, floats, and the depths an animal asks for and is seen in.

use haulout_quantity::Basis::{self, CommonPractice, Published, Reported};

use super::{Row, sheet};

const HAND: (&str, Basis) = ("by hand", Published);
const SHELLS: (&str, Basis) =
    ("keepers' practice: 1.5 shell lengths times breadths for each turtle, worked by hand", CommonPractice);
const CAIMAN: (&str, Basis) =
    ("keepers' practice: a total length by four tenths of it, worked by hand", CommonPractice);
const STANDS: (&str, Basis) =
    ("keepers' practice: 1.2 to 1.5 shell lengths standing on the hind legs, worked by hand", CommonPractice);
const SHEET: (&str, Basis) =
    ("a care sheet for sliders: 1.5 to 2 shell lengths deep, worked by hand", Reported);
const MONITOR: (&str, Basis) = (
    "exhibit practice: about 0.6 m of water covers a large monitor; 0.5 m of body and 0.1 m",
    CommonPractice,
);
const PLACES: (&str, Basis) = (
    "keepers' practice: a site for each of the first four animals, one for every three beyond, counted on fingers",
    CommonPractice,
);
const CLAWS: (&str, Basis) = (
    "Commission Recommendation 2007/526/EC, 4.3.1: haul-outs take claws, as wood does; not epoxy or polyurethane",
    Published,
);

const fn row(
    formula: &'static str,
    what: &'static str,
    source: (&'static str, Basis),
    given: &'static [f64],
    (expected, unit): (f64, &'static str),
) -> Row {
    sheet(formula, what, source, given, (expected, unit, 1e-12))
}

pub(super) const ROWS: &[Row] = &[
    row("area of a lying turtle", "20 by 15 cm", SHELLS, &[1.5, 0.20, 0.15, 0.0], (0.045, "m2")),
    row("area of a lying animal", "a caiman of 1.2 m", CAIMAN, &[1.0, 0.4, 1.2, 3.0], (0.576, "m2")),
    row("area all baskers of a group need at once", "ten", HAND, &[10.0, 0.045, 1.0], (0.45, "m2")),
    row("area animals that do not bask need", "nothing", HAND, &[0.0], (0.0, "m2")),
    row("area asked", "once and a half", HAND, &[1.5, 0.45], (0.675, "m2")),
    row("animals that bask", "ten of a kind that does", HAND, &[10.0, 1.0], (10.0, "")),
    row("animals that bask", "ten of a kind that does not", HAND, &[10.0, 0.0], (0.0, "")),
    row("some bask", "one", HAND, &[1.0], (1.0, "")),
    row("some bask", "none", HAND, &[0.0], (0.0, "")),
    row("dry area of a site", "0.10 m over the water", HAND, &[0.72, 0.10], (0.72, "m2")),
    row("dry area of a site", "just awash", HAND, &[0.72, 0.0], (0.0, "m2")),
    row("sites that stay dry", "two of three", HAND, &[0.72, 0.0, 0.3], (2.0, "")),
    row("sites asked", "three animals", PLACES, &[3.0, 4.0, 3.0], (3.0, "")),
    row("sites asked", "four animals", PLACES, &[4.0, 4.0, 3.0], (4.0, "")),
    row("sites asked", "five animals", PLACES, &[5.0, 4.0, 3.0], (5.0, "")),
    row("sites asked", "seven animals", PLACES, &[7.0, 4.0, 3.0], (5.0, "")),
    row("sites asked", "ten animals", PLACES, &[10.0, 4.0, 3.0], (6.0, "")),
    row("longest", "of three", HAND, &[0.18, 0.24, 0.21], (0.24, "m")),
    row("narrowest", "of three", HAND, &[0.18, 0.14, 0.21], (0.14, "m")),
    row("so many body lengths", "one and a half of 24 cm", HAND, &[1.5, 0.24], (0.36, "m")),
    row("greatest slope for the kind of body", "as the limit says", HAND, &[0.5, 0.0], (0.5, "")),
    row("surface that takes claws", "wood", CLAWS, &[0.0], (1.0, "")),
    row("surface that takes claws", "resin", CLAWS, &[6.0], (0.0, "")),
    row("surface that takes claws", "plastic", CLAWS, &[7.0], (0.0, "")),
    row("mass of a group", "seven of 1.3 kg", HAND, &[7.0, 1.3], (9.1, "kg")),
    row("sum of masses", "two groups", HAND, &[9.1, 3.0], (12.1, "kg")),
    row("load of a float against what it carries", "6 kg on 12 kg", HAND, &[6.0, 12.0], (0.5, "")),
    row("load a float must carry", "once and a half of 12.1 kg", HAND, &[1.5, 12.1], (18.15, "kg")),
    row("a turtle", "a turtle", HAND, &[0.0], (1.0, "")),
    row("a turtle", "a crocodilian", HAND, &[3.0], (0.0, "")),
    row("depth in which it rights itself swimming", "a turtle of 20 cm", HAND, &[0.20, 0.0], (0.20, "m")),
    row("depth in which it rights itself swimming", "a lizard", HAND, &[0.20, 1.0], (0.0, "m")),
    row(
        "deepest bed from which it reaches the air standing",
        "a bottom walker of 12 cm",
        STANDS,
        &[1.5, 0.12, 1.0, 20.0],
        (0.18, "m"),
    ),
    row(
        "deepest bed from which it reaches the air standing",
        "a swimmer",
        STANDS,
        &[1.5, 0.12, 0.0, 20.0],
        (20.0, "m"),
    ),
    row("deepest bed it rests on", "a hatchling of 5 cm", STANDS, &[1.2, 0.05, 0.20], (0.06, "m")),
    row("deepest bed it rests on", "24 cm, bounded", STANDS, &[1.2, 0.24, 0.20], (0.20, "m")),
    row(
        "depth in which it gets away",
        "a slider of 24 cm",
        SHEET,
        &[1.5, 0.24, 0.10, 0.10, 0.0],
        (0.36, "m"),
    ),
    row("depth in which it gets away", "a large monitor", MONITOR, &[1.5, 2.0, 0.50, 0.10, 1.0], (0.60, "m")),
    row("least depth that every demand is content with", "of two", HAND, &[0.15, 0.20], (0.20, "m")),
    row("greatest depth that every demand is content with", "of two", HAND, &[0.56, 0.36], (0.36, "m")),
    row("depth seen from the best of the positions", "of two", HAND, &[0.56, 0.71], (0.71, "m")),
];
