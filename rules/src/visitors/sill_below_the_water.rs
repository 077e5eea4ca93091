//! The sill of each panel lies well under the lowest running level.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::sight::panel::SILL_UNDER_WATER;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("sill-below-the-water"),
        title: words("The sill of the panel lies too little under the water"),
        chapter: words("visitors"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Embarrassment,
        case: Case::NORMAL,
        about: About::Panel,
        caution: None,
        manual: Manual {
            asks: words("The sill of each panel lies well under the lowest running level."),
            why: words(
                "Through a strip of water no higher than a shell nobody sees an animal swim; at the lowest level it becomes a line.",
            ),
            judged: words("Lowest running level of the pool less the sill."),
            cure: words("lower the sill, or raise the water"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_least(SILL_UNDER_WATER.of(sheet, at)?, sheet.limit(&LIMITS[0]))),
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "sill-below-the-water",
    name: "depth",
    row: "",
    what: "least depth of the sill under the lowest level",
    value: 0.30,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "exhibit practice: no source; a swimming turtle and as much again above and below",
}];

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("sill 0.57 m under the lowest level"),
        design: words(include_str!("examples/sill_below_the_water_met.json")),
        subject: words("panel:window"),
        expected: Expected::Met,
        place: words("/panels/0/sill"),
    },
    Example {
        shows: words("sill 0.17 m under the lowest level"),
        design: words(include_str!("examples/sill_below_the_water_short.json")),
        subject: words("panel:window"),
        expected: Expected::Short,
        place: words("/panels/0/sill"),
    },
    Example {
        shows: words("the edge: 0.30 m"),
        design: words(include_str!("examples/sill_below_the_water_edge.json")),
        subject: words("panel:window"),
        expected: Expected::Met,
        place: words("/panels/0/sill"),
    },
    Example {
        shows: words("the lowest level is not stated"),
        design: words(include_str!("examples/sill_below_the_water_gap.json")),
        subject: words("panel:window"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/levels/low"),
    },
    Example {
        shows: words("0.29 m, just short"),
        design: words(include_str!("examples/sill_below_the_water_just_short.json")),
        subject: words("panel:window"),
        expected: Expected::Short,
        place: words("/panels/0/sill"),
    },
];
