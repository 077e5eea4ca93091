//! No stretch of the bank is too far from a way out or a ledge.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::water::bank::{FARTHEST_BANK, WAYS_OUT, sloped_side};
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("bank-within-reach-of-an-exit"),
        title: words("A stretch of the bank is too far from a way out"),
        chapter: words("water"),
        demand: Demand::Shall,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::LifeOfAnimals,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words(
                "There is a way out, and along the bank it is nowhere farther than 3 m to one or to a ledge to rest on, unless the side of the pool itself can be walked out over.",
            ),
            why: words(
                "A tired animal swims along the wall it meets. Behind a long sheer stretch it does not find the ramp at the other end.",
            ),
            judged: words(
                "Half the longest stretch of the bank between neighbouring ways out and ledges, each counted where the bank is nearest to it; a side with a slope of its own counts as a way out all along where it rises by no more than 45 degrees. For hatchlings and bottom walkers something to hold on to every metre is better.",
            ),
            cure: words("another ramp, a root or a ledge along the sheer side, netting fixed to the wall"),
        },
    },
    limits: &[&LIMITS[0], &LIMITS[1], &LIMITS[2]],
    examples: EXAMPLES,
    judge,
};

static LIMITS: [Limit; 3] = [
    Limit {
        rule: "bank-within-reach-of-an-exit",
        name: "count",
        row: "",
        what: "least number of ways out",
        value: 1.0,
        unit: "",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Higher,
        basis: Basis::CommonPractice,
        source: "keepers' practice: a wall all round is no pool for an animal that breathes air; two ways out are better",
    },
    Limit {
        rule: "bank-within-reach-of-an-exit",
        name: "farthest",
        row: "",
        what: "farthest bank from a way out or a ledge",
        value: 3.0,
        unit: "m",
        dimension: Dimension::LENGTH,
        tighter: Tighter::Lower,
        basis: Basis::CommonPractice,
        source: "keepers' practice: no source; adults a few metres, hatchlings every metre",
    },
    Limit {
        rule: "bank-within-reach-of-an-exit",
        name: "slope",
        row: "",
        what: "steepest side that is walked out over, 45 degrees",
        value: 1.0,
        unit: "%",
        dimension: Dimension::NUMBER,
        tighter: Tighter::Lower,
        basis: Basis::Reported,
        source: "escape ramps for wildlife in troughs: at most 45 degrees, with a grip (Shiawassee Conservation District)",
    },
];

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    let count = WAYS_OUT.of(sheet, at).map(|n| Check::at_least(n, sheet.limit(&LIMITS[0])));
    let bank = FARTHEST_BANK.of(sheet, at).map(|d| Check::at_most(d, sheet.limit(&LIMITS[1])));
    let side = sloped_side(sheet, at).map(|s| s.map(|s| Check::at_most(s, sheet.limit(&LIMITS[2]))));
    let ways = Ok(Check::AllOf(vec![count, bank]));
    Ok(Check::AnyOf(std::iter::once(ways).chain(side).collect()))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a bank of 12 m, ramps in the middle of both long sides"),
        design: words(include_str!("examples/bank_within_reach_of_an_exit_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/exits/0/at/0"),
    },
    Example {
        shows: words("one ramp: 6 m"),
        design: words(include_str!("examples/bank_within_reach_of_an_exit_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/exits/0/at/0"),
    },
    Example {
        shows: words("a ledge on the other side"),
        design: words(include_str!("examples/bank_within_reach_of_an_exit_ledge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/ledges/0/outline"),
    },
    Example {
        shows: words("the edge: a bank of 12 m, two ways out 6 m apart"),
        design: words(include_str!("examples/bank_within_reach_of_an_exit_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/exits/1/at/0"),
    },
    Example {
        shows: words("the second a little to the side"),
        design: words(include_str!("examples/bank_within_reach_of_an_exit_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/exits/1/at/0"),
    },
    Example {
        shows: words("no way out"),
        design: words(include_str!("examples/bank_within_reach_of_an_exit_none.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/exits"),
    },
    Example {
        shows: words("no way out, but a side of 1 in 1"),
        design: words(include_str!("examples/bank_within_reach_of_an_exit_side.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/edge"),
    },
    Example {
        shows: words("no way out, and a side of 103 %"),
        design: words(include_str!("examples/bank_within_reach_of_an_exit_steep_side.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/edge"),
    },
    Example {
        shows: words("whether there are ways out is not stated"),
        design: words(include_str!("examples/bank_within_reach_of_an_exit_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/pools/0/exits"),
    },
];
