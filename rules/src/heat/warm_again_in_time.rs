//! The pool is empty, full and warm again before the animals have been away too long.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::heat::{fill::WARM_AGAIN, is_heated};
use haulout_figures::water::overflow::fill_flow;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("warm-again-in-time"),
        title: words("After cleaning the pool stays cold for days"),
        chapter: words("heat"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words("Emptying, filling and warming the pool take three days at the most."),
            why: words(
                "Holding tubs are small and get dirty. A pool that is full again by evening but cold for a week either keeps the animals in tubs or chills them.",
            ),
            judged: words(
                "Time of the drain or of what may be let away, of the fill, and of the heaters of the pool for the new water from fill to working temperature. What is lost on the way comes on top.",
            ),
            cure: words("a larger heater, or a second one for the day; a warm fill; emptying by halves"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "warm-again-in-time",
    name: "longest",
    row: "",
    what: "longest time until the pool is warm again",
    value: 259200.0,
    unit: "h",
    dimension: Dimension::TIME,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "zoos and aquaria: animals of a pool in holding tubs for three days at the most",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if let Err(none) = fill_flow(sheet, at) {
        return Ok(Check::only_if(Ok(Check::holds(none)), Ok(Check::holds(none))));
    }
    if !is_heated(sheet, at)? {
        return Ok(Check::AllOf(Vec::new()));
    }
    Ok(Check::at_most(WARM_AGAIN.of(sheet, at)?, sheet.limit(&LIMITS[0])))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("an hour out, five in, 59 to warm it"),
        design: words(include_str!("examples/again_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("a heater of 300 W"),
        design: words(include_str!("examples/again_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("the edge: 71.8 h"),
        design: words(include_str!("examples/again_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("72.2 h"),
        design: words(include_str!("examples/again_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/heaters/0/power"),
    },
    Example {
        shows: words("the temperature of the fill is not stated"),
        design: words(include_str!("examples/again_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/fill/temperature"),
    },
    Example {
        shows: words("no fill"),
        design: words(include_str!("examples/again_none.json")),
        subject: words("pool:main"),
        expected: Expected::DoesNotApply,
        place: words("/pools/0/fill/flow"),
    },
];
