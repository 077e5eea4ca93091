//! Start-up: what media turn over, what a step adds, how arrivals are met, against printed advice and hand-worked numbers.

use haulout_quantity::Basis::{self, Published, Reported};

use super::{Row, sheet};

const HAND: (&str, Basis) = ("by hand", Published);
const AFLOAT: (&str, Basis) = (
    "advice to keepers of ornamental fish, a paper in a second-hand copy: about 30 min afloat for 4 to 5 °C, until within 2 °C; the bag is not stated, 3 to 5 L are usual, so this holds the order of size",
    Reported,
);

pub(super) const ROWS: &[Row] = &[
    sheet(
        "nitrogen that a surface turns over",
        "10 m2, half alive, 0.2 g/m2/d",
        HAND,
        &[10.0, 0.5, 2e-4],
        (1e-3, "kg/s", 1e-12),
    ),
    sheet("nitrogen that a step adds", "3 of 6 animals", HAND, &[0.004, 3.0, 6.0], (0.002, "kg/s", 1e-12)),
    sheet("oxygen where the bacteria live", "7 and 2 mg/L", HAND, &[0.007, 0.002], (0.0045, "kg/m3", 1e-12)),
    sheet(
        "difference of temperature of two waters",
        "bag colder",
        HAND,
        &[293.15, 298.15],
        (5.0, "K", 1e-12),
    ),
    sheet(
        "difference of temperature of two waters",
        "bag warmer",
        HAND,
        &[298.15, 293.15],
        (5.0, "K", 1e-12),
    ),
    sheet("time for which a bag floats", "5 L, 5 K", AFLOAT, &[0.005, 293.15, 298.15], (1800.0, "s", 0.2)),
    // 5581 s/m by a cube of 0.1 m by ln 5: 558.1 × 1.609438.
    sheet("time for which a bag floats", "1 L, 5 K", HAND, &[0.001, 293.15, 298.15], (898.227, "s", 1e-6)),
    sheet(
        "time for which a bag floats",
        "less than 1 K apart",
        HAND,
        &[0.003, 297.65, 298.15],
        (0.0, "s", 1e-12),
    ),
    sheet("time in which waters are mixed", "half a unit of pH", HAND, &[7.1, 7.6], (3600.0, "s", 1e-9)),
    sheet("largest of the waters", "2 of 1 and 2", HAND, &[1.0, 2.0], (2.0, "kg/m3", 1e-12)),
    sheet("latest of the waters", "2 of 1 and 2", HAND, &[1.0, 2.0], (2.0, "s", 1e-12)),
    sheet("longest of the pools", "2 of 1 and 2", HAND, &[1.0, 2.0], (2.0, "s", 1e-12)),
    sheet("widest of the pools", "2 of 1 and 2", HAND, &[1.0, 2.0], (2.0, "K", 1e-12)),
    sheet("media moved in", "a tenth of a cubic metre", HAND, &[0.1], (1.0, "", 1e-12)),
    sheet("media moved in", "nothing", HAND, &[0.0], (0.0, "", 1e-12)),
    sheet("ammonia dosed", "nothing", HAND, &[0.0], (0.0, "", 1e-12)),
    sheet("some come", "two of them", HAND, &[2.0], (1.0, "", 1e-12)),
    sheet("material that gives off lime", "concrete, the second kind", HAND, &[1.0], (1.0, "", 1e-12)),
    sheet("material that gives off lime", "galvanised steel, the third", HAND, &[2.0], (0.0, "", 1e-12)),
    sheet("material that poisons water", "treated timber, the seventh", HAND, &[6.0], (1.0, "", 1e-12)),
    sheet("material that poisons water", "a liner, the ninth", HAND, &[8.0], (0.0, "", 1e-12)),
    sheet("material that cures", "a sealant, the eighth", HAND, &[7.0], (1.0, "", 1e-12)),
    sheet("material that cures", "a liner, the ninth", HAND, &[8.0], (0.0, "", 1e-12)),
];
