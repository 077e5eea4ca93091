//! Through each panel the visitor with the lowest eye sees something of the deep bed, below the surface or through it.

use haulout_engine::{Card, Check, CompiledRule, Consequence, Demand, Example, Expected, Manual, words};
use haulout_figures::sight::panel::DEEP_SEEN_THROUGH;
use haulout_model::{About, Stage};
use haulout_quantity::{Basis, Dimension};
use haulout_sheet::{Case, Limit, Tighter};

pub(crate) static RULE: CompiledRule = CompiledRule {
    card: Card {
        id: words("deep-water-seen-through-the-panel"),
        title: words("Through the panel the lowest eye does not see the deep bed"),
        chapter: words("visitors"),
        demand: Demand::Should,
        stage: Stage::Detailed,
        matter: None,
        consequence: Consequence::Embarrassment,
        case: Case::NORMAL,
        about: About::Panel,
        caution: None,
        manual: Manual {
            asks: words(
                "Through each panel the visitor with the lowest eye sees something of the deep bed, below the surface or through it.",
            ),
            why: words(
                "A panel is for those who cannot look over the front. With its sill at the surface a child sees a mirror.",
            ),
            judged: words(
                "Of the positions with the lowest eye that look into the pool, the one that sees most: share of the deep bed (within 50 mm of the greatest depth) on ways in water up to 0.7 of the clarity, through this panel.",
            ),
            cure: words(
                "lower the sill; a step for children moves the eye, but also counts as a step before the guard",
            ),
        },
    },
    limits: &[&LIMITS[0]],
    examples: EXAMPLES,
    judge: |sheet, at| Ok(Check::at_least(DEEP_SEEN_THROUGH.of(sheet, at)?, sheet.limit(&LIMITS[0]))),
};

static LIMITS: [Limit; 1] = [Limit {
    rule: "deep-water-seen-through-the-panel",
    name: "share",
    row: "",
    what: "least share of the deep bed seen through the panel",
    value: 0.10,
    unit: "%",
    dimension: Dimension::NUMBER,
    tighter: Tighter::Higher,
    basis: Basis::CommonPractice,
    source: "exhibit practice: no source; a body length or two of deep bed before the panel",
}];

static EXAMPLES: &[Example] = &[
    Example {
        shows: words("sill near the deep bed"),
        design: words(include_str!("examples/deep_water_seen_through_the_panel_met.json")),
        subject: words("panel:window"),
        expected: Expected::Met,
        place: words("/panels/0/sill"),
    },
    Example {
        shows: words("sill over the water"),
        design: words(include_str!("examples/deep_water_seen_through_the_panel_short.json")),
        subject: words("panel:window"),
        expected: Expected::Short,
        place: words("/panels/0/sill"),
    },
    Example {
        shows: words("sill over the water: that a tall visitor sees the deep bed does not help the child"),
        design: words(include_str!("examples/deep_water_seen_through_the_panel_edge.json")),
        subject: words("panel:window"),
        expected: Expected::Short,
        place: words("/visitors/positions/1/eye"),
    },
    Example {
        shows: words("the sill is not stated"),
        design: words(include_str!("examples/deep_water_seen_through_the_panel_gap.json")),
        subject: words("panel:window"),
        expected: Expected::NotAssessed,
        place: words("/panels/0/sill"),
    },
    Example {
        shows: words("a clarity that shows a tenth, just short"),
        design: words(include_str!("examples/deep_water_seen_through_the_panel_just_short.json")),
        subject: words("panel:window"),
        expected: Expected::Short,
        place: words("/pools/0/water/secchi"),
    },
    Example {
        shows: words("a clarity that shows a tenth, just enough"),
        design: words(include_str!("examples/deep_water_seen_through_the_panel_least.json")),
        subject: words("panel:window"),
        expected: Expected::Met,
        place: words("/pools/0/water/secchi"),
    },
];
