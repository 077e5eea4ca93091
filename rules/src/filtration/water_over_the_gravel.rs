//! The running water of a planted gravel filter covers its gravel.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::gravel::{PLANTED, WATER_OVER_BED};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("water-over-the-gravel"),
        title: words("The gravel stands above the water of its filter"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Filter,
        caution: None,
        manual: Manual {
            asks: words("The running water of a planted gravel filter covers its gravel."),
            why: words(
                "Where gravel stands above the water, the flow breaks through in a few holes and the rest of the bed stands still.",
            ),
            judged: words("Running level less the top of the gravel."),
            cure: words("take gravel off, or raise the lip"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "water-over-the-gravel",
    name: "least",
    row: "",
    what: "least water over the gravel",
    value: 0.01,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "builders of planted filters: the gravel lies just under the lip",
}];

fn asked(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let over = WATER_OVER_BED.of(sheet, at)?;
    Ok(Check::at_least(over, sheet.limit(&LIMITS[0])))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::only_if(PLANTED.of(sheet, at).map(Check::holds), asked(sheet, at)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("20 mm of water over it"),
        design: words(include_str!("examples/covered_met.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/levels/bed"),
    },
    Example {
        shows: words("gravel 30 mm above the water"),
        design: words(include_str!("examples/covered_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/levels/bed"),
    },
    Example {
        shows: words("the edge"),
        design: words(include_str!("examples/covered_edge.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/levels/bed"),
    },
    Example {
        shows: words("just short"),
        design: words(include_str!("examples/covered_just_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/levels/bed"),
    },
    Example {
        shows: words("the top of the gravel is not stated"),
        design: words(include_str!("examples/covered_gap.json")),
        subject: words("filter:wetland"),
        expected: Expected::NotAssessed,
        place: words("/filters/0/levels/bed"),
    },
];
