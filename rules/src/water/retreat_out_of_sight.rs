//! Some of the bed is seen from no viewing position.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::sight::pool::OUT_OF_SIGHT;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("retreat-out-of-sight"),
        title: words("Animals are seen wherever they are in the pool"),
        chapter: words("water"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Pool,
        caution: None,
        manual: Manual {
            asks: words("Some of the bed is seen from no viewing position."),
            why: words(
                "Visitors come to see animals, but an animal that is looked at everywhere all day is under strain: the rules on seeing must not build a fish tank with no back.",
            ),
            judged: words(
                "Share of the bed that no stated position sees on a way in water up to the whole clarity. Rocks, roots and plants hide more than is counted; retreats on land are not looked at.",
            ),
            cure: words("leave a corner behind a blind piece of front, or stop the panel short of it"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_least(OUT_OF_SIGHT.of(sheet, at)?, sheet.limit(&LIMITS[0]))),
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "retreat-out-of-sight",
    name: "share",
    row: "",
    what: "least share of the bed out of sight",
    value: 0.05,
    unit: "%",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "keepers' practice: no source; one place for each animal that nobody looks into",
}];

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("nobody looks into the pool"),
        design: words(include_str!("examples/retreat_out_of_sight_met.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("from a bridge all of it is seen"),
        design: words(include_str!("examples/retreat_out_of_sight_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/visitors/positions/0/eye"),
    },
    Example {
        shows: words("from the same bridge in cloudy water only what lies near is seen"),
        design: words(include_str!("examples/retreat_out_of_sight_edge.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("the positions are not stated"),
        design: words(include_str!("examples/retreat_out_of_sight_gap.json")),
        subject: words("pool:main"),
        expected: Expected::NotAssessed,
        place: words("/visitors/positions"),
    },
    Example {
        shows: words("from the bridge a twentieth of the bed is out of sight, just enough"),
        design: words(include_str!("examples/retreat_out_of_sight_least.json")),
        subject: words("pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("from the bridge a little less than a twentieth is out of sight"),
        design: words(include_str!("examples/retreat_out_of_sight_just_short.json")),
        subject: words("pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/water/secchi"),
    },
];
