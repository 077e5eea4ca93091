//! The nitrate of the fill, which is asked for as nitrogen, is no more than drinking water may hold.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::renewal::NITRATE_OF_FILL;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("nitrate-of-the-fill"),
        title: words("The nitrate of the fill looks as if it were typed as NO3"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "The nitrate of the fill, which is asked for as nitrogen, is no more than drinking water may hold.",
            ),
            why: words(
                "Water works print nitrate as NO3, 4.43 times the number of its nitrogen. Typed as it is printed, it makes the water change look useless, or the well really is bad.",
            ),
            judged: words("The stated number against 50 mg/L of NO3, which is 11.3 mg/L of nitrogen."),
            cure: words("divide a figure that is printed as NO3 by 4.43"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "nitrate-of-the-fill",
    name: "most",
    row: "",
    what: "greatest nitrate of a drinking water, as nitrogen",
    value: 0.0113,
    unit: "mg/L",
    dimension: Dimension::DENSITY,
    tighter: Tighter::Lower,
    basis: Basis::Recalled,
    source: "Directive (EU) 2020/2184, annex I part B: 50 mg/L as NO3",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::at_most(NITRATE_OF_FILL.of(sheet, at)?, sheet.limit(&LIMITS[0])))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("5 mg/L as nitrogen"),
        design: words(include_str!("examples/fill_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/nitrate"),
    },
    Example {
        shows: words("22 mg/L as it stands in the report of the water works"),
        design: words(include_str!("examples/fill_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/nitrate"),
    },
    Example {
        shows: words("the edge"),
        design: words(include_str!("examples/fill_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/fill/nitrate"),
    },
    Example {
        shows: words("just short"),
        design: words(include_str!("examples/fill_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/fill/nitrate"),
    },
    Example {
        shows: words("the nitrate is not stated"),
        design: words(include_str!("examples/fill_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/fill/nitrate"),
    },
];
