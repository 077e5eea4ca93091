//! With all animals of its groups along one edge the float's edge stays over the water.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::basking::float::EDGE_HEIGHT;
use haulout_figures::basking::floats;
use haulout_model::{About, Stage, Subject};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Known, Limit, Sheet, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("float-edge-stays-dry"),
        title: words("The float's edge goes under when all crowd there"),
        chapter: words("basking"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Harm,
        case: Case::NORMAL,
        about: About::Basking,
        caution: None,
        manual: Manual {
            asks: words(
                "With all animals of its groups along one edge the float's edge stays over the water.",
            ),
            why: words(
                "Animals come up at one side and crowd there; the edge that dips is a slide, and total buoyancy says nothing about it.",
            ),
            judged: words(
                "Heel by the waterplane: the whole load along the worst edge, its middle half a breadth in, on a wall-sided float whose deck is its waterplane. Where the far side lifts out of the water only the wet part carries. The slope of the deck is not judged.",
            ),
            cure: words("a wider or heavier float, more freeboard, or tether it at the corners"),
        },
    },
    limits: &[&LEAST],
    examples: EXAMPLES,
    judge,
};

static LEAST: Limit = Limit {
    rule: "float-edge-stays-dry",
    name: "least",
    row: "",
    what: "height of the loaded edge over the water",
    value: 0.0,
    unit: "mm",
    dimension: Dimension::LENGTH,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "exhibit practice",
};

fn judge(sheet: Sheet<'_>, at: Subject) -> Known<Check> {
    if !floats(sheet, at)? {
        return Ok(Check::AnyOf(Vec::new()));
    }
    Ok(Check::at_least(EDGE_HEIGHT.of(sheet, at)?, sheet.limit(&LEAST)))
}

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("12.1 kg along an edge of 0.9 m, 100 mm of freeboard"),
        design: words(include_str!("examples/float_edge_stays_dry_met.json")),
        subject: words("basking:raft"),
        expected: Expected::Met,
        place: words("/basking/0/float/own-mass"),
    },
    Example {
        shows: words("70 mm of freeboard"),
        design: words(include_str!("examples/float_edge_stays_dry_short.json")),
        subject: words("basking:raft"),
        expected: Expected::Short,
        place: words("/basking/0/float/freeboard"),
    },
    Example {
        shows: words("the edge: no animals and no freeboard"),
        design: words(include_str!("examples/float_edge_stays_dry_edge.json")),
        subject: words("basking:raft"),
        expected: Expected::Met,
        place: words("/animals/0/sexes"),
    },
    Example {
        shows: words("mass of the float not stated"),
        design: words(include_str!("examples/float_edge_stays_dry_gap.json")),
        subject: words("basking:raft"),
        expected: Expected::NotAssessed,
        place: words("/basking/0/float/own-mass"),
    },
    Example {
        shows: words("89.5 mm of freeboard, just short"),
        design: words(include_str!("examples/float_edge_stays_dry_just_short.json")),
        subject: words("basking:raft"),
        expected: Expected::Short,
        place: words("/basking/0/float/freeboard"),
    },
    Example {
        shows: words("90 mm of freeboard, just enough"),
        design: words(include_str!("examples/float_edge_stays_dry_least.json")),
        subject: words("basking:raft"),
        expected: Expected::Met,
        place: words("/basking/0/float/freeboard"),
    },
];
