//! At the total ammonia the keepers hold to, the un-ionised part in the warmest water at its highest pH stays low.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::ammonia::FREE_AMMONIA;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("free-ammonia"),
        title: words("Too much of the ammonia is un-ionised"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "At the total ammonia the keepers hold to, the un-ionised part in the warmest water at its highest pH stays low.",
            ),
            why: words(
                "Un-ionised ammonia burns gills and skin and irritates eyes; animals that breathe air bear more of it than fish and larvae do, but not in their eyes, and soft skin not for long.",
            ),
            judged: words(
                "Share by pH and temperature (Emerson and others, 1975) of the total held to, both as nitrogen. A kit that reads NH3 or NH4 shows 1.2 to 1.3 times as much.",
            ),
            cure: words("hold to a lower total, or bring the pH down slowly"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "free-ammonia",
    name: "most",
    row: "",
    what: "greatest un-ionised ammonia, as nitrogen",
    value: 2e-05,
    unit: "mg/L",
    dimension: Dimension::DENSITY,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "fish keepers' practice: 0.02 mg/L as nitrogen; a screen for animals that breathe air",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::at_most(FREE_AMMONIA.of(sheet, at)?, sheet.limit(&LIMITS[0])))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("pH 7.6 at 25 °C"),
        design: words(include_str!("examples/free_ammonia_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/water/ph"),
    },
    Example {
        shows: words("pH 8.4 at 25 °C"),
        design: words(include_str!("examples/free_ammonia_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/water/ph"),
    },
    Example {
        shows: words("the edge: 0.0198 mg/L"),
        design: words(include_str!("examples/free_ammonia_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/start-up/target-tan"),
    },
    Example {
        shows: words("0.0202 mg/L, just short"),
        design: words(include_str!("examples/free_ammonia_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/start-up/target-tan"),
    },
    Example {
        shows: words("the pH is not stated"),
        design: words(include_str!("examples/free_ammonia_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/water/ph"),
    },
];
