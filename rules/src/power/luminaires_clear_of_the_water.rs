//! Luminaires over or beside water that people enter hang high enough, or keep five feet off.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::item::height::HEIGHT_OVER_WATER;
use haulout_figures::item::kind::is_overhead;
use haulout_figures::item::path::WATER_DISTANCE;
use haulout_figures::item::water::bathed;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_register::Matter;
use haulout_sheet::{Case, Known, LevelState, Limit, Sheet, Tighter};

use super::zones::{CAUTION, Family, above_contact, family, silent, trips_at_most, where_yes};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("luminaires-clear-of-the-water"),
        title: words("A luminaire hangs too low over or beside the water"),
        chapter: words("power"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: Some(Matter::Electrical),
        consequence: Consequence::LifeOfPeople,
        case: Case::NORMAL.level(LevelState::High),
        about: About::ItemPool,
        caution: Some(words(CAUTION)),
        manual: Manual {
            asks: words(
                "Under NEC article 680, dry luminaires and lamps above the contact limit keep 5 ft off a pool or a fountain that people use, or hang 12 ft over its highest water; indoors 7 ft 6 in with ground-fault protection.",
            ),
            why: words(
                "A lamp within reach of a wet hand, or one that can fall into the water, is the commonest electrical danger of an exhibit with basking sites.",
            ),
            judged: words(
                "Path round partitions less case and cord, or the lowest point over the water at overflow level. The indoor clause wants a totally enclosed luminaire too: check that by eye.",
            ),
            cure: words(
                "lamps at or below the contact limit, a higher suspension, or an authority that classes the water otherwise",
            ),
        },
    },
    limits: &[&WIDE, &HIGH, &INDOORS, &TRIP],
    examples: EXAMPLES,
    judge,
};

static WIDE: Limit = Limit {
    rule: "luminaires-clear-of-the-water",
    name: "wide",
    row: "",
    what: "distance from which height is free",
    value: 1.524,
    unit: "ft",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.22(B), as in the 2022 California Electrical Code",
};

static HIGH: Limit = Limit {
    rule: "luminaires-clear-of-the-water",
    name: "high",
    row: "",
    what: "least height over the highest water",
    value: 3.657_6,
    unit: "ft",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.22(B), as in the 2022 California Electrical Code",
};

static INDOORS: Limit = Limit {
    rule: "luminaires-clear-of-the-water",
    name: "indoors",
    row: "",
    what: "least height indoors, enclosed and protected",
    value: 2.286,
    unit: "ft",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::Published,
    source: "NFPA 70 (2020) 680.22(B), as in the 2022 California Electrical Code",
};

static TRIP: Limit = Limit {
    rule: "luminaires-clear-of-the-water",
    name: "trip",
    row: "",
    what: "trip current of ground-fault protection, class A",
    value: 0.006,
    unit: "mA",
    dimension: Dimension::CURRENT,
    tighter: Tighter::Lower,
    basis: Basis::Reported,
    source: "NFPA 70 (2023), as summarised at nssltd.com: class A trips at 6 mA or more and not below 4 mA",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if family(sheet) != Some(Family::Nec) {
        return Ok(silent());
    }
    let height = || HEIGHT_OVER_WATER.of(sheet, at);
    let far = WATER_DISTANCE.of(sheet, at).map(|have| Check::at_least(have, sheet.limit(&WIDE)));
    let high = height().map(|have| Check::at_least(have, sheet.limit(&HIGH)));
    let indoors = height().map(|have| Check::at_least(have, sheet.limit(&INDOORS)));
    let protected = Ok(Check::AllOf(vec![indoors, trips_at_most(sheet, at, &TRIP)]));
    let clear = Ok(Check::AnyOf(vec![far, high, protected]));
    where_yes(bathed(sheet), where_yes(is_overhead(sheet, at, above_contact(sheet, at)), clear))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("over the pool, 2.5 m over the water, protected"),
        design: words(include_str!("examples/luminaires_met.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("the same at 30 mA"),
        design: words(include_str!("examples/luminaires_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("just 12 ft over the water, without protection"),
        design: words(include_str!("examples/luminaires_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/2"),
    },
    Example {
        shows: words("nothing said about protection"),
        design: words(include_str!("examples/luminaires_gap.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/electrical/items/0/residual-current"),
    },
    Example {
        shows: words("just 5 ft beside the water, low and without protection"),
        design: words(include_str!("examples/luminaires_wide_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("1.50 m beside the water, low and without protection"),
        design: words(include_str!("examples/luminaires_wide_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/1"),
    },
    Example {
        shows: words("3.57 m over the water, without protection"),
        design: words(include_str!("examples/luminaires_high_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/2"),
    },
    Example {
        shows: words("just 7 ft 6 in over the water, protected"),
        design: words(include_str!("examples/luminaires_indoors_edge.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Met,
        place: words("/electrical/items/0/at/2"),
    },
    Example {
        shows: words("2.22 m over the water, protected"),
        design: words(include_str!("examples/luminaires_indoors_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/at/2"),
    },
    Example {
        shows: words("2.5 m over the water, protected at 6.2 mA"),
        design: words(include_str!("examples/luminaires_trip_short.json")),
        subject: words("item:it+pool:main"),
        expected: Expected::Short,
        place: words("/electrical/items/0/residual-current"),
    },
];
