//! Water rises through a planted gravel bed at 0.5 to 2 m/h by the flow the pump delivers with clean filters.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::gravel::{PLANTED, UP_FLOW};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("up-flow-through-the-bed"),
        title: words("Water rises through the gravel too slowly or too fast"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Filter,
        caution: None,
        manual: Manual {
            asks: words(
                "Water rises through a planted gravel bed at 0.5 to 2 m/h by the flow the pump delivers with clean filters.",
            ),
            why: words(
                "A slow bed starves of oxygen at its far end; a fast one lifts solids out of the gravel and carries them back to the pool.",
            ),
            judged: words("Delivered flow with clean filters over the plan area of the filter."),
            cure: words("a larger or smaller plan, or a bypass that takes part of the flow"),
        },
    },
    limits: &[&LIMITS[0], &LIMITS[1]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 2] = [
    Limit {
        rule: "up-flow-through-the-bed",
        name: "slowest",
        row: "",
        what: "slowest up-flow",
        value: 0.0001388888888888889,
        unit: "m/h",
        dimension: Dimension::VELOCITY,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "builders of planted filters: 0.5 to 2 m/h",
    },
    Limit {
        rule: "up-flow-through-the-bed",
        name: "fastest",
        row: "",
        what: "fastest up-flow",
        value: 0.0005555555555555556,
        unit: "m/h",
        dimension: Dimension::VELOCITY,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "builders of planted filters: 0.5 to 2 m/h",
    },
];

fn asked(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let rise = UP_FLOW.of(sheet, at)?;
    Ok(Check::within(rise, sheet.limit(&LIMITS[0]), sheet.limit(&LIMITS[1])))
}

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::only_if(PLANTED.of(sheet, at).map(Check::holds), asked(sheet, at)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("3.6 m2 of bed"),
        design: words(include_str!("examples/up_flow_met.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/outline"),
    },
    Example {
        shows: words("a bed of 1.2 m2"),
        design: words(include_str!("examples/up_flow_short.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/outline"),
    },
    Example {
        shows: words("a circuit whose runs are not drawn"),
        design: words(include_str!("examples/up_flow_gap.json")),
        subject: words("filter:wetland"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/runs"),
    },
    Example {
        shows: words("the slow edge"),
        design: words(include_str!("examples/up_flow_slow.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/outline"),
    },
    Example {
        shows: words("just too slow"),
        design: words(include_str!("examples/up_flow_just_slow.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/outline"),
    },
    Example {
        shows: words("the fast edge"),
        design: words(include_str!("examples/up_flow_fast.json")),
        subject: words("filter:wetland"),
        expected: Expected::Met,
        place: words("/filters/0/outline"),
    },
    Example {
        shows: words("just too fast"),
        design: words(include_str!("examples/up_flow_just_fast.json")),
        subject: words("filter:wetland"),
        expected: Expected::Short,
        place: words("/filters/0/outline"),
    },
];
