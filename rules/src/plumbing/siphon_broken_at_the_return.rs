//! A return that could drain a higher basin has a break just under its water.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::circuit::returns::{break_depth, draws_back};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("siphon-broken-at-the-return"),
        title: words("A stopped pump drains the higher basin"),
        chapter: words("plumbing"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Flood,
        case: Case::NORMAL,
        about: About::Return,
        caution: None,
        manual: Manual {
            asks: words(
                "A return that ends under the water of a basin that lies higher than the pool it was drawn from has a siphon break not more than 30 mm under that water.",
            ),
            why: words(
                "When the pump stops, the water runs back through it and the pool below runs over. Grit holds check valves open; a hole in the pipe just under the water cannot fail.",
            ),
            judged: words(
                "Whether it ends under the water, and both water levels, decide whether it can drain; then the water level of the higher basin less the level of the break. A break over that water is met. That there is none, as the file says, falls short.",
            ),
            cure: words(
                "drill a hole of a fifth of the bore just under the water, or let the return end over it",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "siphon-broken-at-the-return",
    name: "deepest",
    row: "",
    what: "deepest siphon break under the water",
    value: 0.03,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Lower,
    basis: Basis::CommonPractice,
    source: "keepers' and pond builders' practice: 10 to 30 mm",
}];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let applies = draws_back(sheet, at).map(Check::holds);
    let depth = break_depth(sheet, at).map(|depth| match depth {
        Ok(depth) => Check::at_most(depth, sheet.limit(&LIMITS[0])),
        Err(none) => Check::holds(none),
    });
    Ok(Check::only_if(applies, depth))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a break 20 mm under the water"),
        design: words(include_str!("examples/siphon_broken_at_the_return_met.json")),
        subject: words("return:over-basin"),
        expected: Expected::Met,
        place: words("/circuits/0/returns/0/siphon-break"),
    },
    Example {
        shows: words("no break"),
        design: words(include_str!("examples/siphon_broken_at_the_return_short.json")),
        subject: words("return:over-basin"),
        expected: Expected::Short,
        place: words("/circuits/0/returns/0/siphon-break"),
    },
    Example {
        shows: words("a break at half depth"),
        design: words(include_str!("examples/siphon_broken_at_the_return_deep.json")),
        subject: words("return:over-basin"),
        expected: Expected::Short,
        place: words("/circuits/0/returns/0/siphon-break"),
    },
    Example {
        shows: words("the edge: 30 mm"),
        design: words(include_str!("examples/siphon_broken_at_the_return_edge.json")),
        subject: words("return:over-basin"),
        expected: Expected::Met,
        place: words("/circuits/0/returns/0/siphon-break"),
    },
    Example {
        shows: words("31 mm"),
        design: words(include_str!("examples/siphon_broken_at_the_return_just_short.json")),
        subject: words("return:over-basin"),
        expected: Expected::Short,
        place: words("/circuits/0/returns/0/siphon-break"),
    },
    Example {
        shows: words("it ends over the water"),
        design: words(include_str!("examples/siphon_broken_at_the_return_over.json")),
        subject: words("return:over-basin"),
        expected: Expected::DoesNotApply,
        place: words("/circuits/0/returns/0/ends"),
    },
    Example {
        shows: words("the break is not stated"),
        design: words(include_str!("examples/siphon_broken_at_the_return_gap.json")),
        subject: words("return:over-basin"),
        expected: Expected::NotAssessed,
        place: words("/circuits/0/returns/0/siphon-break"),
    },
];
