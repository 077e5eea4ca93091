//! The static head that is stated is not less than the height from water to water.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::circuit::lift::LIFT_LEFT_OUT;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("static-head-fits-the-levels"),
        title: words("The pump lifts higher than its static head says"),
        chapter: words("plumbing"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Circuit,
        caution: None,
        manual: Manual {
            asks: words(
                "The static head stated for a circuit is not less than the height from the water it draws from to the water it lifts to.",
            ),
            why: words(
                "Somebody raises the basin by a hand after the pump was reckoned, and the head stays what it was. Near the end of a curve a hand of height is a third of the flow.",
            ),
            judged: words(
                "Water level of the pool or filter the circuit lifts to, or the mouth of a return that ends in the air, less the water level of the pool it draws from, less the static head. More than that may be stated: over an air break the water goes higher than it ends.",
            ),
            cure: words("state the height the water really goes, and look at the delivered flow again"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "static-head-fits-the-levels",
    name: "left-out",
    row: "",
    what: "height that may be left out for rounding",
    value: 0.02,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "levels on a drawing are rounded to 10 mm at either end",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::at_most(LIFT_LEFT_OUT.of(sheet, at)?, sheet.limit(&LIMITS[0])))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("0.35 m from water to mouth, and 0.35 m stated"),
        design: words(include_str!("examples/static_head_fits_the_levels_met.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/static-head"),
    },
    Example {
        shows: words("0.20 m stated"),
        design: words(include_str!("examples/static_head_fits_the_levels_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/static-head"),
    },
    Example {
        shows: words("19.5 mm left out"),
        design: words(include_str!("examples/static_head_fits_the_levels_edge.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/static-head"),
    },
    Example {
        shows: words("20.5 mm left out"),
        design: words(include_str!("examples/static_head_fits_the_levels_just_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/static-head"),
    },
    Example {
        shows: words("into the water of the basin, from pool to pool"),
        design: words(include_str!("examples/static_head_fits_the_levels_pools.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/pools/1/levels/water"),
    },
    Example {
        shows: words("where it lifts to is not said"),
        design: words(include_str!("examples/static_head_fits_the_levels_gap.json")),
        subject: words("circuit:loop"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/to"),
    },
];
