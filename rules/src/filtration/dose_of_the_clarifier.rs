//! At the flow of the clean filter the lamp, at the end of its life, still gives the dose that clears green water, and its maker allows the flow.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::filtration::stage::{UV_DOSE, UV_FLOW, UV_MOST_FLOW, is_clarifier};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("dose-of-the-clarifier"),
        title: words("The ultraviolet lamp does not clear the water"),
        chapter: words("filtration"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Embarrassment,
        case: Case::NORMAL,
        about: About::Filter,
        caution: None,
        manual: Manual {
            asks: words(
                "At the flow of the clean filter the lamp, at the end of its life, still gives the dose that clears green water, and its maker allows the flow.",
            ),
            why: words(
                "The label's dose holds for the label's flow and a new lamp. Green water hides the animals, and every visitor sees it.",
            ),
            judged: words(
                "Dose at the end of life times its flow over the delivered flow, and the delivered flow against the largest that the maker allows.",
            ),
            cure: words("a larger lamp, or a bypass round it"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "dose-of-the-clarifier",
    name: "least",
    row: "",
    what: "least ultraviolet dose",
    value: 300.0,
    unit: "mJ/cm2",
    dimension: Dimension::ENERGY_PER_AREA,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "the trade: 15 to 30 mJ/cm2 for green water, 30 to 40 in general",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let dose = UV_DOSE.of(sheet, at).map(|dose| Check::at_least(dose, sheet.limit(&LIMITS[0])));
    let flow = (UV_FLOW.of(sheet, at), UV_MOST_FLOW.of(sheet, at)).all();
    let flow = flow.map(|(flow, most)| Check::at_most(flow, most));
    let both = Ok(Check::AllOf(vec![dose, flow]));
    Ok(Check::only_if(is_clarifier(sheet, at).map(Check::holds), both))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("40 mJ/cm2 at 6 m3/h"),
        design: words(include_str!("examples/uv_met.json")),
        subject: words("filter:lamp"),
        expected: Expected::Met,
        place: words("/filters/0/uv/dose"),
    },
    Example {
        shows: words("20 mJ/cm2"),
        design: words(include_str!("examples/uv_short.json")),
        subject: words("filter:lamp"),
        expected: Expected::Short,
        place: words("/filters/0/uv/dose"),
    },
    Example {
        shows: words("more flow than the maker allows"),
        design: words(include_str!("examples/uv_fast.json")),
        subject: words("filter:lamp"),
        expected: Expected::Short,
        place: words("/filters/0/uv/most-flow"),
    },
    Example {
        shows: words("the edge"),
        design: words(include_str!("examples/uv_edge.json")),
        subject: words("filter:lamp"),
        expected: Expected::Met,
        place: words("/filters/0/uv/dose"),
    },
    Example {
        shows: words("just short"),
        design: words(include_str!("examples/uv_just_short.json")),
        subject: words("filter:lamp"),
        expected: Expected::Short,
        place: words("/filters/0/uv/dose"),
    },
    Example {
        shows: words("the dose is not stated"),
        design: words(include_str!("examples/uv_gap.json")),
        subject: words("filter:lamp"),
        expected: Expected::NotAssessed,
        place: words("/filters/0/uv/dose"),
    },
];
