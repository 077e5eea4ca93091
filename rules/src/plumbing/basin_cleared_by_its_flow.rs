//! The flow that comes into a basin clears its own water in time.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::circuit::yearly::CLEARING;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("basin-cleared-by-its-flow"),
        title: words("A basin is passed by: its own water stands"),
        chapter: words("plumbing"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL.dirty(),
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words("What comes into a basin moves as much as it holds within two hours."),
            why: words(
                "The turnover of a circuit is reckoned on all its water. Of two basins in a row each gets the same water, not each its own: a large pool behind a small basin may be turned over on paper alone.",
            ),
            judged: words(
                "Net water of the basin over what comes into it with dirty filters: returns into it, streams into it, and what comes back over the lips of filters that its circuits are lifted to. The turnover of the system stands beside it in the rule on turnover.",
            ),
            cure: words("more of the flow into this basin, another return, a pump of its own"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "basin-cleared-by-its-flow",
    name: "longest",
    row: "",
    what: "longest time to clear a basin",
    value: 7200.0,
    unit: "h",
    dimension: Dimension::TIME,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "zoo practice: half an hour to two hours for crocodilians and turtles; the upper end. A public caiman tank with fish is turned over in 75 minutes",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let (have, most) = (CLEARING.of(sheet, at)?, sheet.limit(&LIMITS[0]));
    Ok(Check::at_most(have, most))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("4.8 m3 behind a stream of 5.7 m3/h"),
        design: words(include_str!("examples/basin_cleared_by_its_flow_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/circuits/0/pump/curve"),
    },
    Example {
        shows: words("a twentieth of the flow"),
        design: words(include_str!("examples/basin_cleared_by_its_flow_short.json")),
        subject: words("pool:basin"),
        expected: Expected::Short,
        place: words("/circuits/0/returns/0/share"),
    },
    Example {
        shows: words("0.8 m3 and 7.1 % of the flow: just under two hours"),
        design: words(include_str!("examples/basin_cleared_by_its_flow_edge.json")),
        subject: words("pool:basin"),
        expected: Expected::Met,
        place: words("/circuits/0/returns/0/share"),
    },
    Example {
        shows: words("6.9 % of the flow"),
        design: words(include_str!("examples/basin_cleared_by_its_flow_just_short.json")),
        subject: words("pool:basin"),
        expected: Expected::Short,
        place: words("/circuits/0/returns/0/share"),
    },
    Example {
        shows: words("whether there are streams is not stated"),
        design: words(include_str!("examples/basin_cleared_by_its_flow_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/streams"),
    },
];
