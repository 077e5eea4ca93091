//! Ammonia and filters against printed tables and hand-worked numbers.

use haulout_quantity::Basis::{self, Published, Recalled};

use super::{Row, sheet};

const HAND: (&str, Basis) = ("by hand", Published);
const TABLE: (&str, Basis) = (
    "Emerson and others (1975), table of percent un-ionised ammonia in fresh water, as it is remembered",
    Recalled,
);

pub(super) const ROWS: &[Row] = &[
    sheet("un-ionised share of ammonia", "pH 7, 25 °C: 0.566 %", TABLE, &[7.0, 298.15], (0.00566, "", 5e-3)),
    sheet("un-ionised share of ammonia", "pH 8, 25 °C: 5.38 %", TABLE, &[8.0, 298.15], (0.0538, "", 5e-3)),
    sheet("un-ionised share of ammonia", "pH 9, 25 °C: 36.3 %", TABLE, &[9.0, 298.15], (0.363, "", 5e-3)),
    sheet("un-ionised share of ammonia", "pH 8, 20 °C: 3.82 %", TABLE, &[8.0, 293.15], (0.0382, "", 5e-3)),
    sheet("un-ionised ammonia", "a twentieth of 0.4 mg/L", HAND, &[0.05, 4e-4], (2e-5, "kg/m3", 1e-12)),
    sheet(
        "total ammonia of a feed",
        "0.1 kg of 40 % protein",
        HAND,
        &[0.1, 0.4, 1.0],
        (3.68e-3, "kg/s", 1e-12),
    ),
    sheet(
        "up-flow through the bed",
        "3.6 m3/h over 3.6 m2",
        HAND,
        &[1e-3, 3.6],
        (2.777777777777778e-4, "m/s", 1e-12),
    ),
];
