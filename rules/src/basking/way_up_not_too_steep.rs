//! The way up is no steeper than 30 degrees for turtles and 25 for crocodilians, lizards and snakes.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::by_water;
use haulout_figures::basking::site::{ACCESS_SLOPE, by_build};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("way-up-not-too-steep"),
        title: words("The way up to the site is too steep"),
        chapter: words("basking"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::BaskingGroup,
        caution: None,
        manual: Manual {
            asks: words(
                "The way up is no steeper than 30 degrees for turtles and 25 for crocodilians, lizards and snakes.",
            ),
            why: words("A turtle slides back from what is steep and wet, and gives up."),
            judged: words(
                "Slope as stated against the limit of the kind of animal. A rough surface is taken for granted; on a smooth one even less is climbed.",
            ),
            cure: words("a longer ramp, or a step on the way"),
        },
    },
    limits: &[&TURTLES, &OTHERS],
    examples: EXAMPLES,
    judge,
};

static TURTLES: Limit = Limit {
    rule: "way-up-not-too-steep",
    name: "turtles",
    row: "",
    what: "greatest slope for turtles, 30 degrees",
    value: 0.5773502691896257,
    unit: "%",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' practice; escape ramps for wildlife are printed at 30 to 45 degrees at most",
};

static OTHERS: Limit = Limit {
    rule: "way-up-not-too-steep",
    name: "others",
    row: "",
    what: "greatest slope for crocodilians, lizards and snakes, 25 degrees",
    value: 0.4663076581549986,
    unit: "%",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' practice",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !by_water(sheet, at.part(About::Basking).expect("a basking-group has a site"))? {
        return Ok(Check::AnyOf(Vec::new()));
    }
    let (slope, steepest) = (ACCESS_SLOPE.of(sheet, at), by_build(sheet, at, &TURTLES, &OTHERS)).all()?;
    Ok(Check::at_most(slope, steepest))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("1 in 2 for sliders"),
        design: words(include_str!("examples/way_up_not_too_steep_met.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::Met,
        place: words("/basking/0/access-slope"),
    },
    Example {
        shows: words("1 in 1.5"),
        design: words(include_str!("examples/way_up_not_too_steep_short.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::Short,
        place: words("/basking/0/access-slope"),
    },
    Example {
        shows: words("the edge: 30 degrees"),
        design: words(include_str!("examples/way_up_not_too_steep_edge.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::Met,
        place: words("/basking/0/access-slope"),
    },
    Example {
        shows: words("slope not stated"),
        design: words(include_str!("examples/way_up_not_too_steep_gap.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::NotAssessed,
        place: words("/basking/0/access-slope"),
    },
    Example {
        shows: words("1 in 2 is steeper than 25 degrees, for caimans"),
        design: words(include_str!("examples/way_up_not_too_steep_caiman.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::Short,
        place: words("/animals/0/species"),
    },
    Example {
        shows: words("31 degrees, just too steep"),
        design: words(include_str!("examples/way_up_not_too_steep_just_short.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::Short,
        place: words("/basking/0/access-slope"),
    },
    Example {
        shows: words("25 degrees for caimans"),
        design: words(include_str!("examples/way_up_not_too_steep_caiman_edge.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::Met,
        place: words("/basking/0/access-slope"),
    },
    Example {
        shows: words("26 degrees for caimans"),
        design: words(include_str!("examples/way_up_not_too_steep_caiman_just_short.json")),
        subject: words("basking:a+group:sliders"),
        expected: Expected::Short,
        place: words("/basking/0/access-slope"),
    },
];
