//! Electricity near water: zones, kinds of items, supplies and markings, case by case from the codes' words.

use haulout_quantity::Basis::{self, Published, Recalled, Reported};

use super::{Row, sheet};

const ZONES: (&str, Basis) = (
    "IEC 60364-7-702:2010, as described in guides to BS 7671:2018 section 702: zone 0 the basin, zone 1 to 2 m, zone 2 1.5 m further, 2.5 m high",
    Reported,
);
const CODE: (&str, Basis) =
    ("NFPA 70 (2020) article 680, as in the 2022 California Electrical Code", Published);
const TERMS: (&str, Basis) = ("terms of IEC 60364-4-41", Recalled);
const DEGREES: (&str, Basis) = ("IEC 60529, as reported by a published table of the code", Reported);
const SCOPE: (&str, Basis) = ("scope of IEC 60364-7-702:2010 (abstract); NFPA 70 (2020) 680.50", Reported);

const fn yes(
    formula: &'static str,
    what: &'static str,
    source: (&'static str, Basis),
    given: &'static [f64],
    e: f64,
) -> Row {
    sheet(formula, what, source, given, (e, "", 0.0))
}

const fn zone(what: &'static str, given: &'static [f64], expected: f64) -> Row {
    yes("zone an item is in", what, ZONES, given, expected)
}

const fn near(what: &'static str, given: &'static [f64], expected: f64) -> Row {
    yes("near enough to need ground-fault protection", what, CODE, given, expected)
}

pub(super) const ROWS: &[Row] = &[
    zone("in the basin", &[0.0, -0.3, 0.0, 2.0, 1.5, 2.5], 0.0),
    zone("1.9 m off, 1 m up", &[1.9, 1.0, 0.0, 2.0, 1.5, 2.5], 1.0),
    zone("just 2.0 m off", &[2.0, 1.0, 0.0, 2.0, 1.5, 2.5], 2.0),
    zone("3.4 m off", &[3.4, 1.0, 0.0, 2.0, 1.5, 2.5], 2.0),
    zone("3.6 m off", &[3.6, 1.0, 0.0, 2.0, 1.5, 2.5], 3.0),
    zone("over the pool, 2.6 m up", &[0.0, 2.6, 0.0, 2.0, 1.5, 2.5], 3.0),
    zone("3.0 m off a fountain nobody enters", &[3.0, 1.0, 2.0, 2.0, 1.5, 2.5], 3.0),
    yes("in zone 0 or 1", "zone 1", ZONES, &[1.0], 1.0),
    yes("in zone 0 or 1", "zone 2", ZONES, &[2.0], 0.0),
    yes("in a zone", "zone 2", ZONES, &[2.0], 1.0),
    yes("in a zone", "beyond", ZONES, &[3.0], 0.0),
    yes("numeral asked for in a zone", "zone 1", ZONES, &[1.0, 8.0, 5.0, 2.0], 5.0),
    yes("numeral asked for in a zone", "beyond", ZONES, &[3.0, 8.0, 5.0, 2.0], 0.0),
    yes("numeral a marking proves on the scale asked for", "IPX5 against jets", DEGREES, &[3.0, 5.0], 5.0),
    yes(
        "numeral a marking proves on the scale asked for",
        "IPX5 against immersion",
        DEGREES,
        &[3.0, 8.0],
        0.0,
    ),
    yes(
        "numeral a marking proves on the scale asked for",
        "IPX8 against immersion",
        DEGREES,
        &[6.0, 8.0],
        8.0,
    ),
    yes(
        "numeral a marking proves on the scale asked for",
        "IPX7 alone against jets",
        DEGREES,
        &[5.0, 5.0],
        4.0,
    ),
    yes("classed as water people enter", "swimming pool", SCOPE, &[0.0], 1.0),
    yes("classed as water people enter", "fountain nobody enters", SCOPE, &[2.0], 0.0),
    yes("classed as a pool or a fountain", "other water", SCOPE, &[3.0], 0.0),
    yes("fed from the mains", "mains", TERMS, &[0.0], 1.0),
    yes("fed with extra-low voltage", "SELV, AC", TERMS, &[1.0], 1.0),
    yes("not fed with extra-low voltage", "SELV, DC", TERMS, &[2.0], 0.0),
    sheet("voltage allowed for a supply", "DC", ZONES, &[2.0, 12.0, 30.0], (30.0, "V", 0.0)),
    yes("above the low-voltage contact limit", "15 V AC", CODE, &[15.0, 15.0], 0.0),
    yes("above the low-voltage contact limit", "24 V AC", CODE, &[24.0, 15.0], 1.0),
    near("a socket 6.0 m off", &[0.0, 1.0, 6.0, 6.096, 3.048], 1.0),
    near("a luminaire 6.0 m off", &[2.0, 1.0, 6.0, 6.096, 3.048], 0.0),
    near("a switch 1.0 m off", &[1.0, 1.0, 1.0, 6.096, 3.048], 0.0),
    yes("metal beside the water", "5 ft off, 3 m up", CODE, &[1.524, 3.0, 1.524, 3.6576], 1.0),
    yes("metal beside the water", "1.6 m off", CODE, &[1.6, 3.0, 1.524, 3.6576], 0.0),
    yes("receptacle", "socket", CODE, &[0.0], 1.0),
    yes("switchgear", "transformer", CODE, &[7.0], 1.0),
    yes("switchgear", "heater", CODE, &[4.0], 0.0),
    yes("switch, or other equipment above the contact limit", "a dry heater", CODE, &[4.0, 1.0, 0.0], 1.0),
    yes("switch, or other equipment above the contact limit", "a socket", CODE, &[0.0, 1.0, 0.0], 0.0),
    yes("luminaire over or beside the water", "a dry lamp at 120 V", CODE, &[3.0, 1.0, 0.0], 1.0),
    yes("luminaire under this water", "a submersed luminaire", CODE, &[2.0, 1.0, 0.0], 1.0),
    sheet("voltage allowed under water", "a pump", CODE, &[5.0, 150.0, 300.0], (300.0, "V", 0.0)),
    sheet("voltage allowed under water", "a luminaire", CODE, &[2.0, 150.0, 300.0], (150.0, "V", 0.0)),
];
