//! Weirs, overflow mouths, streams, and the waters that run back, are lost and come in again.

use haulout_calc::geometry::{farthest_along, rectangle};
use haulout_calc::hydraulics::channel::{NORMAL_DEPTH, NORMAL_DEPTH_SLOPED};
use haulout_calc::hydraulics::mouth::{CREST_BEHIND_GRILLE, PIPE_MOUTHS, PIPES_BEHIND_GRILLE};
use haulout_calc::hydraulics::weir::{
    FLOW_CONTRACTED, FLOW_NOTCH, FLOW_OVER, HEAD_CONTRACTED, HEAD_NOTCH, ROUND, SHARP,
};
use haulout_quantity::Basis::{self, Published, Reported};
use haulout_quantity::Measure;
use haulout_quantity::si::{Angle, Area, Length, Ratio, VolumeRate};

use super::{Row, call, sheet};

const HAND: (&str, Basis) = ("by hand", Published);
const FRANCIS: (&str, Basis) = (
    "Francis in feet: 3.33 L H^1.5 and 3.33 (L - 0.2 H) H^1.5 (Water Measurement Manual, US Bureau of Reclamation); L 2 ft, H 0.5 ft",
    Reported,
);
const BROAD: (&str, Basis) = (
    "open teaching sheets on open channels, broad crest: 1.705 b H^1.5 with b 0.9 m, H 0.35 m; 1.705 is rounded from 1.7046",
    Reported,
);
const REHBOCK: (&str, Basis) = (
    "fluids 1.3.1, Q_weir_rectangular_full_Rehbock(h, 50, 1): its coefficient rises with the head, hence 2 %",
    Published,
);
const NOTCH: (&str, Basis) = (
    "8/15 × 0.578 × sqrt(2 × 9.80665) × (0.1 + k)^2.5 for 90° with k 0.85 mm of ISO 1438, worked in floating point",
    Reported,
);
const NOTCH_US: (&str, Basis) = (
    "the same with k 0.884 mm of the US Water Measurement Manual: 0.085 % more, so 1e-3 is allowed",
    Reported,
);
const CONE: (&str, Basis) = (
    "cone formula 2.49 h^2.48 in feet for a 90° notch, an older fit of the same tests: 1 % is allowed",
    Reported,
);
const QUAD: (&str, Basis) = (
    "scipy.integrate.quad of 0.6 × 2 sqrt(y (D - y)) sqrt(2 × 9.80665 (h - y)) over the wetted height",
    Published,
);
const BRENT: (&str, Basis) = (
    "scipy.optimize.brentq on the head shared by grille and mouth, with quad as in the rows above",
    Published,
);
const ORIFICE: (&str, Basis) = (
    "0.6 A sqrt(2 g h) to the middle of the opening; at the depth of two bores it is 0.6 % high, at fourteen 4e-5",
    Published,
);
const MANNING: (&str, Basis) = (
    "fluids 1.3.1, V_Manning(Rh=0.05/0.7, S=0.01, n=0.04) × 0.05 m2 = 0.02151912735870871 m3/s at 0.1 m",
    Published,
);
const CENGEL: (&str, Basis) = (
    "Çengel & Cimbala, trapezoid of 0.8 m with sides of 60°, 0.52 m deep, fall 0.3°, n 0.030; fluids 1.3.1 V_Manning(0.2859307, 0.0052360, 0.030) gives 0.59892298 m3/s",
    Reported,
);
const VIGNETTE: (&str, Basis) = (
    "printed case of the R library hydraulics: 360 ft3/s, n 0.015, sides 1 in 1, bottom 20 ft, 3 ft deep; with 1.486 the fall is 0.000853, to three digits",
    Reported,
);

const HEADER: (&str, Basis) =
    ("fluids 1.3.1, friction_factor, K_from_f, head_from_K with roughness 1.5 µm", Published);

fn m(value: f64) -> Length {
    Length::from_si(value)
}

fn r(value: f64) -> Ratio {
    Ratio::from_si(value)
}

fn q(value: f64) -> VolumeRate {
    VolumeRate::from_si(value)
}

fn si<Q: Measure, E>(worked: Result<Q, E>) -> f64 {
    worked.map_or(f64::NAN, Measure::si)
}

fn right_angle() -> Angle {
    Angle::from_si(std::f64::consts::FRAC_PI_2)
}

fn sloped(flow: f64, width: f64, side: f64, slope: f64, n: f64) -> f64 {
    si(NORMAL_DEPTH_SLOPED.work((q(flow), m(width), r(side), r(slope), r(n))))
}

fn mouth(head: f64, bore: f64) -> f64 {
    si(PIPE_MOUTHS.work((m(head), m(bore), r(1.0))))
}

fn behind(head: f64, bore: f64, count: f64, net: f64) -> f64 {
    si(PIPES_BEHIND_GRILLE.work((m(head), m(bore), r(count), Area::from_si(net), r(0.5))))
}

fn bank(places: &[[f64; 2]]) -> f64 {
    let pool = rectangle([0.0, 0.0], [4.0, 2.0], 0.0, 0.0);
    pool.ok().and_then(|pool| farthest_along(&pool, places)).unwrap_or(f64::NAN)
}

const FOOT: f64 = 0.3048;
const CUBIC_FOOT: f64 = FOOT * FOOT * FOOT;

const fn quad(what: &'static str, work: fn() -> f64, expected: f64) -> Row {
    call("flow into pipe ends", what, QUAD, work, (expected, "m3/s", 1e-7))
}

const fn hand(
    formula: &'static str,
    what: &'static str,
    given: &'static [f64],
    expected: (f64, &'static str, f64),
) -> Row {
    sheet(formula, what, HAND, given, expected)
}

pub(super) const ROWS: &[Row] = &[
    call(
        "flow over a crest",
        "full width, 2 ft",
        FRANCIS,
        || si(FLOW_OVER.work((r(SHARP), m(2.0 * FOOT), m(0.5 * FOOT)))) / CUBIC_FOOT,
        (2.354_665, "ft3/s", 1e-6),
    ),
    call(
        "flow over a contracted crest",
        "both ends, 2 ft",
        FRANCIS,
        || si(FLOW_CONTRACTED.work((r(SHARP), m(2.0 * FOOT), m(0.5 * FOOT)))) / CUBIC_FOOT,
        (2.236_932, "ft3/s", 1e-6),
    ),
    call(
        "head over a contracted crest",
        "the same, backwards",
        FRANCIS,
        || si(HEAD_CONTRACTED.work((r(SHARP), m(2.0 * FOOT), q(2.236_932 * CUBIC_FOOT)))) / FOOT,
        (0.5, "ft", 1e-6),
    ),
    call(
        "flow over a crest",
        "rounded or broad",
        BROAD,
        || si(FLOW_OVER.work((r(ROUND), m(0.9), m(0.35)))),
        (0.317_74, "m3/s", 3e-4),
    ),
    call(
        "flow over a crest",
        "50 mm over 1 m",
        REHBOCK,
        || si(FLOW_OVER.work((r(SHARP), m(1.0), m(0.05)))),
        (0.020_624_403_198_164_02, "m3/s", 2e-2),
    ),
    call(
        "flow over a crest",
        "100 mm over 1 m",
        REHBOCK,
        || si(FLOW_OVER.work((r(SHARP), m(1.0), m(0.1)))),
        (0.057_278_698_761_546_74, "m3/s", 2e-2),
    ),
    sheet(
        "head over a crest",
        "100 mm over 1 m, backwards",
        FRANCIS,
        &[SHARP, 1.0, 0.058_136_888],
        (0.1, "m", 1e-6),
    ),
    call(
        "flow through a V-notch",
        "90°, 100 mm",
        NOTCH,
        || si(FLOW_NOTCH.work((right_angle(), m(0.1)))),
        (0.004_409_523_468_386_643, "m3/s", 1e-9),
    ),
    call(
        "flow through a V-notch",
        "90°, 100 mm",
        NOTCH_US,
        || si(FLOW_NOTCH.work((right_angle(), m(0.1)))),
        (0.004_413_17, "m3/s", 1e-3),
    ),
    call(
        "flow through a V-notch",
        "90°, 100 mm",
        CONE,
        || si(FLOW_NOTCH.work((right_angle(), m(0.1)))),
        (0.004_445_16, "m3/s", 1e-2),
    ),
    call(
        "head over a V-notch",
        "90°, backwards",
        NOTCH,
        || si(HEAD_NOTCH.work((right_angle(), q(0.004_409_523_468_386_643)))),
        (0.1, "m", 1e-9),
    ),
    sheet("head over a lip of its kind", "20 mm", HAND, &[0.02, 0.0], (0.02, "m", 0.0)),
    quad("30 mm over the invert of 70 mm", || mouth(0.03, 0.07), 0.000_439_458_252_815_991_6),
    quad("60 mm over the invert of 70 mm", || mouth(0.06, 0.07), 0.001_473_299_094_426_741_6),
    quad("just drowned", || mouth(0.07, 0.07), 0.001_837_259_128_959_223),
    quad("120 mm over the invert of 70 mm", || mouth(0.12, 0.07), 0.002_965_171_545_409_729),
    call(
        "flow into pipe ends",
        "1 m over the invert of 70 mm",
        ORIFICE,
        || mouth(1.0, 0.07),
        (0.010_045_607_467_255_703, "m3/s", 5e-5),
    ),
    call(
        "flow into pipe ends behind a grille",
        "two of 70 mm under 60 mm, 60 cm2 open",
        BRENT,
        || behind(0.06, 0.07, 2.0, 0.012),
        (0.001_892_931_250_229_174_9, "m3/s", 1e-6),
    ),
    call(
        "flow into pipe ends behind a grille",
        "one of 60 mm under 50 mm, 40 cm2 open",
        BRENT,
        || behind(0.05, 0.06, 1.0, 0.008),
        (0.000_792_107_440_165_872_1, "m3/s", 1e-6),
    ),
    call(
        "flow over a crest behind a grille",
        "200 mm under 70 mm, 50 cm2 open",
        BRENT,
        || {
            let given = (m(0.07), m(0.2), r(SHARP), Area::from_si(0.01), r(0.5));
            si(CREST_BEHIND_GRILLE.work(given))
        },
        (0.002_465_625_996_423_567_7, "m3/s", 1e-6),
    ),
    call(
        "depth of a stream with upright sides",
        "0.5 m wide",
        MANNING,
        || si(NORMAL_DEPTH.work((q(0.021_519_127_358_708_71), m(0.5), r(0.01), r(0.04)))),
        (0.1, "m", 1e-6),
    ),
    call(
        "depth of a stream with sloped sides",
        "60°",
        CENGEL,
        || sloped(0.598_922_983_913_476_8, 0.8, 1.732_050_807_568_877, 0.005_236_035_605_700_127, 0.03),
        (0.52, "m", 1e-6),
    ),
    call(
        "depth of a stream with sloped sides",
        "1 in 1",
        VIGNETTE,
        || sloped(360.0 * CUBIC_FOOT, 20.0 * FOOT, 1.0, 0.000_853, 0.015) / FOOT,
        (3.0, "ft", 5e-4),
    ),
    sheet(
        "flow of a stream with upright sides",
        "0.5 m wide, 0.1 m deep",
        MANNING,
        &[0.5, 0.1, 0.01, 0.04],
        (0.021_519_127_358_708_71, "m3/s", 1e-9),
    ),
    sheet(
        "velocity of a stream",
        "the same",
        MANNING,
        &[0.021_519_127_358_708_71, 0.5, 0.1],
        (0.430_382_547, "m/s", 1e-8),
    ),
    hand("slope of a stream", "0.25 m in 2 m", &[0.25, 2.0], (0.125, "", 1e-12)),
    hand(
        "water that moves in a stream",
        "2 m by 0.3 m by 15 mm",
        &[2.0, 0.3, 0.015, 0.0],
        (0.009, "m3", 1e-12),
    ),
    hand("water that moves in a free fall", "none", &[1.0], (0.0, "m3", 0.0)),
    hand("film on a basin", "25 mm on 50 m2", &[50.0, 0.025], (1.25, "m3", 1e-12)),
    hand("rise of a water level", "0.12 m3 on 12 m2", &[0.12, 12.0], (0.01, "m", 1e-12)),
    hand(
        "film over the lip of a gravel filter",
        "3.6 m2, 12 mm over the lip, gravel 5 mm over it with 40 % of voids: 3.6 (12 - 0.6 × 5) mm",
        &[3.6, 0.012, 0.905, 0.90, 0.4],
        (0.0324, "m3", 1e-9),
    ),
    hand("film over a filter of its kind", "32.4 L", &[0.0324, 0.0], (0.0324, "m3", 0.0)),
    hand("film in a closed vessel", "none", &[7.0], (0.0, "m3", 0.0)),
    hand(
        "water a return draws back",
        "2.16 m2 from 1.05 m down to 0.80 m of the pool below",
        &[2.16, 1.05, 0.60, 0.80],
        (0.54, "m3", 1e-9),
    ),
    hand(
        "water a return draws back",
        "down to a break at 1.03 m",
        &[2.16, 1.05, 1.03, 0.80],
        (0.0432, "m3", 1e-9),
    ),
    hand("water a return draws back", "a break over the water", &[2.16, 1.05, 1.10, 0.80], (0.0, "m3", 0.0)),
    hand("water a return over the water draws back", "none", &[0.0], (0.0, "m3", 0.0)),
    hand("water a return under the water draws back", "43.2 L", &[0.0432, 1.0], (0.0432, "m3", 0.0)),
    hand("water in a pipe", "20 m of 50 mm: 39.27 L", &[0.05, 20.0], (0.039_269_908_169_872_41, "m3", 1e-12)),
    hand("lower of levels", "of three", &[0.95, 0.93, 1.0], (0.93, "m", 0.0)),
    hand("higher of levels", "of two", &[0.30, 0.74], (0.74, "m", 0.0)),
    hand("sum of heads", "of two", &[0.012, 0.02], (0.032, "m", 1e-12)),
    hand(
        "fall of the water to reckon with",
        "10 mm, 20 mm and 6 mm a day for half a day",
        &[0.010, 0.020, 0.006 / 86_400.0, 43_200.0],
        (0.033, "m", 1e-12),
    ),
    hand("sum of flows", "of two", &[0.001, 0.002], (0.003, "m3/s", 1e-12)),
    hand("share of a flow", "a quarter of 4 L/s", &[0.25, 0.004], (0.001, "m3/s", 1e-12)),
    hand("head over an invert", "0.95 m over 0.83 m", &[0.95, 0.83], (0.12, "m", 1e-12)),
    hand("head over an invert", "under it", &[0.80, 0.83], (0.0, "m", 0.0)),
    hand("flow into an overflow of its kind", "1 L/s", &[0.001, 0.0], (0.001, "m3/s", 0.0)),
    hand("flow into an overflow of last resort", "not ready", &[0.001, 0.0], (0.0, "m3/s", 0.0)),
    hand("flow into no overflow", "none", &[0.0], (0.0, "m3/s", 0.0)),
    hand("overflow against inflow", "3 L/s and 1.5 L/s", &[0.003, 0.0015], (2.0, "", 1e-12)),
    hand("water between two levels", "8 m3 and 7.2 m3", &[8.0, 7.2], (0.8, "m3", 1e-12)),
    hand("water a bund holds", "13.2 m2 by 100 mm", &[13.2, 0.10, 0.0], (1.32, "m3", 1e-12)),
    hand("water a floor without a bund holds", "none", &[13.2, 0.0], (0.0, "m3", 0.0)),
    hand("time to move a volume", "6 m3 at 6 m3/h", &[6.0, 6.0 / 3600.0], (3600.0, "s", 1e-12)),
    hand("less of flows", "of two", &[0.003, 0.002], (0.002, "m3/s", 0.0)),
    hand("sum of powers", "of two", &[2000.0, 1000.0], (3000.0, "W", 0.0)),
    hand(
        "time to warm water",
        "5 m3 by 17.5 K with 3 kW: 997 × 5 × 4181.3 × 17.5 / 3000 s, a day and a half",
        &[997.0, 5.0, 4181.3, 298.65, 281.15, 3000.0],
        (121_588.719_583_333_3, "s", 1e-9),
    ),
    call(
        "farthest bank from a way out",
        "two ways out 6 m apart on 12 m",
        HAND,
        || bank(&[[2.0, 2.0], [2.0, 0.0]]),
        (3.0, "m", 1e-12),
    ),
    call("farthest bank from a way out", "one", HAND, || bank(&[[2.0, 2.0]]), (6.0, "m", 1e-12)),
    hand("no way out", "none", &[0.0], (0.0, "", 0.0)),
    hand("number of ways out", "of three", &[1.0, 2.0, 3.0], (3.0, "", 0.0)),
    hand("steepest slope for its surface", "smooth", &[1.0, 0.577, 3.0], (0.577, "", 0.0)),
    hand("steepest slope for its surface", "rough", &[1.0, 0.577, 0.0], (1.0, "", 0.0)),
    hand("walked rather than climbed", "a ramp", &[0.0], (1.0, "", 0.0)),
    hand("walked rather than climbed", "a net", &[4.0], (0.0, "", 0.0)),
    hand("claws hold on to it", "smooth", &[3.0], (0.0, "", 0.0)),
    hand("runs along a bed", "a free fall", &[1.0], (0.0, "", 0.0)),
    hand(
        "head lost in the holes of a header",
        "1.8 L/s out of 40 holes of 8 mm: 1.49207 m/s in the jet",
        &[0.0018, 40.0, 0.008],
        (0.113_509, "m", 1e-5),
    ),
    sheet(
        "head lost along a header",
        "1.8 L/s, 55 mm, 2 m: a third of head_from_K(K_from_f(friction_factor(Re, eD), 2, 0.055), V)",
        HEADER,
        &[0.0018, 0.055, 2.0, 1.0034e-6],
        (0.007_758_850_459, "m", 1e-6),
    ),
    hand("head of the holes against head of the header", "60 mm and 10 mm", &[0.06, 0.01], (6.0, "", 1e-12)),
    hand("a stopped pump can draw water back", "under, and higher", &[1.0, 1.05, 0.80], (1.0, "", 0.0)),
    hand("a stopped pump can draw water back", "under, but lower", &[1.0, 0.70, 0.80], (0.0, "", 0.0)),
    hand("a stopped pump can draw water back", "over the water", &[0.0, 1.05, 0.80], (0.0, "", 0.0)),
    hand("a siphon break", "none", &[0.0], (0.0, "", 0.0)),
    hand("parted by air", "a break tank", &[1.0], (1.0, "", 0.0)),
    hand("parted by air", "a double check valve", &[3.0], (0.0, "", 0.0)),
    hand("share of the label's flow", "3 of 6 m3/h", &[3.0 / 3600.0, 6.0 / 3600.0], (0.5, "", 1e-12)),
    hand(
        "energy in a year",
        "95 W through 365.25 days of 24 h: 832.77 kWh",
        &[95.0],
        (2_997_972_000.0, "J", 1e-12),
    ),
];
