//! The delivered flow turns the water of a circuit over often enough, with filters due for cleaning.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::circuit::turnover::{LABEL_TURNOVER, TURNOVER};
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("turnover-by-delivered-flow"),
        title: words("The water is turned over too slowly"),
        chapter: words("plumbing"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL.dirty(),
        about: About::Circuit,
        caution: None,
        manual: Manual {
            asks: words(
                "All water a circuit joins passes its pump within two hours while screens and filters are due for cleaning.",
            ),
            why: words(
                "Turtles and crocodilians foul water fast. What a pump's label says is its flow against no head at all; pipe, fittings, height and a dirty screen leave a good deal less.",
            ),
            judged: words(
                "Net water of every basin the circuit serves, over the flow at which the pump's curve meets the system's curve with dirty devices; two pumps beside one another add their flows at each head, two in a row their heads at each flow, one that stands by adds nothing. The label's figure is shown beside it and never judged by.",
            ),
            cure: words("a wider bore or fewer fittings before a larger pump; clean screens earlier"),
        },
    },
    limits: &[&LONGEST],
    examples: EXAMPLES,
    judge: |sheet, at| {
        let check = Check::at_most(TURNOVER.of(sheet, at)?, sheet.limit(&LONGEST));
        Ok(check.beside(LABEL_TURNOVER.of(sheet, at)))
    },
};

static LONGEST: Limit = Limit {
    rule: "turnover-by-delivered-flow",
    name: "longest",
    row: "",
    what: "longest turnover",
    value: 7200.0,
    unit: "h",
    dimension: Dimension::TIME,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "life support of turtle and crocodilian pools: 1 to 2 h, at the outside 0.5 to 2 h",
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a pump that is strong enough"),
        design: words(include_str!("examples/turnover_met.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/pump/curve"),
    },
    Example {
        shows: words("the same pump on a narrow hose"),
        design: words(include_str!("examples/turnover_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/runs/0/bore"),
    },
    Example {
        shows: words("a circuit whose runs are not drawn"),
        design: words(include_str!("examples/turnover_gap.json")),
        subject: words("circuit:loop"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/runs"),
    },
    Example {
        shows: words("10.08 m3 at 5.052 m3/h: 1.995 h"),
        design: words(include_str!("examples/turnover_edge.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/pools/0/outline"),
    },
    Example {
        shows: words("10.32 m3 at 5.052 m3/h: 2.043 h"),
        design: words(include_str!("examples/turnover_just_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/pools/0/outline"),
    },
    Example {
        shows: words("a second pump beside the first: 3.77 m3/h for 7.2 m3"),
        design: words(include_str!("examples/turnover_beside.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/second-pump/curve"),
    },
    Example {
        shows: words("a second pump behind the first"),
        design: words(include_str!("examples/turnover_behind.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/second-pump/curve"),
    },
    Example {
        shows: words("a second pump that stands by: 3.46 m3/h"),
        design: words(include_str!("examples/turnover_stands_by.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/second-pump/arrangement"),
    },
    Example {
        shows: words("a second pump that does not say how it stands"),
        design: words(include_str!("examples/turnover_untold.json")),
        subject: words("circuit:loop"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/second-pump/arrangement"),
    },
];
