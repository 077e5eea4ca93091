//! From every viewing position a fair share of the bed is well seen, through the surface or through a panel.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::sight::bed::BED_SEEN;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("bed-seen-from-the-position"),
        title: words("From a viewing position little of the bed is seen"),
        chapter: words("visitors"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Embarrassment,
        case: Case::NORMAL,
        about: About::PositionPool,
        caution: None,
        manual: Manual {
            asks: words(
                "From every viewing position a fair share of the bed is well seen, through the surface or through a panel.",
            ),
            why: words(
                "Visitors come for the animals; where a child sees only the front it has come for nothing.",
            ),
            judged: words(
                "Rays from the eye, bent at the surface or at the wet face of a panel, to some 150 places of the bed; a place is well seen where its way in water is at most 0.7 of the clarity. Guards hide up to their blind part, barriers unless they are glass, acrylic or mesh, the rim always. What lies in the pool hides nothing here. The clarity is a promise: the figure clarity-needed turns it round.",
            ),
            cure: words("lower the blind part of the front or the sill, widen the panel, or clear the water"),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_least(BED_SEEN.of(sheet, at)?, sheet.limit(&LIMITS[0]))),
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "bed-seen-from-the-position",
    name: "share",
    row: "",
    what: "least share of the bed well seen",
    value: 0.15,
    unit: "%",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "exhibit practice: no source; along a long front each position has its own stretch",
}];

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("a child before a panel of 3 m"),
        design: words(include_str!("examples/bed_seen_from_the_position_met.json")),
        subject: words("position:child+pool:main"),
        expected: Expected::Met,
        place: words("/panels/0/sill"),
    },
    Example {
        shows: words("cloudy water"),
        design: words(include_str!("examples/bed_seen_from_the_position_short.json")),
        subject: words("position:child+pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("a blind front with no panel let into it: the same child sees nothing"),
        design: words(include_str!("examples/bed_seen_from_the_position_edge.json")),
        subject: words("position:child+pool:main"),
        expected: Expected::Short,
        place: words("/visitors/guards/0/opaque-to"),
    },
    Example {
        shows: words("the panel is let into the blind front"),
        design: words(include_str!("examples/bed_seen_from_the_position_let_into.json")),
        subject: words("position:child+pool:main"),
        expected: Expected::Met,
        place: words("/panels/0/head"),
    },
    Example {
        shows: words("the eye is not stated"),
        design: words(include_str!("examples/bed_seen_from_the_position_gap.json")),
        subject: words("position:child+pool:main"),
        expected: Expected::NotAssessed,
        place: words("/visitors/positions/0/eye"),
    },
    Example {
        shows: words("a clarity that shows 15 %, just short"),
        design: words(include_str!("examples/bed_seen_from_the_position_just_short.json")),
        subject: words("position:child+pool:main"),
        expected: Expected::Short,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("a clarity that shows 15 %, just enough"),
        design: words(include_str!("examples/bed_seen_from_the_position_least.json")),
        subject: words("position:child+pool:main"),
        expected: Expected::Met,
        place: words("/pools/0/water/secchi"),
    },
];
