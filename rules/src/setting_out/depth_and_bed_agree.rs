//! Where a depth and a bed level are stated for the same bed, they say the same.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::setting_out::beds::disagreements;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("depth-and-bed-agree"),
        title: words("Depth and bed level contradict one another"),
        chapter: words("setting-out"),
        demand: Demand::Should,
        stage: Stage::Concept,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "Where the pool or one of its zones states a depth below the water as well as a bed level, both lead to the same bed.",
            ),
            why: words(
                "One of two contradicting numbers is built, and nobody knows which; the figures here follow the bed level.",
            ),
            judged: words(
                "The difference between water level less depth and the bed level, for the pool and each of its zones that state both.",
            ),
            cure: words("state one of them and leave the other out"),
        },
    },
    limits: &[&APART],
    examples: EXAMPLES,
    judge: |sheet, at| {
        let apart = disagreements(sheet, at).into_iter();
        Ok(Check::AllOf(apart.map(|by| Ok(Check::at_most(by?, sheet.limit(&APART)))).collect()))
    },
};

static APART: Limit = Limit {
    rule: "depth-and-bed-agree",
    name: "apart",
    row: "",
    what: "difference between the depth and the bed level stated for one piece of bed",
    value: 0.005,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "levels are set out to 5 mm",
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a depth of 0.40 m below +0.80 m, a bed at +0.40 m"),
        design: words(include_str!("examples/depth_and_bed_agree_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/bed"),
    },
    Example {
        shows: words("a depth of 0.40 m below +0.80 m, a bed at +0.30 m"),
        design: words(include_str!("examples/depth_and_bed_agree_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/depth"),
    },
    Example {
        shows: words("5 mm apart"),
        design: words(include_str!("examples/depth_and_bed_agree_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/bed"),
    },
    Example {
        shows: words("the water level is not stated"),
        design: words(include_str!("examples/depth_and_bed_agree_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/levels/water"),
    },
    Example {
        shows: words("only a depth is stated"),
        design: words(include_str!("examples/depth_and_bed_agree_na.json")),
        subject: words("pool:main"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("5.2 mm apart"),
        design: words(include_str!("examples/depth_and_bed_agree_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words(""),
    },
];
