//! Humid air, evaporation, layers and warming against a library, printed pools and hand-worked numbers.

#![allow(clippy::approx_constant, reason = "a density of air happens to look like a constant of mathematics")]

use haulout_quantity::Basis::{self, Published, Reported};

use super::{Row, sheet};

const HAND: (&str, Basis) = ("by hand", Published);
const AIR: (&str, Basis) =
    ("CoolProp 8.0.0, HAPropsSI at 101 325 Pa: real air against a mixture of ideal gases", Published);
const LATENT: (&str, Basis) =
    ("CoolProp 8.0.0, PropsSI('H', 'T', T, 'Q', 1, 'Water') less the same at 'Q', 0", Published);
const POOL: (&str, Basis) = (
    "20 m2 of water at 28 °C under air of 30 °C and 60 %: 3 782.21 and 2 547.62 Pa by PsychroLib 2.5.0; 0.1 lb/h for a square foot and an inch of mercury, 3.924 lb/h",
    Reported,
);

pub(super) const ROWS: &[Row] = &[
    sheet("vapour pressure of air", "25 °C, 60 %", AIR, &[0.6, 3_169.9], (1_909.996_089, "Pa", 5e-3)),
    sheet("humidity ratio", "25 °C, 60 %", AIR, &[1_909.996_089], (0.011_949_026_5, "", 6e-3)),
    sheet("humidity ratio", "28 °C, saturated", AIR, &[3_799.338_744], (0.024_229_312_6, "", 6e-3)),
    sheet(
        "dry air in humid air",
        "30 °C, 60 %",
        AIR,
        &[2_559.307_084, 303.15],
        (1.135_422_711, "kg/m3", 1e-3),
    ),
    sheet(
        "dry air in humid air",
        "20 °C, 50 %",
        AIR,
        &[1_174.488_985, 293.15],
        (1.190_674_854, "kg/m3", 1e-3),
    ),
    sheet(
        "evaporation by activity factor",
        "factor 0.5",
        POOL,
        &[20.0, 0.5, 3_782.21, 2_547.62],
        (1.780 / 3600.0, "kg/s", 3e-3),
    ),
    sheet("heat of evaporation", "10 °C", LATENT, &[1.0, 283.15], (2_477_187.063, "W", 1e-4)),
    sheet("heat of evaporation", "25 °C", LATENT, &[1.0, 298.15], (2_441_676.175, "W", 1e-4)),
    sheet("heat of evaporation", "40 °C", LATENT, &[1.0, 313.15], (2_405_977.287, "W", 1e-4)),
    sheet("evaporation of the open surface", "a tenth covered", HAND, &[2.0, 0.1], (1.8, "kg/s", 1e-12)),
    sheet("evaporation with falls and spray", "twice", HAND, &[2.0, 2.0], (4.0, "kg/s", 1e-12)),
    sheet("fall by evaporation", "1 kg/s off 10 m2", HAND, &[1.0, 1000.0, 10.0], (1e-4, "m/s", 1e-12)),
    // 6 mm of evaporation and 3 mm beside it in 86 400 s.
    sheet(
        "fall beyond which a pool leaks",
        "6 mm and 3 mm a day",
        HAND,
        &[0.006 / 86_400.0, 0.003 / 86_400.0],
        (1.041_666_667e-7, "m/s", 1e-9),
    ),
    sheet("heat through a layer", "36 mW/(m K), 50 mm", HAND, &[0.036, 0.05], (0.72, "W/(m2 K)", 1e-12)),
    sheet(
        "heat through a surface",
        "2 W/(m2 K), 3 m2, 5 K",
        HAND,
        &[2.0, 3.0, 298.15, 293.15],
        (30.0, "W", 1e-9),
    ),
    sheet("area of the walls", "10 m, half a metre", HAND, &[10.0, 0.5], (5.0, "m2", 1e-12)),
    // 0.8 m3 a day by 17.5 K: 997 × 0.8 / 86400 × 4181.3 × 17.5.
    sheet(
        "heat of the renewed water",
        "0.8 m3/d, 17.5 K",
        HAND,
        &[997.0, 0.8 / 86_400.0, 4181.3, 298.15, 280.65],
        (675.496, "W", 1e-4),
    ),
    // 5 m3 by 10 K in 24 h: 2.417 kW at 999 kg/m3 and 4180 J/(kg K).
    sheet(
        "change of temperature",
        "2.417 kW, 24 h, 5 m3",
        HAND,
        &[2417.0, 86_400.0, 999.0, 5.0, 4180.0],
        (10.0, "K", 1e-3),
    ),
    sheet(
        "warmed water",
        "the same from 20 °C",
        HAND,
        &[293.15, 2417.0, 86_400.0, 999.0, 5.0, 4180.0],
        (303.15, "K", 1e-4),
    ),
    sheet(
        "time to cool",
        "the same back",
        HAND,
        &[303.15, 293.15, 2417.0, 999.0, 5.0, 4180.0],
        (86_400.0, "s", 1e-3),
    ),
    // e^-1 of the difference is left after one volume.
    sheet(
        "temperature after a fill",
        "one volume",
        HAND,
        &[298.15, 288.15, 1.0, 1.0, 1.0],
        (291.828_794_4, "K", 1e-9),
    ),
    sheet("vapour pressure of water", "20 °C, CoolProp 8.0.0", AIR, &[293.15], (2_339.318_183, "Pa", 1e-4)),
    // Under its least for a faint draught: 5e-5 × 1234.59 = 0.06173 kg/h for a square metre; dry air 1.1284 and 1.1351 kg/m3.
    sheet(
        "evaporation by density of the air",
        "faint draught",
        POOL,
        &[20.0, 1.1284, 1.1351, 0.024_12, 0.016_04, 3_782.21, 2_547.62],
        (1.235 / 3600.0, "kg/s", 1e-3),
    ),
    sheet("a cut-out of its own", "stated", HAND, &[302.15], (1.0, "", 1e-12)),
    sheet("alarm of the temperature", "the second kind", HAND, &[1.0], (1.0, "", 1e-12)),
    sheet("heater in line", "the first place", HAND, &[0.0], (1.0, "", 1e-12)),
    sheet("heater in the pool", "the second place", HAND, &[1.0], (1.0, "", 1e-12)),
    sheet("highest of temperatures", "two", HAND, &[293.15, 295.15], (295.15, "K", 1e-12)),
    sheet("lowest of temperatures", "two", HAND, &[301.15, 303.15], (301.15, "K", 1e-12)),
    sheet("installed over lost", "3 kW over 2.5 kW", HAND, &[3000.0, 2500.0], (1.2, "", 1e-12)),
    sheet("largest of rates", "two", HAND, &[1.0, 2.0], (2.0, "kg/s", 1e-12)),
    sheet("least of rates", "two", HAND, &[1.0, 2.0], (1.0, "kg/s", 1e-12)),
    sheet("layer behind the walls", "one behind them", HAND, &[0.72, 1.0], (0.72, "W/(m2 K)", 1e-12)),
    sheet("layer under the pool", "one under it", HAND, &[0.72, 0.0], (0.72, "W/(m2 K)", 1e-12)),
    // 1 / (0.05 / 0.036 + 0.15 / 1.7 + 0.13): 62.2229 W through 10 m2 at 10 K.
    sheet(
        "layers one behind the other",
        "foam, concrete, a film",
        HAND,
        &[0.72, 11.333_333, 7.692_308],
        (0.622_229, "W/(m2 K)", 1e-5),
    ),
    sheet("so much over the ceiling", "2 K over 28 °C", HAND, &[301.15, 2.0], (303.15, "K", 1e-12)),
    sheet("sum of times", "1 h and 2 h", HAND, &[3600.0, 7200.0], (10_800.0, "s", 1e-12)),
    sheet("water a heater in its place warms", "3 m3", HAND, &[3.0, 0.0], (3.0, "m3", 1e-12)),
];
