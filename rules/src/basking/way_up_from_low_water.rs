//! The way up begins at least 50 mm under the lowest running water.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::by_water;
use haulout_figures::basking::site::FOOT_DEPTH;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("way-up-from-low-water"),
        title: words("The way up to the site does not begin under the lowest water"),
        chapter: words("basking"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Basking,
        caution: None,
        manual: Manual {
            asks: words("The way up begins at least 50 mm under the lowest running water."),
            why: words(
                "When the water is low a ramp that ends in the air is no way out: animals swim below it until they are exhausted.",
            ),
            judged: words(
                "Foot of the way up under the lowest running level, or under the water level where no lower one is stated. The way up of a float rides with it and is judged at the normal level. 50 to 100 mm is usual.",
            ),
            cure: words("lengthen the ramp downward, or keep the water up"),
        },
    },
    limits: &[&DEPTH],
    examples: EXAMPLES,
    judge,
};

static DEPTH: Limit = Limit {
    rule: "way-up-from-low-water",
    name: "depth",
    row: "",
    what: "foot under the lowest water",
    value: 0.05,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !by_water(sheet, at)? {
        return Ok(Check::AnyOf(Vec::new()));
    }
    Ok(Check::at_least(FOOT_DEPTH.of(sheet, at)?, sheet.limit(&DEPTH)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("60 mm under the lowest level"),
        design: words(include_str!("examples/way_up_from_low_water_met.json")),
        subject: words("basking:a"),
        expected: Expected::Met,
        place: words("/basking/0/access-foot"),
    },
    Example {
        shows: words("20 mm"),
        design: words(include_str!("examples/way_up_from_low_water_short.json")),
        subject: words("basking:a"),
        expected: Expected::Short,
        place: words("/pools/0/levels/low"),
    },
    Example {
        shows: words("the edge: 50 mm"),
        design: words(include_str!("examples/way_up_from_low_water_edge.json")),
        subject: words("basking:a"),
        expected: Expected::Met,
        place: words("/basking/0/access-foot/by"),
    },
    Example {
        shows: words("way up not stated"),
        design: words(include_str!("examples/way_up_from_low_water_gap.json")),
        subject: words("basking:a"),
        expected: Expected::NotAssessed,
        place: words("/basking/0/access-foot"),
    },
    Example {
        shows: words("48 mm, just short"),
        design: words(include_str!("examples/way_up_from_low_water_just_short.json")),
        subject: words("basking:a"),
        expected: Expected::Short,
        place: words("/basking/0/access-foot/by"),
    },
];
