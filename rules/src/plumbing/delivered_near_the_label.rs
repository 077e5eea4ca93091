//! A pump delivers a fair part of what its label promises.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::circuit::yearly::SHARE_OF_LABEL;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("delivered-near-the-label"),
        title: words("The pump delivers far less than its label"),
        chapter: words("plumbing"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Money,
        case: Case::NORMAL.dirty(),
        about: About::Circuit,
        caution: None,
        manual: Manual {
            asks: words(
                "With dirty filters a circuit delivers at least half of the flow on the label of its pump.",
            ),
            why: words(
                "The label is the flow against nothing. A pump that is throttled to a fraction of it is bought for the wrong duty: it costs twice, runs hot, and the design that was reckoned by the label gets half of its turnover.",
            ),
            judged: words(
                "Delivered flow where pump and system curve meet, filters dirty, over the flow at no head, or of the last point of the curve where it ends above that. A pump meant to work far up its curve may be met with reason.",
            ),
            cure: words("a wider bore, a shorter run, fewer bends, or a pump with a steeper curve"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "delivered-near-the-label",
    name: "share",
    row: "",
    what: "least part of the label that arrives",
    value: 0.5,
    unit: "%",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "pond builders' practice: no source; centrifugal pumps work best at about half to three quarters of their free flow",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    Ok(Check::at_least(SHARE_OF_LABEL.of(sheet, at)?, sheet.limit(&LIMITS[0])))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("5.7 of 7 m3/h"),
        design: words(include_str!("examples/delivered_near_the_label_met.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/pump/curve"),
    },
    Example {
        shows: words("a bore of 25 mm"),
        design: words(include_str!("examples/delivered_near_the_label_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/runs/0/bore"),
    },
    Example {
        shows: words("a bore of 29 mm: just over half"),
        design: words(include_str!("examples/delivered_near_the_label_edge.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/runs/0/bore"),
    },
    Example {
        shows: words("a bore of 28 mm"),
        design: words(include_str!("examples/delivered_near_the_label_just_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/runs/0/bore"),
    },
    Example {
        shows: words("the loss coefficients are not stated"),
        design: words(include_str!("examples/delivered_near_the_label_gap.json")),
        subject: words("circuit:loop"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/runs/0/loss-coefficients"),
    },
    Example {
        shows: words("30 m of ribbed hose of 36 mm: twice the friction of a pipe"),
        design: words(include_str!("examples/delivered_near_the_label_ribbed.json")),
        subject: words("circuit:loop"),
        expected: Expected::Met,
        place: words("/circuits/0/runs/0/material"),
    },
    Example {
        shows: words("30 m of ribbed hose of 35.7 mm"),
        design: words(include_str!("examples/delivered_near_the_label_ribbed_short.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/runs/0/material"),
    },
    Example {
        shows: words("a throttle of 120 velocity heads"),
        design: words(include_str!("examples/delivered_near_the_label_valve.json")),
        subject: words("circuit:loop"),
        expected: Expected::Short,
        place: words("/circuits/0/runs/0/valves/0/loss-coefficient"),
    },
    Example {
        shows: words("a throttle of which no loss is stated"),
        design: words(include_str!("examples/delivered_near_the_label_valve_gap.json")),
        subject: words("circuit:loop"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/runs/0/valves/0/loss-coefficient"),
    },
];
