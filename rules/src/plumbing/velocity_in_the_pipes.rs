//! Water runs slowly enough in the pipes.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::circuit::velocity::GREATEST_VELOCITY;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("velocity-in-the-pipes"),
        title: words("The pipes are too narrow for the flow"),
        chapter: words("plumbing"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL,
        about: About::Circuit,
        caution: None,
        manual: Manual {
            asks: words("In no run does the clean flow pass faster than 2.5 m/s."),
            why: words(
                "Narrow pipes eat the head of the pump, run up the electricity and hammer when a valve shuts.",
            ),
            judged: words(
                "Delivered flow with clean filters over the bore of the narrowest run, or what its branch takes of the flow where runs lie side by side: there all branches lose the same head. Bore, not trade size. Suction pipes want less, 0.6 to 1.5 m/s.",
            ),
            cure: words("the next size of pipe"),
        },
    },
    limits: &[&FASTEST],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_most(GREATEST_VELOCITY.of(sheet, at)?, sheet.limit(&FASTEST))),
};

static FASTEST: Limit = Limit {
    rule: "velocity-in-the-pipes",
    name: "fastest",
    row: "",
    what: "velocity in a pipe",
    value: 2.5,
    unit: "m/s",
    dimension: Dimension::VELOCITY,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "small circuits: delivery at 2 to 2.5 m/s; engineering handbooks allow 1.5 to 3.0 m/s on the discharge side",
};

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("55.4 mm"),
        design: words(include_str!("examples/velocity_met.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/runs/0/bore"),
    },
    Example {
        shows: words("2 m of 30 mm"),
        design: words(include_str!("examples/velocity_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/runs/0/bore"),
    },
    Example {
        shows: words("runs not drawn"),
        design: words(include_str!("examples/velocity_gap.json")),
        subject: words("circuit:loop"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/runs"),
    },
    Example {
        shows: words("2 m of 31.7 mm"),
        design: words(include_str!("examples/velocity_edge.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/runs/0/bore"),
    },
    Example {
        shows: words("2 m of 31 mm"),
        design: words(include_str!("examples/velocity_just_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/runs/0/bore"),
    },
    Example {
        shows: words("four elbows, a check valve, an entrance and an exit, just under 2.5 m/s"),
        design: words(include_str!("examples/velocity_fittings_met.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/runs/0/bore"),
    },
    Example {
        shows: words("four elbows, a check valve, an entrance and an exit, just over 2.5 m/s"),
        design: words(include_str!("examples/velocity_fittings_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/runs/0/bore"),
    },
    Example {
        shows: words("two branches of 25 mm side by side"),
        design: words(include_str!("examples/velocity_branches.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/runs/1/bore"),
    },
    Example {
        shows: words("two branches of 20 mm side by side"),
        design: words(include_str!("examples/velocity_branches_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/runs/1/bore"),
    },
    Example {
        shows: words("runs that meet in no order"),
        design: words(include_str!("examples/velocity_tangled.json")),
        subject: words("circuit:loop"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/runs"),
    },
];
