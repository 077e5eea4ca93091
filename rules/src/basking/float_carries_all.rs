//! The float is made for one and a half times the weight of all animals that use it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::float::{CARRIES, asked_load};
use haulout_figures::basking::floats;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{All, Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("float-carries-all"),
        title: words("The float does not carry its animals"),
        chapter: words("basking"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Basking,
        caution: None,
        manual: Manual {
            asks: words("The float is made for one and a half times the weight of all animals that use it."),
            why: words(
                "Turtles stack. A float that sinks under the last one throws all of them off, and stays wet.",
            ),
            judged: words(
                "Load the float is made for against all full-grown animals of its groups at once, baskers or not.",
            ),
            cure: words("a larger float, or a second one"),
        },
    },
    limits: &[&TIMES],
    examples: EXAMPLES,
    judge,
};

static TIMES: Limit = Limit {
    rule: "float-carries-all",
    name: "times",
    row: "",
    what: "times the weight of all its animals",
    value: 1.5,
    unit: "",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "exhibit practice",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !floats(sheet, at)? {
        return Ok(Check::AnyOf(Vec::new()));
    }
    let (have, asked) = (CARRIES.of(sheet, at), asked_load(sheet, at, &TIMES)).all()?;
    Ok(Check::at_least(have, asked))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("30 kg for animals of 12.1 kg"),
        design: words(include_str!("examples/float_carries_all_met.json")),
        subject: words("basking:raft"),
        expected: Expected::Met,
        place: words("/basking/0/float/carries"),
    },
    Example {
        shows: words("9 kg: the animals weigh 1.34 times as much"),
        design: words(include_str!("examples/float_carries_all_short.json")),
        subject: words("basking:raft"),
        expected: Expected::Short,
        place: words("/basking/0/float/carries"),
    },
    Example {
        shows: words("the edge: 18.15 kg"),
        design: words(include_str!("examples/float_carries_all_edge.json")),
        subject: words("basking:raft"),
        expected: Expected::Met,
        place: words("/animals/0/mass"),
    },
    Example {
        shows: words("load not stated"),
        design: words(include_str!("examples/float_carries_all_gap.json")),
        subject: words("basking:raft"),
        expected: Expected::NotAssessed,
        place: words("/basking/0/float/carries"),
    },
    Example {
        shows: words("a log that does not float"),
        design: words(include_str!("examples/float_carries_all_log.json")),
        subject: words("basking:a"),
        expected: Expected::DoesNotApply,
        place: words(""),
    },
    Example {
        shows: words("17.5 kg, just short"),
        design: words(include_str!("examples/float_carries_all_just_short.json")),
        subject: words("basking:raft"),
        expected: Expected::Short,
        place: words("/basking/0/float/carries"),
    },
];
