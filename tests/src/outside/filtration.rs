//! Nitrogen, ammonia, oxygen, beds and lips against printed tables, a library and hand-worked numbers.

use haulout_quantity::Basis::{self, Published, Reported};

use super::{Row, sheet};

const HAND: (&str, Basis) = ("by hand", Published);
const EMERSON: (&str, Basis) = (
    "table calculated from Emerson and others (1975), printed in Fundamentals of Aquatic Veterinary Medicine, table 1.4, to 4 decimals",
    Reported,
);
const TRUSSELL: (&str, Basis) = (
    "Trussell (1972), table in the manual of LaMotte's kit AG-104; other constants for the same equilibrium",
    Reported,
);
const EN25814: (&str, Basis) =
    ("EN 25814, table in ProMinent's manual Dulcotest DO 1, page 52, to 3 digits", Reported);
const FAO: (&str, Basis) = (
    "FAO Technical Paper 589 (2014), appendix 4 in translation: 200 g a day of 32 % protein hold 10.24 g of nitrogen",
    Reported,
);
const ERGUN: (&str, Basis) = ("fluids 1.3.1, packed_bed.Ergun over density and 9.80665", Published);
const ATOMS: (&str, Basis) = ("atomic masses N 14.007, O 15.999, H 1.008", Published);

const SHARE: &str = "un-ionised share of ammonia";
const SATURATION: &str = "oxygen at saturation";

pub(super) const ROWS: &[Row] = &[
    // Four decimals of a small number: half of the last one is the reason for what is allowed.
    sheet(SHARE, "pH 7.0, 20 °C", EMERSON, &[7.0, 293.15], (0.0039, "", 1.3e-2)),
    sheet(SHARE, "pH 7.6, 24 °C", EMERSON, &[7.6, 297.15], (0.0206, "", 2.5e-3)),
    sheet(SHARE, "pH 8.0, 20 °C", EMERSON, &[8.0, 293.15], (0.0381, "", 1.4e-3)),
    sheet(SHARE, "pH 8.0, 24 °C", EMERSON, &[8.0, 297.15], (0.0502, "", 1e-3)),
    sheet(SHARE, "pH 8.0, 30 °C", EMERSON, &[8.0, 303.15], (0.0743, "", 7e-4)),
    sheet(SHARE, "pH 8.6, 28 °C", EMERSON, &[8.6, 301.15], (0.2178, "", 3e-4)),
    sheet(SHARE, "pH 8.5, 20 °C", TRUSSELL, &[8.5, 293.15], (0.1118, "", 1e-2)),
    sheet("un-ionised ammonia", "a twentieth of 0.4 mg/L", HAND, &[0.05, 4e-4], (2e-5, "kg/m3", 1e-12)),
    sheet("fish share the water", "twenty of them", HAND, &[20.0], (1.0, "", 1e-12)),
    sheet("nitrogen of a feed", "0.2 kg of 32 % protein", FAO, &[0.2, 0.32], (0.010_24, "kg/s", 1e-12)),
    sheet("nitrogen of the largest day", "10 g by 1.5", HAND, &[0.01, 1.5], (0.015, "kg/s", 1e-12)),
    sheet("sum of rates", "1 and 2", HAND, &[1.0, 2.0], (3.0, "kg/s", 1e-12)),
    sheet("total ammonia of a feed", "0.1 kg of 40 %", HAND, &[0.1, 0.4, 1.0], (3.68e-3, "kg/s", 1e-12)),
    // 100 g: 0.25 of the 90 g eaten is 22.5 g, and half of the 10 g left was given in the water.
    sheet(
        "solids of a feed",
        "100 g, half in water, 10 % left",
        HAND,
        &[0.1, 0.5, 0.1],
        (0.0275, "kg/s", 1e-12),
    ),
    sheet(
        "surface of grains in a bulk volume",
        "10 mm, 40 % voids",
        HAND,
        &[0.4, 0.01],
        (360.0, "m2/m3", 1e-12),
    ),
    sheet(
        "surface of grains in a bulk volume",
        "half-inch gravel: 90 ft2/ft3",
        ("a pond builders' forum; equal balls of 12.7 mm with 40 % voids against real gravel", Reported),
        &[0.4, 0.0127],
        (295.3, "m2/m3", 5e-2),
    ),
    sheet("surface of a layer", "360 m2/m3, 3.6 m2, 0.4 m", HAND, &[360.0, 3.6, 0.4], (518.4, "m2", 1e-12)),
    sheet("surface of media", "600 m2/m3, 0.3 m3", HAND, &[600.0, 0.3], (180.0, "m2", 1e-12)),
    sheet("surface that works", "a fifth of 500 m2", HAND, &[500.0, 0.2], (100.0, "m2", 1e-12)),
    sheet("share believed", "50 % stated, 30 % believed", HAND, &[0.5, 0.3], (0.3, "", 1e-12)),
    sheet("surface of a filter without a bed", "a screen", HAND, &[5.0], (0.0, "m2", 1e-12)),
    sheet("surface of a filter with a bed", "gravel of 100 m2", HAND, &[0.0, 100.0], (100.0, "m2", 1e-12)),
    sheet("a filter with a bed", "a screen and gravel", HAND, &[5.0, 0.0], (1.0, "", 1e-12)),
    sheet("planted gravel", "the first kind", HAND, &[0.0], (1.0, "", 1e-12)),
    sheet(
        "removal of nitrogen at a temperature",
        "28 °C against 20 °C, 68 kJ/mol",
        ("Python 3 with math.exp: exp(68000 / 8.31 × 8 / (301.15 × 293.15)) = 2.099132", Published),
        &[1.0, 301.15],
        (2.099_131_789_921_304, "kg/m2/s", 1e-9),
    ),
    // FAO 589: 7.49568 g at 0.57 g/m2/d are 13.1503 m2.
    sheet("surface needed", "7.49568 g at 0.57 g/m2", FAO, &[7.49568, 0.57], (13.1503, "m2", 1e-5)),
    sheet(
        "up-flow through the bed",
        "3.6 m3/h over 3.6 m2",
        HAND,
        &[1e-3, 3.6],
        (2.777777777777778e-4, "m/s", 1e-12),
    ),
    // Printed to three digits: half of the last one.
    sheet(SATURATION, "5 °C", EN25814, &[278.15], (0.0128, "kg/m3", 4e-3)),
    sheet(SATURATION, "15 °C", EN25814, &[288.15], (0.0101, "kg/m3", 5e-3)),
    sheet(SATURATION, "20 °C", EN25814, &[293.15], (9.09e-3, "kg/m3", 6e-4)),
    sheet(SATURATION, "25 °C", EN25814, &[298.15], (8.26e-3, "kg/m3", 6e-4)),
    sheet(SATURATION, "30 °C", EN25814, &[303.15], (7.56e-3, "kg/m3", 7e-4)),
    sheet(
        "oxygen that the flow can leave in the bed",
        "5 m3/h with 7 mg/L: 600 g a day",
        HAND,
        &[5.0 / 3600.0, 7e-3, 8.26e-3, 2e-3],
        (0.6 / 86_400.0, "kg/s", 1e-12),
    ),
    sheet(
        "oxygen that the flow can leave in the bed",
        "12 mg/L stated, 8 mg/L at saturation",
        HAND,
        &[1.0, 12e-3, 8e-3, 2e-3],
        (6e-3, "kg/s", 1e-12),
    ),
    sheet(
        "oxygen that nitrification asks for",
        "1 g of nitrogen, two atoms of oxygen each twice: 63.996 / 14.007",
        ATOMS,
        &[1.0, 1.0, 1.0],
        // Printed as 4.57 in the trade.
        (4.568_858, "kg/s", 3e-4),
    ),
    sheet("bed that lives on the oxygen of its flow", "sand", HAND, &[4.0], (1.0, "", 1e-12)),
    sheet(
        "alkalinity used up",
        "1 g of nitrogen: 100.087 / 14.007",
        ATOMS,
        &[1.0],
        // Printed as 7.14 in the trade, 7.145 by today's masses.
        (7.145_499, "kg/s", 1e-3),
    ),
    sheet("brought in by the fill", "1 m3 of 5 g/m3", HAND, &[1.0, 5e-3], (5e-3, "kg/s", 1e-12)),
    sheet("sum of flows", "1 and 2", HAND, &[1.0, 2.0], (3.0, "m3/s", 1e-12)),
    sheet(
        "nitrate at rest",
        "6 g and 2 g a day in 1 m3 a day",
        HAND,
        &[6.0, 2.0, 1.0],
        (8.0, "kg/m3", 1e-12),
    ),
    sheet("nitrate as NO3", "62.004 / 14.007", ATOMS, &[1.0], (4.426_644, "kg/m3", 1e-4)),
    sheet(
        "nitrate after a time",
        "one volume renewed: 1 - e^-1 of the way is gone",
        ("Revisiting the Gage-Bidwell Law, Water 13 (2021) 2350: 63.2121 % after one turnover", Published),
        &[1.0, 0.0, 1.0, 10.0, 10.0],
        (0.632_121, "kg/m3", 1e-6),
    ),
    sheet("alkalinity at rest", "140 less 40 in 1 m3", HAND, &[40.0, 140.0, 1.0], (100.0, "kg/m3", 1e-12)),
    sheet("alkalinity to dose", "to hold 120 of it", HAND, &[40.0, 140.0, 1.0, 120.0], (20.0, "kg/s", 1e-12)),
    sheet("water is changed", "a litre", HAND, &[1e-3], (1.0, "", 1e-12)),
    sheet(
        "head lost in a clean layer",
        "0.8 mm, 40 %, 1 mm/s over 1 m",
        ERGUN,
        &[1e-3, 1.0, 0.4, 8e-4, 1e-3, 1e3],
        (0.136_526_457_811_790_93, "m", 1e-9),
    ),
    sheet(
        "head lost in a clean layer",
        "10 mm, 40 %, 1 mm/s over 1 m at 20 °C",
        ERGUN,
        &[1e-3, 1.0, 0.4, 0.01, 0.001_001_596_143_120_583, 998.207_150_467_943_7],
        (0.001_030_603_823_267_339_7, "m", 1e-9),
    ),
    sheet("sum of lengths", "1 and 2", HAND, &[1.0, 2.0], (3.0, "m", 1e-12)),
    // 100 g a day, 50 % of it, two days.
    sheet(
        "solids held until the next cleaning",
        "100 g over two days",
        HAND,
        &[0.1, 0.5, 2.0],
        (0.1, "kg", 1e-12),
    ),
    sheet(
        "ultraviolet dose at the delivered flow",
        "30 mJ/cm2 at 4 m3/h, at 5 m3/h",
        HAND,
        &[300.0, 4.0, 5.0],
        (240.0, "J/m2", 1e-12),
    ),
    sheet("bulk of the plenum", "3.6 m2 by 0.4 m", HAND, &[3.6, 0.4], (1.44, "m3", 1e-12)),
    sheet("time to flush the plenum once", "1 m3, 90 %, 1 m3/h", HAND, &[1.0, 0.9, 1.0], (0.9, "s", 1e-12)),
    sheet(
        "room over a crest in flow",
        "1.05 less 1.00 less 0.015",
        HAND,
        &[1.05, 1.0, 0.015],
        (0.035, "m", 1e-9),
    ),
    sheet("ultraviolet clarifier", "the last kind", HAND, &[7.0], (1.0, "", 1e-12)),
    sheet("head lost in the clogged bed", "2 mm twenty times", HAND, &[0.002, 20.0], (0.04, "m", 1e-12)),
    sheet("gravel fed from below", "the first kind, the first side", HAND, &[0.0, 0.0], (1.0, "", 1e-12)),
    sheet("open to the air", "a level", HAND, &[1.1], (1.0, "", 1e-12)),
    sheet("there is a flush", "3 m3/h", HAND, &[3.0], (1.0, "", 1e-12)),
    sheet("a stage before the bed", "a screen", HAND, &[5.0], (1.0, "", 1e-12)),
    sheet("screen with a mesh", "a mechanical screen", HAND, &[5.0], (1.0, "", 1e-12)),
    sheet("protein of a kind of feed", "dry", HAND, &[0.0, 0.25], (0.25, "", 1e-12)),
];
